/**
 * Writes every constant of `src/` that takes work as one that is made at first use: `const rows = table.rows.filter(...)`
 * becomes `const rows = lazily(() => table.rows.filter(...))`, and `rows` becomes `rows()` where it is read. So the
 * sources stay plain, an import of the package does no work, and what a page does not use drops out of it: every
 * bundler may leave out a call that is marked as pure, and none a call of `filter`.
 */
import { dirname, relative } from 'node:path';
import ts from 'typescript';

interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}
/** Whether a name is that of a constant whose making is work. */
type IsLazy = (name: ts.Identifier) => boolean;

/** A constant with its value, at the top of a file. */
type Constant = ts.VariableDeclaration & { readonly initializer: ts.Expression };

const isTable = (statement: ts.Statement): statement is ts.ImportDeclaration =>
  ts.isImportDeclaration(statement) && statement.moduleSpecifier.getText().endsWith(".json'");

const constantsIn = (file: ts.SourceFile): readonly Constant[] =>
  file.statements.flatMap((statement) =>
    ts.isVariableStatement(statement) && (statement.declarationList.flags & ts.NodeFlags.Const) !== 0
      ? statement.declarationList.declarations.filter((each): each is Constant => each.initializer !== undefined)
      : [],
  );

const namesIn = (name: ts.BindingName): readonly ts.Identifier[] =>
  ts.isIdentifier(name)
    ? [name]
    : name.elements.flatMap((element) => (ts.isBindingElement(element) ? namesIn(element.name) : []));

const WORDS = [ts.SyntaxKind.TrueKeyword, ts.SyntaxKind.FalseKeyword, ts.SyntaxKind.NullKeyword];

/** Whether any bundler sees that making this is no work: literals, functions, and lists and objects of them. */
function isPlain(node: ts.Node, isLazy: IsLazy): boolean {
  const plain = (part: ts.Node) => isPlain(part, isLazy);
  if (ts.isFunctionExpression(node) || ts.isArrowFunction(node) || ts.isLiteralExpression(node)) return true;
  if (ts.isIdentifier(node)) return !isLazy(node);
  if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node))
    return plain(node.expression);
  if (ts.isPrefixUnaryExpression(node)) return plain(node.operand);
  if (ts.isBinaryExpression(node)) return plain(node.left) && plain(node.right);
  if (ts.isArrayLiteralExpression(node)) return node.elements.every(plain);
  if (ts.isObjectLiteralExpression(node)) {
    return node.properties.every(
      (property) =>
        (ts.isShorthandPropertyAssignment(property) && plain(property.name)) ||
        (ts.isPropertyAssignment(property) && !ts.isComputedPropertyName(property.name) && plain(property.initializer)),
    );
  }
  // an empty map
  if (ts.isNewExpression(node)) return (node.arguments ?? []).length === 0;
  return WORDS.includes(node.kind);
}

/** The constant that a name stands for, also where it is imported. */
function symbolOf(name: ts.Identifier, checker: ts.TypeChecker): ts.Symbol | undefined {
  const symbol = ts.isShorthandPropertyAssignment(name.parent)
    ? checker.getShorthandAssignmentValueSymbol(name.parent)
    : checker.getSymbolAtLocation(name);
  if (symbol === undefined || (symbol.flags & ts.SymbolFlags.Alias) === 0) return symbol;
  // an imported table has no source of its own: the name that it is imported by is the constant
  const found = checker.getAliasedSymbol(symbol);
  return found.declarations === undefined ? symbol : found;
}

/** The constants of a program whose making is work. */
function findLazy(program: ts.Program, checker: ts.TypeChecker): IsLazy {
  const lazy = new Set<ts.Symbol | undefined>();
  const isLazy: IsLazy = (name) => lazy.has(symbolOf(name, checker));
  const add = (name: ts.Identifier) => lazy.add(symbolOf(name, checker));
  const files = program.getSourceFiles().filter(({ isDeclarationFile }) => !isDeclarationFile);
  for (const { importClause } of files.flatMap(({ statements }) => statements).filter(isTable)) {
    if (importClause?.name !== undefined) add(importClause.name);
  }
  // a constant made of others takes work when one of them does
  for (let before = -1; lazy.size > before; ) {
    before = lazy.size;
    for (const { name, initializer } of files.flatMap(constantsIn)) {
      if (!isPlain(initializer, isLazy)) namesIn(name).forEach(add);
    }
  }
  lazy.delete(undefined);
  return isLazy;
}

