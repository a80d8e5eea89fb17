import { describe, expect, it } from 'vitest';
import { checkSchedule, planDay } from '../../../src/plan';
import type { PlanDayInput } from '../../../src/plan/request/planInput';
import { ownProcess } from '../../../src/recipes';

type Product = NonNullable<PlanDayInput['products']>[number];

const OWN = {
  name: 'plum sauce',
  citation: 'A county cookbook, 1998, page 41',
  form: 'sauce',
  jar: 'pint',
  method: 'boiling-water',
  minutes: 10,
  headspace: '1/2 in',
} as const;

const day = (product: Product, food = 'plum', elevation: '900 ft' | '4,200 ft' = '4,200 ft') =>
  planDay({
    lots: [{ food, raw: '30 lb' }],
    kitchen: {
      elevation,
      hours: '8 h',
      hands: 2,
      pots: [{ volume: '16 quarts' }],
      canners: [
        { method: 'boiling-water', holds: { pint: 9 } },
        { method: 'weighted-gauge', holds: { pint: 9 } },
      ],
    },
    products: [product],
  });

function first(product: Product, food?: string, elevation?: '900 ft' | '4,200 ft') {
  const plan = day(product, food, elevation);
  if (!plan.feasible) throw new Error(plan.reason.text);
  const [made] = plan.products;
  if (made === undefined) throw new Error(plan.leftOut.map(({ reason }) => reason.text).join());
  return { plan, made };
}

describe("a recipe of the cook's own book in a plan", () => {
  it.each([
    ['900 ft', 10],
    ['4,200 ft', 20],
  ] as const)('runs the minutes that ownProcess serves, at %s', (elevation, minutes) => {
    const { plan, made } = first({ own: OWN, from: 'plum' }, 'plum', elevation);
    const served = ownProcess({ ...OWN, pack: 'hot', foods: ['plum'], elevation });
    expect(served).toMatchObject({ tested: true, minutes });
    expect(made).toMatchObject({
      name: 'plum sauce in pints',
      recipe: 'own',
      makes: 'sauce',
      keeps: [{ place: 'shelf' }],
    });
    expect(made.canning).toMatchObject({ minutes, method: 'boiling-water', headspace: { value: 0.5, unit: 'in' } });
    for (const { kind, startMinute: start, endMinute: end } of plan.schedule.tasks)
      if (kind === 'can') expect(end - start).toBeGreaterThanOrEqual(minutes);
    expect(checkSchedule(plan).broken).toEqual([]);
  });

  it('is marked as the cook’s own in its jars, its cautions, its basis and the first step', () => {
    const { made } = first({ own: OWN });
    expect(made.canning?.own).toEqual({
      ownBook: true,
      name: OWN.name,
      citation: OWN.citation,
      whoseMinutes: 'your book',
      byYourBook: 20,
    });
    expect(made.cautions[0]?.id).toBe('your-books-figures');
    expect(made.basis.filter(({ of }) => of === 'ingredients')).toEqual([
      { of: 'ingredients', kind: 'measured', locator: OWN.citation, note: 'your book' },
    ]);
    expect(made.directions[0]).toContain(OWN.citation);
    expect(made.ingredients).toEqual([]);
  });

  it('gives way to longer minutes of these tables, and shows both', () => {
    const { made } = first({ own: { ...OWN, name: 'my peaches', form: 'halves' } }, 'peach');
    expect(made.canning).toMatchObject({
      minutes: 30,
      own: {
        whoseMinutes: 'these tables',
        byYourBook: 20,
        byTables: { minutes: 30, recipe: 'peach-halves-or-slices' },
        like: 'peach-halves-or-slices',
      },
    });
  });

  it('takes the work of the recipe that it is like, and says nothing of that recipe’s food', () => {
    const { made } = first({ own: { ...OWN, like: 'apple-sauce' } });
    expect(made.canning?.own?.like).toBe('apple-sauce');
    expect(made.directions).toContain('Core.');
    expect(made.directions.join(' ')).not.toContain('apple');
  });

  it.each([['pumpkin'], ['green beans'], ['elderberry']])('is left out where ownProcess refuses it: %s', (food) => {
    const plan = day({ own: { ...OWN, form: undefined } }, food);
    if (!plan.feasible) throw new Error(plan.reason.text);
    expect(plan.products).toEqual([]);
    expect(plan.leftOut).toHaveLength(1);
    expect(plan.leftOut[0]?.name).toBe('plum sauce');
  });

  it('holds pressure for food that is low in acid', () => {
    const own = {
      ...OWN,
      name: 'beans',
      form: undefined,
      method: 'weighted-gauge',
      minutes: 25,
      headspace: '1 in',
    } as const;
    const { made } = first({ own }, 'green beans');
    expect(made.canning?.pressure?.value).toBe(15);
  });

  it('asks for the acid of the book in each jar', () => {
    const own = { ...OWN, name: 'figs', form: undefined, minutes: 50, acid: { bottledLemonJuice: '1 tbsp' } } as const;
    const { plan, made } = first({ own }, 'fig');
    const [acid] = made.ingredients.filter(({ role }) => role === 'acid');
    expect(acid).toMatchObject({ what: 'bottled lemon juice', amount: { value: made.units.ready, unit: 'tbsp' } });
    expect(plan.haveReady.map(({ what }) => what)).toContain('bottled lemon juice');
  });

  it.each([
    [{ own: OWN, recipe: 'apple-sauce' }, 'products[0].recipe'],
    [{ own: OWN, make: 'sauce' }, 'products[0].make'],
    [{ own: OWN, jar: 'quart' }, 'products[0].jar'],
    [{ own: OWN, method: 'boiling-water' }, 'products[0].method'],
    [{ own: { ...OWN, citation: 'mine' } }, 'products[0].own.citation'],
    [{ own: { ...OWN, baseElevation: '3,000 ft' } }, 'products[0].own.baseElevation'],
  ] as [Product, string][])('refuses %j', (product, path) => {
    expect(() => day(product)).toThrow(expect.objectContaining({ path }));
  });
});
