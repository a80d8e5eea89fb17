import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillJar } from '../../src/jars/index';
import { valueIn } from '../../src/quantity/scale';
import { codeOf, pathOf } from '../helpers/errors';

const sizes = ['4 oz', 'half-pint', '12 oz', 'pint', '24 oz', '28 oz', 'quart', 'half-gallon'];

describe('fillJar', () => {
  test('an inch of headspace holds 72.6 mL in a regular and 115.8 mL in a wide mouth (area of the published opening)', () => {
    const inch = (mouth: string) => valueIn(fillJar({ jar: 'quart', mouth, headspace: '1 in' }).headspaceVolume, 'mL');
    expect(inch('regular')).toBeCloseTo(72.6, 1);
    expect(inch('wide')).toBeCloseTo(115.8, 1);
  });

  test('volumes come in fl oz for inches, mL for millimeters, and the own unit of a measured jar', () => {
    expect(fillJar({ jar: 'pint', headspace: '1/2 in' }).fillVolume.unit).toBe('fl oz');
    expect(fillJar({ jar: 'pint', headspace: '12 mm' }).fillVolume.unit).toBe('mL');
    const own = { brimful: '2 cups', opening: '60 mm' } as const;
    expect(fillJar({ jar: own, headspace: '12 mm' }).fillVolume.unit).toBe('cup');
  });

  test('net mass is volume times density, in a unit of the same system', () => {
    const jar = { brimful: '1000 mL', opening: '2 cm' } as const;
    const mass = (density: string) => fillJar({ jar, headspace: '1 cm', density: density as never }).netMass;
    const fill = 1000 - Math.PI;
    expect(mass('1.2 g/mL')?.value).toBeCloseTo(fill * 1.2, 6);
    expect(mass('1.2 g/mL')?.unit).toBe('g');
    expect(mass('1200 kg/m3')).toEqual({ value: expect.closeTo((fill * 1.2) / 1000, 9), unit: 'kg' });
    expect(mass('10 lb/gal')?.unit).toBe('lb');
    expect(mass('60 lb/ft3')?.unit).toBe('lb');
    expect(mass('2 lb/quart')?.unit).toBe('lb');
    expect(mass('240 g/cup')?.unit).toBe('g');
  });

  test('watery contents weigh as water of their temperature (958.4 kg/m3 at 100 degC, CRC)', () => {
    const jar = { brimful: '1003.14159 mL', opening: '2 cm' } as const;
    const filled = fillJar({ jar, headspace: '1 cm', temperature: '100 degC' });
    expect(filled.netMass?.value).toBeCloseTo(958.4, 0);
    expect(filled.basis.map(({ of }) => of)).toContain('netMass');
    expect(fillJar({ jar: 'pint', headspace: '1/2 in', temperature: '180 degF' }).netMass?.unit).toBe('oz');
    expect(fillJar({ jar: 'pint', headspace: '1/2 in' }).netMass).toBeUndefined();
  });

  test('contents and headspace make up the capacity, and more headspace never means more food', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...sizes),
        fc.constantFrom('regular', 'wide'),
        fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        (jar, mouth, depth) => {
          const at = (value: number) => fillJar({ jar, mouth, headspace: { value, unit: 'in' } });
          const filled = at(depth);
          const whole = sizes.indexOf(jar);
          const capacity = [4, 8, 12, 16, 24, 28, 32, 64][whole] as number;
          expect(filled.fillVolume.value + filled.headspaceVolume.value).toBeCloseTo(capacity, 9);
          expect(at(depth * 1.01).fillVolume.value).toBeLessThan(filled.fillVolume.value);
          expect(filled.fillVolume.value).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('the assumption about the nominal capacity is common practice, with its cautions', () => {
    const named = fillJar({ jar: 'pint', headspace: '1/2 in' });
    expect(named.basis.at(-1)).toEqual({
      of: 'fillVolume',
      note: 'nominal capacity less headspace volume',
      kind: 'common-practice',
    });
    expect(named.cautions.map(({ id }) => id)).toEqual(['nominal-capacity', 'straight-neck']);
    const own = fillJar({ jar: { brimful: '500 mL', opening: '6 cm' }, headspace: '1 cm' });
    expect(own.cautions.map(({ id }) => id)).toEqual(['straight-neck']);
  });

  test.each([
    [{ jar: 'half-pint', headspace: '3.3 in' }, 'OUT_OF_RANGE', 'headspace'],
    [{ jar: 'pint', headspace: '0 in' }, 'OUT_OF_RANGE', 'headspace'],
    [{ jar: 'pint', headspace: '-1 in' }, 'OUT_OF_RANGE', 'headspace'],
    [{ jar: 'pint', headspace: '1 cup' }, 'WRONG_DIMENSION', 'headspace'],
    [{ jar: 'pint', headspace: Number.NaN }, 'WRONG_TYPE', 'headspace'],
    [{ jar: 'pint', headspace: { value: Infinity, unit: 'in' } }, 'OUT_OF_RANGE', 'headspace'],
    [{ jar: 'pint' }, 'MISSING', 'headspace'],
    [{ jar: 'pint', headspace: '1 in', density: '3 lb' }, 'WRONG_DIMENSION', 'density'],
    [{ jar: 'pint', headspace: '1 in', density: '1 g/mL', temperature: '20 degC' }, 'CONTRADICTION', 'temperature'],
    [{ jar: 'pint', headspace: '1 in', temperature: '120 degC' }, 'OUT_OF_RANGE', 'temperature'],
    [{ jar: 'gill', headspace: '1 in' }, 'UNKNOWN_NAME', 'jar'],
    [undefined, 'MISSING', ''],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => fillJar(input as never))).toBe(code);
    expect(pathOf(() => fillJar(input as never))).toBe(path);
  });
});
