/** Paths into an argument: `lots[0].raw`, or `[1]` of a list of arguments. */
import { nearestNames } from '../common/names';
import { fail } from '../errors/StillroomError';
import { type CatalogueEntry, type JsonSchema, resolved } from './entries';

export type Steps = readonly (string | number)[];
type Tree = Readonly<Record<string, unknown>>;
export const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** No path is longer. */
const LONGEST = 200;
const STEP = /^(?:\.?([A-Za-z][\w -]*)|\[(\d{1,4})\])/;

/** The steps of a path; nothing for a text that is no path. */
export function stepsOf(path: string): Steps | undefined {
  const steps: (string | number)[] = [];
  for (let rest = path; rest !== ''; ) {
    const [whole, name, place] = STEP.exec(rest) ?? [];
    if (whole === undefined) return undefined;
    steps.push(name ?? Number(place));
    rest = rest.slice(whole.length);
  }
  return steps;
}

/** What an argument holds at a path. */
export const valueAt = (input: unknown, steps: Steps): unknown =>
  steps.reduce<unknown>(
    (value, step) => (typeof value === 'object' && value !== null ? (value as Tree)[step] : undefined),
    input,
  );

/** The argument with a value at a path; objects and lists on the way are made. */
export function withValue(input: unknown, steps: Steps, value: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (typeof step === 'number') {
    const list: unknown[] = Array.isArray(input) ? [...input] : [];
    list[step] = withValue(list[step], rest, value);
    return list;
  }
  const tree = isTree(input) ? input : {};
  return { ...tree, [step]: withValue(tree[step], rest, value) };
}

/** The argument without what it holds at a path. */
export function withoutValue(input: unknown, steps: Steps): unknown {
  const [step, ...rest] = steps;
  if (step === undefined || typeof input !== 'object' || input === null || !(step in input)) return input;
  if (rest.length > 0) return withValue(input, [step], withoutValue((input as Tree)[step], rest));
  if (Array.isArray(input)) return input.filter((_, index) => index !== step);
  const { [step]: _, ...kept } = input as Tree;
  return kept;
}

/** Each schema that a schema may be. */
export function alternatives(schema: JsonSchema): readonly JsonSchema[] {
  const here = resolved(schema);
  return Array.isArray(here.anyOf) ? (here.anyOf as JsonSchema[]).flatMap(alternatives) : [here];
}

/** The schemas that a schema has one step further in. */
function inside(schema: JsonSchema, step: string | number): readonly JsonSchema[] {
  return alternatives(schema).flatMap(({ properties, additionalProperties, items, prefixItems }) => {
    const parts =
      typeof step === 'number'
        ? [(prefixItems as JsonSchema[] | undefined)?.[step], items]
        : isTree(properties) && Object.hasOwn(properties, step)
          ? [properties[step]]
          : [additionalProperties];
    return parts.filter((each): each is JsonSchema => isTree(each));
  });
}

/** The schemas of an argument at a path; none where it has no such field. */
export const schemasAt = ({ input }: Pick<CatalogueEntry, 'input'>, steps: Steps): readonly JsonSchema[] =>
  steps.reduce<readonly JsonSchema[]>((schemas, step) => schemas.flatMap((schema) => inside(schema, step)), [input]);

/** The names of the fields of a schema, and of those inside them, for an error. */
export function fieldNames({ input }: Pick<CatalogueEntry, 'input'>): string[] {
  const found = new Set<string>();
  const walk = (schema: JsonSchema, path: string, depth: number): void => {
    for (const { properties, items } of alternatives(schema)) {
      // not into a quantity: its value and unit are no fields to choose
      if (isTree(properties) && !Object.hasOwn(properties, 'unit'))
        for (const [name, part] of Object.entries(properties)) {
          const inner = path === '' ? name : `${path}.${name}`;
          found.add(inner);
          if (depth < 3) walk(part as JsonSchema, inner, depth + 1);
        }
      if (isTree(items) && depth < 3) walk(items, `${path}[0]`, depth + 1);
    }
  };
  walk(input, '', 0);
  return [...found];
}

/** A field that was named. */
export interface FoundField {
  /** The way to it. */
  readonly steps: Steps;
  /** Its path as errors say it: an argument of several goes by its name. */
  readonly path: string;
  /** What it may hold. */
  readonly schemas: readonly JsonSchema[];
}

/** The names of the arguments of a function that takes several. */
const argumentNames = ({ input }: CatalogueEntry): readonly unknown[] =>
  alternatives(input).flatMap(({ prefixItems = [] }) => (prefixItems as JsonSchema[]).map(({ title }) => title));

/** Reads the path of a field. */
export function readField(entry: CatalogueEntry, given: unknown): FoundField {
  const what = `a field of ${entry.name}`;
  if (given === undefined) fail('MISSING', 'field', given, what);
  if (typeof given !== 'string') fail('WRONG_TYPE', 'field', given, what);
  const names = argumentNames(entry);
  const steps = given.length > LONGEST ? undefined : names.includes(given) ? [names.indexOf(given)] : stepsOf(given);
  const schemas = steps === undefined || steps.length === 0 ? [] : schemasAt(entry, steps);
  if (steps === undefined || schemas.length === 0) {
    const options = fieldNames(entry);
    return fail('UNKNOWN_NAME', 'field', given, what, { options, nearest: nearestNames(given, options) });
  }
  const [first] = steps;
  const path = typeof first === 'number' && steps.length === 1 ? String(names[first] ?? given) : given;
  return { steps, path, schemas };
}
