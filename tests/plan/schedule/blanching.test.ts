import { describe, expect, test } from 'vitest';
import { freezeEnergy } from '../../../src/freezing/freezeEnergy';
import { stoveEnergy } from '../../../src/heat/stoveEnergy';
import { checkSchedule, type PlanDayInput } from '../../../src/plan/index';
import type { ScheduledTask } from '../../../src/plan/request/daySchedule';
import { composition } from '../../../src/produce/composition/composition';
import type { MassInput, Quantity } from '../../../src/quantity/types';
import { runSheet } from '../../../src/sheet/index';
import { boilingTemperature } from '../../../src/steam/boilingTemperature';
import { known } from '../../helpers/known';
import { feasible } from '../../helpers/plans';

/** Invented: two vegetables to blanch and peaches to can, one pot and one burner. */
const day: PlanDayInput = {
  lots: [
    { food: 'green bean', raw: '12 lb' },
    { food: 'broccoli', raw: '8 lb' },
    { food: 'peach', raw: '20 lb' },
  ],
  kitchen: {
    elevation: '1,000 ft',
    hours: '12 h',
    hands: 2,
    burners: 1,
    burnerPower: '2400 W',
    pots: [{ volume: '12 quarts' }],
    canners: [{ method: 'boiling-water', holds: { pint: 9, quart: 7 } }],
    freezer: { room: '60 L' },
    utilities: { stove: 'electric', electricity: '0.20 USD' },
  },
  products: [
    { make: 'frozen', from: 'green beans', form: 'pieces', least: 8 },
    { make: 'frozen', from: 'broccoli', form: 'florets', least: 3 },
    { make: 'jars', from: 'peaches', form: 'halves', pack: 'raw', jar: 'quart', syrup: 'light', least: 4 },
  ],
};
const plan = feasible(day);
const { tasks } = plan.schedule;
const blanched = tasks.filter(({ kind }) => kind === 'blanch');
const at = (resource: string) => tasks.filter(({ uses }) => uses.some((use) => use.resource === resource));

describe('blanching in the order of work', () => {
  test('each vegetable has it, in the pot and on the burner, with hands beside it', () => {
    const [beans, broccoli] = plan.products.map(({ name }) => name);
    for (const name of [beans, broccoli])
      expect(blanched.some(({ forProducts: products }) => products[0] === name)).toBe(true);
    for (const { uses } of blanched)
      expect(uses.map(({ resource }) => resource).sort()).toEqual(['12 quart pot', 'burners', 'hands']);
  });
  test.each(['burners', '12 quart pot'])('one at a time: %s, the canner on it as well', (resource) => {
    const own = at(resource);
    expect(own.length).toBeGreaterThan(2);
    own.forEach((one, index) => {
      for (const other of own.slice(index + 1))
        expect(Math.min(one.endMinute, other.endMinute)).toBeLessThanOrEqual(
          Math.max(one.startMinute, other.startMinute),
        );
    });
  });
  test('the canner is among what the burner does', () => {
    expect(at('burners').map(({ kind }) => kind)).toEqual(expect.arrayContaining(['blanch', 'heat water', 'can']));
  });
  test('the water boils first, in the same pot, until the vegetable goes in', () => {
    for (const blanch of blanched) {
      const heat = tasks.find(({ kind, endMinute: end }) => kind === 'heat water' && end === blanch.startMinute);
      expect(heat?.uses.map(({ resource }) => resource).sort()).toEqual(['12 quart pot', 'burners']);
      // two thirds of 12 quarts, most of it water, take the slow end of a burner of 2400 W over half an hour
      expect((heat?.endMinute ?? 0) - (heat?.startMinute ?? 0)).toBeGreaterThan(25);
    }
  });
  test('minutes as printed and the return to the boil, for each batch', () => {
    for (const { forProducts: products, units, startMinute: start, endMinute: end } of blanched) {
      const pots = plan.products.find(({ name }) => name === products[0])?.cooking;
      expect(pots?.minutesEach).toBe(4);
      expect(end - start).toBe(4 * (units?.count ?? 0));
    }
    const [beans] = plan.products;
    const batches = blanched
      .filter(({ forProducts: products }) => products[0] === beans?.name)
      .reduce((sum, { units }) => sum + (units?.count ?? 0), 0);
    expect(batches).toBeGreaterThan(2);
    expect(beans?.cooking?.batches).toEqual([expect.objectContaining({ pot: '12 quart pot', count: batches })]);
    // the hands beside the pot stand there once, not in the cutting too
    expect(beans?.handsMinutes.stir).toBe(4 * batches);
    // by the kg: wash 1.25, snap 9, drain 0.4
    expect(beans?.handsMinutes.prepare).toBeCloseTo(10.65 * 0.45359237 * (beans?.raw.value ?? 0), 6);
  });
});

