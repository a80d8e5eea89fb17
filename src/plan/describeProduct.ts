import type { Range } from '../quantity/types';
import type { CannerLoad, LotShare, PlannedProduct, PotWork, ProductCost } from './dayPlan';
import { type Kept, NOISE } from './decide';
import { cannersOf } from './kitchen';
import { type KnownLot, type Making, massOf, massRange } from './makes/context';
import type { Kitchen, Wanted } from './planInput';
import type { Prepared } from './prepare';
import { groupsOf, loads, raw, readied } from './program';
import { decidedOf } from './relaxation';

/** One product as the plan answers it. */
export function describeProduct(
  { day, request, makings }: Prepared,
  { making, decided, said }: Kept,
  values: ReadonlyMap<string, number>,
  pots: PotWork | undefined,
  cost: ProductCost | undefined,
): PlannedProduct {
  const { activity, label, produce, form, unit } = making;
  const wanted = request.products[activity.product] as Wanted;
  const from: LotShare[] = activity.supplies.flatMap(({ lot }) => {
    const kg = decidedOf(values, raw(lot, activity.product));
    const { label: name } = day.lots[lot] as KnownLot;
    return kg > NOISE ? [{ lot: name, produce, raw: massOf(day, kg) }] : [];
  });
  const trimmed = activity.supplies.reduce<Range<number>>(
    (sum, { lot, trimmingsPerKg }) => {
      const kg = decidedOf(values, raw(lot, activity.product));
      return {
        low: sum.low + kg * trimmingsPerKg.low,
        likely: sum.likely + kg * trimmingsPerKg.likely,
        high: sum.high + kg * trimmingsPerKg.high,
      };
    },
    { low: 0, likely: 0, high: 0 },
  );
  const { jars } = said;
  return {
    name: label,
    make: wanted.make,
    produce,
    ...(form === undefined ? {} : { form }),
    from,
    raw: massOf(day, decided.rawKg),
    ready: massRange(day, decided.readyKg),
    ...(activity.madeOf === 'fruit' ? { trimmings: massRange(day, trimmed) } : {}),
    units: { unit, promised: decided.promised, likely: decided.likely, ready: decided.ready },
    handsMinutes: {
      prepare: activity.handsPerKg * decided.rawKg,
      fill: activity.handsPerUnit * decided.ready,
      stir: activity.cook?.stirred ? stirMinutes(pots) : 0,
    },
    recipe: said.recipe ?? [],
    ...(jars === undefined ? {} : { jars: { ...jars, loads: loadsOf(request.kitchen, makings, making, values) } }),
    ...(pots === undefined ? {} : { pots }),
    ...(said.trays === undefined ? {} : { trays: said.trays }),
    ...(said.packs === undefined ? {} : { packs: said.packs }),
    steps: said.steps,
    ...(cost === undefined ? {} : { cost }),
    basis: said.basis,
    cautions: said.cautions,
  };
}

const stirMinutes = (pots: PotWork | undefined): number =>
  (pots?.batches ?? []).reduce((sum, { batches }) => sum + batches * (pots?.minutesEach ?? 0), 0);

/** The loads of a product's process, with the products that share them. */
function loadsOf(
  kitchen: Kitchen,
  makings: readonly Making[],
  making: Making,
  values: ReadonlyMap<string, number>,
): CannerLoad[] {
  const { canning } = making.activity;
  if (canning === undefined) return [];
  const labels = cannersOf(kitchen);
  const group = groupsOf(makings.map(({ activity }) => activity)).get(canning.key) ?? [];
  const sharedWith = group
    .filter(({ product }) => product !== making.activity.product && decidedOf(values, readied(product)) > 0)
    .map(({ product }) => makings.find(({ activity }) => activity.product === product)?.label ?? '');
  const jars = group.reduce((sum, { product }) => sum + decidedOf(values, readied(product)), 0);
  let left = jars;
  return canning.canners.flatMap(({ canner, jars: held, minutes }) => {
    const planned = decidedOf(values, loads(canning.key, canner));
    const needed = Math.min(planned, Math.ceil(left / held));
    left -= needed * held;
    return needed > 0
      ? [{ canner: labels[canner]?.label ?? '', loads: needed, jarsPerLoad: held, minutesEach: minutes, sharedWith }]
      : [];
  });
}
