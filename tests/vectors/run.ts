/**
 * Runs check vectors: language-neutral worked examples with a published answer and its source. It runs in a browser too,
 * so it reads no file.
 */
import { StillroomError } from '../../src/errors/index';
import { exactIn } from '../../src/quantity/scale';
import { findUnit } from '../../src/quantity/units';
import type { Check, Tolerance } from './schema';

/** One compared figure. */
export interface Comparison {
  field: string;
  published: unknown;
  computed: unknown;
  difference: number | undefined;
  passed: boolean;
}

/** What the runner needs of a check. */
export type Runnable = Pick<Check, 'id' | 'call' | 'input' | 'expect' | 'tolerance'>;

export interface Outcome<One extends Runnable = Runnable> {
  check: One;
  answer: unknown;
  passed: boolean;
  comparisons: Comparison[];
}

export type AnyFunction = (...args: unknown[]) => unknown;
/** Functions by name. */
export type Functions = { readonly get: (name: string) => AnyFunction | undefined };

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isQuantity = (value: unknown): value is { value: number; unit: string } =>
  isObject(value) && typeof value.value === 'number' && typeof value.unit === 'string';

/** Doubles carry some 16 digits: an exact figure may be off in the last of them after a conversion. */
const LAST_DIGITS = 1e-12;

function near(published: number, computed: number, tolerance: Tolerance): boolean {
  if (!Number.isFinite(computed)) return false;
  const difference = Math.abs(computed - published);
  if (tolerance === 'exact') return difference <= LAST_DIGITS * Math.abs(published);
  if ('absolute' in tolerance) return difference <= tolerance.absolute * (1 + LAST_DIGITS);
  return difference <= tolerance.relative * Math.abs(published) * (1 + LAST_DIGITS);
}

function compare(field: string, published: unknown, computed: unknown, tolerance: Tolerance): Comparison[] {
  const row = (passed: boolean, difference?: number): Comparison[] => [
    { field, published, computed, difference, passed },
  ];
  if (typeof published === 'number') {
    if (typeof computed !== 'number') return row(false);
    return row(near(published, computed, tolerance), computed - published);
  }
  if (isQuantity(published)) {
    if (!isQuantity(computed)) return row(false);
    const from = findUnit(computed.unit);
    const to = findUnit(published.unit, from?.dimension);
    const same =
      computed.unit === published.unit || (from !== undefined && to !== undefined && from.dimension === to.dimension);
    if (!same) return row(false);
    const value = to === undefined ? computed.value : exactIn(computed, to.unit).toNumber();
    return [
      {
        field,
        published,
        computed: { value, unit: published.unit },
        difference: value - published.value,
        passed: near(published.value, value, tolerance),
      },
    ];
  }
  if (Array.isArray(published)) {
    if (!Array.isArray(computed) || computed.length !== published.length) return row(false);
    if (published.length === 0) return row(true);
    return published.flatMap((item, index) => compare(`${field}[${index}]`, item, computed[index], tolerance));
  }
  if (isObject(published)) {
    if (!isObject(computed)) return row(false);
    return Object.entries(published).flatMap(([key, value]) =>
      compare(field === '' ? key : `${field}.${key}`, value, computed[key], tolerance),
    );
  }
  return row(Object.is(published, computed));
}

/** Runs one check; a StillroomError is the answer `{ error: code, path }`. */
export function runCheck<One extends Runnable>(check: One, functions: Functions): Outcome<One> {
  const call = functions.get(check.call);
  let answer: unknown;
  if (call === undefined) answer = { error: `no exported function ${check.call}` };
  else {
    try {
      answer = Array.isArray(check.input) ? call(...check.input) : call(check.input);
    } catch (error) {
      if (!(error instanceof StillroomError)) throw error;
      answer = { error: error.code, path: error.path, message: error.message };
    }
  }
  let comparisons = compare('', check.expect, answer, check.tolerance ?? 'exact');
  if (isObject(answer) && typeof answer.error === 'string' && !(isObject(check.expect) && 'error' in check.expect)) {
    comparisons = [
      {
        field: 'error',
        published: check.expect,
        computed: answer.message ?? answer.error,
        difference: undefined,
        passed: false,
      },
    ];
  }
  return { check, answer, comparisons, passed: comparisons.length > 0 && comparisons.every(({ passed }) => passed) };
}
