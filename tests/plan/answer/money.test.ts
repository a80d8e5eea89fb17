import { describe, expect, test } from 'vitest';
import { freezeEnergy } from '../../../src/freezing/index';
import { dryEnergy } from '../../../src/heat/dryEnergy';
import { freezeDryEnergy } from '../../../src/heat/freezeDryEnergy';
import { stoveEnergy } from '../../../src/heat/stoveEnergy';
import { type FeasibleDay, type PlanDayInput, planDay } from '../../../src/plan/index';
import { loadTimeline } from '../../../src/process/index';
import { composition } from '../../../src/produce/index';
import type { Quantity } from '../../../src/quantity/index';
import { valueIn } from '../../../src/quantity/scale';
import { sucroseDensity } from '../../../src/solution/index';
import { codeText } from '../../helpers/errors';
import { known } from '../../helpers/known';

const usd = (value: number) => ({ value, unit: 'USD' });
const feasible = (input: PlanDayInput): FeasibleDay => {
  const plan = planDay(input);
  if (!plan.feasible) throw new Error(plan.reason.text);
  return plan;
};
const only = (input: PlanDayInput) => {
  const plan = feasible(input);
  expect(plan.products.length).toBe(1);
  return plan.products[0] as FeasibleDay['products'][number];
};
const kg = (mass: Quantity<'mass'> | undefined) => valueIn(mass as Quantity<'mass'>, 'kg');
type Units = FeasibleDay['products'][number]['units'];
/** A cost of all of a product for one of it, rounded up, at each of its counts. */
const each = ({ promised, likely, ready }: Pick<Units, 'promised' | 'likely' | 'ready'>, total: number, part = 1) => {
  const at = (count: number) => usd(Math.ceil(((100 * total) / count) * part - 1e-6) / 100);
  return { low: at(ready), likely: at(likely), high: at(promised) };
};
const up = (value: number) => Math.ceil(value * 100 - 1e-6) / 100;
const cents = (value: number) => Math.round(value * 100) / 100;

