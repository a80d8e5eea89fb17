import { LIFT_A_JAR } from '../makes/work';
import type { Kept } from '../program/decide';
import { amountIn, loads } from '../program/decisions';
import { cannersFor } from '../program/resources/canners';
import type { Canning } from '../request/activity';
import type { Job } from './job';
import { batchesOver, fitsAlone } from './loadsThatFit';
import { evenly, needsOf, portionOf, type Whole } from './portion';

/** One load: jars of one product, or of several that share its process. */
type Load = readonly { readonly each: Kept; readonly jars: number }[];

/** Canner loads, each prepared, cooked and filled for itself: no more than one load's food stands ready at a time. */
export function cannedJobs(prepared: Whole, kept: readonly Kept[], values: ReadonlyMap<string, number>): Job[] {
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
      Array.from({ length: amountIn(values, loads(canning.key, canner)) }, () => jars),
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
    needs: load.flatMap(({ each, jars: own }) => needsOf(each, own / each.decided.ready)),
  };
}
