import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryEnergy } from '../../src/heat/dryEnergy';
import { expectError } from '../helpers/errors';
import { ends, expectRising, kg } from './helpers';

const beans = { fresh: '18 lb', moisture: '90.3 %', targetMoisture: '6 %' } as const;

describe('dryEnergy', () => {
  it('is the heat over 100, 50 and 25 % where no efficiency is given', () => {
    const { heat, energy, waterRemoved } = dryEnergy(beans);
    expect(waterRemoved.unit).toBe('lb');
    expect(waterRemoved.value).toBeCloseTo(18 * (1 - 0.097 / 0.94), 9);
    expect(ends(energy)).toEqual([1, 0.5, 0.25].map((share) => expect.closeTo(heat.value / 3600 / share, 9)));
  });
  it('reaches the printed 5.4 kWh for 18 lb of green beans, at its low end', () => {
    const { energy } = dryEnergy(beans);
    expect(energy.low.value).toBeLessThan(5.4);
    expect(energy.likely.value).toBeGreaterThan(5.4);
    expect(energy.low.value / 5.4).toBeCloseTo(0.95, 2);
  });
  it('is more for a hotter dryer and for more water', () => {
    const at = (temperature: '100 degF' | '140 degF', targetMoisture: number) =>
      dryEnergy({ fresh: '1 kg', moisture: 0.8, targetMoisture, temperature }).heat.value;
    expect(at('140 degF', 0.2)).toBeGreaterThan(at('100 degF', 0.2));
    expect(at('140 degF', 0.1)).toBeGreaterThan(at('140 degF', 0.2));
  });
  it('names the printed dryers where no efficiency is given, and nothing where it is', () => {
    const kinds = (efficiency?: number) =>
      dryEnergy(efficiency === undefined ? beans : { ...beans, efficiency })
        .basis.filter(({ of }) => of === 'energy')
        .map(({ kind }) => kind);
    expect(kinds()).toEqual(['published', 'recalled', 'published', 'common-practice']);
    expect(kinds(0.5)).toEqual(['measured']);
  });
  it('rises with the load and its moisture, and falls as the efficiency rises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.3, max: 0.95, noNaN: true }),
        fc.double({ min: 0.05, max: 0.99, noNaN: true }),
        (fresh, moisture, efficiency) => {
          const asked = { fresh: kg(fresh), moisture, targetMoisture: 0.1 };
          const one = dryEnergy(asked);
          expectRising(one);
          const more = (change: object) => dryEnergy({ ...asked, ...change }).energy.likely.value;
          expect(more({ fresh: kg(2 * fresh) })).toBeCloseTo(2 * one.energy.likely.value, 6);
          expect(more({ moisture: moisture + 0.01 })).toBeGreaterThan(one.energy.likely.value);
          expect(more({ efficiency })).toBeGreaterThan(more({ efficiency: 1 }));
        },
      ),
    );
  });
  it('refuses what cannot be', () => {
    const colder = { startTemperature: '60 degC', temperature: '50 degC' } as const;
    expectError(() => dryEnergy({ ...beans, ...colder }), 'CONTRADICTION', 'temperature');
    expectError(() => dryEnergy({ ...beans, temperature: '120 degC' }), 'OUT_OF_RANGE', 'temperature');
    expectError(() => dryEnergy({ ...beans, targetMoisture: '95 %' }), 'CONTRADICTION', 'targetMoisture');
    expectError(() => dryEnergy({ ...beans, efficiency: 0.01 }), 'OUT_OF_RANGE', 'efficiency');
    expectError(() => dryEnergy({ ...beans, oven: 1 } as never), 'UNKNOWN_FIELD', 'oven');
  });
});
