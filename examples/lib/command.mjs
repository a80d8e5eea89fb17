/** What the examples that read files have in common: their options, their files, and how they say what is wrong. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { StillroomError } from 'stillroom';

/** A file that comes with the examples. */
export const sample = (name) => fileURLToPath(new URL(`../${name}`, import.meta.url));

/** Reads JSON; a mistake in the file is said with its name. */
export function readJson(file) {
  const text = readText(file);
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Problems(file, [error.message]);
  }
}

function readText(file) {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    throw new Problems(file, ['there is no such file that can be read']);
  }
}

/** All that is wrong with a file, one line each. */
export class Problems extends Error {
  constructor(file, lines) {
    super(
      `${file}: ${lines.length === 1 ? 'one thing is' : `${lines.length} things are`} wrong\n- ${lines.join('\n- ')}`,
    );
  }
}

/** The answers for each item of a list; every item that is wrong is named. */
export function forEach(file, items, work) {
  if (!Array.isArray(items)) throw new Problems(file, ['a list is expected: [ { ... }, { ... } ]']);
  const wrong = [];
  const done = items.flatMap((item, index) => {
    try {
      return [work(item, index)];
    } catch (error) {
      if (!(error instanceof StillroomError)) throw error;
      wrong.push(`[${index}].${error.message}`);
      return [];
    }
  });
  if (wrong.length > 0) throw new Problems(file, wrong);
  return done;
}

/**
 * Runs an example: `--help` prints what it does, `--input` names the file it reads, `--output` the file it writes, and
 * `more` lists further options that take a value.
 */
export function command({ help, input, more = [] }, run) {
  try {
    const names = ['input', 'output', ...more];
    const { values } = parseArgs({
      options: { ...Object.fromEntries(names.map((name) => [name, { type: 'string' }])), help: { type: 'boolean' } },
    });
    if (values.help) {
      process.stdout.write(`${help.trim()}\n`);
      return;
    }
    const text = run({ ...values, input: values.input ?? sample(input) });
    if (values.output === undefined) process.stdout.write(text);
    else writeFileSync(values.output, text);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}

/** Cells in columns. */
export const columns = (rows) => {
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map((row) => String(row[at] ?? '').length)));
  return rows.map((row) =>
    row
      .map((cell, at) => String(cell).padEnd(widths[at]))
      .join('  ')
      .trimEnd(),
  );
};

/** A list of lines as a text. */
export const page = (lines) => `${lines.join('\n')}\n`;
