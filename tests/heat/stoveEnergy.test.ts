import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stoveEnergy } from '../../src/heat/stoveEnergy';
import { boilingTemperature } from '../../src/steam/index';
import { expectError } from '../helpers/errors';
import { degC, ends, expectRising, kg } from './helpers';

const masses = fc.double({ min: 0.01, max: 100, noNaN: true });
const degrees = fc.double({ min: 0, max: 100, noNaN: true });
const shares = fc.double({ min: 0.05, max: 1, noNaN: true });
const minutes = fc.double({ min: 1, max: 600, noNaN: true });
const heatOf = (input: Parameters<typeof stoveEnergy>[0]): number => stoveEnergy(input).heat?.value ?? Number.NaN;

describe('heating up', () => {
  const good = { mass: '1 kg', startTemperature: '20 degC', targetTemperature: '90 degC' } as const;
  it('is the heat over 80, 55 and 35 % where no efficiency is given', () => {
    const { heat, energy, basis } = stoveEnergy({
      heatUp: { mass: '1 kg', startTemperature: '0 degC', targetTemperature: '100 degC' },
    });
    expect(heat?.value).toBeCloseTo(418.6, 9);
    expect(ends(energy)).toEqual([0.8, 0.55, 0.35].map((share) => expect.closeTo(418.6 / 3600 / share, 9)));
    expect(basis.map(({ of, kind }) => [of, kind])).toEqual([
      ['heat', 'published'],
      ['heatingUp', 'common-practice'],
    ]);
  });
  it('takes less for food than for water, and any specific heat', () => {
    const of = (more: object) =>
      heatOf({ heatUp: { mass: '2 kg', startTemperature: '20 degC', targetTemperature: '70 degC', ...more } });
    expect(of({ substance: 'food' })).toBeCloseTo(380, 9);
    expect(of({ substance: 'water' })).toBeCloseTo(418.6, 9);
    expect(of({ specificHeat: 3.35 })).toBeCloseTo(335, 9);
  });
  it('goes to the boil of the elevation where no end is named', () => {
    const boil = boilingTemperature({ elevation: '5000 ft' }).temperature.value;
    const heat = heatOf({ heatUp: { mass: '1 kg', startTemperature: '20 degC' }, elevation: '5000 ft' });
    expect(heat).toBeCloseTo(4.186 * ((boil - 32) / 1.8 - 20), 6);
    const sea = heatOf({ heatUp: { mass: '1 kg', startTemperature: '20 degC' } });
    expect(sea).toBeGreaterThan(heat);
    expectError(
      () => stoveEnergy({ heatUp: { mass: '1 kg', startTemperature: '110 degC' } }),
      'CONTRADICTION',
      'heatUp.startTemperature',
    );
  });
  it('takes nothing where nothing warms', () => {
    const still = stoveEnergy({
      heatUp: { mass: '1 kg', startTemperature: '68 degF', targetTemperature: '68 degF', substance: 'food' },
    });
    expect([still.heat?.value, ...ends(still.energy)]).toEqual([0, 0, 0, 0]);
  });
  it('rises with mass and temperature and falls as the efficiency rises', () => {
    fc.assert(
      fc.property(masses, masses, degrees, degrees, shares, shares, (mass, more, one, other, share, better) => {
        const [from, to] = [Math.min(one, other), Math.max(one, other)];
        const asked = { mass: kg(mass), startTemperature: degC(from), targetTemperature: degC(to) };
        const plain = stoveEnergy({ heatUp: asked });
        expectRising(plain);
        const energyOf = (change: object, efficiency?: number) =>
          stoveEnergy({ heatUp: { ...asked, ...change }, ...(efficiency === undefined ? {} : { efficiency }) }).energy
            .likely.value;
        expect(energyOf({ mass: kg(mass + more) })).toBeGreaterThanOrEqual(plain.energy.likely.value);
        expect(energyOf({ targetTemperature: degC(to + 10) })).toBeGreaterThan(plain.energy.likely.value);
        expect(energyOf({}, Math.min(share, better))).toBeGreaterThanOrEqual(energyOf({}, Math.max(share, better)));
        // what is drawn is never less than the heat
        expect(plain.energy.low.value * 3600).toBeGreaterThanOrEqual((plain.heat?.value ?? 0) - 1e-9);
      }),
    );
  });
  it('refuses what cannot be', () => {
    const refused = (change: object, code: Parameters<typeof expectError>[1], path: string) =>
      expectError(() => stoveEnergy({ heatUp: { ...good, ...change } as never }), code, path);
    refused({ targetTemperature: '19 degC' }, 'CONTRADICTION', 'heatUp.targetTemperature');
    refused({ startTemperature: '-5 degC' }, 'OUT_OF_RANGE', 'heatUp.startTemperature');
    refused({ targetTemperature: '151 degC' }, 'OUT_OF_RANGE', 'heatUp.targetTemperature');
    refused({ mass: '0 kg' }, 'OUT_OF_RANGE', 'heatUp.mass');
    refused({ specificHeat: 9 }, 'OUT_OF_RANGE', 'heatUp.specificHeat');
    refused({ substance: 'food', specificHeat: 3 }, 'CONTRADICTION', 'heatUp.specificHeat');
    refused({ substance: 'stone' }, 'UNKNOWN_NAME', 'heatUp.substance');
    expectError(() => stoveEnergy({ heatUp: good, efficiency: 0 }), 'OUT_OF_RANGE', 'efficiency');
  });
});

