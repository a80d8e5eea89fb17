import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energyCost } from '../../src/heat/index';
import { expectError } from '../helpers/errors';

const kWh = (value: number) => ({ value, unit: 'kWh' as const });
const cents = fc.integer({ min: 0, max: 500 }).map((value) => ({ value: value / 100, unit: 'USD' }));

describe('energyCost', () => {
  it('rounds the low end down, the middle to the nearest cent and the high end up', () => {
    const energy = { low: kWh(1.02), likely: kWh(1.05), high: kWh(1.0901) };
    const { cost } = energyCost({ energy, energyPrice: { soldBy: 'kWh', price: '0.31 USD' } });
    expect([cost.low.value, cost.likely.value, cost.high.value]).toEqual([0.31, 0.33, 0.34]);
  });
  it('does not take the last digits of a sum for a cent', () => {
    const { cost } = energyCost({ energy: kWh(0.1 + 0.2), energyPrice: { soldBy: 'kWh', price: '0.10 USD' } });
    expect(cost.high.value).toBe(0.03);
  });
  it('takes a therm for 100,000 Btu, and names its source', () => {
    const therm = energyCost({ energy: '100000 BTU', energyPrice: { soldBy: 'therm', price: '1.54 EUR' } });
    expect(therm.cost.high).toEqual({ value: 1.54, unit: 'EUR' });
    expect(therm.basis.map(({ source }) => source)).toEqual([undefined, 'nist-sp811']);
    expect(energyCost({ energy: '1 therm', energyPrice: { soldBy: 'kWh', price: '1 EUR' } }).cost.likely.value).toBe(
      29.31,
    );
  });
  it('costs nothing where nothing is drawn', () => {
    const { cost } = energyCost({ energy: kWh(0), energyPrice: { soldBy: 'kWh', price: '0.31 USD' } });
    expect(cost.high).toEqual({ value: 0, unit: 'USD' });
  });
  it('is in whole cents, rises, and holds what it costs to the last digit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 3, maxLength: 3 }),
        cents,
        (drawn, price) => {
          const [low, likely, high] = drawn.sort((a, b) => a - b) as [number, number, number];
          const { cost } = energyCost({
            energy: { low: kWh(low), likely: kWh(likely), high: kWh(high) },
            energyPrice: { soldBy: 'kWh', price },
          });
          expect(cost.low.value).toBeLessThanOrEqual(cost.likely.value);
          expect(cost.likely.value).toBeLessThanOrEqual(cost.high.value);
          expect(cost.low.value).toBeLessThanOrEqual(low * price.value + 1e-7);
          expect(cost.high.value).toBeGreaterThanOrEqual(high * price.value - 1e-7);
          for (const { value } of Object.values(cost)) expect(value).toBe(Number(value.toFixed(2)));
        },
      ),
    );
  });
  it('refuses what cannot be', () => {
    const price = { soldBy: 'kWh', price: '0.31 USD' } as const;
    expectError(() => energyCost({ energy: '-1 kWh', energyPrice: price }), 'OUT_OF_RANGE', 'energy');
    expectError(() => energyCost({ energy: '1 kW' as never, energyPrice: price }), 'WRONG_DIMENSION', 'energy');
    const falling = { low: kWh(2), likely: kWh(1), high: kWh(3) };
    expectError(() => energyCost({ energy: falling, energyPrice: price }), 'CONTRADICTION', 'energy');
    const over = { low: kWh(1), likely: kWh(4), high: kWh(3) };
    expectError(() => energyCost({ energy: over, energyPrice: price }), 'CONTRADICTION', 'energy');
    expectError(() => energyCost({ energy: { low: kWh(2) } as never, energyPrice: price }), 'MISSING', 'energy.likely');
    expectError(
      () => energyCost({ energy: kWh(1), energyPrice: { soldBy: 'm3' as never, price: '1 USD' } }),
      'UNKNOWN_NAME',
      'energyPrice.soldBy',
    );
    expectError(
      () => energyCost({ energy: kWh(1), energyPrice: { soldBy: 'kWh', price: '31' as never } }),
      'NOT_A_QUANTITY',
      'energyPrice.price',
    );
  });
});
