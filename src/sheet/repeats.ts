import type { Clock } from './clock';
import type { Cell, Row } from './sheet';
import { say } from './words';

/** Two rows alike in one: as many boxes as starts, each load with its own timer. */
function joined<R extends Row>(one: R, other: R): R {
  return {
    ...one,
    starts: [...one.starts, ...other.starts],
    stove: cellsOf([...one.stove, ...other.stove]),
    canner: cellsOf([...one.canner, ...other.canner]),
    trays: cellsOf([...one.trays, ...other.trays]),
    loads: [...one.loads, ...other.loads],
    tasks: [...one.tasks, ...other.tasks],
  };
}

/** The same done at several times, said once. */
function cellsOf(cells: readonly Cell[]): Cell[] {
  const found = new Map<string, Cell>();
  for (const { times, text } of cells)
    found.set(text, { text, times: [...new Set([...(found.get(text)?.times ?? []), ...times])] });
  return [...found.values()];
}

/** The same work done again at once shares a row; with anything between, each time has its own, so that times run down. */
function withRuns<R extends Row>(rows: readonly R[]): R[] {
  const found: R[] = [];
  for (const row of rows) {
    const before = found.at(-1);
    if (before !== undefined && before.key !== '' && before.key === row.key)
      found[found.length - 1] = joined(before, row);
    else found.push(row);
  }
  return found;
}

/** Days of the same work at the same hours share their rows, one box a day. */
function withDaysAlike<R extends Row>(days: readonly (readonly R[])[], { time }: Clock): (readonly R[])[] {
  const hours = ({ starts }: Row) => [...new Set(starts.map(time))].join();
  const alike = (one: readonly Row[], other: readonly Row[]): boolean =>
    one.length === other.length &&
    one.every((row, index) => row.key === other[index]?.key && hours(row) === hours(other[index] as Row));
  const found: (readonly R[])[] = [];
  for (const day of days) {
    const before = found.at(-1);
    if (before !== undefined && alike(before, day))
      found[found.length - 1] = before.map((row, index) => joined(row, day[index] as R));
    else found.push(day);
  }
  return found;
}

/** Rows alike together, wherever nothing else comes between them, and what stands after their boxes. */
export function withRepeats<R extends Row>(rows: readonly R[], clock: Clock): R[] {
  const days = new Map<number, R[]>();
  for (const row of rows) days.set(clock.day(row.at), [...(days.get(clock.day(row.at)) ?? []), row]);
  const found = withDaysAlike([...days.values()].map(withRuns), clock);
  return found.flat().map((row) => ({ ...row, boxes: boxesOf(row, clock) }));
}

/** A time of day, a day, or both: whatever tells the starts of a row apart. */
function boxesOf({ starts }: Row, clock: Clock): string[] {
  const [first = 0] = starts;
  if (starts.length === 1) return [''];
  const sameDay = starts.every((start) => clock.day(start) === clock.day(first));
  if (sameDay) return starts.map(clock.time);
  const sameTime = starts.every((start) => clock.time(start) === clock.time(first));
  return starts.map((start) => {
    const day = clock.shortDay(clock.day(start));
    return sameTime ? day : say('day.time', { day, time: clock.time(start) });
  });
}
