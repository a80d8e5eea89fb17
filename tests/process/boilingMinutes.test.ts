import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type BoilingMinutesInput, boilingMinutes } from '../../src/process/index';
import { thrownBy as errorOf } from '../helpers/errors';

// 10 minutes below 1,000 ft and 1 more per 1,000 ft: USDA guide 1; Michigan State 01600946. The worked example of the
// reference: 15 minutes at 5,000 ft. Parts of a thousand are counted whole.
test.each(['empty jars', 'before tasting'] as const)('%s', (purpose) => {
  const minutesAt = (place: Pick<BoilingMinutesInput, 'elevation'>) => boilingMinutes({ purpose, ...place });
  const at = (value: number) => minutesAt({ elevation: { value, unit: 'ft' } }).minutes;
  expect([-500, 0, 999.9, 1000, 1000.1, 2000, 4999, 5000, 16000].map(at)).toEqual([10, 10, 10, 11, 12, 12, 15, 15, 26]);
  fc.assert(
    fc.property(fc.double({ min: -1000, max: 16000, noNaN: true }), (value) => {
      expect(at(value)).toBeGreaterThanOrEqual(10 + Math.max(0, Math.floor(value / 1000)));
    }),
  );
  expect(minutesAt({ elevation: '5000 ft' }).basis).toHaveLength(1);
  expect(errorOf(() => minutesAt({} as never))).toMatchObject({ code: 'MISSING', path: 'elevation' });
});

test('each carries its own caution', () => {
  expect(boilingMinutes({ purpose: 'before tasting', elevation: '0 ft' }).cautions[0]?.id).toBe('not-a-remedy');
  expect(boilingMinutes({ purpose: 'empty jars', elevation: '0 ft' }).cautions[0]?.id).toBe('hot-liquids-burn');
});

test('a purpose is named', () => {
  expect(errorOf(() => boilingMinutes({ elevation: '0 ft' } as never))).toMatchObject({
    code: 'MISSING',
    path: 'purpose',
  });
  expect(errorOf(() => boilingMinutes({ purpose: 'full jars' as never, elevation: '0 ft' }))).toMatchObject({
    code: 'UNKNOWN_NAME',
    path: 'purpose',
  });
});
