import { fail } from '../errors/StillroomError';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { findUnit } from '../quantity/units';
import type { Basis } from '../sources/basis';
import { figure, figureBasis } from './tables';

/** What gas is sold by: an energy, or of propane a mass or the volume of the liquid. */
export type GasPer = Quantity<'energy'> | Quantity<'mass'> | Quantity<'volume'>;

/** Gas of the main, or propane of a cylinder or a tank. */
export type GasFuel = 'gas' | 'propane';

/** What one kWh of gas costs. */
export interface GasPrice {
  /** Money for each kWh of the heat of the gas, in the currency of the price. */
  readonly perKwh: number;
  /** Where the heat of the gas comes from. */
  readonly basis: readonly Basis[];
}

const SOLD = {
  energy: { id: 'therm' },
  volume: { id: 'propane-gallon' },
  mass: { id: 'propane-kg' },
} as const;

/**
 * Internal: the plan uses it. What a kWh of gas costs at a price per therm or kWh, or of propane per pound, kilogram,
 * gallon or liter.
 *
 * price / (amount x heat of combustion): 91,333 Btu a gallon of liquid propane, 49,700 kJ a kilogram, both with the
 * heat of the steam that it burns to. A burner's energy is the heat of the gas it burns, so its efficiency is in the
 * energy already.
 *
 * @throws StillroomError WRONG_DIMENSION, at `path`, for gas of the main by its weight or volume
 *
 * Source: 16 CFR Part 305, Appendix K; CAN/CGA-B149.2.
 */
export function gasPrice(price: number, per: GasPer, fuel: GasFuel, path = 'per'): GasPrice {
  const dimension = findUnit(per.unit)?.dimension as keyof typeof SOLD;
  if (dimension !== 'energy' && fuel === 'gas') {
    const expected = 'an energy such as "1 therm" or "1 kWh": only propane is sold by weight or volume';
    fail('WRONG_DIMENSION', path, `${per.value} ${per.unit}`, expected);
  }
  return { perKwh: price / kilowattHours(per), basis: [figureBasis(SOLD[dimension].id, 'costs.lines')] };
}

/** The heat of an amount of gas, kWh. */
function kilowattHours(per: GasPer): number {
  const dimension = findUnit(per.unit)?.dimension;
  if (dimension === 'mass') {
    const kilojoules = valueIn(per as Quantity<'mass'>, 'kg') * figure('propane-kg').value;
    return valueIn({ value: kilojoules, unit: 'kJ' }, 'kWh');
  }
  if (dimension === 'volume') {
    const btu = valueIn(per as Quantity<'volume'>, 'gallon') * figure('propane-gallon').value;
    return valueIn({ value: btu, unit: 'BTU' }, 'kWh');
  }
  return valueIn(per as Quantity<'energy'>, 'kWh');
}
