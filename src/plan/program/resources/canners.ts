import type { Activity, Canning } from '../../request/activity';
import { batches, type Decision, loads, readied } from '../decisions';
import { bound, type DayTerm, type Draft, decide, limit, use } from '../draft';

/** Loads of each process in each canner: the jars they hold, and the minutes that canner and burner are busy. */
export function canners(draft: Draft): void {
  for (const [key, group] of groupsOf(draft.activities)) {
    const own = cannersFor(group);
    for (const { canner, minutes, warmUp, costPerLoad = 0 } of own) {
      decide(draft, loads(key, canner));
      use(draft, { of: 'canner', canner }, [loads(key, canner), minutes]);
      const pot = draft.capacity.vessels?.[canner];
      // its water is heated for each load, for it cooks between them
      if (pot !== undefined) use(draft, { of: 'vessel', pot }, [loads(key, canner), minutes + warmUp]);
      use(draft, { of: 'burners' }, [loads(key, canner), minutes]);
      draft.counts.cost.push([loads(key, canner), costPerLoad]);
    }
    bound(
      draft,
      { of: 'room in loads', key },
      [
        ...own.map(({ canner, jars }): DayTerm => [loads(key, canner), jars]),
        ...group.map((activity): DayTerm => [readied(activity.product), -placesOf(activity, own)]),
      ],
      { min: 0 },
    );
    freshForEachLoad(draft, key, group);
  }
  if (draft.weights.money > 0) warmUps(draft);
}

/**
 * Hot food is cooked for the load it goes into, never for two at a time: as many batches as loads (common practice).
 * Where raw packed jars may stand in the same loads, as many as the cooked jars alone would fill.
 */
function freshForEachLoad(draft: Draft, key: string, group: readonly Activity[]): void {
  // what may be kept hot in its pot is cooked once for several loads
  const cooked = group.filter(({ cook }) => cook !== undefined && cook.holdsHot === undefined);
  if (cooked.length === 0) return;
  const own = cannersFor(group);
  const all = cooked.length === group.length;
  const jars = all ? 1 : Math.max(0, ...own.map((canner) => canner.jars));
  bound(
    draft,
    { of: 'a batch for each load', key },
    [
      ...cooked.flatMap(({ product }) => draft.capacity.pots.map((_, pot): DayTerm => [batches(product, pot), jars])),
      ...(all
        ? own.map(({ canner }): DayTerm => [loads(key, canner), -1])
        : cooked.map(({ product }): DayTerm => [readied(product), -1])),
    ],
    { min: 0 },
  );
}

/** A canner's water costs what heating it does, once for all loads that it is heated for. */
function warmUps(draft: Draft): void {
  const { capacity, counts } = draft;
  for (const { canner, step, cost, terms } of warmUpsOf(draft.activities)) {
    const heated = { of: 'heated', canner, step } as const;
    decide(draft, heated);
    counts.cost.push([heated, cost]);
    // an hour or a load more than the day has, for what one more would give (see `limits`)
    const most = capacity.minutes + Math.max(60, ...terms.map(([, minutes]) => minutes));
    bound(
      draft,
      { of: 'heated before loads', canner, step },
      [...terms.map(([load, minutes]): DayTerm => [load, -minutes]), [heated, most]],
      { min: 0 },
    );
  }
}

interface WarmUp {
  readonly canner: number;
  readonly step: number;
  readonly cost: number;
  readonly terms: readonly DayTerm[];
}

/**
 * What it costs to heat the water of each canner once, where that is paid for, and for which loads, with their minutes:
 * a first step for all of them, and a further one for those that need hotter water, as hot packs do.
 */
function warmUpsOf(activities: readonly Activity[]): WarmUp[] {
  const heatings = [...groupsOf(activities)].flatMap(([key, [first]]) =>
    (first?.canning?.canners ?? []).map(({ canner, minutes, costToWarmUp = 0 }) => ({
      canner,
      cost: Math.round(costToWarmUp * 1e9) / 1e9, // the same water costs the same
      term: [loads(key, canner), minutes] as readonly [Decision, number],
    })),
  );
  return [...new Set(heatings.map(({ canner }) => canner))].flatMap((canner) => {
    const own = heatings.filter((each) => each.canner === canner);
    const costs = [...new Set([0, ...own.map(({ cost }) => cost)])].sort((one, other) => one - other);
    return costs.slice(1).map((cost, step) => ({
      canner,
      step,
      cost: cost - (costs[step] as number),
      terms: own.filter((each) => each.cost >= cost).map(({ term }) => term),
    }));
  });
}

/** The canners of a process, each with the most jars that any of its products may have in a load. */
export function cannersFor(group: readonly Activity[]): Canning['canners'] {
  const [first] = group;
  return (first?.canning?.canners ?? []).map((each, index) => ({
    ...each,
    jars: Math.max(...group.map(({ canning }) => canning?.canners[index]?.jars ?? 0)),
  }));
}

/** Places in a load that one jar takes: more than 1 where fewer of it than of others can be ready in time. */
const placesOf = ({ canning }: Activity, own: Canning['canners']): number =>
  Math.max(1, ...own.map(({ jars }, index) => jars / Math.max(1, canning?.canners[index]?.jars ?? jars)));

/** The products that may share canner loads, by their process. */
export function groupsOf(activities: readonly Activity[]): Map<string, Activity[]> {
  const groups = new Map<string, Activity[]>();
  for (const activity of activities) {
    if (activity.canning === undefined) continue;
    const { key } = activity.canning;
    groups.set(key, [...(groups.get(key) ?? []), activity]);
  }
  return groups;
}

export function cannersHeld(draft: Draft): void {
  const { canners: count, minutes, days, lead, cannersBusy = [] } = draft.capacity;
  for (let canner = 0; canner < count; canner++)
    limit(
      draft,
      { of: 'canner', canner },
      Math.max(0, minutes - Math.max(lead, cannersBusy[canner] ?? 0) - (days - 1) * lead),
    );
}
