import { longestWait } from '../check/waits';
import type { Use } from '../request/daySchedule';
import type { Block, Row } from './board';
import { type Day, latestOf, type Placed, type PlainTask, put, type Retry, takeBackTo } from './day';
import type { CanStep, Job, LaterLoad, Together } from './job';
import { placeCanning, placeSoonest } from './placeCanning';
import { task } from './tasksOf';

/** First loads that are tried before each load gets its own pot, and minutes between them. */
const MOST_TRIES = 6;
const STEP = 20;

/** A pot on its burner, cooked for several loads. */
interface HotPot {
  /** Its portion on the stove, and the minute it is cooked. */
  readonly stove: Placed;
  readonly cooked: number;
  /** The minute the last jar so far is filled. */
  readonly emptied: number;
}

/** One pot for several loads, each filled from it while it stays hot; false where no such order is found. */
export function placeTogether(day: Day, job: Job, together: Together, from: number, filled: number): boolean {
  const ends = [...day.cannerEnds];
  const mark = day.placed.length;
  for (let tries = 0, at = filled; tries < MOST_TRIES; tries++, at += STEP) {
    if (placeAll(day, job, together, from, at)) return true;
    takeBackTo(day, mark);
    ends.forEach((end, canner) => {
      day.cannerEnds[canner] = end;
    });
  }
  return false;
}

function placeAll(day: Day, job: Job, together: Together, from: number, filled: number): boolean {
  const mark = day.placed.length;
  if (!placeCanning(day, job, job.into as CanStep, from, filled)) return false;
  const at = day.placed.findIndex(({ tasks }, index) => index >= mark && tasks.some(({ kind }) => kind === 'cook'));
  const stove = day.placed[at] as Placed;
  const cooked = stove.tasks.find(({ kind }) => kind === 'cook')?.endMinute as number;
  let pot: HotPot = { stove, cooked, emptied: stove.start + stove.block.minutes };
  for (const load of together.more) {
    const emptied = placeLater(day, job, load, pot, cooked + together.hot);
    if (emptied === undefined) return false;
    pot = { ...pot, emptied };
  }
  day.placed[at] = { ...stove, tasks: hotTasks(day, pot) };
  return true;
}

/** Places a further load; answers the minute that its last jar is filled. */
function placeLater(day: Day, job: Job, load: LaterLoad, pot: HotPot, hotUntil: number): number | undefined {
  const { placed, board, blocks } = day;
  const wait = longestWait('filled-jar');
  const fills = blocks.fills(load.fill);
  const fill = (start: number): Retry | undefined => {
    const by = Math.min(start, hotUntil);
    // the first jar must not wait too long, and the pot fills one load after the other
    const first = ({ minutes }: Block) =>
      Math.max(pot.emptied, Math.ceil(start - wait - minutes / Math.max(1, load.filled.count) - 1e-9));
    const found = latestOf(day, fills, by, first);
    const next = () => start + 1;
    if (found === undefined) return next;
    const end = found.start + found.block.minutes;
    const hot = blocks.hot(pot.stove.block, end - pot.emptied);
    if (board.latest(hot, end, pot.emptied) === undefined) return next;
    put(day, { block: hot, start: pot.emptied, tasks: [] });
    const product = job.portions[0]?.product as string;
    const facts = { what: product, forProducts: [product], units: load.filled };
    put(day, { ...found, tasks: [task('fill', facts, found.start, end)] });
    return undefined;
  };
  const before = placed.length;
  const longest = Math.max(...load.into.canners.map(({ minutes }) => minutes));
  const done = placeSoonest(day, job, load.into, { fill, filled: pot.emptied, beat: hotUntil + wait + longest + 1 });
  if (!done) takeBackTo(day, before);
  const filled = placed.slice(before).flatMap(({ tasks }) => tasks.filter(({ kind }) => kind === 'fill'));
  return done ? filled[0]?.endMinute : undefined;
}

/** The tasks of the portion on the stove: cooked, its first load filled, and kept hot until the last jar is. */
function hotTasks({ rows }: Day, { stove: { block, tasks }, cooked, emptied }: HotPot): Placed['tasks'] {
  const usesOf = (hands: boolean): Use[] =>
    block.parts
      .map(({ row, amount }) => ({ resource: (rows[row] as Row).name, used: amount }))
      .filter(({ resource }) => (resource === 'hands') === hands);
  const [cook] = tasks as [PlainTask];
  return [
    // the person who stirs it is done when it is cooked: the last hands are those that fill
    ...tasks.map((each) => (each.kind === 'fill' ? { ...each, uses: usesOf(true).slice(-1) } : each)),
    { ...task('keep hot', { what: cook.what, forProducts: cook.forProducts }, cooked, emptied), uses: usesOf(false) },
  ];
}
