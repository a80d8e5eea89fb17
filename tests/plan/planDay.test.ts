import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import { type FeasibleDay, type PlanDayInput, planDay } from '../../src/plan/index';
import { prepare } from '../../src/plan/program/prepare';
import { testedProcess } from '../../src/process/index';
import type { Quantity } from '../../src/quantity/index';
import { valueIn } from '../../src/quantity/scale';
import { runSheet } from '../../src/sheet/index';
import { exampleDay, feasible } from '../helpers/plans';
import { randomDay } from './randomDay';

const kg = (mass: Quantity<'mass'>) => valueIn(mass, 'kg');
const NEAR = 1e-4;

/** What must hold of every plan, checked from the answer alone; empty where all does. */
function broken(input: PlanDayInput, plan: FeasibleDay): string[] {
  const wrong: string[] = [];
  const must = (holds: boolean, what: string) => {
    if (!holds) wrong.push(what);
  };
  const { kitchen } = input;
  const minutes = valueIn(kitchen.hours as Quantity<'time'>, 'min');
  const fruit = plan.products.filter(({ trimmings }) => trimmings !== undefined);
  const ofTrimmings = plan.products.filter(({ trimmings }) => trimmings === undefined);
  // mass: what is used and what is left fresh are the lots
  const produceOf = new Set(plan.products.map(({ food }) => food));
  for (const food of produceOf) {
    const used = fruit.filter((each) => each.food === food).reduce((sum, each) => sum + kg(each.raw), 0);
    const left = plan.leftFresh.filter((each) => each.food === food).reduce((sum, each) => sum + kg(each.raw), 0);
    const raw = input.lots
      .filter((lot) => lot.food === food)
      .reduce((sum, lot) => sum + kg(lot.raw as Quantity<'mass'>), 0);
    must(Math.abs(used + left - raw) < 2e-3 * input.lots.length, `raw of ${food}: ${used} + ${left} is not ${raw}`);
    const taken = ofTrimmings.filter((each) => each.food === food).reduce((sum, each) => sum + kg(each.raw), 0);
    const dropped = fruit
      .filter((each) => each.food === food)
      .reduce((sum, each) => sum + kg(each.trimmings?.low as Quantity<'mass'>), 0);
    must(taken <= dropped + NEAR, `trimmings of ${food}`);
  }
  for (const product of plan.products) {
    const { name, raw, ready, trimmings, units, fromLots: from } = product;
    must(Math.abs(from.reduce((sum, share) => sum + kg(share.raw), 0) - kg(raw)) < NEAR, `${name}: shares`);
    must(kg(ready.low) <= kg(ready.likely) + NEAR && kg(ready.likely) <= kg(ready.high) + NEAR, `${name}: ready range`);
    if (trimmings !== undefined) {
      must(kg(ready.high) + kg(trimmings.low) <= kg(raw) + NEAR, `${name}: rich end makes mass`);
      must(kg(ready.low) + kg(trimmings.high) <= kg(raw) + NEAR, `${name}: poor end makes mass`);
    }
    must(units.promised <= units.likely && units.likely <= units.ready, `${name}: ${JSON.stringify(units)}`);
    must([units.promised, units.likely, units.ready].every(Number.isInteger), `${name}: whole units`);
  }
  // stock
  const jars = (size: string) =>
    plan.products.filter((each) => each.canning?.jar === size).reduce((sum, each) => sum + each.units.ready, 0);
  const stock = (size: string) =>
    (kitchen.jars ?? [])
      .filter(({ jar }) => String(jar).replace(/s$/, '') === size)
      .reduce((sum, { count }) => sum + count, 0);
  for (const size of ['pint', 'quart', 'half-pint']) must(jars(size) <= stock(size), `${size} jars`);
  must(jars('pint') + jars('quart') + jars('half-pint') <= (kitchen.lids?.count ?? 1e9), 'lids');
  const traysOf = (where: string) =>
    plan.products
      .filter((each) => each.drying?.where === where)
      .reduce((sum, each) => sum + (each.drying?.trays ?? 0), 0);
  // a tray may be loaded again when it is dry: never more at once than there are
  const drying = plan.schedule.tasks.filter(({ kind }) => kind === 'dry');
  const atOnce = drying.map(({ startMinute: start }) =>
    drying
      .filter((other) => other.startMinute <= start && start < other.endMinute)
      .reduce((sum, { units }) => sum + (units?.count ?? 0), 0),
  );
  must(Math.max(0, ...atOnce) <= (kitchen.dryer?.trays ?? 0), 'dryer trays at once');
  must(drying.reduce((sum, { units }) => sum + (units?.count ?? 0), 0) === traysOf('dryer'), 'dryer trays');
  must(traysOf('freeze-dryer') <= (kitchen.freezeDryer?.trays ?? 0), 'freeze-dryer trays');
  for (const { name, drying: trays, ready } of plan.products) {
    if (trays === undefined) continue;
    must(trays.trays * kg(trays.perTray) >= kg(ready.high) - NEAR, `${name}: what does not fit its trays`);
  }
  const room = plan.products.reduce(
    (sum, each) => sum + (each.packs ? valueIn(each.packs.room, 'L') * each.units.ready : 0),
    0,
  );
  must(room <= (kitchen.freezer ? valueIn(kitchen.freezer.room as Quantity<'volume'>, 'L') : 0) + NEAR, 'freezer room');
  // minutes
  const byProduct = plan.products.reduce((sum, each) => sum + each.handsMinutes.prepare + each.handsMinutes.fill, 0);
  must(byProduct <= plan.work.handsBusy.minutes + NEAR, `hands of the products ${byProduct}`);
  must(byProduct > 0 || plan.products.length === 0, 'products without work');
  must(plan.work.handsBusy.minutes <= plan.work.handsBusy.available + NEAR, 'hands');
  must(plan.work.burnersBusy.minutes <= plan.work.burnersBusy.available + NEAR, 'burners');
  const pots = new Map<string, number>();
  for (const { name, cooking: work, raw, ready } of plan.products) {
    if (work === undefined) continue;
    let litres = 0;
    for (const { pot, count: batches, mostAtOnce: most } of work.batches) {
      pots.set(pot, (pots.get(pot) ?? 0) + batches * work.minutesEach);
      litres += batches * valueIn(most, 'L');
    }
    must(litres >= Math.min(kg(raw), kg(ready.high)) - NEAR, `${name}: does not fit its pots`);
    must(litres >= valueIn(work.volume, 'L') - NEAR, `${name}: more than its batches hold`);
  }
  for (const [pot, busy] of pots) must(busy <= minutes + NEAR, `${pot} ${busy} min`);
  const canners = new Map<string, number>();
  const seen = new Set<string>();
  for (const { name, canning: work, units } of plan.products) {
    if (work === undefined) continue;
    const places = work.loads.reduce((sum, { count: loads, jarsPerLoad }) => sum + loads * jarsPerLoad, 0);
    must(places >= units.ready, `${name}: jars without a place in a load`);
    for (const { canner, count: loads } of work.loads) {
      const key = [canner, work.method, work.jar, work.minutes, work.pressure?.value].join();
      if (!seen.has(key)) canners.set(canner, (canners.get(canner) ?? 0) + loads * work.loadMinutes.high);
      seen.add(key);
    }
  }
  for (const [canner, busy] of canners) must(busy <= minutes, `${canner} ${busy} min`);
  // money
  if (plan.costs !== undefined) {
    const cents = (value: number) => Math.round(value * 100);
    const paid = input.lots.reduce(
      (sum, { price }) => sum + cents((price as { value: number } | undefined)?.value ?? 0),
      0,
    );
    must(cents(plan.costs.foodUsed.value) + cents(plan.costs.foodLeft.value) === paid, 'lot prices');
    const { foodUsed, supplies, energyCost: energy, handsCost: hands, total } = plan.costs;
    const kinds = { food: foodUsed, supplies, energy, hands };
    for (const [kind, money] of Object.entries(kinds)) {
      const lines = plan.products.flatMap(({ costs: cost }) => cost?.lines ?? []).filter((line) => line.kind === kind);
      must(
        lines.reduce((sum, { cost: amount }) => sum + cents(amount.value), 0) === cents(money.value),
        `lines of ${kind}`,
      );
    }
    must(
      cents(total.value) === paid + cents(supplies.value) + cents(energy.value) + cents(hands.value),
      'total of the day',
    );
    for (const { name, costs: cost, units } of plan.products) {
      if (cost === undefined) continue;
      const { lines, perUnit, perNet, perServing } = cost;
      must(
        lines.reduce((sum, { cost: amount }) => sum + cents(amount.value), 0) === cents(cost.total.value),
        `${name}: lines`,
      );
      must(
        lines.every(({ cost: amount }) => amount.value > 0),
        `${name}: a line of nothing`,
      );
      for (const rate of [perUnit, perNet?.cost, perServing?.cost].flatMap((each) => (each ? [each] : []))) {
        const { low, likely, high } = rate;
        must(
          [low, likely, high].every(({ value }) => Number.isInteger(Number((value * 100).toFixed(6)))),
          `${name}: cents`,
        );
        must(low.value <= likely.value && likely.value <= high.value, `${name}: rates`);
      }
      const counts = [
        [perUnit.high, units.promised],
        [perUnit.likely, units.likely],
        [perUnit.low, units.ready],
      ] as const;
      for (const [{ value }, count] of counts)
        must(value * Math.max(count, 1) >= cost.total.value - 1e-9, `${name}: per unit`);
    }
  }
  return wrong;
}

