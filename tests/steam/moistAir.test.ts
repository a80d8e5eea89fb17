import fc from 'fast-check';
import { expect, test } from 'vitest';
import { moistAir } from '../../src/steam/index';
import { moistAirSaturation } from '../../src/steam/moistAir';
import { codeAndPath as errorOf } from '../helpers/errors';

test('every measure of moisture leads to the same state', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 80, noNaN: true }),
      fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      fc.integer({ min: 0, max: 4000 }),
      (degrees, relativeHumidity, metres) => {
        const place = {
          temperature: { value: degrees, unit: 'degC' },
          elevation: { value: metres, unit: 'm' },
        } as const;
        const state = moistAir({ ...place, relativeHumidity });
        const again = [
          moistAir({ ...place, wetBulb: state.wetBulb as never }),
          moistAir({ ...place, dewPoint: state.dewPoint as never }),
          moistAir({ ...place, humidityRatio: state.humidityRatio }),
          moistAir({ ...place, vaporPressure: state.vaporPressure as never }),
        ];
        for (const { relativeHumidity: found } of again) expect(found).toBeCloseTo(relativeHumidity, 6);
        expect(state.dewPoint?.value).toBeLessThan(state.wetBulb.value);
        expect(state.wetBulb.value).toBeLessThan(degrees);
        expect(state.dryingCapacity).toBeGreaterThan(0);
      },
    ),
  );
});

test('saturated air has dew point and wet bulb at its own temperature and takes up nothing', () => {
  const state = moistAir({ temperature: '75 degF', relativeHumidity: '100 %', elevation: '1000 ft' });
  expect(state.dewPoint?.value).toBeCloseTo(75, 6);
  expect(state.wetBulb.value).toBeCloseTo(75, 6);
  expect(state.wetBulb.unit).toBe('degF');
  expect(state.dryingCapacity).toBeCloseTo(0, 9);
});

test('bone-dry air has no dew point', () => {
  const state = moistAir({ temperature: '25 degC', humidityRatio: 0, pressure: '1 atm' });
  expect(state).not.toHaveProperty('dewPoint');
  expect(state.relativeHumidity).toBe(0);
});

test('hot, humid air above the boiling point is read too', () => {
  const state = moistAir({ temperature: '150 degC', humidityRatio: 0.5, pressure: '1 atm' });
  expect(state.wetBulb.value).toBeGreaterThan(70);
  expect(state.wetBulb.value).toBeLessThan(100);
});

test('the wet bulb goes on below freezing, over ice', () => {
  const state = moistAir({ temperature: '-10 degC', wetBulb: '-12 degC', elevation: '0 m' });
  expect(state.wetBulb.value).toBeCloseTo(-12, 6);
  expect(state.dewPoint?.value).toBeLessThan(-12);
});

test('the two saturation equations meet at the triple point', () => {
  const [below, above] = [moistAirSaturation(0.00999), moistAirSaturation(0.01001)];
  // 611.657 Pa (IAPWS SR1-86 Table 1)
  expect(below).toBeCloseTo(611.66, 1);
  expect(above / below).toBeCloseTo(1, 4);
});

test('thinner air dries better', () => {
  const at = (elevation: `${number} m`) =>
    moistAir({ temperature: '60 degC', dewPoint: '10 degC', elevation }).dryingCapacity;
  expect(at('2000 m')).toBeGreaterThan(at('0 m'));
});

test('only an elevation brings the standard atmosphere into the basis', () => {
  const sources = (place: { elevation: '0 m' } | { pressure: '1 atm' }) =>
    new Set(
      moistAir({ temperature: '20 degC', relativeHumidity: 0.5, ...place }).basis.map(
        ({ kind, source }) => source ?? kind,
      ),
    );
  expect(sources({ elevation: '0 m' })).toEqual(new Set(['ussa-1976', 'measured', 'ashrae-hof-2017']));
  expect(sources({ pressure: '1 atm' })).toEqual(new Set(['measured', 'ashrae-hof-2017']));
});

test('every line of the basis names a field of the answer', () => {
  for (const humidityRatio of [0, 0.005]) {
    const air = moistAir({ temperature: '20 degC', humidityRatio, elevation: '0 m' });
    for (const { of } of air.basis) expect(Object.keys(air)).toContain(of);
  }
});

test.each([
  [{ temperature: '20 degC', relativeHumidity: 0.5 }, ['MISSING', 'elevation']],
  [{ temperature: '20 degC', elevation: '0 m' }, ['MISSING', 'relativeHumidity']],
  [{ temperature: '20 degC', elevation: '0 m', pressure: '1 atm', wetBulb: '15 degC' }, ['CONTRADICTION', 'pressure']],
  [{ temperature: '20 degC', elevation: '0 m', wetBulb: '15 degC', dewPoint: '9 degC' }, ['CONTRADICTION', 'dewPoint']],
  [{ temperature: '20 degC', elevation: '0 m', relativeHumidity: 50 }, ['OUT_OF_RANGE', 'relativeHumidity']],
  [{ temperature: '20 degC', elevation: '0 m', dewPoint: '25 degC' }, ['OUT_OF_RANGE', 'dewPoint']],
  [{ temperature: '20 degC', elevation: '0 m', wetBulb: '25 degC' }, ['OUT_OF_RANGE', 'wetBulb']],
  // drier than dry: no air cools that far
  [{ temperature: '40 degC', elevation: '0 m', wetBulb: '5 degC' }, ['OUT_OF_RANGE', 'wetBulb']],
  [{ temperature: '120 degC', elevation: '0 m', relativeHumidity: 1 }, ['OUT_OF_RANGE', 'relativeHumidity']],
  [{ temperature: '120 degC', elevation: '0 m', wetBulb: '105 degC' }, ['OUT_OF_RANGE', 'wetBulb']],
  [{ temperature: '20 degC', elevation: '0 m', humidityRatio: 1 }, ['OUT_OF_RANGE', 'humidityRatio']],
  [{ temperature: '250 degC', elevation: '0 m', humidityRatio: 0.1 }, ['OUT_OF_RANGE', 'temperature']],
])('%j is refused', (input, error) => {
  expect(errorOf(() => moistAir(input as never))).toEqual(error);
});
