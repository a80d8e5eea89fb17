import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boilingTemperature, gaugeForTemperature, steamTemperature } from '../../src/steam/index';
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
  expect(gaugeForTemperature({ temperature: '240 degF', elevation: '0 ft' }).gauge.unit).toBe('psi');
  expect(gaugeForTemperature({ temperature: '116 degC', elevation: '0 m' }).gauge.unit).toBe('kPa');
});

test('every answer says that physics sets no process and that air must be vented', () => {
  const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
  const wanted = ['physics-explains-tables', 'air-in-canner', 'weather-moves-boiling'];
  expect(ids(steamTemperature({ gauge: '10 psi', elevation: '0 ft' }))).toEqual(wanted);
  expect(ids(gaugeForTemperature({ temperature: '240 degF', elevation: '0 ft' }))).toEqual(wanted);
});

test.each([
  [() => steamTemperature({ gauge: '-1 psi', elevation: '0 ft' }), ['OUT_OF_RANGE', 'gauge']],
  [() => steamTemperature({ gauge: '101 psi', elevation: '0 ft' }), ['OUT_OF_RANGE', 'gauge']],
  [() => steamTemperature({ gauge: '10 psi' } as never), ['MISSING', 'elevation']],
  [() => steamTemperature({ gauge: '10 lb' as never, elevation: '0 ft' }), ['WRONG_DIMENSION', 'gauge']],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});
