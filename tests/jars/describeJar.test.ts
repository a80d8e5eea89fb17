import { describe, expect, test } from 'vitest';
import { describeJar } from '../../src/jars/index';
import { codeOf, pathOf } from '../helpers/errors';

describe('describeJar', () => {
  test.each([
    ['pints', 'pint'],
    ['Pint Jar', 'pint'],
    ['half pint', 'half-pint'],
    ['½ pint', 'half-pint'],
    ['8-ounce jars', 'half-pint'],
    ['16 fl oz', 'pint'],
    ['pint and a half', '24 oz'],
    ['one and a half pints', '24 oz'],
    ['1½ pints', '24 oz'],
    ['1 1/2 pint (24 oz)', '24 oz'],
    ['wide-mouth quart', 'wide-mouth quart'],
    ['quarts, wide mouth', 'wide-mouth quart'],
    ['regular mouth quart', 'quart'],
    ['half gallon', 'half-gallon'],
  ])('%s is the %s', (jar, name) => {
    expect(describeJar({ jar }).name).toBe(name);
  });

  test('a pint and a half is never read as a half-pint', () => {
    for (const jar of ['pint and a half', 'pints and a half', 'pint and half', 'one pint and a half']) {
      expect(describeJar({ jar }).capacity.value).toBe(24);
    }
  });

  test('the mouth may be said beside the jar, and is regular when not said, which the basis states', () => {
    expect(describeJar({ jar: 'pint', mouth: 'wide' }).opening).toEqual({ value: 3, unit: 'in' });
    expect(describeJar({ jar: 'pint', mouth: 'regular' }).basis).toHaveLength(2);
    expect(describeJar({ jar: 'pint' }).basis).toContainEqual({
      of: 'mouth',
      kind: 'common-practice',
      note: 'a regular mouth, as none was named',
    });
  });

  test('a nominal capacity is said to be one; a measured jar carries no such caution', () => {
    expect(describeJar({ jar: 'pint' }).cautions.map(({ id }) => id)).toEqual(['nominal-capacity']);
    const own = describeJar({ jar: { size: 'pint', brimful: '495 mL', mouth: 'wide' } });
    expect(own).toMatchObject({ name: 'pint (own jar)', size: 'pint', capacityIs: 'brimful', mouth: 'wide' });
    expect(own.cautions).toEqual([]);
    expect(own.basis.map(({ kind }) => kind)).toEqual(['measured', 'published']);
  });

  test('a jar of no known size goes by its capacity', () => {
    const own = describeJar({ jar: { nominal: '500 mL', opening: '70 mm' } });
    expect(own).toMatchObject({ name: '500 mL jar', capacityIs: 'nominal', opening: { value: 70, unit: 'mm' } });
    expect(own.size).toBeUndefined();
    expect(own.mouth).toBeUndefined();
  });

  test('a jar named by its volume is a size where it holds just that', () => {
    expect(describeJar({ jar: '500 mL', mouth: 'wide' })).toMatchObject({
      name: 'wide-mouth 500 mL jar',
      capacity: { value: 500, unit: 'mL' },
      capacityIs: 'nominal',
    });
    expect(describeJar({ jar: '500 mL' })).not.toHaveProperty('size');
    expect(describeJar({ jar: { value: 32, unit: 'fl oz' } })).toMatchObject({ name: 'quart', size: 'quart' });
  });

  test('a measured mouth on a published size keeps the published capacity', () => {
    const own = describeJar({ jar: { size: 'wide-mouth half-gallon', opening: '72 mm' } });
    expect(own).toMatchObject({ size: 'half-gallon', capacity: { value: 64, unit: 'fl oz' } });
    expect(own.cautions.map(({ id }) => id)).toContain('half-gallon-juice-only');
    expect(own.basis.map(({ kind }) => kind)).toEqual(['published', 'measured']);
    expect(describeJar({ jar: { size: 'wide-mouth pint', brimful: '17 fl oz' } as never }).mouth).toBe('wide');
  });

  test.each([
    [{ jar: 'firkin' }, 'UNKNOWN_NAME', 'jar'],
    [{ jar: 'imperial pint' }, 'UNKNOWN_NAME', 'jar'],
    [{ jar: '2 lb' }, 'WRONG_DIMENSION', 'jar'],
    [{ jar: '0 mL' }, 'OUT_OF_RANGE', 'jar'],
    [{ jar: 'wide mouth pint, regular mouth' }, 'CONTRADICTION', 'jar'],
    [{ jar: { size: 'wide-mouth pint', brimful: '490 mL' }, mouth: 'regular' }, 'CONTRADICTION', 'mouth'],
    [{ jar: '' }, 'UNKNOWN_NAME', 'jar'],
    [{ jar: 'x'.repeat(10_000) }, 'UNKNOWN_NAME', 'jar'],
    [{ jar: 16 }, 'WRONG_TYPE', 'jar'],
    [{ jar: null }, 'WRONG_TYPE', 'jar'],
    [{ jar: ['pint'] }, 'WRONG_TYPE', 'jar'],
    [{}, 'MISSING', 'jar'],
    [{ jar: 'pint', mouth: 'tiny' }, 'UNKNOWN_NAME', 'mouth'],
    [{ jar: 'wide-mouth pint', mouth: 'regular' }, 'CONTRADICTION', 'mouth'],
    [{ jar: { brimful: '500 mL' } }, 'MISSING', 'jar.opening'],
    [{ jar: { opening: '60 mm' } }, 'MISSING', 'jar.brimful'],
    [{ jar: { brimful: '500 g', opening: '60 mm' } }, 'WRONG_DIMENSION', 'jar.brimful'],
    [{ jar: { brimful: '-1 mL', opening: '60 mm' } }, 'OUT_OF_RANGE', 'jar.brimful'],
    [{ jar: { brimful: '400 mL', nominal: '1 pint', opening: '60 mm' } }, 'CONTRADICTION', 'jar.brimful'],
    [{ jar: { size: 'tub', opening: '60 mm' } }, 'UNKNOWN_NAME', 'jar.size'],
    [{ jar: { brimful: '500 mL', opening: '60 mm', colour: 'blue' } }, 'UNKNOWN_FIELD', 'jar.colour'],
    [JSON.parse('{"jar":{"__proto__":{}}}'), 'UNKNOWN_FIELD', 'jar.__proto__'],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => describeJar(input as never))).toBe(code);
    expect(pathOf(() => describeJar(input as never))).toBe(path);
  });

  test('the input is left as it was', () => {
    const input = Object.freeze({ jar: Object.freeze({ brimful: '500 mL', opening: '60 mm' }) } as const);
    expect(describeJar(input).capacity).toEqual({ value: 500, unit: 'mL' });
  });
});

