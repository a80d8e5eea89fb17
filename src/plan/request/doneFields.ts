/** What has happened on a day by now, as a cook tells it. */
import { fail } from '../../errors/StillroomError';
import { choice, count, fields, list, name, optional, reading } from '../../quantity/fields';
import { busyUntil } from '../../recipes/kitchenFields';
import { jarName } from '../../words/jar';
import { readTimeOfDay, timeOfDay } from '../../words/timeOfDay';
import { amountBought } from './lots';
import { MOST_DAYS } from './planFields';

/** A minute of the days: the time on the clock, and which day of work it is, from 1. */
export interface Moment {
  readonly clock: number;
  readonly day: number;
}

const MOMENT = `a time of day such as "10:30", or { day: 2, at: "9:15" } on a later day of 1 to ${MOST_DAYS}`;

/** A time of a later day, as it is given. */
export interface LaterDay {
  /** The day of work, 1 to 7. */
  readonly day: number;
  /** Time of day, such as `"9:15"`. */
  readonly at: string;
}

/** A time of the first day, or of a later one. */
const moment = () =>
  reading<string | LaterDay, Moment>((given) => {
    if (typeof given !== 'object' || given === null) {
      if (typeof given !== 'string') fail(given === undefined ? 'MISSING' : 'WRONG_TYPE', '', given, MOMENT);
      return { clock: readTimeOfDay(given), day: 1 };
    }
    const { day, at, ...others } = given as { day?: unknown; at?: unknown };
    const [other] = Object.keys(others);
    if (other !== undefined) fail('UNKNOWN_FIELD', other, undefined, MOMENT);
    if (day === undefined) fail('MISSING', 'day', day, MOMENT);
    if (typeof day !== 'number') fail('WRONG_TYPE', 'day', day, MOMENT);
    if (!Number.isInteger(day) || day < 1 || day > MOST_DAYS) fail('OUT_OF_RANGE', 'day', day, MOMENT);
    return { clock: readTimeOfDay(at, 'at'), day };
  });

const done = fields({
  /** The product, by its name in the plan. */
  name: name('the name of a product of the plan'),
  /**
   * Raw food that went in, as `raw` of a lot: `"20 lb"`, `"8 quarts"`; if you say how many you filled and leave this out,
   * the plan takes what that many need at the likely yield.
   */
  raw: optional(amountBought()),
  /** The lot it came from; needed only where the product is made of several. */
  lot: optional(name('the name of a lot')),
  /** Jars, bags or sheets that are filled, 0 to 5,000. */
  filled: optional(count('how many are filled', 0, 5000)),
  /**
   * How far it is: `done`, out of your hands; `prepared`, washed and cut; `hot`, cooked and in its pot; `filled`, in jars,
   * in bags or on trays that are not in the canner or the machine yet; `running` in one of these. `done` when left out, or
   * `running` with an `until`.
   */
  howFar: optional(choice('how far it is', ['done', 'prepared', 'hot', 'filled', 'running'])),
  /** Time of day since which it is prepared, hot or filled; of several the first. */
  since: optional(timeOfDay()),
  /** The canner that its load is in; needed only where there are several. */
  canner: optional(name('the name of a canner')),
  /** Trays that it is on, 1 to 500. */
  trays: optional(count('trays', 1, 500)),
  /** When the canner or the machine is done with it: a time of day, or a time from now such as `40 min`. */
  until: optional(busyUntil()),
});

const lost = fields({
  /** Pots that are gone or burnt, by their names in the plan: up to 20. */
  potNames: optional(list('pots', name('the name of a pot'), 0, 20)),
  /** Canners that are gone, by their names in the plan: up to 20. */
  cannerNames: optional(list('canners', name('the name of a canner'), 0, 20)),
  /** Empty jars that are broken. */
  jars: optional(
    list(
      'jars',
      fields({
        /** The jar, as in the stock of the kitchen. */
        jar: jarName(),
        /** How many, 0 to 5,000. */
        count: count('jars that are broken', 0, 5000),
      }),
      0,
      20,
    ),
  ),
  /** Pairs of hands that have left, 1 to 49; the last of the names where people are named. */
  hands: optional(count('pairs of hands that have left', 1, 49)),
});

export const doneFields = () => ({
  /** The time now: of the first day such as `"10:30"`, or `{ day: 2, at: "9:15" }`. With it the plan is of the rest. */
  now: optional(moment()),
  /** What has happened by now, up to 300 entries. What is not in it has not been begun. Only with `now`. */
  done: optional(list('what is done', done, 0, 300)),
  /** Canners whose water is hot now and that no load is in, by their names in the plan: up to 20. Only with `now`. */
  hotCanners: optional(list('canners', name('the name of a canner'), 0, 20)),
  /** What you no longer have to work with. Only with `now`. */
  lost: optional(lost),
});
