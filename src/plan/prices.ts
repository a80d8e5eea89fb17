import { valueIn } from '../quantity/scale';
import type { Activity, Supply } from './activity';
import { jarStock } from './makes/jars';
import { type PlanRequest, pricesOf } from './planInput';

/** How often a jar is used in its life, where the kitchen does not say (common practice). */
const JAR_USES = 10;

/** What one of everything costs, in the request's currency; what has no price costs nothing. */
export interface Prices {
  readonly currency: string;
  /** A kg of each lot: its price shared out by weight. */
  readonly lotKg: readonly number[];
  /** One of each stock: a jar over its life, a lid. */
  readonly stock: Readonly<Record<string, number>>;
  readonly sugarKg: number;
}

/** Nothing where the request names no price. */
export function pricesIn(request: PlanRequest): Prices | undefined {
  const currency = pricesOf(request).find(({ path }) => !path.endsWith('.worth'))?.price.unit;
  if (currency === undefined) return undefined;
  const { jars = [], lids, pantry = [] } = request.kitchen;
  const stock: Record<string, number> = {};
  for (const { jar, price, uses = JAR_USES } of jars) {
    if (price !== undefined) stock[jarStock(jar)] ??= price.value / uses;
  }
  if (lids?.price !== undefined) stock.lid = lids.price.value;
  const sugar = pantry.find(({ item, price }) => item === 'sugar' && price !== undefined);
  return {
    currency,
    lotKg: request.lots.map(({ price, raw }) => (price?.value ?? 0) / valueIn(raw, 'kg')),
    stock,
    sugarKg: (sugar?.price?.value ?? 0) / valueIn(sugar?.amount ?? { value: 1, unit: 'kg' }, 'kg'),
  };
}

/** What the plan pays for an activity, written into it: produce and sugar by the kg, jars, lids and sugar by the unit. */
export function withPrices(activity: Activity, prices: Prices | undefined): Activity {
  if (prices === undefined) return activity;
  const { madeOf, supplies, stockPerUnit, sugar = { perUnit: 0, perReadyKg: 0 } } = activity;
  const perKg = ({ lot, readyPerKg }: Supply): number =>
    // trimmings are paid for with the fruit they fall from
    (madeOf === 'fruit' ? (prices.lotKg[lot] ?? 0) : 0) + prices.sugarKg * sugar.perReadyKg * readyPerKg.high;
  return {
    ...activity,
    supplies: supplies.map((supply) => ({ ...supply, costPerKg: perKg(supply) })),
    costPerUnit: Object.entries(stockPerUnit).reduce(
      (sum, [name, perUnit]) => sum + perUnit * (prices.stock[name] ?? 0),
      prices.sugarKg * sugar.perUnit,
    ),
  };
}
