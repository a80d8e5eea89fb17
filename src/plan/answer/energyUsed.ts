import { byEnds, scaleRange, sureRange } from '../../quantity/range';
import type { Range } from '../../quantity/types';
import { cannersOf } from '../kitchen/kitchen';
import type { Kept } from '../program/decide';
import type { Prepared } from '../program/prepare';
import { groupsOf } from '../program/resources/canners';
import type { DaySchedule, ScheduledTask } from '../request/daySchedule';

/** The batches of some tasks in the pot: a task of blanching holds several. */
export const batchesDone = (tasks: readonly ScheduledTask[]): number =>
  tasks.reduce((sum, { kind, units }) => {
    if (kind === 'blanch') return sum + (units?.count ?? 1);
    return kind === 'cook' ? sum + 1 : sum;
  }, 0);

/** KWh that a product takes on the stove, and of electricity. */
export interface EnergyUsed {
  readonly stove: Range<number>;
  readonly electricity: Range<number>;
}

const NONE = sureRange(0);
const plus = (one: Range<number>, other: Range<number> = NONE) => byEnds(one, other, (a, b) => a + b);
const times = (range: Range<number> = NONE, by = 1) => scaleRange(range, by);

/**
 * The energy of each product with the batches, trays and loads that it really gets: what is heated, dried or frozen by
 * its weight, each batch held at the boil, the water of each blanching, trays, and its share of the canner loads.
 */
export function energyUsed(prepared: Prepared, kept: readonly Kept[], { tasks }: DaySchedule): EnergyUsed[] {
  const canning = canningOf(prepared, kept, tasks);
  return kept.map(({ making: { activity, label }, decided }) => {
    const perKg = (of: 'stove' | 'electricity') =>
      activity.supplies.reduce(
        (sum, { lot, energyPerKg }) => plus(sum, times(energyPerKg?.[of], decided.rawByLot.get(lot) ?? 0)),
        NONE,
      );
    const own = tasks.filter(({ forProducts: products }) => products.includes(label));
    const held = times(activity.cook?.energyPerBatch, batchesDone(own));
    const heatings = own.filter(({ kind }) => kind === 'heat water').length;
    const water = times(activity.cook?.blanch?.energy, heatings);
    const loads = times(canning.get(activity.canning?.key ?? ''), decided.ready);
    return {
      stove: [held, water, loads].reduce(plus, perKg('stove')),
      electricity: plus(perKg('electricity'), times(activity.energyPerTray, decided.trays)),
    };
  });
}

/**
 * KWh of each jar of a process: its loads, and the water that is heated for them, shared out evenly among all jars that
 * may stand in a load together. A load that is not full counts as one, and water is heated as far as any load of that
 * canner wants it.
 */
function canningOf(
  { request, makings }: Prepared,
  kept: readonly Kept[],
  tasks: readonly ScheduledTask[],
): Map<string, Range<number>> {
  const labels = cannersOf(request.kitchen).map(({ label }) => label);
  const groups = groupsOf(makings.map(({ activity }) => activity));
  const keyOf = ({ forProducts: products }: ScheduledTask) =>
    kept.find(({ making }) => products.includes(making.label))?.making.activity.canning?.key ?? '';
  /** The canner that a task keeps busy, as the process of its products runs it. */
  const cannerOf = (task: ScheduledTask) =>
    groups
      .get(keyOf(task))?.[0]
      ?.canning?.canners.find(({ canner }) => task.uses.some(({ resource }) => resource === labels[canner]));
  const loads = tasks.filter(({ kind, was }) => kind === 'can' && was !== 'running');
  const warmest = (canner: number | undefined) =>
    loads
      .map(cannerOf)
      .filter((each) => each?.canner === canner)
      .reduce((most, each) => warmer(most, each?.energyToWarmUp ?? NONE), NONE);
  return new Map(
    [...groups.keys()].flatMap((key) => {
      const jars = kept
        .filter(({ making }) => making.activity.canning?.key === key)
        .reduce((sum, { decided }) => sum + decided.ready, 0);
      if (jars === 0) return [];
      const own = tasks.filter((task) => keyOf(task) === key);
      const parts = own.map((task) => {
        if (task.kind === 'can') return cannerOf(task)?.energyPerLoad ?? NONE;
        return task.kind === 'heat canner' ? warmest(cannerOf(task)?.canner) : NONE;
      });
      return [[key, times(parts.reduce(plus, NONE), 1 / jars)] as const];
    }),
  );
}

const warmer = (one: Range<number>, other: Range<number>) => (one.likely < other.likely ? other : one);
