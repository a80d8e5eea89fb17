/**
 * Writes what the catalogue says of each public function: `npx tsx tests/catalogue/functions.ts`. The first sentence of
 * its docstring, its argument by the schema that reads it, its answer by its type, the check vectors that call it, the
 * sources that its answers name, and one argument as an example.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import type * as z from 'zod/mini';
import { StillroomError } from '../../src/errors/index';
import { askedWhen } from '../../src/quantity/fields';
import { sources } from '../../src/sources/index';
import { goodArguments } from '../helpers/inputs';
import { type PublicFunction, publicFace, root } from '../helpers/publicTypes';
import { loadFunctions } from '../vectors/loadFunctions';
import type { VectorFile } from '../vectors/schema';
import { withExamples } from './examples';
import { inputSchemas } from './inputSchema';
import { anyOf, Definitions, type JsonSchema, plainText, schemaOf } from './shapeSchema';

/** The module that shows the others shows not itself. */
const OWN = 'catalogue';
const FOLDER = `${root}data/catalogue/`;

type Call = (...args: readonly unknown[]) => unknown;
type Schema = z.ZodMiniType;
const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The schemas that a function reads its argument with: an unknown field makes each of them speak. */
function schemasOf(call: Call, good: readonly (readonly unknown[])[]): Schema[] {
  const found = new Set<Schema>();
  for (const [input] of [[{}], ...good]) {
    try {
      call({ ...(isObject(input) ? input : {}), unknownField: 1 });
    } catch (error) {
      if (!(error instanceof StillroomError)) throw error;
      const asked = askedWhen(error);
      if (asked !== undefined && error.code === 'UNKNOWN_FIELD' && error.path === 'unknownField')
        found.add(asked.schema);
    }
  }
  return [...found];
}

/** The input: the one argument, or a list of the arguments. */
function inputOf(signatures: readonly PublicFunction[], schemas: readonly Schema[], definitions: Definitions) {
  const [{ parameters }] = signatures as [PublicFunction];
  const shapes = signatures.flatMap((each) => each.parameters.slice(0, 1).map(({ shape }) => shape));
  const first =
    schemas.length > 0
      ? inputSchemas(schemas, shapes, definitions)
      : anyOf(shapes.map((shape) => schemaOf(shape, 'takes', definitions)));
  if (parameters.length === 1) return first;
  const rest = parameters.slice(1).map(({ shape, name }) => ({
    title: name,
    ...schemaOf(shape, 'takes', definitions),
  }));
  const least = parameters.filter(({ optional }) => !optional).length;
  const list = {
    type: 'array',
    prefixItems: [{ title: parameters[0]?.name, ...first }, ...rest],
    minItems: least,
    maxItems: parameters.length,
  };
  return least > 1 ? list : { anyOf: [first, list] };
}

/** The ids of the register that an answer names. */
function sourcesIn(answer: unknown, known: ReadonlySet<string>, found: Set<string>): void {
  if (typeof answer !== 'object' || answer === null) return;
  for (const [key, value] of Object.entries(answer)) {
    if (key === 'source' && typeof value === 'string' && known.has(value)) found.add(value);
    else sourcesIn(value, known, found);
  }
}

/** The files of check vectors that call each function. */
function vectorFiles(): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const file of readdirSync(`${root}shared`).sort()) {
    const { checks } = JSON.parse(readFileSync(`${root}shared/${file}`, 'utf8')) as VectorFile;
    for (const { call } of checks) found.set(call, (found.get(call) ?? new Set()).add(file));
  }
  return found;
}

/** Up to the full stop of the first sentence. */
function firstSentence(says: string): string {
  const paragraph = plainText(says.split('\n\n')[0] ?? '');
  return /^.*?[.?](?=\s+[A-Z`]|$)/.exec(paragraph)?.[0] ?? paragraph;
}

export interface Written {
  readonly functions: readonly Readonly<Record<string, unknown>>[];
  readonly types: readonly { readonly name: string; readonly schema: JsonSchema }[];
}

/** What the two files should hold. */
export async function written(): Promise<Written> {
  const definitions = new Definitions();
  const calls = (await loadFunctions()) as Map<string, Call>;
  const samples = goodArguments(Infinity);
  const vectors = vectorFiles();
  const known = new Set(sources().map(({ id }) => id));
  const signatures = new Map<string, PublicFunction[]>();
  for (const one of publicFace().functions)
    if (one.module !== OWN) signatures.set(one.name, [...(signatures.get(one.name) ?? []), one]);
  const functions = [...signatures].map(([name, all]) => {
    const [first] = all as [PublicFunction];
    const call = calls.get(name) as Call;
    const good = samples.get(name) ?? [];
    const named = new Set<string>();
    const answers = good.map((args) => call(...structuredClone(args)));
    for (const each of answers) sourcesIn(each, known, named);
    const input = inputOf(all, schemasOf(call, good), definitions);
    const inputs = good.map((args) => (first.parameters.length === 1 ? args[0] : args));
    return {
      name,
      module: first.module,
      says: firstSentence(first.says),
      input: withExamples(input, inputs),
      output: anyOf(all.map(({ answer }) => schemaOf(answer, 'answers', definitions))),
      ...exampleOf(inputs, answers),
      vectors: [...(vectors.get(name) ?? [])],
      sources: [...named].sort(),
    };
  });
  return { functions, types: definitions.all() };
}

/** The first argument that is answered with more than a no; a whole plan is no example that anybody reads. */
function exampleOf(inputs: readonly unknown[], answers: readonly unknown[]): { readonly example?: unknown } {
  const found = inputs.filter((_, index) => !isNo(answers[index]));
  const [example] = found.length > 0 ? found : inputs;
  return (JSON.stringify(example)?.length ?? Number.POSITIVE_INFINITY) > 3000 ? {} : { example };
}
const isNo = (found: unknown): boolean =>
  isObject(found) && ['tested', 'known', 'feasible'].some((key) => found[key] === false);

const lines = (rows: readonly unknown[]): string => `[\n${rows.map((row) => JSON.stringify(row)).join(',\n')}\n]\n`;
export const files = ({ functions, types }: Written): Readonly<Record<string, string>> => ({
  'functions.json': lines(functions),
  'types.json': lines(types),
});

if (process.argv[1] === new URL(import.meta.url).pathname)
  for (const [file, text] of Object.entries(files(await written()))) writeFileSync(FOLDER + file, text);
