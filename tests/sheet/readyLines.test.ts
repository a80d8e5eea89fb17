import { expect, test } from 'vitest';
import { clockOf } from '../../src/sheet/clock';
import { measureIn } from '../../src/sheet/measure';
import { linesOf } from '../../src/sheet/readyLines';
import { type Day, feasiblePlan } from './days';

const penOf = (name: Day) => {
  const plan = feasiblePlan(name);
  return { plan, clock: clockOf(plan.schedule), measure: measureIn('us') };
};
const ready = (pen: ReturnType<typeof penOf>) => linesOf(pen).find(({ label }) => label === 'READY')?.text ?? '';

test('jars that are boiled empty are named, with the minutes of the elevation', () => {
  const pen = penOf('the example');
  const letters = pen.plan.products.flatMap(({ canning }, index) =>
    canning?.sterilizeJars ? [String.fromCharCode(65 + index)] : [],
  );
  expect(letters.length).toBeGreaterThan(0);
  // 10 minutes, and 1 for each 1,000 ft or part of it: 3,450 ft (Michigan State 01600946)
  expect(ready(pen)).toContain(`those of ${letters.join(', ')} sterilized: boil them empty for 14 min`);
});
test('jars are heated load by load, and no line asks for all of them hot at once', () => {
  expect(ready(penOf('the example'))).toContain('jars clean; heat them load by load');
  expect(ready(penOf('the example'))).not.toContain('clean and hot');
  expect(ready(penOf('drying only'))).not.toContain('jars');
});
test('ice for what is blanched, never less than the food', () => {
  const pen = penOf('two days under pressure');
  const frozen = pen.plan.products.find(({ packs }) => packs !== undefined);
  const [, weight = 0] = /ice for [A-C], as much as the food you blanch: up to ([\d.]+)/.exec(ready(pen)) ?? [];
  expect(frozen?.raw.unit).toBe('lb');
  expect(Number(weight)).toBeGreaterThanOrEqual((frozen?.raw.value ?? 0) - 1);
  expect(ready(penOf('the example'))).not.toContain('ice for');
});
