import type { DaySchedule, Window } from '../plan/request/daySchedule';
import { digits } from './spec';

export const HOUR = 60;
/** Hours that a break between two days, and what goes on after the last, take on the axis. */
const BREAK = 1;
export const EPSILON = 1e-9;

/** The axis of hours, on which breaks are short. */
export interface Axis {
  /** Hours by the clock, and where they stand on the axis; straight between two. */
  readonly knots: readonly (readonly [hour: number, at: number])[];
  readonly end: number;
  readonly ticks: readonly { readonly hour: number; readonly at: number }[];
  readonly breaks: readonly { readonly from: number; readonly to: number; readonly text: string }[];
}

export function axisOf({ windows, tasks, makespan }: DaySchedule): Axis {
  const last = windows[windows.length - 1] as Window;
  const open = windows.map((window) => ({
    from: window.startMinute / HOUR,
    to: (window === last ? Math.max(window.endMinute, makespan) : window.endMinute) / HOUR,
  }));
  const knots: (readonly [number, number])[] = [];
  const breaks: { from: number; to: number; text: string }[] = [];
  let at = 0;
  let before: number | undefined;
  for (const { from, to } of open) {
    if (before !== undefined && from > before) {
      const wide = Math.min(BREAK, from - before);
      breaks.push({ from: at, to: at + wide, text: `${digits(from - before, 1)} h break` });
      at += wide;
    }
    knots.push([from, at], [to, at + to - from]);
    at += to - from;
    before = to;
  }
  const [end] = knots[knots.length - 1] as readonly [number, number];
  if (tasks.some((task) => task.endMinute / HOUR > end + EPSILON)) {
    breaks.push({ from: at, to: at + BREAK, text: 'after work' });
    knots.push([end + BREAK, at + BREAK]);
    at += BREAK;
  }
  const worked = open.reduce((sum, { from, to }) => sum + to - from, 0);
  const step = [1, 2, 4].find((each) => worked / each <= MOST_TICKS) ?? 8;
  const whole = open.flatMap(({ from, to }) =>
    Array.from(
      { length: Math.floor(to / step) - Math.ceil(from / step) + 1 },
      (_, index) => (Math.ceil(from / step) + index) * step,
    ),
  );
  return { knots, end: at, breaks, ticks: whole.map((hour) => ({ hour, at: placeOf(knots, hour) })) };
}

const MOST_TICKS = 16;

/** Where an hour stands on the axis; what lies past its end stands at the end. */
export function placeOf(knots: Axis['knots'], hour: number): number {
  const next = knots.findIndex(([knot]) => knot >= hour - EPSILON);
  if (next === -1) return (knots[knots.length - 1] as readonly [number, number])[1];
  const [hourAfter, after] = knots[next] as readonly [number, number];
  const [hourBefore, before] = knots[Math.max(0, next - 1)] as readonly [number, number];
  if (hourAfter === hourBefore) return after;
  return before + ((hour - hourBefore) / (hourAfter - hourBefore)) * (after - before);
}
