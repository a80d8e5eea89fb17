import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heatUpEnergy } from '../../src/heat/index';
import { expectError } from '../helpers/errors';
import { degC, ends, expectRising, kg } from './helpers';

const masses = fc.double({ min: 0.01, max: 100, noNaN: true });
const degrees = fc.double({ min: 0, max: 100, noNaN: true });
const shares = fc.double({ min: 0.05, max: 1, noNaN: true });

describe('heatUpEnergy', () => {
  it('is the heat over 80, 55 and 35 % where no efficiency is given', () => {
    const { heat, energy, basis } = heatUpEnergy({ mass: '1 kg', from: '0 degC', to: '100 degC' });
    expect(heat.value).toBeCloseTo(418.6, 9);
    expect(ends(energy)).toEqual([0.8, 0.55, 0.35].map((share) => expect.closeTo(418.6 / 3600 / share, 9)));
    expect(basis.map(({ kind }) => kind)).toEqual(['published', 'common-practice']);
  });
  it('takes less for food than for water, and any specific heat', () => {
    const heatOf = (more: object) => heatUpEnergy({ mass: '2 kg', from: '20 degC', to: '70 degC', ...more }).heat.value;
    expect(heatOf({ food: 'food' })).toBeCloseTo(380, 9);
    expect(heatOf({ food: 'water' })).toBeCloseTo(418.6, 9);
    expect(heatOf({ specificHeat: 3.35 })).toBeCloseTo(335, 9);
  });
  it('takes nothing where nothing warms', () => {
    const { heat, energy } = heatUpEnergy({ mass: '1 kg', from: '68 degF', to: '68 degF', food: 'food' });
    expect([heat.value, ...ends(energy)]).toEqual([0, 0, 0, 0]);
  });
  it('rises with mass and temperature and falls as the efficiency rises', () => {
    fc.assert(
      fc.property(masses, masses, degrees, degrees, shares, shares, (mass, more, one, other, share, better) => {
        const [from, to] = [Math.min(one, other), Math.max(one, other)];
        const asked = { mass: kg(mass), from: degC(from), to: degC(to) };
        const plain = heatUpEnergy(asked);
        expectRising(plain);
        const energyOf = (change: object) => heatUpEnergy({ ...asked, ...change }).energy.likely.value;
        expect(energyOf({ mass: kg(mass + more) })).toBeGreaterThanOrEqual(plain.energy.likely.value);
        expect(energyOf({ to: degC(to + 10) })).toBeGreaterThan(plain.energy.likely.value);
        expect(energyOf({ efficiency: Math.min(share, better) })).toBeGreaterThanOrEqual(
          energyOf({ efficiency: Math.max(share, better) }),
        );
        // what is drawn is never less than the heat
        expect(plain.energy.low.value * 3600).toBeGreaterThanOrEqual(plain.heat.value - 1e-9);
      }),
    );
  });
  it('refuses what cannot be', () => {
    const good = { mass: '1 kg', from: '20 degC', to: '90 degC' } as const;
    expectError(() => heatUpEnergy({ ...good, to: '19 degC' }), 'CONTRADICTION', 'to');
    expectError(() => heatUpEnergy({ ...good, from: '-5 degC' }), 'OUT_OF_RANGE', 'from');
    expectError(() => heatUpEnergy({ ...good, to: '151 degC' }), 'OUT_OF_RANGE', 'to');
    expectError(() => heatUpEnergy({ ...good, mass: '0 kg' }), 'OUT_OF_RANGE', 'mass');
    expectError(() => heatUpEnergy({ ...good, efficiency: 0 }), 'OUT_OF_RANGE', 'efficiency');
    expectError(() => heatUpEnergy({ ...good, specificHeat: 9 }), 'OUT_OF_RANGE', 'specificHeat');
    expectError(() => heatUpEnergy({ ...good, food: 'food', specificHeat: 3 }), 'CONTRADICTION', 'specificHeat');
    expectError(() => heatUpEnergy({ ...good, food: 'stone' as never }), 'UNKNOWN_NAME', 'food');
  });
});
