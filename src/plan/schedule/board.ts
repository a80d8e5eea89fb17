import type { Effort } from '../makes/effort';
import type { Window } from '../request/daySchedule';
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

/** What is still free of every row in every minute. */
export interface Board {
  readonly horizon: number;
  /** The first start from `from` on at which the block fits; none before the horizon ends. */
  earliest(block: Block, from: number): number | undefined;
  /** The last start at which the block fits and ends by `by`, not before `from`. */
  latest(block: Block, by: number, from: number): number | undefined;
  take(block: Block, start: number): void;
  giveBack(block: Block, start: number): void;
}

/** Amounts are compared with this much slack: kilograms are no whole numbers. */
const SLACK = 1e-6;

/**
 * An empty board of so many minutes: what works in the hours only is free in the windows, and so on.
 *
 * @param effort - what the minutes that are looked at are taken off
 */
export function emptyBoard(
  rows: readonly Row[],
  windows: readonly Window[],
  horizon: number,
  effort: Pick<Effort, 'looks'> = { looks: 0 },
): Board {
  const free: (Float64Array | undefined)[] = rows.map(() => undefined);
  const rowFree = (row: number): Float64Array => {
    const known = free[row];
    if (known !== undefined) return known;
    const { capacity, open, busyUntil = 0 } = rows[row] as Row;
    const made = new Float64Array(horizon).fill(open === 'always' ? capacity : 0);
    if (open !== 'always')
      for (const { from, to } of open === 'in hours' ? windows : daysOf(windows)) made.fill(capacity, from, to);
    if (busyUntil > 0) made.fill(0, 0, Math.ceil(busyUntil));
    free[row] = made;
    return made;
  };

  /** The minute in which a part does not fit, the last one or the first; none where it fits. */
  const lastClash = ({ row, amount, at, minutes }: Part, start: number): number | undefined => {
    const left = rowFree(row);
    effort.looks -= minutes;
    for (let minute = start + at + minutes - 1; minute >= start + at; minute--)
      if ((left[minute] as number) < amount - SLACK) return minute;
    return undefined;
  };
  const firstClash = ({ row, amount, at, minutes }: Part, start: number): number | undefined => {
    const left = rowFree(row);
    effort.looks -= minutes;
    for (let minute = start + at; minute < start + at + minutes; minute++)
      if ((left[minute] as number) < amount - SLACK) return minute;
    return undefined;
  };

  const change = ({ parts }: Block, start: number, sign: 1 | -1): void => {
    for (const { row, amount, at, minutes } of parts) {
      const left = rowFree(row);
      for (let minute = start + at; minute < start + at + minutes; minute++)
        left[minute] = (left[minute] as number) + sign * amount;
    }
  };

  return {
    horizon,
    earliest: ({ minutes, parts }, from) => {
      let start = from;
      for (let settled = false; !settled; ) {
        if (start + minutes > horizon) return undefined;
        settled = true;
        for (const part of parts) {
          const clash = lastClash(part, start);
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
          const clash = firstClash(part, start);
          if (clash === undefined) continue;
          start = clash - part.at - part.minutes;
          settled = false;
          break;
        }
      }
      return start;
    },
    take: (block, start) => change(block, start, -1),
    giveBack: (block, start) => change(block, start, 1),
  };
}
