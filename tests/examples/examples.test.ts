import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { planProblems } from '../../src/plan/index';
import { runExample } from '../helpers/examples';
import { exampleDay } from '../helpers/plans';

const SCRIPTS = ['plan-a-day', 'record-a-batch', 'learn-from-records', 'print-labels', 'plan-record-learn'] as const;
let folder = '';
let [printed, complained] = ['', ''];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'examples-'));
  [printed, complained] = ['', ''];
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Runs an example; what it prints is in `printed`. */
async function run(script: (typeof SCRIPTS)[number], ...options: string[]): Promise<number> {
  const done = await runExample(script, ...options);
  printed += done.printed;
  complained += done.complained;
  return done.exit;
}
const file = (name: string) => join(folder, name);
const inFile = (name: string) => readFileSync(file(name), 'utf8');

describe.each(SCRIPTS)('%s', (script) => {
  test('runs on its sample without an option', async () => {
    expect([await run(script), complained]).toEqual([0, '']);
    expect(printed.length).toBeGreaterThan(100);
  });
  test('--help says what each option is', async () => {
    await run(script, '--help');
    for (const option of ['--input', '--output']) expect(printed).toContain(option);
  });
  test('--output writes what else is printed', async () => {
    await run(script, '--output', file('page.txt'));
    expect(printed).toBe('');
    expect(inFile('page.txt').length).toBeGreaterThan(100);
  });
  test('a file that is not there is named', async () => {
    expect(await run(script, '--input', file('nothing.json'))).toBe(1);
    expect(complained).toContain('nothing.json');
  });
});

test('all mistakes of a day are told at once, each with the nearest right word', async () => {
  const day = exampleDay('kitchens/plums.json');
  const wrong = {
    ...day,
    lots: [{ food: 'plum', raw: '40 lb', sond: '91 %' }],
    kitchen: { ...day.kitchen, burner: 4, elevation: '900' },
    products: [{ make: 'lether', from: 'plum' }],
  };
  writeFileSync(file('day.json'), JSON.stringify(wrong));
  expect(await run('plan-a-day', '--input', file('day.json'))).toBe(1);
  for (const said of [
    '4 things are wrong',
    'lots[0].sond',
    'sound',
    'kitchen.burner',
    'burners',
    'kitchen.elevation',
    'leather',
  ])
    expect(complained).toContain(said);
});

test('what does not hold together is told at once too', () => {
  const day = exampleDay('kitchens/plums.json');
  const wrong = {
    ...day,
    kitchen: { ...day.kitchen, lids: { count: 48, price: '0.30 EUR' }, utilities: { gas: '1.50 USD' } },
    products: [{ make: 'leather', from: 'plum', least: 5, most: 3 }],
  };
  const paths = planProblems(wrong).map(({ path }) => path);
  expect(paths).toEqual(['kitchen.lids.price', 'products[0].least', 'kitchen.utilities.stove']);
});

test('what only the tables can tell is told where all else is right', () => {
  const found = planProblems({
    ...exampleDay('kitchens/plums.json'),
    lots: [{ food: 'plum', raw: '2 hampers' }],
    products: [],
  });
  expect(found.map(({ path }) => path)).toEqual(['lots[0].raw']);
});

test('every kitchen that comes with the examples is a day that planDay takes', () => {
  for (const name of ['day', 'day-metric', 'circle/day', 'circle/next-day'])
    expect(planProblems(exampleDay(`${name}.json`)), name).toEqual([]);
});

test('the steps one by one: record, learn, plan with what was learned', async () => {
  await run('record-a-batch', '--records', file('records.json'), '--output', file('review.txt'));
  await run(
    'learn-from-records',
    '--input',
    file('records.json'),
    '--learned',
    file('learned.json'),
    '--output',
    file('words.txt'),
  );
  const next = join(import.meta.dirname, '../../examples/circle/next-day.json');
  await run('plan-a-day', '--input', next, '--output', file('book.md'));
  await run('plan-a-day', '--input', next, '--learned', file('learned.json'), '--output', file('own.md'));
  expect(complained).toBe('');
  // one jar of the second load did not seal
  expect(inFile('review.txt')).toContain('1 of 6 jars not sealed');
  // three batches weighed: 10.2, 10.5 and 10.1 lb of 14 lb
  expect(inFile('words.txt')).toContain('peach halves, 3 records: 66 % to 84 %');
  expect(inFile('own.md')).not.toBe(inFile('book.md'));
});

test('every wrong batch of a file is named', async () => {
  writeFileSync(file('batches.json'), JSON.stringify([{ date: '2026-08-14' }, { name: 'jam', date: 'August' }]));
  expect(await run('record-a-batch', '--input', file('batches.json'))).toBe(1);
  for (const said of ['2 things are wrong', '[0].', '[1].']) expect(complained).toContain(said);
});
