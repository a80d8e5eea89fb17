import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dryMixActivity,
  equilibriumPoints,
  freezingPointActivity,
  soluteForActivity,
  solutionWaterActivity,
  typicalWaterActivity,
} from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

describe('soluteForActivity', () => {
  test.each(['sugar', 'salt', 'glucose', 'glycerol', 'urea', 'LiCl', 'ethanol'])(
    '%s: what it says gives what was asked',
    (solute) => {
      const { mass, fraction } = soluteForActivity({ water: '2 lb', solute, waterActivity: 0.96 });
      expect(mass.unit).toBe('lb');
      expect(mass.value / (mass.value + 2)).toBeCloseTo(fraction, 9);
      expect(solutionWaterActivity({ water: '2 lb', solutes: { [solute]: mass } }).waterActivity).toBeCloseTo(0.96, 9);
    },
  );

  test('refuses what no solution reaches', () => {
    const refused = (solute: string, waterActivity: number) =>
      errorOf(() => soluteForActivity({ water: '1 kg', solute, waterActivity }));
    expect(refused('sugar', 0.8)).toEqual(['OUT_OF_RANGE', 'waterActivity']);
    expect(refused('ethanol', 0.9)).toEqual(['OUT_OF_RANGE', 'waterActivity']);
    expect(refused('sugar', 1)).toEqual(['OUT_OF_RANGE', 'waterActivity']);
    expect(refused('gravel', 0.9)).toEqual(['UNKNOWN_NAME', 'solute']);
  });
});

describe('dryMixActivity', () => {
  test('lies between its parts and is theirs where they are alike', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            waterActivity: fc.double({ min: 0.05, max: 0.8, noNaN: true }),
            slope: fc.double({ min: 0.01, max: 50, noNaN: true }),
            solids: fc.constant('100 g' as const),
          }),
          { minLength: 1, maxLength: 6 },
        ),
        (parts) => {
          const { waterActivity } = dryMixActivity({ parts });
          const all = parts.map((part) => part.waterActivity);
          expect(waterActivity).toBeGreaterThanOrEqual(Math.min(...all) - 1e-12);
          expect(waterActivity).toBeLessThanOrEqual(Math.max(...all) + 1e-12);
        },
      ),
    );
  });
  test('bad parts', () => {
    const part = { waterActivity: 0.3, slope: 0.2, solids: '1 lb' } as const;
    expect(errorOf(() => dryMixActivity({ parts: [part, { ...part, waterActivity: 1 }] }))).toEqual([
      'OUT_OF_RANGE',
      'parts[1].waterActivity',
    ]);
    expect(errorOf(() => dryMixActivity({ parts: [{ ...part, slope: 0 }] }))).toEqual([
      'OUT_OF_RANGE',
      'parts[0].slope',
    ]);
    expect(errorOf(() => dryMixActivity({ parts: [] }))).toEqual(['OUT_OF_RANGE', 'parts']);
  });
});

test('freezing water has the activity 1, and a point above 0 degC is refused', () => {
  expect(freezingPointActivity({ freezingPoint: '0 degC' }).waterActivity).toBe(1);
  expect(freezingPointActivity({ freezingPoint: '23.126 degF' }).waterActivity).toBeCloseTo(0.9532, 3);
  expect(errorOf(() => freezingPointActivity({ freezingPoint: '1 degC' }))).toEqual(['OUT_OF_RANGE', 'freezingPoint']);
});

test('typical foods by their kitchen names; recalled ones say so', () => {
  expect(typicalWaterActivity({ food: 'jam' }).food).toBe('jams and jellies');
  const leather = typicalWaterActivity({ food: 'fruit leather' });
  expect(leather.cautions.map(({ id }) => id)).toContain('recalled');
  expect(typicalWaterActivity({ food: 'raisin' }).cautions.map(({ id }) => id)).not.toContain('recalled');
  expect(errorOf(() => typicalWaterActivity({ food: 'gravel' }))).toEqual(['UNKNOWN_NAME', 'food']);
});

// sloan-labuza-1975 (amorphous sorbitol, anhydrous excepted) against the solution equation: within 0.03
test.each([
  [0.6, 25],
  [0.7, 35],
  [0.8, 55],
  [0.9, 110],
])('amorphous sorbitol in solution at %s', (aw, water) => {
  const points = equilibriumPoints({ food: 'sorbitol' }).series.find(({ state }) =>
    state.startsWith('amorphous'),
  )?.points;
  expect(points).toContainEqual({ waterActivity: aw, moisture: water / 100 });
  const solution = solutionWaterActivity({
    water: { value: water, unit: 'g' },
    solutes: { sorbitol: '100 g' },
    supersaturated: true,
  });
  expect(Math.abs(solution.waterActivity - aw)).toBeLessThan(0.03);
});
