import type { Window } from '../request/daySchedule';
import type { Effort } from '../solver/effort';
import { daysOf } from './hours';

/** One thing that can be busy, and how much of it there is. */
export interface Row {
  readonly name: string;
  readonly capacity: number;
  /** When it is free: while somebody works, from the first to the last minute of a day, or at night as well. */
  readonly open: 'in hours' | 'all day' | 'always';
  /** Minute until which it still does what it did before. */
  readonly busyUntil?: number;
}

/** Of one row, so much of it from a minute on, for so long; minutes count from the start of the block. */
export interface Part {
  readonly row: number;
  readonly amount: number;
  readonly at: number;
  readonly minutes: number;
}

/** Work that runs as one piece, without a break. */
export interface Block {
  readonly minutes: number;
  readonly parts: readonly Part[];
}

/** Work that may be put down and taken up again: minutes of one, shared by as many as are free. */
export interface Loose {
  readonly row: number;
  readonly work: number;
  /** No stretch is shorter, unless all of it takes fewer minutes. */
  readonly least: number;
}

/** A stretch of such work. */
export interface Stretch {
  readonly start: number;
  readonly minutes: number;
  readonly amount: number;
}

/** What is still free of every row in every minute. */
export interface Board {
  readonly horizon: number;
  /** The first start from `from` on, up to `most`, at which the block fits; none before the horizon ends. */
  earliest(block: Block, from: number, most?: number): number | undefined;
  /** The last start at which the block fits and ends by `by`, not before `from`. */
  latest(block: Block, by: number, from: number): number | undefined;
  /**
   * The last stretches for loose work that end by `by`: each ends after `after` and starts no sooner than `from`. Where
   * there are too few, the minutes of work that find no place.
   */
  stretches(loose: Loose, by: number, after: number, from: number): readonly Stretch[] | number;
  /** A minute before which loose work begun at `from` is not done; none where it is not before the horizon. */
  doneBy(loose: Loose, from: number): number | undefined;
  take(block: Block, start: number): void;
  giveBack(block: Block, start: number): void;
}

/** Amounts are compared with this much slack: kilograms are no whole numbers. */
const SLACK = 1e-6;

/** What is left of a row, run by run: `left[i]` from minute `from[i]` until the next run. */
interface Runs {
  readonly from: number[];
  readonly left: number[];
}

/** What a look into the board and at each run costs, in looks at a minute. */
const LOOK_UP = 8;
const LOOK = 2;

function emptyRuns({ capacity, open, busyUntil = 0 }: Row, windows: readonly Window[], horizon: number): Runs {
  const hours =
    open === 'always' ? [{ startMinute: 0, endMinute: horizon }] : open === 'in hours' ? windows : daysOf(windows);
  const free = Math.ceil(busyUntil);
  const [from, left] = [[0], [0]];
  for (const each of hours) {
    const begin = Math.max(each.startMinute, free);
    if (begin >= each.endMinute) continue;
    if (from[from.length - 1] === begin) left[left.length - 1] = capacity;
    else {
      from.push(begin);
      left.push(capacity);
    }
    from.push(each.endMinute);
    left.push(0);
  }
  return { from, left };
}

