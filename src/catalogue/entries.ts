/** What `npx tsx tests/catalogue/functions.ts` wrote of each public function, and the schemas made whole. */
import functionTable from '../../data/catalogue/functions.json';
import typeTable from '../../data/catalogue/types.json';

/** A JSON Schema, 2020-12. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** What is written of one function; its schemas refer to those of `types.json`. */
export interface Entry {
  readonly name: string;
  readonly module: string;
  readonly says: string;
  readonly input: JsonSchema;
  readonly output: JsonSchema;
  readonly example?: unknown;
  readonly vectors: readonly string[];
  readonly sources: readonly string[];
}

export const ENTRIES = functionTable as readonly Entry[];
const BY_NAME: ReadonlyMap<string, Entry> = new Map(ENTRIES.map((entry) => [entry.name, entry]));
const TYPES: ReadonlyMap<string, JsonSchema> = new Map(
  (typeTable as readonly { readonly name: string; readonly schema: JsonSchema }[]).map(({ name, schema }) => [
    name,
    schema,
  ]),
);

/** What is written of a function; the tests see to it that nothing is missing. */
export const entryOf = (name: string): Entry => BY_NAME.get(name) as Entry;

const PLACE = '#/$defs/';

/** The schema that a reference stands for, or the schema itself. */
export const resolved = (schema: JsonSchema): JsonSchema =>
  typeof schema.$ref === 'string' ? { ...TYPES.get(schema.$ref.slice(PLACE.length)), ...schema } : schema;

/** The names of the definitions that a schema refers to, and those refer to. */
function referred(value: unknown, found: Set<string>): Set<string> {
  if (typeof value !== 'object' || value === null) return found;
  for (const [key, part] of Object.entries(value)) {
    const name = key === '$ref' ? (part as string).slice(PLACE.length) : undefined;
    if (name === undefined) referred(part, found);
    else if (!found.has(name)) referred(TYPES.get(name), found.add(name));
  }
  return found;
}

/** A schema with all that it refers to: a document by itself. */
export function whole(schema: JsonSchema, title: string): JsonSchema {
  const names = [...referred(schema, new Set())].sort();
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title,
    ...schema,
    ...(names.length === 0 ? {} : { $defs: Object.fromEntries(names.map((name) => [name, TYPES.get(name)])) }),
  };
}
