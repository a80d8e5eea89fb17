import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stopWeight } from '../../../src/drying/index';
import { errorOf } from '../helpers';

const moisture = fc.double({ min: 0.05, max: 0.98, noNaN: true });

describe('stopWeight', () => {
  it('at the low end is dry enough for every start moisture in the range', () => {
    fc.assert(
      fc.property(moisture, moisture, moisture, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, c, part) => {
        const [low = 0, likely = 0, high = 0] = [a, b, c].sort((x, y) => x - y);
        const target = low * part * 0.99;
        const answer = stopWeight({ fresh: '1 kg', moisture: { low, likely, high }, targetMoisture: target });
        const { stopWeight: scale, waterRemoved, energy } = answer;
        expect(scale.low.value).toBeLessThanOrEqual(scale.likely.value);
        expect(scale.likely.value).toBeLessThanOrEqual(scale.high.value);
        expect(waterRemoved.low.value).toBeLessThanOrEqual(waterRemoved.high.value);
        expect(energy.low.value).toBeLessThanOrEqual(energy.high.value);
        expect(scale.low.value + waterRemoved.high.value).toBeCloseTo(1, 9);
        for (const start of [low, likely, high]) {
          const solids = 1 - start;
          expect(1 - solids / scale.low.value).toBeLessThanOrEqual(target + 1e-9);
        }
      }),
    );
  });
  it('adds the tare, in the unit of the food', () => {
    const bare = stopWeight({ fresh: '2 lb', moisture: '85 %', targetMoisture: '20 %' });
    const tared = stopWeight({ fresh: '2 lb', moisture: '85 %', targetMoisture: '20 %', tare: '8 oz' });
    expect(tared.stopWeight.likely.value - bare.stopWeight.likely.value).toBeCloseTo(0.5, 12);
    expect(tared.waterRemoved).toEqual(bare.waterRemoved);
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
