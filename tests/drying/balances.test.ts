import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driedMass, dryBasis, moistureNow, startMoisture, stopWeight, wetBasis } from '../../src/drying/index';
import { errorOf } from './helpers';

const moisture = fc.double({ min: 0.05, max: 0.98, noNaN: true });
const kilograms = fc.double({ min: 0.01, max: 1000, noNaN: true });
const kg = (value: number) => ({ value, unit: 'kg' as const });

describe('moisture bases', () => {
  it('return to the start', () => {
    fc.assert(
      fc.property(moisture, (wet) => {
        expect(wetBasis({ moisture: dryBasis({ moisture: wet }).moisture }).moisture).toBeCloseTo(wet, 12);
      }),
    );
  });
  it.each([
    ['1', 'NOT_A_QUANTITY'],
    [Number.NaN, 'OUT_OF_RANGE'],
    [Number.POSITIVE_INFINITY, 'OUT_OF_RANGE'],
    [undefined, 'MISSING'],
  ])('wetBasis refuses %s', (value, code) => {
    expect(errorOf(() => wetBasis({ moisture: value as never }))).toMatchObject({ code, path: 'moisture' });
  });

  it('takes dry basis in percent above 100', () => {
    expect(wetBasis({ moisture: '400 %' }).moisture).toBeCloseTo(0.8, 15);
  });
});

describe('driedMass', () => {
  it('keeps the mass and the solids', () => {
    fc.assert(
      fc.property(kilograms, moisture, fc.double({ min: 0, max: 1, noNaN: true }), (fresh, start, part) => {
        const target = start * part * 0.999;
        const { mass, waterRemoved, ratio } = driedMass({ fresh: kg(fresh), moisture: start, targetMoisture: target });
        expect(mass.value + waterRemoved.value).toBeCloseTo(fresh, 8);
        expect(mass.value * (1 - target)).toBeCloseTo(fresh * (1 - start), 8);
        expect(mass.value * ratio).toBeCloseTo(fresh, 8);
      }),
    );
  });
  it('takes nothing out where the target is the start', () => {
    expect(driedMass({ fresh: '2 lb', moisture: '50 %', targetMoisture: '50 %' })).toMatchObject({
      mass: { value: 2, unit: 'lb' },
      waterRemoved: { value: 0, unit: 'lb' },
      ratio: 1,
    });
  });
});

describe('moistureNow and startMoisture', () => {
  it('undo driedMass', () => {
    fc.assert(
      fc.property(moisture, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (start, part) => {
        const target = start * part;
        const weight = driedMass({ fresh: '1 kg', moisture: start, targetMoisture: target }).mass;
        expect(moistureNow({ fresh: '1 kg', moisture: start, weight }).moisture).toBeCloseTo(target, 9);
        expect(startMoisture({ fresh: '1 kg', dried: weight, driedMoisture: target }).moisture).toBeCloseTo(start, 9);
      }),
    );
  });
  it('refuse weights that cannot be', () => {
    const above = () => moistureNow({ fresh: '1 kg', moisture: 0.8, weight: '1.1 kg' });
    const below = () => moistureNow({ fresh: '1 kg', moisture: 0.8, weight: '199 g' });
    const gained = () => startMoisture({ fresh: '1 kg', dried: '3 lb', driedMoisture: 0.1 });
    expect(errorOf(above)).toMatchObject({ code: 'CONTRADICTION', path: 'weight' });
    expect(errorOf(below)).toMatchObject({ code: 'CONTRADICTION', path: 'weight' });
    expect(errorOf(gained)).toMatchObject({ code: 'CONTRADICTION', path: 'dried' });
  });
});

describe('stopWeight', () => {
  it('at the low end is dry enough for every start moisture in the range', () => {
    fc.assert(
      fc.property(moisture, moisture, moisture, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, c, part) => {
        const [low = 0, likely = 0, high = 0] = [a, b, c].sort((x, y) => x - y);
        const target = low * part * 0.99;
        const answer = stopWeight({ fresh: '1 kg', moisture: { low, likely, high }, targetMoisture: target });
        const { weight, waterToRemove, energy } = answer;
        expect(weight.low.value).toBeLessThanOrEqual(weight.likely.value);
        expect(weight.likely.value).toBeLessThanOrEqual(weight.high.value);
        expect(waterToRemove.low.value).toBeLessThanOrEqual(waterToRemove.high.value);
        expect(energy.low.value).toBeLessThanOrEqual(energy.high.value);
        expect(weight.low.value + waterToRemove.high.value).toBeCloseTo(1, 9);
        for (const start of [low, likely, high]) {
          const solids = 1 - start;
          expect(1 - solids / weight.low.value).toBeLessThanOrEqual(target + 1e-9);
        }
      }),
    );
  });
  it('adds the tare, in the unit of the produce', () => {
    const bare = stopWeight({ fresh: '2 lb', moisture: '85 %', targetMoisture: '20 %' });
    const tared = stopWeight({ fresh: '2 lb', moisture: '85 %', targetMoisture: '20 %', tare: '8 oz' });
    expect(tared.weight.likely.value - bare.weight.likely.value).toBeCloseTo(0.5, 12);
    expect(tared.waterToRemove).toEqual(bare.waterToRemove);
    expect(tared.energy.likely.unit).toBe('kWh');
  });
  it.each<[string, Record<string, unknown>, string, string]>([
    [
      'a target above the low end',
      { moisture: { low: 0.1, likely: 0.5, high: 0.9 } },
      'CONTRADICTION',
      'targetMoisture',
    ],
    ['ends out of order', { moisture: { low: 0.9, likely: 0.8, high: 0.95 } }, 'CONTRADICTION', 'moisture'],
    ['an end missing', { moisture: { low: 0.8, likely: 0.85 } }, 'MISSING', 'moisture.high'],
    ['another end', { moisture: { low: 0.8, likely: 0.85, high: 0.9, most: 1 } }, 'UNKNOWN_FIELD', 'moisture.most'],
    ['a moisture of one', { moisture: 1 }, 'OUT_OF_RANGE', 'moisture'],
    ['an end of one', { moisture: { low: 0.8, likely: 0.85, high: 1 } }, 'OUT_OF_RANGE', 'moisture.high'],
    ['no moisture', { moisture: undefined }, 'MISSING', 'moisture'],
    ['a list', { moisture: [0.8] }, 'WRONG_TYPE', 'moisture'],
    ['null', { moisture: null }, 'WRONG_TYPE', 'moisture'],
    ['a negative tare', { tare: '-1 oz' }, 'OUT_OF_RANGE', 'tare'],
    ['a volume', { fresh: '2 cups' }, 'WRONG_DIMENSION', 'fresh'],
  ])('refuses %s', (_, change, code, path) => {
    const input = { fresh: '1 kg', moisture: 0.85, targetMoisture: 0.2, ...change };
    expect(errorOf(() => stopWeight(input as never))).toMatchObject({ code, path });
  });
});
