import { describe, expect, it } from 'vitest';
import { checkSchedule, planDay } from '../../../src/plan';
import type { PlanDayInput } from '../../../src/plan/request/planInput';
import { valueIn } from '../../../src/quantity/scale';
import { sweeten } from '../../../src/sugar';
import { readTable } from '../../helpers/tables';

type Product = NonNullable<PlanDayInput['products']>[number];

const day = (product: Product, food = 'apple', brix?: number) =>
  planDay({
    lots: [{ food, raw: '40 lb', ...(brix === undefined ? {} : { brix }) }],
    kitchen: {
      elevation: '900 ft',
      hours: '8 h',
      hands: 2,
      pots: [{ volume: '16 quarts' }],
      canners: [{ method: 'boiling-water', holds: { pint: 9, 'half-pint': 9 } }],
      freezer: { room: '50 L' },
      dryer: { trays: 8, trayArea: '1 ft2' },
    },
    products: [product],
  });

function made(product: Product, food?: string, brix?: number) {
  const plan = day(product, food, brix);
  if (!plan.feasible) throw new Error(plan.reason.text);
  const [first] = plan.products;
  if (first === undefined) throw new Error(plan.leftOut.map(({ reason }) => reason.text).join());
  expect(checkSchedule(plan).broken).toEqual([]);
  return { plan, first };
}
const lineOf = ({ first }: ReturnType<typeof made>, what: string) =>
  first.ingredients.find((line) => line.what === what);
const cups = (amount: unknown) => valueIn(amount as { value: number; unit: 'cup' }, 'cup');

const SAUCE = { recipe: 'apple-sauce', jar: 'pint' } as const;

describe('sugar and water to the pot', () => {
  it('are so much to each full pot, and go into the pots, the list and what to buy', () => {
    const plain = made(SAUCE);
    const tasted = made({ ...SAUCE, sugarToAdd: { amount: '2 cups' }, waterToAdd: { amount: '1 quart' } });
    const sugar = lineOf(tasted, 'sugar');
    const water = lineOf(tasted, 'water');
    const volume = valueIn(tasted.first.cooking?.volume as { value: number; unit: 'quart' }, 'quart');
    // two thirds of 16 quarts are cooked at once
    const pots = volume / ((16 * 2) / 3);
    expect(cups(sugar?.amount)).toBeCloseTo(2 * pots, 1);
    expect(cups(water?.amount)).toBeCloseTo(4 * pots, 1);
    expect(volume).toBeGreaterThan(valueIn(plain.first.cooking?.volume as { value: number; unit: 'quart' }, 'quart'));
    expect(tasted.first.units.ready).toBeGreaterThan(plain.first.units.ready);
    expect(tasted.first.units.promised).toBe(plain.first.units.promised);
    expect(tasted.plan.haveReady.find(({ what }) => what === 'sugar')?.short).toBeDefined();
  });

  it('are so much to a measure of prepared food', () => {
    const tasted = made({ ...SAUCE, sugarToAdd: { amount: '1/4 cup', per: '1 quart' } });
    const quarts = valueIn(tasted.first.ready.high, 'kg') / valueIn({ value: 1, unit: 'quart' }, 'L');
    expect(cups(lineOf(tasted, 'sugar')?.amount)).toBeCloseTo(quarts / 4, 6);
  });

  it('take a recipe that leaves them free, where the first one does not', () => {
    const { first } = made(
      { make: 'frozen', from: 'peach', sugarToAdd: { amount: '1/2 cup', per: '1 quart' } },
      'peach',
    );
    expect(first.ingredients.filter(({ role }) => role === 'sugar')).toHaveLength(1);
  });
});

describe('sweetenTo', () => {
  it('is what sweeten says for the same food', () => {
    const tasted = made({ ...SAUCE, sweetenTo: 18 }, 'apple', 12);
    const { sugar } = sweeten({ mass: tasted.first.ready.high, brix: 12, targetBrix: 18 });
    const line = lineOf(tasted, 'sugar');
    expect(valueIn(line?.amount as { value: number; unit: 'lb' }, 'kg')).toBeCloseTo(valueIn(sugar, 'kg'), 9);
  });

  it('counts the water that is added', () => {
    const dry = made({ ...SAUCE, sweetenTo: 18 }, 'apple', 12);
    const wet = made({ ...SAUCE, sweetenTo: 18, waterToAdd: { amount: '1 cup', per: '1 quart' } }, 'apple', 12);
    const perReady = (one: ReturnType<typeof made>) =>
      valueIn(lineOf(one, 'sugar')?.amount as { value: number; unit: 'lb' }, 'kg') /
      valueIn(one.first.ready.high, 'kg');
    // a quarter of a kg of water to each kg: 0.12 kg of solids in 1.25 kg, to 18 Brix
    expect(perReady(dry)).toBeCloseTo((0.18 - 0.12) / 0.82, 9);
    expect(perReady(wet)).toBeCloseTo((0.18 * 1.25 - 0.12) / 0.82, 6);
  });
});

