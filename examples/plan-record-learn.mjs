/**
 * A day planned, recorded, learned from, and planned again. Kitchen, lots, prices and weighings are invented; the
 * figures of food and heat are not.
 *
 *   npx tsup --no-dts --silent && node examples/plan-record-learn.mjs
 */
import { readFileSync } from 'node:fs';
import { batchRecord, formatQuantity, labelFields, learnFromRecords, planDay, reviewBatch, useBy } from 'stillroom';
import { netWeightCheck } from 'stillroom/record';

const day = JSON.parse(readFileSync(new URL('./day.json', import.meta.url), 'utf8'));
const { elevation } = day.kitchen;
const date = '2026-08-14';

const lines = [];
const say = (...text) => lines.push(...text);
const heading = (text) => say('', text, '-'.repeat(text.length));
const pad = (cells, widths) =>
  cells
    .map((cell, index) => String(cell).padEnd(widths[index]))
    .join('  ')
    .trimEnd();
const percent = (share) => `${(100 * share).toFixed(0)} %`;
const span = (range, write) => `${write(range.low)} to ${write(range.high)}`;

say('A DAY PLANNED, RECORDED, LEARNED FROM, PLANNED AGAIN', 'An invented example: nobody weighed this fruit.');

// 1. The day, planned from the book.
const plan = planDay(day);
if (!plan.feasible) throw new Error(plan.reason);
heading(`${date}: what the book promises`);
const planned = [28, 9, 7, 9];
say(pad(['product', 'promised', 'likely', 'ready for'], planned));
for (const { name, units } of plan.products) say(pad([name, units.promised, units.likely, units.ready], planned));
say(`Hands, pots and canners are done ${(plan.schedule.makespan / 60).toFixed(1)} h after the start.`);

// 2. What was weighed and counted: one record for each canner load, one for the dryer.
const canned = (name, food, process, weighings) =>
  weighings.map(({ raw, ready, minutes, filled, sealed = filled, ...more }, index) =>
    batchRecord({
      date,
      name,
      batchOfDay: index + 1,
      lots: [{ food, form: process.form, raw, ready }],
      work: { preparing: minutes, hands: 2 },
      process: { method: 'boiling-water', elevation, ...process, ...more },
      jarsFilled: filled,
      jarsSealed: sealed,
      sealsTestedAfter: '14 h',
      keptIn: 'shelf',
    }),
  );
const halves = { food: 'peach', form: 'halves', pack: 'hot', jar: 'quart', minutes: 35 };
const sauce = { food: 'apple', form: 'sauce', pack: 'hot', jar: 'pint', minutes: 20 };
const records = [
  ...canned('peach halves', 'peach', halves, [
    { raw: '14 lb', ready: '10.2 lb', minutes: '24 min', filled: 6 },
    { raw: '14 lb', ready: '10.5 lb', minutes: '22 min', filled: 6, sealed: 5 },
    { raw: '14 lb', ready: '10.1 lb', minutes: '23 min', filled: 6 },
  ]),
  ...canned('apple sauce', 'apple', sauce, [{ raw: '9 lb', ready: '6.4 lb', minutes: '9 min', filled: 6 }]),
  batchRecord({
    date,
    name: 'dried apples',
    lots: [{ food: 'apple', form: 'slices', raw: '6.2 lb', ready: '4.7 lb' }],
    work: { preparing: '11 min', hands: 2 },
    dryer: { time: '8.5 h', temperature: '140 degF', endMoisture: '18 %' },
  }),
];

heading('What was recorded, and whether it kept the rules');
const recorded = [26, 8, 8, 5];
say(pad(['lot', 'raw', 'ready', 'jars', ''], recorded));
for (const record of records.map((each) => batchRecord(JSON.stringify(each)))) {
  const { verdict, findings } = reviewBatch({ record, sinceProcessing: '14 h' });
  const [{ raw, ready }] = record.lots;
  const jars = record.jarsFilled === undefined ? '' : `${record.jarsSealed}/${record.jarsFilled}`;
  say(pad([record.lotCode, formatQuantity(raw), formatQuantity(ready), jars, verdict], recorded));
  for (const { found, remedies, timeLeft } of findings)
    say(`    ${found}: ${remedies.join(', ')}${timeLeft === undefined ? '' : ` within ${formatQuantity(timeLeft)}`}`);
}

