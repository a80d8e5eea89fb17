import { quantityIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Dimension, Unit } from '../quantity/units';
import type { Ends } from './tables';

/** The two ends of a printed range; equal where one figure is printed. */
export interface Span<T> {
  readonly low: T;
  readonly high: T;
}

/** A printed range times a number, as quantities. */
export function spanIn<D extends Dimension>(ends: Ends, times: number, from: Unit<D>, to: Unit<D>): Span<Quantity<D>> {
  return { low: quantityIn<D>(ends[0] * times, from, to), high: quantityIn<D>(ends[1] * times, from, to) };
}

/** A printed range of plain numbers. */
export const spanOf = (ends: Ends): Span<number> => ({ low: ends[0], high: ends[1] });
