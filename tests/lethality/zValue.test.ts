import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lethality } from '../../src/lethality/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('z leads from one D value to the other', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 50, max: 90, noNaN: true }),
      fc.double({ min: 1, max: 30, noNaN: true }),
      fc.double({ min: 1.5, max: 1000, noNaN: true }),
      (degC, rise, ratio) => {
        const first = { temperature: { value: degC, unit: 'degC' }, dValue: { value: ratio, unit: 'min' } } as const;
        const second = { temperature: { value: degC + rise, unit: 'degC' }, dValue: '60 s' } as const;
        const { z } = lethality({ first, second });
        if (z.value < 1 || z.value > 100) return; // outside what the others take
        const moved = lethality({
          heldAt: [{ temperature: first.temperature, time: first.dValue }],
          z: z as { value: number; unit: 'delta degC' },
          reference: second.temperature,
        });
        expect(moved.minutes).toBeCloseTo(1, 6);
      },
    ),
  );
});

test('z is in the degrees of the first temperature', () => {
  // 10 degC apart and a factor of ten is z = 10 degC = 18 degF
  const celsius = lethality({
    first: { temperature: '100 degC', dValue: '10 min' },
    second: { temperature: '110 degC', dValue: '1 min' },
  });
  const fahrenheit = lethality({
    first: { temperature: '212 degF', dValue: '10 min' },
    second: { temperature: '230 degF', dValue: '1 min' },
  });
  expect(celsius.z).toEqual({ value: 10, unit: 'delta degC' });
  expect(fahrenheit.z.unit).toBe('delta degF');
  expect(fahrenheit.z.value).toBeCloseTo(18, 9);
});

test.each([
  [
    () =>
      lethality({
        first: { temperature: '80 degC', dValue: '1 min' },
        second: { temperature: '80 degC', dValue: '2 min' },
      }),
    ['CONTRADICTION', 'second'],
  ],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});
