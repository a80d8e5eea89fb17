import { seeded } from '../../src/common/seeded';
import type { Activity, Canning, Capacity } from '../../src/plan/request/activity';
import { BAGS, FREEZER_ROOM, jarsOf, LIDS } from '../../src/plan/request/stock';
import type { Program } from '../../src/plan/solver/linearProgram';

/** Invented: a kitchen with 2 to 8 lots and 3 to 12 products of every kind, all priced; with smallest batches or without. */
export function randomKitchen(
  seed: number,
  size?: { lots: number; products: number },
  smallest = false,
): { activities: Activity[]; capacity: Capacity } {
  const random = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const lots = Array.from({ length: size?.lots ?? whole(2, 8) }, () => between(5, 40));
  const products = size?.products ?? whole(3, 12);
  const pots = Array.from({ length: whole(1, 2) }, () => between(4, 9));
  const canners = whole(1, 2);
  const activities: Activity[] = Array.from({ length: products }, (_, product) => {
    const kind = ['jarred', 'jarred', 'dried', 'frozen', 'trimmings'][whole(0, 4)];
    const chosen = lots.map((_, lot) => lot).filter(() => random() < 0.4);
    const supplies = (chosen.length === 0 ? [whole(0, lots.length - 1)] : chosen).map((lot) => {
      const likely = between(0.6, 1.2);
      const trimmings = between(0.05, 0.2);
      return {
        lot,
        unitsPerKg: { low: likely * between(0.8, 0.95), likely, high: likely * between(1.05, 1.2) },
        trimmingsPerKg: { low: trimmings * 0.7, likely: trimmings, high: trimmings * 1.3 },
        readyPerKg: { low: 0.7, likely: 0.8, high: 0.9 },
      };
    });
    const base = {
      product,
      supplies,
      worth: Math.round(between(2, 9) * 4) / 4,
      least: 0,
      most: whole(4, 30),
      handsPerKg: between(4, 12),
      handsPerUnit: between(1, 3),
    };
    const group = whole(0, 3);
    if (kind === 'jarred') {
      const jar = group < 2 ? 'pint' : 'quart';
      return {
        ...base,
        madeOf: 'fruit',
        stockPerUnit: [
          { stock: jarsOf(jar), amount: 1 },
          { stock: LIDS, amount: 1 },
          { stock: BAGS, amount: between(0, 0.2) },
        ],
        cook: { litresPerKg: between(0.8, 1.2), minutes: whole(10, 60), stirred: false },
        canning: {
          key: `process ${group}`,
          jar,
          canners: Array.from({ length: canners }, (_, canner) => ({
            canner,
            jars: jar === 'pint' ? 9 : 7,
            minutes: 45 + 5 * group,
            warmUp: 0,
          })),
        },
      };
    }
    if (kind === 'dried') return { ...base, madeOf: 'fruit', stockPerUnit: [], traysPerKg: between(0.8, 1.6) };
    if (kind === 'frozen') return { ...base, madeOf: 'fruit', stockPerUnit: [{ stock: FREEZER_ROOM, amount: 0.5 }] };
    return { ...base, madeOf: 'trimmings', worth: base.worth / 2, stockPerUnit: [], traysPerKg: between(0.8, 1.6) };
  });
  const capacity: Capacity = {
    lots,
    days: 1,
    minutes: 60 * whole(5, 11),
    hands: whole(1, 3),
    burners: whole(2, 4),
    pots,
    canners,
    lead: 40,
    stock: [
      { stock: jarsOf('pint'), amount: whole(10, 40) },
      { stock: jarsOf('quart'), amount: whole(7, 28) },
      { stock: LIDS, amount: whole(15, 60) },
      { stock: BAGS, amount: between(1, 5) },
      { stock: FREEZER_ROOM, amount: between(5, 25) },
    ],
    trays: whole(4, 12),
  };
  return { activities: activities.map(withMore(seeded(seed + 1_000_000), smallest)), capacity };
}

/** What is drawn from a stream of its own, so that a seed gives the same kitchen otherwise: prices, smallest batches. */
const withMore = (random: () => number, smallest: boolean) => {
  const between = (low: number, high: number) => low + (high - low) * random();
  const perLot = Array.from({ length: 60 }, () => between(0.5, 3));
  return (activity: Activity): Activity => ({
    ...activity,
    supplies: activity.supplies.map((supply) => ({
      ...supply,
      costPerKg: activity.madeOf === 'fruit' ? (perLot[supply.lot] ?? 0) : 0,
    })),
    costPerUnit: between(0.05, 0.6),
    ...(activity.cook === undefined ? {} : { cook: { ...activity.cook, costPerBatch: between(0.1, 0.4) } }),
    ...(activity.canning === undefined ? {} : { canning: withLoadCost(activity.canning) }),
    ...(smallest && random() < 0.6
      ? { smallest: Math.min(Math.floor(activity.most / 1.5), Math.floor(between(2, 16))) }
      : {}),
  });
};
const withLoadCost = (canning: Canning): Canning => ({
  ...canning,
  canners: canning.canners.map((each) => ({ ...each, costPerLoad: 0.25 + each.canner / 10 })),
});

/** A program in the LP format that HiGHS reads. */
export function toLp({ variables, bounds }: Program): string {
  const id = new Map(variables.map(({ name }, index) => [name, `v${index}`]));
  const sum = (terms: readonly (readonly [string, number])[]) =>
    terms.map(([name, weight]) => `${weight < 0 ? '-' : '+'} ${Math.abs(weight)} ${id.get(name)}`).join(' ') || '0 v0';
  const rows = bounds.flatMap(({ terms, min, max }, index) => [
    ...(max === undefined ? [] : [` u${index}: ${sum(terms)} <= ${max}`]),
    ...(min === undefined ? [] : [` l${index}: ${sum(terms)} >= ${min}`]),
  ]);
  const integers = variables.filter(({ integer }) => integer).map(({ name }) => id.get(name));
  const worth = sum(variables.map(({ name, worth: each }) => [name, each] as const));
  return `Maximize\n obj: ${worth}\nSubject To\n${rows.join('\n')}\nGeneral\n ${integers.join(' ')}\nEnd\n`;
}
