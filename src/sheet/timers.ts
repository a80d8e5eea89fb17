import type { FeasibleDay } from '../plan/request/dayPlan';
import type { ScheduledTask } from '../plan/request/daySchedule';
import type { JarWork } from '../plan/request/plannedProduct';
import { ruleFigures } from '../process/canningRules';
import type { Measure } from './measure';
import { type Pen, productOf } from './pen';
import { unitsUpTo } from './rowTexts';
import { say } from './words';

/** A process longer than this needs more water over the jars: rule `water-over-jars-long`. */
const LONG_PROCESS = 30;

/** Water over the lids of a boiling-water canner. */
export const waterOver = ({ minutes }: JarWork, measure: Measure): string =>
  measure.length({
    value: ruleFigures(minutes > LONG_PROCESS ? 'water-over-jars-long' : 'water-over-jars').low,
    unit: 'in',
  });

/** One canner load: jars in, what the cook sees, the minutes of the tested process from then on, jars out. */
export function timerOf({ plan, measure }: Pen, task: ScheduledTask): string {
  const { units, what } = task;
  const product = productOf(plan, task);
  const jars = product?.canning;
  const count = units === undefined ? what : unitsUpTo(units, product);
  const canner = cannerOf(plan, task);
  const into = canner === undefined ? say('timer.in', { count }) : say('timer.in-canner', { count, canner });
  if (jars === undefined) return into;
  return `${into}${say('dot')}${eventsOf(jars, measure)}`;
}

/** The canner of a load, where a day uses several. */
function cannerOf({ products }: FeasibleDay, { uses }: ScheduledTask): string | undefined {
  const canners = new Set(products.flatMap(({ canning }) => (canning?.loads ?? []).map(({ canner }) => canner)));
  return canners.size < 2 ? undefined : uses.find(({ resource }) => canners.has(resource))?.resource;
}

function eventsOf(jars: JarWork, measure: Measure): string {
  const { minutes, method, pressure } = jars;
  if (pressure !== undefined) {
    return say('timer.pressure', {
      minutes,
      pressure: measure.pressure(pressure),
      vent: ruleFigures('vent').low,
      wait: ruleFigures('wait-before-opening').low,
    });
  }
  const rest = ruleFigures('rest').low;
  if (method === 'atmospheric-steam') return say('timer.steam', { minutes, rest });
  return say('timer.boil', { minutes, rest });
}
