import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sealVacuum } from '../../src/jars/index';
import { cooledAir } from '../../src/jars/sealVacuum';
import { convert } from '../../src/quantity/index';
import { codeOf, pathOf } from '../helpers/errors';

describe('sealVacuum', () => {
  test('closed at 80 degC under the normal atmosphere: 16.016 inHg at 20 degC in a rigid headspace', () => {
    // p2 = (101325 - 47414.5) x 293.15/353.15 + 2339.2 Pa, saturation by IAPWS-IF97
    const answer = sealVacuum({ closingTemperature: '80 degC', pressure: '101325 Pa' });
    expect(convert(answer.vacuum, 'inHg').value).toBeCloseTo(16.016, 2);
    expect(answer.vacuum.unit).toBe('kPa');
    expect(answer.outside.value - answer.inside.value).toBeCloseTo(answer.vacuum.value, 9);
  });

  test('shrinking contents draw a stronger vacuum, most where the headspace is small', () => {
    const at = (headspaceShare?: number) =>
      sealVacuum({ closingTemperature: '80 degC', elevation: '0 m', ...(headspaceShare ? { headspaceShare } : {}) })
        .vacuum.value;
    expect(at(0.06)).toBeGreaterThan(at(0.12));
    expect(at(0.12)).toBeGreaterThan(at());
    // 6% of headspace, contents by recalled densities 971.8 and 998.21 kg/m3: 67.33 kPa
    expect(at(0.06)).toBeCloseTo(67.33, 1);
    const jar = sealVacuum({ closingTemperature: '80 degC', elevation: '0 m', jar: 'pint', headspace: '12 mm' });
    expect(jar.vacuum.value).toBeGreaterThan(at());
    expect(jar.cautions.map(({ id }) => id)).toContain('nominal-capacity');
  });

  test('a jar closed at the boiling point keeps only steam', () => {
    const answer = sealVacuum({ closingTemperature: { value: 373.1243, unit: 'K' }, pressure: '101.325 kPa' });
    // nothing but the vapour pressure of water at 20 degC: 2.339 kPa
    expect(answer.inside.value).toBeCloseTo(2.339, 2);
    expect(codeOf(() => sealVacuum({ closingTemperature: '100 degC', pressure: '101.325 kPa' }))).toBe('OUT_OF_RANGE');
  });

  test('closing hotter draws more; the same jar higher up draws less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 25, max: 84, noNaN: true }),
        fc.double({ min: -400, max: 3400, noNaN: true }),
        (closing, metres) => {
          const at = (value: number, elevation: number) =>
            sealVacuum({
              closingTemperature: { value, unit: 'degC' },
              elevation: { value: elevation, unit: 'm' },
              headspaceShare: 0.08,
            });
          const answer = at(closing, metres);
          expect(at(closing + 1, metres).vacuum.value).toBeGreaterThan(answer.vacuum.value);
          expect(at(closing, metres + 100).vacuum.value).toBeLessThan(answer.vacuum.value);
          expect(answer.inside.value).toBeGreaterThan(0);
          expect(answer.vacuum.value).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('room temperature is taken where none is given, and said so', () => {
    const { basis } = sealVacuum({ closingTemperature: '60 degC', elevation: '0 m' });
    const line = { of: 'vacuum', kind: 'common-practice', note: 'read at room temperature, 20 degC' };
    expect(basis).toContainEqual(line);
    const asked = sealVacuum({ closingTemperature: '60 degC', elevation: '0 m', cooledTo: '20 degC' });
    expect(asked.basis).not.toContainEqual(line);
  });

  test('no cooling, no vacuum', () => {
    const still = sealVacuum({ closingTemperature: '60 degC', cooledTo: '60 degC', elevation: '0 m' });
    expect(still.vacuum.value).toBeCloseTo(0, 9);
  });

  test('answers in inHg for a kitchen in feet', () => {
    expect(sealVacuum({ closingTemperature: '180 degF', elevation: '3400 ft' }).vacuum.unit).toBe('inHg');
    expect(sealVacuum({ closingTemperature: '80 degC', elevation: '3400 ft' }).vacuum.unit).toBe('inHg');
    expect(sealVacuum({ closingTemperature: '80 degC', elevation: '1000 m' }).vacuum.unit).toBe('kPa');
  });

  test.each([
    [{ closingTemperature: '80 degC' }, 'MISSING', 'elevation'],
    [{ closingTemperature: '80 degC', elevation: '0 m', pressure: '1 atm' }, 'CONTRADICTION', 'pressure'],
    [{ closingTemperature: '99 degC', elevation: '1500 m' }, 'OUT_OF_RANGE', 'closingTemperature'],
    [{ closingTemperature: '300 degF', elevation: '0 m' }, 'OUT_OF_RANGE', 'closingTemperature'],
    [{ closingTemperature: '60 degC', cooledTo: '70 degC', elevation: '0 m' }, 'CONTRADICTION', 'cooledTo'],
    [{ closingTemperature: '60 degC', elevation: '9000 m' }, 'OUT_OF_RANGE', 'elevation'],
    [{ closingTemperature: '60 degC', elevation: '0 m', jar: 'pint' }, 'MISSING', 'headspace'],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => sealVacuum(input as never))).toBe(code);
    expect(pathOf(() => sealVacuum(input as never))).toBe(path);
  });
});

test('103 kPa of air closed at 40 degC falls to 96.4 kPa at 20 degC (worked problem of a washed glass)', () => {
  expect(Math.abs(cooledAir(103, 313.15, 293.15) - 96.4)).toBeLessThan(0.05);
  expect(cooledAir(cooledAir(15, 355, 294), 294, 355)).toBeCloseTo(15, 12);
});
