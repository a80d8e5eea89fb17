/**
 * Holds a run of the notebook against the committed one, or takes it over:
 *
 *   npx tsx tests/notebook/compare.ts COMMITTED FRESH
 *   npx tsx tests/notebook/compare.ts --write COMMITTED FRESH
 */
import { writeFileSync } from 'node:fs';
import { differences, readNotebook, tidied } from './notebook';

const files = process.argv.slice(2).filter((argument) => argument !== '--write');
const [committed, fresh] = files;
if (committed === undefined || fresh === undefined) throw new Error('two notebooks: the committed one and a fresh run');

if (process.argv.includes('--write')) {
  writeFileSync(committed, `${JSON.stringify(tidied(readNotebook(fresh)), null, 1)}\n`);
} else {
  const found = differences(readNotebook(committed), readNotebook(fresh));
  for (const difference of found) console.error(difference);
  console.log(found.length === 0 ? 'Every output is as committed.' : `Outputs that differ: ${found.length}.`);
  process.exitCode = found.length === 0 ? 0 : 1;
}
