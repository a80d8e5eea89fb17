/** The committed notebook, as its file stands; `run.sh` beside this runs its cells. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Cell, differences, type Notebook, type Output, readNotebook, textOf, tidied } from './notebook';

const file = new URL('../../examples/notebook/a-day.ipynb', import.meta.url);
const notebook = readNotebook(file);
const code = notebook.cells.filter(({ cell_type }) => cell_type === 'code');
const outputsOf = ({ outputs = [] }: Cell): readonly Output[] => outputs;
const formsOf = (cell: Cell): string[] =>
  outputsOf(cell).flatMap(({ text, data = {} }) => [text, ...Object.values(data)].map((form) => textOf(form ?? '')));

describe('the committed notebook', () => {
  it('is a notebook of format 4, as --write leaves it', () => {
    expect(notebook.nbformat).toBe(4);
    expect(readFileSync(file, 'utf8')).toBe(`${JSON.stringify(tidied(notebook), null, 1)}\n`);
  });

  it('has run from the first cell to the last without an error', () => {
    expect(code.map(({ execution_count }) => execution_count)).toEqual(code.map((_, index) => index + 1));
    expect(code.flatMap(outputsOf).filter(({ output_type }) => output_type === 'error')).toEqual([]);
    expect(code.flatMap(outputsOf).filter(({ name }) => name === 'stderr')).toEqual([]);
  });

  it('shows something in every cell that prints, tables or draws', () => {
    const showing = code.filter(({ source }) => /^(show|table|markdown|console\.log)\(/m.test(textOf(source)));
    expect(showing.length).toBeGreaterThan(15);
    expect(showing.filter((cell) => outputsOf(cell).length === 0)).toEqual([]);
  });

  it('draws every chart, and describes it in words', () => {
    const charts = code.filter(({ source }) => /^show\(/m.test(textOf(source)));
    expect(charts.length).toBeGreaterThanOrEqual(6);
    for (const cell of charts) {
      const data = outputsOf(cell)[0]?.data ?? {};
      expect(textOf(data['image/svg+xml'])).toMatch(/^<svg.*<path.*<\/svg>$/s);
      expect(textOf(data['text/plain']).length).toBeGreaterThan(40);
    }
  });

  it('imports the package by name, and nothing from elsewhere', () => {
    const imported = code.flatMap(({ source }) =>
      [...textOf(source).matchAll(/from '([^']*)'/g)].map(([, from]) => from),
    );
    expect(imported.length).toBeGreaterThan(10);
    expect(imported.filter((from) => !/^stillroom(\/[\w-]+)?$/.test(from ?? '') && from !== './show.ts')).toEqual([]);
  });

  it('names no path of a machine', () => {
    const text = readFileSync(file, 'utf8');
    expect(text.match(/(file:|\/(home|root|work|tmp|usr|var|Users)\/|[A-Z]:\\\\)/g)).toBeNull();
  });

  it('has no figure that is none', () => {
    expect(code.flatMap(formsOf).filter((form) => /\b(NaN|undefined|null|Infinity)\b|\[object/.test(form))).toEqual([]);
  });

  it('says that its day is invented', () => {
    expect(textOf(notebook.cells[0]?.source)).toContain('The day is invented');
  });
});

describe('differences', () => {
  const stream = (text: string): Output => ({ output_type: 'stream', name: 'stdout', text });
  const chart = (svg: string): Output => ({ output_type: 'execute_result', data: { 'image/svg+xml': svg } });
  const run = (...outputs: Output[]): Notebook => ({
    cells: [{ cell_type: 'code', source: 'f()', metadata: {}, execution_count: 1, outputs }],
    metadata: {},
    nbformat: 4,
    nbformat_minor: 5,
  });

  it('lets counts, names of cells, timings and the way a text was split go by', () => {
    const fresh = run(stream('7 jars\n'), stream('2 loads\n'));
    const other = fresh.cells.map((cell) => ({ ...cell, id: 'x', execution_count: 9, metadata: { took: '3 s' } }));
    expect(differences(run(stream('7 jars\n2 loads\n')), { ...fresh, cells: other })).toEqual([]);
  });

  it('finds a text, a drawing, an error and an output that differ, by cell and line', () => {
    expect(differences(run(stream('7 jars\n2 loads\n')), run(stream('7 jars\n3 loads\n')))).toEqual([
      'cell 1, output 1, stdout: line 2\n  committed: 2 loads\n  now:       3 loads',
    ]);
    expect(differences(run(chart('<svg>\n<a/></svg>')), run(chart('<svg>\n<b/></svg>')))).toEqual([
      'cell 1, output 1, image/svg+xml: line 2\n  committed: <a/></svg>\n  now:       <b/></svg>',
    ]);
    const error = { output_type: 'error', ename: 'StillroomError', evalue: 'raw: wrong' };
    expect(differences(run(), run(error))).toEqual(['cell 1, output 1, error: not committed']);
    expect(differences(run(stream('7 jars')), run())).toEqual(['cell 1, output 1, stdout: no longer shown']);
    expect(differences(run(stream('7')), run(stream('7\n')))).toHaveLength(1);
    expect(differences(run(), { ...run(), cells: [] })).toEqual(['1 cells committed, 0 run']);
  });
});
