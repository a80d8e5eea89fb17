/** Runs an example as a cook does, and keeps what it prints. */
import { vi } from 'vitest';

export interface ExampleRun {
  /** 0 where all went well. */
  exit: number;
  printed: string;
  complained: string;
}

/** Runs `examples/<name>.mjs` with these options, on the sources in place of the built package. */
export async function runExample(name: string, ...options: string[]): Promise<ExampleRun> {
  let [printed, complained] = ['', ''];
  const write = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    printed += String(text);
    return true;
  });
  const log = vi.spyOn(console, 'log').mockImplementation((text) => {
    printed += `${text}\n`;
  });
  const error = vi.spyOn(console, 'error').mockImplementation((text) => {
    complained += String(text);
  });
  const before = process.argv;
  process.argv = [before[0] as string, `${name}.mjs`, ...options];
  try {
    vi.resetModules();
    await import(`../../examples/${name}.mjs`);
    return { exit: Number(process.exitCode ?? 0), printed, complained };
  } finally {
    process.argv = before;
    process.exitCode = undefined;
    for (const spy of [write, log, error]) spy.mockRestore();
    vi.resetModules();
  }
}
