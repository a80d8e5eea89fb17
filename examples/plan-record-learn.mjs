/** Once around the circle with a kitchen's own files: plan, record, review, label, learn, and plan the next day. */
import { join } from 'node:path';
import { columns, command, page, readJson } from './lib/command.mjs';
import { labelsOf, learn, learnedLines, planOf, recordsOf, reviewLines } from './lib/steps.mjs';

const help = `
Goes once around the circle with the files of one folder: plans a day, records and reviews what came of it, prints the
labels, learns, and plans the next day by the book and by the records.

  node examples/plan-record-learn.mjs [--input FOLDER] [--output PAGE.txt]

  --input   a folder with day.json, batches.json, labels.json and next-day.json; left out: examples/circle
  --output  the file for the page; left out, it is printed

The same steps one by one: plan-a-day.mjs, record-a-batch.mjs, print-labels.mjs, learn-from-records.mjs.
`;

const heading = (text) => ['', text, '-'.repeat(text.length)];

function made(plan) {
  if (!plan.feasible) throw new Error(`There is no plan: ${plan.reason.text}`);
  return plan;
}

command({ help, input: 'circle' }, ({ input: folder }) => {
  const [dayFile, batchFile, labelFile, nextFile] = ['day', 'batches', 'labels', 'next-day'].map((name) =>
    join(folder, `${name}.json`),
  );
  const day = readJson(dayFile);
  const plan = made(planOf(dayFile, day));
  const planned = plan.products.map(({ name, units }) => [
    name,
    units.promised,
    units.likely,
    units.ready,
    units.plural,
  ]);

  const records = recordsOf(batchFile, readJson(batchFile));
  const found = learn(batchFile, records);

  const next = readJson(nextFile);
  const [byBook, byRecords] = [undefined, found.learned].map((learned) => made(planOf(nextFile, next, learned)));
  const names = new Set([...byBook.products, ...byRecords.products].map(({ name }) => name));
  const units = ({ products }, wanted) => {
    const product = products.find(({ name }) => name === wanted);
    return product === undefined ? 'none' : `${product.units.promised} to ${product.units.ready}`;
  };
  const hours = ({ work }) => `${(work.handsBusy.minutes / 60).toFixed(1)} h of work`;

  return page([
    'A DAY PLANNED, RECORDED, LEARNED FROM, PLANNED AGAIN',
    ...(day.invented === true ? ['An invented example: nobody weighed this fruit.'] : []),
    ...heading('What the book promises'),
    ...columns([['product', 'promised', 'likely', 'ready for', ''], ...planned]),
    `Hands, pots and canners are done ${(plan.schedule.makespan / 60).toFixed(1)} h after the start.`,
    ...heading('What was recorded, and whether it kept the rules'),
    ...reviewLines(batchFile, records, '14 h'),
    ...heading('The labels'),
    ...labelsOf(labelFile, readJson(labelFile)).flatMap((lines, index) => (index === 0 ? lines : ['', ...lines])),
    ...heading('What the day taught'),
    ...learnedLines(found, records),
    ...heading('The next day: promised and ready for, by the book and by the records'),
    ...columns([
      ['product', 'book', 'records'],
      ...[...names].map((name) => [name, units(byBook, name), units(byRecords, name)]),
      ['in all', hours(byBook), hours(byRecords)],
    ]),
    ...heading('Cautions'),
    ...byRecords.cautions.map(({ text }) => `- ${text}`),
  ]);
});
