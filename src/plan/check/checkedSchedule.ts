import { fail } from '../../errors/StillroomError';
import type { DaySchedule } from '../request/daySchedule';
import type { PlannedProduct } from '../request/plannedProduct';

/** More tasks than any day has. */
const MOST_TASKS = 10_000;
const MOST_JARS = 5000;

type Read = (value: unknown, path: string) => void;

const given = (value: unknown, path: string, holds: boolean, expected: string): void => {
  if (value === undefined) fail('MISSING', path, value, expected);
  if (!holds) fail('WRONG_TYPE', path, value, expected);
};
const object: Read = (value, path) =>
  given(value, path, typeof value === 'object' && value !== null && !Array.isArray(value), 'an object');
const text: Read = (value, path) => given(value, path, typeof value === 'string', 'a text');
const flag: Read = (value, path) => given(value, path, typeof value === 'boolean', 'true or false');
const number =
  (what: string): Read =>
  (value, path) => {
    given(value, path, typeof value === 'number', what);
    if (!Number.isFinite(value)) fail('OUT_OF_RANGE', path, value, what);
  };
const minute = number('a minute from the start');
const amount: Read = (value, path) => {
  number('an amount of 0 or more')(value, path);
  if ((value as number) < 0) fail('OUT_OF_RANGE', path, value, 'an amount of 0 or more');
};
const day: Read = (value, path) => {
  amount(value, path);
  if (!Number.isInteger(value)) fail('OUT_OF_RANGE', path, value, 'a day, from 0');
};
const jars: Read = (value, path) => {
  amount(value, path);
  if (!Number.isInteger(value) || (value as number) > MOST_JARS)
    fail('OUT_OF_RANGE', path, value, `a whole number up to ${MOST_JARS}`);
};
const fields =
  (readers: Readonly<Record<string, Read>>): Read =>
  (value, path) => {
    object(value, path);
    for (const [name, read] of Object.entries(readers))
      read((value as Record<string, unknown>)[name], path === '' ? name : `${path}.${name}`);
  };
const optional =
  (read: Read): Read =>
  (value, path) => {
    if (value !== undefined) read(value, path);
  };
const list =
  (read: Read, most = MOST_TASKS): Read =>
  (value, path) => {
    given(value, path, Array.isArray(value), 'a list');
    if ((value as unknown[]).length > most) fail('TOO_MUCH', path, value, `at most ${most} entries`);
    (value as unknown[]).forEach((each, index) => {
      read(each, `${path}[${index}]`);
    });
  };

const use = fields({ resource: text, used: amount });
const task = fields({
  kind: text,
  what: text,
  forProducts: list(text, 100),
  startMinute: minute,
  endMinute: minute,
  uses: list(use, 100),
  unattended: flag,
  units: optional(fields({ count: jars, unit: text })),
  who: optional(list(text, 100)),
  throughBreak: optional(flag),
  leastMinutes: optional(amount),
  was: optional(text),
  sinceMinute: optional(minute),
});
const schedule = fields({
  tasks: list(task),
  windows: list(fields({ day: optional(day), startMinute: minute, endMinute: minute }), 100),
  resources: list(fields({ resource: text, available: optional(amount), busyUntilMinute: optional(minute) }), 1000),
});

/** Reads a schedule, or a plan that holds one, far enough that the checks meet no value of the wrong kind. */
export function checkedSchedule(input: unknown): {
  readonly schedule: Pick<DaySchedule, 'tasks' | 'windows' | 'resources'>;
  readonly products?: readonly PlannedProduct[];
} {
  object(input, '');
  const plan = input as { schedule?: unknown; products?: unknown; feasible?: unknown };
  if (plan.feasible === false) fail('CONTRADICTION', 'feasible', false, 'a plan that has an order of work');
  if (plan.schedule === undefined && plan.feasible === undefined) {
    schedule(input, '');
    return { schedule: input as DaySchedule };
  }
  fields({ schedule })(input, '');
  return {
    schedule: plan.schedule as DaySchedule,
    ...(Array.isArray(plan.products) ? { products: plan.products as PlannedProduct[] } : {}),
  };
}
