import { valueIn } from '../../quantity/scale';
import type { KnownLot } from '../makes/making';
import { massOf } from '../makes/making';
import { LIFT_A_JAR } from '../makes/work';
import { type Kept, NOISE } from '../program/decide';
import type { Prepared } from '../program/prepare';
import { cannersFor, loads } from '../program/program';
import type { Canning, Cook } from '../request/activity';
import type { Wanted } from '../request/planInput';
import { decidedOf } from '../solver/relaxation';
import type { Cooking, Job, Portion, QuietStep, Trimmings } from './job';
import { batchesOver, fitsAlone } from './loadsThatFit';

/** Minutes by the clock that all hands prepare at a stretch before it goes on trays or into packs: common practice. */
const STRETCH = 45;
/** A freezer load is given a day to freeze through, the day of `freezerLoad`. */
const FREEZE = 24 * 60;

type Whole = Pick<Prepared, 'day' | 'request' | 'capacity' | 'means'>;

/** What a plan decided, as jobs that can be put in order. */
export function jobsOf(prepared: Whole, kept: readonly Kept[], values: ReadonlyMap<string, number>): Job[] {
  const makeOf = ({ making }: Kept) => (prepared.request.products[making.activity.product] as Wanted).make;
  const freezeDried = kept.filter((each) => makeOf(each) === 'freeze-dried');
  return [
    ...cannedJobs(prepared, kept, values),
    ...kept
      .filter((each) => makeOf(each) === 'dried' || makeOf(each) === 'leather')
      .flatMap((each) => driedJobs(prepared, each)),
    ...freezeDriedJobs(prepared, freezeDried),
    ...kept.filter((each) => makeOf(each) === 'frozen').flatMap((each) => frozenJobs(prepared, each)),
    ...kept
      .filter(({ making }) => making.activity.madeOf === 'trimmings')
      .flatMap((each) => (makeOf(each) === 'powder' ? driedJobs(prepared, each) : steepedJobs(prepared, each))),
  ];
}

/** A share of a product's work as one portion. */
function portionOf(
  { day, capacity }: Whole,
  { making, decided }: Kept,
  share: number,
  units: number,
  fill: number,
): Portion {
  const { activity, label, unit } = making;
  const lots = [...decided.rawByLot].filter(([, kg]) => kg > NOISE).map(([lot]) => day.lots[lot] as KnownLot);
  const { cook } = activity;
  const kg = decided.rawKg * share;
  const largest = Math.max(...capacity.pots, NOISE);
  return {
    product: label,
    what: `${activity.madeOf === 'trimmings' ? 'trimmings of ' : ''}${lots.map((lot) => lot.label).join(' and ')}`,
    raw: massOf(day, kg),
    filled: { count: units, unit },
    prepare: activity.handsPerKg * kg,
    fill,
    ...(cook === undefined ? {} : { cook: cookingOf(cook, cook.litresPerKg * kg, largest) }),
    drops:
      activity.madeOf === 'trimmings'
        ? []
        : activity.supplies.map(
            ({ lot, trimmingsPerKg }): Trimmings => ({
              lot,
              kg: (decided.rawByLot.get(lot) ?? 0) * share * trimmingsPerKg.low,
            }),
          ),
  };
}

/** A portion in its pot: at once, or where it is blanched a batch after the other in the same water. */
function cookingOf({ minutes, stirred, blanch }: Cook, litres: number, largest: number): Cooking {
  if (blanch === undefined) return { minutes: Math.ceil(minutes), litres, stirred };
  const batches = batchesIn(litres, largest);
  return {
    minutes: Math.ceil(minutes * batches - NOISE),
    litres: litres / batches,
    stirred,
    blanch: { heat: blanch.minutes, batches },
  };
}
const batchesIn = (litres: number, pot: number): number => Math.max(1, Math.ceil(litres / pot - NOISE));

/** So many equal parts of a whole number, the larger ones first: 7 in 3 is 3, 2, 2. */
export const evenly = (whole: number, parts: number): number[] =>
  Array.from({ length: parts }, (_, index) => Math.floor(whole / parts) + (index < whole % parts ? 1 : 0));

