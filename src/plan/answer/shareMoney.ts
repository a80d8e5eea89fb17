import { exact } from '../../common/exact';

/**
 * Shares out an amount of money by weight so that the cents add up exactly: each share is rounded down to the cent,
 * and the cents left over go to the largest remainders, the earlier share first where two are equal.
 *
 * @returns one amount for each weight, all zero where every weight is zero
 */
export function shareMoney(amount: number, weights: readonly number[]): number[] {
  const total = weights.reduce((sum, weight) => sum.plus(weight), exact(0));
  if (total.isZero()) return weights.map(() => 0);
  const cents = exact(amount).times(100).toPlaces(0);
  const shares = weights.map((weight) => cents.times(weight).div(total));
  const floors = shares.map((share) => share.toPlaces(0, 'down'));
  const left = cents.minus(floors.reduce((sum, share) => sum.plus(share), exact(0))).toNumber();
  const order = shares
    .map((share, index) => ({ index, rest: share.minus(floors[index] ?? 0) }))
    .sort((one, other) => other.rest.cmp(one.rest) || one.index - other.index);
  const extra = new Set(order.slice(0, left).map(({ index }) => index));
  return floors.map((share, index) =>
    share
      .plus(extra.has(index) ? 1 : 0)
      .div(100)
      .toNumber(),
  );
}
