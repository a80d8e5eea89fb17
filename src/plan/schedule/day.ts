import type { ScheduledTask, Window } from '../request/daySchedule';
import type { Effort } from '../solver/effort';
import { type Blocks, blocksOf, rowsOf } from './blocks';
import { type Block, type Board, emptyBoard, type Row } from './board';
import type { Means, Trimmings } from './job';

/** A block that stands on the board, and the tasks that it is made of. */
export interface Placed {
  readonly block: Block;
  readonly start: number;
  readonly tasks: readonly PlainTask[];
  /** What has fallen off when it ends. */
  readonly drops?: readonly Trimmings[];
}
/** A task whose resources are those of its block, unless it names its own. */
export type PlainTask = Omit<ScheduledTask, 'uses'> & Partial<Pick<ScheduledTask, 'uses'>>;
/** A block and the minute it fits at. */
export type Fitting = Pick<Placed, 'block' | 'start'>;
/** The next minute worth trying, where a job did not fit at one. */
export type Retry = () => number;

/** A day being filled job by job: who is busy when, and with what. */
export interface Day {
  readonly means: Means;
  /** The hours of work, and the same with overtime after the last of them. */
  readonly windows: readonly Window[];
  readonly open: readonly Window[];
  readonly horizon: number;
  readonly rows: readonly Row[];
  readonly blocks: Blocks;
  /** Changed by `put` and `takeBackTo` only. */
  readonly board: Board;
  readonly placed: Placed[];
  /** When the last load of each canner ends. */
  readonly cannerEnds: number[];
  /** Kg of each lot's trimmings that jobs have taken. */
  readonly takenTrimmings: Map<number, number>;
}

/**
 * An empty day of this kitchen.
 *
 * @param windows - the hours of work
 * @param overtime - minutes after the last of them that work may run on
 * @param quiet - minutes after that for what goes on by itself
 */
export function emptyDay(
  means: Means,
  windows: readonly Window[],
  overtime: number,
  quiet: number,
  effort?: Pick<Effort, 'looks'>,
  blocks: Blocks = blocksOf(means),
): Day {
  const last = windows[windows.length - 1] as Window;
  const horizon = last.endMinute + overtime + quiet;
  const open = [...windows.slice(0, -1), { ...last, endMinute: last.endMinute + overtime }];
  const rows = rowsOf(means);
  return {
    means,
    windows,
    open,
    horizon,
    rows,
    blocks,
    board: emptyBoard(rows, open, horizon, effort),
    placed: [],
    cannerEnds: means.canners.map(() => Number.NEGATIVE_INFINITY),
    takenTrimmings: new Map(),
  };
}

/** Puts a block on the board. */
export function put({ board, placed }: Day, entry: Placed): void {
  board.take(entry.block, entry.start);
  placed.push(entry);
}

/** Takes back what was put last, until `count` blocks are left. */
export function takeBackTo({ board, placed }: Day, count: number): void {
  while (placed.length > count) {
    const { block, start } = placed.pop() as Placed;
    board.giveBack(block, start);
  }
}

/** The last way to do something that ends by a minute, and starts not before another. */
export function latestOf(
  { board }: Day,
  ways: readonly Block[],
  by: number,
  from: (block: Block) => number,
): Fitting | undefined {
  let best: Fitting | undefined;
  for (const block of ways) {
    const start = board.latest(block, by, best === undefined ? from(block) : Math.max(from(block), best.start + 1));
    if (start !== undefined) best = { block, start };
  }
  return best;
}

/** The first end after a minute of any way to do something. */
export function nextEnd({ board }: Day, ways: readonly Block[], after: number, from: number): number {
  let end = Number.POSITIVE_INFINITY;
  for (const block of ways) {
    const { minutes } = block;
    const start = board.earliest(block, Math.max(from, after - minutes + 1), end - minutes - 1);
    if (start !== undefined) end = start + minutes;
  }
  return end;
}

/** The first start from a minute on at which somebody is there to load what goes on by itself. */
export function attendedStart({ board, open }: Day, block: Block, from: number): number | undefined {
  for (let at = from; ; ) {
    const start = board.earliest(block, at);
    if (start === undefined || open.some((window) => window.startMinute <= start && start <= window.endMinute))
      return start;
    const later = open.find((window) => window.startMinute > start);
    if (later === undefined) return undefined;
    at = later.startMinute;
  }
}

/** From when on the trimmings that a job needs have fallen off; nothing where they never do. */
export function released({ placed, takenTrimmings, windows }: Day, needs: readonly Trimmings[]): number | undefined {
  let from = windows[0]?.startMinute ?? 0;
  for (const { lot, kg } of needs) {
    let left = kg + (takenTrimmings.get(lot) ?? 0) - 1e-6;
    const dropped = placed
      .flatMap(({ block, start, drops = [] }) =>
        drops.filter((drop) => drop.lot === lot).map((drop) => ({ at: start + block.minutes, kg: drop.kg })),
      )
      .sort((one, other) => one.at - other.at);
    for (const drop of dropped) {
      if (left <= 0) break;
      left -= drop.kg;
      from = Math.max(from, drop.at);
    }
    if (left > 0) return undefined;
  }
  return from;
}
