/** What other languages read: the schemas of each function, and a list of the functions. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { catalogue } from '../../src/catalogue/index';

type Json = Readonly<Record<string, unknown>>;

/** The file of what many schemas share: a file of its own is a fourth of writing it into each. */
const SHARED = 'definitions';

/** A schema whose definitions are in the shared file. */
function withShared(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withShared);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) =>
      key === '$ref' && typeof part === 'string' && part.startsWith('#')
        ? [key, `${SHARED}.json${part}`]
        : [key, withShared(part)],
    ),
  );
}

/**
 * Writes `<function>.input.json` and `<function>.output.json` into a folder, `definitions.json` with what they refer to,
 * and `index.json` with all else.
 */
export function writeSchemas(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const write = (file: string, value: unknown) => writeFileSync(`${folder}/${file}.json`, `${JSON.stringify(value)}\n`);
  const functions = catalogue();
  const shared: Record<string, unknown> = {};
  const writeOne = (file: string, { $defs = {}, ...schema }: Json) => {
    Object.assign(shared, $defs);
    write(file, withShared(schema));
  };
  for (const { name, input, output } of functions) {
    writeOne(`${name}.input`, input);
    writeOne(`${name}.output`, output);
  }
  write(SHARED, {
    $id: `stillroom/schemas/${SHARED}.json`,
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $defs: shared,
  });
  write(
    'index',
    functions.map(({ input: _, output: __, ...rest }) => rest),
  );
}
