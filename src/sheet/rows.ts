import type { FeasibleDay } from '../plan/request/dayPlan';
import type { ScheduledTask, TaskKind } from '../plan/request/daySchedule';
import type { PlannedProduct } from '../plan/request/plannedProduct';
import { ruleFigures } from '../process/canningRules';
import { valueIn } from '../quantity/scale';
import { letter } from './clock';
import { many, type Pen, productOf, unitsText } from './pen';
import type { Row } from './sheet';
import { timerOf } from './timers';
import { say } from './words';

/** A row while cells are still put into it. */
export type Open = { -readonly [K in keyof Row]: Row[K] extends readonly (infer T)[] ? T[] : Row[K] } & {
  readonly products: readonly string[];
  readonly kinds: TaskKind[];
  /** Minute at which its own work ends. */
  end: number;
};

type Task = ScheduledTask;
const usesHands = ({ uses }: Task): boolean => uses.some(({ resource }) => resource === 'hands');
const minutes = ({ startMinute: start, endMinute: end }: Task): number => end - start;

/** Letters of the products of a task. */
const lettersOf = ({ products }: FeasibleDay, names: readonly string[]): string =>
  [...new Set(names)]
    .map((name) => products.findIndex((product) => product.name === name))
    .filter((index) => index >= 0)
    .map(letter)
    .join('+');

/** The order of work as rows: work of hands first, each load with its jars in and out, then what goes on beside it. */
export function rowsOf(pen: Pen): Open[] {
  const { tasks } = pen.plan.schedule;
  const rows: Open[] = [];
  const taken = new Set<number>();
  tasks.forEach((task, index) => {
    if (task.kind !== 'can') return;
    const load = tasks.findIndex(
      (other, at) =>
        !taken.has(at) && other.kind === 'load' && lifts(other, task) && other.startMinute === task.startMinute,
    );
    const unload = tasks.findIndex(
      (other, at) =>
        !taken.has(at) && other.kind === 'unload' && lifts(other, task) && other.endMinute === task.endMinute,
    );
    const own = [index, load, unload].filter((at) => at >= 0);
    for (const at of own) taken.add(at);
    rows.push({ ...blank(pen, task, own), kind: 'timer', loads: [timerOf(pen, task)], key: keyOf(task, '') });
  });
  tasks.forEach((task, index) => {
    if (taken.has(index) || !(usesHands(task) || task.kind === 'heat canner')) return;
    taken.add(index);
    rows.push(handsRow(pen, task, index));
  });
  rows.sort((one, other) => one.at - other.at || first(one) - first(other));
  tasks.forEach((task, index) => {
    if (!taken.has(index)) (task.kind === 'stand' ? stands : beside)(pen, rows, task, index);
  });
  return rows.sort((one, other) => one.at - other.at || first(one) - first(other));
}
const first = ({ tasks }: Open): number => Math.min(...tasks);
const lifts = (lift: Task, { what, forProducts: products }: Task): boolean =>
  lift.what === what && lift.forProducts.every((name) => products.includes(name));
const keyOf = (task: Task, text: string): string =>
  `${task.kind} ${task.forProducts.join('+')} ${task.units?.count} ${text}`;

function blank({ plan, clock }: Pen, task: Task, tasks: readonly number[]): Open {
  return {
    at: task.startMinute,
    end: task.endMinute,
    letters: lettersOf(plan, task.forProducts),
    times: [clock.time(task.startMinute)],
    kind: 'work',
    hands: '',
    stove: [],
    canner: [],
    trays: [],
    loads: [],
    tasks: [...tasks],
    key: '',
    products: task.forProducts,
    kinds: [task.kind],
  };
}

function handsRow(pen: Pen, task: Task, index: number): Open {
  const row = blank(pen, task, [index]);
  const text = sentence(pen, task);
  const who = task.who === undefined || task.who.length === 0 ? '' : say('who', { who: task.who.join(say('comma')) });
  row.hands = `${who}${text}`;
  row.key = keyOf(task, row.hands);
  if (task.kind === 'heat canner') row.canner.push({ times: [], text: cannerText(pen, task) });
  if (task.kind === 'cook' || task.kind === 'blanch') row.stove.push({ times: [], text: potOf(pen, task) });
  return row;
}

/** Work of hands in words. */
function sentence(pen: Pen, task: Task): string {
  const { plan, measure } = pen;
  const { kind, what, raw, units } = task;
  const product = productOf(plan, task);
  switch (kind) {
    case 'heat canner':
      return say('row.light');
    case 'prepare':
      return raw === undefined
        ? say('row.prepare-all', { what })
        : say('row.prepare', { weight: measure.batch(raw), what });
    case 'fill':
      return fillText(pen, task, product);
    case 'blanch':
      return say('row.blanch', { what, count: many(units?.count ?? 1, 'batch') });
    case 'cook':
      return say('row.stir', { what, minutes: minutes(task) });
    case 'pack':
      return say('row.pack', { what });
    default:
      return say('row.other', { what });
  }
}
function fillText({ measure }: Pen, { units, what }: Task, product: PlannedProduct | undefined): string {
  const unit = units === undefined ? what : unitsText(units, product);
  if (product?.canning !== undefined) {
    const { headspace, acidToAdd: acid, acidGoesInto } = product.canning;
    const fill = say('row.fill-jars', { unit, headspace: measure.length(headspace) });
    // what is part of the recipe went into the pot: its card says how much
    return acid === undefined || acidGoesInto === 'recipe' ? fill : `${fill}${say('dot')}${say('row.acid', { acid })}`;
  }
  if (product?.drying !== undefined) return say('row.spread', { unit });
  return say(product?.packs === undefined ? 'row.fill' : 'row.pack-fresh', { unit });
}

