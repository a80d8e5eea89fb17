import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acidForJars } from '../../src/acid/index';
import {
  checkHeadspace,
  describeJar,
  expansionInJar,
  fillJar,
  jarsFor,
  loadsFor,
  sealVacuum,
} from '../../src/jars/index';
import { planSchema } from '../../src/plan/request/planInput';
import { loadTimeline, testedProcess } from '../../src/process/index';
import { rawForJars } from '../../src/produce/index';
import { jamBalance } from '../../src/sugar/index';
import {
  capacityOf,
  JAR_SIZES,
  type JarInput,
  listedSize,
  readJar,
  sizeAtLeast,
  sizeOf,
  sizeRows,
} from '../../src/words/jar';
import { mouthRows } from '../../src/words/mouth';
import { codeOf, pathOf, thrownBy } from '../helpers/errors';

const LISTED = ['half-pint', 'pint', 'quart', 'half-gallon'] as const;

describe('readJar', () => {
  test.each<[JarInput, string, number]>([
    ['pint', 'pint', 16],
    ['Pints', 'pint', 16],
    ['pint jar', 'pint', 16],
    ['1 pint', 'pint', 16],
    ['one pint', 'pint', 16],
    ['16 oz', 'pint', 16],
    ['16-ounce jars', 'pint', 16],
    ['wide-mouth pint', 'pint', 16],
    ['pint (16 oz)', 'pint', 16],
    ['PINT_JAR', 'pint', 16],
    ['pts', 'pint', 16],
    ['1 pint-jar', 'pint', 16],
    ['16 fl. oz', 'pint', 16],
    ['½ quart', 'pint', 16],
    ['(16 oz)', 'pint', 16],
    ['qts', 'quart', 32],
    ['2 pints', 'quart', 32],
    ['half-pint (8 oz)', 'half-pint', 8],
    ['half pint', 'half-pint', 8],
    ['½-pint', 'half-pint', 8],
    ['8 oz jelly jar', 'half-pint', 8],
    ['1 cup', 'half-pint', 8],
    ['quart', 'quart', 32],
    ['quart mason jars', 'quart', 32],
    ['half-gallon (64 oz)', 'half-gallon', 64],
    ['12 oz', '12 oz', 12],
    ['12 oz jelly jar', '12 oz', 12],
    ['1 1/2 pint (24 oz)', '24 oz', 24],
    ['pint and a half', '24 oz', 24],
    ['28 fl oz', '28 oz', 28],
    [{ value: 0.5, unit: 'gallon' }, 'half-gallon', 64],
    [{ value: 12, unit: 'fl oz' }, '12 oz', 12],
    [{ size: 'wide-mouth pint', brimful: '490 mL', opening: '77 mm' }, 'pint', 16],
    [{ nominal: '1 quart', opening: '60 mm' }, 'quart', 32],
  ])('%o', (given, name, ounces) => {
    const jar = readJar(given);
    expect(jar).toMatchObject({ name, volume: { value: ounces, unit: 'fl oz' } });
    expect(listedSize(jar, LISTED)).toBe(
      ounces <= 8 ? 'half-pint' : ounces <= 16 ? 'pint' : ounces <= 32 ? 'quart' : 'half-gallon',
    );
  });

  test.each<[unknown, string, string]>([
    [undefined, 'MISSING', 'jar'],
    [null, 'WRONG_TYPE', 'jar'],
    [7, 'WRONG_TYPE', 'jar'],
    [['pint'], 'WRONG_TYPE', 'jar'],
    ['', 'UNKNOWN_NAME', 'jar'],
    ['jar', 'UNKNOWN_NAME', 'jar'],
    ['jelly jar', 'UNKNOWN_NAME', 'jar'],
    ['bucket', 'UNKNOWN_NAME', 'jar'],
    ['imperial pint', 'UNKNOWN_NAME', 'jar'],
    ['constructor', 'UNKNOWN_NAME', 'jar'],
    ['__proto__', 'UNKNOWN_NAME', 'jar'],
    ['x'.repeat(10_000), 'UNKNOWN_NAME', 'jar'],
    ['2 lb', 'WRONG_DIMENSION', 'jar'],
    ['0 oz', 'OUT_OF_RANGE', 'jar'],
    ['-1 pint', 'OUT_OF_RANGE', 'jar'],
    ['1/0 cup', 'UNKNOWN_NAME', 'jar'],
    ['pint (32 oz)', 'CONTRADICTION', 'jar'],
    ['wide mouth pint, regular mouth', 'CONTRADICTION', 'jar'],
    [{ value: Number.NaN, unit: 'pint' }, 'OUT_OF_RANGE', 'jar'],
    [{ value: 1, unit: 'kg' }, 'WRONG_DIMENSION', 'jar'],
    [{}, 'MISSING', 'jar.brimful'],
    [{ size: 'tub', brimful: '1 L' }, 'UNKNOWN_NAME', 'jar.size'],
    [{ size: '500 mL' }, 'UNKNOWN_NAME', 'jar.size'],
    [{ size: 16 }, 'WRONG_TYPE', 'jar.size'],
    [{ size: 'pint', brimful: '1 L' }, 'CONTRADICTION', 'jar.brimful'],
    [{ size: 'pint', nominal: '1 quart' }, 'CONTRADICTION', 'jar.nominal'],
    [{ nominal: '8 oz', brimful: '1 L' }, 'WRONG_DIMENSION', 'jar.nominal'],
    [{ nominal: '8 fl oz', brimful: '1 L' }, 'CONTRADICTION', 'jar.brimful'],
    [{ brimful: '400 mL', nominal: '1 pint' }, 'CONTRADICTION', 'jar.brimful'],
    [{ brimful: '500 mL', color: 'blue' }, 'UNKNOWN_FIELD', 'jar.color'],
    [JSON.parse('{"__proto__":{}}'), 'UNKNOWN_FIELD', 'jar.__proto__'],
  ])('%o is an error', (given, code, path) => {
    const error = thrownBy(() => readJar(given));
    expect([error.code, error.path]).toEqual([code, path]);
    if (typeof given === 'string') expect(error.given).toBe(given);
  });

  test('an unknown name offers the sizes, the nearest first of all', () => {
    const error = thrownBy(() => readJar('Qaurt'));
    expect(error.options).toEqual(JAR_SIZES);
    expect(error.nearest).toEqual(['quart']);
    expect(error.given).toBe('Qaurt');
  });

  test('numbers are never put in another order, as words are', () => {
    expect(readJar('5.1 pint').volume).toEqual({ value: 5.1, unit: 'pint' });
    expect(listedSize(readJar('5.1 pint'), LISTED)).toBeUndefined();
  });

  test('the mouth may stand in the name, by any of its names', () => {
    for (const { name, synonyms = [] } of mouthRows) {
      for (const mouth of [name, ...synonyms])
        expect(readJar(`${mouth} quart`)).toMatchObject({ name: 'quart', mouth: name });
    }
    expect(readJar('quarts, wide-mouthed').mouth).toBe('wide');
    expect(readJar('quart')).not.toHaveProperty('mouth');
  });

  test('the name of a jar is itself a jar of the same size', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.constantFrom('mL', 'fl oz', 'cup', 'pint'), (value, unit) => {
        const jar = readJar({ value, unit });
        expect(readJar(jar.name)).toEqual(jar);
      }),
    );
  });
});

