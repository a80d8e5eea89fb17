import { freezerLoad } from '../../freezing/freezerLoad';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { potName, vesselName } from '../../recipes/kitchenOf';
import { customary } from '../figures/customary';
import { LIFT_A_JAR } from '../figures/liftAJar';
import type { Activity, Capacity } from '../request/activity';
import type { KnownLot } from '../request/lots';
import type { Kitchen } from '../request/planInput';
import { amountOf, BAGS, FREEZER_LOAD, FREEZER_ROOM, type InStock, jarsOf, LIDS, type Stock } from '../request/stock';
import { workedBy } from '../schedule/hours';
import type { Means, RunningLoad } from '../schedule/job';
import { fillOf } from './fillOf';
import { busyMinutes, startOf, windowsOf } from './hours';
import { machineLoads } from './loadsOf';

export interface Pot {
  readonly label: string;
  /** What may be cooked in it at once where it does not foam; see `fillOf` for what does. */
  readonly most: Quantity<'volume'>;
  /** The pot as the cook names it. */
  readonly given: NonNullable<Kitchen['pots']>[number];
}

/** Each single pot, the many of one kind spread out. */
export const potsOf = (kitchen: Kitchen): Pot[] =>
  toldApart(
    (kitchen.pots ?? []).flatMap((pot) =>
      Array.from({ length: pot.count ?? 1 }, () => ({
        label: potName(pot),
        most: { value: pot.volume.value * fillOf(pot), unit: pot.volume.unit },
        given: pot,
      })),
    ),
  );

export interface Canner {
  readonly label: string;
}
/** Each single canner; one that is a pot as well has that pot's label. */
export function cannersOf(kitchen: Kitchen): Canner[] {
  const pots = potsOf(kitchen);
  return namedCanners(kitchen).map((canner, index) => {
    const pot = vesselsOf(kitchen)[index];
    return pot === undefined ? canner : { label: (pots[pot] as Pot).label };
  });
}
const namedCanners = (kitchen: Kitchen): Canner[] =>
  toldApart(
    (kitchen.canners ?? []).flatMap(({ name, method, count = 1 }) =>
      Array.from({ length: count }, () => ({ label: name ?? `${method} canner` })),
    ),
  );

/**
 * For each canner the pot that is the same vessel, by its place: the pot of that name, or of that size where the canner
 * is called after it (`12 quart pot`). Of several pots called the same the first is the canner.
 */
export function vesselsOf(kitchen: Kitchen): (number | undefined)[] {
  const called = (kitchen.pots ?? []).flatMap((pot) =>
    Array.from({ length: pot.count ?? 1 }, () => vesselName(potName(pot))),
  );
  const pots = potsOf(kitchen).map(({ label }) => vesselName(label));
  const taken = new Set<number>();
  const names = (kitchen.canners ?? []).flatMap(({ name, count = 1 }) =>
    Array.from({ length: count }, () => (name === undefined ? undefined : vesselName(name))),
  );
  return names.map((name) => {
    if (name === undefined) return undefined;
    const exact = pots.findIndex((label, pot) => label === name && !taken.has(pot));
    const pot = exact >= 0 ? exact : called.findIndex((label, each) => label === name && !taken.has(each));
    if (pot < 0) return undefined;
    taken.add(pot);
    return pot;
  });
}

/** Numbers behind labels that several share. */
const toldApart = <T extends { readonly label: string }>(things: readonly T[]): T[] =>
  things.map((thing, index) => {
    const twins = things.flatMap(({ label }, place) => (label === thing.label ? [place] : []));
    return twins.length === 1 ? thing : { ...thing, label: `${thing.label} ${twins.indexOf(index) + 1}` };
  });

/** Pairs of hands, and whose they are where the cook names them. */
export const handsOf = ({ hands = 1 }: Kitchen): { readonly count: number; readonly names?: readonly string[] } =>
  typeof hands === 'number' ? { count: hands } : { count: hands.length, names: hands };

/** The kitchen as the order of work sees it. */
export function meansOf(kitchen: Kitchen, { hands, burners, stock, days }: Capacity): Means {
  const load = amountOf(stock, FREEZER_LOAD);
  const { names } = handsOf(kitchen);
  const busy = busyOf(kitchen);
  return {
    hands,
    burners,
    pots: potsOf(kitchen).map(({ label, most }) => ({ label, litres: valueIn(most, 'L') })),
    canners: cannersOf(kitchen).map(({ label }) => label),
    vessels: vesselsOf(kitchen),
    trays: kitchen.dryer?.trays ?? 0,
    start: startOf(kitchen),
    ...(load === undefined ? {} : { freezerKg: load / days }),
    ...(busy === undefined ? {} : { busy }),
    ...(names === undefined ? {} : { names }),
  };
}

