/**
 * One number in two units. `toDecimalIn` is the definition: the exact sizes of the units, by convert-units on 40-digit
 * decimals. `inUnit` gives the same double without decimals wherever it can prove that it is the same.
 */
import configureMeasurements, { type Measure } from 'convert-units';
import { Decimal } from '../common/decimal';
import { productRest, type Scale, writtenRest } from './doubles';
import type { Quantity } from './types';
import { type Dimension, type FoundUnit, findUnit, type Unit, unitDefinitions } from './units';

type Value = Decimal | number | string;

/** Tells convert-units to calculate with 40-digit decimals, so that the exact definitions stay exact. */
const decimals = {
  create: (value: Value) => new Decimal(value),
  add: (left: Value, right: Value) => new Decimal(left).plus(right),
  sub: (left: Value, right: Value) => new Decimal(left).minus(right),
  mul: (left: Value, right: Value) => new Decimal(left).times(right),
  div: (left: Value, right: Value) => new Decimal(left).div(right),
  lt: (left: Value, right: Value) => new Decimal(left).lt(right),
  lte: (left: Value, right: Value) => new Decimal(left).lte(right),
  gt: (left: Value, right: Value) => new Decimal(left).gt(right),
  gte: (left: Value, right: Value) => new Decimal(left).gte(right),
};

function toMeasures(): Record<string, Measure<string, string>> {
  const measures: Record<string, Measure<string, string>> = {};
  for (const [dimension, units] of Object.entries(unitDefinitions)) {
    const system: Record<string, object> = {};
    for (const [name, { size, shift, plural }] of Object.entries(units)) {
      system[name] = {
        name: { singular: name, plural: plural ?? name },
        to_anchor: typeof size === 'string' ? size : { numerator: size[0], denominator: size[1] },
        ...(shift === undefined ? {} : { anchor_shift: shift }),
      };
    }
    measures[dimension] = { systems: { trade: system } } as Measure<string, string>;
  }
  return measures;
}

let configured: ReturnType<typeof configureMeasurements<string, string, string, Decimal>> | undefined;
/** The configured converter, made at first use so that importing the module does no work. */
function converter(value: number) {
  configured ??= configureMeasurements<string, string, string, Decimal>(toMeasures(), decimals as never);
  return configured(value);
}

/** A quantity's value in another unit of its dimension, as a Decimal; both units by their canonical names. */
export function toDecimalIn(quantity: { value: number; unit: string }, unit: string): Decimal {
  if (quantity.unit === unit) return new Decimal(quantity.value);
  return converter(quantity.value).from(quantity.unit).to(unit);
}

/** A decimal as the nearest double and what is left of it. */
function inTwo(exact: Decimal): readonly [number, number] {
  const nearest = exact.toNumber();
  // toPrecision writes the double out, where new Decimal(nearest) would take its shortest name
  return [nearest, exact.minus(nearest.toPrecision(60)).toNumber()];
}

/** Made once for each pair of units that is asked for. */
function makeScale({ unit, scales }: FoundUnit, to: string): Scale {
  const atZero = toDecimalIn({ value: 0, unit }, to);
  const [by, byRest] = inTwo(toDecimalIn({ value: 1, unit }, to).minus(atZero));
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

/** A number in one unit written in another, both by their canonical names: what `toDecimalIn` gives, as a double. */
export const inUnit = (value: number, from: string, to: string): number =>
  from === to ? value : fromUnit(value, findUnit(from) as FoundUnit, to);

/**
 * The same from a unit that is found already.
 *
 * The sum is made in two doubles, with an error below `DOUBT`. Where all numbers that near round to one double, it is
 * the answer. Where they do not (a result halfway between two doubles, or the rest of a subtraction), decimals decide.
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
  return toDecimalIn({ value, unit: source.unit }, to).toNumber();
}

/**
 * How a quantity compares with a number of a unit: below zero, zero or above, as its decimals would. Both round to
 * doubles in the same order, so decimals are asked only where the doubles are the same.
 */
export function compareIn(quantity: { value: number; unit: string }, unit: string, limit: number): number {
  const value = inUnit(quantity.value, quantity.unit, unit);
  return value === limit && quantity.unit !== unit ? toDecimalIn(quantity, unit).cmp(limit) : value - limit;
}

/** A quantity's value in another unit of its dimension, as a double. */
export const valueIn = <D extends Dimension>(quantity: Quantity<D>, unit: Unit<D>): number =>
  inUnit(quantity.value, quantity.unit, unit);

/** A number in one unit given back in another: the way answers return to the asker's own units. */
export const quantityIn = <D extends Dimension>(value: number, from: Unit<D>, to: Unit<D>): Quantity<D> => ({
  value: inUnit(value, from, to),
  unit: to,
});
