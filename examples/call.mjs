/** Any function of the library from any language that reads JSON; `--help` says how. */
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { call, catalogue } from 'stillroom/catalogue';
import { StillroomError } from 'stillroom/errors';

const HELP = `Calls any function of the library, for programs in any language that reads JSON.

  node examples/call.mjs                        lists the functions
  node examples/call.mjs NAME < input.json      prints the answer of one as JSON
  node examples/call.mjs --lines                answers line by line: { "call": NAME, "input": ... }

The input is the one argument, or a list of the arguments. What is wrong is printed as JSON too: { "error": ... }, and the
exit code is then 1. The schemas of each function are in stillroom/schemas/.`;

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
} else if (name === '--help') {
  console.log(HELP);
} else if (name === '--lines') {
  for await (const line of createInterface({ input: process.stdin })) {
    answered(() => {
      const asked = JSON.parse(line);
      return call(asked.call, asked.input);
    });
  }
} else if (!answered(() => call(name, parsed(readFileSync(0, 'utf8'))))) process.exitCode = 1;
