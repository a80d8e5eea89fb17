import { isMass } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { PANTRY } from '../../recipes/pantryItems';
import { massOf, volumeOf } from '../makes/making';
import { pantryAmount } from '../makes/pantry';
import { spooned } from '../makes/recipe';
import { type Kept, NOISE, pantryKgOf } from '../program/decide';
import type { Prepared } from '../program/prepare';
import type { ToReady } from '../request/dayPlan';
import type { Kitchen } from '../request/planInput';
import type { Ingredient } from '../request/plannedProduct';
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
      needed: need,
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
          needed: pantryAmount(day, item, need),
          ...(have >= need ? {} : { short: pantryAmount(day, item, need - have) }),
        },
      ];
    }),
    ...besidesThePantry(day, kept),
  ];
}

/** So much of one thing that is bought: of what is measured its kg and its cups, of what is counted its pieces. */
interface Bought {
  readonly what: string;
  readonly kg: number;
  readonly cups: number;
  readonly pieces: number;
  /** Whether some of it is measured by the cup with no weight known: then all of it cannot be weighed. */
  readonly cupsOnly: boolean;
}

/** Spices and other parts of recipes that the pantry of a request does not hold: all of it is bought, each on one line. */
function besidesThePantry(day: Prepared['day'], kept: readonly Kept[]): ToReady[] {
  const bought = new Map<string, Bought>();
  for (const line of kept.flatMap(({ said }) => said.recipe ?? [])) {
    if (line.toBuy === undefined) continue;
    const what = line.pieces === undefined ? line.toBuy : piecesOf(line.toBuy, line);
    const before = bought.get(what) ?? { what, kg: 0, cups: 0, pieces: 0, cupsOnly: false };
    bought.set(what, added(before, line));
  }
  return [...bought.values()].flatMap(({ what, kg, cups, pieces, cupsOnly }) => [
    ...(pieces > 0 ? [toBuy(what, Math.ceil(pieces - NOISE))] : []),
    ...(kg > 0 ? [toBuy(what, massOf(day, kg))] : []),
    ...(cupsOnly ? [toBuy(what, volumeOf(day, spooned(cups)))] : []),
  ]);
}
const toBuy = (what: string, amount: ToReady['needed']): ToReady => ({ what, needed: amount, short: amount });

/** What is counted: `garlic, cloves`. */
const piecesOf = (what: string, { counted = '' }: Ingredient): string =>
  counted === '' || what.includes(counted) ? what : `${what}, ${counted}`;

/** One line more of a thing: by weight where a weight is known, otherwise by the cup. */
function added({ what, kg, cups, pieces, cupsOnly }: Bought, { amount, or, pieces: count = 0 }: Ingredient): Bought {
  const weighed = [amount, or].find((each) => each !== undefined && isMass(each)) as Quantity<'mass'> | undefined;
  if (weighed !== undefined) return { what, kg: kg + valueIn(weighed, 'kg'), cups, pieces, cupsOnly };
  if (amount === undefined) return { what, kg, cups, pieces: pieces + count, cupsOnly };
  return { what, kg, cups: cups + valueIn(amount as Quantity<'volume'>, 'cup'), pieces, cupsOnly: true };
}

/** What a stock is called on the list; nothing for what is not laid out, such as freezer room. */
function labelOf(stock: Stock): string | undefined {
  if (stock.of === 'jars') return `${stock.jar} jars`;
  return { lids: 'new lids', bags: 'bags or boxes', 'freezer room': undefined, 'freezer load': undefined }[stock.of];
}

/** How many the kitchen has; nothing where no stock is named. */
function inStock({ lids, bags, jars }: Kitchen, stock: Stock): number | undefined {
  if (stock.of === 'lids') return lids?.count;
  if (stock.of === 'bags') return bags?.count;
  return jars?.filter(({ jar }) => stock.of === 'jars' && jar === stock.jar).reduce((sum, { count }) => sum + count, 0);
}
