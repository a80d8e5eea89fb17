import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sweeten, sweetenerMass, sweetenToTaste } from '../../src/sugar/index';
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
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
      (sweetener, brix, more) => {
        const { sugar, mass } = sweeten({ mass: '5 kg', brix, targetBrix: brix + more, with: sweetener });
        const { solids, mass: cup } = sweetenerMass({ sweetener, volume: '1 cup' });
        const share = solids.value / cup.value;
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

test('a tasted sample is scaled to the pot, by volume or on the scale', () => {
  expect(sweetenToTaste({ sample: '1 cup', added: '1 tsp', pot: '3 gallons' }).sugar).toEqual({
    value: 48,
    unit: 'tsp',
  });
  const { sugar, mass } = sweetenToTaste({ sample: '250 g', added: '4 g', pot: '10 kg' });
  expect([sugar, mass]).toEqual([
    { value: 160, unit: 'g' },
    { value: 160, unit: 'g' },
  ]);
  expect(sweetenToTaste({ sample: '1 cup', added: '1 tbsp', pot: '16 cups' }).mass.value).toBeCloseTo(200, 9);
  expect(errorOf(() => sweetenToTaste({ sample: '1 cup', added: '1 tsp', pot: '5 lb' }))).toBe('WRONG_DIMENSION pot');
  expect(errorOf(() => sweetenToTaste({ sample: '1 lb', added: '1 tsp', pot: '5 cups' }))).toBe('WRONG_DIMENSION pot');
  expect(errorOf(() => sweetenToTaste({ sample: '0 cup', added: '1 tsp', pot: '5 cups' }))).toBe('OUT_OF_RANGE sample');
});

test('the weight of a cup (USDA SR28)', () => {
  expect(sweetenerMass({ sweetener: 'granulated sugar', volume: '1 cup' }).mass.value).toBe(200);
  expect(sweetenerMass({ sweetener: 'Honey', volume: '1/2 cup' }).cautions.map(({ id }) => id)).toEqual([
    'no-honey-under-one',
  ]);
  expect(sweetenerMass({ sweetener: 'molasses', volume: '1 cup' }).cautions).toEqual([]);
  expect(errorOf(() => sweetenerMass({ sweetener: 'sand', volume: '1 cup' }))).toBe('UNKNOWN_NAME sweetener');
});
