import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gaugeForTemperature, steamTemperature } from '../../src/steam/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('gauge and temperature are each the inverse of the other', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.double({ min: -500, max: 5000, noNaN: true }),
      (psi, metres) => {
        const elevation = { value: metres, unit: 'm' } as const;
        const { temperature } = steamTemperature({ gauge: { value: psi, unit: 'psi' }, elevation });
        // at a gauge of nothing the last digit may fall below the boiling point
        if (psi < 1e-6) return;
        const { gauge } = gaugeForTemperature({ temperature, elevation });
        expect(gauge.value).toBeCloseTo(psi * 6.894757293168361, 5);
      },
    ),
  );
});

test.each([
  [() => gaugeForTemperature({ temperature: '200 degF', elevation: '0 ft' }), ['OUT_OF_RANGE', 'temperature']],
  [() => gaugeForTemperature({ temperature: '400 degF', elevation: '0 ft' }), ['OUT_OF_RANGE', 'temperature']],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});

test('the message names the boiling point that a gauge cannot go below', () => {
  expect(() => gaugeForTemperature({ temperature: '200 degF', elevation: '0 ft' })).toThrow('212 °F');
});
