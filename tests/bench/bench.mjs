/**
 * `npm run bench`: how fast and how large the built package is, as ratios within one run.
 * `--quick` takes fewer rounds and smaller arguments; `--write` writes docs/performance.md; `--only NAME` runs one part.
 */
import { cpus } from 'node:os';
import { crafts } from './crafts.mjs';
import { imports, sizes } from './imports.mjs';
import { planner } from './planner.mjs';
import { missed, write } from './report.mjs';
import { conversions } from './rivals.mjs';
import { scale } from './scale.mjs';

const quick = process.argv.includes('--quick');
const only = process.argv[process.argv.indexOf('--only') + 1];
const options = { quick, rounds: quick ? 5 : 15, milliseconds: quick ? 10 : 40 };

const parts = { conversions, crafts, imports, sizes, planner, scale };
for (const [name, part] of Object.entries(parts)) {
  if (process.argv.includes('--only') && name !== only) continue;
  await part(options);
}

console.log(`\n${missed()} bars missed`);
if (process.argv.includes('--write')) {
  const [{ model }] = cpus();
  write(`Node ${process.version} on ${model.trim()}, ${cpus().length} cores${quick ? '; a quick run' : ''}.`);
}
