/** What conversions are checked against: the definition of the units, by convert-units on 40-digit decimals. */
import configureMeasurements, { type Measure } from 'convert-units';
import type { ExactText } from '../../../src/common/exact';
import { unitDefinitions } from '../../../src/quantity/units';
import { Decimal } from './decimal';

type Value = Decimal | number | string;

/** A size that is a fraction, to more digits than the sums take. */
const Longer = Decimal.clone({ precision: 60 });
const written = (figure: ExactText): string =>
  typeof figure === 'string' ? figure : new Longer(figure[0]).div(figure[1]).toFixed();

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
        ...(shift === undefined ? {} : { anchor_shift: written(shift) }),
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
