import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { runExample } from '../helpers/examples';
import { COMMANDS, examplesPage, headOf, PAGE, PROGRAMS, programOf, QUESTIONS } from './examplesPage';

const root = new URL('../../', import.meta.url).pathname;

test('docs/examples.md is what the programs print (npx tsx tests/docs/examplesPage.ts writes it)', async () => {
  const printed = new Map<string, string>();
  for (const [name, options] of PROGRAMS) {
    const run = await runExample(name, ...options);
    expect([run.exit, run.complained], name).toEqual([0, '']);
    printed.set(name, run.printed);
  }
  expect(readFileSync(root + PAGE, 'utf8')).toBe(examplesPage(printed));
  printed.set('will-it-keep', 'yes\n');
  expect(readFileSync(root + PAGE, 'utf8')).not.toBe(examplesPage(printed));
});

test('every program is on the page', () => {
  const files = readdirSync(`${root}examples`).filter((file) => file.endsWith('.mjs'));
  expect(PROGRAMS.map(([name]) => `${name}.mjs`).sort()).toEqual(files.sort());
});

test('no two programs have one question', () => {
  const questions = [...QUESTIONS.map((name) => headOf(name).question), ...COMMANDS.map(({ question }) => question)];
  expect(new Set(questions).size).toBe(questions.length);
});

test.each(QUESTIONS)('%s is short, says that it is invented, and needs nothing but the package', (name) => {
  const program = programOf(name);
  expect(program.trimEnd().split('\n').length).toBeLessThan(40);
  expect(headOf(name, program).scenario).not.toBe('');
  for (const [, from] of program.matchAll(/ from '([^']+)'/g)) expect(from).toMatch(/^stillroom(\/[\w-]+)?$/);
});

test('a first line without its question or its scenario is refused', () => {
  expect(() => headOf('x', '/** How much salt? In a crock. */\n')).toThrow('Invented');
  expect(() => headOf('x', '/** Salt. Invented: a crock. */\n')).toThrow('question');
});
