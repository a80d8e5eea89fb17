/**
 * Plans a day and prints its run sheet. The scenario of examples/day.json is invented.
 *
 *   npm run example
 *   npm run example -- --input your-day.json --date 2026-08-15 --title PEACHES --units metric
 *   npm run example -- --input your-day.json --html sheet.html
 *
 * --help lists the options.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { planDay, runSheet, StillroomError } from 'stillroom';

const HELP = `Plans a day and prints its run sheet.

  --input FILE   the day as JSON; examples/day.json where it is left out
  --date DATE    the first day, as 2026-08-15
  --title TEXT   what stands at the top
  --units UNITS  us or metric; those of the lots where it is left out
  --html FILE    write one HTML file to print, in place of Markdown
  --help         this text
`;

const given = (name) => {
  const at = process.argv.indexOf(`--${name}`);
  if (at === -1) return undefined;
  const value = process.argv[at + 1];
  if (value === undefined) throw new Error(`--${name} needs a value; --help lists the options`);
  return value;
};

try {
  if (process.argv.includes('--help')) process.stdout.write(HELP);
  else {
    const input = given('input') ?? new URL('./day.json', import.meta.url);
    const html = given('html');
    const options = { date: given('date'), title: given('title'), units: given('units') };
    const set = Object.fromEntries(Object.entries(options).filter(([, value]) => value !== undefined));
    const plan = planDay(JSON.parse(readFileSync(input, 'utf8')));
    const sheet = runSheet(plan, { ...set, as: html === undefined ? 'markdown' : 'html' });
    if (html === undefined) process.stdout.write(sheet);
    else writeFileSync(html, sheet);
  }
} catch (error) {
  console.error(error instanceof StillroomError ? `The day cannot be planned.\n${error.message}` : error.message);
  process.exitCode = 1;
}
