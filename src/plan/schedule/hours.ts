import type { Window } from '../request/daySchedule';

/** Each day from its first minute of work to its last, the breaks in between with it. */
export function daysOf(windows: readonly Window[]): Window[] {
  const days: Window[] = [];
  for (const { day, startMinute: from, endMinute: to } of windows) {
    const before = days[days.length - 1];
    if (before?.day === day) days[days.length - 1] = { day, startMinute: before.startMinute, endMinute: to };
    else days.push({ day, startMinute: from, endMinute: to });
  }
  return days;
}

/** The minute at which `worked` minutes of work have passed: what lies between the windows does not count. */
export function clockAt(worked: number, windows: readonly Window[]): number {
  let left = worked;
  for (const { startMinute: from, endMinute: to } of windows) {
    if (left <= to - from) return from + left;
    left -= to - from;
  }
  return (windows[windows.length - 1]?.endMinute ?? 0) + left;
}

/** Minutes of work that have passed by a minute of the clock; after the last window every minute counts. */
export function workedBy(clock: number, windows: readonly Window[]): number {
  const last = windows[windows.length - 1] as Window;
  return windows.reduce(
    (sum, { startMinute: from, endMinute: to }) => sum + Math.max(0, Math.min(clock, to) - from),
    Math.max(0, clock - last.endMinute),
  );
}

/** Minutes of work on all days, but for those in the last `minutes` of each day. */
export function minutesBefore(minutes: number, windows: readonly Window[]): number {
  const ends = new Map(daysOf(windows).map(({ day, endMinute }) => [day, endMinute - minutes]));
  return windows.reduce(
    (sum, { day, startMinute, endMinute }) =>
      sum + Math.max(0, Math.min(endMinute, ends.get(day) ?? endMinute) - startMinute),
    0,
  );
}
