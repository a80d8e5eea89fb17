import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildInto } from './build';

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
  copyFileSync(new URL('../../package.json', import.meta.url), join(installed, 'package.json'));
  await buildInto(join(installed, 'dist'), ['es']);
  return { folder, installed, remove: () => rmSync(folder, { recursive: true }) };
}
