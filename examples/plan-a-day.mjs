/** Plans a day from a JSON file and prints its run sheet. The kitchens that come with it are invented. */
import { writeFileSync } from 'node:fs';
import { runSheet } from 'stillroom';
import { command, readJson } from './lib/command.mjs';
import { planOf } from './lib/steps.mjs';

const help = `
Plans a day and prints its run sheet.

  node examples/plan-a-day.mjs [--input DAY.json] [--output SHEET.md] [--html SHEET.html]

  --input        lots, kitchen, products and aim; docs/plan.md lists every field.
                 Left out: examples/kitchens/plums.json. Ten more kitchens are beside it.
  --learned      figures of your own, as learn-from-records.mjs writes them
  --output       the file for the sheet as Markdown; left out, it is printed
  --html         write one HTML file to print, in place of Markdown
  --date         the first day, as 2026-08-15
  --title        what stands at the top
  --unit-system  us or metric; that of the lots where it is left out

Without "products" the plan chooses. All mistakes in the file are told at once.
`;

const more = ['learned', 'html', 'date', 'title', 'unit-system'];

command({ help, input: 'kitchens/plums.json', more }, ({ input, learned, html, date, title, ...given }) => {
  const plan = planOf(input, readJson(input), learned === undefined ? undefined : readJson(learned));
  const named = Object.entries({ date, title, unitSystem: given['unit-system'] }).filter(
    ([, value]) => value !== undefined,
  );
  const options = Object.fromEntries(named);
  if (html === undefined) return runSheet(plan, options);
  writeFileSync(html, runSheet(plan, { ...options, as: 'html' }));
  return '';
});
