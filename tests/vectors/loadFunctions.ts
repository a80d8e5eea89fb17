import { readdirSync } from 'node:fs';
import type { AnyFunction } from './run';

/** Every exported function of every module, by name. */
export async function loadFunctions(): Promise<Map<string, AnyFunction>> {
  const source = new URL('../../src/', import.meta.url);
  const functions = new Map<string, AnyFunction>();
  for (const entry of readdirSync(source, { withFileTypes: true })) {
    if (!entry.isDirectory()) continue;
    const index = new URL(`${entry.name}/index.ts`, source);
    if (!readdirSync(new URL(`${entry.name}/`, source)).includes('index.ts')) continue;
    const module = (await import(/* @vite-ignore */ index.href)) as Record<string, unknown>;
    for (const [name, value] of Object.entries(module)) {
      if (typeof value === 'function') functions.set(name, value as AnyFunction);
    }
  }
  return functions;
}