/** Batches that a share of a product takes in the largest pot. */
const batchesOf = ({ capacity }: Whole, { making, decided }: Kept, share: number): number => {
  const litres = (making.activity.cook?.litresPerKg ?? 0) * decided.rawKg * share;
  return batchesIn(litres, Math.max(...capacity.pots, NOISE));
};

/** One load: jars of one product, or of several that share its process. */
type Load = readonly { readonly each: Kept; readonly jars: number }[];

/** Canner loads, each prepared, cooked and filled for itself: no more than one load's food stands ready at a time. */
function cannedJobs(prepared: Whole, kept: readonly Kept[], values: ReadonlyMap<string, number>): Job[] {
  const groups = new Map<string, Kept[]>();
  for (const each of kept) {
    const { canning } = each.making.activity;
    if (canning !== undefined) groups.set(canning.key, [...(groups.get(canning.key) ?? []), each]);
  }
  return [...groups.values()].flatMap((group) => {
    const canning: Canning = {
      ...(group[0]?.making.activity.canning as Canning),
      canners: cannersFor(group.map(({ making }) => making.activity)),
    };
    const planned = canning.canners.flatMap(({ canner, jars }) =>
      Array.from({ length: decidedOf(values, loads(canning.key, canner)) }, () => jars),
    );
    return sharedOut(group, planned).flatMap((load): Job[] => jobsThatFit(prepared, canning, load));
  });
}

/** Jars shared out over loads: whole loads of one product where there are enough, what is left over together. */
export function sharedOut(group: readonly Kept[], planned: readonly number[]): Load[] {
  const places = [...planned].sort((one, other) => one - other);
  const most = places[places.length - 1] ?? 1;
  const all = group.reduce((sum, { decided }) => sum + decided.ready, 0);
  if (group.length > 1 && places[0] === most) {
    const whole = group.flatMap((each): Load[] =>
      Array.from({ length: Math.floor(each.decided.ready / most) }, () => [{ each, jars: most }]),
    );
    const rests = group.map((each) => ({ each, jars: each.decided.ready % most })).filter(({ jars }) => jars > 0);
    const together: { each: Kept; jars: number }[][] = [];
    for (const rest of rests.sort((one, other) => other.jars - one.jars)) {
      const room = together.find((load) => load.reduce((sum, { jars }) => sum + jars, rest.jars) <= most);
      if (room === undefined) together.push([rest]);
      else room.push(rest);
    }
    if (whole.length + together.length <= places.length) return [...whole, ...together];
  }
  // evenly, so that no load is all but empty
  const queue = group.map((each) => ({ each, left: each.decided.ready }));
  let left = all;
  const count = evenCount(places, all);
  return places.slice(places.length - count).map((room, index) => {
    let jars = Math.min(room, Math.ceil(left / (count - index)));
    left -= jars;
    const load: { each: Kept; jars: number }[] = [];
    for (const entry of queue) {
      const taken = Math.min(entry.left, jars);
      if (taken === 0) continue;
      load.push({ each: entry.each, jars: taken });
      entry.left -= taken;
      jars -= taken;
    }
    return load;
  });
}

/** The fewest of the planned loads, the largest first, that hold all jars. */
function evenCount(places: readonly number[], jars: number): number {
  let held = 0;
  let count = 0;
  while (held < jars && count < places.length) {
    count += 1;
    held += places[places.length - count] as number;
  }
  return count;
}

/** A load as one job; as two smaller ones, and so on, where its first jars would wait too long for its last. */
function jobsThatFit(prepared: Whole, canning: Canning, load: Load): Job[] {
  const job = cannedJob(prepared, canning, load);
  const jars = load.reduce((sum, part) => sum + part.jars, 0);
  if (jars <= 1 || fitsAlone(job, prepared.means)) return [job];
  // two products first part from each other, then a load of one is halved
  const parts: Load[] =
    load.length > 1
      ? load.map((part) => [part])
      : evenly(jars, 2).map((some) => load.map(({ each }) => ({ each, jars: some })));
  return parts.flatMap((part) => jobsThatFit(prepared, canning, part));
}

