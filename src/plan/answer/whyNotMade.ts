import type { Reason } from '../../sources/no';
import type { Making } from '../makes/making';
import { amountIn, promised } from '../program/decisions';
import { searchAgain } from '../program/limits';
import { weightsOf } from '../program/program';
import type { Effort } from '../solver/effort';
import { optimize } from '../solver/optimize';
import { type Used, whyNoMore } from './whyNoMore';

/** Why a product that could be made is not: what it lacks by itself, or else that others do more for the aim. */
export function whyNotMade(making: Making, used: Used, effort: Effort): Reason {
  const { activity, unit } = making;
  const { capacity, request } = used.prepared;
  const { supplies, cook, canning, traysPerKg, trayShare, freezeDry, madeOf, also = [], smallest = 1 } = activity;
  const { aim = 'most worth' } = request;
  const { worth, waste, money } = weightsOf(aim);
  if (worth + waste === 0 && aim !== 'least cost')
    return because('not-required', `nothing requires it, and it would take time${money > 0 ? ' or money' : ''}`);
  if (activity.most === 0) return because('not-wanted', '`most` of it is 0');
  const few = smallest > 1 ? `its smallest batch of ${smallest}` : `one ${unit} of it`;
  if (madeOf === 'trimmings')
    return because('too-few-trimmings', `too few trimmings, trays or minutes are left for ${few}`);
  const units = supplies.reduce((sum, { lot, unitsPerKg }) => sum + unitsPerKg.low * (capacity.lots[lot] ?? 0), 0);
  if (units < smallest) return because('too-little-fruit', `the fruit gives less than ${few}`);
  if (also.some(({ lot, kgPerUnit }) => smallest * kgPerUnit > (capacity.lots[lot] ?? 0)))
    return because('too-little-of-another-lot', `too little of another food that goes into it for ${few}`);
  const kgOfFew = smallest / Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.low));
  if (cook !== undefined) {
    const largest = Math.max(0, ...capacity.pots);
    if (largest === 0) return because('no-pot', 'the kitchen has no pot to cook it in');
    const batchesOfFew = Math.ceil((kgOfFew * cook.litresPerKg) / largest);
    if (batchesOfFew * cook.minutes > capacity.minutes)
      return because('pots-too-small', `the pots are too small or the day too short to cook ${few}`);
  }
  if (canning?.canners.every(({ minutes }) => minutes > capacity.minutes - capacity.lead))
    return because('day-too-short', 'the day is too short for one canner load of it');
  if (kgOfFew * (traysPerKg ?? 0) * (trayShare ?? 1) > capacity.trays)
    return because('dryer-too-small', `the dryer's trays hold less than ${few}`);
  if (freezeDry !== undefined) {
    const { trays, iceKg, loads } = capacity.freezeDryer ?? { trays: 0, iceKg: 0, loads: 0 };
    if (kgOfFew * freezeDry.traysPerKg > trays * loads || kgOfFew * freezeDry.waterPerKg > iceKg * loads)
      return because('freeze-dryer-too-small', `the freeze-dryer holds less than ${few}`);
  }
  if (smallest > 1 && wouldMakeFewer(activity.product, used.plan, effort))
    return because('smallest-batch', `the aim has use for some of it, but not for ${few}`);
  if (aim === 'least cost') return because('not-cheaper', 'it would not lower the cost of each jar or pack promised');
  return whyNoMore(making, used);
}

const because = (code: string, text: string): Reason => ({ code, text });

/** Whether a plan without this one smallest batch would promise some of the product. */
function wouldMakeFewer(product: number, { program, solved }: Used['plan'], effort: Effort): boolean {
  const bounds = program.bounds.filter(({ of }) => of.of !== 'smallest' || of.product !== product);
  const freed = searchAgain(effort, program, (nodes) =>
    optimize({ ...program, bounds }, { start: solved, nodes, effort }),
  );
  return freed !== undefined && amountIn(freed.values, promised(product)) > 0;
}
