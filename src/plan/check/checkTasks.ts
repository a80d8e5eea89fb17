import type { DaySchedule, ScheduledTask, TaskKind, Window } from '../request/daySchedule';
import { type BrokenRule, NEAR, rule } from './brokenRule';
import { stepsOf } from './checkSteps';
import { boils, canners, cold, jars, lifted } from './checkVessels';
import { takenOn } from './checkWaits';

/** What is wrong with an order of work by its tasks alone. */
export function brokenRules(schedule: Pick<DaySchedule, 'tasks' | 'windows' | 'resources'>): BrokenRule[] {
  const { tasks } = schedule;
  const products = [...new Set(tasks.flatMap((task) => task.forProducts))];
  return [
    ...overlaps(schedule),
    ...busy(schedule),
    ...people(tasks),
    ...tasks.flatMap((task) => hoursOf(task, schedule.windows)),
    ...products.flatMap((product) => stepsOf(product, tasks)),
    ...tasks.flatMap(takenOn),
    ...canners(tasks),
    ...cold(tasks),
    ...tasks.flatMap((task) => [...lifted(task, tasks), ...boils(task, tasks)]),
    ...jars(tasks),
  ];
}

/** More of a resource in use than there is: looked at whenever a task starts. */
function overlaps({ tasks, resources }: Pick<DaySchedule, 'tasks' | 'resources'>): BrokenRule[] {
  const have = new Map(
    resources.map(({ resource, available: amount = Number.POSITIVE_INFINITY }) => [resource, amount]),
  );
  const used = new Map<string, { start: number; end: number; amount: number }[]>();
  for (const { startMinute: start, endMinute: end, uses } of tasks) {
    for (const { resource, used: amount } of uses) {
      const own = used.get(resource);
      if (own === undefined) used.set(resource, [{ start, end, amount }]);
      else own.push({ start, end, amount });
    }
  }
  return [...used].flatMap(([resource, own]) => {
    const most = have.get(resource);
    if (most === undefined) return [rule('overlap', own[0]?.start ?? 0, `${resource}: not among the resources`)];
    return [...new Set(own.map(({ start }) => start))].flatMap((minute) => {
      const inUse = own.reduce(
        (sum, { start, end, amount }) => (start <= minute && minute < end ? sum + amount : sum),
        0,
      );
      return inUse > most + NEAR ? [rule('overlap', minute, `${resource}: ${inUse} in use, there is ${most}`)] : [];
    });
  });
}

/** A machine that still runs does nothing else. */
function busy({ tasks, resources }: Pick<DaySchedule, 'tasks' | 'resources'>): BrokenRule[] {
  return resources.flatMap(({ resource, busyUntilMinute: busyUntil = 0 }) =>
    tasks
      .filter(
        ({ startMinute: start, uses }) => start < busyUntil - NEAR && uses.some((use) => use.resource === resource),
      )
      .map(({ kind, what, startMinute: start }) =>
        rule('overlap', start, `${kind} ${what}: the ${resource} still runs until minute ${busyUntil}`),
      ),
  );
}

/** Nobody does two things at once, and each task that names people names as many as the hands it takes. */
function people(tasks: readonly ScheduledTask[]): BrokenRule[] {
  const named = tasks.filter(({ who, startMinute: start, endMinute: end }) => who !== undefined && end > start);
  const few = named.flatMap(({ kind, what, startMinute: start, who = [], uses }) => {
    const hands = uses.find(({ resource }) => resource === 'hands')?.used ?? 0;
    return new Set(who).size === hands
      ? []
      : [rule('overlap', start, `${kind} ${what}: ${hands} pairs of hands, and ${who.length} people`)];
  });
  const all = [...new Set(named.flatMap(({ who = [] }) => who))];
  const twice = all.flatMap((name) => {
    const own = named
      .filter(({ who = [] }) => who.includes(name))
      .sort((one, other) => one.startMinute - other.startMinute);
    return own.flatMap(({ startMinute: start }, index) =>
      index > 0 && (own[index - 1] as ScheduledTask).endMinute > start + NEAR
        ? [rule('overlap', start, `${name}: does two things at once`)]
        : [],
    );
  });
  return [...few, ...twice];
}

/** What may go on through a break, where it takes no hands: it stands on the stove. */
const ON_THE_STOVE: ReadonlySet<TaskKind> = new Set(['heat canner', 'heat water', 'cook', 'keep hot', 'can']);

const dayOf = ({ day, startMinute: from }: Window): number => day ?? Math.floor(from / (24 * 60));

/**
 * Work stands inside one of the windows; what goes on by itself is at least started inside one; what stands on the stove
 * and is said to go on through a break may, on one day, where it takes no hands. Only a freeze-dryer may be loaded after
 * hours, when its last run is done: the trays wait for it in the freezer.
 */
function hoursOf(task: ScheduledTask, windows: readonly Window[]): BrokenRule[] {
  const { kind, what, startMinute: start, endMinute: end, unattended, throughBreak, uses, was } = task;
  if (end < start) return [rule('order', start, `${kind} ${what}: ends before it starts`)];
  // a load that runs already ends when it ends
  if (kind === 'freeze-dry' || was === 'running') return [];
  const until = unattended ? start : end;
  if (windows.some(({ startMinute: from, endMinute: to }) => from <= start + NEAR && until <= to + NEAR)) return [];
  const hands = uses.some(({ resource }) => resource === 'hands');
  if (throughBreak && !hands && ON_THE_STOVE.has(kind)) {
    const days = new Set(windows.map(dayOf));
    const onOneDay = [...days].some((day) => {
      const own = windows.filter((window) => dayOf(window) === day);
      return (
        Math.min(...own.map(({ startMinute: from }) => from)) <= start + NEAR &&
        end <= Math.max(...own.map(({ endMinute: to }) => to)) + NEAR
      );
    });
    if (onOneDay) return [];
  }
  return [rule('hours', start, `${kind} ${what}: ${unattended ? 'started' : 'done'} when nobody is there`)];
}