describe('the next larger size, never a smaller one', () => {
  test('by example', () => {
    expect(listedSize(readJar('12 oz'), ['quart'])).toBe('quart');
    expect(listedSize(readJar('500 mL'), ['pint', 'quart'])).toBe('quart');
    expect(listedSize(readJar('473.176473 mL'), ['pint', 'quart'])).toBe('pint');
    expect(listedSize(readJar('quart'), ['half-pint', 'pint'])).toBeUndefined();
    expect(sizeOf(readJar('500 mL')).name).toBe('24 oz');
    expect(codeOf(() => sizeOf(readJar('5 L')))).toBe('OUT_OF_RANGE');
    // measured to the brim and of no known size, it is more than a pint
    expect(listedSize(readJar({ brimful: '502 mL', opening: '60 mm' }), ['pint', 'quart'])).toBe('quart');
    expect(listedSize(readJar({ size: 'pint', brimful: '502 mL' }), ['pint', 'quart'])).toBe('pint');
    expect(listedSize(readJar({ size: 'pint', nominal: '500 mL' }), ['pint', 'quart'])).toBe('quart');
  });

  test('for every volume', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1800, noNaN: true }), (milliliters) => {
        const jar = readJar({ value: milliliters, unit: 'mL' });
        const listed = listedSize(jar, LISTED) as (typeof LISTED)[number];
        const row = sizeAtLeast(jar.volume);
        for (const [size, sizes] of [
          [listed, LISTED],
          [row?.name as string, JAR_SIZES],
        ] as const) {
          const floz = (name: string) => capacityOf(name).value * 29.5735295625;
          expect(floz(size)).toBeGreaterThanOrEqual(milliliters * (1 - 1e-12));
          for (const smaller of sizes.slice(0, sizes.indexOf(size as never))) {
            expect(floz(smaller)).toBeLessThan(milliliters * (1 + 1e-12));
          }
        }
      }),
    );
  });
});

