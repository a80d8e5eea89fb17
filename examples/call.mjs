/**
 * Any function of the library from any language: `node examples/call.mjs NAME < input.json` prints its answer as JSON.
 * An error is printed as JSON too, and the exit code is 1. With `--lines` in place of a name, each line of the input is a
 * call, `{ "call": NAME, "input": ... }`, and is answered by one line. Without a name it lists the functions.
 */
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { call, catalogue } from 'stillroom/catalogue';
import { StillroomError } from 'stillroom/errors';

const print = (value) => console.log(JSON.stringify(value));
/** An argument as JSON; nothing for a function that needs none. */
const parsed = (text) => (text.trim() === '' ? undefined : JSON.parse(text));

/** Prints the answer, or what is wrong; whether there was an answer. */
function answered(work) {
  try {
    print(work());
    return true;
  } catch (error) {
    print({ error: asData(error) });
    return false;
  }
}

/** What is wrong, as plain data; a mistake of the library itself goes on. */
function asData(error) {
  if (error instanceof SyntaxError) return { code: 'NOT_JSON', message: error.message };
  if (!(error instanceof StillroomError)) throw error;
  const { code, path, given, expected, options, nearest, message } = error;
  return { code, path, given, expected, options, nearest, message };
}

const [name] = process.argv.slice(2);
if (name === undefined) {
  for (const entry of catalogue()) console.log(`${entry.name}: ${entry.says}`);
} else if (name === '--lines') {
  for await (const line of createInterface({ input: process.stdin })) {
    answered(() => {
      const asked = JSON.parse(line);
      return call(asked.call, asked.input);
    });
  }
} else if (!answered(() => call(name, parsed(readFileSync(0, 'utf8'))))) process.exitCode = 1;