describe('the energy of blanching', () => {
  test('the water once for each heating, the vegetable, the boil, and the freezer', () => {
    const one = feasible({ ...day, products: day.products?.slice(0, 1) ?? [] });
    const [beans] = one.products;
    const { temperature } = boilingTemperature({ elevation: '1,000 ft' });
    // a gallon for each pound in two thirds of 12 quarts, beside the vegetable, a liter of it a kilogram
    const perKg = 3.785411784 / 0.45359237;
    const room = (2 / 3) * 12 * 0.946352946;
    const kWh = ({ energy }: { readonly energy: { readonly likely: { readonly value: number } } }) =>
      energy.likely.value;
    const water: MassInput = { value: (room * perKg) / (perKg + 1), unit: 'kg' };
    const heated = kWh(
      stoveEnergy({ heatUp: { mass: water, startTemperature: '20 degC', targetTemperature: temperature } }),
    );
    const ready = beans?.ready.likely as Quantity<'mass'>;
    const vegetable = kWh(
      stoveEnergy({
        heatUp: { mass: ready, startTemperature: '20 degC', targetTemperature: temperature, substance: 'food' },
      }),
    );
    const boil = kWh(stoveEnergy({ hold: { time: '4 min', burnerPower: '2400 W' } }));
    const share = known(composition({ food: 'green bean' })).moisture.likely;
    const frozen = kWh(
      freezeEnergy({ mass: ready, moisture: share, startTemperature: '20 degC', targetTemperature: '-18 degC' }),
    );
    const of = (kind: string) => one.schedule.tasks.filter((task) => task.kind === kind);
    const batches = of('blanch').reduce((sum, { units }) => sum + (units?.count ?? 0), 0);
    expect(of('heat water').length).toBe(of('blanch').length);
    expect(beans?.energy?.likely.value).toBeCloseTo(
      of('heat water').length * heated + vegetable + batches * boil + frozen,
      6,
    );
  });
  test('is paid for', () => {
    const dear = (price: `${number} USD`) =>
      feasible({ ...day, kitchen: { ...day.kitchen, utilities: { stove: 'electric', electricity: price } } }).costs
        ?.energyCost.value ?? 0;
    expect(dear('0.40 USD')).toBeGreaterThan(1.9 * dear('0.20 USD'));
  });
});

describe('checkSchedule', () => {
  const changed = (kind: ScheduledTask['kind'], change: (task: ScheduledTask) => Partial<ScheduledTask>) => {
    const index = tasks.findIndex((task) => task.kind === kind);
    expect(index).toBeGreaterThanOrEqual(0);
    const all = tasks.map((task, place) => (place === index ? { ...task, ...change(task) } : task));
    return checkSchedule({ ...plan, schedule: { ...plan.schedule, tasks: all } }).broken;
  };
  test('finds nothing wrong with the plan', () => expect(checkSchedule(plan).broken).toEqual([]));
  test('two in one pot', () => {
    const [first, second] = blanched;
    const broken = changed('blanch', ({ endMinute: end, startMinute: start }) => ({
      startMinute: second?.startMinute ?? 0,
      endMinute: (second?.startMinute ?? 0) + end - start,
    }));
    expect(first).not.toBe(second);
    expect(broken.map(({ rule }) => rule)).toContain('overlap');
  });
  test('not long enough', () => {
    expect(changed('blanch', ({ endMinute: end }) => ({ endMinute: end - 1 })).map(({ text }) => text)).toEqual(
      expect.arrayContaining([expect.stringContaining('blanched')]),
    );
  });
  test('fewer batches than the plan has', () => {
    const broken = changed('blanch', ({ units }) => ({ units: { count: (units?.count ?? 1) - 1, unit: 'batch' } }));
    expect(broken.map(({ rule }) => rule)).toContain('work');
  });
  test('before the water boils', () => {
    expect(
      changed('heat water', ({ startMinute: start, endMinute: end }) => ({
        startMinute: start + 5,
        endMinute: end + 5,
      })).map(({ rule }) => rule),
    ).toContain('order');
    expect(changed('heat water', () => ({ kind: 'cook' })).map(({ rule }) => rule)).toContain('order');
  });
});

test('the sheet says blanch, not cook', () => {
  const sheet = runSheet(plan);
  expect(sheet).toMatch(/Blanch green beans?[^|]*, \d+ batches/);
  expect(sheet).toMatch(/pot: heat water, \d+ min/);
  expect(sheet).not.toMatch(/Cook (green bean|broccoli)/);
});

test('what is cooked before freezing is cooked in a pot', () => {
  const beets = feasible({
    ...day,
    lots: [{ food: 'beet', raw: '10 lb' }],
    products: [{ make: 'frozen', from: 'beets', form: 'slices', least: 2 }],
  });
  const cook = beets.schedule.tasks.filter(({ kind }) => kind === 'cook');
  expect(cook.length).toBeGreaterThan(0);
  // beets of 2 in: 25 to 30 min, and what the pot takes to heat up
  for (const { startMinute: start, endMinute: end } of cook) expect(end - start).toBeGreaterThanOrEqual(30);
  expect(checkSchedule(beets).broken).toEqual([]);
});
