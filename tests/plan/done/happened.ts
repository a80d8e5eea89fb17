import type { FeasibleDay, PlanDayInput, ScheduledTask, TaskKind } from '../../../src/plan/index';

type Done = NonNullable<PlanDayInput['done']>[number];

/** A minute of the schedule as the clock shows it, on the first day. */
export const clockOf = ({ schedule }: Pick<FeasibleDay, 'schedule'>, minute: number): string => {
  const clock = (((schedule.startClock + minute) % 1440) + 1440) % 1440;
  return `${Math.floor(clock / 60)}:${String(clock % 60).padStart(2, '0')}`;
};

/** A minute as `now` takes it. */
export const nowOf = (plan: Pick<FeasibleDay, 'schedule'>, minute: number): NonNullable<PlanDayInput['now']> => {
  const clock = clockOf(plan, minute);
  const day = Math.floor(minute / 1440) + 1;
  return (day === 1 ? clock : { day, at: clock }) as NonNullable<PlanDayInput['now']>;
};

const QUIET: readonly TaskKind[] = ['dry', 'freeze-dry', 'freeze', 'ferment'];

/**
 * What a cook tells at a minute of a plan that went on time. A step that is not finished counts as not begun.
 *
 * @param late - minutes by which all of it was later than planned
 * @returns nothing where a product has several lots, or one pot for several loads: this helper does not take them apart
 */
export function happened(plan: FeasibleDay, at: number, late = 0): Done[] | undefined {
  const entries: Done[] = [];
  for (const { name, fromLots: from, canning: jars } of plan.products) {
    const own = (...kinds: TaskKind[]): ScheduledTask[] =>
      plan.schedule.tasks
        .filter((task) => kinds.includes(task.kind) && task.forProducts.includes(name))
        .sort((one, other) => one.startMinute - other.startMinute);
    const [prepared, cooked, filled, loads] = [own('prepare'), own('cook', 'blanch'), own('fill'), own('can')];
    const quiet = own(...QUIET);
    if (prepared.every(({ endMinute: end }) => end > at)) continue;
    const counts = [cooked, filled, ...(jars === undefined ? [quiet] : [])];
    if (from.length !== 1 || counts.some((some) => some.length > 0 && some.length !== prepared.length))
      return undefined;
    if (loads.some(({ forProducts: products }) => products.length > 1)) return undefined;
    // jars go into the loads in the order that they were filled
    let [load, room] = [0, loads[0]?.units?.count ?? 0];
    for (const [index, cut] of prepared.entries()) {
      if (cut.endMinute > at) continue;
      const { raw } = cut as { raw: NonNullable<ScheduledTask['raw']> };
      const entry = { name: name, lot: from[0]?.lot, raw: { value: raw.value, unit: raw.unit } } as Done;
      const [cook, fill, end] = [cooked[index], filled[index], quiet[index]];
      const put = (more: object) => entries.push({ ...entry, ...more } as Done);
      const count = fill?.units?.count ?? end?.units?.count ?? 0;
      if (jars !== undefined) {
        if (room === 0) {
          load += 1;
          room = loads[load]?.units?.count ?? 0;
        }
        room -= count;
      }
      const step = jars === undefined ? end : loads[load];
      if (step !== undefined && step.startMinute <= at) {
        if (step.endMinute <= at || step.kind === 'freeze' || step.kind === 'ferment') put({ filled: count });
        else if (step.kind === 'can')
          put({
            filled: count,
            canner: step.uses.find(({ resource }) => resource !== 'burners')?.resource,
            until: clockOf(plan, step.endMinute + late),
          });
        else put({ trays: step.units?.count ?? 1, until: { value: step.endMinute - at, unit: 'min' } });
      } else if (fill !== undefined && fill.endMinute <= at)
        put({ howFar: 'filled', filled: count, since: clockOf(plan, fill.startMinute + late) });
      else if (cook !== undefined && cook.kind === 'cook' && cook.endMinute <= at)
        put({ howFar: 'hot', since: clockOf(plan, cook.endMinute + late) });
      else put({ howFar: 'prepared', since: clockOf(plan, cut.endMinute + late) });
    }
  }
  return entries;
}

/** Canners whose water is hot at a minute, and no load in them. */
export function hotCanners({ schedule }: FeasibleDay, at: number): string[] {
  const boiled = schedule.tasks.filter(({ kind }) => kind === 'heat canner' || kind === 'can');
  const canners = new Set(boiled.flatMap(({ uses }) => uses.map(({ resource }) => resource)));
  canners.delete('burners');
  return [...canners].filter((canner) => {
    const own = boiled.filter(({ uses }) => uses.some(({ resource }) => resource === canner));
    return (
      own.some(({ endMinute: end }) => end <= at && end > at - 60) &&
      !own.some(({ startMinute: start, endMinute: end }) => start < at && at < end)
    );
  });
}
