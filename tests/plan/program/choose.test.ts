import { describe, expect, test } from 'vitest';
import { nameOf } from '../../../src/foods/tables';
import { checkSchedule, type FeasibleDay, type PlanDayInput, planDay } from '../../../src/plan/index';
import type { Quantity } from '../../../src/quantity/index';
import { valueIn } from '../../../src/quantity/scale';
import { recipeOfId } from '../../../src/recipes/rows/rows';
import { FULL_KITCHEN } from '../fullKitchen';

type Kitchen = PlanDayInput['kitchen'];
const small = { elevation: '500 ft', hours: '8 h', hands: 2, pots: [{ volume: '12 quarts' }] } as const;
const KITCHENS: Readonly<Record<string, Kitchen>> = {
  everything: { ...FULL_KITCHEN, hours: '10 h' },
  'boiling water only': {
    ...small,
    canners: [{ method: 'boiling-water', holds: { pint: 9, quart: 7, 'half-pint': 12 } }],
  },
  'freezer and dryer': { ...small, freezer: { room: '60 L' }, dryer: { trays: 9, trayArea: '200 in2' } },
  'hands and a knife': { elevation: '500 ft', hours: '4 h' },
};
const FOODS = [
  ...[
    'peach',
    'apple',
    'plum',
    'pear',
    'apricot',
    'strawberry',
    'blueberry',
    'sour cherry',
    'grape',
    'fig',
    'mango',
    'rhubarb',
  ],
  ...[
    'tomato',
    'green beans',
    'cucumber',
    'carrot',
    'sweet corn',
    'zucchini',
    'cabbage',
    'beet',
    'potato',
    'onion',
    'bell pepper',
  ],
  ...['pumpkin', 'asparagus', 'broccoli', 'spinach', 'green pea', 'leek', 'beef'],
];
const kg = (mass: Quantity<'mass'>) => valueIn(mass, 'kg');

/** What is wrong with a plan that chose for itself. */
function wrong(bought: readonly string[], plan: FeasibleDay, kitchen: Kitchen): string[] {
  const lots = new Set(bought);
  return plan.products.flatMap(({ name, recipe, canning: jars, packs, drying: trays, fromLots: from }) => {
    const row = recipeOfId(recipe);
    const out: string[] = [];
    if (!from.every(({ food }) => lots.has(food))) out.push(`${name}: of what is not there`);
    const main = (row?.ingredients ?? []).filter(
      ({ role, optional }) => optional !== true && ['fruit', 'vegetable', 'meat', 'fish'].includes(role),
    );
    const there = ({ food, choose }: (typeof main)[number]) =>
      food === '@scope' || choose !== undefined || (food !== undefined && lots.has(nameOf(food)));
    if (!main.every(there)) out.push(`${name}: needs a food that is not there`);
    if (jars !== undefined && (kitchen.canners ?? []).length === 0) out.push(`${name}: canned without a canner`);
    if (jars !== undefined && !(kitchen.canners ?? []).some(({ method }) => method === jars.method))
      out.push(`${name}: ${jars.method}`);
    if (packs !== undefined && kitchen.freezer === undefined) out.push(`${name}: no freezer`);
    if (trays?.where === 'dryer' && kitchen.dryer === undefined) out.push(`${name}: no dryer`);
    return out;
  });
}

describe.each(Object.entries(KITCHENS))('lots and a kitchen with %s, no product named', (_, kitchen) => {
  test.each(FOODS)('%s', (food) => {
    const plan = planDay({ lots: [{ food, raw: '20 lb' }], kitchen });
    if (!plan.feasible) throw new Error(plan.reason.text);
    expect(checkSchedule(plan).broken).toEqual([]);
    const [lot] = [...plan.leftFresh, ...plan.products.flatMap(({ fromLots: from }) => from)];
    expect(wrong([lot?.food ?? food], plan, kitchen)).toEqual([]);
    // an empty plan says what the kitchen lacks
    if (plan.products.length === 0) expect(plan.leftOut.length + plan.notMade.length, food).toBeGreaterThan(0);
    // mass: what is used and what is left is what was bought; trimmings are used twice
    const used = plan.products
      .filter(({ trimmings }) => trimmings !== undefined)
      .reduce((sum, { raw }) => sum + kg(raw), 0);
    const left = plan.leftFresh.reduce((sum, { raw }) => sum + kg(raw), 0);
    expect(used + left).toBeCloseTo(20 * 0.45359237, 2);
  });
});

describe('what is chosen', () => {
  const lots = [
    { food: 'peach', raw: '30 lb' },
    { food: 'apple', raw: '1 bushel', sound: 0.9, keepFresh: '5 lb' },
    { food: 'tomato', raw: '25 lb' },
  ] as const;
  const plan = (more: object = {}) => {
    const found = planDay({ lots, kitchen: { ...FULL_KITCHEN, hours: '12 h' }, ...more } as PlanDayInput);
    if (!found.feasible) throw new Error(found.reason.text);
    return found;
  };
  test('`never` is obeyed, by the kind and by the recipe', () => {
    const free = plan();
    expect(free.products.length).toBeGreaterThan(2);
    for (const product of free.products.slice(0, 3)) {
      const without = plan({ products: [{ recipe: product.recipe, never: true }] });
      expect(without.products.map(({ recipe }) => recipe)).not.toContain(product.recipe);
      const other = plan({ products: [{ make: product.makes, never: true }] });
      expect(other.products.map(({ makes }) => makes)).not.toContain(product.makes);
    }
  });
  test('mass: bought is used, left, kept and not sound', () => {
    const { products, leftFresh, keptFresh, notSound } = plan();
    const bought = new Map([
      ['peach', 30],
      ['apple', 48],
      ['tomato', 25],
    ]);
    for (const [food, pounds] of bought) {
      const of = (shares: readonly { readonly food: string; readonly raw: Quantity<'mass'> }[]) =>
        shares.filter((share) => share.food === food).reduce((sum, { raw }) => sum + valueIn(raw, 'lb'), 0);
      const whole = products.filter(({ trimmings }) => trimmings !== undefined);
      const used = of(whole.flatMap(({ fromLots: from }) => from));
      expect(used + of(leftFresh) + of(keptFresh) + of(notSound), food).toBeCloseTo(pounds, 1);
    }
    expect(keptFresh.map(({ raw }) => raw.value)).toEqual([expect.closeTo(5, 6)]);
    expect(notSound.map(({ raw }) => raw.value)).toEqual([expect.closeTo(4.8, 6)]);
  });
  test('every product that is canned has its acid, and the minutes of its recipe', () => {
    for (const { canning: jars, ingredients } of plan().products)
      if (jars?.acidToAdd !== undefined) expect(ingredients.some(({ role }) => role === 'acid')).toBe(true);
  });
});
