import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sweeten } from '../../src/sugar/index';
import { sweetener as sweetenerRow } from '../../src/sugar/sweeteners';
import { codeText as errorOf } from '../helpers/errors';

test('10 kg of juice from 12 to 65 Brix takes 15.14 kg of sugar', () => {
  const { sugar, mass } = sweeten({ mass: '10 kg', brix: 12, targetBrix: 65 });
  expect(sugar.value).toBeCloseTo(530 / 35, 9);
  expect(mass.value).toBeCloseTo(10 + 530 / 35, 9);
});

test('solids are conserved with any sweetener', () => {
  const withs = ['sugar', 'honey', 'corn syrup', 'maple syrup', 'molasses', 'brown sugar'];
  fc.assert(
    fc.property(
      fc.constantFrom(...withs),
      fc.double({ min: 1.01, max: 30, noNaN: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
      (sweetener, brix, more) => {
        const { sugar, mass } = sweeten({ mass: '5 kg', brix, targetBrix: brix + more, with: sweetener });
        const share = sweetenerRow(sweetener.replaceAll(' ', '-')).solids / 100;
        expect(5 * brix + 100 * share * sugar.value).toBeCloseTo(mass.value * (brix + more), 6);
      },
    ),
  );
});

test('honey brings its own water, and its caution for infants', () => {
  const { sugar, cautions, sugarVolume } = sweeten({ mass: '5 lb', brix: 11, targetBrix: 18, with: 'honey' });
  expect(sugar.value).toBeCloseTo((5 * 7) / (82.9 - 18), 9);
  expect(sugarVolume?.value).toBeCloseTo((sugar.value * 453.59237) / 339, 6);
  expect(cautions.map(({ id }) => id)).toContain('no-honey-under-one');
  expect(sweeten({ mass: '5 lb', brix: 11, targetBrix: 18 }).cautions).toEqual([]);
});

test('another syrup by its Brix', () => {
  const { sugar, sugarVolume } = sweeten({ mass: '45 kg', brix: 10, targetBrix: 15, withBrix: 60 });
  expect(sugar.value).toBeCloseTo(5, 9); // Pearson square: 45 parts of juice to 5 of syrup (Practical Action)
  expect(sugarVolume).toBeUndefined();
});

test('nothing to add where it is sweet enough already', () => {
  expect(sweeten({ mass: '1 kg', brix: 20, targetBrix: 20, withBrix: 15 }).sugar.value).toBe(0);
});

test('fruit in pieces: all of the sugar is in the free juice at first', () => {
  const light = sweeten({ mass: '2 kg', brix: 10, targetBrix: 20, juiceShare: 0.25 }).beforeSoaking;
  // 500 g of juice with 50 g of solids, and 250 g of sugar
  expect(light?.juiceBrix).toBeCloseTo((100 * 300) / 750, 9);
  expect(light?.undissolved.value).toBe(0);
  const heavy = sweeten({ mass: '2 kg', brix: 10, targetBrix: 55, juiceShare: '10 %' }).beforeSoaking;
  // 200 g of juice holds 180 g of water, which takes some 361 g of sugar at 20 degC; 2 kg x 45/45 = 2 kg are added
  expect(heavy?.juiceBrix).toBeCloseTo(66.72, 2);
  expect(heavy?.undissolved.value).toBeCloseTo(2 + 0.02 - 0.18 * 2.0047, 3);
});

test('bad input', () => {
  expect(errorOf(() => sweeten({ mass: '1 kg', brix: 20, targetBrix: 19.9 }))).toBe('CONTRADICTION targetBrix');
  // a share in place of degrees Brix is asked about
  expect(errorOf(() => sweeten({ mass: '1 kg', brix: 0.12, targetBrix: 65 }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => sweeten({ mass: '1 kg', brix: 20, targetBrix: 70 }))).toBe('OUT_OF_RANGE targetBrix');
  expect(errorOf(() => sweeten({ mass: '1 kg', brix: 20, targetBrix: 62, withBrix: 60 }))).toBe(
    'CONTRADICTION targetBrix',
  );
  expect(errorOf(() => sweeten({ mass: '1 kg', brix: 20, targetBrix: 30, with: 'honey', withBrix: 60 }))).toBe(
    'CONTRADICTION withBrix',
  );
  expect(errorOf(() => sweeten({ mass: '1 kg', brix: 20, targetBrix: 30, with: 'salt' }))).toBe('UNKNOWN_NAME with');
  expect(errorOf(() => sweeten({ mass: '1 kg', brix: 20, targetBrix: 30, with: '' }))).toBe('UNKNOWN_NAME with');
  expect(errorOf(() => sweeten({ mass: '0 kg', brix: 20, targetBrix: 30 }))).toBe('OUT_OF_RANGE mass');
});
