/** Amounts of a recipe as spoons, cups and scales hold them, rounded to the side that keeps the recipe's proportions. */
import { type Exact, exact } from '../common/exact';
import { parseQuantity } from '../quantity/parseQuantity';
import { exactIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { findUnit } from '../quantity/units';

/** To which side an amount may be rounded: never below for acid, never above for the water that thins it. */
export type Side = 'up' | 'down' | 'nearest';

type Amount = Quantity<'mass'> | Quantity<'volume'>;

/** The measures of a kitchen, the largest first: from how many teaspoons each is taken, and the parts it is read in. */
const MEASURES = [
  { unit: 'cup', teaspoons: 48, from: 12, parts: 8 },
  { unit: 'tbsp', teaspoons: 3, from: 3, parts: 2 },
  { unit: 'tsp', teaspoons: 1, from: 0, parts: 8 },
] as const;

const toParts = (value: Exact, parts: number, side: Side): Exact => {
  const rounded = value.times(parts).toPlaces(0, side).div(parts);
  // a pinch is not nothing
  return rounded.isZero() ? exact(1).div(parts) : rounded;
};

/** A volume in the spoons or cups that hold it. */
function spoons(teaspoons: Exact, side: Side): Quantity<'volume'> {
  const measure = MEASURES.find(({ from }) => teaspoons.gte(from)) ?? MEASURES[2];
  const value = toParts(teaspoons.div(measure.teaspoons), measure.parts, side);
  return { value: value.toNumber(), unit: measure.unit };
}

/** Units that a cook reads in quarters, and from how many of them up they are kept. */
const KEPT = new Set(['quart', 'pint', 'gallon', 'L', 'mL', 'lb', 'oz', 'kg', 'g']);
/** The parts that a weight or a large measure is read in. */
const PARTS: Readonly<Record<string, number>> = { mL: 1, g: 1, L: 100, kg: 1000, lb: 16, oz: 4 };

/** An amount times a number of batches, as a cook can measure it. The printed amount of one batch stays as it is. */
export function measured(printed: string, times: number, side: Side): Amount {
  const amount = parseQuantity(printed) as Amount;
  if (times === 1) return amount;
  const value = exact(amount.value).times(times);
  if (KEPT.has(amount.unit)) {
    const parts = PARTS[amount.unit] ?? 4;
    return { ...amount, value: toParts(value, parts, side).toNumber() } as Amount;
  }
  return spoons(exactIn(amount, 'tsp').times(times), side);
}

export const isVolume = (amount: Amount): amount is Quantity<'volume'> => findUnit(amount.unit)?.dimension === 'volume';
