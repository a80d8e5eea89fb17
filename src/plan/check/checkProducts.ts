import { fail, StillroomError } from '../../errors/StillroomError';
import { valueIn } from '../../quantity/scale';
import type { DaySchedule, ScheduledTask, TaskKind } from '../request/daySchedule';
import type { PlannedProduct } from '../request/plannedProduct';
import { type BrokenRule, NEAR, rule } from './brokenRule';

/** Whether the order of work is that of the plan's products. */
export function planRules(products: readonly PlannedProduct[], schedule: Pick<DaySchedule, 'tasks'>): BrokenRule[] {
  try {
    return [...products.flatMap((each) => workOf(each, schedule)), ...trimmingsOf(products, schedule)];
  } catch (error) {
    if (error instanceof StillroomError) throw error;
    return fail('WRONG_TYPE', 'products', products, 'the products of an answer of planDay');
  }
}

/** Whether the tasks of one product are the work that the plan says it takes. */
function workOf(product: PlannedProduct, { tasks }: Pick<DaySchedule, 'tasks'>): BrokenRule[] {
  const { name, units, canning: jar, cooking: pots, drying: trays, packs, raw } = product;
  const own = (kind: TaskKind) =>
    tasks.filter((task) => task.kind === kind && task.forProducts.includes(name) && task.was !== 'running');
  const broken: BrokenRule[] = [];
  const must = (holds: boolean, text: string, minute = 0) => {
    if (!holds) broken.push(rule('work', minute, `${name}: ${text}`));
  };
  const count = (some: readonly ScheduledTask[]) => some.reduce((sum, { units: each }) => sum + (each?.count ?? 0), 0);
  const cut = own('prepare');
  const kg = cut.reduce((sum, { raw: mass }) => sum + (mass === undefined ? 0 : valueIn(mass, 'kg')), 0);
  must(cut.length === 0 || Math.abs(kg - valueIn(raw, 'kg')) < 1e-3, `${kg} kg are prepared of ${valueIn(raw, 'kg')}`);
  if (jar !== undefined) {
    // what was filled before the rest of a day began is only canned
    const jars = own('can').some(({ was }) => was === 'filled') ? count(own('can')) : count(own('fill'));
    must(jars === units.ready, `${jars} jars are filled of ${units.ready}`);
    for (const can of own('can')) {
      must(
        can.endMinute - can.startMinute >= jar.minutes,
        `a load of ${can.endMinute - can.startMinute} min, its process is ${jar.minutes}`,
        can.startMinute,
      );
      // the gauge is watched as long as it runs
      must(
        !can.throughBreak || jar.method === 'boiling-water',
        'a pressure canner runs through a break',
        can.startMinute,
      );
      const held = jar.loads.find(({ canner }) => can.uses.some(({ resource }) => resource === canner));
      must(
        (can.units?.count ?? 0) <= (held?.jarsPerLoad ?? 0),
        `${can.units?.count} jars in a load of ${held?.jarsPerLoad ?? 0}`,
        can.startMinute,
      );
    }
  }
  if (pots !== undefined) {
    const batches = pots.batches.reduce((sum, each) => sum + each.count, 0);
    const done = own('cook').length + count(own('blanch'));
    must(done === batches, `${done} batches are cooked or blanched of ${batches}`);
    for (const { startMinute: start, endMinute: end } of own('cook'))
      must(end - start >= pots.leastEach - NEAR, `cooked ${end - start} min of ${pots.leastEach}`, start);
    for (const { startMinute: start, endMinute: end, units: each } of own('blanch')) {
      const least = pots.leastEach * (each?.count ?? 1);
      must(end - start >= least - NEAR, `blanched ${end - start} min of ${least}`, start);
    }
  }
  if (trays !== undefined) {
    const runs = own(trays.where === 'dryer' ? 'dry' : 'freeze-dry');
    must(count(runs) >= trays.trays, `${count(runs)} trays are dried of ${trays.trays}`);
    const longest = trays.hours === undefined ? 0 : valueIn(trays.hours.high, 'min');
    for (const { startMinute: start, endMinute: end } of runs)
      must(end - start >= longest - NEAR, 'taken out before it is dry', start);
  }
  must(packs === undefined || own('freeze').length > 0, 'never frozen');
  return broken;
}

/**
 * Trimmings are there only after they have fallen off: at the poor end, by what has been prepared. Of a mixture the plan
 * tells the trimmings of all its foods together, so they count for each of them.
 */
function trimmingsOf(products: readonly PlannedProduct[], { tasks }: Pick<DaySchedule, 'tasks'>): BrokenRule[] {
  const massIn = ({ raw }: ScheduledTask) => (raw === undefined ? 0 : valueIn(raw, 'kg'));
  const doneBy = (name: string, minute: number) => {
    const cut = tasks.filter(({ kind, forProducts: of }) => kind === 'prepare' && of.includes(name));
    const all = cut.reduce((sum, task) => sum + massIn(task), 0);
    const done = cut.reduce((sum, task) => (task.endMinute <= minute + NEAR ? sum + massIn(task) : sum), 0);
    return all > 0 ? done / all : 1;
  };
  const users = products.filter(({ trimmings }) => trimmings === undefined);
  return users.flatMap(({ name, food }) =>
    tasks
      .filter(({ kind, forProducts: of }) => kind === 'prepare' && of.includes(name))
      .flatMap(({ startMinute: start }): BrokenRule[] => {
        const fallen = products.reduce(
          (sum, each) =>
            each.trimmings !== undefined && each.fromLots.some((lot) => lot.food === food)
              ? sum + valueIn(each.trimmings.low, 'kg') * doneBy(each.name, start)
              : sum,
          0,
        );
        const taken = tasks
          .filter((task) => task.kind === 'prepare' && task.startMinute <= start)
          .filter((task) => users.some((user) => user.food === food && task.forProducts.includes(user.name)))
          .reduce((sum, task) => sum + massIn(task), 0);
        return taken > fallen + 1e-3 ? [rule('order', start, `${name}: made before its trimmings fell off`)] : [];
      }),
  );
}
