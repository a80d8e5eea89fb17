/** Runs programs in Chromium: each in a page that posts its answers back to a server on this machine. */
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';
import { NotAvailable, printed } from './run';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome'];
const MOST_MS = 90_000;

/** The first Chromium of this machine, with its version. */
export async function findChromium(folder: string): Promise<readonly [command: string, version: string]> {
  for (const name of NAMES) {
    const version = await printed(name, ['--version'], folder).catch(() => undefined);
    if (version !== undefined) return [name, /[\d.]+/.exec(version)?.[0] ?? version.trim()];
  }
  throw new NotAvailable('there is no Chromium on this machine');
}

/** A page that runs a module unbundled: the import map leads to the installed package, as its `exports` do. */
export function unbundled(folder: string, program: string): string {
  const { exports } = JSON.parse(readFileSync(`${folder}/node_modules/stillroom/package.json`, 'utf8')) as {
    exports: Record<string, { import?: { default: string } }>;
  };
  const imports = Object.fromEntries(
    Object.entries(exports).flatMap(([path, { import: file }]) =>
      file === undefined ? [] : [[`stillroom${path.slice(1)}`, `/node_modules/stillroom${file.default.slice(1)}`]],
    ),
  );
  const map = JSON.stringify({ imports });
  return `<!doctype html><script type="importmap">${map}</script><script type="module" src="${program}"></script>`;
}

/** A page whose worker runs a bundled module. */
export const inWorker = (program: string): string =>
  `<!doctype html><script>new Worker('${program}', { type: 'module' });</script>`;

const TYPES: Readonly<Record<string, string>> = { '.js': 'text/javascript', '.mjs': 'text/javascript' };

/** What the program of a page posts. */
export async function posted(chromium: string, folder: string, page: string): Promise<string> {
  const server = createServer();
  const answer = new Promise<string>((resolve, reject) => {
    server.on('request', (request, response) => {
      const path = request.url ?? '/';
      if (request.method === 'POST') {
        const parts: Buffer[] = [];
        request.on('data', (part: Buffer) => parts.push(part));
        request.on('end', () => {
          response.end();
          resolve(`${Buffer.concat(parts)}\n`);
        });
        return;
      }
      if (path === '/') {
        response.setHeader('content-type', 'text/html');
        response.end(page);
        return;
      }
      try {
        const text = readFileSync(`${folder}${path}`);
        response.setHeader('content-type', TYPES[extname(path)] ?? 'text/plain');
        response.end(text);
      } catch {
        response.statusCode = 404;
        response.end();
      }
    });
    setTimeout(() => reject(new Error(`the page posted nothing in ${MOST_MS / 1000} s`)), MOST_MS).unref();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const options = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--no-first-run'];
  const profile = `--user-data-dir=${folder}/with/profile-${port}`;
  const browser = spawn(chromium, [...options, profile, '--remote-debugging-port=0', `http://127.0.0.1:${port}/`], {
    stdio: 'ignore',
    detached: true,
  });
  try {
    return await answer;
  } finally {
    // with the processes that it started
    if (browser.pid !== undefined) process.kill(-browser.pid, 'SIGKILL');
    server.closeAllConnections();
    server.close();
  }
}
