import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nameOf } from '../../src/foods/tables';
import { freezerPack } from '../../src/freezing/index';
import { PACKS } from '../../src/freezing/tables';
import { expectError } from '../helpers/errors';

const packOf = (input: Parameters<typeof freezerPack>[0]) => {
  const answer = freezerPack(input);
  if (!answer.known) throw new Error(answer.reason.text);
  return answer;
};

test('every food and pack of the tables answers', () => {
  for (const { foods, pack } of PACKS) {
    for (const food of foods.map(nameOf))
      expect(packOf({ food, style: pack, amount: '2 quarts' }).volume.value, food).toBe(2);
  }
});

test('sugar by the cup, and the same for weighed fruit (1 1/3 lb to the quart)', () => {
  expect(packOf({ food: 'peaches', style: 'sugar', amount: '3 quarts' }).sugarVolume?.low.value).toBeCloseTo(2, 12);
  expect(packOf({ food: 'peaches', style: 'sugar', amount: '4 lb' }).sugarVolume?.low.value).toBeCloseTo(2, 12);
  expect(packOf({ food: 'apple', style: 'syrup', amount: '5 lb' }).volume).toEqual({ value: 4, unit: 'quart' });
  expect(packOf({ food: 'peach', style: 'crushed', amount: '4 lb' }).volume.value).toBe(2);
  expect(packOf({ food: 'sour cherry', style: 'syrup', amount: '4 lb' }).volume.value).toBeCloseTo(3, 12);
});

test('the newer guide first, the older beside it', () => {
  const { syrups, others } = packOf({ food: 'peach', style: 'syrup', amount: '1 quart' });
  expect(syrups?.[0]?.brix).toBe(40);
  expect(others.map((other) => other.syrups?.[0]?.brix)).toEqual([50]);
});

test('parts by weight come in the unit of the fruit', () => {
  const { others } = packOf({ food: 'strawberries', style: 'sugar', amount: '6 kg' });
  expect(others[0]?.sugarMass?.unit).toBe('kg');
  expect(others[0]?.sugarMass?.value).toBeCloseTo(1, 9);
});

test('syrup, its sugar and its ascorbic acid are enough for the larger volume', () => {
  const { syrups, ascorbicDose } = packOf({ food: 'sweet cherries', style: 'syrup', amount: '8 pints' });
  expect(syrups?.[0]?.volume.high.value).toBeCloseTo(16 / 3, 9);
  expect(syrups?.[0]?.sugarVolume.value).toBeCloseTo(2.75, 9);
  expect(ascorbicDose?.crystals?.value).toBeCloseTo((0.5 * (16 / 3)) / 4, 9);
  expect(ascorbicDose?.mass?.value).toBeCloseTo(2000, 6);
});

test('water covers as the cook needs: the acid is said for each quart only', () => {
  expect(packOf({ food: 'peach', style: 'water', amount: '1 quart' }).ascorbicDose).toEqual({
    perQuart: { value: 1, unit: 'tsp' },
    perQuartOf: 'water',
  });
  expect(packOf({ food: 'strawberry', style: 'water', amount: '1 quart' }).style).toBe('unsweetened');
});

test('extras: lemon juice, preheating, notes', () => {
  expect(packOf({ food: 'strawberry', style: 'puree', amount: '1 quart' }).lemonJuice).toEqual({
    value: 2,
    unit: 'tsp',
  });
  expect(packOf({ food: 'pear', style: 'syrup', amount: '1 quart' }).preheat).toEqual({
    minutes: { low: 1, high: 2 },
    in: 'boiling 40 % syrup',
  });
  expect(packOf({ food: 'rhubarb', style: 'syrup', amount: '1 quart' }).preheat?.in).toBe('boiling water');
  expect(packOf({ food: 'plum', style: 'puree', amount: '1 quart' }).note).toContain('citric acid');
});

