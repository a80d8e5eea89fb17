import type { ScheduledTask } from '../plan/request/daySchedule';
import { EPSILON } from './timelineAxis';

/** One row of the chart. */
export interface Lane {
  readonly resource: string;
  /** As the axis names it: nothing for a further row of the same resource. */
  readonly label: string;
  readonly tasks: readonly ScheduledTask[];
}

const QUIET: readonly ScheduledTask['kind'][] = ['dry', 'freeze-dry', 'freeze'];

/** The places of resources from top to bottom: hands, pots, canners, what dries, what freezes. */
function rank(resource: string, tasks: readonly ScheduledTask[]): number {
  if (resource === 'hands') return 0;
  const kinds = tasks.map(({ kind }) => kind);
  const quiet = QUIET.findIndex((kind) => kinds.includes(kind));
  if (quiet !== -1) return 3 + quiet;
  return kinds.some((kind) => kind === 'cook' || kind === 'blanch') ? 1 : 2;
}

export function lanesOf(all: readonly ScheduledTask[]): Lane[] {
  const byResource = new Map<string, ScheduledTask[]>();
  for (const task of all) {
    for (const { resource } of task.uses) {
      if (resource === 'burners' || task.endMinute <= task.startMinute) continue;
      byResource.set(resource, [...(byResource.get(resource) ?? []), task]);
    }
  }
  return [...byResource]
    .map(([resource, tasks]) => ({ resource, tasks, rank: rank(resource, tasks) }))
    .sort((one, other) => one.rank - other.rank)
    .flatMap(({ resource, tasks }): Lane[] => {
      const rows = sideBySide(tasks, (task) =>
        resource === 'hands' ? Math.ceil(task.uses.find((use) => use.resource === resource)?.used ?? 1) : 1,
      );
      return rows.map((row, index) =>
        resource === 'hands' && rows.length > 1
          ? { resource: `hands ${index + 1}`, label: `hands ${index + 1}`, tasks: row }
          : { resource, label: index === 0 ? resource : '', tasks: row },
      );
    });
}

/** Tasks in as few rows as hold them side by side, each in as many rows as `breadth` says. */
function sideBySide(tasks: readonly ScheduledTask[], breadth: (task: ScheduledTask) => number): ScheduledTask[][] {
  const rows: ScheduledTask[][] = [];
  for (const task of [...tasks].sort((one, other) => one.startMinute - other.startMinute)) {
    const free = rows.filter((row) => (row[row.length - 1] as ScheduledTask).endMinute <= task.startMinute + EPSILON);
    for (const row of free.slice(0, breadth(task))) row.push(task);
    for (let more = free.length; more < breadth(task); more++) rows.push([task]);
  }
  return rows;
}
