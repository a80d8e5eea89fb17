/** What other languages read: the schemas of each function, and a list of the functions. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { catalogue } from '../../src/catalogue/index';

/** Writes `<function>.input.json` and `<function>.output.json` into a folder, and `index.json` with all else. */
export function writeSchemas(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const write = (file: string, value: unknown) => writeFileSync(`${folder}/${file}.json`, `${JSON.stringify(value)}\n`);
  const functions = catalogue();
  for (const { name, input, output } of functions) {
    write(`${name}.input`, input);
    write(`${name}.output`, output);
  }
  write(
    'index',
    functions.map(({ input: _, output: __, ...rest }) => rest),
  );
}
