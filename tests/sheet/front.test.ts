import { describe, expect, test } from 'vitest';
import { saysOf } from '../../src/sheet/beside';
import { clockOf } from '../../src/sheet/clock';
import { frontOf } from '../../src/sheet/front';
import { measureIn } from '../../src/sheet/measure';
import { FEASIBLE_NAMES, feasiblePlan } from './days';

const made = (name: (typeof FEASIBLE_NAMES)[number]) => {
  const plan = feasiblePlan(name);
  const clock = clockOf(plan.schedule);
  return { plan, clock, ...frontOf({ plan, clock, measure: measureIn('us') }, undefined, false) };
};

describe.each(FEASIBLE_NAMES)('%s', (name) => {
  const { plan, clock, front, said } = made(name);
  const line = (label: string) => front.lines.find((each) => each.label === label)?.text ?? '';
  test('minutes, pressure, jars and headspace of a row are those of the plan', () => {
    const timers = front.rows.filter(({ kind }) => kind === 'timer');
    for (const { tasks, loads } of timers) {
      const cans = tasks.map((index) => plan.schedule.tasks[index]).filter((task) => task?.kind === 'can');
      expect(loads.length).toBe(cans.length);
      cans.forEach((task, index) => {
        const jars = plan.products.find((product) => product.name === task?.forProducts[0])?.canning;
        expect(loads[index]).toContain(`${task?.units?.count} `);
        expect(loads[index]).toContain(`${jars?.minutes} min`);
        if (jars?.pressure !== undefined) expect(loads[index]).toContain(`${jars.pressure.value} psi`);
      });
    }
    for (const { tasks, hands, starts } of front.rows) {
      for (const index of tasks) {
        const task = plan.schedule.tasks[index];
        if (task?.kind !== 'fill' || task.units === undefined || task.units.unit === 'tray') continue;
        expect(hands).toContain(` ${task.units.count} `);
        expect(starts).toContain(task.startMinute);
      }
    }
  });
  test('every time of day on it is one of the plan', () => {
    const { tasks, windows, makespan, resources } = plan.schedule;
    const hours = plan.products.flatMap(({ drying: trays }) =>
      trays?.hours === undefined ? [] : [60 * trays.hours.low.value],
    );
    const known = new Set(
      [
        0,
        makespan,
        ...tasks.flatMap(({ startMinute: start, endMinute: end }) => [start, end, ...hours.map((low) => start + low)]),
        ...windows.flatMap(({ startMinute: from, endMinute: to }) => [from, to]),
        ...resources.flatMap(({ busyUntilMinute: busyUntil }) => (busyUntil === undefined ? [] : [busyUntil])),
      ].map(clock.time),
    );
    const shown = JSON.stringify(front).match(/\b\d{1,2}:\d{2}\b/g) ?? [];
    expect(shown.filter((time) => !known.has(time))).toEqual([]);
  });
  test('what to count on, what to buy, what to have ready', () => {
    for (const { name: product, units, canning } of plan.products) {
      const short = product.replace(/,? in (quarts|pints|half-pints)$/, '');
      const many = `${units.promised} ${units.promised === 1 ? units.unit : units.plural}`;
      const text = canning === undefined ? `${short}: ${many}` : `${many} of ${short}`;
      expect(
        line('COUNT ON')
          .split(' · ')
          .map((each) => each.replace(/^\S+ /, '')),
      ).toContain(text);
    }
    for (const { what, needed: amount, short } of plan.haveReady) {
      if (short !== undefined) expect(line('BUY')).toContain(what);
      if (typeof amount === 'number') expect(line('READY')).toContain(`${amount} ${what}`);
    }
  });
  test('at most three cautions, dangers first, each of the product whose row it stands before', () => {
    const cautions = front.rows.flatMap((row, index) => (row.kind === 'caution' ? [{ row, index }] : []));
    expect(cautions.length).toBeLessThanOrEqual(3);
    const dangers = plan.products.flatMap(({ cautions: own }) => own.filter(({ severity }) => severity === 'danger'));
    for (const { row } of cautions) {
      expect(dangers.map(({ text }) => text)).toContain(row.hands);
      const found = dangers.find(({ text }) => text === row.hands);
      expect(found === undefined ? '' : said.has(saysOf(found))).toBe(true);
    }
    for (const { row, index } of cautions) {
      const next = front.rows.slice(index).find(({ kind }) => kind !== 'caution');
      expect(next?.letters).toBe(row.letters);
    }
  });
  test('four numbers to write down, and a box for tomorrow', () => {
    const [write, tomorrow] = front.foot;
    expect(write?.text.split(' · ').length).toBe(4);
    expect(tomorrow?.text).toMatch(/^\uE000 /);
  });
});
test('jars cooling, seals and dates tomorrow; what dries is tested when its hours are over', () => {
  const { front } = made('the example');
  const text = front.foot[1]?.text ?? '';
  expect(text).toContain('jars cooled 12 to 24 h');
  expect(text).toMatch(/[A-H] \d+ trays from (next day )?\d+:\d\d: test for dryness/);
});
test('the example stays within a page: at most 45 rows with its cautions', () => {
  const { front } = made('the example');
  expect(front.rows.length).toBeLessThanOrEqual(45);
});
test('days whose rows are the same stand under one heading', () => {
  const plan = feasiblePlan('evenings alike');
  const clock = clockOf(plan.schedule);
  const { front } = frontOf({ plan, clock, measure: measureIn('us') }, undefined, false);
  const days = front.rows.filter(({ kind }) => kind === 'day').map(({ hands }) => hands);
  expect(days).toContain('Day 2 to Day 4');
});