/** Minutes from the start until which machines still run; nothing where none does. */
function busyOf(kitchen: Kitchen): Means['busy'] {
  const until = (given: Parameters<typeof busyMinutes>[1]) => busyMinutes(kitchen, given);
  const dryer = until(kitchen.dryer?.busyUntil);
  const freezeDryer = until(kitchen.freezeDryer?.busyUntil);
  const canners = (kitchen.canners ?? []).flatMap(({ count = 1, busyUntil }) =>
    Array.from({ length: count }, () => until(busyUntil)),
  );
  const some = {
    ...(dryer === undefined ? {} : { dryer }),
    ...(freezeDryer === undefined ? {} : { freezeDryer }),
    ...(canners.every((each) => each === undefined) ? {} : { canners }),
  };
  return Object.keys(some).length === 0 ? undefined : some;
}

/** The kitchen in the program's plain numbers. */
export function capacityOf(
  { lots, kitchen }: { readonly lots: readonly Pick<KnownLot, 'usableKg'>[]; readonly kitchen: Kitchen },
  activities: readonly Activity[],
  running: readonly RunningLoad[] = [],
): Capacity {
  const windows = windowsOf(kitchen);
  const days = new Set(windows.map(({ day }) => day)).size;
  const { count: hands } = handsOf(kitchen);
  const { freezeDryer } = kitchen;
  const named = busyOf(kitchen)?.canners;
  const busy =
    running.length === 0
      ? named
      : cannersOf(kitchen).map((_, canner) =>
          Math.max(named?.[canner] ?? 0, ...running.map((load) => (load.canner === canner ? load.until : 0))),
        );
  return {
    lots: lots.map(({ usableKg }) => usableKg),
    days,
    windows,
    minutes: windows.reduce((sum, { startMinute, endMinute }) => sum + endMinute - startMinute, 0),
    hands,
    burners: kitchen.burners ?? customary('burners'),
    pots: potsOf(kitchen).map(({ most }) => valueIn(most, 'L')),
    canners: cannersOf(kitchen).length,
    vessels: vesselsOf(kitchen),
    ...(busy === undefined ? {} : { cannersBusy: busy.map((until = 0) => workedBy(until, windows)) }),
    lead: leadOf(activities, hands),
    stock: stockOf(kitchen, days),
    trays: kitchen.dryer?.trays ?? 0,
    ...(freezeDryer === undefined
      ? {}
      : {
          freezeDryer: {
            trays: freezeDryer.trays,
            iceKg: valueIn(freezeDryer.ice, 'kg'),
            loads: freezeDryer.loads ?? longestRunLoads(kitchen, activities),
          },
        }),
  };
}

/** Loads of the freeze-dryer, by the longest of what may go into it; 1 where nothing says how long that is. */
function longestRunLoads(kitchen: Kitchen, activities: readonly Activity[]): number {
  const runs = activities.flatMap(({ after }) => (after?.kind === 'freeze-dry' ? [after.minutes] : []));
  return runs.length === 0 ? 1 : machineLoads(kitchen, 'freezeDryer', Math.max(...runs) / 60);
}

/** What the kitchen has in stock; nothing of what it names none of. */
function stockOf({ jars = [], lids, bags, freezer }: Kitchen, days: number): InStock[] {
  const counts = new Map<string, number>();
  for (const { jar, count } of jars) counts.set(jar, (counts.get(jar) ?? 0) + count);
  const some = (stock: Stock, amount: number | undefined): InStock[] =>
    amount === undefined ? [] : [{ stock, amount }];
  const whole = freezer?.volume;
  return [
    ...[...counts].flatMap(([jar, count]) => some(jarsOf(jar), count)),
    ...some(LIDS, lids?.count),
    ...some(BAGS, bags?.count),
    ...some(FREEZER_ROOM, freezer && valueIn(freezer.room, 'L')),
    ...some(FREEZER_LOAD, whole && days * valueIn(freezerLoad({ freezerVolume: whole }).perDay.low, 'kg')),
  ];
}

/**
 * Minutes until a first jar of the quickest product can go in: prepared, cooked and filled, the water hot. No order of
 * work has a load in sooner; whether one fits the day is found afterwards (see `fitDay`).
 */
function leadOf(activities: readonly Activity[], hands: number): number {
  const leads = activities.flatMap(({ canning, supplies, handsPerKg, handsPerUnit, cook }) => {
    const canners = canning?.canners ?? [];
    const perKg = Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.high));
    if (canners.length === 0 || !(perKg > 0)) return [];
    const warmUp = Math.min(...canners.map((canner) => canner.warmUp));
    const filled = handsPerKg / perKg + Math.max(0, handsPerUnit - LIFT_A_JAR);
    return [Math.max(warmUp, filled / hands + (cook?.minutes ?? 0))];
  });
  return leads.length === 0 ? 0 : Math.min(...leads);
}
