import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, mass, optional, readInput, volume } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import type { Span } from './span';
import { freezingCaution, rule } from './tables';

const schema = fields({
  /** Room inside the freezer. */
  freezerVolume: volume(),
  /** Food to freeze. */
  mass: optional(mass()),
});
export type FreezerLoadInput = z.input<typeof schema>;

export interface FreezerLoad {
  /** The most the freezer takes in 24 hours, both ends the same; put in less when it is full or opened often. */
  readonly perDay: Span<Quantity<'mass'>>;
  /** The higher figure that another page prints; do not plan with it. */
  readonly alsoPrinted: Quantity<'mass'>;
  /** With a mass: whole days to put it all in. */
  readonly wholeDays?: Span<number>;
  /** With a mass: whether it may all go in within one day. */
  readonly atOnce?: boolean;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * How much unfrozen food a freezer takes in 24 hours, and over how many days to spread a harvest.
 *
 * At most 2 lb for each cubic foot of freezer in a day (another page of the same book prints 2 to 3 lb). Days are
 * rounded up.
 *
 * @returns `perDay` in the unit of `mass`, or in lb
 *
 * @example
 * ```ts
 * import { freezerLoad } from 'stillroom/freezing';
 *
 * const load = freezerLoad({ freezerVolume: '15 ft3', mass: '62 lb' });
 * load.perDay.high; // => { value: 30, unit: 'lb' }
 * load.wholeDays; // => { low: 3, high: 3 }
 * ```
 */
export function freezerLoad(input: FreezerLoadInput): FreezerLoad {
  const { freezerVolume, mass: toFreeze } = readInput(schema, input);
  const printed = rule('load-per-ft3-day');
  const other = rule('load-per-ft3-day-other');
  const cubicFeet = valueIn(freezerVolume, 'ft3');
  const unit = toFreeze?.unit ?? 'lb';
  const daily = (perCubicFoot: number) => quantityIn(perCubicFoot * cubicFeet, 'lb', unit);
  const pounds = toFreeze === undefined ? undefined : valueIn(toFreeze, 'lb');
  // a load that fits but for the last digits of the arithmetic is no second day
  const days = (perCubicFoot: number, load: number) => Math.ceil((load / (perCubicFoot * cubicFeet)) * (1 - 1e-12));
  return answer({
    perDay: { low: daily(printed.low), high: daily(printed.high) },
    alsoPrinted: daily(other.high),
    ...(pounds === undefined
      ? {}
      : {
          wholeDays: { low: days(printed.high, pounds), high: days(printed.low, pounds) },
          atOnce: days(printed.low, pounds) <= 1,
        }),
    basis: [basisOf(printed, 'perDay'), basisOf(other, 'alsoPrinted', 'the higher figure of another page')],
    cautions: [freezingCaution('do-not-overload-freezer')],
  });
}