const potOf = ({ plan }: Pen, { uses }: Task): string => {
  const other = new Set(['hands', 'burners', 'dryer trays', 'freezer', 'freeze-dryer']);
  return (
    uses.find(
      ({ resource }) => !other.has(resource) && plan.schedule.resources.some((each) => each.resource === resource),
    )?.resource ?? ''
  );
};

/** Water in a canner, as hot as its jars need it. */
function cannerText({ plan, measure }: Pen, task: Task): string {
  const jars = productOf(plan, task)?.canning;
  if (jars?.pressure !== undefined) {
    const { low, high } = ruleFigures('water');
    const water = say('range', { from: low, to: measure.length({ value: high, unit: 'in' }) });
    return say('canner.pressure', { canner: task.what, water });
  }
  const value = ruleFigures(jars?.pack === 'raw' ? 'preheat-raw' : 'preheat-hot').low;
  const half = jars?.method === 'boiling-water' ? say('canner.half') : '';
  return `${say('canner.heat-hot', { canner: task.what, temperature: measure.temperature({ value, unit: 'degF' }) })}${half}`;
}

/** What goes on by itself stands in the row of the hands that it comes after, or else in a row for itself. */
function beside(pen: Pen, rows: Open[], task: Task, index: number): void {
  const column = COLUMNS[task.kind] ?? 'stove';
  const after = rows.filter(
    (row) =>
      row.kind === 'work' &&
      row.at <= task.startMinute &&
      row.end >= task.startMinute - NEAR &&
      row.products.some((name) => task.forProducts.includes(name)) &&
      row[column].length === 0,
  );
  const host = after.find((row) => row.end === task.startMinute) ?? after.at(-1) ?? own(pen, rows, task, column);
  host.tasks.push(index);
  host.kinds.push(task.kind);
  host[column].push({
    times: host.at === task.startMinute ? [] : [pen.clock.time(task.startMinute)],
    text: cell(pen, task),
  });
  host.key += keyOf(task, '');
}
/** Minutes after a row that what follows it still stands in it. */
const NEAR = 10;
const COLUMNS: Readonly<Partial<Record<TaskKind, 'stove' | 'trays'>>> = {
  dry: 'trays',
  'freeze-dry': 'trays',
  freeze: 'trays',
  ferment: 'trays',
};
function own(pen: Pen, rows: Open[], task: Task, column: 'stove' | 'trays'): Open {
  const hands = say(`row.${column}`, { what: task.what });
  const row = { ...blank(pen, task, []), hands, key: keyOf(task, hands) };
  rows.push(row);
  rows.sort((one, other) => one.at - other.at);
  return row;
}

/** What stands by itself is said with the work before it. */
function stands(pen: Pen, rows: Open[], task: Task, index: number): void {
  const before = rows.filter(
    ({ end, products }) => end <= task.startMinute && products.some((name) => task.forProducts.includes(name)),
  );
  const host =
    before.find(({ end, kind }) => end === task.startMinute && kind === 'work') ?? own(pen, rows, task, 'trays');
  host.tasks.push(index);
  host.kinds.push(task.kind);
  host.hands += say('row.stand', { minutes: task.leastMinutes ?? minutes(task) });
  host.key = `${host.key} ${task.kind} ${task.leastMinutes}`;
}

function cell(pen: Pen, task: Task): string {
  const { clock } = pen;
  const end = clock.when(task.endMinute, task.startMinute);
  switch (task.kind) {
    case 'keep hot':
      return say('stove.hot', { end });
    case 'heat water':
      return say('stove.water', { pot: potOf(pen, task), minutes: minutes(task) });
    case 'dry':
      return dryText(pen, task);
    case 'freeze-dry':
      return say('trays.freeze-dry', { count: many(task.units?.count ?? 1, 'tray'), end });
    case 'freeze':
      return say('trays.freeze', { end });
    case 'ferment':
      return say('trays.ferment', { end });
    default:
      return say('stove.cook', { pot: potOf(pen, task), minutes: minutes(task) });
  }
}

function dryText({ plan, clock }: Pen, task: Task): string {
  const trays = productOf(plan, task)?.drying;
  const count = many(task.units?.count ?? 1, 'tray');
  const end = clock.when(task.endMinute, task.startMinute);
  if (trays?.hours === undefined) return say('trays.dry-plain', { count, end });
  const from = clock.when(task.startMinute + valueIn(trays.hours.low, 'min'), task.startMinute);
  return say('trays.dry', { count, from: from === end ? end : say('range', { from, to: end }) });
}
