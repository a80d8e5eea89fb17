import fc from 'fast-check';
import { expect, test } from 'vitest';
import { acidClass } from '../../src/acid/index';
import { regulatoryClass } from '../../src/water-activity/index';
import { expectError } from '../helpers/errors';

// 21 CFR 114.3 and USDA Guide 1: acid up to and with pH 4.6
test('a reading on the limit is acid, one above it is low-acid', () => {
  expect(acidClass({ pH: 4.6, uncertainty: 0 })).toMatchObject({ class: 'acid', undecided: false, margin: 0 });
  expect(acidClass({ pH: 4.61, uncertainty: 0 })).toMatchObject({ class: 'low-acid', undecided: false });
  expect(acidClass({ pH: 4.6, uncertainty: 0 }).canner).toBe('boiling-water canner');
  expect(acidClass({ pH: 5 }).canner).toBe('pressure canner');
});

test('a limit within the uncertainty is low-acid and says that it is undecided', () => {
  expect(acidClass({ pH: 4.55, uncertainty: 0.1 })).toMatchObject({ class: 'low-acid', undecided: true });
  expect(acidClass({ pH: 4.65, uncertainty: 0.1 })).toMatchObject({ class: 'low-acid', undecided: true });
  expect(acidClass({ pH: 4.8, uncertainty: 0.1 })).toMatchObject({ class: 'low-acid', undecided: false });
  // 4.4 + 0.2 is 4.6000000000000005 in doubles
  expect(acidClass({ pH: 4.4, uncertainty: 0.2 })).toMatchObject({ class: 'acid', undecided: false });
});

test("a reading without its uncertainty is taken as a kitchen meter's, and is undecided near the line", () => {
  for (const pH of [4.51, 4.55, 4.59, 4.6, 4.61, 4.65, 4.69]) {
    expect(acidClass({ pH })).toMatchObject({
      class: 'low-acid',
      undecided: true,
      canner: 'pressure canner',
      uncertainty: 0.1,
      uncertaintyAssumed: true,
      regulation: { undecided: true },
    });
    expect(acidClass({ pH }).cautions.map(({ id }) => id)).toContain('too-near-the-limit');
  }
  expect(acidClass({ pH: 4.5 })).toMatchObject({ class: 'acid', undecided: false });
  expect(acidClass({ pH: 4.71 })).toMatchObject({ class: 'low-acid', undecided: false });
  expect(acidClass({ pH: 4.2 }).basis).toContainEqual(expect.objectContaining({ of: 'uncertainty of the reading' }));
  expect(acidClass({ pH: 4.2, uncertainty: 0.3 })).toMatchObject({ uncertainty: 0.3, uncertaintyAssumed: false });
  // dry food is on no side of the legal line
  expect(acidClass({ pH: 4.6, waterActivity: 0.8 }).regulation.undecided).toBe(false);
  expect(acidClass({ pH: 4.75, tomato: true }).regulation).toEqual({ lowAcid: true, limit: 4.7, undecided: true });
});

test('the legal line says so too where a reading cannot tell', () => {
  fc.assert(
    fc.property(fc.integer({ min: 300, max: 600 }), fc.boolean(), (hundredths, tomato) => {
      const pH = hundredths / 100;
      const { regulation } = acidClass({ pH, waterActivity: 0.95, tomato });
      const answer = regulatoryClass({ pH, waterActivity: 0.95, tomato });
      expect([answer.lowAcid, answer.undecided]).toEqual([regulation.lowAcid, regulation.undecided]);
      expect(answer.cautions.some(({ id }) => id === 'near-the-legal-line')).toBe(answer.undecided);
    }),
  );
  expect(regulatoryClass({ pH: 4.6, waterActivity: 0.95 })).toMatchObject({ lowAcid: false, undecided: true });
  expect(regulatoryClass({ pH: 4.5, waterActivity: 0.95 }).undecided).toBe(false);
  expect(regulatoryClass({ pH: 4.6, waterActivity: 0.85 }).undecided).toBe(false);
});

test('an uncertainty that no meter has is served with a caution', () => {
  const ids = (uncertainty: number) => acidClass({ pH: 4.6, uncertainty }).cautions.map(({ id }) => id);
  expect(ids(0)).toContain('no-meter-so-close');
  expect(ids(0.05)).not.toContain('no-meter-so-close');
});

test('the regulation excepts tomatoes below 4.7 and food too dry to spoil; home canning does not', () => {
  expect(acidClass({ pH: 4.65, tomato: true })).toMatchObject({ class: 'low-acid', regulation: { lowAcid: false } });
  expect(acidClass({ pH: 4.7, tomato: true }).regulation.lowAcid).toBe(true);
  expect(acidClass({ pH: 4.65 }).regulation.lowAcid).toBe(true);
  expect(acidClass({ pH: 6, waterActivity: 0.85 }).regulation.lowAcid).toBe(false);
  expect(acidClass({ pH: 6, waterActivity: 0.86 }).regulation.lowAcid).toBe(true);
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
      if (loose.class === 'acid') expect(acidClass({ pH: value, uncertainty: less }).class).toBe('acid');
      if (loose.class === 'acid') expect(value).toBeLessThanOrEqual(4.6 + 1e-8);
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
  [{ pH: 4, waterActivity: 0 }, 'OUT_OF_RANGE', 'waterActivity'],
  [{ pH: 4, tomato: 'yes' }, 'WRONG_TYPE', 'tomato'],
  [{ pH: 4, ph: 4 }, 'UNKNOWN_FIELD', 'ph'],
] as const)('bad input %j', (input, code, path) => {
  expectError(() => acidClass(input as never), code, path);
});
