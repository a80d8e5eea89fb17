/** The printed hours of leather, looked up by the thickness of the sheet. */
import { nameOf } from '../../foods/tables';
import type { Quantity } from '../../quantity/types';
import { type LeatherHoursRow, leatherHours } from './tables';

/** Hours from the least to the most. */
export interface HoursSpan {
  /** The least that is printed. */
  readonly low: Quantity<'time'>;
  /** The most that is printed. */
  readonly high: Quantity<'time'>;
}

const span = (low: number, high: number): HoursSpan => ({
  low: { value: low, unit: 'h' },
  high: { value: high, unit: 'h' },
});

/** A thousandth of an inch for the conversion of units. */
const NOISE = 1e-3;

/** The row of the thinnest printed sheet that is no thinner than this one; none above the thickest. */
export const dryerRow = (inches: number): LeatherHoursRow | undefined =>
  leatherHours.find(
    ({ where, thickness_in: printed, mean_in: mean = printed }) => where === 'dryer' && inches <= mean + NOISE,
  );

/** The hours of a row, and the sheet and the fruit they are printed for. */
export const dryerHours = ({ hours: [least, most], thickness_in: printed, food }: LeatherHoursRow) => ({
  hours: span(least ?? most, most),
  hoursFor: {
    thickness: { value: printed, unit: 'in' } as const,
    ...(food === undefined ? {} : { food: nameOf(food) }),
  },
});

/** Hours in an oven: from the least that is printed to the most, up to the thickest sheet printed. */
export function ovenHours(
  inches: number,
): { readonly hours: HoursSpan; readonly rows: readonly LeatherHoursRow[] } | undefined {
  const rows = leatherHours.filter(({ where }) => where === 'oven');
  if (inches > Math.max(...rows.map(({ thickness_in: printed }) => printed)) + NOISE) return undefined;
  const least = rows.flatMap(({ hours: [low] }) => (low === null ? [] : [low]));
  return { hours: span(Math.min(...least), Math.max(...rows.map(({ hours: [, most] }) => most))), rows };
}
