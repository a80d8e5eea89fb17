import type { PantryItem } from '../../recipes/pantryItems';
import type { Decided, Described, Making } from '../makes/making';
import { amountIn, freezeTrays, keyOf, promised, raw, readied, trays } from './decisions';

/** A product that is made, and what was decided of it. */
export interface Planned {
  readonly making: Making;
  readonly decided: Decided;
}
/** The same, and what is to be said of it. */
export interface Kept extends Planned {
  readonly said: Described;
}

/** Noise of the solver in kg and units. */
export const NOISE = 1e-6;

/** Whether a product is made at all. */
export const isMade = ({ ready, rawKg }: Decided): boolean => ready > 0 || rawKg > NOISE;

/** Kg of something from the pantry that a product takes, at the rich end. */
export const pantryKgOf = ({ making, decided }: Planned, item: PantryItem): number => {
  const { perUnit, perReadyKg, perRawKg = 0 } = making.activity.pantry?.[item] ?? { perUnit: 0, perReadyKg: 0 };
  return perUnit * decided.ready + perReadyKg * decided.readyKg.high + perRawKg * decided.rawKg;
};

/** What the program's values mean for one product: fruit, units promised, likely and to ready, trays. */
export function decide({ activity }: Making, values: ReadonlyMap<string, number>): Decided {
  const { product, supplies } = activity;
  const kg = (lot: number) => Math.max(0, amountIn(values, raw(lot, product)));
  const sum = (each: (supply: (typeof supplies)[number]) => number) =>
    supplies.reduce((total, supply) => total + kg(supply.lot) * each(supply), 0);
  const rawKg = sum(() => 1);
  const rawByLot = new Map(supplies.map(({ lot }) => [lot, kg(lot)]));
  return {
    rawByLot,
    rawKg,
    readyKg: {
      low: sum(({ readyPerKg }) => readyPerKg.low),
      likely: sum(({ readyPerKg }) => readyPerKg.likely),
      high: sum(({ readyPerKg }) => readyPerKg.high),
    },
    promised: Math.max(
      amountIn(values, promised(product)),
      Math.min(activity.most, Math.floor(sum(({ unitsPerKg }) => unitsPerKg.low) + NOISE)),
    ),
    likely: Math.floor(sum(({ unitsPerKg }) => unitsPerKg.likely) + NOISE),
    ready: Math.min(amountIn(values, readied(product)), Math.ceil(sum(({ unitsPerKg }) => unitsPerKg.high) - NOISE)),
    trays: Math.ceil(
      Math.max(
        0,
        Math.min(
          values.get(keyOf(trays(product))) ?? amountIn(values, freezeTrays(product)),
          rawKg * (activity.traysPerKg ?? activity.freezeDry?.traysPerKg ?? 0),
        ) - NOISE,
      ),
    ),
  };
}
