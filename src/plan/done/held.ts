/** Food in work as a product by itself: all of it goes on, and what was done to it is not done again. */
import { customary } from '../figures/customary';
import { LIFT_A_JAR } from '../figures/liftAJar';
import type { Making } from '../makes/making';
import type { Activity } from '../request/activity';
import type { Happened } from './entry';

/** What is left to do of a product that is prepared, hot or filled. */
export function heldMaking(base: Making, what: Happened, product: number, label: string): Making {
  return { ...base, label, activity: heldActivity(base.activity, what, product) };
}

function heldActivity(base: Activity, { held, lot, kg, units, index }: Happened, product: number): Activity {
  const { smallest: _, soak: __, laterPerKg: ___, ...own } = base;
  const { canning } = base;
  const common: Activity = {
    ...own,
    product,
    least: 0,
    most: 5000,
    handsPerKg: 0,
    supplies: base.supplies.filter((supply) => supply.lot === lot),
    ...(held === undefined ? {} : { held }),
    // what waits shares its load with nothing that is still to be cut
    ...(canning === undefined ? {} : { canning: { ...canning, key: `${canning.key} in work ${index}` } }),
  };
  if (held?.state === 'prepared') return { ...common, least: wholeBatches(common, kg) };
  const { cook: ____, also: _____, unitsPerBatch: ______, ...cooked } = common;
  if (held?.state === 'hot') return cooked;
  const each = units / kg;
  const { pantry: _______, ...filled } = cooked;
  return {
    ...filled,
    handsPerUnit: canning === undefined ? 0 : LIFT_A_JAR,
    supplies: cooked.supplies.map((supply) => ({ ...supply, unitsPerKg: { low: each, likely: each, high: each } })),
  };
}

/** Units of the whole batches in some kg of prepared food: what is left of it is no batch. */
function wholeBatches({ unitsPerBatch, supplies }: Activity, kg: number): number {
  if (unitsPerBatch === undefined) return 0;
  const units = kg * customary('batch-slack') * (supplies[0]?.unitsPerKg.low ?? 0);
  return unitsPerBatch * Math.floor(units / unitsPerBatch + 1e-6);
}
