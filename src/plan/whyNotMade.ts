import type { Making } from './makes/context';
import type { Prepared } from './prepare';

/** Why a product that could be made is not: what it lacks by itself, or else that others do more for the aim. */
export function whyNotMade(
  { activity, unit }: Making,
  { capacity, request }: Pick<Prepared, 'capacity' | 'request'>,
): string {
  const { supplies, cook, canning, traysPerKg, freezeDry, madeOf } = activity;
  if (request.aim === 'fewest hours') return 'no must asks for it, and each product takes time';
  if (activity.most === 0) return 'none of it is wanted';
  if (madeOf === 'trimmings') return `too few trimmings, trays or minutes are left for one ${unit} of it`;
  const units = supplies.reduce((sum, { lot, unitsPerKg }) => sum + unitsPerKg.low * (capacity.lots[lot] ?? 0), 0);
  if (units < 1) return `the fruit gives less than one ${unit} of it`;
  const kgOfOne = 1 / Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.low));
  if (cook !== undefined) {
    const largest = Math.max(0, ...capacity.pots);
    if (largest === 0) return 'the kitchen has no pot to cook it in';
    const batchesOfOne = Math.ceil((kgOfOne * cook.litresPerKg) / largest);
    if (batchesOfOne * cook.minutes > capacity.minutes)
      return `the pots are too small or the day too short to cook one ${unit} of it`;
  }
  if (canning?.canners.every(({ minutes }) => minutes > capacity.minutes - capacity.lead))
    return 'the day is too short for one canner load of it';
  if (kgOfOne * (traysPerKg ?? 0) > capacity.trays) return `the dryer's trays hold less than one ${unit} of it`;
  if (freezeDry !== undefined) {
    const { trays, iceKg, loads } = capacity.freezeDryer ?? { trays: 0, iceKg: 0, loads: 0 };
    if (kgOfOne * freezeDry.traysPerKg > trays * loads || kgOfOne * freezeDry.waterPerKg > iceKg * loads)
      return `the freeze-dryer holds less than one ${unit} of it`;
  }
  return 'the fruit, the stock and the hours do more for the aim elsewhere';
}
