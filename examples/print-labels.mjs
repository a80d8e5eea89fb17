/** Prints the lines of labels from a JSON file. The label that comes with it is invented. */
import { command, page, readJson } from './lib/command.mjs';
import { labelsOf } from './lib/steps.mjs';

const help = `
Prints the lines of labels: name, net weight, ingredients by weight, lot, dates, how to keep it.

  node examples/print-labels.mjs [--input LABELS.json] [--output LABELS.txt]

  --input    a list of labels: name, net, ingredients (name, mass), made, batchOfDay, useBy, maker, place, keep, allergens;
             left out: examples/circle/labels.json
  --output   the file for the lines; left out, they are printed
`;

command({ help, input: 'circle/labels.json' }, ({ input }) =>
  page(labelsOf(input, readJson(input)).flatMap((lines, index) => (index === 0 ? lines : ['', ...lines]))),
);
