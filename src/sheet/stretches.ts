/** Food that is prepared in several stretches, since other work comes between. */
import type { ScheduledTask } from '../plan/request/daySchedule';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';

/** Work of hands as one row shows it. */
export interface HandsWork {
  readonly task: ScheduledTask;
  /** Places of the tasks that it stands for. */
  readonly own: readonly number[];
  /** Of a portion prepared in several rows: which of them it is, and what all of them prepare. */
  readonly part?: { readonly which: 'first' | 'more' | 'last'; readonly all: Quantity<'mass'> };
}

/** Minutes between two stretches that need no row of their own: jars are lifted out, and the knife is taken up again. */
const SHORT = 10;

/** A task and what else of its portion is prepared after it, as rows: stretches with little between them are one. */
export function handsWorkFrom(tasks: readonly ScheduledTask[], index: number): HandsWork[] {
  const rows: number[][] = [];
  for (let at = index; at >= 0; at = nextOf(tasks, at)) {
    const before = tasks[rows.at(-1)?.at(-1) ?? -1];
    if (before !== undefined && (tasks[at] as ScheduledTask).startMinute - before.endMinute < SHORT)
      rows.at(-1)?.push(at);
    else rows.push([at]);
  }
  const all = rawOf(tasks, rows.flat());
  return rows.map((own, place): HandsWork => {
    const [first, last] = [tasks[own[0] as number], tasks[own.at(-1) as number]] as [ScheduledTask, ScheduledTask];
    const raw = rawOf(tasks, own);
    const task = { ...first, endMinute: last.endMinute, ...(raw === undefined ? {} : { raw }) };
    if (rows.length === 1 || all === undefined) return { task, own };
    return { task, own, part: { which: place === 0 ? 'first' : place === rows.length - 1 ? 'last' : 'more', all } };
  });
}

/** The next stretch of the same portion; below 0 where there is none. */
function nextOf(tasks: readonly ScheduledTask[], index: number): number {
  const { goesOnMinute, forProducts: names } = tasks[index] as ScheduledTask;
  if (goesOnMinute === undefined) return -1;
  return tasks.findIndex(
    ({ kind, startMinute: start, forProducts: own }, at) =>
      at > index && kind === 'prepare' && start === goesOnMinute && own.join() === names.join(),
  );
}

/** The raw weight of some tasks together. */
function rawOf(tasks: readonly ScheduledTask[], some: readonly number[]): Quantity<'mass'> | undefined {
  const [first, ...others] = some.flatMap((at) => tasks[at]?.raw ?? []);
  if (first === undefined || others.length === 0) return first;
  const { unit } = first;
  return quantityIn<'mass'>(
    others.reduce((sum, raw) => sum + valueIn(raw, unit), first.value),
    unit,
    unit,
  );
}
