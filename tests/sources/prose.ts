/** Finds code that reads prose: a wording searched, matched or compared to decide something. */
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';

/** Fields whose text is for people. */
const PROSE = new Set(['of', 'note', 'notes', 'what', 'text', 'reason', 'basis', 'title', 'quantity', 'about']);
/** Ways to look into a text. */
const READERS = new Set(['match', 'matchAll', 'includes', 'startsWith', 'endsWith', 'indexOf', 'search', 'split']);
const BY_PATTERN = new Set(['test', 'exec']);

export interface Found {
  readonly line: number;
  readonly code: string;
}

/** The name of a prose field that an expression reads: `row.note`, `row['note']`, `note` taken out of a row. */
function proseOf(node: ts.Node, taken: ReadonlySet<string>): string | undefined {
  if (ts.isPropertyAccessExpression(node)) {
    if (PROSE.has(node.name.text)) return node.name.text;
    return proseOf(node.expression, taken); // row.note.trim()
  }
  if (ts.isElementAccessExpression(node)) {
    const key = node.argumentExpression;
    return ts.isStringLiteral(key) && PROSE.has(key.text) ? key.text : proseOf(node.expression, taken);
  }
  if (ts.isCallExpression(node)) return proseOf(node.expression, taken);
  if (ts.isNonNullExpression(node) || ts.isParenthesizedExpression(node) || ts.isAsExpression(node))
    return proseOf(node.expression, taken);
  if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken)
    return proseOf(node.left, taken);
  return ts.isIdentifier(node) && taken.has(node.text) ? node.text : undefined;
}

/** Names that a function takes out of its arguments or of objects: `({ note }) =>`, `const { of: words } = line`. */
function takenIn(scope: ts.Node): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isBindingElement(node) && ts.isIdentifier(node.name)) {
      const field = node.propertyName ?? node.name;
      if (ts.isIdentifier(field) && PROSE.has(field.text)) names.add(node.name.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(scope);
  return names;
}

/** Every place of a source text that reads prose. */
export function readsProse(file: string, code: string): Found[] {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
  const found: Found[] = [];
  const visit = (node: ts.Node, taken: ReadonlySet<string>): void => {
    const inside = ts.isFunctionLike(node) ? new Set([...taken, ...takenIn(node)]) : taken;
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const { name, expression: object } = node.expression;
      const [first] = node.arguments;
      const reads =
        (READERS.has(name.text) && proseOf(object, inside) !== undefined) ||
        (BY_PATTERN.has(name.text) && first !== undefined && proseOf(first, inside) !== undefined);
      if (reads) {
        const { line } = source.getLineAndCharacterOfPosition(node.getStart());
        found.push({ line: line + 1, code: node.getText().replace(/\s+/g, ' ').slice(0, 100) });
      }
    }
    ts.forEachChild(node, (child) => visit(child, inside));
  };
  visit(source, new Set());
  return found;
}

const src = new URL('../../src/', import.meta.url).pathname;

/** Every source file with what reads prose in it. */
export const proseReaders = (): Map<string, Found[]> =>
  new Map(
    readdirSync(src, { recursive: true })
      .map(String)
      .filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts'))
      .sort()
      .map((file) => [file, readsProse(file, readFileSync(src + file, 'utf8'))]),
  );
