import type { DaySchedule, ScheduledTask, TaskKind, Window } from '../request/daySchedule';
import { type BrokenRule, by, NEAR, rule } from './brokenRule';
import { boils, canners, jars } from './checkVessels';
import { longestWait } from './waits';

/** What is wrong with an order of work by its tasks alone. */
export function brokenRules(schedule: Pick<DaySchedule, 'tasks' | 'windows' | 'resources'>): BrokenRule[] {
  const products = [...new Set(schedule.tasks.flatMap((task) => task.products))];
  return [
    ...overlaps(schedule),
    ...schedule.tasks.flatMap((task) => hoursOf(task, schedule.windows)),
    ...products.flatMap((product) => stepsOf(product, schedule.tasks)),
    ...canners(schedule.tasks),
    ...schedule.tasks.flatMap((task) => boils(task, schedule.tasks)),
    ...jars(schedule.tasks),
  ];
}

/** More of a resource in use than there is: looked at whenever a task starts. */
function overlaps({ tasks, resources }: Pick<DaySchedule, 'tasks' | 'resources'>): BrokenRule[] {
  const have = new Map(resources.map(({ resource, amount = Number.POSITIVE_INFINITY }) => [resource, amount]));
  const used = new Map<string, { start: number; end: number; amount: number }[]>();
  for (const { start, end, uses } of tasks) {
    for (const { resource, amount } of uses)
      used.set(resource, [...(used.get(resource) ?? []), { start, end, amount }]);
  }
  return [...used].flatMap(([resource, own]) => {
    const most = have.get(resource);
    if (most === undefined) return [rule('overlap', own[0]?.start ?? 0, `${resource}: not among the resources`)];
    return [...new Set(own.map(({ start }) => start))].flatMap((minute) => {
      const busy = own.reduce(
        (sum, { start, end, amount }) => (start <= minute && minute < end ? sum + amount : sum),
        0,
      );
      return busy > most + NEAR ? [rule('overlap', minute, `${resource}: ${busy} in use, there is ${most}`)] : [];
    });
  });
}

/**
 * Work stands inside one of the windows; what goes on by itself is at least started inside one. Only a freeze-dryer may be
 * loaded after hours, when its last run is done: the trays wait for it in the freezer.
 */
function hoursOf({ kind, what, start, end, unattended }: ScheduledTask, windows: readonly Window[]): BrokenRule[] {
  if (end < start) return [rule('order', start, `${kind} ${what}: ends before it starts`)];
  if (kind === 'freeze-dry') return [];
  const until = unattended ? start : end;
  return windows.some(({ from, to }) => from <= start + NEAR && until <= to + NEAR)
    ? []
    : [rule('hours', start, `${kind} ${what}: ${unattended ? 'started' : 'done'} when nobody is there`)];
}

/** The steps of one product in their order, each portion within its waits. */
function stepsOf(product: string, tasks: readonly ScheduledTask[]): BrokenRule[] {
  const own = (...kinds: TaskKind[]) =>
    tasks.filter((task) => kinds.includes(task.kind) && task.products.includes(product));
  const [prepared, cooked, filled] = [own('prepare').sort(by('end')), own('cook', 'blanch'), own('fill')];
  const quiet = own('dry', 'freeze').sort(by('start'));
  const next = [cooked, filled, quiet].find((some) => some.length > 0) ?? [];
  const broken: BrokenRule[] = [];
  /** Portions are alike, so the one that came first goes on first. */
  const paired = (before: readonly ScheduledTask[], after: readonly ScheduledTask[], wait: number, done: string) => {
    if (before.length === 0 || after.length === 0) return;
    if (before.length !== after.length)
      broken.push(
        rule(
          'order',
          (before[0] as ScheduledTask).end,
          `${product}: ${done} ${before.length} times, then ${after[0]?.kind} ${after.length} times`,
        ),
      );
    after.slice(0, before.length).forEach(({ start, kind }, index) => {
      const { end } = before[index] as ScheduledTask;
      if (start < end - NEAR) broken.push(rule('order', start, `${product}: ${kind} before it is ${done}`));
      else if (start > end + wait + NEAR)
        broken.push(rule('wait', end, `${product}: ${done}, then waits ${start - end} min, at most ${wait}`));
    });
  };
  paired(prepared, [...next].sort(by('start')), longestWait('prepared'), 'prepared');
  paired([...cooked].sort(by('end')), [...filled].sort(by('start')), 0, 'cooked');
  if (quiet.length > 0) paired([...filled].sort(by('end')), quiet, longestWait('filled-tray'), 'filled');
  for (const run of own('freeze-dry')) {
    const late = [...prepared, ...cooked, ...filled].every(({ end }) => end > run.start + NEAR);
    if (late && prepared.length > 0)
      broken.push(rule('order', run.start, `${product}: freeze-dried before it is prepared`));
  }
  own('pack')
    .sort(by('start'))
    .forEach((pack, index) => {
      const dry = own('dry', 'freeze-dry').filter(({ end }) => end <= pack.start + NEAR).length;
      if (dry <= index) broken.push(rule('order', pack.start, `${product}: packed before it is dry`));
    });
  return broken;
}
