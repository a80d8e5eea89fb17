import { fail } from '../errors/StillroomError';
import type { FeasibleDay } from '../plan/request/dayPlan';
import { MONTHS, say, WEEKDAYS } from './words';

const HOUR = 60;
const DAY = 24 * HOUR;
const WEEK = 7;
const DATE = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Minutes of the plan as the clock on the wall shows them. */
export interface Clock {
  /** Calendar day of a minute, from 0. */
  day(minute: number): number;
  /** Time of day: `8:05`. */
  time(minute: number): string;
  /** The same, with its day where that is not the day of `from`. */
  when(minute: number, from: number): string;
  /** Name of a day: `Sat 14 June`, or without a date `Day 2`. */
  dayName(day: number): string;
  /** The same in short, where there is a date: `Sat`. */
  shortDay(day: number): string;
}

/** Reads a date that the caller gives, `2026-06-14`: its parts on a calendar; there is no clock in here. */
function readDate(date: string): number {
  const [, year, month, day] = DATE.exec(date) ?? [];
  const at = Date.UTC(Number(year), Number(month) - 1, Number(day));
  if (Number.isNaN(at) || new Date(at).toISOString().slice(0, 10) !== date)
    fail('OUT_OF_RANGE', 'date', date, 'a day of the calendar, as "2026-08-14"');
  return at;
}

/** The clock of a plan: minute 0 is at its `startClock`. */
export function clockOf({ startClock: start }: Pick<FeasibleDay['schedule'], 'startClock'>, date?: string): Clock {
  const first = date === undefined ? undefined : readDate(date);
  const onDay = (day: number) => (first === undefined ? undefined : new Date(first + day * DAY * HOUR * 1000));
  const day = (minute: number) => Math.floor((start + minute) / DAY);
  const time = (minute: number) => {
    const at = (((start + Math.round(minute)) % DAY) + DAY) % DAY;
    return `${Math.floor(at / HOUR)}:${String(at % HOUR).padStart(2, '0')}`;
  };
  const short = (of: number, from: number): string => {
    const date = onDay(of);
    if (date !== undefined) return WEEKDAYS[date.getUTCDay()] as string;
    return of === from + 1 ? say('day.next') : say('day.later', { number: of + 1 });
  };
  const dayName = (of: number): string => {
    const date = onDay(of);
    return date === undefined
      ? say('day.plain', { number: of + 1 })
      : say('day.date', {
          weekday: WEEKDAYS[date.getUTCDay()] as string,
          day: date.getUTCDate(),
          month: MONTHS[date.getUTCMonth()] as string,
        });
  };
  return {
    day,
    time,
    when: (minute, from) => {
      const later = day(minute) - day(from);
      if (later === 0) return time(minute);
      // a name of a weekday is not enough for what is weeks away
      return later >= WEEK ? dayName(day(minute)) : `${short(day(minute), day(from))} ${time(minute)}`;
    },
    dayName,
    shortDay: (of) => {
      const date = onDay(of);
      return date === undefined ? dayName(of) : (WEEKDAYS[date.getUTCDay()] as string);
    },
  };
}

/** Letters of products, in their order: A, B ... Z, AA. */
export function letter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : `${letter(Math.floor(index / 26) - 1)}${last}`;
}
