/**
 * The public face of the library as data: each exported function with its arguments and answer, each exported type,
 * with the types of fields collapsed to words (mass, volume, share, choice ...). Read by the compiler, once a run.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { deserialize, serialize } from 'node:v8';
import ts from 'typescript';
import { collapseUnion, type Field, leafOf, oneOf, quantityOf, type Shape } from './typeWords';

export const root = new URL('../../', import.meta.url).pathname;

export interface PublicFunction {
  readonly name: string;
  readonly module: string;
  /** The source file from the top of the repository. */
  readonly file: string;
  /** Its docstring, without the tags. */
  readonly says: string;
  readonly parameters: readonly { readonly name: string; readonly optional: boolean; readonly shape: Shape }[];
  readonly answer: Shape;
}

export interface PublicType {
  readonly name: string;
  readonly module: string;
  readonly shape: Shape;
}

export interface PublicFace {
  /** Names of modules, in the order of the alphabet. */
  readonly modules: readonly string[];
  readonly functions: readonly PublicFunction[];
  readonly types: readonly PublicType[];
  /** Other exported values: classes and constants, as `module name`. */
  readonly values: readonly { readonly name: string; readonly module: string }[];
  /** What the root exports: modules as a whole, or single names. */
  readonly root: readonly string[];
}

function buildProgram(): ts.Program {
  const host = { ...ts.sys, onUnRecoverableConfigFileDiagnostic: () => {} };
  const config = ts.getParsedCommandLineOfConfigFile(`${root}tsconfig.json`, {}, host);
  const entries = moduleNames().map((module) => `${root}src/${module}/index.ts`);
  return ts.createProgram([`${root}src/index.ts`, ...entries], { ...config?.options, types: [] });
}

const moduleNames = (): string[] =>
  readdirSync(`${root}src`, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && readdirSync(`${root}src/${entry.name}`).includes('index.ts'))
    .map(({ name }) => name)
    .sort();

const ANYTHING: Shape = { kind: 'leaf', word: 'anything' };

/** Turns types into shapes; an object is walked once, so a type may hold itself. */
class Reader {
  readonly #done = new Map<ts.Type, Shape>();

  constructor(
    readonly checker: ts.TypeChecker,
    readonly names: ReadonlyMap<ts.Type, string>,
  ) {}

  shape(type: ts.Type): Shape {
    if (type.flags & (ts.TypeFlags.Any | ts.TypeFlags.Unknown)) return ANYTHING;
    const plain = this.checker.getNonNullableType(type);
    const done = this.#done.get(plain);
    if (done !== undefined) return done;
    const found = this.#read(plain);
    this.#done.set(plain, found);
    return found;
  }

