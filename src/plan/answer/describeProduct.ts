import { byEnds, mapRange } from '../../quantity/range';
import type { Quantity, Range } from '../../quantity/types';
import { keepingOf } from '../../recipes/keeping';
import { joinBasis } from '../../sources/basis';
import { type Decided, massOf, massRange } from '../makes/making';
import { type Kept, NOISE } from '../program/decide';
import { amountIn, raw } from '../program/decisions';
import type { Prepared } from '../program/prepare';
import type { Activity } from '../request/activity';
import type { KnownLot } from '../request/lots';
import type { LotShare, PlannedProduct, ProductCost } from '../request/plannedProduct';
import type { EnergyUsed } from './energyUsed';
import { costBasis } from './money';
import { doneOf } from './restOfDay';
import type { WorkDone } from './workDone';

/** One product as the plan answers it. */
export function describeProduct(
  prepared: Prepared,
  { making, decided, said }: Kept,
  values: ReadonlyMap<string, number>,
  { pots, loads, hands }: WorkDone,
  { stove, electricity }: EnergyUsed,
  cost: ProductCost | undefined,
): PlannedProduct {
  const { day, request } = prepared;
  const done = doneOf(prepared, making.label);
  const { activity, label, row, food, form, unit, plural } = making;
  const from: LotShare[] = activity.supplies.flatMap(({ lot }) => {
    const kg = amountIn(values, raw(lot, activity.product));
    const { label: name, trade } = day.lots[lot] as KnownLot;
    return kg > NOISE ? [{ lot: name, food: trade, raw: massOf(day, kg) }] : [];
  });
  for (const { lot, kgPerUnit } of activity.also ?? []) {
    const { label: name, trade } = day.lots[lot] as KnownLot;
    from.push({ lot: name, food: trade, raw: massOf(day, kgPerUnit * decided.ready) });
  }
  const trimmed = activity.supplies.reduce<Range<number>>(
    (sum, { lot, trimmingsPerKg }) => {
      const kg = amountIn(values, raw(lot, activity.product));
      return {
        low: sum.low + kg * trimmingsPerKg.low,
        likely: sum.likely + kg * trimmingsPerKg.likely,
        high: sum.high + kg * trimmingsPerKg.high,
      };
    },
    { low: 0, likely: 0, high: 0 },
  );
  const { jars } = said;
  const energy = byEnds(stove, electricity, (one, other) => one + other);
  return {
    name: label,
    recipe: row.id,
    makes: row.makes,
    // what the day does not can keeps on no shelf: a ferment is canned weeks later
    keeps: row.keeps.filter((keep) => jars !== undefined || !('process' in keep)).map(keepingOf),
    food,
    ...(form === undefined ? {} : { form }),
    fromLots: from,
    raw: massOf(day, decided.rawKg),
    ready: massRange(day, decided.readyKg),
    ...(activity.madeOf === 'fruit' ? { trimmings: massRange(day, trimmed) } : {}),
    units: {
      unit,
      plural,
      promised: decided.promised,
      likely: decided.likely,
      ready: decided.ready,
      readyEach: massRange(day, takenByEach(activity, decided)),
    },
    handsMinutes: hands,
    ...(energy.high > 0 ? { energy: mapRange(energy, (value): Quantity<'energy'> => ({ value, unit: 'kWh' })) } : {}),
    ingredients: said.recipe ?? [],
    ...(jars === undefined ? {} : { canning: { ...jars, loads } }),
    ...(pots === undefined ? {} : { cooking: pots }),
    ...(said.trays === undefined ? {} : { drying: said.trays }),
    ...(said.packs === undefined ? {} : { packs: said.packs }),
    ...(said.headspace === undefined ? {} : { headspace: said.headspace }),
    directions: said.steps,
    ...(cost === undefined ? {} : { costs: cost }),
    ...(done === undefined ? {} : { doneSoFar: done.filled }),
    ...(activity.held === undefined ? {} : { was: activity.held.state }),
    basis: cost === undefined ? said.basis : joinBasis(said.basis, costBasis(cost, request.kitchen)),
    cautions: said.cautions,
  };
}

/** Kg of prepared food in one unit, by what the same lots give prepared and in units at the same end of their yields. */
function takenByEach({ supplies }: Activity, { rawByLot, readyKg }: Decided): Range<number> {
  const at = (end: keyof Range<number>): number => {
    const units = supplies.reduce((sum, { lot, unitsPerKg }) => sum + (rawByLot.get(lot) ?? 0) * unitsPerKg[end], 0);
    return readyKg[end] / units;
  };
  const ends = [at('low'), at('likely'), at('high')] as const;
  return { low: Math.min(...ends), likely: ends[1], high: Math.max(...ends) };
}
