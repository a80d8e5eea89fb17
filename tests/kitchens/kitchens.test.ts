import { describe, expect, test } from 'vitest';
import type { FeasibleDay } from '../../src/plan/index';
import { valueIn } from '../../src/quantity/scale';
import { amountOf, type Day, feasible, kitchenNamed, mustHold, poundsLeft, productOf } from './kitchen';

const LB = 0.45359237;
/** A kitchen planned, with its lots in kg: what must hold of any plan holds. */
function planned(name: string, lots: Readonly<Record<string, number>>): FeasibleDay {
  const plan = feasible(kitchenNamed(name));
  mustHold(plan, lots);
  return plan;
}
const pounds = (plan: FeasibleDay, name: string) => valueIn(productOf(plan, name).raw, 'lb');
const jarsOf = (plan: FeasibleDay, name: string) => {
  const { promised, ready } = productOf(plan, name).units;
  return [promised, ready];
};

describe('40 kg of apples in metric jars at 520 m', () => {
  const plan = planned('apples-metric', { 'apples from the orchard': 40 });
  test('sauce and slices by the raw weight printed for a quart', () => {
    // printed: 2 to 3 lb raw for a quart; 500 mL is 0.5283 quart, so 0.4793 to 0.7189 kg a jar
    const perJar = [2, 3].map((each) => (each * LB * 500) / 946.353) as [number, number];
    const sauce = valueIn(productOf(plan, 'apple sauce').raw, 'kg');
    expect(jarsOf(plan, 'apple sauce')).toEqual([Math.floor(sauce / perJar[1] + 1e-6), Math.round(sauce / perJar[0])]);
    // 20 jars of slices at the most: 20 x 0.4793 = 9.59 kg; 13 promised need 13 x 0.7189 = 9.35 kg
    expect(jarsOf(plan, 'apple slices in syrup')).toEqual([13, 20]);
    expect(valueIn(productOf(plan, 'apple slices in syrup').raw, 'kg')).toBeCloseTo(13 * perJar[1], 2);
  });
  test('a jar of 500 mL is larger than a pint: it takes the minutes of a quart, in the band from 305 m', () => {
    // applesauce, hot pack, quart, 1,001 to 3,000 ft (520 m = 1,706 ft): 25 min
    expect(productOf(plan, 'apple sauce').canning?.minutes).toBe(25);
  });
  test('sugar of a very light syrup', () => {
    // printed for 7 quarts: 3/4 cup of sugar in 6 1/2 cups of water; 200 g a cup, 0.15 kg in 1.538 L
    const slices = productOf(plan, 'apple slices in syrup');
    const sugar = amountOf(slices, 'sugar', 'kg');
    const water = slices.ingredients.find(({ what }) => what.startsWith('water for very'))?.amount;
    expect(sugar / valueIn(water as { value: number; unit: 'L' }, 'L')).toBeCloseTo(0.15 / 1.538, 3);
  });
  test('trays of rings, and hardly an apple left', () => {
    // 0.2194 kg on a tray of 1,200 cm2; at the most 80 % of 1.645 kg is ready: 1.316 kg, 6 trays of 8
    expect(productOf(plan, 'dried apple rings').drying?.trays).toBe(6);
    expect(poundsLeft(plan)).toBeLessThan(1);
  });
});

describe('200 lb of tomatoes at 5,280 ft, two people, two days', () => {
  const plan = planned('tomatoes-two-days', { 'tomatoes from the farm': 200 * LB });
  test('5 % is not sound: 10 lb', () => {
    expect(valueIn(plan.notSound[0]?.raw ?? { value: 0, unit: 'lb' }, 'lb')).toBeCloseTo(10, 6);
  });
  test('crushed: a canner load of 7 quarts takes 22 lb; a bushel of 53 lb gives 20 quarts at the most', () => {
    const raw = pounds(plan, 'crushed tomatoes');
    expect(jarsOf(plan, 'crushed tomatoes')).toEqual([
      Math.floor(raw / (22 / 7) + 1e-6),
      Math.ceil(raw / (53 / 20) - 1e-6),
    ]);
  });
  test('10 lb weighted gauge above 1,000 ft, 20 min; two tablespoons of lemon juice a quart, one a pint', () => {
    const [crushed, sauce] = [productOf(plan, 'crushed tomatoes'), productOf(plan, 'tomato sauce')];
    // printed: weighted gauge, above 1,000 ft, 10 lb 20 min (crushed, hot) and 20 min (sauce, hot)
    expect([crushed.canning?.pressure?.value, crushed.canning?.minutes]).toEqual([10, 20]);
    expect([sauce.canning?.pressure?.value, sauce.canning?.minutes]).toEqual([10, 20]);
    expect(amountOf(crushed, 'bottled lemon juice', 'tbsp')).toBeCloseTo(2 * crushed.units.ready, 6);
    expect(amountOf(sauce, 'bottled lemon juice', 'tbsp')).toBeCloseTo(sauce.units.ready, 6);
    expect(sauce.units.promised).toBeGreaterThanOrEqual(12);
  });
  test('both days are worked, and nobody works at night', () => {
    for (const { startMinute: start, unattended } of plan.schedule.tasks)
      expect(unattended || start < 600 || (start >= 1440 && start < 2040)).toBe(true);
  });
});

