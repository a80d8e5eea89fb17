import { expect, test } from 'vitest';
import type { PlannedProduct } from '../../src/plan/request/plannedProduct';
import { clockOf } from '../../src/sheet/clock';
import { measureIn } from '../../src/sheet/measure';
import { handsText, startText, trimmingsText } from '../../src/sheet/rowTexts';
import { timerOf } from '../../src/sheet/timers';
import { type Day, feasiblePlan } from './days';

const penOf = (name: Day) => {
  const plan = feasiblePlan(name);
  return { plan, clock: clockOf(plan.schedule), measure: measureIn('us') };
};
type Pen = ReturnType<typeof penOf>;
const taskOf = ({ plan }: Pen, kind: string) => plan.schedule.tasks.find((task) => task.kind === kind) as never;
/** The same pen, the first product of a task changed. */
const withProduct = (pen: Pen, kind: string, given: object): Pen => {
  const [name] = (taskOf(pen, kind) as { forProducts: string[] }).forProducts;
  const change = (product: PlannedProduct) => (product.name === name ? { ...product, ...given } : product);
  return { ...pen, plan: { ...pen.plan, products: pen.plan.products.map(change) } };
};

test('a batch of several lots says how much of each goes in', () => {
  const pen = penOf('drying only');
  const lots = [
    { lot: 'plums', food: 'plum', raw: { value: 9, unit: 'lb' } },
    { lot: 'pears', food: 'pear', raw: { value: 3, unit: 'lb' } },
  ];
  const task = { ...(taskOf(pen, 'prepare') as object), what: 'plums and pears', raw: { value: 8, unit: 'lb' } };
  const text = handsText(withProduct(pen, 'prepare', { fromLots: lots }), task as never);
  expect(text).toBe('Prepare 6 lb of plums, 2 lb of pears');
});
test('jars that may stay empty are no order', () => {
  const pen = withProduct(penOf('the example'), 'fill', {
    units: { unit: 'quart jar', plural: 'quart jars', promised: 14, likely: 16, ready: 21 },
  });
  const task = taskOf(pen, 'fill') as { forProducts: string[] };
  const canned = pen.plan.schedule.tasks.find(
    ({ kind, units, forProducts }) => kind === 'fill' && units?.unit === 'quart jar' && forProducts[0] !== undefined,
  );
  expect(task).toBeDefined();
  const text = handsText(pen, canned as never);
  expect(text).toMatch(/FILL up to 7 quart jars to 1\/2 in.*, likely 5$/);
});
test('acid has a word of its own, where it goes in', () => {
  const pen = penOf('the example');
  const acid = { acidToAdd: '2 tbsp of bottled lemon juice to each jar' };
  const task = pen.plan.schedule.tasks.find(({ kind, units }) => kind === 'fill' && units?.unit === 'quart jar');
  const canning = pen.plan.products.find(({ name }) => name === task?.forProducts[0])?.canning;
  const change = (acidGoesInto: 'each jar' | 'recipe') => ({
    ...pen,
    plan: {
      ...pen.plan,
      products: pen.plan.products.map((each) =>
        each.name === task?.forProducts[0]
          ? { ...each, canning: { ...canning, ...acid, acidGoesInto } as never }
          : each,
      ),
    },
  });
  expect(handsText(change('each jar'), task as never)).toContain('ACID: 2 tbsp');
  const cook = { ...task, kind: 'cook', units: undefined } as never;
  expect(handsText(change('each jar'), cook)).not.toContain('ACID');
  expect(handsText(change('recipe'), task as never)).not.toContain('ACID');
  expect(handsText(change('recipe'), cook)).toContain('ACID: 2 tbsp');
});
test('water to blanch in is put on as water, and food is blanched by its own name', () => {
  const pen = penOf('two days under pressure');
  expect(startText(pen, taskOf(pen, 'heat water'), 'stove')).toBe('Put on the water to blanch green bean');
  expect(handsText(pen, taskOf(pen, 'blanch'))).toMatch(/^Blanch green bean, \d+ batch/);
});
test('a load says its canner where the day has more than one', () => {
  const pen = penOf('the example');
  const load = taskOf(pen, 'can');
  const [, canner] = /IN (.*?)\uE004/.exec(timerOf(pen, load)) ?? [];
  expect(canner).toBeUndefined();
  const [product] = pen.plan.products;
  const other = { ...product, name: 'other', canning: { loads: [{ canner: 'other canner' }] } } as never;
  const two = { ...pen, plan: { ...pen.plan, products: [...pen.plan.products, other] } };
  expect(timerOf(two, load)).toMatch(/jars IN big enamel canner/);
});

test('trimmings are kept where a product of them is prepared later, and not after it', () => {
  const pen = penOf('the example');
  const { tasks } = pen.plan.schedule;
  const powder = tasks.findIndex(({ kind, what }) => kind === 'prepare' && what.startsWith('trimmings'));
  const apples = tasks.filter(({ kind, what }) => kind === 'prepare' && what === 'apples from the tree');
  expect(apples.length).toBeGreaterThan(1);
  for (const task of apples) {
    const before = task.endMinute <= (tasks[powder]?.startMinute ?? 0);
    expect(trimmingsText(pen, task)).toBe(before ? '; keep the sound trimmings for F' : '');
  }
  const late = { ...apples[0], endMinute: (tasks[powder]?.startMinute ?? 0) + 1 };
  expect(trimmingsText(pen, late as never)).toBe('');
  expect(trimmingsText(pen, taskOf(pen, 'fill'))).toBe('');
  expect(trimmingsText(pen, tasks[powder] as never)).toBe('');
  const plums = tasks.find(({ kind, what }) => kind === 'prepare' && what === 'plums from the market');
  expect(trimmingsText(pen, plums as never)).toBe('');
});
test('puree is spread as deep as the page says', () => {
  const pen = penOf('the example');
  const spread = pen.plan.schedule.tasks.find(({ kind, units }) => kind === 'fill' && units?.unit === 'sheet');
  expect(handsText(pen, spread as never)).toMatch(/^Spread up to \d sheets 1\/8 in deep, likely \d$/);
});
