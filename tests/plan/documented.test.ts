import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';

const request = new URL('../../src/plan/request/', import.meta.url).pathname;
const check = new URL('../../src/plan/check/', import.meta.url).pathname;
const recipes = new URL('../../src/recipes/', import.meta.url).pathname;
const FILES = [
  `${recipes}kitchen`,
  ...['dayPlan', 'plannedProduct', 'daySchedule', 'planInput', 'planFields', 'learned'].map((name) => request + name),
  ...['checkSchedule', 'brokenRule'].map((name) => check + name),
];
/** Words of the grammar, described once where they are read. */
const GRAMMAR: ReadonlySet<string> = new Set(['jar', 'method', 'holds', 'feasible']);

/** The fields of a file's interfaces and schemas that have no line of their own. */
function bare(path: string): string[] {
  const text = readFileSync(`${path}.ts`, 'utf8');
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const check = (member: ts.Node, name: ts.PropertyName | undefined): void => {
    const own = name?.getText(tree) ?? '';
    const comments = ts.getLeadingCommentRanges(text, member.getFullStart()) ?? [];
    if (!GRAMMAR.has(own) && !comments.some(({ pos }) => text.startsWith('/**', pos))) found.push(own);
  };
  const visit = (node: ts.Node): void => {
    const exported =
      ts.isInterfaceDeclaration(node) && node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    if (exported && node.name.text !== 'Learned') for (const member of node.members) check(member, member.name);
    const [shape] = ts.isCallExpression(node) && node.expression.getText(tree) === 'fields' ? node.arguments : [];
    if (shape !== undefined && ts.isObjectLiteralExpression(shape))
      // fields that are spread in are described where they are written
      for (const member of shape.properties) if (!ts.isSpreadAssignment(member)) check(member, member.name);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

test.each(FILES.map((path) => [path.split('/').at(-1) ?? '', path]))('%s: every field has its own line', (_, path) => {
  expect(bare(path)).toEqual([]);
});
