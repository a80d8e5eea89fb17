/**
 * One number in two units. `exactIn` is the definition: fractions of whole numbers, with the exact sizes of the units.
 * `inUnit` gives the double nearest to it, without them wherever it can prove that it is the same.
 */
import { type Exact, type ExactText, exact } from '../common/exact';
import { productRest, type Scale, writtenRest } from './doubles';
import type { Quantity } from './types';
import { type Dimension, type FoundUnit, findUnit, type Unit, type UnitDefinition, unitDefinitions } from './units';

const figure = (text: ExactText): Exact => (typeof text === 'string' ? exact(text) : exact(text[0]).div(text[1]));
const definitionOf = (unit: string) => {
  const { dimension } = findUnit(unit) as FoundUnit;
  const { size, shift = '0' } = unitDefinitions[dimension][unit] as UnitDefinition;
  return { size: figure(size), shift: figure(shift) };
};

/** A quantity's value in another unit of its dimension, exactly; both units by their canonical names. */
export function exactIn(quantity: { value: number; unit: string }, unit: string): Exact {
  const value = exact(quantity.value);
  if (quantity.unit === unit) return value;
  const [from, to] = [definitionOf(quantity.unit), definitionOf(unit)];
  return value.times(from.size).minus(from.shift).plus(to.shift).div(to.size);
}

/** An exact number as the nearest double and what is left of it. */
function inTwo(whole: Exact): readonly [number, number] {
  const nearest = whole.toNumber();
  // toPrecision writes the double out, where exact(nearest) would take its shortest name
  return [nearest, whole.minus(nearest.toPrecision(60)).toNumber()];
}

/** Made once for each pair of units that is asked for. */
function makeScale({ unit, scales }: FoundUnit, to: string): Scale {
  const atZero = exactIn({ value: 0, unit }, to);
  const [by, byRest] = inTwo(exactIn({ value: 1, unit }, to).minus(atZero));
  const [plus, plusRest] = inTwo(atZero);
  const made = { by, byRest, plus, plusRest };
  scales.set(to, made);
  return made;
}

/** Beyond these the parts of a sum in two doubles could overflow or vanish. */
const SMALLEST = 1e-100;
const LARGEST = 1e100;
/** How far off a sum may be, as a share of its parts: a hundred times the worst of its eight roundings. */
const DOUBT = 2 ** -96;

/** A number in one unit written in another, both by their canonical names: what `exactIn` gives, as a double. */
export const inUnit = (value: number, from: string, to: string): number =>
  from === to ? value : fromUnit(value, findUnit(from) as FoundUnit, to);

/**
 * The same from a unit that is found already.
 *
 * The sum is made in two doubles, with an error below `DOUBT`. Where all numbers that near round to one double, it is
 * the answer. Where they do not (a result halfway between two doubles, or the rest of a subtraction), exact numbers decide.
 */
export function fromUnit(value: number, source: FoundUnit, to: string): number {
  if (source.unit === to) return value;
  const size = Math.abs(value);
  if (size === 0 || (size > SMALLEST && size < LARGEST)) {
    const { by, byRest, plus, plusRest } = source.scales.get(to) ?? makeScale(source, to);
    const product = value * by;
    const sum = product + plus;
    const plusOfSum = sum - product;
    const sumRest = product - (sum - plusOfSum) + (plus - plusOfSum);
    const rest = sumRest + productRest(value, by, product) + (value * byRest + writtenRest(value) * by) + plusRest;
    const doubt = (Math.abs(product) + Math.abs(plus)) * DOUBT;
    const low = sum + (rest - doubt);
    if (low === sum + (rest + doubt)) return low;
  }
  return Number.isFinite(value) ? exactIn({ value, unit: source.unit }, to).toNumber() : value;
}

/**
 * How a quantity compares with a number of a unit: below zero, zero or above, exactly. Both round to
 * doubles in the same order, so exact numbers are asked only where the doubles are the same.
 */
export function compareIn(quantity: { value: number; unit: string }, unit: string, limit: number): number {
  const value = inUnit(quantity.value, quantity.unit, unit);
  return value === limit && quantity.unit !== unit ? exactIn(quantity, unit).cmp(limit) : value - limit;
}

/** A quantity's value in another unit of its dimension, as a double. */
export const valueIn = <D extends Dimension>(quantity: Quantity<D>, unit: Unit<D>): number =>
  inUnit(quantity.value, quantity.unit, unit);

/** A number in one unit given back in another: the way answers return to the asker's own units. */
export const quantityIn = <D extends Dimension>(value: number, from: Unit<D>, to: Unit<D>): Quantity<D> => ({
  value: inUnit(value, from, to),
  unit: to,
});