/** A constant that is read, written as a call. */
function readOf(name: ts.Identifier): Edit | undefined {
  const { parent } = name;
  const isKey =
    (ts.isPropertyAccessExpression(parent) && parent.name === name) ||
    (ts.isPropertyAssignment(parent) && parent.name === name) ||
    (ts.isBindingElement(parent) && parent.initializer !== name);
  if (isKey) return undefined;
  const call = ts.isNewExpression(parent) && parent.expression === name ? `(${name.text}())` : `${name.text}()`;
  const text = ts.isShorthandPropertyAssignment(parent) ? `${name.text}: ${call}` : call;
  return { from: name.getStart(), to: name.end, text };
}

/** A declaration, made at first use: `made` is the text of its value. */
function declared({ name, type }: Constant, made: string): string {
  const lazily = (body: string) => `/* @__PURE__ */ lazily(() => ${body})`;
  const value = `{ const made${type === undefined ? '' : `: ${type.getText()}`} = ${made}; return made; }`;
  if (ts.isIdentifier(name)) return `${name.text} = ${lazily(value)}`;
  const names = namesIn(name).map(({ text }) => text);
  const whole = `${names.join('_')}_`;
  const all = `${whole} = ${lazily(`{ const ${name.getText()} = ${made}; return { ${names.join(', ')} }; }`)}`;
  return [all, ...names.map((each) => `${each} = ${lazily(`${whole}().${each}`)}`)].join(', ');
}

/** The text from a place on, with the edits made. */
function edited(text: string, edits: readonly Edit[], start = 0): string {
  let result = '';
  let at = 0;
  for (const { from, to, text: put } of edits) {
    result += text.slice(at, from - start) + put;
    at = to - start;
  }
  return result + text.slice(at);
}

/** The edits of a part of a file, in the order of the text. */
function editsOf(part: ts.Node, isLazy: IsLazy, constants: ReadonlySet<ts.Node>): Edit[] {
  const edits: Edit[] = [];
  const visit = (node: ts.Node): void => {
    const ofTypes = ts.isTypeNode(node) || ts.isTypeAliasDeclaration(node) || ts.isInterfaceDeclaration(node);
    if (ofTypes || ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    if (constants.has(node)) {
      const constant = node as Constant;
      const { initializer } = constant;
      const made = edited(initializer.getText(), editsOf(initializer, isLazy, constants), initializer.getStart());
      edits.push({ from: node.getStart(), to: node.end, text: declared(constant, made) });
      return;
    }
    const edit = ts.isIdentifier(node) && isLazy(node) ? readOf(node) : undefined;
    if (edit !== undefined) edits.push(edit);
    node.forEachChild(visit);
  };
  visit(part);
  return edits;
}

/** The sources alone: which name is which needs no types, and nothing of other packages. */
function programOf(files: readonly string[]): ts.Program {
  const options: ts.CompilerOptions = {
    noLib: true,
    types: [],
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    target: ts.ScriptTarget.ES2022,
  };
  const host = ts.createCompilerHost(options, true);
  const read = host.getSourceFile;
  host.getSourceFile = (path, target) =>
    path.includes('/node_modules/') ? ts.createSourceFile(path, '', target) : read(path, target);
  return ts.createProgram({ rootNames: files, options, host });
}

/**
 * Reads the sources, and says how each is written.
 *
 * @param files - the paths of all sources
 * @param helper - the path of the one that exports `lazily`
 * @throws Error where an entry of the package exports a constant that would be lazy: a caller would get a function
 */
export function lazyConstants(files: readonly string[], helper: string): (path: string) => string {
  const program = programOf(files);
  const checker = program.getTypeChecker();
  const isLazy = findLazy(program, checker);
  const fileOf = (path: string): ts.SourceFile => {
    const file = program.getSourceFile(path);
    if (file === undefined) throw new Error(`${path} is none of the sources`);
    return file;
  };

  for (const path of files.filter((each) => each.endsWith('/index.ts'))) {
    for (const { name, declarations = [] } of checker.getExportsOfModule(
      checker.getSymbolAtLocation(fileOf(path)) as ts.Symbol,
    )) {
      const [first] = declarations;
      if (first !== undefined && ts.isExportSpecifier(first) && ts.isIdentifier(first.name) && isLazy(first.name))
        throw new Error(`${path} exports ${name}, a constant that takes work: export a function that returns it`);
    }
  }

  return (path) => {
    const file = fileOf(path);
    const constants = new Set<ts.Node>(constantsIn(file).filter(({ name }) => namesIn(name).some(isLazy)));
    const text = edited(file.text, editsOf(file, isLazy, constants));
    if (constants.size === 0) return text;
    const from = relative(dirname(path), helper).replace(/\.ts$/, '');
    return `import { lazily } from '${from.startsWith('.') ? from : `./${from}`}';\n${text}`;
  };
}
