import type { FeasibleDay } from '../plan/request/dayPlan';
import type { ScheduledTask, TaskKind } from '../plan/request/daySchedule';
import { letter } from './clock';
import { many, type Pen } from './pen';
import { cannerText, cellText, handsText, minutesOf, potOf, startText, thenText, trimmingsText } from './rowTexts';
import type { Row } from './sheet';
import { type HandsWork, handsWorkFrom } from './stretches';
import { timerOf } from './timers';
import { say, type Text } from './words';

/** A row while cells are still put into it. */
export type Open = { -readonly [K in keyof Row]: Row[K] extends readonly (infer T)[] ? T[] : Row[K] } & {
  readonly products: readonly string[];
  readonly kinds: TaskKind[];
  /** Minute at which its own work ends. */
  end: number;
};

type Task = ScheduledTask;
const usesHands = ({ uses }: Task): boolean => uses.some(({ resource }) => resource === 'hands');

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
    for (const work of handsWorkFrom(tasks, index)) {
      for (const at of work.own) taken.add(at);
      rows.push(handsRow(pen, work));
    }
  });
  rows.sort(byTime);
  tasks.forEach((task, index) => {
    if (!taken.has(index)) (task.kind === 'stand' ? stands : beside)(pen, rows, task, index);
  });
  for (const row of rows) {
    const kept = [...new Set(row.tasks.map((index) => trimmingsText(pen, tasks[index] as Task)))].join('');
    row.hands += kept;
    row.key += kept;
  }
  for (const { task, at } of offTrays(pen.plan)) if (at !== undefined) rows.push(offTraysRow(pen, task, at));
  return rows.sort(byTime);
}
/** Trays are emptied before they are filled again: such a row stands for no task. */
const first = ({ tasks }: Open): number => Math.min(...(tasks.length === 0 ? [-1] : tasks));
const byTime = (one: Open, other: Open): number => one.at - other.at || first(one) - first(other);
const lifts = (lift: Task, { what, forProducts: products }: Task): boolean =>
  lift.what === what && lift.forProducts.every((name) => products.includes(name));
const keyOf = (task: Task, text: string): string =>
  `${task.kind} ${task.forProducts.join('+')} ${task.units?.count} ${text}`;

function blank({ plan, clock }: Pen, task: Task, tasks: readonly number[]): Open {
  return {
    at: task.startMinute,
    end: task.endMinute,
    letters: lettersOf(plan, task.forProducts),
    starts: [task.startMinute],
    time: clock.time(task.startMinute),
    boxes: [''],
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

function handsRow(pen: Pen, { task, own, part }: HandsWork): Open {
  const row = blank(pen, task, own);
  const text = handsText(pen, task, part);
  const who = task.who === undefined || task.who.length === 0 ? '' : say('who', { who: task.who.join(say('comma')) });
  row.hands = `${who}${text}`;
  row.key = keyOf(task, row.hands);
  if (task.kind === 'heat canner') row.canner.push({ times: [], text: cannerText(pen, task) });
  if (task.kind === 'cook' || task.kind === 'blanch') row.stove.push({ times: [], text: potOf(pen, task) });
  return row;
}

/** What somebody has to put on a burner. */
const PUT_ON: ReadonlySet<TaskKind> = new Set(['cook', 'heat water']);
/** Words for what comes right after the work of a row, and goes on by itself. */
const THEN: Readonly<Partial<Record<TaskKind, Text>>> = {
  cook: 'row.then-on',
  dry: 'row.then-dryer',
  'freeze-dry': 'row.then-freeze-dryer',
  freeze: 'row.then-freezer',
  ferment: 'row.then-crock',
};
/** Minutes after a row that what follows it still stands in it. */
const NEAR = 10;

/**
 * Puts what goes on by itself into the row of the work that it follows at once, and that row says so; otherwise into
 * a row of the same product, if no other row begins between the two. A pot that the cook puts on later gets its own row
 * with a box to tick.
 */
function beside(pen: Pen, rows: Open[], task: Task, index: number): void {
  const column = COLUMNS[task.kind] ?? 'stove';
  const { kind, startMinute: start } = task;
  const free = rows.filter(
    (row) =>
      row.kind === 'work' &&
      row.at <= start &&
      row.end >= start - NEAR &&
      row.products.some((name) => task.forProducts.includes(name)) &&
      row[column].length === 0,
  );
  const then = THEN[kind];
  const before =
    then === undefined
      ? undefined
      : free.find(
          ({ at, end, kinds }) => at < start && end === start && (kind !== 'cook' || kinds.includes('prepare')),
        );
  const near = PUT_ON.has(kind)
    ? undefined
    : (free.find(({ at }) => at === start) ??
      free.findLast(({ at }) => kind === 'keep hot' || !rows.some((other) => at < other.at && other.at <= start)));
  const host = before ?? near ?? own(pen, rows, task, column);
  const text = then !== undefined && host === before ? thenText(pen, task, then) : '';
  host.hands += text;
  host.tasks.push(index);
  host.kinds.push(kind);
  host[column].push({ times: host.at === start ? [] : [pen.clock.time(start)], text: cellText(pen, task) });
  host.key += keyOf(task, text);
}
const COLUMNS: Readonly<Partial<Record<TaskKind, 'stove' | 'trays'>>> = {
  dry: 'trays',
  'freeze-dry': 'trays',
  freeze: 'trays',
  ferment: 'trays',
};
function own(pen: Pen, rows: Open[], task: Task, column: 'stove' | 'trays'): Open {
  const hands = startText(pen, task, column);
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
  host.hands += say('row.stand', { minutes: task.leastMinutes ?? minutesOf(task) });
  host.key = `${host.key} ${task.kind} ${task.leastMinutes}`;
}

/**
 * Every load of trays with the minute at which somebody can test it and take it off: when it is done, or when the next
 * hours of work begin; none where that is after the last of them, or where the order of work has that task itself.
 */
export function offTrays({ schedule }: FeasibleDay): { task: Task; at: number | undefined }[] {
  const { tasks, windows } = schedule;
  const packs = tasks.filter(({ kind }) => kind === 'pack');
  // each packing takes off the load of its product that came dry before it
  const isPacked = ({ endMinute: end, forProducts: [name] }: Task): boolean => {
    const at = packs.findIndex(({ startMinute: start, forProducts: [other] }) => other === name && start >= end);
    if (at >= 0) packs.splice(at, 1);
    return at >= 0;
  };
  return tasks
    .filter(({ kind }) => kind === 'dry' || kind === 'freeze-dry')
    .sort((one, other) => one.endMinute - other.endMinute)
    .filter((task) => !isPacked(task))
    .map((task) => {
      const open = windows.find(({ endMinute: end }) => task.endMinute < end);
      return { task, at: open === undefined ? undefined : Math.max(open.startMinute, task.endMinute) };
    });
}

function offTraysRow(pen: Pen, task: Task, at: number): Open {
  const hands = say(task.kind === 'dry' ? 'row.off-dryer' : 'row.off-freeze-dryer', {
    count: many(task.units?.count ?? 1, 'tray'),
  });
  const time = pen.clock.time(at);
  return { ...blank(pen, task, []), at, end: at, starts: [at], time, hands, key: keyOf(task, hands), kinds: [] };
}
