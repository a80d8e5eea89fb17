/**
 * Plans a day and prints its run sheet. The scenario of examples/day.json is invented.
 *
 *   npm run example
 *   npm run example -- --input your-day.json
 */
import { readFileSync } from 'node:fs';
import { planDay, runSheet, StillroomError } from 'stillroom';

const at = process.argv.indexOf('--input');
const file = at === -1 ? new URL('./day.json', import.meta.url) : process.argv[at + 1];

try {
  if (file === undefined) throw new Error('--input takes the name of a JSON file');
  process.stdout.write(runSheet(planDay(JSON.parse(readFileSync(file, 'utf8')))));
} catch (error) {
  const said =
    error instanceof StillroomError ? `The day cannot be planned.\n${error.message}` : `${file}: ${error.message}`;
  console.error(said);
  process.exitCode = 1;
}
