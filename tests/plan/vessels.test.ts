import { describe, expect, test } from 'vitest';
import { checkSchedule, type PlanDayInput, planDay } from '../../src/plan/index';

/** One large pot with a rack, named as pot and as canner, and a second pot to cook in. */
const day = (canner: object, pots: object[], pack: 'hot' | 'raw' = 'hot'): PlanDayInput =>
  ({
    lots: [{ food: 'peach', raw: '40 lb' }],
    kitchen: {
      elevation: '100 m',
      hours: '12 h',
      hands: 2,
      burners: 4,
      pots,
      canners: [{ method: 'boiling-water', holds: { quart: 7, pint: 9 }, ...canner }],
    },
    products: [
      { make: 'jars', from: 'peaches', form: 'halves', pack, jar: 'quart' },
      { make: 'leather', from: 'peaches' },
    ],
    ...(pack === 'hot' ? {} : {}),
  }) as never;

function overlap(input: PlanDayInput, vessel: string): { cooks: number; cans: number; both: boolean } {
  const plan = planDay(input);
  if (!plan.feasible) throw new Error(plan.reason.text);
  expect(checkSchedule(plan).broken).toEqual([]);
  const using = plan.schedule.tasks.filter(({ uses }) => uses.some(({ resource }) => resource === vessel));
  const of = (kinds: string[]) => using.filter(({ kind }) => kinds.includes(kind));
  const [cooks, cans] = [of(['cook', 'fill']), of(['can', 'heat canner'])];
  const both = cooks.some((cook) =>
    cans.some((can) => cook.startMinute < can.endMinute && can.startMinute < cook.endMinute),
  );
  return { cooks: cooks.length, cans: cans.filter(({ kind }) => kind === 'can').length, both };
}

describe('a pot that is the canner too', () => {
  const small = { volume: '8 quarts' };
  test('called after its size', () => {
    const found = overlap(day({ name: '16 quart pot' }, [{ volume: '16 quarts' }, small]), '16 quart pot');
    expect(found.cans).toBeGreaterThan(0);
    expect(found.both).toBe(false);
  });
  test('said once, by its rack', () => {
    const input = day({}, [{ volume: '16 quarts', rack: true, holds: { quart: 7, pint: 9 } }, small]);
    const { canners: _, ...kitchen } = input.kitchen;
    const found = overlap({ ...input, kitchen }, '16 quart pot');
    expect(found.cans).toBeGreaterThan(0);
    expect(found.both).toBe(false);
  });
  test('or by a name of both, however it is written', () => {
    const found = overlap(
      day({ name: 'the big-pot' }, [{ name: 'The big pot', volume: '16 quarts' }, small]),
      'The big pot',
    );
    expect(found.cans).toBeGreaterThan(0);
    expect(found.both).toBe(false);
  });
  test('its water is heated for every load, right before it', () => {
    const plan = planDay(day({ name: '16 quart pot' }, [{ volume: '16 quarts' }, small]));
    if (!plan.feasible) throw new Error(plan.reason.text);
    const { tasks } = plan.schedule;
    const cans = tasks.filter(({ kind }) => kind === 'can');
    const heats = tasks.filter(({ kind }) => kind === 'heat canner');
    expect(heats.map(({ endMinute: end }) => end)).toEqual(cans.map(({ startMinute: start }) => start));
  });
  test('with no other pot nothing packed hot fits in 20 minutes: jars are packed raw', () => {
    const one = (pack: 'hot' | 'raw') => {
      const plan = planDay(day({ name: '16 quart pot' }, [{ volume: '16 quarts' }], pack));
      if (!plan.feasible) throw new Error(plan.reason.text);
      expect(checkSchedule(plan).broken).toEqual([]);
      return plan.products.filter(({ canning: jars }) => jars !== undefined).length;
    };
    expect([one('hot'), one('raw')]).toEqual([0, 1]);
  });
  test('a canner of another name is another vessel', () => {
    const two = planDay(day({ name: 'the canner' }, [{ volume: '16 quarts' }]));
    expect(two.feasible && two.products.some(({ canning: jars }) => jars !== undefined)).toBe(true);
  });
});
