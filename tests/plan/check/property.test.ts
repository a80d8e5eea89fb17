import { describe, expect, test } from 'vitest';
import { brokenRules } from '../../../src/plan/check/checkTasks';
import { orderOf } from './orderOf';
import { KINDS } from './randomWork';

/** How many kitchens: 300, or as many as the environment says. */
const KITCHENS = Number(process.env.STILLROOM_KITCHENS ?? 300);

describe(`${KITCHENS} random kitchens: no order of work breaks a rule`, () => {
  const seen = new Map<string, number>();
  const count = (what: string) => seen.set(what, (seen.get(what) ?? 0) + 1);
  test.each(KINDS.map((kind, index) => [kind, index] as const))(
    '%s',
    (kind, index) => {
      for (let seed = index + KINDS.length; seed < KITCHENS + KINDS.length; seed += KINDS.length) {
        const schedule = orderOf(seed);
        if (schedule === undefined) continue;
        count(kind);
        expect(brokenRules(schedule), `kitchen ${seed}`).toEqual([]);
        expect(schedule.lowerBound, `kitchen ${seed}`).toBeLessThanOrEqual(schedule.makespan);
        for (const { kind: task, throughBreak, who } of schedule.tasks) {
          count(task);
          if (throughBreak) count(`${task} through a break`);
          if (who !== undefined) count('people');
        }
      }
    },
    600_000,
  );
  test('most have an order, and every kind of work is seen', () => {
    for (const kind of KINDS) expect(seen.get(kind) ?? 0, kind).toBeGreaterThan((0.8 * KITCHENS) / KINDS.length - 1);
    for (const kind of ['keep hot', 'stand', 'ferment', 'dry', 'freeze', 'freeze-dry', 'can through a break', 'people'])
      expect(seen.get(kind) ?? 0, kind).toBeGreaterThan(0);
  });
});
