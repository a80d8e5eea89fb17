/** Plans a day from a JSON file and prints its run sheet. The kitchens that come with it are invented. */
import { runSheet } from 'stillroom';
import { command, readJson } from './lib/command.mjs';
import { planOf } from './lib/steps.mjs';

const help = `
Plans a day and prints its run sheet.

  node examples/plan-a-day.mjs [--input DAY.json] [--learned LEARNED.json] [--output SHEET.md]

  --input    lots, kitchen, products and aim; docs/plan.md lists every field.
             Left out: examples/kitchens/plums.json. Ten more kitchens are beside it.
  --learned  figures of your own, as learn-from-records.mjs writes them
  --output   the file for the sheet; left out, it is printed

Without "products" the plan chooses. All mistakes in the file are told at once.
`;

command({ help, input: 'kitchens/plums.json', more: ['learned'] }, ({ input, learned }) =>
  runSheet(planOf(input, readJson(input), learned === undefined ? undefined : readJson(learned))),
);
