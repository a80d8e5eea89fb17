import type { Planned } from '../program/decide';
import type { Activity } from '../request/activity';
import { amountOf, FREEZER_LOAD } from '../request/stock';
import type { Job, QuietStep } from '../schedule/job';
import { cannedJobs } from './cannedJobs';
import {
  batchesOf,
  evenly,
  needsOf,
  portionOf,
  STRETCH,
  sharedBy,
  stretchesOf,
  type Whole,
  wholeBatchesOf,
} from './portion';

type End = NonNullable<Activity['after']>['kind'];

/** What a product goes into at the end, where that is no canner. */
const endOf = ({ canning, after }: Activity): End | undefined => (canning === undefined ? after?.kind : undefined);

/** What a plan decided, as jobs that can be put in order. What is made of trimmings comes last. */
export function jobsOf(prepared: Whole, kept: readonly Planned[], values: ReadonlyMap<string, number>): Job[] {
  const [whole, trimmings] = (['fruit', 'trimmings'] as const).map((of) =>
    kept.filter(({ making }) => making.activity.madeOf === of),
  ) as [Planned[], Planned[]];
  return [whole, trimmings].flatMap((some) => [
    ...cannedJobs(prepared, some, values),
    ...endingIn(some, 'dry').flatMap((each) => driedJobs(prepared, each)),
    ...freezeDriedJobs(prepared, endingIn(some, 'freeze-dry')),
    ...endingIn(some, 'freeze').flatMap((each) => frozenJobs(prepared, each)),
    ...endingIn(some, 'ferment', 'stand', undefined)
      .filter(({ making }) => making.activity.canning === undefined)
      .flatMap((each) => restingJobs(prepared, each)),
  ]);
}

const endingIn = (kept: readonly Planned[], ...ends: (End | undefined)[]): Planned[] =>
  kept.filter(({ making }) => ends.includes(endOf(making.activity)));

/** Minutes of its end. */
const endMinutes = ({ making }: Planned): number | undefined => making.activity.after?.minutes;

/** What goes on dryer trays, a stretch of work at a time. */
function driedJobs(prepared: Whole, each: Planned): Job[] {
  const { decided, making } = each;
  const { activity } = making;
  const { trays } = decided;
  const minutes = endMinutes(each);
  if (trays === 0 || minutes === undefined) return [];
  const room = prepared.request.kitchen.dryer?.trays ?? 1;
  const fewest = Math.max(stretchesOf(prepared, each), potsFull(prepared, each), Math.ceil(trays / room));
  const parts = Math.min(trays, fewest);
  const spread = making.size === undefined; // a sheet is spread, pieces are bagged
  return evenly(trays, parts).map((some, index) => {
    const share = some / trays;
    const work = activity.handsPerUnit * decided.ready * share;
    const into: QuietStep = {
      kind: 'dry',
      units: { count: some, unit: 'tray' },
      amount: some,
      minutes: Math.ceil(minutes),
      pack: spread ? 0 : work,
    };
    const units = evenly(decided.ready, parts)[index] as number;
    return {
      portions: [portionOf(prepared, each, share, units, spread ? work : 0)],
      into,
      needs: needsOf(each, share),
    };
  });
}

/** Runs of the freeze-dryer, each as full as its trays allow, products together. */
function freezeDriedJobs(prepared: Whole, kept: readonly Planned[]): Job[] {
  const room = prepared.capacity.freezeDryer?.trays ?? 0;
  if (room === 0) return [];
  const runs: { each: Planned; trays: number }[][] = [];
  let free = 0;
  for (const each of kept) {
    for (let left = each.decided.trays; left > 0; ) {
      if (free === 0) {
        runs.push([]);
        free = room;
      }
      const trays = Math.min(left, free);
      runs[runs.length - 1]?.push({ each, trays });
      left -= trays;
      free -= trays;
    }
  }
  return runs.map((run): Job => {
    const pack = run.reduce(
      (sum, { each, trays }) =>
        sum + (each.making.activity.handsPerUnit * each.decided.ready * trays) / each.decided.trays,
      0,
    );
    const longest = Math.max(...run.map(({ each }) => endMinutes(each) ?? 0));
    return {
      portions: run.map(({ each, trays }) => {
        const share = trays / each.decided.trays;
        return portionOf(prepared, each, share, Math.round(each.decided.ready * share), 0);
      }),
      into: {
        kind: 'freeze-dry',
        units: { count: run.reduce((sum, { trays }) => sum + trays, 0), unit: 'tray' },
        amount: 1,
        minutes: Math.ceil(longest),
        pack,
      },
      needs: run.flatMap(({ each, trays }) => needsOf(each, trays / each.decided.trays)),
    };
  });
}

/** How often the pot is put on for what is cooked, or blanched for no longer than a stretch of work. */
function potsFull(prepared: Whole, each: Planned): number {
  const { cook } = each.making.activity;
  if (cook === undefined) return 1;
  const batches = batchesOf(prepared, each, 1);
  return cook.blanch === undefined ? batches : Math.ceil((batches * cook.minutes) / STRETCH);
}

/** Packs for the freezer, a stretch of work at a time. */
function frozenJobs(prepared: Whole, each: Planned): Job[] {
  const { decided, making } = each;
  const kgPerPack = amountOf(making.activity.stockPerUnit, FREEZER_LOAD) ?? 0;
  const { capacity } = prepared;
  const aDay = (amountOf(capacity.stock, FREEZER_LOAD) ?? Number.POSITIVE_INFINITY) / capacity.days;
  const fewest = Math.max(
    1,
    stretchesOf(prepared, each),
    potsFull(prepared, each),
    Math.ceil((kgPerPack * decided.ready) / aDay),
  );
  const parts = Math.min(decided.ready, fewest);
  return evenly(decided.ready, parts).map((some): Job => {
    const share = some / decided.ready;
    return {
      portions: [portionOf(prepared, each, share, some, making.activity.handsPerUnit * some)],
      into: {
        kind: 'freeze',
        units: { count: some, unit: making.unit },
        amount: kgPerPack * some,
        minutes: Math.ceil(endMinutes(each) ?? 0),
        pack: 0,
      },
      needs: needsOf(each, share),
    };
  });
}

/**
 * What goes into a crock, a jar or the refrigerator: a stretch of work at a time, then by itself as long as it says. What
 * is made in whole batches stays in whole ones, and one that is cooked by itself has its own pot.
 */
function restingJobs(prepared: Whole, each: Planned): Job[] {
  const { decided, making } = each;
  const { after, cook, handsPerUnit, madeOf } = making.activity;
  const whole = wholeBatchesOf(each);
  const most = whole ?? decided.ready;
  const fewest =
    whole !== undefined && cook?.batchLitres !== undefined
      ? whole
      : Math.max(1, batchesOf(prepared, each, 1), madeOf === 'fruit' ? stretchesOf(prepared, each) : 1);
  const parts = evenly(most, Math.min(most, fewest));
  const units = sharedBy(decided.ready, parts);
  return parts.map((part, index): Job => {
    const count = units[index] as number;
    const share = part / most;
    return {
      portions: [portionOf(prepared, each, share, count, handsPerUnit * count)],
      ...(after?.kind === 'ferment' || after?.kind === 'stand'
        ? {
            into: {
              kind: after.kind,
              units: { count, unit: making.unit },
              amount: 0,
              minutes: Math.ceil(after.minutes),
              pack: 0,
            },
          }
        : {}),
      needs: needsOf(each, share),
    };
  });
}
