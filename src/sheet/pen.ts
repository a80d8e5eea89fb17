import { inJars } from '../plan/makes/naming';
import type { FeasibleDay } from '../plan/request/dayPlan';
import type { ScheduledTask } from '../plan/request/daySchedule';
import type { PlannedProduct } from '../plan/request/plannedProduct';
import { parseQuantity } from '../quantity/parseQuantity';
import { recipeOfId } from '../recipes/rows/rows';
import { ends } from '../recipes/step';
import type { Clock } from './clock';
import type { Measure } from './measure';
import { say } from './words';

/** What a sheet is written with. */
export interface Pen {
  readonly plan: FeasibleDay;
  readonly clock: Clock;
  readonly measure: Measure;
}

/** The first product of a task. */
export const productOf = (
  { products }: FeasibleDay,
  { forProducts: names }: ScheduledTask,
): PlannedProduct | undefined => products.find(({ name }) => name === names[0]);

/** `1 tray`, `3 batches`. */
export const many = (count: number, of: 'batch' | 'tray'): string =>
  count === 1 ? say(`${of}.one`) : say(`${of}.many`, { count });

/** `7 quart jars`, `8 × 500 mL jars`: a count before a size that begins with a figure is kept apart from it. */
export const counted = (count: number | string, what: string): string =>
  say(/^\d/.test(what) ? 'count.times' : 'count.of', { count, what });

/** `7 quart jars`, `1 tray`. */
export function unitsText(
  { count, unit }: NonNullable<ScheduledTask['units']>,
  product: PlannedProduct | undefined,
): string {
  if (unit === 'tray' || unit === 'batch') return many(count, unit);
  return counted(count, count !== 1 && product?.units.unit === unit ? product.units.plural : unit);
}

/** How many of a load are likely: its share of the product's likely count. */
export function likelyOf(count: number, product: PlannedProduct | undefined): number {
  const { likely, ready } = product?.units ?? { likely: 1, ready: 1 };
  return ready > likely && ready > 0 ? Math.max(1, Math.round((count * likely) / ready)) : count;
}

/** What a product is called beside its jars: `peach halves`, not `peach halves in quarts`. */
export function called({ name, canning }: PlannedProduct): string {
  const jars = inJars(canning?.jar);
  const short = jars !== '' && name.endsWith(jars) ? name.slice(0, -jars.length) : name;
  return short.endsWith(',') ? short.slice(0, -1) : short;
}

/** The depth that a page spreads puree to; none where it is not spread. */
export function depthOf(recipe: string, measure: Measure): string | undefined {
  const size = recipeOfId(recipe)?.steps.find((step) => step.do === 'spread')?.size;
  return size === undefined ? undefined : measure.depth(parseQuantity(ends(size)[1], 'length'));
}