describe('60 lb of venison', () => {
  const plan = planned('venison', { 'venison, boned': 60 * LB });
  test('canned for 75 min at 11 lb on a dial gauge, in three loads of nine', () => {
    // printed: strips, cubes or chunks, pints, dial gauge, 0 to 2,000 ft: 11 lb, 75 min
    const { canning: jars, units } = productOf(plan, 'venison cubes in jars');
    expect([jars?.minutes, jars?.pressure?.value]).toEqual([75, 11]);
    expect(units.ready).toBe(27);
  });
  test('jerky gives 4 oz from a pound; packs are promised at 80 % of the raw weight', () => {
    // of what is ready a quarter is left by the pages (FSIS: 1 lb gives about 4 oz); what is sure is no more than that
    const { units, ready, drying: trays } = productOf(plan, 'venison jerky');
    const [low, high] = [trays?.dried.low.value ?? 0, trays?.dried.high.value ?? 0];
    expect(low).toBeLessThan(ready.low.value / 4);
    expect(low).toBeGreaterThan(ready.low.value / 5);
    expect(high).toBeGreaterThan(ready.high.value / 4);
    expect(units.promised).toBe(Math.floor((16 * low) / 4 + 1e-6));
    // 37.5 lb x 0.8 = 30 lb: 15 packs of 2 lb; 37.5 lb is under the 40 lb that 20 ft3 freeze in a day
    const frozen = productOf(plan, 'venison, frozen');
    expect(frozen.units.promised).toBe(Math.floor((pounds(plan, 'venison, frozen') * 0.8) / 2 + 1e-6));
    expect(frozen.canning).toBeUndefined();
    expect(frozen.units.ready * 2).toBeLessThanOrEqual(40);
  });
  test('a pound is left at the most', () => expect(poundsLeft(plan)).toBeLessThan(1.01));
});

describe('beans, corn and carrots at 6,500 ft on a dial gauge', () => {
  const plan = planned('beans-corn-carrots', {});
  test('pints at 14 lb: beans 20 min, carrots 25', () => {
    // printed: dial gauge, 6,001 to 8,000 ft: 14 lb
    for (const [name, minutes] of [
      ['green beans in jars', 20],
      ['carrots in jars', 25],
    ] as const) {
      const { canning: jars } = productOf(plan, name);
      expect([jars?.minutes, jars?.pressure?.value]).toEqual([minutes, 14]);
    }
  });
  test('a pint of beans takes 3/4 to 1 1/3 lb', () => {
    // printed: 14 lb for 7 quarts and 9 lb for 9 pints; a bushel of 30 lb gives 12 to 20 quarts: 0.75 to 1.25 lb a pint
    const raw = pounds(plan, 'green beans in jars');
    const { promised, ready } = productOf(plan, 'green beans in jars').units;
    expect(promised).toBeGreaterThanOrEqual(Math.floor(raw / (4 / 3)));
    expect(ready).toBeLessThanOrEqual(Math.ceil(raw / 0.7));
  });
  test('beans and corn are blanched before they are frozen, and longer at this height', () => {
    for (const name of ['green beans, frozen', 'corn, frozen']) {
      const blanching = plan.schedule.tasks.filter(
        ({ kind, forProducts: products }) => kind === 'blanch' && products.includes(name),
      );
      expect(blanching.length).toBeGreaterThan(0);
    }
  });
  test('no more than a pound of each is left', () => {
    for (const { raw } of plan.leftFresh) expect(valueIn(raw, 'lb')).toBeLessThan(1);
  });
});

describe('cucumbers and cabbage', () => {
  const plan = planned('pickles-and-kraut', { 'pickling cucumbers': 24 * LB });
  test('four batches of the recipe: 8 pints, 4 cups of vinegar and 4 1/2 cups of sugar each', () => {
    const pickles = productOf(plan, 'bread-and-butter pickles');
    expect([pickles.units.promised, pickles.units.ready]).toEqual([32, 32]);
    expect(amountOf(pickles, 'vinegar', 'cup')).toBeCloseTo(16, 6);
    expect(amountOf(pickles, 'sugar', 'cup')).toBeCloseTo(18, 6);
    // printed: 10 min up to 1,000 ft, 15 min from 1,001 ft: the kitchen is at 1,150 ft
    expect(pickles.canning?.minutes).toBe(15);
  });
  test('kraut: 3 tablespoons of salt for 5 lb, in a crock for weeks', () => {
    const kraut = productOf(plan, 'sauerkraut');
    expect(amountOf(kraut, 'salt', 'tbsp')).toBeCloseTo((3 * pounds(plan, 'sauerkraut')) / 5, 1);
    expect(
      plan.schedule.tasks.some(
        ({ kind, endMinute: end, startMinute: start }) => kind === 'ferment' && end - start >= 21 * 1440,
      ),
    ).toBe(true);
  });
});

