import type { ScheduledTask } from '../request/daySchedule';

interface Person {
  readonly name: string;
  /** What they have done, the last of it last. */
  readonly done: ScheduledTask[];
}

const handsOf = ({ uses }: ScheduledTask): number => uses.find(({ resource }) => resource === 'hands')?.used ?? 0;
const freeAt = ({ done }: Person): number => done[done.length - 1]?.endMinute ?? 0;

/** How well a person knows a task: best who is at the same product, then who does the same kind of work. */
const knows = ({ done }: Person, { kind, forProducts: products }: ScheduledTask): number => {
  const last = done[done.length - 1];
  if (last?.forProducts.some((name) => products.includes(name))) return 2;
  return done.some((task) => task.kind === kind) ? 1 : 0;
};

/**
 * Says who does each task, where the hands have names: by the start, each to those who are free and know the work best.
 * The hands were counted before, so there are always enough of them.
 *
 * @param tasks - in the order of their starts
 */
export function withNames(tasks: readonly ScheduledTask[], names: readonly string[] | undefined): ScheduledTask[] {
  if (names === undefined) return [...tasks];
  const people: readonly Person[] = names.map((name) => ({ name, done: [] }));
  return tasks.map((task): ScheduledTask => {
    const hands = handsOf(task);
    if (hands === 0 || task.endMinute <= task.startMinute) return task;
    const chosen = people
      .filter((person) => freeAt(person) <= task.startMinute)
      .sort((one, other) => knows(other, task) - knows(one, task) || freeAt(other) - freeAt(one))
      .slice(0, hands);
    for (const { done } of chosen) done.push(task);
    const who = chosen.map(({ name }) => name);
    return { ...task, who: names.filter((name) => who.includes(name)) };
  });
}
