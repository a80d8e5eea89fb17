import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';

/** The most lines of a file, and of a function with what stands inside it. */
const MOST_LINES = { file: 300, function: 80 };

const source = new URL('../src/', import.meta.url).pathname;
const files = readdirSync(source, { recursive: true })
  .map(String)
  .filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts'))
  .sort();

/** The functions of a file with their lines, docstrings not counted. */
function functionsOf(file: string, text: string): { readonly name: string; readonly lines: number }[] {
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: { name: string; lines: number }[] = [];
  const lineOf = (position: number) => tree.getLineAndCharacterOfPosition(position).line;
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body !== undefined) {
      const lines = lineOf(node.end) - lineOf(node.getStart(tree)) + 1;
      const parent = node.parent;
      const name =
        node.name?.getText(tree) ?? (ts.isVariableDeclaration(parent) ? parent.name.getText(tree) : 'a function');
      found.push({ name, lines });
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

const texts = files.map((file) => [file, readFileSync(source + file, 'utf8')] as const);

/** Files that are longer still, and may not grow. */
const LONG_FILES: Readonly<Record<string, number>> = {};

test('no file is longer than 300 lines', () => {
  const long = texts
    .map(([file, text]) => ({ file, lines: text.trimEnd().split('\n').length }))
    .filter(({ file, lines }) => lines > (LONG_FILES[file] ?? MOST_LINES.file));
  expect(long).toEqual([]);
});
test('no function is longer than 80 lines', () => {
  const all = texts.flatMap(([file, text]) => functionsOf(file, text).map((each) => ({ file, ...each })));
  expect(all.length).toBeGreaterThan(1000);
  expect(all.filter(({ lines }) => lines > MOST_LINES.function)).toEqual([]);
});
