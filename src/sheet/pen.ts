import type { FeasibleDay } from '../plan/request/dayPlan';
import type { ScheduledTask } from '../plan/request/daySchedule';
import type { PlannedProduct } from '../plan/request/plannedProduct';
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

/** `7 quart jars`, `1 tray`. */
export function unitsText(
  { count, unit }: NonNullable<ScheduledTask['units']>,
  product: PlannedProduct | undefined,
): string {
  if (unit === 'tray' || unit === 'batch') return many(count, unit);
  return `${count} ${count !== 1 && product?.units.unit === unit ? product.units.plural : unit}`;
}