describe('a jar whose water is weighed', () => {
  test.each([
    // CRC densities of water at 1 atm
    [20, 998.2071],
    [30, 995.6502],
    [60, 983.2],
  ])('a liter of water at %d degC weighs %d g', (value, grams) => {
    const { capacity: brimful } = describeJar({
      water: { value: grams, unit: 'g' },
      temperature: { value, unit: 'degC' },
    });
    expect(brimful.unit).toBe('mL');
    expect(brimful.value).toBeCloseTo(1000, 0);
  });

  test('has its mouth, or a regular one, and says where each figure is from', () => {
    const weighed = { water: '500 g', temperature: '20 degC' } as const;
    expect(describeJar({ ...weighed, opening: '60 mm' })).toMatchObject({
      capacityIs: 'brimful',
      opening: { value: 60, unit: 'mm' },
      basis: [{ of: 'capacity', kind: 'measured' }, { of: 'capacity' }, { of: 'opening', kind: 'measured' }],
    });
    expect(describeJar({ ...weighed, mouth: 'wide' }).mouth).toBe('wide');
    const plain = describeJar(weighed);
    expect(plain.mouth).toBe('regular');
    expect(plain.basis.map(({ kind }) => kind)).toContain('common-practice');
  });

  test('a weight in ounces gives fluid ounces', () => {
    expect(describeJar({ water: '17 oz', temperature: '68 degF' }).capacity).toEqual({
      // 17 oz = 481.9417 g; / 0.9982 g/mL = 482.81 mL = 16.326 fl oz
      value: expect.closeTo(16.326, 3),
      unit: 'fl oz',
    });
    expect(describeJar({ water: '1 lb', temperature: '68 degF' }).capacity.unit).toBe('fl oz');
  });

  test.each([
    [{ water: '0 g', temperature: '20 degC' }, 'OUT_OF_RANGE', 'water'],
    [{ water: '500 mL', temperature: '20 degC' }, 'WRONG_DIMENSION', 'water'],
    [{ water: '500 g', temperature: '-5 degC' }, 'OUT_OF_RANGE', 'temperature'],
    [{ water: '500 g' }, 'MISSING', 'temperature'],
    [{ water: '500 g', temperature: '20 degC', opening: '60 mm', mouth: 'wide' }, 'CONTRADICTION', 'mouth'],
    [{ water: '500 g', temperature: '20 degC', jar: 'pint' }, 'UNKNOWN_FIELD', 'jar'],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => describeJar(input as never))).toBe(code);
    expect(pathOf(() => describeJar(input as never))).toBe(path);
  });
});
