/** Runs the programs of every runtime and says what each answered: `bash tests/ci/everywhere.sh`. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';

/** What a command printed. */
export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** A runtime or tool that cannot be had on this machine. */
export class NotAvailable extends Error {}

const MOST_MS = 120_000;

/** Runs a command to its end. */
export function run(command: string, args: readonly string[], cwd: string): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child: ChildProcess = spawn(command, args, { cwd, stdio: ['ignore', 'pipe', 'pipe'], timeout: MOST_MS });
    const [out, err]: [Buffer[], Buffer[]] = [[], []];
    child.stdout?.on('data', (part: Buffer) => out.push(part));
    child.stderr?.on('data', (part: Buffer) => err.push(part));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out: `${Buffer.concat(out)}`, err: `${Buffer.concat(err)}` }));
  });
}

/** What a command printed that must not fail. */
export async function printed(command: string, args: readonly string[], cwd: string): Promise<string> {
  const { code, out, err } = await run(command, args, cwd);
  if (code !== 0) throw new Error(`${command} ended with ${code}: ${(err || out).slice(0, 2000)}`);
  return out;
}

/** The pinned packages of runtimes and tools, by name. */
const PINNED = JSON.parse(readFileSync(new URL('runtimes.json', import.meta.url), 'utf8')) as Record<string, string>;

/** Installs a runtime or a tool into a folder of its own; gives the folder of its packages. */
export async function install(name: string, scratch: string): Promise<string> {
  const pinned = PINNED[name];
  if (pinned === undefined) throw new Error(`runtimes.json has no ${name}`);
  const folder = `${scratch}/with/${name.replace(/\W+/g, '-').toLowerCase()}`;
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/package.json`, '{ "private": true }\n');
  const options = ['--no-audit', '--no-fund', '--prefer-offline', '--fetch-retries=0', '--loglevel=error'];
  const { code, err } = await run('npm', ['install', ...options, pinned], folder);
  if (code === 0) return `${folder}/node_modules`;
  const [line = ''] = err.split('\n').filter((each) => /code|is not/.test(each));
  throw new NotAvailable(`${pinned} does not install (${line.replace(/^npm error /, '') || `npm ended with ${code}`})`);
}
