/** What `npx tsx tests/catalogue/functions.ts` wrote of each public function, and the schemas made whole. */
import functionTable from '../../data/catalogue/functions.json';
import typeTable from '../../data/catalogue/types.json';

/** A JSON Schema, 2020-12. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** One public function as data. */
export interface CatalogueEntry {
  /** What it is called by. */
  readonly name: string;
  /** The subpath of the package that it is in: `stillroom/jars` is `jars`. */
  readonly module: string;
  /** What it answers, in one sentence. */
  readonly says: string;
  /** What it takes, as JSON Schema 2020-12: a function of several arguments takes them in a list. */
  readonly input: JsonSchema;
  /** What it answers, as JSON Schema 2020-12. */
  readonly output: JsonSchema;
  /** An argument that it answers; none where that is a whole plan of `planDay`. */
  readonly example?: unknown;
  /** The files of `stillroom/vectors` with checks that call it. */
  readonly vectors: readonly string[];
  /** Ids of the sources that its answers name; `sources` cites them. */
  readonly sources: readonly string[];
}

export const ENTRIES = functionTable as readonly CatalogueEntry[];
const BY_NAME: ReadonlyMap<string, CatalogueEntry> = new Map(ENTRIES.map((entry) => [entry.name, entry]));
const TYPES: ReadonlyMap<string, JsonSchema> = new Map(
  (typeTable as readonly { readonly name: string; readonly schema: JsonSchema }[]).map(({ name, schema }) => [
    name,
    schema,
  ]),
);

/** What is written of a function; the tests see to it that nothing is missing. */
export const entryOf = (name: string): CatalogueEntry => BY_NAME.get(name) as CatalogueEntry;

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
