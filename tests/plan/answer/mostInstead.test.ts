import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type InfeasibleDay, type PlanDayInput, planDay } from '../../../src/plan/index';

type Products = NonNullable<PlanDayInput['products']>;
type NamedDay = PlanDayInput & { readonly products: Products };

/** A small kitchen that has one day, one pot and one canner for its peaches. */
const day = (leasts: readonly number[], more: Partial<PlanDayInput['kitchen']> = {}, pounds = 30): NamedDay => ({
  lots: [{ food: 'peach', raw: { value: pounds, unit: 'lb' } }],
  kitchen: {
    elevation: '100 m',
    hours: '12 h',
    hands: 2,
    pots: [{ volume: '20 quarts' }],
    canners: [{ method: 'boiling-water', holds: { quart: 7 } }],
    freezer: { room: '200 L' },
    ...more,
  },
  products: [
    { make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', least: leasts[0] ?? 0 },
    { make: 'frozen', from: 'peaches', packSize: '1 lb', least: leasts[1] ?? 0 },
  ],
});
const noPlan = (input: PlanDayInput): InfeasibleDay => {
  const plan = planDay(input);
  if (plan.feasible) throw new Error('there is a plan');
  return plan;
};
/** The day with another `least` of the product of this name. */
const asking = (input: PlanDayInput, products: Products, name: string, least: number): PlanDayInput => ({
  ...input,
  products: products.map((each, index) => (NAMES[index] === name ? { ...each, least } : each)),
});
const NAMES = ['peach halves in quarts', 'peach slices, frozen'];

describe('what could be promised instead', () => {
  test('by the lot: 30 lb give ten quarts at the low end', () => {
    const input = day([14]);
    const { most } = noPlan(input);
    expect(most).toEqual([{ name: NAMES[0], least: 14, count: 10, proven: true }]);
    expect(planDay(asking(input, input.products, 'peach halves in quarts', 10)).feasible).toBe(true);
    expect(planDay(asking(input, input.products, 'peach halves in quarts', 11)).feasible).toBe(false);
  });
  test('by the stock of jars, which holds at the high end', () => {
    const input = day([6], { jars: [{ jar: 'quart', count: 6 }] });
    const [first] = noPlan(input).most;
    expect(first?.count).toBeLessThan(6);
    expect(planDay(asking(input, input.products, NAMES[0] as string, first?.count ?? 0)).feasible).toBe(true);
  });
  test('each of two that conflict, with the other kept', () => {
    const input = day([6, 18]);
    const { conflicts, most } = noPlan(input);
    expect(conflicts).toHaveLength(2);
    expect(most.map(({ name }) => name)).toEqual(NAMES);
    for (const { name, least, count: promised } of most) {
      expect(promised).toBeLessThan(least);
      expect(planDay(asking(input, input.products, name, promised)).feasible).toBe(true);
      expect(planDay(asking(input, input.products, name, promised + 1)).feasible).toBe(false);
    }
  });
  test('by the hours: where no order of work fits, as many as one does', () => {
    const input = day([7, 0], { hours: '3.3 h', hands: 1 });
    const { reason, most } = noPlan(input);
    const [first] = most;
    expect(['no-order-of-work', 'too-much']).toContain(reason.code);
    expect(first?.count).toBeLessThan(7);
    expect(planDay(asking(input, input.products, NAMES[0] as string, first?.count ?? 0)).feasible).toBe(true);
  });
  test('of what cannot be made here: none, where the rest can be', () => {
    const input = day([3, 2], { canners: [] });
    expect(noPlan(input)).toMatchObject({
      reason: { code: 'cannot-be-made' },
      most: [{ name: 'peach halves in quarts', least: 3, count: 0, proven: true }],
    });
    expect(planDay(asking(input, input.products, NAMES[0] as string, 0)).feasible).toBe(true);
  });
  test('nothing, where leaving out one of two impossible musts still leaves no plan', () => {
    const twice = day([3], { canners: [] });
    const [jars] = twice.products;
    const input = { ...twice, products: [jars, { ...jars, form: 'slices' }] } as PlanDayInput;
    expect(noPlan(input).most).toEqual([]);
  });
  test('a smallest batch is kept or dropped whole', () => {
    const input = day([14]);
    const [jars] = input.products;
    const whole = { ...input, products: [{ ...jars, smallest: 12 }] } as PlanDayInput;
    expect(noPlan(whole).most).toEqual([{ name: NAMES[0], least: 14, count: 0, proven: true }]);
  });
});

test('whatever is promised instead has a plan', () => {
  const asked = fc.record({
    jars: fc.integer({ min: 0, max: 16 }),
    packs: fc.integer({ min: 0, max: 30 }),
    pounds: fc.integer({ min: 8, max: 40 }),
    hours: fc.integer({ min: 3, max: 8 }),
  });
  let told = 0;
  fc.assert(
    fc.property(asked, ({ jars, packs, pounds, hours }) => {
      const input = day([jars, packs], { hours: { value: hours, unit: 'h' } }, pounds);
      const plan = planDay(input);
      if (plan.feasible) return;
      for (const { name, least, count: promised } of plan.most) {
        told += 1;
        expect(promised).toBeLessThan(least);
        expect(planDay(asking(input, input.products, name, promised)).feasible).toBe(true);
      }
    }),
    { numRuns: 25 },
  );
  expect(told).toBeGreaterThan(5);
});
