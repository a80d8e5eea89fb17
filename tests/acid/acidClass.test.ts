import fc from 'fast-check';
import { expect, test } from 'vitest';
import { acidClass } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

// 21 CFR 114.3 and USDA Guide 1: acid up to and with pH 4.6
test('a reading on the limit is acid, one above it is low-acid', () => {
  expect(acidClass({ pH: 4.6, uncertainty: 0 })).toMatchObject({ class: 'acid', undecided: false, margin: 0 });
  expect(acidClass({ pH: 4.61, uncertainty: 0 })).toMatchObject({ class: 'low-acid', undecided: false });
  expect(acidClass({ pH: 4.6 }).canner).toBe('boiling-water canner');
  expect(acidClass({ pH: 5 }).canner).toBe('pressure canner');
});

test('a limit within the uncertainty is low-acid and says that it is undecided', () => {
  expect(acidClass({ pH: 4.55, uncertainty: 0.1 })).toMatchObject({ class: 'low-acid', undecided: true });
  expect(acidClass({ pH: 4.65, uncertainty: 0.1 })).toMatchObject({ class: 'low-acid', undecided: true });
  expect(acidClass({ pH: 4.8, uncertainty: 0.1 })).toMatchObject({ class: 'low-acid', undecided: false });
  // 4.4 + 0.2 is 4.6000000000000005 in doubles
  expect(acidClass({ pH: 4.4, uncertainty: 0.2 })).toMatchObject({ class: 'acid', undecided: false });
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