describe('boiling water away', () => {
  it('takes the latent heat at the boil of the elevation: more heat where water boils cooler', () => {
    const heatAt = (elevation: '0 ft' | '3000 m') => heatOf({ boilOff: '1 kg', elevation });
    expect(heatAt('0 ft')).toBeCloseTo(heatOf({ boilOff: '1 kg' }), 9);
    expect(heatAt('0 ft')).toBeCloseTo(2256.7, 1);
    // saturated steam at 90 degC: 2,282.6 kJ/kg; 3,000 m boils at 89.9 degC
    expect(Math.abs(heatAt('3000 m') - 2282.8)).toBeLessThan(0.5);
  });
  it('takes a liter for a kilogram', () => {
    expect(stoveEnergy({ boilOff: '1.5 L' })).toEqual(stoveEnergy({ boilOff: '1.5 kg' }));
  });
  it('rises with the water, in proportion, and with the losses', () => {
    fc.assert(
      fc.property(masses, fc.double({ min: 0.05, max: 0.5, noNaN: true }), (water, share) => {
        const one = stoveEnergy({ boilOff: kg(water) });
        expectRising(one);
        expect(stoveEnergy({ boilOff: kg(2 * water) }).energy.high.value / one.energy.high.value).toBeCloseTo(2, 9);
        const [low, , high] = ends(stoveEnergy({ boilOff: kg(water), efficiency: share }).energy);
        expect(low).toBe(high);
        expect(low).toBeGreaterThan(stoveEnergy({ boilOff: kg(water), efficiency: 2 * share }).energy.low.value);
      }),
    );
  });
  it('refuses what cannot be', () => {
    expectError(() => stoveEnergy({ boilOff: '0 kg' }), 'OUT_OF_RANGE', 'boilOff');
    expectError(() => stoveEnergy({ boilOff: '1 m' as never }), 'WRONG_DIMENSION', 'boilOff');
    expectError(() => stoveEnergy({ boilOff: '1 kg', elevation: '9000 m' }), 'OUT_OF_RANGE', 'elevation');
    expectError(() => stoveEnergy({ boilOff: '1 kg', efficiency: '101 %' }), 'OUT_OF_RANGE', 'efficiency');
  });
});

describe('holding the boil', () => {
  it('takes a quarter to 70 % of the burner, or the share given, and no known heat', () => {
    const held = stoveEnergy({ hold: { time: '2 h', burnerPower: '2 kW' } });
    expect(ends(held.energy)).toEqual([1, 1.6, 2.8]);
    expect(held.heat).toBeUndefined();
    expect(held.basis.map(({ kind }) => kind)).toEqual(['measured', 'common-practice']);
    const known = stoveEnergy({ hold: { time: '2 h', burnerPower: '2 kW', powerShare: '50 %' } });
    expect(ends(known.energy)).toEqual([2, 2, 2]);
    expect(known.basis.map(({ kind }) => kind)).toEqual(['measured', 'measured']);
  });
  it('rises with time, and never takes more than the burner full on', () => {
    fc.assert(
      fc.property(minutes, minutes, fc.double({ min: 0.1, max: 10, noNaN: true }), (time, more, power) => {
        const burnerPower = { value: power, unit: 'kW' as const };
        const one = stoveEnergy({ hold: { time: { value: time, unit: 'min' }, burnerPower } });
        expectRising(one);
        const longer = stoveEnergy({ hold: { time: { value: time + more, unit: 'min' }, burnerPower } });
        expect(longer.energy.high.value).toBeGreaterThan(one.energy.high.value);
        expect(one.energy.high.value).toBeLessThan((power * time) / 60);
      }),
    );
  });
  it('refuses what cannot be', () => {
    const hold = { time: '1 h', burnerPower: '2 kW' } as const;
    expectError(() => stoveEnergy({ hold, efficiency: 0.5 }), 'CONTRADICTION', 'efficiency');
    expectError(() => stoveEnergy({ hold: { ...hold, time: '0 h' } }), 'OUT_OF_RANGE', 'hold.time');
    expectError(() => stoveEnergy({ hold: { ...hold, powerShare: 0 } }), 'OUT_OF_RANGE', 'hold.powerShare');
    expectError(() => stoveEnergy({ hold: { time: '1 h' } as never }), 'MISSING', 'hold.burnerPower');
  });
});

describe('the whole pot', () => {
  it('adds up its parts', () => {
    const asked = {
      heatUp: { mass: '4 kg', startTemperature: '20 degC', substance: 'food' },
      boilOff: '1 kg',
      hold: { time: '20 min', burnerPower: '2400 W' },
    } as const;
    const pot = stoveEnergy({ ...asked, elevation: '3400 ft' });
    const alone = [{ heatUp: asked.heatUp }, { boilOff: asked.boilOff }, { hold: asked.hold }].map((each) =>
      stoveEnergy({ ...each, elevation: '3400 ft' }),
    );
    for (const end of ['low', 'likely', 'high'] as const) {
      const sum = alone.reduce((total, { energy }) => total + energy[end].value, 0);
      expect(pot.energy[end].value).toBeCloseTo(sum, 12);
    }
    expect([pot.heatingUp, pot.boilingOff, pot.holding]).toEqual(alone.map(({ energy }) => energy));
    expect(pot.heat?.value).toBeCloseTo((alone[0]?.heat?.value ?? 0) + (alone[1]?.heat?.value ?? 0), 9);
  });
  it('is asked for something', () => expectError(() => stoveEnergy({}), 'MISSING', 'heatUp'));
});
