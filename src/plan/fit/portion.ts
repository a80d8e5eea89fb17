import { customary } from '../figures/customary';
import { massOf } from '../makes/making';
import { NOISE, type Planned } from '../program/decide';
import type { Prepared } from '../program/prepare';
import type { Cook } from '../request/activity';
import type { KnownLot } from '../request/lots';
import { type Cooking, type Portion, potMinutes, type Trimmings } from '../schedule/job';

/** Minutes by the clock that all hands prepare at a stretch before it goes on trays or into packs. */
export const STRETCH = customary('stretch');

export type Whole = Pick<Prepared, 'day' | 'request' | 'capacity' | 'means'>;

/** A share of a product's work as one portion. */
export function portionOf(
  { day, capacity }: Whole,
  { making, decided }: Planned,
  share: number,
  units: number,
  fill: number,
): Portion {
  const { activity, label, unit } = making;
  const lots = [...decided.rawByLot].filter(([, kg]) => kg > NOISE).map(([lot]) => day.lots[lot] as KnownLot);
  const { cook, soak = 0 } = activity;
  const kg = decided.rawKg * share;
  const later = cook === undefined ? 0 : (activity.laterPerKg ?? 0);
  const largest = Math.max(...capacity.pots, NOISE);
  return {
    product: label,
    what: `${activity.madeOf === 'trimmings' ? 'trimmings of ' : ''}${lots.map((lot) => lot.label).join(' and ')}`,
    raw: massOf(day, kg),
    filled: { count: units, unit },
    // what stands has been put there by somebody
    prepare: Math.max((activity.handsPerKg - later) * kg, soak > 0 ? 1 : 0),
    fill: fill + later * kg,
    ...(soak > 0 ? { soak: Math.ceil(soak) } : {}),
    ...(activity.held === undefined ? {} : { held: { ...activity.held, litres: (activity.held.litres ?? 0) * share } }),
    ...(cook === undefined ? {} : { cook: cookingOf(cook, kg, largest) }),
    drops:
      activity.madeOf === 'trimmings'
        ? []
        : activity.supplies.map(
            ({ lot, trimmingsPerKg }): Trimmings => ({
              lot,
              kg: (decided.rawByLot.get(lot) ?? 0) * share * trimmingsPerKg.low,
            }),
          ),
  };
}

/** A portion in its pot: at once, or where it is blanched a batch after the other in the same water. */
function cookingOf(cook: Cook, kg: number, largest: number): Cooking {
  const { litresPerKg, batchLitres, minutes, stirred, blanch } = cook;
  const litres = batchLitres ?? litresPerKg * kg;
  if (blanch === undefined) return { minutes: potMinutes(cook, kg), litres, stirred };
  const batches = batchesIn(litres, largest);
  return {
    minutes: Math.ceil(minutes * batches - NOISE),
    litres: litres / batches,
    stirred,
    blanch: { heat: blanch.minutes, batches },
  };
}

const batchesIn = (litres: number, pot: number): number => Math.max(1, Math.ceil(litres / pot - NOISE));

/** A whole number in parts as equal as can be, the larger ones first: 7 in 3 is 3, 2, 2. */
export const evenly = (whole: number, parts: number): number[] =>
  Array.from({ length: parts }, (_, index) => Math.floor(whole / parts) + (index < whole % parts ? 1 : 0));

/** The printed batches of a product that is made in whole ones only. */
export const wholeBatchesOf = ({ making, decided }: Planned): number | undefined => {
  const { unitsPerBatch = 0 } = making.activity;
  return unitsPerBatch > 0 ? Math.max(1, Math.round(decided.promised / unitsPerBatch)) : undefined;
};

/** A whole number shared out as the parts are to each other; the parts that are rounded still make up all of it. */
export function sharedBy(whole: number, parts: readonly number[]): number[] {
  const all = parts.reduce((sum, part) => sum + part, 0);
  let [sum, given] = [0, 0];
  return parts.map((part) => {
    sum += part;
    const upTo = Math.round((whole * sum) / all);
    const some = upTo - given;
    given = upTo;
    return some;
  });
}

/** Batches that a share of a product takes in the largest pot. */
export const batchesOf = ({ capacity }: Whole, { making, decided }: Planned, share: number): number => {
  const litres = (making.activity.cook?.litresPerKg ?? 0) * decided.rawKg * share;
  return batchesIn(litres, Math.max(...capacity.pots, NOISE));
};

/** How often a product's work is broken off to load what is ready. */
export const stretchesOf = ({ capacity }: Whole, { making, decided }: Planned): number =>
  Math.ceil((making.activity.handsPerKg * decided.rawKg) / (STRETCH * capacity.hands));

export const needsOf = ({ making, decided }: Planned, share: number): Trimmings[] =>
  making.activity.madeOf === 'trimmings' ? [...decided.rawByLot].map(([lot, kg]) => ({ lot, kg: kg * share })) : [];
