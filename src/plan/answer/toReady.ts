import { isMass } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { PANTRY } from '../../recipes/pantryItems';
import { volumeOf } from '../makes/making';
import { pantryAmount } from '../makes/pantry';
import { spooned } from '../makes/recipe';
import { type Kept, pantryKgOf } from '../program/decide';
import type { Prepared } from '../program/prepare';
import type { ToReady } from '../request/dayPlan';
import type { Kitchen } from '../request/planInput';
import type { Stock } from '../request/stock';

/** What must be at hand, and what of it the stock does not hold. */
export function toReady({ request, day }: Prepared, kept: readonly Kept[]): ToReady[] {
  const { kitchen } = request;
  const counts = new Map<string, { label: string; need: number; have: number | undefined }>();
  for (const { making, decided } of kept) {
    for (const { stock } of making.activity.stockPerUnit) {
      const label = labelOf(stock);
      if (label === undefined) continue;
      const known = counts.get(label) ?? { label, need: 0, have: inStock(kitchen, stock) };
      counts.set(label, { ...known, need: known.need + decided.ready });
    }
  }
  return [
    ...[...counts.values()].map(({ label, need, have }) => ({
      what: label,
      amount: need,
      ...(have === undefined || have >= need ? {} : { short: need - have }),
    })),
    ...PANTRY.flatMap((item): ToReady[] => {
      const need = kept.reduce((sum, each) => sum + pantryKgOf(each, item), 0);
      if (need === 0) return [];
      const have = (kitchen.pantry ?? [])
        .filter((each) => each.item === item)
        .reduce((sum, { amount }) => sum + valueIn(amount, 'kg'), 0);
      return [
        {
          what: item,
          amount: pantryAmount(day, item, need),
          ...(have >= need ? {} : { short: pantryAmount(day, item, need - have) }),
        },
      ];
    }),
    ...besidesThePantry(day, kept),
  ];
}

/** Spices and other parts of recipes that the pantry of a request does not hold: all of it is bought. */
function besidesThePantry(day: Prepared['day'], kept: readonly Kept[]): ToReady[] {
  const cups = new Map<string, number>();
  for (const { what, amount, toBuy } of kept.flatMap(({ said }) => said.recipe ?? [])) {
    if (toBuy && amount !== undefined && !isMass(amount))
      cups.set(what, (cups.get(what) ?? 0) + valueIn(amount as Quantity<'volume'>, 'cup'));
  }
  return [...cups].map(([what, value]) => {
    const amount = volumeOf(day, spooned(value));
    return { what, amount, short: amount };
  });
}

/** What a stock is called on the list; nothing for what is not laid out, such as freezer room. */
function labelOf(stock: Stock): string | undefined {
  if (stock.of === 'jars') return `${stock.jar} jars, clean and hot`;
  return { lids: 'new lids', bags: 'bags or boxes', 'freezer room': undefined, 'freezer load': undefined }[stock.of];
}

/** How many the kitchen has; nothing where no stock is named. */
function inStock({ lids, bags, jars }: Kitchen, stock: Stock): number | undefined {
  if (stock.of === 'lids') return lids?.count;
  if (stock.of === 'bags') return bags?.count;
  return jars?.filter(({ jar }) => stock.of === 'jars' && jar === stock.jar).reduce((sum, { count }) => sum + count, 0);
}