test('a dry pack is for any fruit, and for vegetables after blanching', () => {
  expect(packOf({ food: 'raspberries', style: 'dry', amount: '1 quart' }).note).toContain('Nothing is added');
  expect(packOf({ food: 'green beans', style: 'dry', amount: '1 quart' }).note).toContain('Blanch first');
  expect(packOf({ food: 'blueberries', style: 'dry', amount: '4 lb' }).volume.value).toBeCloseTo(3, 12);
});

test('apples packed dry keep their ascorbic acid, or are steamed', () => {
  const apple = packOf({ food: 'apples', style: 'dry', amount: '4 quarts' });
  expect(apple).toMatchObject({
    style: 'dry',
    ascorbicDose: {
      perQuart: { value: 0.5, unit: 'tsp' },
      perQuartOf: 'fruit',
      crystals: { value: 2 },
      dissolveIn: { value: 12 },
    },
    steamInstead: { low: 1.5, high: 2 },
  });
  expect(apple.sugarVolume).toBeUndefined();
  expect(packOf({ food: 'apple', style: 'dry', amount: '5 lb' }).volume.value).toBe(4);
});

test('a fruit that browns is never packed dry without a word', () => {
  const ids = (food: string) => packOf({ food, style: 'dry', amount: '1 quart' }).cautions.map(({ id }) => id);
  for (const food of ['peach', 'nectarine', 'apricot']) expect(ids(food)).toContain('fruit-darkens-dry');
  for (const food of ['blueberry', 'raspberry', 'green bean']) expect(ids(food)).not.toContain('fruit-darkens-dry');
});

test('recalled packs say so', () => {
  const recalled = packOf({ food: 'raspberries', style: 'sugar', amount: '1 quart' });
  expect(recalled.cautions.map(({ id }) => id)).toContain('recalled');
  expect(packOf({ food: 'apples', style: 'sugar', amount: '1 quart' }).cautions.map(({ id }) => id)).not.toContain(
    'recalled',
  );
});

test('what was read stands before what was recalled', () => {
  const { syrups, others, cautions } = packOf({ food: 'apricots', style: 'syrup', amount: '1 quart' });
  expect(syrups?.[0]?.brix).toBe(50);
  expect(others[0]?.basis[0]?.kind).toBe('recalled');
  expect(cautions.map(({ id }) => id)).not.toContain('recalled');
});

test('a pack that is not printed is refused, naming those that are', () => {
  expect(freezerPack({ food: 'sweet cherry', style: 'sugar', amount: '1 quart' })).toMatchObject({
    known: false,
    instead: expect.arrayContaining([{ text: 'Pack it as syrup.', food: 'sweet cherry' }]),
  });
});

test('what goes in grows with the fruit', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 1000, noNaN: true }), (quarts) => {
      const { sugarVolume: sugar } = packOf({
        food: 'blackberry',
        style: 'sugar',
        amount: { value: quarts, unit: 'quart' },
      });
      expect(sugar?.low.value).toBeCloseTo(0.75 * quarts, 6);
    }),
  );
});

test('bad input', () => {
  expectError(() => freezerPack({ food: 'granite', style: 'syrup', amount: '1 quart' }), 'UNKNOWN_NAME', 'food');
  expectError(
    () => freezerPack({ food: 'peach', style: 'brine' as never, amount: '1 quart' }),
    'UNKNOWN_NAME',
    'style',
  );
  expectError(
    () => freezerPack({ food: 'peach', style: 'syrup', amount: '1 in' as never }),
    'WRONG_DIMENSION',
    'amount',
  );
  expectError(() => freezerPack({ food: 'plum', style: 'juice', amount: '3 lb' }), 'WRONG_DIMENSION', 'amount');
  expectError(() => freezerPack({ food: 'broccoli', style: 'dry', amount: '3 lb' }), 'WRONG_DIMENSION', 'amount');
});

test('a food of the pantry without packs is not known, and its kinds with packs are named', () => {
  expect(freezerPack({ food: 'cherry', style: 'syrup', amount: '1 quart' })).toMatchObject({
    known: false,
    instead: expect.arrayContaining([{ text: 'Name the kind: sweet cherry.', food: 'sweet cherry' }]),
  });
});
