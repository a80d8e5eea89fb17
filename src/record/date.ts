/** Calendar dates as ISO texts. The caller gives them: nothing here reads a clock. */
import { fail } from '../errors/StillroomError';
import { reading } from '../quantity/fields';

const ISO =
  /^(\d{4})-(\d{2})-(\d{2})(?:T([01]\d|2[0-3]):[0-5]\d(?::[0-5]\d(?:\.\d{1,3})?)?(?:Z|[+-][01]\d:[0-5]\d)?)?$/;
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
const daysIn = (year: number, month: number): number =>
  month === 2 && isLeap(year) ? 29 : (MONTH_DAYS[month - 1] as number);
const two = (value: number): string => String(value).padStart(2, '0');

function parts(text: string): { year: number; month: number; day: number } | undefined {
  const match = ISO.exec(text);
  if (match === null) return undefined;
  const [year, month, day] = match.slice(1, 4).map(Number) as [number, number, number];
  const real = month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
  return real ? { year, month, day } : undefined;
}

/** A day of the calendar, `2026-08-14`, with or without a time: `2026-08-14T15:30`. */
export const isoDate = (what: string) =>
  reading<string, string>((given) => {
    const expected = `${what} as ISO text, such as "2026-08-14" or "2026-08-14T15:30"`;
    if (given === undefined) fail('MISSING', '', given, expected);
    if (typeof given !== 'string') fail('WRONG_TYPE', '', given, expected);
    const text = given.trim();
    if (parts(text) === undefined) fail('OUT_OF_RANGE', '', given, expected);
    return text;
  });

/** The same day some whole months later; the last of the month where that month is shorter. */
export function monthsLater(date: string, months: number): string {
  const { year, month, day } = parts(date) as { year: number; month: number; day: number };
  const count = year * 12 + month - 1 + months;
  const later = { year: Math.floor(count / 12), month: (count % 12) + 1 };
  return `${String(later.year).padStart(4, '0')}-${two(later.month)}-${two(Math.min(day, daysIn(later.year, later.month)))}`;
}

/** The year and the day of the year, from 1. */
export function dayOfYear(date: string): { year: number; day: number } {
  const { year, month, day } = parts(date) as { year: number; month: number; day: number };
  let total = day;
  for (let before = 1; before < month; before++) total += daysIn(year, before);
  return { year, day: total };
}

/** Days from one fixed day, so that two dates can be subtracted; the time of day is left out. */
export function dayNumber(date: string): number {
  const { year, day } = dayOfYear(date);
  const before = year - 1;
  return before * 365 + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) + day;
}
