import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { expect, test } from 'vitest';
import { hoursInRoom } from '../../../src/plan/makes/dampAir';
import type { Kitchen } from '../../../src/plan/request/planInput';

const hours = {
  low: { value: 6, unit: 'h' },
  likely: { value: 10, unit: 'h' },
  high: { value: 14, unit: 'h' },
} as const;
psychrolib.SetUnitSystem(psychrolib.SI);
const at = { value: 140, unit: 'degF' } as const;
const likely = (relativeHumidity: number | undefined, temperature: typeof at | 'none' = at): number =>
  hoursInRoom(
    { elevation: { value: 0, unit: 'm' }, dryer: { relativeHumidity } } as unknown as Kitchen,
    hours,
    temperature === 'none' ? undefined : temperature,
  ).hours.likely.value;

test('as printed in usual air and in drier, where no humidity is named, and where no temperature is known', () => {
  expect([likely(0.5), likely(0.2), likely(undefined), likely(0.9, 'none')]).toEqual([10, 10, 10, 10]);
});
test('air of 20 degC and 80 %, warmed to 60 degC, against psychrolib', () => {
  const below = (humidity: number) => {
    const ratio = psychrolib.GetHumRatioFromRelHum(20, humidity, 101_325);
    return 60 - psychrolib.GetTWetBulbFromHumRatio(60, ratio, 101_325);
  };
  expect(likely(0.8)).toBeCloseTo((10 * below(0.5)) / below(0.8), 2);
});
test('never shorter in damper air, at the most a fifth longer (property)', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 0.98, noNaN: true }),
      fc.double({ min: 0, max: 0.01, noNaN: true }),
      (one, more) => {
        expect(likely(one + more)).toBeGreaterThanOrEqual(likely(one) - 1e-9);
        expect(likely(one)).toBeLessThan(12);
      },
    ),
  );
});
test('says what it rests on', () => {
  const { basis } = hoursInRoom(
    { elevation: { value: 0, unit: 'm' }, dryer: { relativeHumidity: 0.8 } } as unknown as Kitchen,
    hours,
    at,
  );
  expect(basis.length).toBeGreaterThan(1);
  expect(new Set(basis.map(({ of }) => of))).toEqual(new Set(['drying.hours']));
});
