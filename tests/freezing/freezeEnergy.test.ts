import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foodProperties, freezeEnergy } from '../../src/freezing/index';
import { degC, ends, expectRising } from '../heat/helpers';
import { expectError } from '../helpers/errors';

const properties = { freezing: '-1 degC', specificHeatAbove: 3.8, specificHeatBelow: 2, latentHeat: 300 } as const;
const heat = (from: number, to: number) =>
  freezeEnergy({ mass: '1 kg', properties, startTemperature: degC(from), targetTemperature: degC(to) }).heat.value;

describe('freezeEnergy', () => {
  it('cools, freezes and cools on, each only where it is crossed', () => {
    expect(heat(19, -21)).toBeCloseTo(3.8 * 20 + 300 + 2 * 20, 9);
    expect(heat(19, 4)).toBeCloseTo(3.8 * 15, 9);
    expect(heat(19, -1)).toBeCloseTo(3.8 * 20, 9);
    expect(heat(-1, -21)).toBeCloseTo(300 + 2 * 20, 9);
    expect(heat(-5, -21)).toBeCloseTo(2 * 16, 9);
    expect(heat(4, 4)).toBe(0);
  });
  it('takes the printed heats of a food, or the equations by its water', () => {
    const asked = { mass: '10 kg', startTemperature: '20 degC', targetTemperature: '-18 degC' } as const;
    const byName = freezeEnergy({ ...asked, food: 'peaches' });
    const printed = foodProperties({ food: 'peach' });
    const [line] = printed.basis;
    expect(byName.basis[0]).toMatchObject({ of: 'heat', source: line?.source, locator: line?.locator });
    const byWater = freezeEnergy({ ...asked, moisture: 0.889 });
    expect(byWater.heat.value / byName.heat.value).toBeCloseTo(1, 1);
    expect(byWater.basis.map(({ note }) => note)).toContain('latent heat, by moisture');
    expect(byWater.basis.map(({ source }) => source)).not.toContain('siebel-1892');
  });
  it('divides by 2, 1.3 and 0.8 where no performance is given', () => {
    const { energy } = freezeEnergy({
      mass: '36 kg',
      properties,
      startTemperature: '19 degC',
      targetTemperature: '-21 degC',
    });
    expect(ends(energy)).toEqual([2, 1.3, 0.8].map((performance) => expect.closeTo(4.16 / performance, 9)));
  });
  it('rises with what is colder at the end, warmer at the start, and with a worse freezer', () => {
    const degrees = fc.double({ min: -60, max: 100, noNaN: true });
    fc.assert(
      fc.property(degrees, degrees, degrees, (one, two, three) => {
        const [cold, middle, warm] = [one, two, three].sort((a, b) => a - b) as [number, number, number];
        const slack = 1e-9;
        expect(heat(warm, cold) + slack).toBeGreaterThanOrEqual(heat(middle, cold));
        expect(heat(warm, cold) + slack).toBeGreaterThanOrEqual(heat(warm, middle));
        const asked = {
          mass: '1 kg',
          moisture: 0.8,
          startTemperature: degC(warm),
          targetTemperature: degC(cold),
        } as const;
        expectRising(freezeEnergy(asked));
        expect(freezeEnergy({ ...asked, performance: 1 }).energy.likely.value).toBeGreaterThanOrEqual(
          freezeEnergy({ ...asked, performance: 2 }).energy.likely.value,
        );
      }),
    );
  });
  it('refuses what cannot be', () => {
    const asked = { mass: '1 kg', startTemperature: '20 degC', targetTemperature: '-18 degC' } as const;
    expectError(() => freezeEnergy(asked), 'CONTRADICTION', 'food');
    expectError(() => freezeEnergy({ ...asked, food: 'peach', moisture: 0.8 }), 'CONTRADICTION', 'food');
    expectError(() => freezeEnergy({ ...asked, food: 'granite' }), 'UNKNOWN_NAME', 'food');
    // its freezing point is recalled, and no heats with it
    expectError(() => freezeEnergy({ ...asked, food: 'nectarine' }), 'MISSING', 'moisture');
    expectError(
      () => freezeEnergy({ ...asked, food: 'peach', targetTemperature: '21 degC' }),
      'CONTRADICTION',
      'targetTemperature',
    );
    expectError(() => freezeEnergy({ ...asked, food: 'peach', performance: 0 }), 'OUT_OF_RANGE', 'performance');
    expectError(
      () => freezeEnergy({ ...asked, properties: { ...properties, freezing: '3 degC' } }),
      'OUT_OF_RANGE',
      'properties.freezing',
    );
  });
});
