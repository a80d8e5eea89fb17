/** Records batches from a JSON file, and reviews each against the rules. The batches that come with it are invented. */
import { writeFileSync } from 'node:fs';
import { command, page, readJson } from './lib/command.mjs';
import { recordsOf, reviewLines } from './lib/steps.mjs';

const help = `
Records what you weighed and counted, and says which jars did not get what their process asks for.

  node examples/record-a-batch.mjs [--input BATCHES.json] [--records RECORDS.json] [--output REVIEW.txt]

  --input    a list of batches: date, name, lots (food, form, raw, ready), process, jarsFilled, jarsSealed;
             left out: examples/circle/batches.json
  --records  the file for the records, to be kept and to learn from
  --output   the file for the review; left out, it is printed
`;

command({ help, input: 'circle/batches.json', more: ['records'] }, ({ input, records: file }) => {
  const records = recordsOf(input, readJson(input));
  if (file !== undefined) writeFileSync(file, `${JSON.stringify(records, null, 2)}\n`);
  return page(reviewLines(input, records, '14 h'));
});
