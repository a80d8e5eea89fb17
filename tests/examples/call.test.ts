/** Another language uses the package as it is built: one program that calls any function, and one script for each language. */
import { execFileSync, spawnSync } from 'node:child_process';
import { copyFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { call, catalogue } from '../../src/catalogue/index';
import { builtProject, type Project } from '../build/built';

const examples = new URL('../../examples/', import.meta.url).pathname;
let project: Project;
beforeAll(async () => {
  project = await builtProject();
  for (const script of ['call.mjs', 'call.py', 'call.R']) copyFileSync(examples + script, join(project.folder, script));
});
afterAll(() => project.remove());

function run(program: string, args: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(program, args, { cwd: project.folder, input, encoding: 'utf8' });
  return { status, stdout, stderr };
}
const node = (args: readonly string[], input?: string) => run('node', ['call.mjs', ...args], input);
const inPackage = (...path: string[]) => join(project.installed, 'dist', ...path);

describe('call.mjs', () => {
  test('prints the answer as JSON', () => {
    const { status, stdout } = node(['airPressure'], '{ "elevation": "900 ft" }');
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toEqual(call('airPressure', { elevation: '900 ft' }));
    expect(node(['sources']).status).toBe(0);
  });

  test.each([
    ['airPressure', '{ "elevatoin": "900 ft" }', { code: 'MISSING', path: 'elevation' }],
    ['airPresure', '{}', { code: 'UNKNOWN_NAME', path: 'name' }],
    ['airPressure', '{ elevation', { code: 'NOT_JSON' }],
  ])('prints what is wrong as JSON: %s %s', (name, input, error) => {
    const { status, stdout } = node([name], input);
    expect(status).toBe(1);
    expect(JSON.parse(stdout)).toMatchObject({ error });
  });

  test('answers line by line, and goes on after a mistake', () => {
    const lines = ['{ "call": "convert", "input": ["1 cup", "tbsp"] }', 'what?', '{ "call": "foods" }'];
    const answers = node(['--lines'], `${lines.join('\n')}\n`)
      .stdout.trim()
      .split('\n');
    expect(answers.map((line) => JSON.parse(line))).toEqual([
      { value: 16, unit: 'tbsp' },
      { error: expect.objectContaining({ code: 'NOT_JSON' }) },
      call('foods'),
    ]);
  });

  test('--help says how it is called', () => {
    expect(node(['--help']).stdout).toContain('--lines');
  });

  test('without a name lists the functions', () => {
    expect(node([]).stdout.trim().split('\n')).toHaveLength(catalogue().length);
  });
});

/** Whether a program runs here. */
const runs = (program: string, ...args: string[]): boolean => spawnSync(program, args).status === 0;
const SCRIPTS = [
  { script: 'call.py', program: 'python3', there: runs('python3', '--version') },
  { script: 'call.R', program: 'Rscript', there: runs('Rscript', '-e', 'library(jsonlite)') },
];
const LANGUAGES = SCRIPTS.map((each) => ({ ...each, why: each.there ? '' : ` (there is no ${each.program} here)` }));
describe.each(LANGUAGES)('$script$why', ({ script, program, there }) => {
  test.runIf(there)('passes the check vectors of the package', () => {
    for (const file of ['steam-boiling.json', 'quantity-units.json', 'jars-fill.json']) {
      const { status, stdout, stderr } = run(program, [script, inPackage('vectors', file)]);
      expect(stdout + stderr).toMatch(/^(\d+) of \1 checks pass|in another unit/);
      expect(status).toBe(0);
    }
  });
});

describe('the files for other languages', () => {
  test('are the schemas of each function, as the catalogue has them, and an index', () => {
    const functions = catalogue();
    expect(readdirSync(inPackage('schemas'))).toHaveLength(functions.length * 2 + 2);
    const text = (file: string) => readFileSync(inPackage('schemas', `${file}.json`), 'utf8');
    const shared = JSON.parse(text('definitions')).$defs;
    // what a file refers to is in the file of definitions
    const read = (file: string) => JSON.parse(text(file).replaceAll('"definitions.json#', '"#'));
    for (const { name, input, output } of functions) {
      for (const [file, { $defs = {}, ...schema }] of [
        [`${name}.input`, input],
        [`${name}.output`, output],
      ] as const) {
        expect(read(file)).toEqual(schema);
        expect(shared).toMatchObject($defs as object);
      }
    }
    expect(read('index')).toEqual(functions.map(({ input: _, output: __, ...rest }) => rest));
  });

  test('are the check vectors', () => {
    const shared = new URL('../../shared/', import.meta.url).pathname;
    expect(readdirSync(inPackage('vectors')).sort()).toEqual(readdirSync(shared).sort());
  });

  test('have their subpaths in the package', () => {
    const paths = ['stillroom/schemas/fillJar.input.json', 'stillroom/vectors/jars-fill.json'];
    const print = `for (const path of ${JSON.stringify(paths)}) console.log(Object.keys(require(path)).length > 1)`;
    expect(execFileSync('node', ['-e', print], { cwd: project.folder, encoding: 'utf8' })).toBe('true\ntrue\n');
  });
});
