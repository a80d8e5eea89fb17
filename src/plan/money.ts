import { parseMoney, toCents } from '../quantity/money';
import { valueIn } from '../quantity/scale';
import type { Money } from '../quantity/types';
import type { DayCost, ProductCost } from './dayPlan';
import { type Kept, sugarKgOf } from './decide';
import type { Prepared } from './prepare';
import { type Prices, pricesIn } from './prices';
import { shareMoney } from './shareMoney';

/** One line of what a product costs. */
interface Line {
  readonly what: string;
  readonly of: 'produce' | 'supplies';
  readonly amount: number;
}

/** Less than a gram left of a lot is none. */
const NOTHING_LEFT = 1e-3;

export interface Costs {
  readonly products: readonly ProductCost[];
  readonly day: DayCost;
}

/**
 * What each product and the day cost: the price of a lot is shared out to the cent among the products made of it and
 * what is left fresh; jars over their lives, lids and sugar as they are used. Products of trimmings take no share.
 *
 * @returns nothing where the request names no price
 */
export function costsOf(prepared: Prepared, kept: readonly Kept[]): Costs | undefined {
  const prices = pricesIn(prepared.request);
  if (prices === undefined) return undefined;
  const money = (value: number): Money => parseMoney({ value, unit: prices.currency });
  const shares = produceShares(prepared, kept);
  const lines = kept.map((each, index): Line[] => [...(shares[index] ?? []), ...suppliesOf(prices, each)]);
  const sum = (own: readonly Line[]) => toCents(own.reduce((total, { amount }) => total + amount, 0));
  const of = (what: Line['of']) => sum(lines.flat().filter((line) => line.of === what));
  const paid = toCents(prepared.request.lots.reduce((total, { price }) => total + toCents(price?.value ?? 0), 0));
  return {
    products: lines.map((own, index) => ({
      lines: own.map(({ what, amount }) => ({ what, amount: money(amount) })),
      total: money(sum(own)),
      perUnit: money(perUnit(sum(own), Math.max(kept[index]?.decided.promised ?? 0, 1))),
    })),
    day: {
      produceUsed: money(of('produce')),
      produceLeft: money(toCents(paid - of('produce'))),
      supplies: money(of('supplies')),
      total: money(toCents(paid + of('supplies'))),
    },
  };
}

/** Up to the cent: a jar never looks cheaper than it is. */
const perUnit = (total: number, units: number): number => toCents(Math.ceil((total / units) * 100 - 1e-6) / 100);

/** The price of each lot shared out by the weight that goes into each product. */
function produceShares({ day }: Prepared, kept: readonly Kept[]): Line[][] {
  const lines: Line[][] = kept.map(() => []);
  for (const lot of day.lots) {
    if (lot.price === undefined) continue;
    const used = kept.map(({ making, decided }) =>
      making.activity.madeOf === 'fruit' ? (decided.rawByLot.get(lot.index) ?? 0) : 0,
    );
    const left = valueIn(lot.raw, 'kg') - used.reduce((sum, kg) => sum + kg, 0);
    const shares = shareMoney(lot.price.value, [...used, left > NOTHING_LEFT ? left : 0]);
    lines.forEach((own, index) => {
      const amount = shares[index] ?? 0;
      if (amount > 0) own.push({ what: lot.label, of: 'produce', amount });
    });
  }
  return lines;
}

function suppliesOf({ stock, sugarKg }: Prices, kept: Kept): Line[] {
  const { activity } = kept.making;
  const lines = { 'jars, over their lives': 0, lids: 0, sugar: sugarKg * sugarKgOf(kept) };
  for (const [name, perUnit] of Object.entries(activity.stockPerUnit)) {
    lines[name === 'lid' ? 'lids' : 'jars, over their lives'] += perUnit * (stock[name] ?? 0) * kept.decided.ready;
  }
  return Object.entries(lines).flatMap(([what, amount]) =>
    amount > 0 ? [{ what, of: 'supplies', amount: toCents(amount) } as const] : [],
  );
}
