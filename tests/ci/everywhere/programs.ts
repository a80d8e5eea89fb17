/** Writes the programs that every runtime runs: the same calls, imported by name from the subpaths of the package. */
import { copyFileSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { goodArguments } from '../../helpers/inputs';
import type { VectorFile } from '../../vectors/schema';

/** A call of a public function. */
export type Call = readonly [name: string, args: readonly unknown[]];

/** Good calls of one function, each of another shape. */
const OF_EACH = 3;
/** Of the calls that must throw, each so many-th. */
const EACH_WRONG = 12;

const shared = new URL('../../../shared/', import.meta.url);

/** A fixed sample of the check vectors, with a call of each function that no vector calls. */
function sample(): readonly Call[] {
  const good = [...goodArguments(OF_EACH)].flatMap(([name, list]) => list.map((args): Call => [name, args]));
  const wrong = readdirSync(shared)
    .flatMap((file) => (JSON.parse(readFileSync(new URL(file, shared), 'utf8')) as VectorFile).checks)
    .filter(({ kind }) => kind === 'bad input')
    .filter((_, place) => place % EACH_WRONG === 0)
    .map(({ call, input }): Call => [call, Array.isArray(input) ? input : [input]]);
  return [...good, ...wrong];
}

/** The functions that are called, by the subpath of the installed package that they are imported from. */
function imported(folder: string, calls: readonly Call[]): ReadonlyMap<string, readonly string[]> {
  const require = createRequire(`${folder}/`);
  const { exports } = require('stillroom/package.json') as { exports: Readonly<Record<string, unknown>> };
  const wanted = new Set(calls.map(([name]) => name));
  const found = new Map<string, readonly string[]>();
  for (const path of Object.keys(exports).filter((each) => each !== '.' && !/\.json$|\*$/.test(each))) {
    const names = Object.keys(require(`stillroom${path.slice(1)}`) as object).filter((name) => wanted.delete(name));
    if (names.length > 0) found.set(`stillroom${path.slice(1)}`, names);
  }
  if (wanted.size > 0) throw new Error(`the package has no ${[...wanted].join(', ')}`);
  return found;
}

/** Writes the programs into the folder where the package is installed; gives the calls that they make. */
export function writePrograms(folder: string): readonly Call[] {
  const calls = sample();
  const paths = [...imported(folder, calls)];
  const names = paths.flatMap(([, each]) => each).join(', ');
  const write = (file: string, lines: readonly string[]) => writeFileSync(`${folder}/${file}`, `${lines.join('\n')}\n`);
  copyFileSync(new URL('answers.mjs', import.meta.url), `${folder}/answers.mjs`);
  write('calls.mjs', [`export const calls = ${JSON.stringify(calls, null, 1)};`]);
  write('program.mjs', [
    `import { answersTo } from './answers.mjs';`,
    `import { calls } from './calls.mjs';`,
    ...paths.map(([path, each]) => `import { ${each.join(', ')} } from '${path}';`),
    `export const answers = () => answersTo({ ${names} }, calls);`,
  ]);
  write('print.mjs', [`import { answers } from './program.mjs';`, 'console.log(answers());']);
  write('print.cjs', [
    ...paths.map(([path, each]) => `const { ${each.join(', ')} } = require('${path}');`),
    `Promise.all([import('./answers.mjs'), import('./calls.mjs')]).then(([{ answersTo }, { calls }]) =>`,
    `  console.log(answersTo({ ${names} }, calls)),`,
    ');',
  ]);
  write('post.mjs', [
    `import { answers } from './program.mjs';`,
    `fetch('/answers', { method: 'POST', body: answers() });`,
  ]);
  write('serve.mjs', [
    `import { answers } from './program.mjs';`,
    'export default { test: () => console.log(answers()) };',
  ]);
  const typed = [
    `import * as all from 'stillroom';`,
    ...paths.map(([path, each]) => `import { ${each.join(', ')} } from '${path}';`),
    `const inHalves = all.testedProcess({ food: 'peach', form: 'halves', pack: 'hot', jar: 'pint', method: 'boiling-water', elevation: '0 ft' });`,
    'const minutes: number | undefined = inHalves.tested ? inHalves.minutes : undefined;',
    `export default [${names}, minutes];`,
  ];
  write('typed.mts', typed);
  write('typed.cts', typed);
  return calls;
}
