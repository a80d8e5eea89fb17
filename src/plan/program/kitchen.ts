import { freezerLoad } from '../../freezing/freezerLoad';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { customary } from '../customary';
import { LIFT_A_JAR } from '../makes/work';
import type { Activity, Capacity } from '../request/activity';
import type { Window } from '../request/daySchedule';
import type { Kitchen, PlanRequest } from '../request/planInput';
import { amountOf, BAGS, FREEZER_LOAD, FREEZER_ROOM, type InStock, jarsOf, LIDS, type Stock } from '../request/stock';
import type { Means } from '../schedule/job';

export interface Pot {
  readonly label: string;
  /** What may be cooked in it at once. */
  readonly most: Quantity<'volume'>;
}

/** Each single pot, the many of one kind spread out. */
export const potsOf = (kitchen: Kitchen): Pot[] =>
  toldApart(
    (kitchen.pots ?? []).flatMap(({ name, volume, count = 1, fill = customary('pot-fill') }) =>
      Array.from({ length: count }, () => ({
        label: name ?? `${volume.value} ${volume.unit} pot`,
        most: { value: volume.value * fill, unit: volume.unit },
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
  const plain = (label: string) =>
    label
      .trim()
      .toLowerCase()
      .replace(/[\s-]+/g, ' ');
  const called = (kitchen.pots ?? []).flatMap(({ name, volume, count = 1 }) =>
    Array.from({ length: count }, () => plain(name ?? `${volume.value} ${volume.unit} pot`)),
  );
  const pots = potsOf(kitchen).map(({ label }) => plain(label));
  const taken = new Set<number>();
  const names = (kitchen.canners ?? []).flatMap(({ name, count = 1 }) =>
    Array.from({ length: count }, () => (name === undefined ? undefined : plain(name))),
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

/** Whole minutes of the hours of work, from the start of the first day; the next day starts 24 h later. */
export const windowsOf = ({ hours }: Kitchen): Window[] =>
  hours.map((day, index) => ({
    day: index,
    from: index * DAY,
    to: index * DAY + Math.floor(valueIn(day, 'min') + 1e-6),
  }));
const DAY = 24 * 60;

/** The kitchen as the order of work sees it. */
export function meansOf(kitchen: Kitchen, { hands, burners, stock, days }: Capacity): Means {
  const load = amountOf(stock, FREEZER_LOAD);
  return {
    hands,
    burners,
    pots: potsOf(kitchen).map(({ label, most }) => ({ label, litres: valueIn(most, 'L') })),
    canners: cannersOf(kitchen).map(({ label }) => label),
    vessels: vesselsOf(kitchen),
    trays: kitchen.dryer?.trays ?? 0,
    start: 8 * 60,
    ...(load === undefined ? {} : { freezerKg: load / days }),
  };
}

/** The kitchen in the program's plain numbers. */
export function capacityOf({ lots, kitchen }: PlanRequest, activities: readonly Activity[]): Capacity {
  const windows = windowsOf(kitchen);
  const days = windows.length;
  const hands = kitchen.hands ?? 1;
  const { freezeDryer } = kitchen;
  return {
    lots: lots.map(({ raw }) => valueIn(raw, 'kg')),
    days,
    minutes: windows.reduce((sum, { from, to }) => sum + to - from, 0),
    hands,
    burners: kitchen.burners ?? customary('burners'),
    pots: potsOf(kitchen).map(({ most }) => valueIn(most, 'L')),
    canners: cannersOf(kitchen).length,
    vessels: vesselsOf(kitchen),
    lead: leadOf(activities, hands),
    stock: stockOf(kitchen, days),
    trays: days * (kitchen.dryer?.trays ?? 0),
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
