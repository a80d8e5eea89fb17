import { expect, test } from 'vitest';
import { legalFruitWeight, legalJam } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

const batch = { fruit: '45 kg', sugar: '55 kg', finishSolids: '65 %' } as const;

test('45 to 55 is enough for peach and too little for strawberry (21 CFR 150.160)', () => {
  expect(legalJam({ product: 'jam', fruitName: 'peaches', ...batch }).meets.US).toBe(true);
  const { checks, meets } = legalJam({ product: 'jam', fruitName: 'strawberries', ...batch });
  expect(meets.US).toBe(false);
  const ratio = checks.find(({ place, quantity }) => place === 'US' && quantity === 'fruit to sweetener');
  expect(ratio).toMatchObject({ least: 47 / 55, actual: 45 / 55, meets: false });
  expect(ratio?.margin).toBeCloseTo(-2 / 55, 12);
});

test('fruit in a kilogram is checked only where the jam was weighed', () => {
  const quantities = (jam?: '90 kg') =>
    new Set(
      legalJam({ product: 'jam', fruitName: 'plum', ...batch, ...(jam === undefined ? {} : { jam }) }).checks.map(
        ({ quantity }) => quantity,
      ),
    );
  expect(quantities().has('fruit content')).toBe(false);
  expect(quantities('90 kg').has('fruit content')).toBe(true);
});

test('a fruit with a rule of its own is not under the general one', () => {
  const rules = legalJam({ product: 'jam', fruitName: 'quinces', ...batch, jam: '100 kg' }).checks.filter(({ place }) =>
    place.startsWith('EU'),
  );
  expect(rules.map(({ least }) => least)).toEqual([60, 250]);
});

test('rules that were recalled say so', () => {
  const { checks, cautions } = legalJam({ product: 'jam', fruitName: 'plum', ...batch });
  expect(checks.filter(({ fromMemory }) => fromMemory).map(({ place }) => place)).toContain('Codex');
  expect(cautions.map(({ id }) => id)).toContain('recalled');
  expect(legalJam({ product: 'fruit curd', fruitName: 'lemon', ...batch }).cautions.map(({ id }) => id)).not.toContain(
    'recalled',
  );
});

test('no sugar leaves the ratio of fruit to sweetener out', () => {
  const { checks } = legalJam({
    product: 'fruit butter',
    fruitName: 'apple',
    fruit: '5 kg',
    sugar: '0 kg',
    finishSolids: 0.43,
  });
  expect(checks.map(({ quantity }) => quantity)).toEqual(['soluble solids']);
});

test('a most as well as a least: reduced-sugar jam', () => {
  const of = (finishSolids: number) =>
    legalJam({ product: 'reduced-sugar jam', fruitName: 'plum', fruit: '1 kg', sugar: '0.3 kg', finishSolids }).meets
      .UK;
  expect([of(0.24), of(0.25), of(0.5), of(0.51)]).toEqual([false, true, true, false]);
});

test('factors of the standard of fruit butter', () => {
  expect(legalFruitWeight({ fruitName: 'plums', solubleSolids: '2 lb' })).toMatchObject({
    factor: 7,
    fruit: { value: 14, unit: 'lb' },
  });
  expect(errorOf(() => legalFruitWeight({ fruitName: 'mango', solubleSolids: '2 lb' }))).toBe('UNKNOWN_NAME fruitName');
});

test('bad input', () => {
  expect(errorOf(() => legalJam({ product: 'sauce' as never, fruitName: 'plum', ...batch }))).toBe(
    'UNKNOWN_NAME product',
  );
  expect(errorOf(() => legalJam({ product: 'jam', fruitName: 'plum', ...batch, sugar: '-1 kg' }))).toBe(
    'OUT_OF_RANGE sugar',
  );
});
