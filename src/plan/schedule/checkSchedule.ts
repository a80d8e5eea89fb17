import { answer } from '../../common/answer';
import { fail, StillroomError } from '../../errors/StillroomError';
import { valueIn } from '../../quantity/scale';
import { type Basis, type Caution, joinCautions } from '../../sources/basis';
import { caution } from '../../sources/cautions';
import { withPlan } from '../answer/withPlan';
import type { FeasibleDay, PlannedProduct } from '../request/dayPlan';
import type { DaySchedule, ScheduledTask, TaskKind, Window } from '../request/daySchedule';
import { checkedSchedule } from './checkedSchedule';
import { placedInTime } from './checkWaits';
import { longestWait, WAITS_BASIS } from './waits';

/** One rule that an order of work breaks. */
export interface BrokenRule {
  /**
   * `overlap`: more of something is in use than there is; `order`: a step before the one it needs; `wait`: something
   * waits too long; `hours`: work when nobody is there; `work`: not the work that the plan's products need.
   */
  readonly rule: 'overlap' | 'order' | 'wait' | 'hours' | 'work';
  /** The minute it shows at, from the start of the first day. */
  readonly minute: number;
  readonly text: string;
}

export interface ScheduleChecked {
  /** Every rule that is broken, by the minute it shows at; none where the order of work stands. */
  readonly broken: readonly BrokenRule[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Kilograms and minutes nearer than this are the same. */
const NEAR = 1e-6;

/**
 * Checks an order of work by its tasks alone, whoever wrote it: `planDay`, you with a pencil, or another program.
 *
 * It looks for: more of a resource in use than there is; a pot, canner or tray in two uses at once; work outside the
 * hours; anything loaded when nobody is there; cooking before cutting, filling before cooking, a load before its jars are
 * filled; food that is cooked and not filled at once; prepared produce, filled trays and bags, and hot canners that wait
 * longer than they may; and for every single jar, from the minute it is filled, whether a load takes it within 20 minutes.
 * The jars of a filling are filled one after the other, evenly over its minutes. With a whole plan it also counts: all
 * produce prepared, all batches cooked, all jars filled and canned for their full time, all trays dried, and no trimmings
 * used before they fell off.
 *
 * The longest waits are common practice (data/plan/waits): no published figure was found.
 *
 * @param given - a `schedule` of `planDay`, or its whole answer: `tasks` (up to 10,000; minutes from the start), `windows`
 *   (the hours of work) and `resources` (how much there is of each)
 * @returns `broken`: one entry for each rule that is broken, empty where none is
 * @throws StillroomError MISSING, WRONG_TYPE, OUT_OF_RANGE, TOO_MUCH, naming the field
 *
 * @example
 * ```ts
 * import { checkSchedule } from 'stillroom/plan';
 *
 * const fill = { kind: 'fill', what: 'peaches', products: ['peaches'], units: { count: 7, unit: 'quart jar' }, start: 0, end: 14 };
 * const can = { kind: 'can', what: 'peaches', products: ['peaches'], units: { count: 7, unit: 'quart jar' }, start: 30, end: 90 };
 * const day = { windows: [{ from: 0, to: 120 }], resources: [{ resource: 'hands', amount: 1 }, { resource: 'canner', amount: 1 }] };
 * const tasks = [
 *   { ...fill, uses: [{ resource: 'hands', amount: 1 }], unattended: false },
 *   { ...can, uses: [{ resource: 'canner', amount: 1 }], unattended: false },
 * ];
 * const [first] = checkSchedule({ ...day, tasks }).broken;
 * first; // => { rule: 'wait', minute: 2, text: 'peaches: a jar is filled, and no load takes it within 20 min' }
 * ```
 */
export function checkSchedule(given: DaySchedule | FeasibleDay | object): ScheduleChecked {
  const { schedule, products } = checkedSchedule(given);
  const broken = [
    ...brokenRules(schedule),
    ...(products === undefined ? [] : withPlan('products', products, (plan) => planRules(plan, schedule))),
  ];
  return answer({
    broken: broken.sort((one, other) => one.minute - other.minute),
    basis: [WAITS_BASIS],
    cautions: joinCautions([caution('follow-local-guidance')]),
  });
}

/** What is wrong with an order of work by its tasks alone. */
export function brokenRules(schedule: Pick<DaySchedule, 'tasks' | 'windows' | 'resources'>): BrokenRule[] {
  const products = [...new Set(schedule.tasks.flatMap((task) => task.products))];
  return [
    ...overlaps(schedule),
    ...schedule.tasks.flatMap((task) => hoursOf(task, schedule.windows)),
    ...products.flatMap((product) => stepsOf(product, schedule.tasks)),
    ...canners(schedule.tasks),
    ...schedule.tasks.flatMap((task) => boils(task, schedule.tasks)),
    ...jars(schedule.tasks),
  ];
}

const rule = (of: BrokenRule['rule'], minute: number, text: string): BrokenRule => ({ rule: of, minute, text });

/** More of a resource in use than there is: looked at whenever a task starts. */
function overlaps({ tasks, resources }: Pick<DaySchedule, 'tasks' | 'resources'>): BrokenRule[] {
  const have = new Map(resources.map(({ resource, amount = Number.POSITIVE_INFINITY }) => [resource, amount]));
  const used = new Map<string, { start: number; end: number; amount: number }[]>();
  for (const { start, end, uses } of tasks) {
    for (const { resource, amount } of uses)
      used.set(resource, [...(used.get(resource) ?? []), { start, end, amount }]);
  }
  return [...used].flatMap(([resource, own]) => {
    const most = have.get(resource);
    if (most === undefined) return [rule('overlap', own[0]?.start ?? 0, `${resource}: not among the resources`)];
    return [...new Set(own.map(({ start }) => start))].flatMap((minute) => {
      const busy = own.reduce(
        (sum, { start, end, amount }) => (start <= minute && minute < end ? sum + amount : sum),
        0,
      );
      return busy > most + NEAR ? [rule('overlap', minute, `${resource}: ${busy} in use, there is ${most}`)] : [];
    });
  });
}

/**
 * Work stands inside one of the windows; what goes on by itself is at least started inside one. Only a freeze-dryer may be
 * loaded after hours, when its last run is done: the trays wait for it in the freezer.
 */
function hoursOf({ kind, what, start, end, unattended }: ScheduledTask, windows: readonly Window[]): BrokenRule[] {
  if (end < start) return [rule('order', start, `${kind} ${what}: ends before it starts`)];
  if (kind === 'freeze-dry') return [];
  const until = unattended ? start : end;
  return windows.some(({ from, to }) => from <= start + NEAR && until <= to + NEAR)
    ? []
    : [rule('hours', start, `${kind} ${what}: ${unattended ? 'started' : 'done'} when nobody is there`)];
}

const by = (edge: 'start' | 'end') => (one: ScheduledTask, other: ScheduledTask) => one[edge] - other[edge];

/** The steps of one product in their order, each portion within its waits. */
function stepsOf(product: string, tasks: readonly ScheduledTask[]): BrokenRule[] {
  const own = (...kinds: TaskKind[]) =>
    tasks.filter((task) => kinds.includes(task.kind) && task.products.includes(product));
  const [prepared, cooked, filled] = [own('prepare').sort(by('end')), own('cook', 'blanch'), own('fill')];
  const quiet = own('dry', 'freeze').sort(by('start'));
  const next = [cooked, filled, quiet].find((some) => some.length > 0) ?? [];
  const broken: BrokenRule[] = [];
  /** Portions are alike, so the one that came first goes on first. */
  const paired = (before: readonly ScheduledTask[], after: readonly ScheduledTask[], wait: number, done: string) => {
    if (before.length === 0 || after.length === 0) return;
    if (before.length !== after.length)
      broken.push(
        rule(
          'order',
          (before[0] as ScheduledTask).end,
          `${product}: ${done} ${before.length} times, then ${after[0]?.kind} ${after.length} times`,
        ),
      );
    after.slice(0, before.length).forEach(({ start, kind }, index) => {
      const { end } = before[index] as ScheduledTask;
      if (start < end - NEAR) broken.push(rule('order', start, `${product}: ${kind} before it is ${done}`));
      else if (start > end + wait + NEAR)
        broken.push(rule('wait', end, `${product}: ${done}, then waits ${start - end} min, at most ${wait}`));
    });
  };
  paired(prepared, [...next].sort(by('start')), longestWait('prepared'), 'prepared');
  paired([...cooked].sort(by('end')), [...filled].sort(by('start')), 0, 'cooked');
  if (quiet.length > 0) paired([...filled].sort(by('end')), quiet, longestWait('filled-tray'), 'filled');
  for (const run of own('freeze-dry')) {
    const late = [...prepared, ...cooked, ...filled].every(({ end }) => end > run.start + NEAR);
    if (late && prepared.length > 0)
      broken.push(rule('order', run.start, `${product}: freeze-dried before it is prepared`));
  }
  own('pack')
    .sort(by('start'))
    .forEach((pack, index) => {
      const dry = own('dry', 'freeze-dry').filter(({ end }) => end <= pack.start + NEAR).length;
      if (dry <= index) broken.push(rule('order', pack.start, `${product}: packed before it is dry`));
    });
  return broken;
}

/** A canner that was heated is for a load that follows soon, and nothing else is done in it meanwhile. */
function canners(tasks: readonly ScheduledTask[]): BrokenRule[] {
  const wait = longestWait('hot-canner');
  return tasks.flatMap((heat): BrokenRule[] => {
    if (heat.kind !== 'heat canner') return [];
    const vessels = heat.uses.map(({ resource }) => resource).filter((resource) => resource !== 'burners');
    const after = tasks
      .filter(
        (task) =>
          task !== heat &&
          task.start >= heat.end - NEAR &&
          task.uses.some(({ resource }) => vessels.includes(resource)),
      )
      .sort(by('start'));
    const [load] = after;
    if (load?.kind !== 'can') return [rule('order', heat.end, `${heat.what}: heated, and no load follows`)];
    const work = tasks.filter(
      ({ kind, products, start }) =>
        (kind === 'cook' || kind === 'fill') &&
        start >= heat.end &&
        start <= load.start &&
        products.some((name) => load.products.includes(name)),
    );
    const from = Math.min(load.start, ...work.map(({ start }) => start));
    return from - heat.end > wait + NEAR
      ? [
          rule(
            'wait',
            heat.end,
            `${heat.what}: hot for ${from - heat.end} min before its load is begun, at most ${wait}`,
          ),
        ]
      : [];
  });
}

/** A vegetable goes into water that boils: heated in the same pot, or from the blanching just before it. */
function boils(task: ScheduledTask, tasks: readonly ScheduledTask[]): BrokenRule[] {
  if (task.kind !== 'blanch') return [];
  const vessels = task.uses.map(({ resource }) => resource).filter((name) => name !== 'burners' && name !== 'hands');
  const before = tasks.some(
    ({ kind, end, uses }) =>
      (kind === 'heat water' || kind === 'blanch') &&
      Math.abs(end - task.start) <= NEAR &&
      uses.some(({ resource }) => vessels.includes(resource)),
  );
  return before ? [] : [rule('order', task.start, `${task.what}: blanched in water that was not brought to the boil`)];
}

/** Every single jar goes into a load of its product, soon after it is filled. */
function jars(tasks: readonly ScheduledTask[]): BrokenRule[] {
  const loads = tasks.filter(({ kind }) => kind === 'can');
  const canned = new Set(loads.flatMap(({ products }) => products));
  const filled = tasks
    .filter(({ kind, products }) => kind === 'fill' && products.some((name) => canned.has(name)))
    .flatMap(({ products, units, start, end }) =>
      Array.from({ length: units?.count ?? 0 }, (_, index) => ({
        product: products[0] as string,
        minute: start + ((index + 1) * (end - start)) / (units?.count ?? 1),
      })),
    );
  const wait = longestWait('filled-jar');
  const { waiting, empty } = placedInTime(
    filled,
    loads.map(({ products, units, start }) => ({ products, places: units?.count ?? 0, start })),
    wait,
  );
  return [
    ...waiting.map(({ product, minute }) =>
      rule('wait', minute, `${product}: a jar is filled, and no load takes it within ${wait} min`),
    ),
    ...empty.map(({ products, start }) =>
      rule('order', start, `${products.join(' and ')}: a load with more jars than were filled for it in time`),
    ),
  ];
}

/** Whether the order of work is that of the plan's products. */
function planRules(products: readonly PlannedProduct[], schedule: Pick<DaySchedule, 'tasks'>): BrokenRule[] {
  try {
    return [...products.flatMap((each) => workOf(each, schedule)), ...trimmingsOf(products, schedule)];
  } catch (error) {
    if (error instanceof StillroomError) throw error;
    return fail('WRONG_TYPE', 'products', products, 'the products of an answer of planDay');
  }
}

/** Whether the tasks of one product are the work that the plan says it takes. */
function workOf(product: PlannedProduct, { tasks }: Pick<DaySchedule, 'tasks'>): BrokenRule[] {
  const { name, units, jars: jar, pots, trays, packs, raw } = product;
  const own = (kind: TaskKind) => tasks.filter((task) => task.kind === kind && task.products.includes(name));
  const broken: BrokenRule[] = [];
  const must = (holds: boolean, text: string, minute = 0) => {
    if (!holds) broken.push(rule('work', minute, `${name}: ${text}`));
  };
  const count = (some: readonly ScheduledTask[]) => some.reduce((sum, { units: each }) => sum + (each?.count ?? 0), 0);
  const cut = own('prepare');
  const kg = cut.reduce((sum, { raw: mass }) => sum + (mass === undefined ? 0 : valueIn(mass, 'kg')), 0);
  must(cut.length === 0 || Math.abs(kg - valueIn(raw, 'kg')) < 1e-3, `${kg} kg are prepared of ${valueIn(raw, 'kg')}`);
  if (jar !== undefined) {
    must(count(own('fill')) === units.ready, `${count(own('fill'))} jars are filled of ${units.ready}`);
    for (const can of own('can')) {
      must(
        can.end - can.start >= jar.minutes,
        `a load of ${can.end - can.start} min, its process is ${jar.minutes}`,
        can.start,
      );
      const held = jar.loads.find(({ canner }) => can.uses.some(({ resource }) => resource === canner));
      must(
        (can.units?.count ?? 0) <= (held?.jarsPerLoad ?? 0),
        `${can.units?.count} jars in a load of ${held?.jarsPerLoad ?? 0}`,
        can.start,
      );
    }
  }
  if (pots !== undefined) {
    const batches = pots.batches.reduce((sum, each) => sum + each.batches, 0);
    const done = own('cook').length + count(own('blanch'));
    must(done === batches, `${done} batches are cooked or blanched of ${batches}`);
    for (const { start, end } of own('cook'))
      must(end - start >= pots.minutesEach - NEAR, `cooked ${end - start} min of ${pots.minutesEach}`, start);
    for (const { start, end, units: each } of own('blanch')) {
      const least = pots.minutesEach * (each?.count ?? 1);
      must(end - start >= least - NEAR, `blanched ${end - start} min of ${least}`, start);
    }
  }
  if (trays !== undefined) {
    const runs = own(trays.where === 'dryer' ? 'dry' : 'freeze-dry');
    must(count(runs) >= trays.trays, `${count(runs)} trays are dried of ${trays.trays}`);
    const longest = trays.hours === undefined ? 0 : valueIn(trays.hours.high, 'min');
    for (const { start, end } of runs) must(end - start >= longest - NEAR, 'taken out before it is dry', start);
  }
  must(packs === undefined || own('freeze').length > 0, 'never frozen');
  return broken;
}

/** Trimmings are there only after they have fallen off: at the poor end, by what has been prepared. */
function trimmingsOf(products: readonly PlannedProduct[], { tasks }: Pick<DaySchedule, 'tasks'>): BrokenRule[] {
  const massIn = ({ raw }: ScheduledTask) => (raw === undefined ? 0 : valueIn(raw, 'kg'));
  const doneBy = (name: string, minute: number) => {
    const cut = tasks.filter(({ kind, products: of }) => kind === 'prepare' && of.includes(name));
    const all = cut.reduce((sum, task) => sum + massIn(task), 0);
    const done = cut.reduce((sum, task) => (task.end <= minute + NEAR ? sum + massIn(task) : sum), 0);
    return all > 0 ? done / all : 1;
  };
  const users = products.filter(({ trimmings }) => trimmings === undefined);
  return users.flatMap(({ name, produce }) =>
    tasks
      .filter(({ kind, products: of }) => kind === 'prepare' && of.includes(name))
      .flatMap(({ start }): BrokenRule[] => {
        const fallen = products.reduce(
          (sum, each) =>
            each.produce === produce && each.trimmings !== undefined
              ? sum + valueIn(each.trimmings.low, 'kg') * doneBy(each.name, start)
              : sum,
          0,
        );
        const taken = tasks
          .filter((task) => task.kind === 'prepare' && task.start <= start)
          .filter((task) => users.some((user) => user.produce === produce && task.products.includes(user.name)))
          .reduce((sum, task) => sum + massIn(task), 0);
        return taken > fallen + 1e-3 ? [rule('order', start, `${name}: made before its trimmings fell off`)] : [];
      }),
  );
}
