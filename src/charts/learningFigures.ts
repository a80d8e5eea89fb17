import type * as z from 'zod/mini';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { count, fields, flag, list, name, number, optional, rangeOf } from '../quantity/fields';

const LARGEST = 1e9;
const MOST = 2000;
const figure = (what: string) => number(`${what}: a number`, { min: -LARGEST, max: LARGEST });
const range = () => rangeOf(() => figure('an end, or the figure to expect'));

export const schema = /* @__PURE__ */ fields({
  /** What was learned, such as `yield of peach halves`. */
  what: name('what was learned, such as "yield of peach halves"'),
  /** Unit of the figures, such as `h`; left out, they are shares from 0 to 1 (yield, moisture), drawn in percent. */
  unit: optional(name('the unit of the figures, such as "h"')),
  /** The range before your own batches, published or recalled. */
  before: range(),
  /** Where the next batch falls 9 times in 10, as `learnFromRecords` answers it. */
  after: range(),
  /** Your own figures, 0 to 2,000, in the order of the batches. */
  observed: list('your own figures in the order of the batches', figure('a figure of your own'), 0, MOST),
  /**
   * Whether the range before rests on a recalled figure: a line of its basis has the kind `recalled`. Left out, the
   * chart says "published or recalled".
   */
  recalled: optional(flag('whether the range before rests on a recalled figure')),
  /** Places in `observed`, from 0, of figures that were set aside. */
  asidePlaces: optional(
    list('places of figures set aside', count('a place in observed, from 0', 0, MOST - 1), 0, MOST),
  ),
  /** Whether the figures are made up; the chart then says so. */
  invented: optional(flag('whether the figures are invented')),
});
export type LearningFigures = z.output<typeof schema>;
export type LearningChartInput = Given<z.input<typeof schema>>;

/** One batch of your own. */
export interface LearningRow {
  /** Which batch: 1 is the first that was made. */
  readonly batchNumber: number;
  /** Its figure. */
  readonly figure: number;
  /** Whether it counts in full, or was set aside. */
  readonly counts: 'in full' | 'set aside';
  /** Far off the chart: marked at its edge. */
  readonly beyond?: 'above' | 'below';
}

export type Ends = readonly [low: number, high: number];

/** Ranges in order, shares that are shares, and places that are in the list. */
export function check({ unit, before, after, observed, asidePlaces = [] }: LearningFigures): void {
  for (const [path, { low, likely, high }] of Object.entries({ before, after })) {
    if (low > likely || likely > high)
      fail('CONTRADICTION', path, { low, likely, high }, 'low, likely and high in rising order');
    if (unit === undefined && (low < 0 || high > 1))
      fail('OUT_OF_RANGE', path, { low, high }, 'shares from 0 to 1, or a unit beside them');
  }
  observed.forEach((value, index) => {
    if (unit === undefined && (value < 0 || value > 1)) {
      fail('OUT_OF_RANGE', `observed[${index}]`, value, 'a share from 0 to 1, or a unit beside it');
    }
  });
  asidePlaces.forEach((at, index) => {
    if (at >= observed.length)
      fail('OUT_OF_RANGE', `asidePlaces[${index}]`, at, `a place in observed, below ${observed.length}`);
  });
}

/** Room above and below, as a share of what is shown. */
const ROOM = 0.12;

/** The ends of the chart: both ranges and the batches that count; one set aside only where it is near. */
export function shown({ before, after, observed, asidePlaces = [] }: LearningFigures): Ends {
  const counted = observed.filter((_, index) => !asidePlaces.includes(index));
  const values = [before.low, before.high, after.low, after.high, ...counted];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const span = high - low || Math.abs(high) || 1;
  const near = [low, high, ...observed.filter((value) => value > low - span && value < high + span)];
  const room = ROOM * (Math.max(...near) - Math.min(...near) || span);
  return [Math.min(...near) - room, Math.max(...near) + room];
}