function cannedJob(prepared: Whole, canning: Canning, load: Load): Job {
  const jars = load.reduce((sum, part) => sum + part.jars, 0);
  const portions = load.flatMap(({ each, jars: own }) => {
    const { decided, making } = each;
    const { cook } = making.activity;
    const litresPerJar = ((cook?.litresPerKg ?? 0) * decided.rawKg) / decided.ready;
    const perJar = making.activity.handsPerUnit - LIFT_A_JAR;
    const batches = cook === undefined ? [own] : batchesOver(own, litresPerJar, prepared.capacity.pots);
    return batches.map((some) => portionOf(prepared, each, some / decided.ready, some, Math.max(0, perJar) * some));
  });
  const { jar } = canning;
  return {
    portions,
    into: {
      kind: 'can',
      jars: { count: jars, unit: `${jar} jar` },
      lift: (LIFT_A_JAR / 2) * jars,
      canners: canning.canners.filter((canner) => canner.jars >= jars),
    },
    needs: [],
  };
}

/** How often a product's work is broken off to load what is ready. */
const stretchesOf = ({ capacity }: Whole, { making, decided }: Kept): number =>
  Math.ceil((making.activity.handsPerKg * decided.rawKg) / (STRETCH * capacity.hands));

/** What goes on dryer trays, a stretch of work at a time. */
function driedJobs(prepared: Whole, each: Kept): Job[] {
  const { decided, making, said } = each;
  const { activity } = making;
  const { trays } = decided;
  const hours = said.trays?.hours;
  if (trays === 0 || hours === undefined) return [];
  const room = prepared.request.kitchen.dryer?.trays ?? 1;
  const fewest = Math.max(stretchesOf(prepared, each), batchesOf(prepared, each, 1), Math.ceil(trays / room));
  const parts = Math.min(trays, fewest);
  const spread = said.trays !== undefined && said.cookMinutes !== undefined; // a sheet is spread, pieces are bagged
  return evenly(trays, parts).map((some, index) => {
    const share = some / trays;
    const work = activity.handsPerUnit * decided.ready * share;
    const into: QuietStep = {
      kind: 'dry',
      units: { count: some, unit: 'tray' },
      amount: some,
      minutes: Math.ceil(valueIn(hours.high, 'min')),
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

const needsOf = ({ making, decided }: Kept, share: number): Trimmings[] =>
  making.activity.madeOf === 'trimmings' ? [...decided.rawByLot].map(([lot, kg]) => ({ lot, kg: kg * share })) : [];

/** Runs of the freeze-dryer, each as full as its trays allow, products together. */
function freezeDriedJobs(prepared: Whole, kept: readonly Kept[]): Job[] {
  const room = prepared.capacity.freezeDryer?.trays ?? 0;
  if (room === 0) return [];
  const runs: { each: Kept; trays: number }[][] = [];
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
    const longest = Math.max(...run.map(({ each }) => valueInMinutes(each)));
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
      needs: [],
    };
  });
}

const valueInMinutes = ({ said }: Kept): number =>
  said.trays?.hours === undefined ? 0 : valueIn(said.trays.hours.high, 'min');

/** How often the pot is put on for what is cooked or blanched before it is frozen: no longer than a stretch of work. */
function potsFull(prepared: Whole, each: Kept): number {
  const { cook } = each.making.activity;
  if (cook === undefined) return 1;
  const batches = batchesOf(prepared, each, 1);
  return cook.blanch === undefined ? batches : Math.ceil((batches * cook.minutes) / STRETCH);
}

/** Packs for the freezer, a stretch of work at a time. */
function frozenJobs(prepared: Whole, each: Kept): Job[] {
  const { decided, making } = each;
  const kgPerPack = making.activity.stockPerUnit['freezer load'] ?? 0;
  const { capacity } = prepared;
  const aDay = (capacity.stock['freezer load'] ?? Number.POSITIVE_INFINITY) / capacity.days;
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
        minutes: FREEZE,
        pack: 0,
      },
      needs: [],
    };
  });
}

/** Vinegar and jelly stock. */
function steepedJobs(prepared: Whole, each: Kept): Job[] {
  const { decided, making } = each;
  const parts = Math.max(1, Math.min(decided.ready, batchesOf(prepared, each, 1)));
  return evenly(decided.ready, parts).map((some): Job => {
    const share = some / decided.ready;
    return {
      portions: [portionOf(prepared, each, share, some, making.activity.handsPerUnit * some)],
      needs: needsOf(each, share),
    };
  });
}
