/** The clock of the kitchen: hours of work, breaks, and machines that still run. */
import { fail } from '../../errors/StillroomError';
import { valueIn } from '../../quantity/scale';
import type { BusyUntil } from '../../recipes/kitchenFields';
import { customary } from '../figures/customary';
import type { Window } from '../request/daySchedule';
import { DAY } from '../request/planFields';
import type { Kitchen } from '../request/planInput';

/** Minutes after midnight that the work begins. */
export const startOf = ({ start = customary('start') }: Pick<Kitchen, 'start'>): number => start;

/** The first minute from the start of a day at which it is this time of day. */
export const fromStart = (kitchen: Pick<Kitchen, 'start'>, clock: number): number =>
  (clock - startOf(kitchen) + DAY) % DAY;

/** Minutes from the start until which a machine still runs; nothing where it is free at the start. */
export function busyMinutes(kitchen: Pick<Kitchen, 'start'>, until: BusyUntil | undefined): number | undefined {
  if (until === undefined) return undefined;
  const minutes = 'after' in until ? Math.ceil(until.after) : fromStart(kitchen, until.clock);
  return minutes === 0 ? undefined : minutes;
}

type Hours = Pick<Kitchen, 'hours' | 'start' | 'breaks' | 'now'>;

/** Whole minutes of each day, breaks included; the next day starts 24 h later. */
const daysOf = ({ hours }: Hours): { readonly from: number; readonly to: number }[] =>
  hours.map((day, index) => ({ from: index * DAY, to: index * DAY + Math.floor(valueIn(day, 'min') + 1e-6) }));

/**
 * Whole minutes of the hours of work, from the start of the first day; a break parts a day into several windows. Of a rest
 * of a day those from now on.
 */
export function windowsOf(kitchen: Hours): Window[] {
  const { now = 0 } = kitchen;
  const days = daysOf(kitchen);
  const rests = restsOf(kitchen, Math.max(...days.map(({ to }) => to)));
  return days.flatMap((whole, day) =>
    rests
      .reduce<{ from: number; to: number }[]>(
        (left, rest) =>
          left
            .flatMap(({ from, to }) => [
              { from, to: Math.min(to, Math.max(from, rest.from)) },
              { from: Math.max(from, Math.min(to, rest.to)), to },
            ])
            .filter(({ from, to }) => to > from),
        [whole],
      )
      .map(({ from, to }) => ({ day, startMinute: Math.max(from, now), endMinute: to }))
      .filter(({ startMinute, endMinute }) => endMinute > startMinute),
  );
}

/** Every break of every day, up to a minute. */
const restsOf = (kitchen: Hours, until: number): { readonly from: number; readonly to: number }[] =>
  (kitchen.breaks ?? []).flatMap((rest) => {
    const [first, minutes] = [fromStart(kitchen, rest.at), Math.ceil(valueIn(rest.for, 'min') - 1e-6)];
    return Array.from({ length: Math.ceil(until / DAY) }, (_, day) => ({
      from: first + day * DAY,
      to: first + day * DAY + minutes,
    }));
  });

/** A time of day as people write it: `8:05`, `20:00`. */
const clockText = (minutes: number): string =>
  `${Math.floor((minutes % DAY) / 60)}:${String(minutes % 60).padStart(2, '0')}`;

/** Refuses breaks that begin outside the hours of every day, and breaks that leave no hours. */
export function checkBreaks(kitchen: Hours): void {
  const start = startOf(kitchen);
  const days = daysOf(kitchen);
  const shown = [...new Set(days.map(({ from, to }) => `${clockText(start)} to ${clockText(start + to - from)}`))];
  const inHours = `a time within the hours of work, ${shown.join(' or ')}`;
  kitchen.breaks?.forEach(({ at, for: rest }, index) => {
    const path = `kitchen.breaks[${index}]`;
    const [from, minutes] = [fromStart(kitchen, at), valueIn(rest, 'min')];
    const longest = Math.max(...days.map((day) => day.to - day.from));
    if (from >= longest) fail('CONTRADICTION', `${path}.at`, clockText(at), inHours);
    if (from + minutes > longest)
      fail(
        'CONTRADICTION',
        `${path}.for`,
        `${rest.value} ${rest.unit}`,
        `a break that ends within the hours of work, ${shown.join(' or ')}`,
      );
  });
  if (kitchen.breaks !== undefined && windowsOf(kitchen).length === 0)
    fail(
      'CONTRADICTION',
      'kitchen.breaks',
      kitchen.breaks,
      `breaks that leave some of the hours of work, ${shown.join(' or ')}`,
    );
}