/** Minutes and pressure as the tables give them, asked again by what the plan says of the product. */
function untrueMinutes(input: PlanDayInput, plan: FeasibleDay): string[] {
  return plan.products.flatMap(({ name, recipe, food, canning: jars }) => {
    if (jars === undefined) return [];
    const process = testedProcess({
      food,
      recipe,
      pack: jars.pack as 'hot',
      jar: jars.jar,
      method: jars.method as 'boiling-water',
      elevation: input.kitchen.elevation,
    });
    const same = process.tested && process.minutes === jars.minutes && process.pressure?.value === jars.pressure?.value;
    return same ? [] : [`${name}: ${jars.minutes} min`];
  });
}

describe('on seeded random days', () => {
  const seeds = Array.from({ length: 60 }, (_, index) => index + 1);
  const conflicts: number[] = [];
  test.each(seeds)('day %i: nothing is exceeded, mass and money add up, minutes are the tables', (seed) => {
    const input = randomDay(seed);
    const before = JSON.stringify(input);
    const plan = planDay(input);
    expect(JSON.stringify(input)).toBe(before);
    const musts = input.products.filter(({ least = 0 }) => least > 0);
    if (!plan.feasible) {
      conflicts.push(seed);
      expect(plan.conflicts.length).toBeGreaterThan(0);
      expect(plan.conflicts.length).toBeLessThanOrEqual(musts.length);
      return;
    }
    expect(broken(input, plan)).toEqual([]);
    expect(untrueMinutes(input, plan)).toEqual([]);
    expect(plan.leftOut.filter((out) => plan.products.some(({ name }) => name === out.name))).toEqual([]);
    const made = plan.products.reduce((sum, { units }) => sum + units.promised, 0);
    expect(made).toBeGreaterThanOrEqual(musts.reduce((sum, { least = 0 }) => sum + least, 0));
    expect(runSheet(plan)).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });
  test('some of them have musts that cannot be met', () => expect(conflicts.length).toBeGreaterThan(0));
});

