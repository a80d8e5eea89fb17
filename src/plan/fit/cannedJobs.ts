import { LIFT_A_JAR } from '../figures/liftAJar';
import type { Planned } from '../program/decide';
import { amountIn, loads } from '../program/decisions';
import { cannersFor } from '../program/resources/canners';
import type { Canning } from '../request/activity';
import type { CanStep, Job, Portion } from '../schedule/job';
import { batchesOver, fitsAlone, fitsTogether } from '../schedule/loadsThatFit';
import { evenly, needsOf, portionOf, type Whole } from './portion';

/** One load: jars of one product, or of several that share its process. */
type Load = readonly { readonly each: Planned; readonly jars: number }[];

/** Canner loads, each prepared, cooked and filled for itself: no more than one load's food stands ready at a time. */
export function cannedJobs(prepared: Whole, kept: readonly Planned[], values: ReadonlyMap<string, number>): Job[] {
  const groups = new Map<string, Planned[]>();
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
    const shared = sharedOut(group, planned);
    const jobsOf = onceForAlike((load) => jobsThatFit(prepared, canning, load));
    return [
      ...shared.filter((load) => hotOf(load) === undefined).flatMap(jobsOf),
      ...hotJobs(prepared, shared, jobsOf),
    ];
  });
}

/** The same jobs for loads that are alike, found out once. */
function onceForAlike(jobsOf: (load: Load) => Job[]): (load: Load) => Job[] {
  const known = new Map<string, Job[]>();
  return (load) => {
    const key = load.map(({ each, jars }) => `${each.making.activity.product} ${jars}`).join();
    const jobs = known.get(key) ?? jobsOf(load);
    known.set(key, jobs);
    return jobs.map((job) => ({ ...job }));
  };
}

/** Jars shared out over loads: whole loads of one product where there are enough, what is left over together. */
export function sharedOut(group: readonly Planned[], planned: readonly number[]): Load[] {
  const places = [...planned].sort((one, other) => one - other);
  const most = places[places.length - 1] ?? 1;
  const all = group.reduce((sum, { decided }) => sum + decided.ready, 0);
  if (group.length > 1 && places[0] === most) {
    const whole = group.flatMap((each): Load[] =>
      Array.from({ length: Math.floor(each.decided.ready / most) }, () => [{ each, jars: most }]),
    );
    const rests = group.map((each) => ({ each, jars: each.decided.ready % most })).filter(({ jars }) => jars > 0);
    const together: { each: Planned; jars: number }[][] = [];
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
    const load: { each: Planned; jars: number }[] = [];
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
  // half a batch of jam does not set
  const whole = load.some(({ each }) => each.making.activity.cook?.batchLitres !== undefined);
  if (jars <= 1 || whole || fitsAlone(job, prepared.means)) return [job];
  // two products first part from each other, then a load of one is halved
  const parts: Load[] =
    load.length > 1
      ? load.map((part) => [part])
      : evenly(jars, 2).map((some) => load.map(({ each }) => ({ each, jars: some })));
  return parts.flatMap((part) => jobsThatFit(prepared, canning, part));
}

/** The product of a load that may be kept hot in its pot. */
function hotOf(load: Load): Planned | undefined {
  const [part, ...others] = load;
  const { cook } = part?.each.making.activity ?? {};
  const keeps = cook?.holdsHot !== undefined && cook.blanch === undefined && cook.batchLitres === undefined;
  return keeps && others.length === 0 ? part?.each : undefined;
}

/** Loads of what may be kept hot: as many from one pot as it holds, and as can be filled while it stays hot. */
function hotJobs(prepared: Whole, loads: readonly Load[], jobsOf: (load: Load) => Job[]): Job[] {
  const products = new Set(loads.flatMap((load) => hotOf(load) ?? []));
  return [...products].flatMap((each) => {
    const jobs: Job[] = [];
    let rest = loads.filter((load) => hotOf(load) === each);
    while (rest.length > 0) {
      let [some, count] = [jobsOf(rest[0] as Load), 1];
      for (let more = 2; more <= rest.length; more++) {
        const job = togetherJob(prepared, each, rest.slice(0, more), jobsOf);
        if (job === undefined || !fitsTogether(job, prepared.means)) break;
        [some, count] = [[job], more];
      }
      jobs.push(...some);
      rest = rest.slice(count);
    }
    return jobs;
  });
}

/** Several loads from one pot; nothing where no pot holds them, or where one of them alone is too much for a pot. */
function togetherJob(
  prepared: Whole,
  each: Planned,
  loads: readonly Load[],
  jobsOf: (load: Load) => Job[],
): Job | undefined {
  const { decided, making } = each;
  const { cook } = making.activity;
  const jars = loads.flatMap((load) => load.map((part) => part.jars));
  const all = jars.reduce((sum, some) => sum + some, 0);
  const litres = ((cook?.litresPerKg ?? 0) * decided.rawKg * all) / decided.ready;
  const apart = loads.flatMap(jobsOf);
  if (litres > Math.max(...prepared.capacity.pots) || apart.length !== loads.length) return undefined;
  const [first, ...others] = apart as [Job, ...Job[]];
  const [own] = first.portions as [Portion];
  return {
    ...first,
    portions: [portionOf(prepared, each, all / decided.ready, own.filled.count, own.fill)],
    needs: apart.flatMap(({ needs }) => needs),
    together: {
      hot: cook?.holdsHot ?? 0,
      more: others.map(({ portions, into }) => {
        const [{ filled, fill }] = portions as readonly [Portion];
        return { filled, fill, into: into as CanStep };
      }),
      apart,
    },
  };
}

function cannedJob(prepared: Whole, canning: Canning, load: Load): Job {
  const jars = load.reduce((sum, part) => sum + part.jars, 0);
  const portions = load.flatMap(({ each, jars: own }) => {
    const { decided, making } = each;
    const { cook } = making.activity;
    const litresPerJar = ((cook?.litresPerKg ?? 0) * decided.rawKg) / decided.ready;
    const perJar = making.activity.handsPerUnit - LIFT_A_JAR;
    const one = cook === undefined || cook.batchLitres !== undefined;
    const batches = one ? [own] : batchesOver(own, litresPerJar, prepared.capacity.pots);
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
