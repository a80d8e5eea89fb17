/** Learns yields, minutes and hours from records in a JSON file. */
import { writeFileSync } from 'node:fs';
import { command, page, readJson } from './lib/command.mjs';
import { learn, learnedLines, recordsOf } from './lib/steps.mjs';

const help = `
Learns from records: what share of a food is ready, your minutes a pound, raw weight a jar, hours in the dryer.

  node examples/learn-from-records.mjs [--input RECORDS.json] [--learned LEARNED.json] [--output WORDS.txt]

  --input    records, as record-a-batch.mjs writes them, or batches as it reads them; left out: examples/circle/batches.json
  --learned  the file for the figures, to plan with: plan-a-day.mjs --learned
  --output   the file for the same in words; left out, they are printed
`;

command({ help, input: 'circle/batches.json', more: ['learned'] }, ({ input, learned: file }) => {
  const records = recordsOf(input, readJson(input));
  const found = learn(input, records);
  if (file !== undefined) writeFileSync(file, `${JSON.stringify(found.learned, null, 2)}\n`);
  return page(learnedLines(found, records));
});
