/** What is in work already when the rest of a day begins: loads that run, and food that must go on. */
import { longestWait } from '../check/waits';
import type { Held } from '../request/activity';
import { type Day, type Placed, type PlainTask, put, type Retry } from './day';
import type { Job, Portion, RunningLoad } from './job';
import { task } from './tasksOf';

/** It fits at no later minute either. */
export const NEVER: Retry = () => Number.POSITIVE_INFINITY;

/** Puts the loads that run on an empty day, each until it is done, and lifts its jars out. */
export function putRunning(day: Day): void {
  const now = day.windows[0]?.startMinute ?? 0;
  for (const canner of day.means.hotCanners ?? []) {
    // a pot that is the canner too is heated for each load, whatever is in it now
    if (day.means.vessels?.[canner] !== undefined) continue;
    const what = day.means.canners[canner] as string;
    const hot = { ...task('heat canner', { what, forProducts: [] }, now, now), was: 'running' as const };
    put(day, {
      block: { minutes: 0, parts: [] },
      start: now,
      tasks: [{ ...hot, uses: [{ resource: what, used: 1 }] }],
    });
    day.cannerEnds[canner] = now;
  }
  for (const load of day.means.running ?? []) putLoad(day, load);
}

function putLoad(day: Day, { products, canner, jars, until, lift }: RunningLoad): void {
  const { blocks, board, windows } = day;
  const now = windows[0]?.startMinute ?? 0;
  const facts = { what: products.join(' and '), forProducts: products, units: { count: jars, unit: 'jar' } };
  const run = blocks.running(canner, Math.max(0, until - now));
  const was = { was: 'running' as const };
  if (run.minutes > 0) put(day, { block: run, start: now, tasks: [{ ...task('can', facts, now, until), ...was }] });
  day.cannerEnds[canner] = until;
  const out = blocks.handwork(Math.max(1, Math.ceil(lift)));
  // as the load ends, or as soon as somebody is there
  const start = board.earliest(out, Math.max(now, until - out.minutes));
  const lifted = start === undefined ? [] : [{ ...task('unload', facts, start, start + out.minutes), ...was }];
  if (start !== undefined) put(day, { block: out, start, tasks: lifted });
}

/** The food in work that a job goes on with. */
export const heldOf = ({ portions }: Job): Held | undefined => portions.find(({ held }) => held !== undefined)?.held;

/** A task that takes food in work on. */
export function takenOn(each: PlainTask, held: Held | undefined): PlainTask {
  if (held === undefined) return each;
  // what stands by its recipe waits from when it has stood long enough
  const since = held.state === 'prepared' ? held.by - longestWait('prepared') : held.since;
  return { ...each, was: held.state, sinceMinute: since };
}

/** The tasks of a portion, of which the first takes on what is in work; water may be heated for it before. */
export function takenOnFirst(tasks: readonly PlainTask[], held: Held | undefined): PlainTask[] {
  const first = tasks.findIndex(({ kind }) => kind !== 'heat water');
  return tasks.map((each, index) => (index === first ? takenOn(each, held) : each));
}

/** Whether what is filled already goes on too late at a minute; nothing where the job holds nothing filled. */
export function tooLateFor(job: Job, start: number): boolean {
  const held = heldOf(job);
  return held?.state === 'filled' && start > held.by;
}

/**
 * Keeps the pot of food that is hot on its burner, from now or from when it was filled from last, until the last jar is
 * filled.
 *
 * @returns nothing where it is placed; otherwise that it fits at no minute
 */
export function keepHot(day: Day, { product, held }: Portion, filled: number): Retry | undefined {
  if (held?.state !== 'hot') return undefined;
  const before = day.placed.filter(({ tasks }) =>
    tasks.some((each) => each.kind === 'keep hot' && each.was === 'hot' && each.forProducts.includes(product)),
  );
  const start = Math.max(day.windows[0]?.startMinute ?? 0, ...before.map((each) => each.start + each.block.minutes));
  if (filled <= start) return undefined;
  const row = (each: Placed | undefined) => each?.block.parts[0]?.row;
  const own = before.at(-1);
  for (const block of day.blocks.pots(held.litres ?? 0, filled - start)) {
    if (own !== undefined && block.parts[0]?.row !== row(own)) continue;
    if (day.board.latest(block, filled, start) === undefined) continue;
    const facts = { what: product, forProducts: [product] };
    put(day, { block, start, tasks: [takenOn(task('keep hot', facts, start, filled), held)] });
    return undefined;
  }
  return NEVER;
}

/** The last minute that what is in work may be on the stove, or be filled, so that none of it waits too long. */
export const lastEnd = ({ held, cook }: Portion, minutes: number): number => {
  if (held === undefined || held.state === 'filled') return Number.POSITIVE_INFINITY;
  // what may not be kept hot is filled at once
  const atOnce = held.by <= held.since;
  return held.state === 'hot' && !atOnce ? held.by : held.by + minutes - (cook?.blanch?.heat ?? 0);
};