/** The run that a minute is in. */
function runAt(from: readonly number[], minute: number): number {
  let [low, high] = [0, from.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((from[middle] as number) <= minute) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Takes an amount from the runs between two minutes, or gives it back. */
function changeRuns({ from, left }: Runs, begin: number, end: number, amount: number): void {
  const cut = (minute: number): number => {
    const run = runAt(from, minute);
    if (from[run] === minute) return run;
    from.splice(run + 1, 0, minute);
    left.splice(run + 1, 0, left[run] as number);
    return run + 1;
  };
  const first = cut(begin);
  const last = cut(end);
  for (let run = first; run < last; run++) left[run] = (left[run] as number) + amount;
  // runs that are alike again are one
  for (const run of [last, first])
    if (run > 0 && left[run] === left[run - 1]) {
      from.splice(run, 1);
      left.splice(run, 1);
    }
}

type Looks = Pick<Effort, 'looks'>;

/** The last minute in which a part does not fit; none where it fits. */
function lastClash(
  { from, left }: Runs,
  { amount, at, minutes }: Part,
  start: number,
  horizon: number,
  effort: Looks,
): number | undefined {
  if (minutes <= 0) return undefined;
  const first = start + at;
  const end = first + minutes;
  let run = runAt(from, end - 1);
  let clash: number | undefined;
  const begun = run;
  for (; run >= 0; run--) {
    if ((left[run] as number) < amount - SLACK) {
      const until = Math.min(from[run + 1] ?? horizon, end);
      clash = until - 1 >= first ? until - 1 : undefined;
      break;
    }
    if ((from[run] as number) <= first) break;
  }
  effort.looks -= LOOK_UP + LOOK * (begun - run);
  return clash;
}
/** The first minute in which a part does not fit. */
function firstClash(
  { from, left }: Runs,
  { amount, at, minutes }: Part,
  start: number,
  effort: Looks,
): number | undefined {
  if (minutes <= 0) return undefined;
  const first = start + at;
  const end = first + minutes;
  let run = runAt(from, first);
  let clash: number | undefined;
  const begun = run;
  for (; run < from.length && (from[run] as number) < end; run++) {
    if ((left[run] as number) < amount - SLACK) {
      clash = Math.max(from[run] as number, first);
      break;
    }
  }
  effort.looks -= LOOK_UP + LOOK * (run - begun);
  return clash;
}

function lastStretches(
  { from: begins, left }: Runs,
  { work, least }: Omit<Loose, 'row'>,
  by: number,
  [after, from]: readonly [number, number],
  effort: Looks,
): readonly Stretch[] | number {
  const stretches: Stretch[] = [];
  let [rest, end] = [work, by];
  for (let run = runAt(begins, by - 1); run >= 0 && rest > SLACK && end > Math.max(after, from); run--) {
    effort.looks -= LOOK;
    const begin = Math.max(begins[run] as number, from);
    const amount = Math.floor((left[run] as number) + SLACK);
    // the last bit of it has as long as is worth the while: the stretches after it have that much less to do
    const worth = Math.min(least, Math.ceil(work / amount - SLACK));
    const minutes = Math.min(end - begin, Math.max(worth, Math.ceil(rest / amount - SLACK)));
    if (amount > 0 && minutes >= worth) {
      stretches.unshift({ start: end - minutes, minutes, amount });
      rest -= minutes * amount;
    }
    end = begin;
  }
  return rest > SLACK ? rest : stretches;
}

function firstDone({ from: begins, left }: Runs, work: number, from: number, horizon: number): number | undefined {
  let rest = work;
  for (let run = runAt(begins, from); run < begins.length; run++) {
    const begin = Math.max(begins[run] as number, from);
    const end = begins[run + 1] ?? horizon;
    const amount = Math.floor((left[run] as number) + SLACK);
    if (amount > 0 && amount * (end - begin) >= rest - SLACK) return begin + Math.ceil(rest / amount - SLACK);
    rest -= amount * (end - begin);
  }
  return undefined;
}

/**
 * An empty board of `horizon` minutes: what works in the hours only is free in the windows, and so on.
 *
 * @param effort - what the minutes that are looked at are taken off
 */
export function emptyBoard(
  rows: readonly Row[],
  windows: readonly Window[],
  horizon: number,
  effort: Pick<Effort, 'looks'> = { looks: 0 },
): Board {
  const free: (Runs | undefined)[] = rows.map(() => undefined);
  const runsOf = (row: number): Runs => {
    const known = free[row];
    if (known !== undefined) return known;
    const made = emptyRuns(rows[row] as Row, windows, horizon);
    free[row] = made;
    return made;
  };

  const change = ({ parts }: Block, start: number, sign: 1 | -1): void => {
    for (const { row, amount, at, minutes } of parts)
      if (minutes > 0) changeRuns(runsOf(row), start + at, start + at + minutes, sign * amount);
  };

  return {
    horizon,
    earliest: ({ minutes, parts }, from, most = Number.POSITIVE_INFINITY) => {
      let start = from;
      const last = Math.min(most, horizon - minutes);
      for (let settled = false; !settled; ) {
        if (start > last) return undefined;
        settled = true;
        for (const part of parts) {
          const clash = lastClash(runsOf(part.row), part, start, horizon, effort);
          if (clash === undefined) continue;
          // past the minute that clashes; what stood before may clash again
          start = clash + 1 - part.at;
          settled = false;
          break;
        }
      }
      return start;
    },
    latest: ({ minutes, parts }, by, from) => {
      let start = Math.min(by, horizon) - minutes;
      for (let settled = false; !settled; ) {
        if (start < from) return undefined;
        settled = true;
        for (const part of parts) {
          const clash = firstClash(runsOf(part.row), part, start, effort);
          if (clash === undefined) continue;
          start = clash - part.at - part.minutes;
          settled = false;
          break;
        }
      }
      return start;
    },
    stretches: (loose, by, after, from) => lastStretches(runsOf(loose.row), loose, by, [after, from], effort),
    doneBy: ({ row, work }, from) => firstDone(runsOf(row), work, from, horizon),
    take: (block, start) => change(block, start, -1),
    giveBack: (block, start) => change(block, start, 1),
  };
}