  #read(type: ts.Type): Shape {
    const { checker } = this;
    if (type.flags & ts.TypeFlags.Instantiable) {
      const bound = checker.getBaseConstraintOfType(type);
      return bound === undefined || bound === type ? (leafOf(type) ?? ANYTHING) : this.shape(bound);
    }
    if (type.isUnion() && !(type.flags & ts.TypeFlags.Boolean))
      return collapseUnion(type, checker, (member) => this.shape(member));
    const leaf = leafOf(type) ?? quantityOf(type, checker);
    if (leaf !== undefined) return leaf;
    if (type.isIntersection() || type.flags & ts.TypeFlags.Object) return this.#object(type);
    return ANYTHING;
  }

  #object(type: ts.Type): Shape {
    const { checker } = this;
    if (checker.isArrayType(type) || checker.isTupleType(type)) {
      const items = checker.getTypeArguments(type as ts.TypeReference).map((item) => this.shape(item));
      return { kind: 'list', of: oneOf(items) };
    }
    if (type.getCallSignatures().length > 0) return { kind: 'leaf', word: 'function' };
    const declared = type.symbol?.declarations?.[0]?.getSourceFile().fileName ?? '';
    if (declared.includes('node_modules') && type.symbol.name !== '__type' && type.symbol.name !== '__object')
      return { kind: 'leaf', word: type.symbol.name };
    const index = checker.getIndexInfoOfType(type, ts.IndexKind.String);
    if (index !== undefined) return { kind: 'map', of: this.shape(index.type) };
    if (type.getProperties().length === 0) return ANYTHING;
    const fields: Field[] = [];
    const name = this.#name(type);
    const shape: Shape = { kind: 'object', fields, ...(name === undefined ? {} : { name }) };
    this.#done.set(type, shape);
    for (const property of type.getProperties()) {
      const field = this.#field(property);
      if (field !== undefined) fields.push(field);
    }
    return rangeOf(fields) ?? shape;
  }

  /** `ChartSpec<CostRow>` where an exported type takes another. */
  #name(type: ts.Type): string | undefined {
    const own = this.names.get(type);
    const { target } = type as ts.TypeReference;
    if (own !== undefined || target === undefined) return own;
    const name = this.names.get(target);
    const taken = this.checker.getTypeArguments(type as ts.TypeReference).map((one) => this.names.get(one));
    return name === undefined || taken.includes(undefined) ? undefined : `${name}<${taken.join(', ')}>`;
  }

  #field(property: ts.Symbol): Field | undefined {
    const type = this.checker.getTypeOfSymbol(property);
    const optional = (property.flags & ts.SymbolFlags.Optional) !== 0;
    // `brimful?: never` says that the field belongs to the other arm of a union
    if (this.checker.getNonNullableType(type).flags & ts.TypeFlags.Never) return undefined;
    const declaration = property.declarations?.[0];
    const source = declaration?.getSourceFile();
    const at =
      declaration === undefined || source === undefined || !source.fileName.startsWith(`${root}src/`)
        ? undefined
        : `${source.fileName.slice(root.length)}:${source.getLineAndCharacterOfPosition(declaration.getStart()).line + 1}`;
    return {
      name: property.getName(),
      optional,
      shape: this.shape(type),
      ...(isOrNull(type) ? { orNull: true as const } : {}),
      says: saidIn(property.getDocumentationComment(this.checker)),
      ...(at === undefined ? {} : { at }),
    };
  }
}

const isOrNull = (type: ts.Type): boolean =>
  type.isUnion() && type.types.some(({ flags }) => (flags & ts.TypeFlags.Null) !== 0);
const saidIn = (parts: ts.SymbolDisplayPart[]): string => ts.displayPartsToString(parts).trim();

/** `{ low, likely, high }` or `{ low, high }` of one kind. */
function rangeOf(fields: readonly Field[]): Shape | undefined {
  const [first] = fields;
  const names = fields.map(({ name }) => name);
  const isRange = names.includes('low') && names.includes('high') && names.every((name) => RANGE.has(name));
  if (!isRange || first === undefined) return undefined;
  const always = fields.filter(({ optional }) => !optional).map(({ name }) => name);
  const lacks = [...RANGE].filter((name) => !always.includes(name));
  return { kind: 'range', of: oneOf(fields.map(({ shape }) => shape)), lacks };
}
const RANGE = new Set(['low', 'likely', 'high']);

let face: PublicFace | undefined;

/** The public face; kept among the machine's temporary files, so that one of the test files builds the program for all. */
export function publicFace(): PublicFace {
  face ??= kept(() => readFace(buildProgram()));
  return face;
}

function kept(read: () => PublicFace): PublicFace {
  const hash = createHash('sha256').update(ts.version);
  for (const folder of ['src/', 'tests/helpers/'])
    for (const file of readdirSync(root + folder, { recursive: true })
      .map(String)
      .sort())
      if (file.endsWith('.ts')) hash.update(file).update(readFileSync(root + folder + file));
  const key = hash.digest('hex');
  const place = `${tmpdir()}/stillroom-face-${createHash('sha256').update(root).digest('hex').slice(0, 12)}`;
  if (existsSync(place)) {
    const found = deserialize(readFileSync(place)) as { key: string; face: PublicFace };
    if (found.key === key) return found.face;
  }
  const fresh = read();
  writeFileSync(`${place}.${process.pid}`, serialize({ key, face: fresh }));
  renameSync(`${place}.${process.pid}`, place);
  return fresh;
}

