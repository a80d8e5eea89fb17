import fc from 'fast-check';
import { expect, test } from 'vitest';
import { equivalentTime, lethality } from '../../src/lethality/index';
import { codeAndPath as errorOf } from '../helpers/errors';

const F0 = { reference: '121.1 degC', z: '10 degC' } as const;

test('an equivalent time is worth the time it stands for', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: 60, max: 130, noNaN: true }),
      fc.double({ min: 5, max: 20, noNaN: true }),
      (minutes, degC, zDegrees) => {
        const z = { value: zDegrees, unit: 'delta degC' } as const;
        const temperature = { value: degC, unit: 'degC' } as const;
        const reference = '100 degC';
        const { time } = equivalentTime({ time: { value: minutes, unit: 'min' }, reference, z, temperature });
        const { minutes: rate } = lethality({ holds: [{ temperature, time: '1 min' }], reference, z });
        expect(time.value * rate).toBeCloseTo(minutes, 6);
        if (degC > 100) expect(time.value).toBeLessThan(minutes);
      },
    ),
  );
});

test.each([
  [() => equivalentTime({ time: '1 min', temperature: '-50 degC', ...F0 }), ['OUT_OF_RANGE', 'temperature']],
  [
    () => equivalentTime({ time: '1 min', temperature: '200 degC', reference: '0 degC', z: '1 degC' }),
    ['OUT_OF_RANGE', 'temperature'],
  ],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});
