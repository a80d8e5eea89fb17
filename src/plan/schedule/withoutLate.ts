/** A program that makes no more of each product than an order of work got done in its hours. */
import type { Kept } from '../program/decide';
import type { DayProgram } from '../program/decisions';
import type { DaySchedule, ScheduledTask, Window } from '../request/daySchedule';

/** Whether a task is done, or goes on by itself, within the hours. */
const inTime = ({ startMinute: start, endMinute: end, unattended }: ScheduledTask, last: number): boolean =>
  unattended ? start < last : end <= last;

/** Units of a product that come in time, by the minutes of its tasks. */
function unitsInTime({ tasks }: DaySchedule, { making, decided }: Kept, last: number): number {
  const own = tasks.filter(({ forProducts: products }) => products.includes(making.label));
  const minutes = (some: readonly ScheduledTask[]) =>
    some.reduce((sum, { startMinute: start, endMinute: end }) => sum + end - start, 0);
  const all = minutes(own);
  return all === 0
    ? decided.ready
    : Math.floor((decided.ready * minutes(own.filter((task) => inTime(task, last)))) / all);
}

/** The program with the most of each late product that came in time; of the others as before. */
export function withoutLate(
  program: DayProgram,
  { kept, schedule }: { readonly kept: readonly Kept[]; readonly schedule: DaySchedule },
  windows: readonly Window[],
): DayProgram {
  const last = (windows[windows.length - 1] as Window).endMinute;
  const most = new Map(
    kept.map((each) => [each.making.activity.product, [unitsInTime(schedule, each, last), each.decided.ready]]),
  );
  return {
    ...program,
    bounds: program.bounds.map((bound) => {
      if (bound.of.of !== 'most') return bound;
      const [units, ready] = most.get(bound.of.product) ?? [];
      return units === undefined || units === ready
        ? bound
        : { ...bound, max: Math.min(bound.max ?? Number.POSITIVE_INFINITY, units) };
    }),
  };
}