const unaliased = (symbol: ts.Symbol, checker: ts.TypeChecker): ts.Symbol =>
  symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;

function readFace(program: ts.Program): PublicFace {
  const checker = program.getTypeChecker();
  const exportsOf = (file: string): readonly (readonly [string, ts.Symbol])[] => {
    const source = program.getSourceFile(file);
    const symbol = source === undefined ? undefined : checker.getSymbolAtLocation(source);
    if (symbol === undefined) throw new Error(`${file} exports nothing`);
    return checker
      .getExportsOfModule(symbol)
      .map((each) => [each.getName(), unaliased(each, checker)] as const)
      .sort(([one], [other]) => (one < other ? -1 : 1));
  };
  const modules = moduleNames();
  const all = modules.flatMap((module) =>
    exportsOf(`${root}src/${module}/index.ts`).map(([name, symbol]) => ({ module, name, symbol })),
  );
  const isType = ({ symbol }: { symbol: ts.Symbol }): boolean =>
    (symbol.flags & (ts.SymbolFlags.Interface | ts.SymbolFlags.TypeAlias)) !== 0;
  const names = new Map<ts.Type, string>();
  for (const { name, symbol } of all.filter(isType)) names.set(checker.getDeclaredTypeOfSymbol(symbol), name);
  const reader = new Reader(checker, names);
  const functions: PublicFunction[] = [];
  const values: { name: string; module: string }[] = [];
  for (const { module, name, symbol } of all) {
    const declaration = symbol.valueDeclaration;
    if (declaration === undefined) continue;
    const signatures = checker.getTypeOfSymbolAtLocation(symbol, declaration).getCallSignatures();
    if (signatures.length === 0) values.push({ name, module });
    const file = declaration.getSourceFile().fileName.slice(root.length);
    for (const signature of signatures) {
      const said = saidIn(signature.getDocumentationComment(checker));
      const says = said === '' ? saidIn(symbol.getDocumentationComment(checker)) : said;
      functions.push({ name, module, file, says, ...readSignature(signature, reader) });
    }
  }
  const types = all.filter(isType).map(({ module, name, symbol }) => ({
    module,
    name,
    shape: reader.shape(checker.getDeclaredTypeOfSymbol(symbol)),
  }));
  return { modules, functions, types, values, root: rootExports(exportsOf(`${root}src/index.ts`), all) };
}

function readSignature(signature: ts.Signature, reader: Reader): Pick<PublicFunction, 'parameters' | 'answer'> {
  const parameters = signature.getParameters().map((parameter) => ({
    name: parameter.getName(),
    optional:
      parameter.valueDeclaration !== undefined &&
      reader.checker.isOptionalParameter(parameter.valueDeclaration as ts.ParameterDeclaration),
    shape: reader.shape(reader.checker.getTypeOfSymbol(parameter)),
  }));
  return { parameters, answer: reader.shape(signature.getReturnType()) };
}

/** `all of acid` for a whole module, otherwise name by name. */
function rootExports(
  exported: readonly (readonly [string, ts.Symbol])[],
  all: readonly { module: string; name: string; symbol: ts.Symbol }[],
): string[] {
  const names = new Map(exported);
  const lines: string[] = [];
  for (const module of new Set(all.map((each) => each.module))) {
    const own = all.filter((each) => each.module === module);
    const shown = own.filter(({ name, symbol }) => names.get(name) === symbol);
    if (shown.length === own.length) lines.push(`all of ${module}`);
    else if (shown.length > 0) lines.push(`of ${module}: ${shown.map(({ name }) => name).join(', ')}`);
  }
  return lines;
}
