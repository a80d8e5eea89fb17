import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { lazyConstants } from './lazyConstants';

let folder = '';
afterEach(() => rmSync(folder, { recursive: true }));

/** How a file is written, among these. */
function written(files: Readonly<Record<string, string>>, name = 'a.ts'): string {
  folder = mkdtempSync(join(tmpdir(), 'lazy-'));
  const all = { 'common/lazily.ts': 'export const lazily = (make: unknown) => make;', ...files };
  const paths = Object.entries(all).map(([each, text]) => {
    const path = join(folder, each);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    return path;
  });
  return lazyConstants(paths, join(folder, 'common/lazily.ts'))(join(folder, name));
}
const made = (value: string) => `/* @__PURE__ */ lazily(() => { const made = ${value}; return made; })`;

describe('what takes work is made at first use', () => {
  test.each([
    ['a call', 'const a = f(1);', `const a = ${made('f(1)')};`],
    ['what is read of another', 'const o = { a: 1 };\nconst a = o.a;', `const a = ${made('o.a')};`],
    ['a list of a call', 'const a = [1, f(2)];', `const a = ${made('[1, f(2)]')};`],
    ['a list that is spread', 'const l = [1];\nconst a = [...l];', `const a = ${made('[...l]')};`],
    ['one made of another', 'const a = f(1);\nconst b = { a };', `const b = ${made('{ a: a() }')};`],
    ['the given type stays', 'const a: string = f(1);', 'const made: string = f(1);'],
  ])('%s', (_, text, expected) => {
    const result = written({ 'a.ts': text });
    expect(result).toContain(expected);
    expect(result).toContain("import { lazily } from './common/lazily';");
  });

  test('each name of a pattern, all from one making', () => {
    const result = written({ 'a.ts': 'const { b, c } = f(1);\nexport const sum = () => b + c;' });
    expect(result.match(/f\(1\)/g)).toHaveLength(1);
    expect(result).toContain('() => b() + c()');
  });

  test('an imported table, and a constant of another file', () => {
    const result = written({
      'a.ts':
        "import json from './x.json';\nimport { rows as all } from './b';\nexport const n = () => json.length + all[0];",
      'b.ts': 'export const rows = f(1);',
    });
    expect(result).toContain('() => json().length + all()[0]');
    expect(result).toContain("import { rows as all } from './b';");
  });
});

describe('the rest stays as it is', () => {
  test.each([
    ['numbers and texts', "const a = 24 * 60;\nconst b = 'x';\nexport const c = () => a + b;"],
    ['functions', 'const a = () => f(1);\nexport function b() { const x = f(2); return x; }'],
    ['lists and objects of plain values', "const a = ['x', -1, null];\nexport const b = { a, c: [1] } as const;"],
    ['an empty map, which a function fills', 'const a = new Map<string, number>();'],
    ['a name that hides a constant', 'export const f = (rows: number) => rows + 1;'],
    ['types of constants', 'const a = [1];\nexport type A = typeof a;'],
  ])('%s', (_, text) => {
    expect(written({ 'a.ts': text })).toBe(text);
  });

  test('keys and hidden names that are spelled like a constant', () => {
    const result = written({
      'a.ts':
        'const rows = f(1);\nexport const g = (rows: number, o: { rows: number }) => ({ rows, more: o.rows });\nexport type R = typeof rows;',
    });
    expect(result).toContain('=> ({ rows, more: o.rows });\nexport type R = typeof rows;');
  });
});

test('an entry may not export what would be lazy: a caller would get a function', () => {
  expect(() =>
    written({ 'm/index.ts': "export { a } from './a';", 'm/a.ts': 'export const a = f(1);' }, 'm/a.ts'),
  ).toThrow(/exports a, a constant that takes work/);
});
