import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Ingredient, ToReady } from './dayPlan';
import { type Kept, sugarKgOf } from './decide';
import { massOf } from './makes/context';
import { jarStock } from './makes/jars';
import type { Prepared } from './prepare';

/** What must be at hand, and what of it the stock does not hold. */
export function toReady({ request, day }: Prepared, kept: readonly Kept[]): ToReady[] {
  const { kitchen } = request;
  const counts = new Map<string, { label: string; need: number; have: number | undefined }>();
  for (const { making, decided } of kept) {
    for (const stock of Object.keys(making.activity.stockPerUnit)) {
      if (stock !== 'lid' && !stock.startsWith('jar ')) continue;
      const label = stock === 'lid' ? 'new lids' : `${stock.slice(4)} jars, clean and hot`;
      const have =
        stock === 'lid'
          ? kitchen.lids?.count
          : kitchen.jars?.filter(({ jar }) => jarStock(jar) === stock).reduce((sum, { count }) => sum + count, 0);
      const known = counts.get(stock) ?? { label, need: 0, have };
      counts.set(stock, { ...known, need: known.need + decided.ready });
    }
  }
  const sugarKg = kept.reduce((sum, each) => sum + sugarKgOf(each), 0);
  const pantry = kitchen.pantry?.filter(({ item }) => item === 'sugar');
  const sugarHave =
    pantry === undefined || pantry.length === 0
      ? undefined
      : pantry.reduce((sum, { amount }) => sum + valueIn(amount, 'kg'), 0);
  const juice = totalOf(kept, 'bottled lemon juice');
  return [
    ...[...counts.values()].map(({ label, need, have }) => ({
      what: label,
      amount: need,
      ...(have === undefined || have >= need ? {} : { short: need - have }),
    })),
    ...(sugarKg > 0
      ? [
          {
            what: 'sugar',
            amount: massOf(day, sugarKg),
            ...(sugarHave === undefined || sugarHave >= sugarKg ? {} : { short: massOf(day, sugarKg - sugarHave) }),
          },
        ]
      : []),
    ...(juice === undefined ? [] : [{ what: 'bottled lemon juice', amount: juice }]),
  ];
}

/** All of one ingredient that recipes measure by volume. */
function totalOf(kept: readonly Kept[], what: string): Quantity<'volume'> | undefined {
  const amounts = kept.flatMap(({ said }) =>
    (said.recipe ?? []).filter((line): line is Ingredient & { amount: Quantity<'volume'> } =>
      line.what.startsWith(what),
    ),
  );
  const [first] = amounts;
  if (first === undefined) return undefined;
  const cups = amounts.reduce((sum, { amount }) => sum + valueIn(amount, 'cup'), 0);
  return quantityIn<'volume'>(cups, 'cup', first.amount.unit === 'mL' ? 'mL' : 'cup');
}
