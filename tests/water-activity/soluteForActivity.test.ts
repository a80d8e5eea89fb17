import { describe, expect, test } from 'vitest';
import { solutionWaterActivity } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

describe('the solute for a water activity', () => {
  test.each(['sugar', 'salt', 'glucose', 'glycerol', 'urea', 'LiCl', 'ethanol'])(
    '%s: what it says gives what was asked',
    (solute) => {
      const { mass, solids } = solutionWaterActivity({ water: '2 lb', solute, waterActivity: 0.96 });
      expect(mass.unit).toBe('lb');
      expect(mass.value / (mass.value + 2)).toBeCloseTo(solids, 9);
      expect(solutionWaterActivity({ water: '2 lb', solutes: { [solute]: mass } }).waterActivity).toBeCloseTo(0.96, 9);
    },
  );

  test('refuses what no solution reaches', () => {
    const refused = (solute: string, waterActivity: number) =>
      errorOf(() => solutionWaterActivity({ water: '1 kg', solute, waterActivity }));
    expect(refused('sugar', 0.8)).toEqual(['OUT_OF_RANGE', 'waterActivity']);
    expect(refused('ethanol', 0.9)).toEqual(['OUT_OF_RANGE', 'waterActivity']);
    expect(refused('sugar', 1)).toEqual(['OUT_OF_RANGE', 'waterActivity']);
    expect(refused('gravel', 0.9)).toEqual(['UNKNOWN_NAME', 'solute']);
  });
});
