import { longestWait } from '../check/waits';
import type { Block, Stretch } from './board';
import { type Day, latestOf, nextEnd, type Placed, put, type Retry, takeBackTo } from './day';
import { keepHot, lastEnd, NEVER, takenOnFirst } from './inWork';
import { heatOf, type Job, type Portion } from './job';
import { cutTasks, stoveTasks } from './tasksOf';

const HOLD_PREPARED = longestWait('prepared');

/**
 * The first start of a portion on the stove from which none of it waits too long for what begins at a minute: of jars
 * the first one that is filled, of trays and bags the last. What goes on by itself in the freezer can wait there.
 */
const firstStart =
  ({ cook, filled }: Portion, into: Job['into'], by: number) =>
  (block: Block): number => {
    const boils = heatOf(cook) + (cook?.minutes ?? 0);
    const fills = block.minutes - boils;
    if (into === undefined || into.kind === 'freeze-dry') return Number.NEGATIVE_INFINITY;
    if (into.kind === 'can')
      return Math.ceil(by - longestWait('filled-jar') - boils - fills / Math.max(1, filled.count) - 1e-9);
    return block.minutes === 0 ? by : by - longestWait('filled-tray') - block.minutes;
  };

/**
 * Places a portion so that it is filled by a minute and does not wait too long for it.
 *
 * @returns nothing where it is placed; otherwise the next minute worth trying, to be asked with the job off the board
 */
function placePortion(day: Day, portion: Portion, { into }: Job, by: number, from: number): Retry | undefined {
  // what is filled only waits for what it goes into
  if (portion.held?.state === 'filled') return undefined;
  const ways = day.blocks.stoves(portion);
  const cuts = day.blocks.cuts(portion);
  const { drops, soak = 0 } = portion;
  const heat = heatOf(portion.cook);
  const first = firstStart(portion, into, by);
  let next: Retry | undefined;
  // what is in work waits no longer than it may, whatever it is for
  const wait = into?.kind === 'can' ? longestWait('filled-jar') : longestWait('filled-tray');
  const last = Math.max(...ways.map(({ minutes }) => lastEnd(portion, minutes)));
  const later: Retry = by > last + wait ? NEVER : () => by + 1;
  // cooked as late as can be; earlier where it could not be prepared in time for that
  for (let latest = by; ; ) {
    const cook = latestOf(
      day,
      ways,
      portion.held === undefined ? latest : Math.min(latest, ...ways.map(({ minutes }) => lastEnd(portion, minutes))),
      (block) => Math.max(from, first(block)),
    );
    if (cook === undefined) return portion.held === undefined ? (next ?? (() => nextEnd(day, ways, by, from))) : later;
    const stove = (): Placed => ({
      ...cook,
      tasks: takenOnFirst(stoveTasks(portion, cook, into?.kind === 'can'), portion.held),
      ...(cuts.length === 0 ? { drops } : {}),
    });
    if (cuts.length === 0) {
      const mark = day.placed.length;
      put(day, stove());
      const kept = keepHot(day, portion, cook.start + cook.block.minutes);
      if (kept !== undefined) takeBackTo(day, mark);
      return kept;
    }
    // the water may heat while the vegetable is still cut: the stove takes no hands before that is done
    const fed = cook.start + heat;
    const cutBy = fed - soak;
    const cut = latestOf(day, cuts, cutBy, ({ minutes }) => Math.max(from, cutBy - HOLD_PREPARED - minutes));
    if (cut !== undefined) {
      put(day, stove());
      put(day, { ...cut, tasks: cutTasks(portion, cut), drops });
      return undefined;
    }
    const stretches = day.board.stretches(day.blocks.cutting(portion), cutBy, cutBy - HOLD_PREPARED, from);
    if (typeof stretches !== 'number') {
      put(day, stove());
      putDownBetween(day, portion, stretches);
      return undefined;
    }
    // each minute later leaves all hands one minute more
    next ??= () => by + Math.max(1, Math.ceil(stretches / day.means.hands));
    const earlier = latestOf(day, cuts, cutBy - HOLD_PREPARED, () => from);
    if (earlier === undefined) return next;
    const readyAt = earlier.start + earlier.block.minutes + soak;
    latest = Math.min(latest - 1, readyAt + HOLD_PREPARED + cook.block.minutes - heat);
  }
}

/** Cuts a portion in several stretches: something else calls for the hands in between. Each takes its share of the food. */
function putDownBetween(day: Day, portion: Portion, stretches: readonly Stretch[]): void {
  const all = stretches.reduce((sum, { minutes, amount }) => sum + minutes * amount, 0);
  stretches.forEach(({ start, minutes, amount }, index) => {
    const block = day.blocks.handwork(minutes, amount);
    const raw = { ...portion.raw, value: (portion.raw.value * minutes * amount) / all };
    const next = stretches[index + 1];
    const tasks = cutTasks({ ...portion, raw, ...(next === undefined ? {} : { soak: 0 }) }, { block, start });
    if (next === undefined) put(day, { block, start, tasks, drops: portion.drops });
    else put(day, { block, start, tasks: tasks.map((each) => ({ ...each, goesOnMinute: next.start })) });
  });
}

/** Places all portions of a job so that they are filled when the next step starts; answers as `placePortion`. */
export function placePortions(day: Day, job: Job, by: number, from: number): Retry | undefined {
  const mark = day.placed.length;
  for (const portion of [...job.portions].reverse()) {
    const next = placePortion(day, portion, job, by, from);
    if (next !== undefined) {
      takeBackTo(day, mark);
      return next;
    }
  }
  return undefined;
}

/** When the portions could be filled at the earliest, each on its own and with every wait allowed. */
export function earliestFilled(day: Day, job: Job, from: number): number | undefined {
  let ready = from;
  for (const portion of job.portions) {
    const cutting = day.blocks.cutting(portion);
    const done = cutting.work <= 0 ? from : (day.board.doneBy(cutting, from) ?? Number.POSITIVE_INFINITY);
    const cut = done + (portion.soak ?? 0);
    const lit = Math.max(from, cut - heatOf(portion.cook));
    ready = Math.max(ready, nextEnd(day, day.blocks.stoves(portion), cut, lit));
  }
  return Number.isFinite(ready) ? ready : undefined;
}

/** Places portions as early as they can be filled; answers when they are. */
export function placeAlone(day: Day, job: Job, from: number, filled: number): number | undefined {
  for (let by = filled; by <= day.horizon; ) {
    const next = placePortions(day, job, by, from);
    if (next === undefined) return by;
    by = Math.max(by + 1, next());
  }
  return undefined;
}
