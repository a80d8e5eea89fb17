import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jamBalance } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('strawberry jam of the textbook (Felder and Rousseau): 0.486 lb of fruit makes a pound', () => {
  const { jam, sugar, waterRemoved } = jamBalance({
    ready: '0.4858 lb',
    solids: '15 %',
    sugarToFruit: '55:45',
    finishSolids: 2 / 3,
  });
  expect(jam.value).toBeCloseTo(1, 3);
  expect(sugar.value).toBeCloseTo(0.5938, 4);
  expect(waterRemoved.value).toBeCloseTo(0.0796, 3);
});

test('pectin and acid count where they are given (Practical Action, p. 6: 16.4 kg)', () => {
  const batch = { ready: '10 kg', solids: 0.1, sugarToFruit: '100 %', finishSolids: 0.68 } as const;
  expect(jamBalance({ ...batch, dryPectin: '60 g', dryAcid: '55 g' }).jam.value).toBeCloseTo(16.35, 2);
  expect(jamBalance(batch).jam.value).toBeCloseTo(11 / 0.68, 9);
});

test('mass and solids are conserved; fruit for jam is the inverse', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.2, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0.62, max: 0.75, noNaN: true }),
      (solids, sugarToFruit, finishSolids) => {
        const recipe = { solids, sugarToFruit, finishSolids };
        const made = jamBalance({ ready: '7 kg', ...recipe });
        expect(7 + made.sugar.value).toBeCloseTo(made.jam.value + made.waterRemoved.value, 9);
        expect(7 * solids + made.sugar.value).toBeCloseTo(made.jam.value * finishSolids, 9);
        const back = jamBalance({ jam: made.jam, ...recipe });
        expect(back.ready.value).toBeCloseTo(7, 9);
        expect(jamBalance({ jam: made.volume, ...recipe }).ready.value).toBeCloseTo(7, 6);
      },
    ),
  );
});

test('jars: a dozen half-pints are three quarts', () => {
  const recipe = { solids: '11 %', sugarToFruit: 1, finishSolids: '65 %' } as const;
  const dozen = jamBalance({ jars: 12, ...recipe });
  expect(dozen.ready.unit).toBe('lb');
  expect(dozen.volume.value).toBeCloseTo(12, 6);
  expect(jamBalance({ jars: 3, jar: 'quart', ...recipe }).ready.value).toBeCloseTo(dozen.ready.value, 9);
  expect(jamBalance({ jam: '2.839 L', ...recipe }).ready.unit).toBe('kg');
});

test('fruit of a label: 45 g of fruit in 91.54 g of jam is 49.2 g in 100 g', () => {
  expect(jamBalance({ ready: '45 g', solids: 0.1, sugarToFruit: '55:45', finishSolids: 0.65 }).fruitPerJam).toBeCloseTo(
    0.4916,
    4,
  );
});

test('little sugar is flagged: it needs its own pectin and process', () => {
  const low = jamBalance({ ready: '1 kg', solids: 0.12, sugarToFruit: 0.2, finishSolids: 0.4 });
  expect(low.route).toBe('low sugar');
  expect(low.cautions.map(({ id }) => id)).toContain('own-process');
  expect(jamBalance({ ready: '1 kg', solids: 0.12, sugarToFruit: 0, finishSolids: 0.3 }).route).toBe('no sugar');
  const full = jamBalance({ ready: '1 kg', solids: 0.12, sugarToFruit: 1, finishSolids: 0.65 });
  expect(full.route).toBe('full sugar');
  expect(full.cautions.map(({ id }) => id)).not.toContain('own-process');
});

test('bad input', () => {
  const batch = { ready: '1 kg', solids: 0.15, sugarToFruit: 1, finishSolids: 0.65 } as const;
  const of = (change: object) => errorOf(() => jamBalance({ ...batch, ...change }));
  expect(of({ finishSolids: 0.5 })).toBe('CONTRADICTION finishSolids');
  expect(of({ sugarToFruit: 0, solids: 0 })).toBe('CONTRADICTION sugarToFruit');
  expect(of({ sugarToFruit: -0.1 })).toBe('OUT_OF_RANGE sugarToFruit');
  expect(of({ sugarToFruit: 11 })).toBe('OUT_OF_RANGE sugarToFruit');
  expect(of({ sugarToFruit: '55:0' })).toBe('OUT_OF_RANGE sugarToFruit');
  expect(of({ sugarToFruit: '0:0' })).toBe('OUT_OF_RANGE sugarToFruit');
  expect(of({ sugarToFruit: 'half' })).toBe('NOT_A_QUANTITY sugarToFruit');
  expect(of({ sugarToFruit: '1'.repeat(10_000) })).toBe('NOT_A_QUANTITY sugarToFruit');
  expect(of({ sugarToFruit: null })).toBe('WRONG_TYPE sugarToFruit');
  expect(of({ sugarToFruit: undefined })).toBe('MISSING sugarToFruit');
  expect(of({ sugarToFruit: Number.NaN })).toBe('OUT_OF_RANGE sugarToFruit');
  expect(of({ solids: 15 })).toBe('OUT_OF_RANGE solids');
  expect(of({ ready: '1 quart' })).toBe('WRONG_DIMENSION ready');
  const recipe = { solids: 0.1, sugarToFruit: 1, finishSolids: 0.65 };
  expect(errorOf(() => jamBalance(recipe as never))).toBe('MISSING ready');
  expect(errorOf(() => jamBalance({ ...recipe, jars: 2, jam: '1 kg' } as never))).toBe('CONTRADICTION jars');
  expect(errorOf(() => jamBalance({ ...recipe, jar: 'pint', jam: '1 kg' }))).toBe('CONTRADICTION jar');
  expect(errorOf(() => jamBalance({ ...recipe, jars: 1, solids: 0, sugarToFruit: 0 }))).toBe(
    'CONTRADICTION sugarToFruit',
  );
  expect(errorOf(() => jamBalance({ ...recipe, jars: 100_000 }))).toBe('OUT_OF_RANGE jars');
  expect(errorOf(() => jamBalance({ ...recipe, jars: 1, dryPectin: '1 g' }))).toBe('CONTRADICTION dryPectin');
});
