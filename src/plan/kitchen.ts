import { freezerLoad } from '../freezing/freezerLoad';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Activity, Capacity } from './activity';
import { jarStock } from './makes/jars';
import type { Kitchen, PlanRequest } from './planInput';
import { LIFT_A_JAR } from './work';

/** How full a pot may be, so that nothing boils over, where the kitchen names no limit (common practice). */
export const POT_FILL = 2 / 3;
/** Burners of a usual stove (common practice). */
const BURNERS = 4;

export interface Pot {
  readonly label: string;
  /** What may be cooked in it at once. */
  readonly most: Quantity<'volume'>;
}

/** Each single pot, the many of one kind spread out. */
export function potsOf(kitchen: Kitchen): Pot[] {
  return (kitchen.pots ?? []).flatMap(({ volume, count = 1, fill = POT_FILL }) =>
    Array.from({ length: count }, (_, index) => ({
      label: `${volume.value} ${volume.unit} pot${count > 1 ? ` ${index + 1}` : ''}`,
      most: { value: volume.value * fill, unit: volume.unit },
    })),
  );
}

export interface Canner {
  readonly label: string;
}
/** Each single canner. */
export function cannersOf(kitchen: Kitchen): Canner[] {
  return (kitchen.canners ?? []).flatMap(({ name, method, count = 1 }) =>
    Array.from({ length: count }, (_, index) => ({
      label: `${name ?? `${method} canner`}${count > 1 ? ` ${index + 1}` : ''}`,
    })),
  );
}

/** The kitchen in the program's plain numbers. */
export function capacityOf({ lots, kitchen }: PlanRequest, activities: readonly Activity[]): Capacity {
  const minutes = valueIn(kitchen.hours, 'min');
  const hands = kitchen.hands ?? 1;
  const stock: Record<string, number> = {};
  for (const { jar, count } of kitchen.jars ?? []) stock[jarStock(jar)] = (stock[jarStock(jar)] ?? 0) + count;
  if (kitchen.lids !== undefined) stock.lid = kitchen.lids.count;
  if (kitchen.freezer !== undefined) {
    stock['freezer room'] = valueIn(kitchen.freezer.room, 'L');
    const whole = kitchen.freezer.volume;
    if (whole !== undefined) stock['freezer load'] = valueIn(freezerLoad({ freezerVolume: whole }).perDay.low, 'kg');
  }
  const { freezeDryer } = kitchen;
  return {
    lots: lots.map(({ raw }) => valueIn(raw, 'kg')),
    minutes,
    hands,
    burners: kitchen.burners ?? BURNERS,
    pots: potsOf(kitchen).map(({ most }) => valueIn(most, 'L')),
    canners: cannersOf(kitchen).length,
    lead: leadOf(activities, hands),
    stock,
    trays: kitchen.dryer?.trays ?? 0,
    ...(freezeDryer === undefined
      ? {}
      : {
          freezeDryer: {
            trays: freezeDryer.trays,
            iceKg: valueIn(freezeDryer.ice, 'kg'),
            loads: freezeDryer.loads ?? 1,
          },
        }),
  };
}

/**
 * Minutes until a first canner load of the quickest product is prepared, cooked and filled: the least that must pass
 * before any load can start. It is a lower bound, not a timeline: later loads may have to wait for fruit as well, so
 * that the canners' hours hold in total but no order of work is shown to fit.
 */
function leadOf(activities: readonly Activity[], hands: number): number {
  const leads = activities.flatMap(({ canning, supplies, handsPerKg, handsPerUnit, cook }) => {
    const jars = Math.min(...(canning?.canners ?? []).map((canner) => canner.jars));
    const perKg = Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.likely));
    if (canning === undefined || !Number.isFinite(jars) || !(perKg > 0)) return [];
    // lifting the jars in and out is part of the load
    return [((jars / perKg) * handsPerKg + jars * (handsPerUnit - LIFT_A_JAR)) / hands + (cook?.minutes ?? 0)];
  });
  return leads.length === 0 ? 0 : Math.min(...leads);
}
