import type { ScheduledTask } from '../request/daySchedule';
import { type BrokenRule, NEAR as CLOSE, rule } from './brokenRule';
import { longestWait, type WaitId } from './waits';

/** What was in work when the rest of a day began goes on before it has waited too long. */
export function takenOn(task: ScheduledTask): BrokenRule[] {
  const { kind, what, was, sinceMinute: since, startMinute: start, endMinute: end } = task;
  if (was === undefined || was === 'running' || since === undefined) return [];
  const filled: WaitId = kind === 'can' ? 'filled-jar' : 'filled-tray';
  const most = longestWait(was === 'prepared' ? 'prepared' : was === 'hot' ? 'hot-sauce' : filled);
  const waited = (was === 'hot' ? end : start) - since;
  return waited > most + CLOSE
    ? [rule('wait', start, `${what}: ${was} since minute ${since}, then waits ${waited} min, at most ${most}`)]
    : [];
}

/** A jar, and the minute it is filled. */
export interface FilledJar {
  readonly product: string;
  readonly minute: number;
}
/** A load of some products, the jars it holds, and the minute it begins. */
export interface JarLoad {
  readonly products: readonly string[];
  readonly places: number;
  readonly start: number;
}

/**
 * Finds each jar a place in a load of its product that begins within the wait. Jars of one product are alike, so which
 * jar goes where is free: the most jars that can be placed at all are (augmenting paths on the jars and loads).
 *
 * @returns the jars that no load takes in time, and the loads that then stay short of jars
 */
export function placedInTime(
  jars: readonly FilledJar[],
  loads: readonly JarLoad[],
  wait: number,
): { readonly waiting: readonly FilledJar[]; readonly empty: readonly JarLoad[] } {
  const NEAR = 1e-6;
  const taken: number[][] = loads.map(() => []);
  const possible = jars.map(({ product, minute }) =>
    loads.flatMap(({ products, start }, load) =>
      products.includes(product) && start >= minute - NEAR && start <= minute + wait + NEAR ? [load] : [],
    ),
  );
  const find = (jar: number, seen: Set<number>): boolean =>
    (possible[jar] as number[]).some((load) => {
      if (seen.has(load)) return false;
      seen.add(load);
      const held = taken[load] as number[];
      if (held.length < (loads[load] as JarLoad).places) {
        held.push(jar);
        return true;
      }
      const moved = held.findIndex((other) => find(other, seen));
      if (moved < 0) return false;
      held[moved] = jar;
      return true;
    });
  const waiting = jars.filter((_, jar) => !find(jar, new Set()));
  return { waiting, empty: loads.filter(({ places }, load) => (taken[load] as number[]).length < places) };
}
