import type { ScheduledTask, TaskKind, Use } from '../request/daySchedule';
import { LOOK } from './blocks';
import type { Row } from './board';
import type { Day, Fitting, PlainTask } from './day';
import { heatOf, type Job, type Portion } from './job';

/** How a kind of work goes on when nobody is there. */
const QUIET: ReadonlySet<TaskKind> = new Set(['dry', 'freeze-dry', 'freeze', 'ferment', 'stand']);

type Facts = Pick<ScheduledTask, 'what' | 'forProducts'> &
  Partial<Pick<ScheduledTask, 'raw' | 'units' | 'leastMinutes'>>;

/** One task of a block. */
export const task = (kind: TaskKind, facts: Facts, start: number, end: number): PlainTask => ({
  kind,
  ...facts,
  startMinute: start,
  endMinute: end,
  unattended: QUIET.has(kind),
});

/** What the tasks of a whole job are for. */
export function factsOf({ portions }: Job): Pick<ScheduledTask, 'what' | 'forProducts'> {
  const products = [...new Set(portions.map(({ product }) => product))];
  return { what: products.join(' and '), forProducts: products };
}

/** The tasks of a portion on the stove: cooked or blanched, then filled; jars are filled even where that takes no minutes. */
export function stoveTasks(
  { product, cook, filled }: Portion,
  { block, start }: Fitting,
  inJars: boolean,
): PlainTask[] {
  const facts = { what: product, forProducts: [product] };
  const fed = start + heatOf(cook);
  const filling = fed + (cook?.minutes ?? 0);
  const end = start + block.minutes;
  const tasks: PlainTask[] = [];
  if (fed > start) tasks.push(task('heat water', facts, start, fed));
  if (cook?.blanch !== undefined) {
    const units = { count: cook.blanch.batches, unit: 'batch' };
    tasks.push(task('blanch', { ...facts, units }, fed, filling));
  } else if (cook !== undefined) tasks.push(task('cook', facts, start, filling));
  if (end > filling || inJars) tasks.push(task('fill', { ...facts, units: filled }, filling, end));
  return tasks;
}

/** A portion is prepared, and stands for as long as its recipe says. */
export function cutTasks({ product, what, raw, soak = 0 }: Portion, { block, start }: Fitting): PlainTask[] {
  const facts = { what, forProducts: [product], raw };
  const end = start + block.minutes;
  const cut = task('prepare', facts, start, end);
  return soak > 0 ? [cut, task('stand', { what, forProducts: [product], leastMinutes: soak }, end, end + soak)] : [cut];
}

/** All tasks of a day by their start, each with what it uses. */
export function tasksOf({ placed, rows, open }: Day): ScheduledTask[] {
  const inHours = (start: number, end: number) =>
    open.some(({ startMinute: from, endMinute: to }) => from <= start && end <= to);
  const usesOf = ({ block, start }: Fitting, from: number, to: number): Use[] => {
    const middle = (from + to) / 2;
    return block.parts
      .filter(({ row, at, minutes }) => row !== LOOK && start + at <= middle && middle < start + at + minutes)
      .map(({ row, amount }) => ({ resource: (rows[row] as Row).name, used: amount }));
  };
  return placed
    .flatMap((entry) =>
      entry.tasks.map(
        (each): ScheduledTask => ({
          ...each,
          uses:
            each.uses ??
            usesOf(entry, each.startMinute, each.endMinute).filter(({ resource }) => belongsTo(each.kind, resource)),
          ...(each.unattended || inHours(each.startMinute, each.endMinute) ? {} : { throughBreak: true as const }),
        }),
      ),
    )
    .sort((one, other) => one.startMinute - other.startMinute || one.endMinute - other.endMinute);
}

/** A load keeps canner and burner busy; the hands that lift its jars in and out stand with those tasks. */
const belongsTo = (kind: TaskKind, resource: string): boolean => {
  const lifting = kind === 'load' || kind === 'unload';
  return lifting ? resource === 'hands' : kind !== 'can' || resource !== 'hands';
};
