import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dryMixActivity } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

describe('dryMixActivity', () => {
  test('lies between its parts and is theirs where they are alike', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            waterActivity: fc.double({ min: 0.05, max: 0.8, noNaN: true }),
            slope: fc.double({ min: 0.01, max: 50, noNaN: true }),
            mass: fc.constant('100 g' as const),
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
    const part = { waterActivity: 0.3, slope: 0.2, mass: '1 lb' } as const;
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
