/** The word `timeOfDay`: a time on the clock, such as "8:00" or "8:30 pm"; inside, minutes after midnight. */
import { fail } from '../errors/StillroomError';
import { reading } from '../quantity/fields';
import { word } from './word';

const EXPECTED = 'a time of day such as "8:00", "8 am", "8:30 pm", "20:15" or "noon"';
/** Hours, minutes, and which half of the day; without minutes the half must be named. */
const CLOCK = /^(\d{1,2})(?::(\d{2}))? ?(am|pm)?$/;
const NAMED: ReadonlyMap<string, number> = new Map([
  ['noon', 12 * 60],
  ['midnight', 0],
]);
const LONGEST = 40;

const plain = (given: string): string =>
  given
    .trim()
    .toLowerCase()
    .replaceAll('.', '')
    .replaceAll(/\s+/g, ' ')
    .replace(/^12 (?=noon|midnight)/, '');

/** Whether a text has the form of a time of day, right or wrong: `25:00` has. */
export const isClock = (given: string): boolean =>
  given.length <= LONGEST && (NAMED.has(plain(given)) || CLOCK.test(plain(given)));

/**
 * Reads a time of day as minutes after midnight, 0 to 1439: on the clock of 24 hours, or with am or pm.
 *
 * @throws StillroomError NOT_A_QUANTITY for `"8"`, which may be either half of the day; OUT_OF_RANGE for `"25:00"`
 */
export function readTimeOfDay(given: unknown, path = ''): number {
  if (given === undefined) fail('MISSING', path, given, EXPECTED);
  if (typeof given !== 'string') fail('WRONG_TYPE', path, given, EXPECTED);
  if (!isClock(given)) fail('NOT_A_QUANTITY', path, given, EXPECTED);
  const text = plain(given);
  const named = NAMED.get(text);
  if (named !== undefined) return named;
  const [, hourText, minuteText, half] = CLOCK.exec(text) as RegExpExecArray;
  const [hour, minute] = [Number(hourText), Number(minuteText ?? 0)];
  if (half === undefined && minuteText === undefined) {
    const either = hour >= 1 && hour <= 12 ? `"${hour} am" or "${hour} pm"` : `"${hourText}:00"`;
    fail('NOT_A_QUANTITY', path, given, `${EXPECTED}; write ${either}`);
  }
  if (minute > 59) fail('OUT_OF_RANGE', path, given, `${EXPECTED}, with 0 to 59 minutes`);
  if (half === undefined) {
    if (hour > 23) fail('OUT_OF_RANGE', path, given, `${EXPECTED}, from 0:00 to 23:59`);
    return hour * 60 + minute;
  }
  if (hour < 1 || hour > 12)
    fail('OUT_OF_RANGE', path, given, `${EXPECTED}, with an hour from 1 to 12 before am or pm`);
  return ((hour % 12) + (half === 'pm' ? 12 : 0)) * 60 + minute;
}

/** A time of day; the answer is minutes after midnight. */
export const timeOfDay = () =>
  word(
    reading<string, number>((given) => readTimeOfDay(given)),
    { name: 'timeOfDay', kind: 'time of day', says: 'A time of day, on the clock of 24 hours or with am or pm.' },
  );
