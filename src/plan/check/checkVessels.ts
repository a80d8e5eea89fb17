import type { ScheduledTask } from '../request/daySchedule';
import { type BrokenRule, by, NEAR, rule } from './brokenRule';
import { placedInTime } from './checkWaits';
import { longestWait } from './waits';

/** A canner that was heated is for a load that follows soon, and nothing else is done in it meanwhile. */
export function canners(tasks: readonly ScheduledTask[]): BrokenRule[] {
  const wait = longestWait('hot-canner');
  return tasks.flatMap((heat): BrokenRule[] => {
    if (heat.kind !== 'heat canner' || heat.was === 'running') return [];
    const vessels = heat.uses.map(({ resource }) => resource).filter((resource) => resource !== 'burners');
    const after = tasks
      .filter(
        (task) =>
          task !== heat &&
          task.startMinute >= heat.endMinute - NEAR &&
          task.uses.some(({ resource }) => vessels.includes(resource)),
      )
      .sort(by('startMinute'));
    const [load] = after;
    if (load?.kind !== 'can') return [rule('order', heat.endMinute, `${heat.what}: heated, and no load follows`)];
    const work = tasks.filter(
      ({ kind, forProducts: products, startMinute: start }) =>
        (kind === 'cook' || kind === 'fill') &&
        start >= heat.endMinute &&
        start <= load.startMinute &&
        products.some((name) => load.forProducts.includes(name)),
    );
    const from = Math.min(load.startMinute, ...work.map(({ startMinute: start }) => start));
    return from - heat.endMinute > wait + NEAR
      ? [
          rule(
            'wait',
            heat.endMinute,
            `${heat.what}: hot for ${from - heat.endMinute} min before its load is begun, at most ${wait}`,
          ),
        ]
      : [];
  });
}

const usesOf = ({ uses }: ScheduledTask): string[] =>
  uses.map(({ resource }) => resource).filter((name) => name !== 'burners' && name !== 'hands');

/** A load goes into hot water: heated for it, or of the load that came out of the same canner a little before. */
export function cold(tasks: readonly ScheduledTask[]): BrokenRule[] {
  const wait = longestWait('hot-canner');
  return tasks.flatMap((load): BrokenRule[] => {
    const [vessel] = usesOf(load);
    if (load.kind !== 'can' || load.was === 'running' || vessel === undefined) return [];
    const before = tasks
      .filter((task) => task !== load && task.endMinute <= load.startMinute + NEAR && usesOf(task).includes(vessel))
      .sort(by('endMinute'))
      .pop();
    if (before?.kind === 'heat canner' && before.was !== 'running') return [];
    const text = `${vessel}: a load goes in, and its water was not heated`;
    if (before?.kind !== 'can' && before?.kind !== 'heat canner') return [rule('order', load.startMinute, text)];
    const work = tasks.filter(
      ({ kind, forProducts: products, startMinute: start, endMinute: end }) =>
        (kind === 'cook' || kind === 'fill') &&
        end > before.endMinute - NEAR &&
        start <= load.startMinute &&
        products.some((name) => load.forProducts.includes(name)),
    );
    const from = Math.min(load.startMinute, ...work.map(({ startMinute: start }) => start));
    return from - before.endMinute > wait + NEAR
      ? [
          rule(
            'wait',
            before.endMinute,
            `${vessel}: its hot water stands for ${from - before.endMinute} min, and is not heated again`,
          ),
        ]
      : [];
  });
}

/** Somebody puts the jars of a load in when it begins, and lifts them out when it ends. */
export function lifted(load: ScheduledTask, tasks: readonly ScheduledTask[]): BrokenRule[] {
  if (load.kind !== 'can' || load.was === 'running') return [];
  const has = (kind: 'load' | 'unload', edge: 'startMinute' | 'endMinute') =>
    tasks.some(
      (task) =>
        task.kind === kind &&
        Math.abs(task[edge] - load[edge]) <= NEAR &&
        task.forProducts.length === load.forProducts.length &&
        task.forProducts.every((name) => load.forProducts.includes(name)),
    );
  return [
    ...(has('load', 'startMinute')
      ? []
      : [rule('order', load.startMinute, `${load.what}: nobody puts the jars of this load in`)]),
    ...(has('unload', 'endMinute')
      ? []
      : [rule('order', load.endMinute, `${load.what}: nobody lifts the jars of this load out`)]),
  ];
}

/** A vegetable goes into water that boils: heated in the same pot, or from the blanching just before it. */
export function boils(task: ScheduledTask, tasks: readonly ScheduledTask[]): BrokenRule[] {
  if (task.kind !== 'blanch') return [];
  const vessels = task.uses.map(({ resource }) => resource).filter((name) => name !== 'burners' && name !== 'hands');
  const before = tasks.some(
    ({ kind, endMinute: end, uses }) =>
      (kind === 'heat water' || kind === 'blanch') &&
      Math.abs(end - task.startMinute) <= NEAR &&
      uses.some(({ resource }) => vessels.includes(resource)),
  );
  return before
    ? []
    : [rule('order', task.startMinute, `${task.what}: blanched in water that was not brought to the boil`)];
}

/** Every single jar goes into a load of its product, soon after it is filled. */
export function jars(tasks: readonly ScheduledTask[]): BrokenRule[] {
  // what was filled before the rest of a day began waits from then
  const loads = tasks.filter(({ kind, was }) => kind === 'can' && was !== 'running' && was !== 'filled');
  const canned = new Set(loads.flatMap(({ forProducts: products }) => products));
  const filled = tasks
    .filter(({ kind, forProducts: products }) => kind === 'fill' && products.some((name) => canned.has(name)))
    .flatMap(({ forProducts: products, units, startMinute: start, endMinute: end }) =>
      Array.from({ length: units?.count ?? 0 }, (_, index) => ({
        product: products[0] as string,
        minute: start + ((index + 1) * (end - start)) / (units?.count ?? 1),
      })),
    );
  const wait = longestWait('filled-jar');
  const { waiting, empty } = placedInTime(
    filled,
    loads.map(({ forProducts: products, units, startMinute: start }) => ({
      products,
      places: units?.count ?? 0,
      start,
    })),
    wait,
  );
  return [
    ...waiting.map(({ product, minute }) =>
      rule('wait', minute, `${product}: a jar is filled, and no load takes it within ${wait} min`),
    ),
    ...empty.map(({ products, start }) =>
      rule('order', start, `${products.join(' and ')}: a load with more jars than were filled for it in time`),
    ),
  ];
}