/** Every public function that takes a jar, with everything else it needs. */
const TAKERS: Readonly<Record<string, (jar: never) => unknown>> = {
  describeJar: (jar) => describeJar({ jar }),
  fillJar: (jar) => fillJar({ jar, headspace: '1/4 in' }),
  jarsFor: (jar) => jarsFor({ jar, volume: '6 quarts', headspace: '1/4 in' }),
  loadsFor: (jar) => loadsFor({ jar, jars: 9, canner: { 'half-gallon': 4 } }),
  expansionInJar: (jar) =>
    expansionInJar({ jar, headspace: '1/4 in', fillTemperature: '20 degC', processTemperature: '100 degC' }),
  sealVacuum: (jar) => sealVacuum({ jar, headspace: '1/4 in', closingTemperature: '95 degC', elevation: '0 ft' }),
  checkHeadspace: (jar) => checkHeadspace({ jar, food: 'jam', measured: '1/4 in', when: 'before processing' }),
  testedProcess: (jar) => testedProcess({ jar, food: 'applesauce', method: 'boiling-water', elevation: '0 ft' }),
  loadTimeline: (jar) => loadTimeline({ jar, ...LOAD }),
  rawForJars: (jar) => rawForJars({ jar, food: 'peach', form: 'halves', jars: 7 }),
  'rawForJars of an amount': (jar) => rawForJars({ jar, food: 'peach', form: 'halves', raw: '20 lb' }),
  acidForJars: (jar) => acidForJars({ jar, food: 'tomato', jars: 7 }),
  jamBalance: (jar) => jamBalance({ jar, jars: 7, solids: 0.1, sugarToFruit: 1, finishSolids: 0.65 }),
  planDay: (jar) =>
    planSchema.parse({
      lots: [{ food: 'peach', raw: '20 lb' }],
      kitchen: { elevation: '0 ft', hours: '8 h', jars: [{ jar, count: 4 }] },
      products: [{ make: 'jars', from: 'peach', jar }],
    }),
};
const LOAD = {
  food: 'applesauce',
  method: 'boiling-water',
  elevation: '0 ft',
  jars: 7,
  waterVolume: '12 quarts',
  burnerPower: '2 kW',
} as const;
const SPELLED = sizeRows.flatMap(({ name, synonyms = [] }) => [name, ...synonyms]);

describe.each(Object.entries(TAKERS))('%s', (_, take) => {
  test('understands every name of every size', () => {
    for (const jar of SPELLED) expect(() => take(jar as never)).not.toThrow();
  });
  test('understands a wide mouth, a volume and a measured jar', () => {
    const measured = { brimful: '502 mL', opening: '60 mm' };
    for (const jar of ['wide-mouth quart', 'quarts, wide mouth', '500 mL', { value: 500, unit: 'mL' }, measured]) {
      expect(() => take(jar as never)).not.toThrow();
    }
  });
  test('repeats an unknown name unchanged', () => {
    for (const jar of ['  Firkin ', 'constructor', '__proto__']) {
      expect(() => take(jar as never)).toThrow();
    }
  });
});

test('the error of a function names the field and repeats the text', () => {
  for (const [name, take] of Object.entries(TAKERS)) {
    if (name === 'planDay') continue;
    const error = thrownBy(() => take('  Firkin ' as never));
    expect([error.code, pathOf(() => take('  Firkin ' as never)), error.given]).toEqual([
      'UNKNOWN_NAME',
      'jar',
      '  Firkin ',
    ]);
  }
});
