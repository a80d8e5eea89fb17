import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { choice, fields, optional, readInput, reading } from '../quantity/fields';
import { type CatalogueEntry, ENTRIES, type JsonSchema, whole } from './entries';
import { readName } from './functions';

const MODULES = [...new Set(ENTRIES.map(({ module }) => module))];

const schema = fields({
  /** Only this function. */
  name: optional(reading<string, string>(readName)),
  /** Only the functions of this module, such as `jars`. */
  module: optional(choice('a module', MODULES)),
});
/** Which functions are asked for; all of them without it. */
export type CatalogueInput = Given<z.input<typeof schema>>;

/**
 * Every public function as data: its name and module, what it answers, its argument and its answer as JSON Schema, an
 * example, the check vectors that call it, and the sources behind it.
 *
 * In an input schema, the keyword `stillroom` says what JSON Schema has no word for: the `word` of the library's grammar,
 * the `kind` of value (`mass`, `share`, `choice`), the ends of a quantity (`min`, `max`, `above`), the `unit` of a number.
 *
 * @param input - `name`: only this function; `module`: only those of one module
 * @throws StillroomError UNKNOWN_NAME for a function or a module that there is not
 *
 * @example
 * ```ts
 * import { catalogue } from 'stillroom/catalogue';
 *
 * const [fill] = catalogue({ name: 'fillJar' });
 * fill.module; // => 'jars'
 * fill.input.required; // => ['jar', 'headspace']
 * ```
 */
export function catalogue(input: CatalogueInput = {}): CatalogueEntry[] {
  const asked = readInput(schema, input);
  const found = ENTRIES.filter(
    ({ name: one, module }) =>
      (asked.name === undefined || one === asked.name) && (asked.module === undefined || module === asked.module),
  );
  return answer(found.map(asAnswer));
}

/** A schema under the name of its file in the package. */
const document = (schema: JsonSchema, name: string): JsonSchema => ({
  $id: `stillroom/schemas/${name}.json`,
  ...whole(schema, name),
});

const asAnswer = ({ input, output, ...entry }: CatalogueEntry): CatalogueEntry => ({
  ...entry,
  input: document(input, `${entry.name}.input`),
  output: document(output, `${entry.name}.output`),
});
