import { type FeasibleDay, type PlanDayInput, planDay } from '../../src/plan/index';

export type Products = NonNullable<PlanDayInput['products']>;
export type Planned = FeasibleDay['products'][number];

/** Invented: a kitchen that has everything, for two long days. */
export const FULL_KITCHEN: PlanDayInput['kitchen'] = {
  elevation: '500 ft',
  hours: ['16 h', '16 h'],
  hands: 4,
  burners: 6,
  pots: [{ volume: '20 quarts', count: 3 }],
  canners: [
    { method: 'boiling-water', holds: { 'half-pint': 12, pint: 9, quart: 7 }, count: 2 },
    { method: 'weighted-gauge', holds: { 'half-pint': 12, pint: 9, quart: 7 } },
    { method: 'atmospheric-steam', holds: { 'half-pint': 12, pint: 9, quart: 7 } },
  ],
  dryer: { trays: 40, trayArea: '200 in2' },
  freezeDryer: { trays: 5, trayArea: '200 in2', ice: '20 lb', loads: 2 },
  freezer: { room: '400 L' },
};

/** A plan of one lot in that kitchen, with what is different. */
export function planOf(
  food: string,
  product: Omit<Products[number], 'from'>,
  kitchen: object = {},
  raw: PlanDayInput['lots'][number]['raw'] = '24 lb',
): FeasibleDay {
  const plan = planDay({
    lots: [{ food, raw }],
    kitchen: { ...FULL_KITCHEN, ...kitchen },
    products: [{ from: food, ...product }],
  });
  if (!plan.feasible) throw new Error(plan.reason.text);
  return plan;
}

/** The one product of such a plan. */
export function productOf(...asked: Parameters<typeof planOf>): Planned {
  const { products, leftOut, notMade } = planOf(...asked);
  const [product] = products;
  if (product === undefined) throw new Error((leftOut[0] ?? notMade[0])?.reason.text);
  return product;
}