describe('mixed berries', () => {
  const plan = planned('mixed-berries', {});
  test('a full jam of four half-pints a batch, with as much sugar as fruit', () => {
    // printed: 4 cups crushed, 4 cups sugar, 3 to 4 half-pints; a cup of crushed berries is close to half a pound
    const jam = productOf(plan, 'full-sugar berry jam');
    expect(jam.units.ready).toBeGreaterThan(11);
    expect(amountOf(jam, 'sugar', 'cup')).toBeCloseTo(jam.units.ready, 6);
    expect(amountOf(jam, 'crushed raspberries', 'cup')).toBeCloseTo(jam.units.ready, 6);
    // whole batches, also where the berries weigh least
    expect(jam.units.ready % 4).toBe(0);
    expect(jam.ready.low.value / jam.units.ready).toBeGreaterThan(0.5);
    expect(jam.ready.low.value / jam.units.ready).toBeLessThan(0.6);
    expect(jam.canning?.minutes).toBe(5);
  });
  test('a reduced-sugar jam with 3 cups of sugar to 4 cups of fruit, which no process keeps on the shelf', () => {
    // 6 half-pints a batch: 22 jars take 22/6 x 3 = 11 cups
    const jam = productOf(plan, 'reduced-sugar berry jam');
    expect(amountOf(jam, 'sugar', 'cup')).toBeCloseTo(jam.units.ready / 2, 6);
    expect(jam.canning).toBeUndefined();
    expect(jam.keeps.map(({ place }) => place)).toEqual(['refrigerator']);
  });
  test('of 26 lb less is left than whole batches of jam and packs of a pound can take', () =>
    expect(poundsLeft(plan)).toBeLessThan(1.5));
});

describe('a beginner with one 8-quart pot, six jars and no canner', () => {
  const input = kitchenNamed('beginner');
  test('there is a plan, and nothing in it is canned', () => {
    const plan = feasible(input);
    mustHold(plan, {});
    expect(plan.products.length).toBeGreaterThan(0);
    expect(plan.products.every(({ canning: jars }) => jars === undefined)).toBe(true);
    expect(plan.leftOut.map(({ reason }) => reason.code)).toContain('no-canner');
  });
  test('with a rack in the pot, and another pot to cook in, the jars are canned in it', () => {
    const plan = feasible(kitchenNamed('beginner-with-a-rack'));
    mustHold(plan, {});
    const canned = plan.products.filter(({ canning: jars }) => jars !== undefined);
    expect(canned.map(({ canning: jars }) => jars?.loads[0]?.canner)).toEqual(['deep pot']);
    // six pint jars, five to a load: two loads
    expect(canned[0]?.units.ready).toBe(6);
    expect(canned[0]?.canning?.loads[0]?.count).toBe(2);
  });
  test('the one pot with a rack alone cannot cook and can at once: the plan says so by leaving it out', () => {
    const kitchen = {
      ...input.kitchen,
      pots: [{ volume: '8 quarts', rack: true, holds: { pint: 5 } }],
    } as Day['kitchen'];
    const plan = feasible({ ...input, kitchen });
    mustHold(plan, {});
  });
});

describe('50 lb of plums on three trays in damp weather', () => {
  const plan = planned('plums-damp', { 'Italian plums': 50 * LB });
  test('the trays are loaded evening after evening, three at a time', () => {
    const loads = plan.schedule.tasks.filter(({ kind }) => kind === 'dry');
    expect(new Set(loads.map(({ startMinute: start }) => Math.floor(start / 1440))).size).toBeGreaterThanOrEqual(5);
    for (const { uses } of loads)
      expect(uses.find(({ resource }) => resource === 'dryer trays')?.used).toBeLessThanOrEqual(3);
  });
  test('trays hold what is ready on them, a pint of puree from 3/4 to 1 1/4 lb', () => {
    // 8 evenings and nights of three trays, less what dries longer than a night: 15 trays at the least
    const dried = plan.products.filter(({ drying: trays }) => trays !== undefined);
    expect(dried.reduce((sum, { drying: trays }) => sum + (trays?.trays ?? 0), 0)).toBeGreaterThanOrEqual(15);
    for (const { ready, drying: trays } of dried) {
      const most = (trays?.trays ?? 0) * valueIn(trays?.perTray as { value: number; unit: 'lb' }, 'lb');
      expect(valueIn(ready.high, 'lb')).toBeLessThanOrEqual(most + 0.1);
    }
    const raw = pounds(plan, 'plum puree');
    expect(productOf(plan, 'plum puree').units.promised).toBe(Math.floor(raw / 1.25));
  });
  test('less than a pound is left, where one load a day left 47', () => expect(poundsLeft(plan)).toBeLessThan(1));
});
