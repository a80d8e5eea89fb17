/**
 * The declarations for CommonJS, after tsup has written those for ES modules: each takes its types from the other, so that
 * the package holds them once and both kinds of module mean the same types.
 */
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const root = new URL('../..', import.meta.url).pathname;
const require = createRequire(root);

/** The declarations of a module: its types as they are, and every value by its name. */
function declarations(values: Readonly<Record<string, unknown>>): string {
  const lines = Object.entries(values).flatMap(([name, value]) => {
    const isClass = typeof value === 'function' && /^class\b/.test(String(value));
    // a class is a type too
    return [
      `export declare const ${name}: typeof module.${name};`,
      ...(isClass ? [`export type ${name} = module.${name};`] : []),
    ];
  });
  const from = `from './index.js' with { 'resolution-mode': 'import' };`;
  return `${[`import type * as module ${from}`, `export type * ${from}`, ...lines].join('\n')}\n`;
}

/** Of a module's way of import: where its program and its types lie. */
interface Way {
  readonly types: string;
  readonly default: string;
}
const { exports } = JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as {
  exports: Readonly<Record<string, string | { readonly require: Way }>>;
};
for (const file of readdirSync(`${root}dist`, { recursive: true }).map(String))
  if (file.endsWith('.d.cts')) rmSync(`${root}dist/${file}`);
for (const ways of Object.values(exports)) {
  if (typeof ways === 'string') continue;
  const { types, default: program } = ways.require;
  writeFileSync(`${root}${types}`, declarations(require(`${root}${program}`)));
}