// 3. The label of the jam, and whether the jars hold what it says.
heading('The label of the peach jam');
const best = useBy({ kind: 'jar', made: date });
const label = labelFields({
  name: 'Peach jam',
  net: '10 oz',
  ingredients: [
    { name: 'peaches', mass: '5.4 lb' },
    { name: 'sugar', mass: '5.4 lb' },
  ],
  batchOfDay: 1,
  made: date,
  ...(best.known ? { useBy: best.useBy } : {}),
  keep: 'Keep in a refrigerator once opened',
});
say(...label.labelLines);
const weighed = ['10.2 oz', '10.1 oz', '9.9 oz', '10.3 oz'];
const net = netWeightCheck({ labeled: '10 oz', contents: weighed, market: 'US' });
say(
  `Four jars weighed: ${formatQuantity(net.averageContents, { step: 0.01 })} on average, none under ${formatQuantity(net.leastContents, { step: 0.01 })}: ${net.passes ? 'the label holds' : 'fill more'}.`,
);

// 4. What the records teach.
const { learned, passedOver } = learnFromRecords({ records });
heading('What the day taught');
const write = {
  yield: percent,
  minutesPerPound: (value) => `${value.toFixed(1)} min`,
  dryingHours: (time) => `${time.value.toFixed(1)} h`,
};
for (const { food, form, jar, n, ...figures } of learned) {
  const who = `${food} ${form}, ${n} ${n === 1 ? 'record' : 'records'}`;
  if (figures.yield) say(`${who}: ${span(figures.yield, write.yield)} of the raw mass will be ready`);
  if (figures.minutesPerPound)
    say(`${who}: ${span(figures.minutesPerPound, write.minutesPerPound)} of one pair of hands a pound`);
  if (figures.rawPerJar) {
    const mass = (quantity) => formatQuantity(quantity, { step: 0.01 });
    say(`${who}: ${span(figures.rawPerJar, mass)} of raw fruit a ${jar} jar`);
  }
  if (figures.dryingHours) say(`${who}: dry in ${span(figures.dryingHours, write.dryingHours)}`);
}
for (const { index, figureName, reason } of passedOver)
  say(`Nothing learned about the ${figureName} of ${records[index].lotCode}: ${reason.text}`);

// 5. The next day, planned from the book and from the records.
const next = {
  invented: true,
  lots: [
    { name: 'second crate of peaches', food: 'peach', raw: '60 lb', price: '45.00 USD' },
    { name: 'windfall apples', food: 'apple', raw: '40 lb' },
  ],
  kitchen: day.kitchen,
  products: day.products.filter(({ from }) => from === 'peaches' || from === 'apples'),
};
const [byBook, byRecords] = [planDay(next), planDay({ ...next, learned })];
if (!byBook.feasible || !byRecords.feasible) throw new Error('the second day cannot be planned');
heading('The next day: promised and ready for, by the book and by the records');
const compared = [28, 12, 12];
say(pad(['product', 'book', 'records'], compared));
const names = new Set([...byBook.products, ...byRecords.products].map(({ name }) => name));
const units = ({ products }, wanted) => {
  const found = products.find(({ name }) => name === wanted);
  return found === undefined ? 'none' : `${found.units.promised} to ${found.units.ready}`;
};
for (const name of names) say(pad([name, units(byBook, name), units(byRecords, name)], compared));
const hours = ({ work }) => `${(work.hands.minutes / 60).toFixed(1)} h of work`;
say(pad(['in all', hours(byBook), hours(byRecords)], compared));

heading('Cautions');
for (const { text } of byRecords.cautions) say(`- ${text}`);
process.stdout.write(`${lines.join('\n')}\n`);
