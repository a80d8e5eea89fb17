import fc from 'fast-check';
import { expect, test } from 'vitest';
import { acidClass as askClass } from '../../src/acid/index';
import { phOf as askPh } from '../../src/acid/phOf';
import { expectError } from '../helpers/errors';

/** The answers where a food without figures is not what is tested. */
const acidClass = (input: Parameters<typeof askClass>[0]) => {
  const answer = askClass(input);
  if ('known' in answer) throw new Error(answer.reason.text);
  return answer;
};
const phOf = (input: Parameters<typeof askPh>[0]) => {
  const answer = askPh(input);
  if ('known' in answer) throw new Error(answer.reason.text);
  return answer;
};

// 21 CFR 114.3 and USDA Guide 1: acid up to and with pH 4.6
test('a reading on the limit is acid, one above it is low-acid', () => {
  expect(acidClass({ pH: 4.6, uncertainty: 0 })).toMatchObject({
    home: 'acid',
    homeUndecided: false,
    margin: 0,
  });
  expect(acidClass({ pH: 4.61, uncertainty: 0 })).toMatchObject({ home: 'low-acid', homeUndecided: false });
  expect(acidClass({ pH: 4.6, uncertainty: 0 }).canner).toBe('boiling-water canner');
  expect(acidClass({ pH: 5 }).canner).toBe('pressure canner');
});

test('a limit within the uncertainty is low-acid and says that it is undecided', () => {
  expect(acidClass({ pH: 4.55, uncertainty: 0.1 })).toMatchObject({ home: 'low-acid', homeUndecided: true });
  expect(acidClass({ pH: 4.65, uncertainty: 0.1 })).toMatchObject({ home: 'low-acid', homeUndecided: true });
  expect(acidClass({ pH: 4.8, uncertainty: 0.1 })).toMatchObject({ home: 'low-acid', homeUndecided: false });
  // 4.4 + 0.2 is 4.6000000000000005 in doubles
  expect(acidClass({ pH: 4.4, uncertainty: 0.2 })).toMatchObject({ home: 'acid', homeUndecided: false });
});

test("a reading without its uncertainty is taken as a kitchen meter's, and is undecided near the line", () => {
  for (const pH of [4.51, 4.55, 4.59, 4.6, 4.61, 4.65, 4.69]) {
    expect(acidClass({ pH })).toMatchObject({
      home: 'low-acid',
      homeUndecided: true,
      regulationUndecided: true,
      canner: 'pressure canner',
      uncertainty: 0.1,
      uncertaintyAssumed: true,
    });
    expect(acidClass({ pH }).cautions.map(({ id }) => id)).toContain('too-near-the-limit');
  }
  expect(acidClass({ pH: 4.5 })).toMatchObject({ home: 'acid', homeUndecided: false });
  expect(acidClass({ pH: 4.71 })).toMatchObject({ home: 'low-acid', homeUndecided: false });
  expect(acidClass({ pH: 4.2 }).basis).toContainEqual(expect.objectContaining({ of: 'uncertainty' }));
  expect(acidClass({ pH: 4.2, uncertainty: 0.3 })).toMatchObject({ uncertainty: 0.3, uncertaintyAssumed: false });
  // dry food is on no side of the legal line
  expect(acidClass({ pH: 4.6, waterActivity: 0.8 }).regulationUndecided).toBe(false);
  expect(acidClass({ pH: 4.75, tomato: true })).toMatchObject({
    regulation: 'low-acid',
    regulationLimit: 4.7,
    homeUndecided: false,
    regulationUndecided: true,
  });
});

test('the legal line says so too where a reading cannot tell', () => {
  fc.assert(
    fc.property(fc.integer({ min: 300, max: 600 }), fc.boolean(), (hundredths, tomato) => {
      const pH = hundredths / 100;
      const answer = acidClass({ pH, waterActivity: 0.95, tomato });
      expect(answer.regulation === 'low-acid').toBe(tomato ? pH >= 4.7 : pH > 4.6);
      const line = tomato ? 4.7 : 4.6;
      const far = Math.abs(pH - line) > 0.1 + 1e-6;
      if (far) expect(answer.regulationUndecided).toBe(false);
      if (Math.abs(pH - line) < 0.09) expect(answer.regulationUndecided).toBe(true);
      expect(answer.cautions.some(({ id }) => id === 'too-near-the-limit')).toBe(
        answer.regulationUndecided || answer.homeUndecided,
      );
    }),
  );
  expect(acidClass({ pH: 4.6, waterActivity: 0.95 })).toMatchObject({
    regulation: 'acid',
    regulationUndecided: true,
  });
  expect(acidClass({ pH: 4.5, waterActivity: 0.95 }).regulationUndecided).toBe(false);
  expect(acidClass({ pH: 4.6, waterActivity: 0.85 }).regulationUndecided).toBe(false);
});

test('tomatoes of pH 4.65 are low-acid at home and acid by regulation', () => {
  const answer = acidClass({ pH: 4.65, tomato: true, uncertainty: 0 });
  expect(answer).toMatchObject({
    home: 'low-acid',
    regulation: 'acid',
    homeLimit: 4.6,
    regulationLimit: 4.7,
    canner: 'pressure canner',
  });
  expect(answer.basis.find(({ of }) => of === 'regulation')?.source).toMatch(/^cfr/);
  expect(acidClass({ pH: 4.65, food: 'tomato sauce', uncertainty: 0 }).regulation).toBe('acid');
  expect(acidClass({ pH: 4.65, food: 'green tomato', uncertainty: 0 }).regulation).toBe('low-acid');
  expect(acidClass({ pH: 4.65, food: 'tomato', tomato: false, uncertainty: 0 }).regulation).toBe('low-acid');
});

