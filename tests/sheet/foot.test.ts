import { expect, test } from 'vitest';
import { clockOf } from '../../src/sheet/clock';
import { footOf } from '../../src/sheet/foot';
import { measureIn } from '../../src/sheet/measure';
import { offTrays } from '../../src/sheet/rows';
import { type Day, FEASIBLE_NAMES, feasiblePlan } from './days';

const footFor = (name: Day) => {
  const plan = feasiblePlan(name);
  return { plan, foot: footOf({ plan, clock: clockOf(plan.schedule), measure: measureIn('us') }) };
};

test.each(FEASIBLE_NAMES)('%s: tomorrow has each load of trays that no row takes off, and no other', (name) => {
  const { plan, foot } = footFor(name);
  const left = offTrays(plan).filter(({ at }) => at === undefined);
  const text = foot[1]?.text ?? '';
  expect(text.match(/\b(\d+ trays|1 tray) from /g)?.length ?? 0).toBe(left.length);
});
test('on the evenings before the last the trays are not left to tomorrow', () => {
  const { plan, foot } = footFor('evenings alike');
  expect(offTrays(plan).length).toBe(4);
  expect(foot[1]?.text.match(/trays from day 5/g)?.length).toBe(1);
});
