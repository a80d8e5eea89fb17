/** Amounts of food as bought against each other: by the same measure, or by what each weighs. */
import { type Exact, exact } from '../../common/exact';
import { nameKey, nearestNames } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { type Bought, type BoughtMass, massBought } from '../../produce/weights/asBought';
import { containersWeighed } from '../../produce/weights/containerWeight';
import { isMass } from '../../quantity/fields';
import { toCents } from '../../quantity/money';
import { mapRange } from '../../quantity/range';
import { exactIn, valueIn } from '../../quantity/scale';
import type { Money, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';

/** How many times the one is the other, where both are given in the same measure: no weight is needed to say so. */
export function amountsRatio(one: Bought, other: Bought): Exact | undefined {
  if (one.kind === 'count' || other.kind === 'count') {
    const alike = one.kind === 'count' && other.kind === 'count' && nameKey(one.of) === nameKey(other.of);
    return alike ? exact(one.count).div(other.count) : undefined;
  }
  const [first, second] = [one.amount, other.amount];
  // a bushel is not 37 quarts of every food: of two units each has its own weight
  if (first.unit === second.unit) return exact(first.value).div(second.value);
  return isMass(first) && isMass(second) ? exactIn(first, 'g').div(exactIn(second, 'g')) : undefined;
}

/** What an amount weighs; an error that offers what these tables weigh of the food. */
export function weightOf(food: string, amount: Bought, path: string, given: unknown): BoughtMass {
  const found = massBought(food, amount);
  if (found.known) return found;
  const options = containersWeighed(food);
  return fail('UNKNOWN_NAME', path, given, `a mass such as "40 lb": ${found.reason.text}`, {
    options,
    ...(amount.kind === 'count' ? { nearest: nearestNames(amount.of, options) } : {}),
  });
}

/** The weight of an amount in kg. */
export const kilograms = ({ raw }: BoughtMass): Range<number> => mapRange(raw, (each) => valueIn(each, 'kg'));

interface PricedLot {
  readonly raw: Bought;
  readonly price?: Money | undefined;
  readonly per?: Bought | undefined;
}

/** What was paid for a whole lot, to the cent. */
export interface Paid {
  readonly price: Money;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The price of a whole lot; one for another kind of measure goes by the likely weight of both. */
export function paidFor(food: string, { raw, price, per }: PricedLot, given: unknown): Paid | undefined {
  if (price === undefined) {
    if (per !== undefined) fail('CONTRADICTION', 'per', given, 'a `price` to go with it');
    return undefined;
  }
  if (per === undefined) return { price, basis: [], cautions: [] };
  const ratio = amountsRatio(raw, per);
  const whole = (times: Exact): Money => ({ ...price, value: toCents(times.times(price.value)) });
  if (ratio !== undefined) return { price: whole(ratio), basis: [], cautions: [] };
  const { basis, cautions, ...weight } = weightOf(food, per, 'per', given);
  const all = kilograms(weightOf(food, raw, 'raw', undefined)).likely;
  const each = kilograms({ ...weight, basis, cautions }).likely;
  return { price: whole(exact(all).div(each)), basis, cautions };
}