test('acid that was added, and food too dry to spoil, go by their own names in the regulation', () => {
  expect(acidClass({ pH: 4.4, waterActivity: 0.97, acidAdded: true }).regulation).toBe('acidified');
  expect(acidClass({ pH: 5.4, waterActivity: 0.97, acidAdded: true }).regulation).toBe('low-acid');
  expect(acidClass({ pH: 6, waterActivity: 0.85, acidAdded: true }).regulation).toBe('low water activity');
  const ids = (input: object) => acidClass({ pH: 4.4, ...input }).cautions.map(({ id }) => id);
  expect(ids({ acidAdded: true })).toContain('licensed-acidified');
  expect(ids({})).not.toContain('licensed-acidified');
  expect(ids({ waterActivity: 0.7 })).toContain('tested-only');
});

test('without a reading the highest figure of the lists decides, and never to the acid side of what phOf says', () => {
  for (const food of ['peach', 'mango', 'fig', 'tomato', 'apple', 'beet', 'cucumber', 'pear']) {
    const listed = phOf({ food });
    const answer = acidClass({ food });
    expect(answer.home, food).toBe(listed.acidity);
    expect(answer.homeUndecided, food).toBe(listed.crosses);
    expect(answer.pH, food).toBeGreaterThanOrEqual(listed.pH.high);
    expect(answer.uncertainty, food).toBeUndefined();
    expect(answer.basis.some(({ of, source }) => of === 'pH' && source !== undefined)).toBe(true);
  }
  expect(acidClass({ food: 'tomato' })).toMatchObject({
    home: 'low-acid',
    regulation: 'low-acid',
    regulationLimit: 4.7,
  });
  // a reading goes before the lists
  expect(acidClass({ food: 'mango', pH: 3.9 }).home).toBe('acid');
});

test('an uncertainty that no meter has is served with a caution', () => {
  const ids = (uncertainty: number) => acidClass({ pH: 4.6, uncertainty }).cautions.map(({ id }) => id);
  expect(ids(0)).toContain('no-meter-so-close');
  expect(ids(0.05)).not.toContain('no-meter-so-close');
});

test('the regulation excepts tomatoes below 4.7 and food too dry to spoil; home canning does not', () => {
  expect(acidClass({ pH: 4.65, tomato: true })).toMatchObject({ home: 'low-acid', regulation: 'acid' });
  expect(acidClass({ pH: 4.7, tomato: true }).regulation).toBe('low-acid');
  expect(acidClass({ pH: 4.65 }).regulation).toBe('low-acid');
  expect(acidClass({ pH: 6, waterActivity: 0.85 }).regulation).toBe('low water activity');
  expect(acidClass({ pH: 6, waterActivity: 0.86 }).regulation).toBe('low-acid');
});

test('cautions: low-acid food, an unstated uncertainty', () => {
  const ids = (pH: number, uncertainty?: number) =>
    acidClass(uncertainty === undefined ? { pH } : { pH, uncertainty }).cautions.map(({ id }) => id);
  expect(ids(5, 0)).toContain('low-acid-in-jars');
  expect(ids(4, 0)).not.toContain('low-acid-in-jars');
  expect(ids(4)).toContain('state-the-uncertainty');
  expect(ids(4, 0.1)).not.toContain('state-the-uncertainty');
});

test('more uncertainty never turns low-acid food acid', () => {
  const pH = fc.double({ min: 0, max: 14, noNaN: true });
  const u = fc.double({ min: 0, max: 2, noNaN: true });
  fc.assert(
    fc.property(pH, u, u, (value, one, other) => {
      const [less, more] = [Math.min(one, other), Math.max(one, other)];
      const loose = acidClass({ pH: value, uncertainty: more });
      if (loose.home === 'acid') expect(acidClass({ pH: value, uncertainty: less }).home).toBe('acid');
      if (loose.home === 'acid') expect(value).toBeLessThanOrEqual(4.6 + 1e-8);
    }),
  );
});

test.each([
  [{ pH: -0.1 }, 'OUT_OF_RANGE', 'pH'],
  [{ pH: 14.01 }, 'OUT_OF_RANGE', 'pH'],
  [{ pH: Number.NaN }, 'OUT_OF_RANGE', 'pH'],
  [{ pH: '4.6' }, 'WRONG_TYPE', 'pH'],
  [{}, 'MISSING', 'pH'],
  [{ pH: 4, uncertainty: -1 }, 'OUT_OF_RANGE', 'uncertainty'],
  [{ food: 'peach', uncertainty: 0.1 }, 'CONTRADICTION', 'uncertainty'],
  [{ food: 'brick' }, 'UNKNOWN_NAME', 'food'],
  [{ pH: 4, acidAdded: 1 }, 'WRONG_TYPE', 'acidAdded'],
  [{ pH: 4, waterActivity: 0 }, 'OUT_OF_RANGE', 'waterActivity'],
  [{ pH: 4, tomato: 'yes' }, 'WRONG_TYPE', 'tomato'],
  [{ pH: 4, ph: 4 }, 'UNKNOWN_FIELD', 'ph'],
] as const)('bad input %j', (input, code, path) => {
  expectError(() => acidClass(input as never), code, path);
});

test('a food that is in no list is not known', () => {
  expect(askClass({ food: 'pawpaw' })).toMatchObject({ known: false, reason: { code: 'no-listed-ph' } });
});
