import { longestWait } from '../check/waits';
import { lifting } from './blocks';
import { type Day, latestOf, nextEnd, type Placed, put, type Retry, takeBackTo } from './day';
import { heldOf, takenOn, tooLateFor } from './inWork';
import type { CannerChoice, CanStep, Job } from './job';
import { placePortions } from './placePortions';
import { factsOf, task } from './tasksOf';

const HOLD_HOT = longestWait('hot-canner');

/**
 * A canner is cold before its first load of a day, and where its last load came out longer before the work for the next
 * one is begun than hot water may stand.
 */
const isCold = ({ cannerEnds }: Day, { canner, warmUp }: CannerChoice, begun: number): boolean =>
  warmUp > 0 && begun > (cannerEnds[canner] as number) + HOLD_HOT;

/** When the first pot for a load goes on, or its first jar is filled: of what has been placed since a mark. */
function begun({ placed }: Day, mark: number): number {
  let first = Number.POSITIVE_INFINITY;
  for (let index = mark; index < placed.length; index++)
    for (const { kind, startMinute } of (placed[index] as Placed).tasks)
      if (startMinute < first && (kind === 'cook' || kind === 'fill')) first = startMinute;
  return first;
}

/** How a load is filled: what places that for a start, the first minute it can be, and the end it must beat. */
interface Filling {
  readonly fill: (start: number) => Retry | undefined;
  readonly filled: number;
  readonly beat: number;
}

/** Places a load in one canner as early as its portions can be filled in time, ending before `beat`; or nothing. */
function placeLoad(
  day: Day,
  job: Job,
  step: CanStep,
  choice: CannerChoice,
  { fill, filled, beat }: Filling,
): number | undefined {
  const { means, board, blocks, placed } = day;
  // a pot that is the canner as well cooks between its loads: it is heated for each of them, and holds nothing meanwhile
  const heated = means.vessels?.[choice.canner] === undefined ? 0 : choice.warmUp;
  const block = blocks.load(step, choice, heated);
  const heat = blocks.heat(choice);
  const free = Math.max(0, day.cannerEnds[choice.canner] as number);
  const lift = lifting(step, choice.minutes);
  const facts = { ...factsOf(job), units: step.jars };
  const held = heldOf(job);
  const canner = { what: means.canners[choice.canner] as string, forProducts: facts.forProducts };
  const heating = (at: number) => task('heat canner', canner, at, at + choice.warmUp);
  for (let at = Math.max(filled, heated === 0 ? free : heated); ; ) {
    const first = board.earliest(block, at - heated);
    const start = (first ?? 0) + heated;
    const end = start + choice.minutes;
    if (first === undefined || end >= beat || tooLateFor(job, start)) return undefined;
    const mark = placed.length;
    const load = (): void => {
      const can = task('can', facts, start, end);
      put(day, {
        block,
        start: first,
        tasks: [
          ...(heated > 0 ? [heating(first)] : []),
          task('load', facts, start, start + lift),
          held?.state === 'filled' ? takenOn(can, held) : can,
          task('unload', facts, end - lift, end),
        ],
      });
    };
    // while a pot is heated for its load, the jars are still filled: it keeps its burner meanwhile
    if (heated > 0) load();
    const next = fill(start);
    if (next === undefined && heated === 0) load();
    const work = Math.min(start, begun(day, mark));
    if (next === undefined && (heated > 0 || !isCold(day, choice, work))) return start;
    const longest = HOLD_HOT + start - work;
    const hot =
      next === undefined
        ? latestOf(day, [heat], start, ({ minutes }) => Math.max(free, start - longest - minutes))
        : undefined;
    if (hot !== undefined) {
      put(day, { ...hot, tasks: [heating(hot.start)] });
      return start;
    }
    takeBackTo(day, mark);
    at = Math.max(start + 1, next === undefined ? nextEnd(day, [heat], start, free) : next());
  }
}

/** Places a load of a job in the canner that has it done first. */
export const placeCanning = (day: Day, job: Job, step: CanStep, from: number, filled: number): boolean =>
  placeSoonest(day, job, step, {
    fill: (start) => placePortions(day, job, start, from),
    filled,
    beat: Number.POSITIVE_INFINITY,
  });

/** Places a load, filled in any way, in the canner that has it done first. */
export function placeSoonest(day: Day, job: Job, step: CanStep, filling: Filling): boolean {
  let best: { choice: CannerChoice; start: number; own: readonly Placed[] } | undefined;
  let { beat } = filling;
  for (const choice of step.canners) {
    const mark = day.placed.length;
    const start = placeLoad(day, job, step, choice, { ...filling, beat });
    if (start === undefined) continue;
    best = { choice, start, own: day.placed.slice(mark) };
    takeBackTo(day, mark);
    beat = start + choice.minutes;
  }
  if (best === undefined) return false;
  const { choice, start, own } = best;
  for (const each of own) put(day, each);
  day.cannerEnds[choice.canner] = start + choice.minutes;
  return true;
}