describe('what a recipe does not leave free', () => {
  it.each([
    [
      'a jam sets by it',
      { make: 'jam', jar: 'half-pint', sugarToAdd: { amount: '2 cups' } },
      'peach',
      'sugar-not-free',
    ],
    [
      'printed in the recipe',
      { recipe: 'rhubarb-stewed', jar: 'pint', sugarToAdd: { amount: '1 cup' } },
      'rhubarb',
      'sugar-not-free',
    ],
    ['no fruit', { recipe: 'tomato-sauce', jar: 'pint', sugarToAdd: { amount: '1 cup' } }, 'tomato', 'sugar-not-free'],
    [
      'above what the page prints',
      { recipe: 'fruit-leather', sugarToAdd: { amount: '3 cups', per: '1 quart' } },
      'plum',
      'sugar-not-free',
    ],
    [
      'the printed water',
      { recipe: 'fruit-puree', jar: 'pint', waterToAdd: { amount: '1 cup' } },
      'peach',
      'water-not-free',
    ],
    ['no pot', { recipe: 'frozen-peach-water-pack', sugarToAdd: { amount: '1 cup' } }, 'peach', 'sugar-not-free'],
    ['no Brix', { ...SAUCE, sweetenTo: 18 }, 'apple', 'sugar-not-free'],
    ['both', { ...SAUCE, sweetenTo: 18, sugarToAdd: { amount: '1 cup' } }, 'apple', 'sugar-not-free'],
  ] as [string, Product, string, string][])('is refused: %s', (_, product, food, code) => {
    const plan = day(product, food);
    if (!plan.feasible) throw new Error(plan.reason.text);
    expect(plan.products).toEqual([]);
    expect(plan.leftOut.map(({ reason }) => reason.code)).toEqual([code]);
    expect(plan.leftOut[0]?.instead[0]?.text).not.toBe('');
  });

  it('is refused where the fruit is sweeter already', () => {
    const plan = day({ ...SAUCE, sweetenTo: 10 }, 'apple', 12);
    expect(plan.feasible && plan.leftOut.map(({ reason }) => reason.code)).toEqual(['sugar-not-free']);
  });
});

it('the table of what is free names each make once, with its reason', () => {
  const { rows, columns } = readTable('plan', 'free-taste');
  const makes = (rows as { makes: string; reason: string }[]).map((row) => row.makes);
  expect(new Set(makes).size).toBe(makes.length);
  for (const row of rows as { reason: string }[]) expect(row.reason).not.toBe('');
  expect(Object.keys(columns)).toContain('named');
});

describe('the line in the pot', () => {
  it('is the share of the height that the food fills, and of a foaming one less', () => {
    const [sauce] = made(SAUCE).first.cooking?.batches ?? [];
    expect(sauce?.fillTo.share).toBeCloseTo(2 / 3, 9);
    expect(sauce?.fillTo.volume.value).toBeCloseTo((16 * 2) / 3, 9);
    expect(sauce?.downTo).toBeUndefined();
    const [jam] = made({ make: 'jam', from: 'peach', jar: 'half-pint' }, 'peach').first.cooking?.batches ?? [];
    expect(jam?.fillTo.share).toBeCloseTo(1 / 3, 9);
  });

  it('comes down by the water that is boiled off', () => {
    const { first } = made({ recipe: 'tomato-sauce', jar: 'pint' }, 'tomato');
    const [pot] = first.cooking?.batches ?? [];
    const { fillTo: line, downTo } = pot as NonNullable<typeof pot>;
    expect(downTo?.volume.value).toBeLessThan(line.volume.value);
    expect((downTo?.volume.value ?? 0) / line.volume.value).toBeCloseTo((downTo?.share ?? 0) / line.share, 9);
    expect(first.basis).toContainEqual(expect.objectContaining({ of: 'cooking.batches[].downTo', kind: 'derived' }));
  });
});
