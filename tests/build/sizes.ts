/**
 * What a page pays for each module, and for the functions that pages take alone: kB, minified and gzipped, with all that
 * they need. `npx tsx tests/build/sizes.ts` writes `sizes.json` anew.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { functionSize, moduleSize } from '../bench/sizes.mjs';
import { builtProject } from './built';

/** A size and the bar that it is meant to stay below, in kB. */
export interface Size {
  readonly size: number;
  readonly bar: number;
}

const file = new URL('sizes.json', import.meta.url);
/** The sizes as they were written, by module (`stillroom/jars`) or function (`stillroom/jars#fillJar`). */
export const sizes: Readonly<Record<string, Size>> = JSON.parse(readFileSync(file, 'utf8'));

/** The sizes of a built package, in the order of the file. */
export async function measured(folder: string): Promise<Record<string, Size>> {
  const found: Record<string, Size> = {};
  for (const [path, { bar }] of Object.entries(sizes)) {
    const size = await (path.includes('#') ? functionSize(path, folder) : moduleSize(path, folder));
    found[path] = { size: Math.round(size * 10) / 10, bar };
  }
  return found;
}

if (process.argv[1] === file.pathname.replace('sizes.json', 'sizes.ts')) {
  const { folder, remove } = await builtProject();
  const lines = Object.entries(await measured(folder)).map(
    ([path, { size, bar }]) => `  ${JSON.stringify(path)}: { "size": ${size}, "bar": ${bar} }`,
  );
  writeFileSync(file, `{\n${lines.join(',\n')}\n}\n`);
  remove();
}