type Products = NonNullable<PlanDayInput['products']>;
const input: PlanDayInput & { readonly products: Products } = {
  lots: [{ name: 'sugar', food: 'peach', raw: '30 lb', price: '20.00 USD' }],
  kitchen: {
    elevation: '100 m',
    hours: '10 h',
    hands: 2,
    pots: [{ volume: '12 quarts' }],
    canners: [{ method: 'boiling-water', holds: { quart: 7 } }],
    jars: [{ jar: 'quart', count: 9, price: '1.50 USD', lifetimeUses: 5 }],
    lids: { count: 20, price: '0.25 USD' },
    pantry: [{ item: 'sugar', amount: '10 lb', price: '8.00 USD' }],
  },
  products: [{ make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', syrup: 'light' }],
};
// 2 1/4 cups of sugar for 7 quarts, 200 g a cup, 0.80 USD a lb
const sugarEach = (((1 / 7) * 2.25 * 200) / 453.59237) * 0.8;
const sugar = cents(9 * sugarEach);
test('by hand: 18 of 30 lb, nine jars over five uses, nine lids, sugar for nine quarts', () => {
  const plan = feasible(input);
  // 6 quarts promised at 3 lb a quart; 9 to ready at 2 lb
  const units = { promised: 6, likely: 7, ready: 9 };
  expect(plan.products[0]?.units).toMatchObject(units);
  const total = cents(16.95 + sugar);
  const litres = valueIn(plan.products[0]?.canning?.fillVolume as Quantity<'volume'>, 'L');
  expect(plan.products[0]?.costs).toEqual({
    lines: [
      { what: 'sugar', kind: 'food', cost: usd(12) }, // the lot of that name
      { what: 'jars, over their lives', kind: 'supplies', cost: usd(2.7) },
      { what: 'lids', kind: 'supplies', cost: usd(2.25) },
      { what: 'sugar', kind: 'supplies', cost: usd(sugar) },
    ],
    total: usd(total),
    perUnit: each(units, total),
    // a litre as a kilogram
    perNet: { cost: each(units, total, 0.028349523125 / litres), netMass: { value: 1, unit: 'oz' }, estimated: true },
    perServing: {
      cost: each(units, total, 0.11829411825 / litres),
      serving: { value: 0.5, unit: 'cup' },
      customary: true,
    },
  });
  expect(plan.costs).toEqual({
    foodUsed: usd(12),
    foodLeft: usd(8),
    foodKeptFresh: usd(0),
    foodNotSound: usd(0),
    supplies: usd(cents(4.95 + sugar)),
    energyCost: usd(0),
    handsCost: usd(0),
    total: usd(cents(24.95 + sugar)),
    // 20 for the fruit; a jar's use, a lid and its sugar for each of 6, 7 and 9 quarts
    totalRange: {
      low: usd(up(20 + 6 * (0.55 + sugarEach))),
      likely: usd(up(20 + 7 * (0.55 + sugarEach))),
      high: usd(up(20 + 9 * (0.55 + sugarEach))),
    },
    notPriced: ['heat of the stove', 'own hours'],
  });
  expect(plan.products[0]?.basis).toContainEqual({
    of: 'costs.perServing',
    kind: 'common-practice',
    note: 'customary serving',
  });
});
test('no price, no cost', () => {
  const { price: _, ...lot } = input.lots[0] as PlanDayInput['lots'][number] & { price: string };
  const { jars: __, lids: ___, pantry: ____, ...kitchen } = input.kitchen;
  const plan = feasible({ ...input, lots: [lot], kitchen });
  expect(plan.costs).toBeUndefined();
  expect(plan.products[0]?.energy?.likely.value).toBeGreaterThan(1);
});
test('what is short is to be bought', () => {
  const plan = feasible({ ...input, kitchen: { ...input.kitchen, pantry: [{ item: 'sugar', amount: '1 oz' }] } });
  expect(plan.haveReady.find(({ what }) => what === 'sugar')?.short).toMatchObject({
    unit: 'lb',
    value: expect.closeTo(((9 / 7) * 2.25 * 200) / 453.59237 - 1 / 16, 9),
  });
});

describe('energy, checked by hand against the energy functions', () => {
  const energy = { stove: 'electric', electricity: '0.30 USD', gas: '1.50 USD' } as const;
  const cooking = (plan: FeasibleDay['products'][number], minutesEach: number, beside = 0) => {
    const heat = stoveEnergy({
      heatUp: {
        // a pot heats all that is not cut away, at the rich end of the fruit
        mass: { value: kg(plan.raw) - kg(plan.trimmings?.low) + beside, unit: 'kg' },
        startTemperature: '20 degC',
        targetTemperature: { value: 99.64, unit: 'degC' },
        substance: 'food',
      }, // at 100 m
    }).energy.likely.value;
    const batches = (plan.cooking?.batches ?? []).reduce((sum, each) => sum + each.count, 0);
    const time = { value: batches * minutesEach, unit: 'min' } as const;
    return heat + (batches === 0 ? 0 : stoveEnergy({ hold: { time, burnerPower: '2400 W' } }).energy.likely.value);
  };
  const line = ({ costs: cost }: FeasibleDay['products'][number]) =>
    cost?.lines.find(({ kind }) => kind === 'energy')?.cost.value ?? 0;

  test('jars: the food is heated and held, one load from cold water and one from hot', () => {
    const product = only({ ...input, kitchen: { ...input.kitchen, utilities: energy } });
    const load = {
      food: 'peach',
      form: 'halves',
      pack: 'hot',
      jar: 'quart',
      method: 'boiling-water',
      elevation: '100 m',
      jars: 7,
      waterVolume: '12 quarts',
      burnerPower: '2400 W',
    } as const;
    const [cold, hot] = [loadTimeline(load), loadTimeline({ ...load, waterTemperature: '180 degF' })];
    if (!cold.tested || !hot.tested) throw new Error('a tested process');
    expect(product.canning?.loads).toMatchObject([{ count: 2 }]);
    // heated for 3 to 10 min: half way between
    // and its syrup: 9 cups of water and 2 1/4 cups of sugar for 7 quarts, a liter as a kilogram
    const syrup = (9 / 7) * (9 * 0.2365882365 + (2.25 * 0.2) / 1.587);
    const byHand = cooking(product, 6.5, syrup) + cold.energy.likely.value + hot.energy.likely.value;
    expect(product.energy?.likely.value).toBeCloseTo(byHand, 3);
    expect(line(product)).toBe(cents((product.energy?.likely.value ?? 0) * 0.3));
    const { low, likely, high } = product.energy as NonNullable<typeof product.energy>;
    expect(low.value).toBeLessThan(likely.value);
    expect(likely.value).toBeLessThan(high.value);
  });
  test('a gas stove burns therms, at the price of gas; with no price of what it burns there is no line', () => {
    const gas = only({ ...input, kitchen: { ...input.kitchen, utilities: { ...energy, stove: 'gas' } } });
    expect(line(gas)).toBe(cents(((gas.energy?.likely.value ?? 0) / 29.307107) * 1.5));
    const free = only({ ...input, kitchen: { ...input.kitchen, utilities: { stove: 'electric', gas: '1.50 USD' } } });
    expect(free.costs?.lines.some(({ kind }) => kind === 'energy')).toBe(false);
  });
  test('two products of one process share their loads by the jar', () => {
    const plan = feasible({
      lots: [
        { food: 'peach', raw: '4 lb' },
        { food: 'pear', raw: '6 lb' },
      ],
      // each is cooked in a pot for itself, so that no jar waits for the other
      kitchen: { ...input.kitchen, pots: [{ volume: '12 quarts', count: 2 }], utilities: energy },
      products: (['peach', 'pear'] as const).map((from) => ({
        make: 'jars',
        from,
        form: 'halves',
        pack: 'hot',
        jar: 'quart',
        method: 'boiling-water',
        least: 1,
      })),
    });
    const [peach, pear] = plan.products as [FeasibleDay['products'][number], FeasibleDay['products'][number]];
    expect(peach.canning?.loads[0]?.sharedWith).toEqual([pear.name]);
    const perJar = (each: typeof peach, minutes: number) =>
      ((each.energy?.likely.value ?? 0) - cooking(each, minutes)) / each.units.ready;
    // peaches are heated for 3 to 10 min, and the page of pears prints 5
    expect(perJar(peach, 6.5)).toBeCloseTo(perJar(pear, 5), 3);
  });
  test('jam: fruit and sugar are heated, and what the printed yield leaves out is boiled off', () => {
    const product = only({
      lots: [{ food: 'peach', raw: '3 kg' }],
      kitchen: {
        ...input.kitchen,
        canners: [{ method: 'boiling-water', holds: { 'half-pint': 12 } }],
        jars: [{ jar: 'half-pint', count: 20 }],
      },
      products: [{ make: 'jam', from: 'peach', method: 'boiling-water' }],
    });
    // one batch: 6 cups of crushed peaches, 5 cups of sugar, 2 tbsp of lemon juice, 6 to 7 half-pints
    expect(product.units).toMatchObject({ promised: 6, ready: 7 });
    const cup = 0.2365882365;
    // the fruit for it as it is in the pot at the rich end, and the liters of what goes in besides: a cup of sugar is 200 g
    const inPot = kg(product.raw) - kg(product.trimmings?.low) + (5 * 0.2) / 1.587 + cup / 8;
    expect(inPot).toBeGreaterThan(6 * cup + 5 * 0.1);
    const heat = stoveEnergy({
      heatUp: {
        mass: { value: inPot, unit: 'kg' },
        startTemperature: '20 degC',
        targetTemperature: { value: 99.64, unit: 'degC' },
        substance: 'food',
      },
    });
    const off = stoveEnergy({
      boilOff: { value: inPot - 7 * cup, unit: 'kg' },
      elevation: '100 m',
    });
    const load = loadTimeline({
      food: 'peach jam',
      jar: 'half-pint',
      method: 'boiling-water',
      elevation: '100 m',
      jars: 12,
      waterVolume: '12 quarts',
      burnerPower: '2400 W',
    });
    expect(product.canning?.loads).toMatchObject([{ count: 1 }]);
    // boiled down for 20 to 60 min: half way between; heated up by its weight besides
    expect(product.cooking?.leastEach).toBe(40);
    expect(product.cooking?.minutesEach).toBeGreaterThan(40);
    const hold = stoveEnergy({ hold: { time: '40 min', burnerPower: '2400 W' } });
    expect(product.energy?.likely.value).toBeCloseTo(
      heat.energy.likely.value +
        off.energy.likely.value +
        hold.energy.likely.value +
        (load.tested ? load.energy.likely.value : 0),
      3,
    );
  });
  const dry: PlanDayInput & { readonly products: Products } = {
    lots: [{ food: 'apple', raw: '5 kg' }],
    kitchen: { elevation: '100 m', hours: '8 h', dryer: { trays: 10, trayArea: '1200 cm2' }, utilities: energy },
    products: [{ make: 'dried', from: 'apples', form: 'slices', packSize: '100 g' }],
  };
  const water = known(composition({ food: 'apple' })).moisture.likely;
  test('the dryer by the water, or by its power, the hours and its share of trays', () => {
    const product = only(dry);
    const { ready, drying: trays } = product;
    const target = 1 - ((1 - water) * kg(ready.likely)) / kg(trays?.dried.likely);
    const drying = dryEnergy({
      fresh: ready.likely,
      moisture: water,
      targetMoisture: target,
      temperature: trays?.temperature as Quantity<'temperature'>,
    });
    expect(product.energy?.likely.value).toBeCloseTo(drying.energy.likely.value, 6);
    expect(line(product)).toBe(cents(drying.energy.likely.value * 0.3));
    const known = only({ ...dry, kitchen: { ...dry.kitchen, utilities: { ...energy, dryerPower: '600 W' } } });
    const hours = valueIn(known.drying?.hours?.likely as Quantity<'time'>, 'h');
    expect(known.energy?.likely.value).toBeCloseTo((0.6 * hours * (known.drying?.trays ?? 0)) / 10, 9);
  });
  test('the freeze-dryer by the ice, or by its power; the freezer by the weight', () => {
    const kitchen: PlanDayInput['kitchen'] = {
      elevation: '100 m',
      hours: '8 h',
      freezeDryer: { trays: 4, trayArea: '1200 cm2', ice: '5 kg' },
      freezer: { room: '30 L' },
    };
    const iced = only({ ...dry, kitchen, products: [{ make: 'freeze-dried', from: 'apples', packSize: '100 g' }] });
    const ice = kg(iced.ready.likely) - kg(iced.drying?.dried.likely);
    expect(iced.energy?.likely.value).toBeCloseTo(
      freezeDryEnergy({ ice: { value: ice, unit: 'kg' } }).energy.likely.value,
      6,
    );
    const known = only({
      ...dry,
      kitchen: { ...kitchen, utilities: { freezeDryerPower: '1 kW' } },
      products: [{ make: 'freeze-dried', from: 'apples', packSize: '100 g' }],
    });
    const { hours } = known.drying ?? {};
    const middle = ((hours?.low.value ?? 0) + (hours?.high.value ?? 0)) / 2;
    expect(known.energy?.likely.value).toBeCloseTo((middle * (known.drying?.trays ?? 0)) / 4, 9);
    const frozen = only({ ...dry, kitchen, products: [{ make: 'frozen', from: 'apples' }] });
    expect(frozen.energy?.likely.value).toBeCloseTo(
      freezeEnergy({
        mass: frozen.ready.likely,
        moisture: water,
        startTemperature: '20 degC',
        targetTemperature: '-18 degC',
      }).energy.likely.value,
      6,
    );
  });
  test('what is neither heated nor frozen takes none', () => {
    const plan = feasible({
      ...dry,
      lots: [{ food: 'apple', raw: '30 kg' }],
      kitchen: { ...dry.kitchen, dryer: { trays: 60, trayArea: '1200 cm2' } },
      products: [...dry.products, { make: 'vinegar', from: 'apple', least: 1 }],
    });
    expect(plan.products.find(({ makes }) => makes === 'vinegar')?.energy).toBeUndefined();
  });
});

test('a kind is rounded once and shared out: 3 and 3 bags at 0.335 are 2.01 and not twice 1.01', () => {
  const plan = feasible({
    lots: [
      { food: 'peach', raw: '20 lb' },
      { food: 'plum', raw: '20 lb' },
    ],
    kitchen: { elevation: '1 m', hours: '9 h', freezer: { room: '90 L' }, bags: { price: '0.335 USD' } },
    products: (['peach', 'plum'] as const).map((from) => ({ make: 'frozen', from, form: 'slices', most: 3 })),
  });
  expect(plan.products.map(({ units }) => units.ready)).toEqual([3, 3]);
  expect(plan.costs?.supplies).toEqual(usd(2.01));
  expect(plan.products.map(({ costs: cost }) => cost?.total.value)).toEqual([1.01, 1]);
});

describe('food that goes into nothing, and what has no price', () => {
  const lot = { food: 'peach', raw: '40 lb', price: '1.00 USD', per: '1 lb', sound: 0.9, keepFresh: '6 lb' } as const;
  const { kitchen } = input;
  test('by hand: 40 lb at a dollar, 4 lb not sound, 6 lb kept; 30 lb are as before', () => {
    const { costs: cost, products } = feasible({ ...input, lots: [lot] });
    expect(products[0]?.units).toMatchObject({ promised: 6, ready: 9 });
    expect(cost).toMatchObject({
      foodUsed: usd(18),
      foodLeft: usd(12),
      foodKeptFresh: usd(6),
      foodNotSound: usd(4),
      total: usd(cents(40 + 4.95 + sugar)),
    });
    expect(products[0]?.costs?.lines[0]).toEqual({ what: 'peach', kind: 'food', cost: usd(18) });
  });
  test('what is used and has no price is named, and nothing else', () => {
    const named = (more: object, lots: PlanDayInput['lots'] = [lot]) =>
      feasible({ ...input, lots, kitchen: { ...kitchen, ...more } }).costs?.notPriced;
    const utilities = { stove: 'electric', electricity: '0.30 USD' };
    expect(named({ utilities, wage: '12 USD' })).toEqual([]);
    expect(named({ utilities: { stove: 'gas' }, wage: '12 USD' })).toEqual(['gas']);
    expect(named({ utilities: { stove: 'electric' }, wage: '12 USD' })).toEqual(['electricity']);
    expect(
      named({ utilities, wage: '12 USD', lids: { count: 20 }, pantry: [], jars: [{ jar: 'quart', count: 9 }] }),
    ).toEqual(['quart jars', 'lids', 'sugar']);
    // the lot that is used has no price, the other has one and is not used
    const two = [
      { name: 'from the tree', food: 'peach', raw: '30 lb' },
      { ...lot, food: 'plum' },
    ] as const;
    expect(named({ utilities, wage: '12 USD' }, two)).toEqual(['from the tree']);
    expect(named({ utilities, wage: '12 USD', lids: { count: 20, price: '0 USD' } })).toEqual([]);
  });
});

describe('own hours', () => {
  test('each product by its minutes, and together to the cent', () => {
    const plan = feasible({ ...input, kitchen: { ...input.kitchen, wage: '13.37 USD' } });
    const { prepare, fill, stir } = plan.products[0]?.handsMinutes ?? { prepare: 0, fill: 0, stir: 0 };
    expect(plan.costs?.handsCost).toEqual(usd(cents((13.37 * (prepare + fill + stir)) / 60)));
    expect(plan.products[0]?.costs?.lines.at(-1)).toEqual({
      what: 'own hours',
      kind: 'hands',
      cost: plan.costs?.handsCost,
    });
  });
});

describe('acid, pectin and bags', () => {
  const tomatoes: PlanDayInput = {
    lots: [{ food: 'tomato', raw: '40 lb' }],
    kitchen: { ...input.kitchen, jars: [{ jar: 'quart', count: 9 }], lids: { count: 20 } },
    products: [{ make: 'jars', from: 'tomatoes', form: 'crushed', jar: 'quart', method: 'boiling-water' }],
  };
  const withPantry = (pantry: NonNullable<PlanDayInput['kitchen']['pantry']>) =>
    feasible({ ...tomatoes, kitchen: { ...tomatoes.kitchen, pantry } });
  test('lemon juice by its weight of 244 g a cup: 2 tbsp a quart', () => {
    const plan = withPantry([
      { item: 'bottled lemon juice', amount: '122 g', price: '2.00 USD' },
      { item: 'citric acid', amount: '50 g', price: '3 USD' },
    ]);
    const [product] = plan.products;
    const jars = product?.units.ready ?? 0;
    expect(jars).toBeGreaterThan(4);
    // 16 tbsp to the cup
    expect(product?.costs?.lines).toEqual([
      { what: 'bottled lemon juice', kind: 'supplies', cost: usd(cents(((jars * 2) / 16) * 2 * 2)) },
    ]);
    const ready = plan.haveReady.find(({ what }) => what === 'bottled lemon juice');
    expect(ready?.needed).toEqual({ value: expect.closeTo(jars / 8, 9), unit: 'cup' });
    expect(ready?.short).toEqual({ value: expect.closeTo(jars / 8 - 0.5, 9), unit: 'cup' });
  });
  test('citric acid where the pantry holds no lemon juice: 1/2 tsp a quart, 4.6 g a tsp', () => {
    const plan = withPantry([{ item: 'citric acid', amount: '46 g', price: '10.00 USD' }]);
    const [product] = plan.products;
    const jars = product?.units.ready ?? 0;
    expect(product?.ingredients).toMatchObject([{ what: 'citric acid', amount: { unit: 'tbsp' } }]);
    expect(product?.costs?.lines).toEqual([{ what: 'citric acid', kind: 'supplies', cost: usd(cents(jars * 0.5)) }]);
    expect(product?.canning?.acidToAdd).toContain('citric acid');
  });
  test('pectin by the package of the printed recipe, bought where the pantry lacks it', () => {
    const jam = (more: object) =>
      feasible({
        lots: [{ food: 'peach', raw: '5 kg' }],
        kitchen: {
          ...input.kitchen,
          canners: [{ method: 'boiling-water', holds: { 'half-pint': 12 } }],
          jars: [{ jar: 'half-pint', count: 30 }],
          lids: { count: 30 },
          pantry: [{ item: 'pectin', amount: '30 g', price: '6 USD' }],
        },
        products: [{ make: 'jam', from: 'peach', method: 'boiling-water', most: 12, ...more }],
      });
    const plan = jam({ pectin: true });
    const [product] = plan.products;
    expect(product?.units).toMatchObject({ promised: 10, ready: 12 });
    const pectin = product?.ingredients.find(({ role }) => role === 'pectin');
    // two batches, a package of 1 3/4 oz in each
    expect(kg(pectin?.amount as Quantity<'mass'>)).toBeCloseTo(2 * 0.0496, 9);
    expect(product?.costs?.lines).toEqual([{ what: 'pectin', kind: 'supplies', cost: usd(cents(0.0992 * 200)) }]);
    expect(kg(plan.haveReady.find(({ what }) => what === 'pectin')?.short as Quantity<'mass'>)).toBeCloseTo(0.0692, 9);
    expect(jam({ pectin: false }).products[0]?.ingredients.some(({ role }) => role === 'pectin')).toBe(false);
  });
  const bagged = (bags: object): PlanDayInput => ({
    lots: [{ food: 'peach', raw: '20 lb' }],
    kitchen: { elevation: '100 m', hours: '8 h', freezer: { room: '50 L' }, bags },
    products: [{ make: 'frozen', from: 'peach', packSize: '1 lb' }],
  });
  test('bags are paid for and limit what is packed, where they are counted', () => {
    const free = feasible(bagged({ price: '0.15 USD' }));
    const count = free.products[0]?.units.ready ?? 0;
    expect(count).toBeGreaterThan(8);
    expect(free.costs?.supplies).toEqual(usd(cents(0.15 * count)));
    // the sugar pack of peaches takes sugar and ascorbic acid besides
    expect(free.haveReady[0]).toEqual({ what: 'bags or boxes', needed: count });
    const few = feasible({ ...bagged({ count: 5 }), oneMore: true });
    expect(few.products[0]?.units.ready).toBe(5);
    expect(few.limits).toContainEqual(expect.objectContaining({ what: 'bags', used: 5, available: 5 }));
    expect(feasible(bagged({ count: 0 })).products).toEqual([]);
  });
});

describe('what an ounce, 100 g and a serving cost', () => {
  const apples = (product: object, unit: 'lb' | 'kg' = 'lb'): PlanDayInput => ({
    lots: [{ food: 'apple', raw: { value: 30, unit }, price: '20.00 USD' }],
    kitchen: {
      ...input.kitchen,
      jars: [{ jar: 'quart', count: 9 }],
      canners: [{ method: 'boiling-water', holds: { quart: 7, pint: 9 } }],
      dryer: { trays: 20, trayArea: '1200 cm2' },
      freezer: { room: '30 L' },
    },
    products: [{ from: 'apple', ...product } as Products[number]],
  });
  const rates = (product: object, unit: 'lb' | 'kg' = 'lb') => {
    const { costs: cost, units } = only(apples(product, unit));
    if (cost === undefined) throw new Error('a cost');
    return { ...cost, at: (part: number) => each(units, cost.total.value, part) };
  };

  test('a bag by its size, on a metric day by 100 g', () => {
    const bag = rates({ make: 'dried', form: 'slices', packSize: '8 oz' });
    expect(bag.perNet).toEqual({ cost: bag.at(1 / 8), netMass: { value: 1, unit: 'oz' } });
    expect(bag.perServing).toMatchObject({ cost: bag.at(1.5 / 8), customary: true });
    const metric = rates({ make: 'dried', form: 'slices', packSize: '250 g' }, 'kg');
    expect(metric.perNet).toEqual({ cost: metric.at(1 / 2.5), netMass: { value: 100, unit: 'g' } });
    expect(metric.perServing?.serving).toEqual({ value: 40, unit: 'g' });
  });
  test('jam by its own density', () => {
    const plan = only({
      ...apples({}),
      lots: [{ food: 'peach', raw: '9 lb', price: '10.00 USD' }],
      kitchen: {
        ...input.kitchen,
        canners: [{ method: 'boiling-water', holds: { pint: 9 } }],
        jars: [{ jar: 'pint', count: 9 }],
      },
      products: [{ make: 'jam', from: 'peach', jar: 'pint', serving: '2 tbsp' }],
    });
    const at = (part: number) => each(plan.units, plan.costs?.total.value ?? 0, part);
    const net = valueIn(plan.canning?.netMass as Quantity<'mass'>, 'oz');
    expect(plan.costs?.perNet).toEqual({ cost: at(1 / net), netMass: { value: 1, unit: 'oz' } });
    const spoons = valueIn(plan.canning?.fillVolume as Quantity<'volume'>, 'tbsp');
    expect(plan.costs?.perServing).toEqual({ cost: at(2 / spoons), serving: { value: 2, unit: 'tbsp' } });
    const { density } = sucroseDensity({ brix: 65, temperature: '20 degC' });
    const grams = valueIn(plan.canning?.fillVolume as Quantity<'volume'>, 'mL') * valueIn(density, 'g/mL');
    expect(net).toBeCloseTo(grams / 28.349523125, 6);
  });
  test('a jar of sauce by the volume, said to be an estimate', () => {
    const sauce = rates({ make: 'jars', form: 'sauce', jar: 'quart', serving: '4 oz' });
    expect(sauce.perNet?.estimated).toBe(true);
    expect(sauce.perServing?.cost.high.value).toBeGreaterThan(3 * (sauce.perNet?.cost.high.value ?? 0));
  });
  test.each([
    ['frozen', { make: 'frozen', packSize: '1 lb' }],
    ['leather', { make: 'leather' }],
  ])('%s has both', (_, product) => {
    const { perNet, perServing } = rates(product);
    expect(perNet?.cost.low.value).toBeGreaterThan(0);
    expect(perServing?.customary).toBe(true);
  });
  test('vinegar and stock have no net weight, and stock is not served', () => {
    const plan = feasible({
      ...apples({ make: 'dried', form: 'slices', packSize: '4 oz' }),
      lots: [{ food: 'apple', raw: '90 lb', price: '20 USD' }],
      products: [
        { make: 'dried', from: 'apple', form: 'slices', packSize: '4 oz' },
        { make: 'jars', from: 'apple', form: 'slices', jar: 'quart' },
        { make: 'vinegar', from: 'apple', least: 1 },
        { make: 'jelly stock', from: 'apple', least: 1 },
      ],
    });
    const [vinegar, stock] = ['vinegar', 'stock'].map((makes) => plan.products.find((each) => each.makes === makes));
    expect(vinegar?.costs).toMatchObject({ perServing: { serving: { value: 1, unit: 'tbsp' } } });
    expect(vinegar?.costs?.perNet).toBeUndefined();
    expect(stock?.costs?.perNet).toBeUndefined();
    expect(stock?.costs?.perServing).toBeUndefined();
  });
});

describe('prices of zero and below', () => {
  const priced = (price: string) =>
    ({
      lots: [{ food: 'peach', raw: '30 lb', price }],
      kitchen: {
        ...input.kitchen,
        jars: [{ jar: 'quart', count: 9, price }],
        lids: { count: 20, price },
        bags: { price },
        pantry: [{ item: 'sugar', amount: '10 lb', price }],
        utilities: { stove: 'electric', electricity: price, gas: price },
        wage: price,
      },
      products: input.products,
    }) as unknown as PlanDayInput;
  test('what was free costs nothing, in all of its figures', () => {
    const plan = feasible(priced('0 USD'));
    const { notPriced, totalRange, ...kinds } = plan.costs ?? {};
    for (const money of Object.values(totalRange ?? {})) expect(money).toEqual(usd(0));
    for (const money of Object.values(kinds)) expect(money).toEqual(usd(0));
    // free is a price
    expect(notPriced).toEqual([]);
    const nothing = { low: usd(0), likely: usd(0), high: usd(0) };
    expect(plan.products[0]?.costs).toMatchObject({ lines: [], total: usd(0), perUnit: nothing });
    expect(Object.is(plan.products[0]?.costs?.perUnit.low.value, 0)).toBe(true);
    // nothing is cheaper than nothing: as much as there is
    const least = feasible({ ...priced('0 USD'), aim: 'least cost' });
    expect(least.products[0]?.units.promised).toBe(plan.products[0]?.units.promised);
    expect(Math.abs(least.objective)).toBe(0);
  });
  const below = (path: string, parts: object) => [path, parts] as const;
  const { kitchen, products } = input;
  const [product] = products;
  test.each([
    below('lots[0].price', { lots: [{ food: 'peach', raw: '30 lb', price: '-1 USD' }] }),
    below('kitchen.jars[0].price', { kitchen: { ...kitchen, jars: [{ jar: 'quart', count: 9, price: '-1 USD' }] } }),
    below('kitchen.lids.price', { kitchen: { ...kitchen, lids: { count: 9, price: '-0.01 USD' } } }),
    below('kitchen.bags.price', { kitchen: { ...kitchen, bags: { price: '-1 USD' } } }),
    below('kitchen.bags.count', { kitchen: { ...kitchen, bags: { count: -1 } } }),
    below('kitchen.bags.count', { kitchen: { ...kitchen, bags: { count: 2.5 } } }),
    below('kitchen.pantry[0].price', {
      kitchen: { ...kitchen, pantry: [{ item: 'pectin', amount: '1 oz', price: '-1 USD' }] },
    }),
    below('kitchen.utilities.electricity', { kitchen: { ...kitchen, utilities: { electricity: '-0.3 USD' } } }),
    below('kitchen.utilities.gas', { kitchen: { ...kitchen, utilities: { gas: { value: -1, unit: 'USD' } } } }),
    below('kitchen.utilities.dryerPower', { kitchen: { ...kitchen, utilities: { dryerPower: '0 W' } } }),
    below('kitchen.utilities.freezeDryerPower', { kitchen: { ...kitchen, utilities: { freezeDryerPower: '101 kW' } } }),
    below('kitchen.wage', { kitchen: { ...kitchen, wage: '-12 USD' } }),
    below('products[0].serving', { products: [{ ...product, serving: '0 oz' }] }),
  ])('%s', (path, parts) => {
    expect(codeText(() => planDay({ ...input, ...parts } as never))).toBe(`OUT_OF_RANGE ${path}`);
  });
  test.each([
    ['UNKNOWN_NAME kitchen.utilities.stove', { kitchen: { ...kitchen, utilities: { stove: 'wood' } } }],
    ['UNKNOWN_NAME kitchen.pantry[0].item', { kitchen: { ...kitchen, pantry: [{ item: 'honey', amount: '1 lb' }] } }],
    ['UNKNOWN_FIELD kitchen.utilities.oil', { kitchen: { ...kitchen, utilities: { oil: '1 USD' } } }],
    ['CONTRADICTION kitchen.wage', { kitchen: { ...kitchen, wage: '9 EUR' } }],
    ['CONTRADICTION kitchen.bags.price', { kitchen: { ...kitchen, bags: { price: '9 EUR' } } }],
    ['CONTRADICTION kitchen.utilities.gas', { kitchen: { ...kitchen, utilities: { gas: '9 EUR' } } }],
    ['UNKNOWN_NAME products[0].pectin', { products: [{ ...product, make: 'jam', pectin: 'yes' }] }],
    ['WRONG_TYPE products[0].pectin', { products: [{ ...product, make: 'jam', pectin: 1 }] }],
    ['CONTRADICTION products[0].pectin', { products: [{ ...product, pectin: true }] }],
    ['UNKNOWN_FIELD products[0].pectinGrade', { products: [{ ...product, make: 'jam', pectinGrade: 150 }] }],
    ['CONTRADICTION products[0].serving', { products: [{ make: 'frozen', from: 'peach', serving: '1 cup' }] }],
    ['CONTRADICTION products[0].serving', { products: [{ make: 'vinegar', from: 'peach', serving: '1 oz' }] }],
    ['WRONG_DIMENSION products[0].serving', { products: [{ ...product, serving: '1 h' }] }],
    [
      'CONTRADICTION aim',
      { lots: [{ food: 'peach', raw: '30 lb' }], kitchen: { elevation: '1 m', hours: '9 h' }, aim: 'least cost' },
    ],
  ])('%s', (error, parts) => {
    expect(codeText(() => planDay({ ...input, ...parts } as never))).toBe(error);
  });
});
