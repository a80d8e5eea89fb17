/** The syrup of a canner load: as much as its jars take. */
import type { FeasibleDay } from '../plan/request/dayPlan';
import type { ScheduledTask } from '../plan/request/daySchedule';
import type { Ingredient, PlannedProduct } from '../plan/request/plannedProduct';
import { counted, type Pen } from './pen';
import { say, type Text } from './words';

type Task = ScheduledTask;

const own = ({ schedule }: FeasibleDay, { name }: PlannedProduct, kind: Task['kind']): Task[] =>
  schedule.tasks
    .filter((task) => task.kind === kind && task.forProducts.includes(name))
    .sort((one, other) => one.startMinute - other.startMinute);

/** Jars that are filled from one pot: the next after it, or all until the next pot is done. */
function jarsFrom(plan: FeasibleDay, product: PlannedProduct, pot: Task): number {
  const [pots, fills] = [own(plan, product, 'cook'), own(plan, product, 'fill')];
  const at = pots.indexOf(pot);
  if (pots.length === fills.length) return fills[at]?.units?.count ?? 0;
  const until = pots[at + 1]?.endMinute ?? Number.POSITIVE_INFINITY;
  return fills
    .filter(({ startMinute: start }) => start >= pot.endMinute && start < until)
    .reduce((sum, { units }) => sum + (units?.count ?? 0), 0);
}

/** Sugar and water of the syrup for some jars; nothing where no syrup covers the food. */
function amountsFor({ measure }: Pen, { ingredients, units }: PlannedProduct, jars: number) {
  const of = (role: Ingredient['role']): string | undefined => {
    const line = ingredients.find((each) => each.forSyrup === true && each.role === role);
    if (line?.amount === undefined) return undefined;
    return measure.amount({ ...line.amount, value: (line.amount.value * jars) / units.ready });
  };
  const [sugar, water] = [of('sugar'), of('liquid')];
  return sugar === undefined || water === undefined || jars === 0 ? undefined : { sugar, water };
}

/** What a pot of a product with syrup says, in these words; nothing for any other. */
export function syrupOf(pen: Pen, task: Task, product: PlannedProduct | undefined, words: Text): string | undefined {
  if (product === undefined || task.kind !== 'cook') return undefined;
  const amounts = amountsFor(pen, product, jarsFrom(pen.plan, product, task));
  return amounts === undefined ? undefined : say(words, amounts);
}

/** The syrup of a full load, for the card. */
export function syrupOnCard(pen: Pen, product: PlannedProduct): string | undefined {
  const jars = Math.max(0, ...own(pen.plan, product, 'fill').map(({ units }) => units?.count ?? 0));
  const amounts = amountsFor(pen, product, jars);
  const { unit, plural } = product.units;
  return amounts && say('card.syrup', { ...amounts, jars: counted(jars, jars === 1 ? unit : plural) });
}
