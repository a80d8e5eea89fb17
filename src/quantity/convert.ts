import { fail } from '../errors/StillroomError';
import { parseQuantity } from './parseQuantity';
import { fromUnit } from './scale';
import type { Quantity, QuantityInput } from './types';
import { type Dimension, type FoundUnit, findUnit, type Unit, type UnitSpelling, unitsOf } from './units';

/** The unit on the far side of a conversion may be written in any spelling of the same dimension. */
type Target<Q> = { [D in Dimension]: Q extends QuantityInput<D> ? UnitSpelling<D> : never }[Dimension];

/**
 * Converts a quantity to another unit of its dimension, with exact definitions, by exact fractions; only the
 * result is rounded, once, to a double.
 *
 * A plain `pint`, `quart`, `gallon`, `cup` or `fl oz` is the US one; an imperial one says so. A volume is never
 * turned into a mass here: that takes a food and its form (see `kitchenMeasure` in `stillroom/produce`).
 *
 * Source: definitions of NIST SP 811 appendix B and NIST Handbook 44 appendix C.
 *
 * @param quantity - a text such as `"1 1/2 cups"`, or `{ value, unit }`
 * @param unit - any spelling of a unit of the same dimension
 * @throws StillroomError WRONG_DIMENSION, UNKNOWN_UNIT, NOT_A_QUANTITY
 *
 * @example
 * ```ts
 * import { convert } from 'stillroom/quantity';
 *
 * convert('1 bushel', 'in3'); // => { value: 2150.42, unit: 'in3' }
 * convert('212 degF', 'degC'); // => { value: 100, unit: 'degC' }
 * convert('1 imperial pint', 'pint').value; // ≈ 1.20095
 * ```
 */
export function convert<const Q>(quantity: Q, unit: Target<Q>): Quantity;
export function convert(quantity: unknown, unit: string): Quantity {
  if (typeof unit !== 'string') fail('WRONG_TYPE', 'unit', unit, 'the name of a unit, such as "g"');
  const from = parseQuantity(quantity, undefined, 'quantity');
  const target = findUnit(unit);
  if (target === undefined) fail('UNKNOWN_UNIT', 'unit', unit, 'a known unit, such as "g", "cup" or "degC"');
  const source = findUnit(from.unit) as FoundUnit;
  const { dimension } = source;
  const wanted = dimension === 'temperatureDifference' ? (findUnit(unit, dimension) ?? target) : target;
  if (wanted.dimension !== dimension) {
    fail('WRONG_DIMENSION', 'unit', unit, `a unit of ${dimension} (${unitsOf(dimension).slice(0, 8).join(', ')})`);
  }
  return { value: fromUnit(from.value, source, wanted.unit), unit: wanted.unit as Unit };
}
