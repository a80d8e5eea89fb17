import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, type Options } from 'tsup';
import config from './tsup.config';

const root = new URL('../..', import.meta.url).pathname;

/** A project that has the package as it is built from these sources, without its types. */
export interface Project {
  /** Its folder. */
  readonly folder: string;
  /** Where the package lies in it. */
  readonly installed: string;
  readonly remove: () => void;
}

/** Builds the package into a project of its own. */
export async function builtProject(): Promise<Project> {
  const folder = mkdtempSync(join(tmpdir(), 'stillroom-'));
  const installed = join(folder, 'node_modules/stillroom');
  mkdirSync(installed, { recursive: true });
  copyFileSync(`${root}package.json`, join(installed, 'package.json'));
  const outDir = join(installed, 'dist');
  await build({ ...(config as Options), config: false, format: ['esm'], dts: false, silent: true, outDir });
  return { folder, installed, remove: () => rmSync(folder, { recursive: true }) };
}
