import { describe, expect, test } from 'vitest';
import { planDay } from '../../src/plan/index';
import { backOf } from '../../src/sheet/back';
import { cautionsOf, saysOf } from '../../src/sheet/beside';
import { clockOf } from '../../src/sheet/clock';
import { frontOf } from '../../src/sheet/front';
import { measureIn } from '../../src/sheet/measure';
import { exampleDay, feasible } from '../helpers/plans';
import { FEASIBLE_NAMES, feasiblePlan } from './days';

const backFor = (plan: ReturnType<typeof feasiblePlan>) => {
  const pen = { plan, clock: clockOf(plan.schedule), measure: measureIn('us') };
  const { said } = frontOf(pen, undefined, false);
  return { said, sections: new Map(backOf(pen, said).map(({ title, lines }) => [title, lines])) };
};

describe.each(FEASIBLE_NAMES)('%s', (name) => {
  const plan = feasiblePlan(name);
  const { said, sections } = backFor(plan);
  test('every caution of the plan is printed once: here, on the front, in a row, or as a line of a card', () => {
    const lines = (sections.get('Cautions of the day') ?? []).join('\n');
    const all = [...plan.cautions, ...plan.products.flatMap(cautionsOf)];
    for (const says of new Set(all.map(saysOf))) {
      const texts = [...new Set(all.filter((each) => saysOf(each) === says).map(({ text }) => text))];
      const times = texts.reduce((sum, text) => sum + lines.split(text).length - 1, 0);
      expect(times, says).toBe(said.has(says) ? 0 : 1);
    }
  });
  test('what is left out and not made, with why', () => {
    for (const { reason } of plan.leftOut)
      expect(sections.get('Left out, and what would let it in')?.join('\n')).toContain(reason.text);
    for (const { reason } of plan.notMade)
      expect(sections.get('Why this and not that')?.join('\n')).toContain(reason.text);
  });
  test('every source of the basis is named once, and no line is empty', () => {
    const lines = sections.get('Sources') ?? [];
    const ids = new Set(plan.basis.flatMap(({ source }) => (source === undefined ? [] : [source])));
    const kinds = new Set(plan.basis.map(({ kind }) => kind));
    const others = Number(kinds.has('common-practice')) + Number(kinds.has('recalled'));
    expect(lines.length).toBe(ids.size + others);
    for (const text of [...sections.values()].flat()) expect(text.trim()).not.toBe('');
  });
  test('what has no source is said in words, never by the name of a field', () => {
    const unsaid = plan.basis.filter(
      ({ kind, note }) => /^(common-practice|recalled)$/.test(kind) && note === undefined,
    );
    expect(unsaid).toEqual([]);
    const said = (sections.get('Sources') ?? []).filter((line) => /^(Common practice|Recalled)/.test(line)).join('\n');
    expect(said).not.toMatch(/\[\]|\.;/);
  });
});
test('limits only where the plan was asked for them', () => {
  const input = { ...exampleDay('day.json') };
  const asked = backFor(feasible({ ...input, oneMore: true }))
    .sections.get('Why this and not that')
    ?.join('\n');
  expect(asked).toMatch(/One more of .* adds \d+\.\d\d worth\./);
  expect(backFor(feasiblePlan('the example')).sections.get('Why this and not that')?.join('\n')).not.toContain(
    'One more of',
  );
});
test('what is kept fresh and what is not sound', () => {
  const left = backFor(feasiblePlan('no products named')).sections.get('Left over')?.join('\n');
  expect(left).toMatch(/of strawberry kept to eat fresh/);
  expect(left).toMatch(/of strawberry not sound/);
});
test('a day without prices has no costs', () => {
  const plan = planDay({
    lots: [{ food: 'apple', raw: '9 lb' }],
    kitchen: { elevation: '1 m', hours: '4 h', freezer: { room: '9 L' } },
    products: [{ make: 'frozen', from: 'apple' }],
  });
  if (!plan.feasible) throw new Error('no plan');
  expect(backFor(plan).sections.has('Costs')).toBe(false);
});
