import { expect } from 'vitest';
import type { EnergyNeeded } from '../../src/heat/index';
import type { Quantity, Range } from '../../src/quantity/index';

export const kg = (value: number) => ({ value, unit: 'kg' as const });
export const degC = (value: number) => ({ value, unit: 'degC' as const });
export const ends = ({ low, likely, high }: Range<Quantity<'energy'>>): number[] => [
  low.value,
  likely.value,
  high.value,
];

/** Energies in kWh that do not fall from the low end to the high one. */
export function expectRising({ energy }: EnergyNeeded): void {
  const [low, likely, high] = ends(energy) as [number, number, number];
  expect(low).toBeGreaterThanOrEqual(0);
  expect(likely).toBeGreaterThanOrEqual(low);
  expect(high).toBeGreaterThanOrEqual(likely);
  for (const each of Object.values(energy)) expect(each.unit).toBe('kWh');
}
