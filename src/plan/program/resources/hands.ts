import { LIFT_A_JAR } from '../../figures/liftAJar';
import type { Activity } from '../../request/activity';
import { minutesBefore } from '../../schedule/hours';
import { batches, readied } from '../decisions';
import { type DayTerm, type Draft, limit, scaled, use } from '../draft';

/** Minutes of hands: for each kg that is prepared, and for each unit that is filled. */
export function hands(draft: Draft, activity: Activity): void {
  use(draft, { of: 'hands' }, ...scaled(activity, () => activity.handsPerKg), [
    readied(activity.product),
    activity.handsPerUnit,
  ]);
}

export const handsHeld = (draft: Draft): void =>
  limit(draft, { of: 'hands' }, draft.capacity.hands * draft.capacity.minutes);

/** Minutes that are taken for one of these steps: fewer rows, each still true. */
const STEP = 5;

/**
 * People cut, cook and fill what is canned before its load goes into the canner, and the load must come out before the
 * day ends: in a day's last minutes hands are of no use to it. So the hands before those minutes must do all the work
 * that needs that many minutes after it.
 */
export function handsInTime(draft: Draft): void {
  const { hands: count, windows } = draft.capacity;
  if (windows === undefined) return;
  const work = draft.activities.flatMap((activity) => workBefore(draft, activity));
  const steps = new Set(work.map(({ before }) => before).filter((before) => before > 0));
  for (const before of steps) {
    const resource = { of: 'hands in time', before } as const;
    for (const each of work) if (each.before >= before) use(draft, resource, ...each.terms);
    limit(draft, resource, count * minutesBefore(before, windows));
  }
}

interface WorkBefore {
  /** Minutes that must follow on the same day. */
  readonly before: number;
  readonly terms: readonly DayTerm[];
}

function workBefore({ capacity }: Draft, activity: Activity): WorkBefore[] {
  const { product, canning, cook, handsPerKg, handsPerUnit, soak = 0 } = activity;
  const inCanner = Math.min(...(canning?.canners ?? []).map(({ minutes }) => minutes));
  if (!Number.isFinite(inCanner)) return [];
  const step = (minutes: number) => Math.floor(minutes / STEP) * STEP;
  const stirred: DayTerm[] = cook?.stirred
    ? [
        ...capacity.pots.map((_, pot): DayTerm => [batches(product, pot), cook.minutes]),
        ...scaled(activity, () => cook.minutesPerKg ?? 0),
      ]
    : [];
  return [
    {
      before: step(inCanner),
      terms: [[readied(product), Math.max(0, handsPerUnit - LIFT_A_JAR)], ...stirred],
    },
    // what stands may do so overnight
    ...(soak > 0 ? [] : [{ before: step(inCanner + (cook?.minutes ?? 0)), terms: scaled(activity, () => handsPerKg) }]),
  ];
}