describe('the examples', () => {
  test.each(['day.json', 'day-metric.json'])('%s: within everything, and as near the best as it says', (name) => {
    const input = exampleDay(name);
    const plan = feasible(input);
    // the search or the order of work may be cut short: then the plan says how far it may be from the best
    expect(plan.provenBest).toBe(plan.gap === 0);
    expect(plan.gap).toBeLessThan(0.35);
    expect(untrueMinutes(input, plan)).toEqual([]);
    expect(plan.work.handsBusy.minutes).toBeLessThanOrEqual(plan.work.handsBusy.available);
    expect(prepare(input).program.variables.length).toBeGreaterThan(10);
  });
  test('the untested product is left out with the reason and never gets minutes', () => {
    const plan = feasible(exampleDay('day.json'));
    expect(plan.leftOut).toMatchObject([
      {
        name: 'peach sauce in pints',
        reason: { code: 'no-recipe-for-form', text: expect.stringContaining('no tested process for peach as sauce') },
      },
    ]);
    expect(plan.products.some(({ name }) => name.startsWith('peach sauce'))).toBe(false);
  });
  test('low-acid beans are refused in boiling water and acid is on every tomato jar', () => {
    const plan = feasible(exampleDay('day-metric.json'));
    expect(plan.leftOut).toMatchObject([{ reason: { text: expect.stringContaining('low in acid') } }]);
    const tomatoes = plan.products.filter(({ food, canning: jars }) => food === 'tomato' && jars !== undefined);
    expect(tomatoes.length).toBeGreaterThan(0);
    for (const { canning: jars } of tomatoes) expect(jars?.acidToAdd).toMatch(/tbsp of bottled lemon juice, or/);
  });
});

