import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brokenRules } from '../../../src/plan/check/checkTasks';
import { type Trial, trialsOf } from '../../../src/plan/fit/trial';
import { windowsOf } from '../../../src/plan/kitchen/hours';
import { prepare } from '../../../src/plan/program/prepare';
import type { Window } from '../../../src/plan/request/daySchedule';
import { effortFor } from '../../../src/plan/solver/effort';
import { type Solved, solve } from '../../../src/plan/solver/solve';
import { expectError } from '../../helpers/errors';
import { randomDay } from '../randomDay';

/** A random day by the sums of minutes, and what tries plans of it. */
function dayOf(seed: number) {
  const prepared = prepare(randomDay(seed));
  const { program } = prepared;
  const windows = windowsOf(prepared.request.kitchen);
  const best = solve(program, { nodes: 200 });
  return { prepared, program, windows, best, tryPlan: trialsOf(prepared, windows, effortFor(program)) };
}
/** The same plan with every amount times as large. */
const times = (found: Solved, factor: number): Solved => ({
  ...found,
  values: new Map([...found.values].map(([name, value]) => [name, value * factor])),
});
const endOf = (windows: readonly Window[]): number => (windows[windows.length - 1] as Window).endMinute;

/** What is wrong with a plan that was tried. */
function wrong({ inTime, late, fitting, planned }: Trial, windows: readonly Window[]): string[] {
  const found: string[] = [];
  const must = (holds: boolean, what: string) => {
    if (!holds) found.push(what);
  };
  must(inTime.size === planned.length, 'each product that is made has its place in the hours, or has none');
  for (const { units, of } of inTime.values()) must(units >= 0 && units <= of, `${units} units of ${of}`);
  if (fitting === undefined) {
    const all = [...inTime.values()].every(({ units, of }) => units === of);
    must(
      !all || late === undefined || late.makespan > endOf(windows) || brokenRules(late).length > 0,
      'it fits after all',
    );
    return found;
  }
  const schedule = fitting();
  must(late === undefined, 'late, and fits');
  must(
    [...inTime.values()].every(({ units, of }) => units === of),
    'some is left out of what fits',
  );
  must(schedule.makespan <= endOf(windows), `runs until ${schedule.makespan}`);
  must(brokenRules(schedule).length === 0, 'breaks a rule');
  const worked = new Set(schedule.tasks.flatMap(({ forProducts }) => forProducts));
  for (const { making, decided } of planned)
    must(decided.ready === 0 || worked.has(making.label), `no work for ${making.label}`);
  return found;
}

describe('a plan that is tried', () => {
  test('fits with all of it in the hours and no rule broken, or says what is left out (property)', () => {
    let fitted = 0;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.constantFrom(1, 2), (seed, factor) => {
        const { program, windows, best, tryPlan } = dayOf(seed);
        const trial = tryPlan(times(best, factor), program, 1);
        expect(wrong(trial, windows)).toEqual([]);
        if (trial.fitting !== undefined) fitted += 1;
      }),
      { numRuns: 25 },
    );
    expect(fitted).toBeGreaterThan(5);
  });

  test('of nothing is no work, and fits', () => {
    const { program, best, tryPlan } = dayOf(3);
    const trial = tryPlan(times(best, 0), program, 1);
    expect(trial.planned).toEqual([]);
    expect(trial.fitting?.().tasks).toEqual([]);
  });

  test('three times over is late, and leaves out what found no place (property)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (seed) => {
        const { program, windows, best, tryPlan } = dayOf(seed);
        const trial = tryPlan(times(best, 3), program, 1);
        expect(wrong(trial, windows)).toEqual([]);
        const [some, all] = [...trial.inTime.values()].reduce(
          ([units, whole], each) => [units + each.units, whole + each.of],
          [0, 0],
        );
        if (trial.fitting === undefined && trial.late !== undefined) expect(some).toBeLessThan(all);
      }),
      { numRuns: 10 },
    );
  });
});

test('the same plan is tried once, whatever program it is the best of', () => {
  const { prepared, program, best, tryPlan } = dayOf(7);
  const first = tryPlan(best, program, 1);
  const again = tryPlan({ ...best, gap: 0.5 }, { ...program }, 0.8);
  expect(again.inTime).toBe(first.inTime);
  expect(again.order).toBe(first.order);
  expect([again.share, again.found.gap]).toEqual([0.8, 0.5]);
  const other = tryPlan(times(best, 2), program, 1);
  expect(other.inTime).not.toBe(first.inTime);
  // what tries plans remembers those of its own day only
  const afresh = trialsOf(prepared, windowsOf(prepared.request.kitchen), effortFor(program))(best, program, 1);
  expect(afresh.inTime).not.toBe(first.inTime);
  expect(afresh.inTime).toEqual(first.inTime);
});

test('more work than an order is looked for is too much', () => {
  const { program, best, tryPlan } = dayOf(7);
  expectError(() => tryPlan(times(best, 2000), program, 1), 'TOO_MUCH', 'lots');
});
