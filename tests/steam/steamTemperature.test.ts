import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boilingTemperature, steamTemperature } from '../../src/steam/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('an open gauge is an open pot', () => {
  const steam = steamTemperature({ gauge: '0 psi', elevation: '4200 ft' });
  expect(steam.temperature.value).toBeCloseTo(boilingTemperature({ elevation: '4200 ft' }).temperature.value, 10);
});

test('the same gauge is cooler steam higher up', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 15000 }), fc.integer({ min: 0, max: 20 }), (feet, psi) => {
      const at = (value: number) =>
        steamTemperature({ gauge: { value: psi, unit: 'psi' }, elevation: { value, unit: 'ft' } }).temperature.value;
      expect(at(feet + 100)).toBeLessThan(at(feet));
    }),
  );
});

test('units follow the question', () => {
  const us = steamTemperature({ gauge: '10 psi', elevation: '0 ft' });
  expect([us.temperature.unit, us.pressure.unit]).toEqual(['degF', 'psi']);
  const metric = steamTemperature({ gauge: '70 kPa', elevation: '300 m' });
  expect([metric.temperature.unit, metric.pressure.unit]).toEqual(['degC', 'kPa']);
  expect(steamTemperature({ temperature: '240 degF', elevation: '0 ft' }).gauge.unit).toBe('psi');
  expect(steamTemperature({ temperature: '116 degC', elevation: '0 m' }).gauge.unit).toBe('kPa');
});

test('every answer says that physics sets no process and that air must be vented', () => {
  const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
  const wanted = ['physics-explains-tables', 'air-in-canner', 'weather-moves-boiling'];
  expect(ids(steamTemperature({ gauge: '10 psi', elevation: '0 ft' }))).toEqual(wanted);
  expect(ids(steamTemperature({ temperature: '240 degF', elevation: '0 ft' }))).toEqual(wanted);
});

test.each([
  [() => steamTemperature({ gauge: '-1 psi', elevation: '0 ft' }), ['OUT_OF_RANGE', 'gauge']],
  [() => steamTemperature({ gauge: '101 psi', elevation: '0 ft' }), ['OUT_OF_RANGE', 'gauge']],
  [() => steamTemperature({ temperature: '200 degF', elevation: '0 ft' }), ['OUT_OF_RANGE', 'temperature']],
  [() => steamTemperature({ temperature: '400 degF', elevation: '0 ft' }), ['OUT_OF_RANGE', 'temperature']],
  [() => steamTemperature({ elevation: '0 ft' }), ['MISSING', 'gauge']],
  [
    () => steamTemperature({ gauge: '10 psi', temperature: '240 degF', elevation: '0 ft' }),
    ['CONTRADICTION', 'temperature'],
  ],
  [() => steamTemperature({ gauge: '10 psi' } as never), ['MISSING', 'elevation']],
  [() => steamTemperature({ gauge: '10 lb' as never, elevation: '0 ft' }), ['WRONG_DIMENSION', 'gauge']],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});

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
        const { gauge } = steamTemperature({ temperature, elevation });
        expect(gauge.value).toBeCloseTo(psi * 6.894757293168361, 5);
      },
    ),
  );
});

test('the message names the boiling point that a gauge cannot go below', () => {
  expect(() => steamTemperature({ temperature: '200 degF', elevation: '0 ft' })).toThrow('212 °F');
});
