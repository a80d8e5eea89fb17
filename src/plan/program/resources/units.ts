import { customary } from '../../figures/customary';
import type { Activity, Capacity } from '../../request/activity';
import { amountOf } from '../../request/stock';
import { made, promised, raw, readied, wholeBatches } from '../decisions';
import { bound, type Draft, decide, scaled } from '../draft';

/** What must be promised: a must below the smallest batch is the smallest batch. */
export const mustOf = ({ least, smallest = 0 }: Activity): number => (least > 0 ? Math.max(least, smallest) : 0);

/** Units promised at the poor end of the yields, and readied at the rich end; what they are worth and cost. */
export function units(draft: Draft, activity: Activity): void {
  const { product, supplies, costPerUnit = 0, unitsPerBatch } = activity;
  const { weights, counts } = draft;
  for (const { lot } of supplies) decide(draft, raw(lot, product), false);
  decide(draft, promised(product));
  decide(draft, readied(product));
  counts.worth.push([promised(product), activity.worth]);
  counts.waste.push(...scaled(activity, () => 1));
  counts.cost.push(...scaled(activity, ({ costPerKg = 0 }) => costPerKg), [readied(product), costPerUnit]);
  bound(
    draft,
    { of: 'promise', product },
    [[promised(product), -1], ...scaled(activity, ({ unitsPerKg }) => unitsPerKg.low)],
    // fruit that no promise needs stays fresh, unless as much as can be is to be used
    { min: 0, ...((weights.waste > 0 && unitsPerBatch === undefined) || isFixed(activity) ? {} : { max: 0 }) },
  );
  // what is in work already goes on, all of it
  if (activity.held !== undefined) {
    const { kg } = activity.held;
    const ends = isFixed(activity) ? { min: kg, max: kg } : { max: kg * customary('batch-slack') };
    bound(
      draft,
      { of: 'in work', product },
      scaled(activity, () => 1),
      ends,
    );
  }
  bound(
    draft,
    { of: 'ready', product },
    [[readied(product), 1], ...scaled(activity, ({ unitsPerKg }) => -unitsPerKg.high)],
    { min: 0 },
  );
  bound(draft, { of: 'least', product }, [[promised(product), 1]], { min: mustOf(activity) });
  bound(draft, { of: 'most', product }, [[readied(product), 1]], { max: mostReadied(activity) });
  bound(draft, { of: 'most promised', product }, [[promised(product), 1]], { max: activity.most });
  if (unitsPerBatch !== undefined) {
    decide(draft, wholeBatches(product));
    bound(
      draft,
      { of: 'whole batches', product },
      [
        [promised(product), 1],
        [wholeBatches(product), -unitsPerBatch],
      ],
      { min: 0, max: 0 },
    );
  }
  if (weights.waste > 0 && !isFixed(activity)) {
    // a part-filled last unit, but nothing that fills not even one
    bound(
      draft,
      { of: 'part-filled', product },
      [[promised(product), 2], ...scaled(activity, ({ unitsPerKg }) => -unitsPerKg.low)],
      { min: 0 },
    );
  }
}

/** Whether it is in work already, all of it: of what is cooked in whole batches a part may be too much for them. */
export const isFixed = ({ held, unitsPerBatch }: Activity): boolean =>
  held !== undefined && unitsPerBatch === undefined;

/** A smallest batch: the plan makes none of the product, or at least this many. */
export function smallestBatch(draft: Draft, activity: Activity): void {
  const { product, least, smallest = 0 } = activity;
  if (smallest <= 1 || least > 0) return;
  decide(draft, made(product));
  bound(
    draft,
    { of: 'smallest', product },
    [
      [promised(product), 1],
      [made(product), -smallest],
    ],
    { min: 0 },
  );
  bound(
    draft,
    { of: 'made or not', product },
    [
      [promised(product), -1],
      [made(product), roomiest(activity, draft.capacity)],
    ],
    { min: 0 },
  );
  bound(draft, { of: 'made once', product }, [[made(product), 1]], { max: 1 });
}

/** `most` holds for what is readied, at the rich end, except where the least to promise needs more ready than that. */
const mostReadied = ({ supplies, least, smallest = 0, most }: Activity): number =>
  Math.max(
    most,
    Math.ceil(
      Math.max(least, smallest) * Math.max(0, ...supplies.map(({ unitsPerKg }) => unitsPerKg.high / unitsPerKg.low)) -
        1e-6,
    ),
  );

/** Nothing to promise more than this of one product: its `most`, the lots and the stock. */
export function mostUnits(activity: Activity, { lots, stock }: Capacity, rich: number): number {
  const { supplies, stockPerUnit, also = [] } = activity;
  const fromLots = supplies.reduce((sum, { lot, unitsPerKg }) => sum + unitsPerKg.low * (lots[lot] ?? 0), 0);
  const fromStock = stockPerUnit.map(
    ({ stock: kind, amount }) => (amountOf(stock, kind) ?? Number.POSITIVE_INFINITY) / amount / rich,
  );
  const fromOthers = also.map(({ lot, kgPerUnit }) => (lots[lot] ?? 0) / kgPerUnit / rich);
  const all = [activity.most, mostReadied(activity) / rich, fromLots, ...fromStock, ...fromOthers];
  return Math.floor(Math.min(...all) + 1e-6);
}

/** The same in a kitchen with as much more of everything as `wideningsOf` asks about. */
const roomiest = (activity: Activity, { lots, stock, ...rest }: Capacity): number =>
  mostUnits(
    activity,
    {
      ...rest,
      lots: lots.map((kg) => kg + 1),
      stock: stock.map(({ stock: kind, amount }) => ({ stock: kind, amount: amount + 12 })),
    },
    Math.min(...activity.supplies.map(({ unitsPerKg }) => unitsPerKg.high / unitsPerKg.low)),
  );
