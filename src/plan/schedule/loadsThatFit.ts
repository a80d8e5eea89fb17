import type { Activity } from '../request/activity';
import { emptyDay } from './day';
import { type CanStep, type Job, type Means, minutesAlone, type Portion, potMinutes } from './job';
import { place, placeOne } from './place';

/** Minutes that a day with one load has left over, for parts that are rounded up. */
const SPARE = 30;

/** Whether a kitchen with nothing else to do can fill and run this load without a jar that waits too long. */
export const fitsAlone = (job: Job, means: Means): boolean =>
  place(emptyDay(means, [{ day: 0, startMinute: 0, endMinute: minutesAlone(job) + SPARE }], 0, 0), fresh(job));

/** The same as work that nothing waits for yet. */
const fresh = (job: Job): Job => ({
  ...job,
  portions: job.portions.map(({ held: _, ...portion }) => portion),
});

/** Whether it can fill and run all loads of one pot while that stays hot. */
export const fitsTogether = (job: Job, means: Means): boolean =>
  placeOne(emptyDay(means, [{ day: 0, startMinute: 0, endMinute: minutesAlone(job) + SPARE }], 0, 0), job);

/**
 * Jars of each batch when a load is cooked in several pots side by side: the fewest of the largest pots, as even as
 * they allow, the larger batches first. Where all pots together are too small the last pot is filled again.
 */
export function batchesOver(jars: number, litresPerJar: number, pots: readonly number[]): number[] {
  const most = pots
    .map((litres) => Math.floor(litres / litresPerJar + 1e-6))
    .filter((held) => held > 0)
    .sort((one, other) => other - one);
  const [largest] = most;
  if (largest === undefined || largest >= jars) return [jars];
  let count = 1;
  for (let held = largest; held < jars && count < most.length; count++) held += most[count] as number;
  const batches: number[] = [];
  let left = jars;
  // the smallest pot of them first, so that what it cannot hold goes into the larger ones
  for (let pot = count - 1; pot >= 0; pot--) {
    const some = Math.min(most[pot] as number, Math.ceil(left / (pot + 1)));
    batches.unshift(some);
    left -= some;
  }
  while (left > 0) {
    const some = Math.min(largest, left);
    batches.push(some);
    left -= some;
  }
  return batches.filter((some) => some > 0).sort((one, other) => other - one);
}

/** A load of some jars of one product at the rich end of its yields, as the scheduler sees it. */
function loadOf(
  { product, supplies, cook, handsPerKg, handsPerUnit, canning }: Activity,
  jars: number,
  { pots }: Means,
  lift: number,
): { portions: Portion[]; into: CanStep } {
  const kgPerJar = Math.max(...supplies.map(({ unitsPerKg }) => 1 / unitsPerKg.high));
  const litresPerJar = (cook?.litresPerKg ?? 0) * kgPerJar;
  const sizes = pots.map(({ litres }) => litres);
  const batches = cook === undefined ? [jars] : batchesOver(jars, litresPerJar, sizes);
  return {
    portions: batches.map((some) => ({
      product: `${product}`,
      what: '',
      raw: { value: kgPerJar * some, unit: 'kg' },
      filled: { count: some, unit: 'jar' },
      prepare: handsPerKg * kgPerJar * some,
      fill: Math.max(0, handsPerUnit - 2 * lift) * some,
      ...(cook === undefined
        ? {}
        : { cook: { minutes: potMinutes(cook, kgPerJar * some), litres: litresPerJar * some, stirred: cook.stirred } }),
      drops: [],
    })),
    into: {
      kind: 'can',
      jars: { count: jars, unit: 'jar' },
      lift: lift * jars,
      canners: (canning?.canners ?? []).map(({ canner, minutes, warmUp, throughBreaks }) => ({
        canner,
        minutes,
        warmUp,
        ...(throughBreaks ? { throughBreaks } : {}),
      })),
    },
  };
}

/**
 * The products with no more jars in a load than this kitchen can cook, fill and put into the canner before the first of
 * them has waited too long; and each with loads only for itself where two of one process cannot be ready together.
 *
 * @param lift - minutes of one pair of hands to put one jar in, or to lift it out
 */
export function loadsThatFit(activities: readonly Activity[], means: Means, lift: number): Activity[] {
  const cappedOf = (activity: Activity): Activity => {
    const { canning, supplies } = activity;
    if (canning === undefined || !supplies.some(({ unitsPerKg }) => unitsPerKg.high > 0)) return activity;
    const fits = (jars: number) => fitsAlone({ ...loadOf(activity, jars, means, lift), needs: [] }, means);
    const wanted = Math.max(1, ...canning.canners.map(({ jars }) => jars));
    let [enough, tooMany] = fits(wanted) ? [wanted, wanted + 1] : [1, wanted];
    while (tooMany - enough > 1) {
      const jars = Math.floor((enough + tooMany) / 2);
      if (fits(jars)) enough = jars;
      else tooMany = jars;
    }
    const canners = canning.canners.map((each) => ({ ...each, holds: each.jars, jars: Math.min(each.jars, enough) }));
    return { ...activity, canning: { ...canning, canners } };
  };
  const capped = activities.map(cappedOf);
  const together = (one: Activity, other: Activity): boolean => {
    const [a, b] = [loadOf(one, 1, means, lift), loadOf(other, 1, means, lift)];
    const into: CanStep = { ...a.into, jars: { ...a.into.jars, count: 2 }, lift: 2 * lift };
    return fitsAlone({ portions: [...a.portions, ...b.portions], into, needs: [] }, means);
  };
  const cookedWith = ({ canning, product }: Activity): Activity[] =>
    capped.filter((each) => each.product !== product && each.canning?.key === canning?.key && each.cook !== undefined);
  return capped.map((activity) => {
    const { canning, cook, product } = activity;
    if (canning === undefined || cook === undefined) return activity;
    if (cookedWith(activity).every((other) => together(activity, other))) return activity;
    return { ...activity, canning: { ...canning, key: `${canning.key} for product ${product} alone` } };
  });
}