describe('aims', () => {
  const request = exampleDay('day.json');
  test('least waste uses at least as much food as most worth', () => {
    const left = (plan: FeasibleDay) => plan.leftFresh.reduce((sum, { raw }) => sum + kg(raw), 0);
    const [waste, worth] = [feasible({ ...request, aim: 'least waste' }), feasible(request)];
    expect(left(waste)).toBeLessThanOrEqual(left(worth) + NEAR);
    expect(waste.products.every(({ units }) => units.promised >= 1)).toBe(true);
  });
  test('fewest hours meets the musts and makes nothing else', () => {
    const plan = feasible({ ...request, aim: 'fewest hours' });
    expect(plan.products.map(({ name, units }) => [name, units.promised])).toEqual([['peach halves in quarts', 7]]);
    expect(plan.notMade.every(({ reason }) => reason.code === 'not-required')).toBe(true);
    expect(plan.work.handsBusy.minutes).toBeLessThan(feasible(request).work.handsBusy.minutes);
  });
});

describe('least cost and weights', () => {
  const request = exampleDay('day.json');
  const money = ({ costs: cost }: FeasibleDay) =>
    [cost?.foodUsed, cost?.supplies, cost?.energyCost].reduce((sum, kind) => sum + (kind?.value ?? 0), 0);
  const units = ({ products }: FeasibleDay) => products.reduce((sum, each) => sum + each.units.promised, 0);
  test('least cost: no other aim makes a unit as cheaply', () => {
    const least = feasible({ ...request, aim: 'least cost' });
    expect(least).toMatchObject({ aim: 'least cost', provenBest: true });
    expect(least.objective).toBeCloseTo(-money(least) / units(least), 2);
    for (const aim of ['most worth', 'least waste', 'fewest hours'] as const) {
      const other = feasible({ ...request, aim });
      expect(money(other) / units(other)).toBeGreaterThan(-least.objective);
    }
  });
  const frozen: PlanDayInput & { products: NonNullable<PlanDayInput['products']> } = {
    lots: [{ food: 'peach', raw: '30 lb', price: '15 USD' }],
    kitchen: { elevation: '100 m', hours: '10 h', freezer: { room: '200 L' } },
    products: [{ make: 'frozen', from: 'peach', packSize: '1 lb' }],
  };
  test('of plans that cost as little the one with the most units', () => {
    const plan = feasible({ ...frozen, aim: 'least cost' });
    expect(units(plan)).toBeGreaterThan(15);
    expect(units(plan)).toBe(units(feasible({ ...frozen, aim: 'most worth' })));
  });
  test('nothing can be promised: the plan with nothing made', () => {
    const plan = feasible({
      ...frozen,
      lots: [{ food: 'peach', raw: '0.5 lb', price: '1 USD' }],
      aim: 'least cost',
    });
    expect(plan).toMatchObject({ products: [], objective: 0, provenBest: false });
    expect(plan.limits).toBeUndefined();
    expect(plan.nothingMade?.text).toBeTruthy();
  });
  test('one weight is the aim of its word', () => {
    const { aim: _, ...byWord } = feasible({ ...request, aim: 'least waste' });
    const { aim, ...byWeight } = feasible({ ...request, aim: { waste: 1 } });
    expect(aim).toEqual({ waste: 1 });
    expect(byWeight).toEqual(byWord);
  });
  test('a mix is its parts as the answer tells them: worth, kg, money and hours', () => {
    const products = frozen.products.map((each) => ({ ...each, worth: 4 }));
    const plan = feasible({ ...frozen, products, aim: { worth: 1, waste: 0.5, money: 2, handsHours: 3 } });
    const used = plan.products.reduce((sum, { raw }) => sum + kg(raw), 0);
    const minutes = plan.work.handsBusy.minutes;
    expect(units(plan)).toBeGreaterThan(15);
    expect(plan.objective).toBeCloseTo(4 * units(plan) + 0.5 * used - 2 * money(plan) - (3 * minutes) / 60, 1);
  });
  test('heavier hours, fewer hours', () => {
    const minutes = [0, 4, 40].map(
      (hours) => feasible({ ...request, aim: { worth: 1, handsHours: hours } }).work.handsBusy.minutes,
    );
    expect(minutes).toEqual([...minutes].sort((one, other) => other - one));
    expect(minutes[0]).toBeGreaterThan(minutes[2] as number);
  });
  test.each(Array.from({ length: 12 }, (_, index) => index + 1))('day %i: nothing is exceeded', (seed) => {
    const input = randomDay(seed);
    for (const aim of ['least cost', { worth: 1, waste: 0.2, money: 1, handsHours: 2 }] as const) {
      const plan = planDay({ ...input, aim });
      if (!plan.feasible) continue;
      expect(broken(input, plan)).toEqual([]);
      expect(runSheet(plan)).not.toMatch(/NaN|Infinity|undefined|\[object/);
    }
  });
  test.each(Array.from({ length: 12 }, (_, index) => index + 1))(
    'day %i: no batch smaller than its smallest',
    (seed) => {
      const input = randomDay(seed);
      const products = input.products.map((each, index) => ({ ...each, most: 30, smallest: 3 + index }));
      const plan = planDay({ ...input, products, aim: seed % 2 === 0 ? 'most worth' : 'least waste' });
      if (!plan.feasible) return;
      const least = Math.min(...products.map(({ smallest }) => smallest));
      expect(plan.products.every(({ units: { promised } }) => promised >= least)).toBe(true);
      expect(broken(input, plan)).toEqual([]);
    },
  );
});

describe('bad input: the one error names the field', () => {
  const lot = { food: 'peach', raw: '30 lb' };
  const kitchen = {
    elevation: '3,400 ft',
    hours: '6 h',
    pots: [{ volume: '12 quarts' }],
    canners: [{ method: 'boiling-water', holds: { quart: 7 } }],
    dryer: { trays: 4, trayArea: '200 in2' },
    freezeDryer: { trays: 4, trayArea: '100 in2', ice: '5 lb' },
  };
  const halves = { make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart' };
  const request = (parts: object = {}) => ({ lots: [lot], kitchen, products: [halves], ...parts });
  const raws = [
    '-3 lb',
    '0 lb',
    Number.NaN,
    Number.POSITIVE_INFINITY,
    '',
    '1/0 lb',
    '30 ft',
    '30 wagons',
    null,
    undefined,
    { value: Number.NaN, unit: 'lb' },
  ];
  test.each(raws.map((raw) => [raw]))('raw weight %s', (raw) => {
    expect(() => planDay(request({ lots: [lot, { ...lot, raw }] }) as never)).toThrow(
      expect.objectContaining({ path: 'lots[1].raw' }),
    );
  });
  test.each([
    ['OUT_OF_RANGE', 'lots', { lots: [] }],
    ['TOO_MUCH', 'lots', { lots: Array(61).fill(lot) }],
    ['TOO_MUCH', 'lots', { lots: Array(500).fill(lot) }],
    ['TOO_MUCH', 'lots', { lots: Array(60).fill(lot), products: Array(60).fill(halves) }],
    ['UNKNOWN_NAME', 'lots[0].food', { lots: [{ ...lot, food: 'glass' }] }],
    ['CONTRADICTION', 'lots[0].ready', { lots: [{ ...lot, ready: '31 lb' }] }],
    ['OUT_OF_RANGE', 'kitchen.elevation', { kitchen: { ...kitchen, elevation: '-500 m' } }],
    ['OUT_OF_RANGE', 'kitchen.elevation', { kitchen: { ...kitchen, elevation: '9000 m' } }],
    ['OUT_OF_RANGE', 'kitchen.hours', { kitchen: { ...kitchen, hours: '0 h' } }],
    ['OUT_OF_RANGE', 'kitchen.jars[0].count', { kitchen: { ...kitchen, jars: [{ jar: 'pint', count: 10_000 }] } }],
    ['UNKNOWN_NAME', 'kitchen.jars[0].jar', { kitchen: { ...kitchen, jars: [{ jar: 'bucket', count: 3 }] } }],
    [
      'UNKNOWN_NAME',
      'kitchen.canners[0].holds',
      { kitchen: { ...kitchen, canners: [{ method: 'boiling-water', holds: { bucket: 3 } }] } },
    ],
    [
      'OUT_OF_RANGE',
      'kitchen.canners[0].holds.quart',
      { kitchen: { ...kitchen, canners: [{ method: 'boiling-water', holds: { quart: 1.5 } }] } },
    ],
    [
      'OUT_OF_RANGE',
      'kitchen.canners[0].holds',
      { kitchen: { ...kitchen, canners: [{ method: 'boiling-water', holds: {} }] } },
    ],
    [
      'WRONG_TYPE',
      'kitchen.canners[0].holds',
      { kitchen: { ...kitchen, canners: [{ method: 'boiling-water', holds: 7 }] } },
    ],
    ['MISSING', 'kitchen.canners[0].holds', { kitchen: { ...kitchen, canners: [{ method: 'boiling-water' }] } }],
    ['UNKNOWN_NAME', 'products[0].jar', { products: [{ ...halves, jar: 'bucket' }] }],
    ['UNKNOWN_NAME', 'products[0].make', { products: [{ ...halves, make: 'cake' }] }],
    ['UNKNOWN_NAME', 'products[0].from', { products: [{ ...halves, from: 'glass' }] }],
    ['MISSING', 'products[0].recipe', { lots: [lot, { ...lot, food: 'plum' }], products: [{ jar: 'pint' }] }],
    ['UNKNOWN_NAME', 'products[0].recipe', { products: [{ recipe: 'stone soup' }] }],
    ['UNKNOWN_FIELD', 'products[0].finishSolids', { products: [{ ...halves, finishSolids: 0.65 }] }],
    ['OUT_OF_RANGE', 'products[0].worth', { products: [{ ...halves, worth: -1 }] }],
    ['CONTRADICTION', 'products[0].least', { products: [{ ...halves, least: 5, most: 4 }] }],
    [
      'CONTRADICTION',
      'products[1].worth',
      {
        products: [
          { ...halves, worth: '3 USD' },
          { ...halves, worth: 3 },
        ],
      },
    ],
    [
      'CONTRADICTION',
      'kitchen.lids.price',
      { lots: [{ ...lot, price: '3 USD' }], kitchen: { ...kitchen, lids: { count: 3, price: '1 EUR' } } },
    ],
    ['CONTRADICTION', 'aim', { aim: 'fewest hours' }],
    ['CONTRADICTION', 'aim', { aim: { handsHours: 1 } }],
    ['CONTRADICTION', 'aim', { aim: 'least cost' }],
    ['CONTRADICTION', 'aim', { aim: {} }],
    ['CONTRADICTION', 'aim', { aim: { worth: 0, money: 0 } }],
    ['CONTRADICTION', 'aim.money', { aim: { worth: 1, money: 1 } }],
    ['CONTRADICTION', 'aim.money', { aim: { money: 1 }, products: [{ ...halves, worth: '3 USD', least: 1 }] }],
    ['UNKNOWN_NAME', 'aim', { aim: 'cheapest' }],
    ['WRONG_TYPE', 'aim', { aim: null }],
    ['WRONG_TYPE', 'aim', { aim: ['most worth'] }],
    ['UNKNOWN_FIELD', 'aim.fun', { aim: { fun: 1 } }],
    ['OUT_OF_RANGE', 'aim.worth', { aim: { worth: -1 } }],
    ['OUT_OF_RANGE', 'aim.handsHours', { aim: { worth: 1, handsHours: 1e7 } }],
    ['WRONG_TYPE', 'aim.waste', { aim: { waste: '1' } }],
    ['OUT_OF_RANGE', 'products[0].smallest', { products: [{ ...halves, smallest: 0 }] }],
    ['OUT_OF_RANGE', 'products[0].smallest', { products: [{ ...halves, smallest: 2.5 }] }],
    ['CONTRADICTION', 'products[0].smallest', { products: [{ ...halves, smallest: 9, most: 8 }] }],
    [
      'OUT_OF_RANGE',
      'products[1].thickness',
      { products: [halves, { make: 'dried', from: 'peach', thickness: '1 m' }] },
    ],
    ['OUT_OF_RANGE', 'kitchen.dryer.trayArea', { kitchen: { ...kitchen, dryer: { trays: 1, trayArea: '0 in2' } } }],
  ] as const)('%s at %s', (code, path, parts) => {
    const input = request(parts);
    const before = JSON.stringify(input);
    let error: unknown;
    try {
      planDay(input as never);
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeInstanceOf(StillroomError);
    expect(error).toMatchObject({ code, path });
    expect(JSON.stringify(input)).toBe(before);
  });
  test('__proto__ is never a field', () => {
    const text = JSON.stringify(request()).replace('"quart":7', '"__proto__":7');
    expect(() => planDay(JSON.parse(text))).toThrow(expect.objectContaining({ code: 'UNKNOWN_FIELD' }));
  });
  const refused = (parts: object): FeasibleDay => feasible(request(parts) as never);
  test.each([
    ['no canner', { kitchen: { ...kitchen, canners: undefined } }],
    ['no quart jars are in stock', { kitchen: { ...kitchen, jars: [{ jar: 'pint', count: 4 }] } }],
    ['no pint jars are in stock', { kitchen: { ...kitchen, jars: [] }, products: [{ ...halves, jar: 'pint' }] }],
    ['no boiling-water canner here holds pint jars', { products: [{ ...halves, jar: 'pint' }] }],
    ['no tested process', { products: [{ ...halves, form: 'rings' }] }],
    ['you have no apple in your lots', { products: [{ ...halves, from: 'apples', form: 'slices' }] }],
    ['no freezer room', { products: [{ make: 'frozen', from: 'peach' }] }],
    ['no dryer', { kitchen: { ...kitchen, dryer: undefined }, products: [{ make: 'dried', from: 'peach' }] }],
    ['no dryer', { kitchen: { ...kitchen, dryer: undefined }, products: [{ make: 'leather', from: 'peach' }] }],
    ['no dryer', { kitchen: { ...kitchen, dryer: undefined }, products: [{ make: 'powder', from: 'peach' }] }],
    [
      'no freeze-dryer',
      { kitchen: { ...kitchen, freezeDryer: undefined }, products: [{ make: 'freeze-dried', from: 'peach' }] },
    ],
    [
      'longer than the dryer may run',
      {
        kitchen: { ...kitchen, dryer: { ...kitchen.dryer, hours: '2 h' } },
        products: [{ make: 'dried', from: 'peach' }],
      },
    ],
    [
      'its process holds for that recipe only',
      {
        kitchen: { ...kitchen, canners: [{ method: 'boiling-water', holds: { pint: 9 } }] },
        products: [{ make: 'jam', from: 'peach', jar: 'pint', sugarToFruit: 0 }],
      },
    ],
    ['no pint jars', { kitchen: { ...kitchen, jars: [] }, products: [{ make: 'jam', from: 'peach', jar: 'pint' }] }],
    ['larger than the largest tested', { products: [{ make: 'jam', from: 'peach', jar: 'quart' }] }],
  ])('left out: %s', (reason, parts) => {
    const plan = refused(parts);
    expect(plan.products).toEqual([]);
    expect(plan.leftOut).toMatchObject([{ reason: { text: expect.stringContaining(reason) } }]);
    expect(plan.leftOut[0]?.instead[0]?.text.length).toBeGreaterThan(3);
  });
  test('the same product twice has two names', () => {
    const plan = refused({ products: [halves, halves, { ...halves, syrup: 'light' }] });
    const names = [...plan.products.map(({ name }) => name), ...plan.notMade.map(({ name }) => name)];
    expect(new Set(names)).toEqual(
      new Set(['peach halves in quarts (1)', 'peach halves in quarts (2)', 'peach halves in quarts, light syrup']),
    );
  });
  test('impossible musts are an answer, not an error', () => {
    expect(planDay(request({ products: [{ ...halves, least: 40 }] }) as never)).toMatchObject({
      feasible: false,
      conflicts: ['at least 40 of peach halves in quarts'],
    });
  });
});
