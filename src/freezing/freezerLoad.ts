import type * as z from 'zod/mini';
import { handOut } from '../common/handOut';
import { fields, mass, optional, readInput, volume } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { freezingCaution, rule } from './tables';

const schema = fields({ freezerVolume: volume(), mass: optional(mass()) });
export type FreezerLoadInput = z.input<typeof schema>;

export interface FreezerLoad {
  /** What the freezer takes in 24 hours; stay at the low end when it is full or opened often. */
  readonly perDay: { readonly low: Quantity<'mass'>; readonly high: Quantity<'mass'> };
  /** With a mass: days to put it all in, whole days, at the high and at the low end of the daily load. */
  readonly days?: { readonly low: number; readonly high: number };
  /** With a mass: whether it may go in at once even at the low end. */
  readonly atOnce?: boolean;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How much unfrozen food a freezer takes in 24 hours, and over how many days to spread a harvest.
 *
 * 2 to 3 lb for each cubic foot of freezer. Days are rounded up.
 *
 * @param input.freezerVolume - inside volume of the freezer
 * @param input.mass - food to be frozen; left out, only the daily load is answered
 * @returns `perDay` in the unit of `mass`, or in lb
 *
 * @example
 * ```ts
 * import { freezerLoad } from 'stillroom/freezing';
 *
 * const load = freezerLoad({ freezerVolume: '15 ft3', mass: '62 lb' });
 * load.perDay; // => { low: { value: 30, unit: 'lb' }, high: { value: 45, unit: 'lb' } }
 * load.days; // => { low: 2, high: 3 }
 * ```
 */
export function freezerLoad(input: FreezerLoadInput): FreezerLoad {
  const { freezerVolume, mass: toFreeze } = readInput(schema, input);
  const printed = rule('load-per-ft3-day');
  const cubicFeet = valueIn(freezerVolume, 'ft3');
  const unit = toFreeze?.unit ?? 'lb';
  const daily = (perCubicFoot: number) => quantityIn(perCubicFoot * cubicFeet, 'lb', unit);
  const pounds = toFreeze === undefined ? undefined : valueIn(toFreeze, 'lb');
  // a load that fits but for the last digits of the arithmetic is no second day
  const days = (perCubicFoot: number, load: number) => Math.ceil((load / (perCubicFoot * cubicFeet)) * (1 - 1e-12));
  return handOut({
    perDay: { low: daily(printed.low), high: daily(printed.high) },
    ...(pounds === undefined
      ? {}
      : {
          days: { low: days(printed.high, pounds), high: days(printed.low, pounds) },
          atOnce: days(printed.low, pounds) <= 1,
        }),
    basis: [basisOf(printed, 'load of the freezer in a day')],
    cautions: [freezingCaution('do-not-overload-freezer')],
  });
}
