import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type FeasibleDay, type PlanDayInput, planDay } from '../../src/plan/index';
import { runSheet } from '../../src/sheet/index';

const read = (name: string): PlanDayInput =>
  JSON.parse(readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8'));
/** Lines joined again where they were wrapped. */
const unwrapped = (sheet: string) => sheet.replace(/\n {2}/g, ' ');

describe('the example, in US measure', () => {
  const sheet = unwrapped(runSheet(planDay({ ...read('day.json'), oneMore: true })));
  test.each([
    '**An invented example**',
    'Kitchen at 3,450 ft.',
    // Guide 2 of the USDA guide, peaches halved or sliced, hot pack, quarts, 3,001 to 6,000 ft
    '**process 35 min** for quart jars, hot pack',
    // applesauce, pints, 3,001 to 6,000 ft
    '**process 20 min** for pint jars, hot pack',
    // light syrup: 2 1/4 cups of sugar and 9 cups of water for 7 quarts, three loads
    'Sugar for light syrup: 6 3/4 cups (3 lb).',
    'Water for light syrup: 6 3/4 quarts.',
    'A part-filled last jar to the fridge, not into the canner.',
    'of the trimmings of apples from the tree.',
    '## Left out, and why',
    'Peach sauce in pints: no tested process',
    '## What limited the day',
    'go on to **1 oz** to be sure',
    'Peach halves in quarts: Use yellow-fleshed fruit only',
    '## Where the figures come from',
  ])('says %s', (text) => expect(sheet).toContain(text));
  test('the trimmings weigh the same in the table, by the clock and in their product', () => {
    const [taken] = /(?<=Take ).+(?= of the trimmings of apples)/.exec(sheet) ?? expect.fail('no trimmings taken');
    expect(sheet.split(`${taken} of the trimmings of`).length).toBe(2);
    expect(sheet.split(`${taken} trimmings of`).length).toBe(2);
    expect(sheet.split(`Prepare ${taken} of trimmings of`).length).toBe(2);
  });
  test('lines fit a page, tables aside, and none is said twice', () => {
    const lines = runSheet(planDay(read('day.json'))).split('\n');
    expect(lines.filter((line) => line.startsWith('- ') && line.length > 92)).toEqual([]);
    const cautions = sheet.split('## Cautions')[1]?.split('## Where')[0]?.split('\n- ') ?? [];
    expect(cautions.length).toBeGreaterThan(8);
    expect(new Set(cautions).size).toBe(cautions.length);
  });
});

describe('the metric example', () => {
  const sheet = unwrapped(runSheet(planDay(read('day-metric.json'))));
  test('acid stands in bold with each tomato product, before it is filled, and among the cautions', () => {
    const blocks = sheet.split('\n## ').filter((block) => /^\d+\. Tomatoes, crushed/.test(block));
    expect(blocks.length).toBe(2);
    for (const block of blocks) {
      expect(block).toContain('**Acid, never left out: ');
      expect(block.indexOf('**Acid')).toBeLessThan(block.indexOf('Fill hot'));
    }
    // 2 tbsp a quart, 1 tbsp a pint: USDA guide, Guide 3, acidification
    expect(sheet).toContain('**Acid, never left out: 2 tbsp of bottled lemon juice, or 1/2 tsp of citric acid');
    expect(sheet).toContain('**Acid, never left out: 1 tbsp of bottled lemon juice, or 1/4 tsp of citric acid');
    expect(sheet.match(/Required acid/g)?.length).toBe(2);
  });
  test('no cups, pounds or degrees Fahrenheit in the amounts; pressure in both', () => {
    const work = sheet.slice(sheet.indexOf('## Have'), sheet.indexOf('## Left fresh'));
    expect(work).not.toMatch(/\bcups?\b|\blb\b|\boz\b|°F/);
    expect(work).toContain('10 psi (69 kPa) on the gauge');
    expect(work).toContain('at 60 °C');
    expect(work).toContain('1/2 in (13 mm) of headspace');
    expect(work).toContain('Blanch in boiling water for 3 min');
  });
});

const request = read('day.json');
test.each([
  ['most worth', 'Aim: most worth; no better plan', 'adds to the plan (worth)'],
  ['least cost', / Aim: least cost \(\d\.\d\d USD for each jar or pack promised\); no better plan/, ''],
  [
    { worth: 1, waste: 0, hours: 5 },
    'Aim: a mix (1 for each unit of worth, 5 against each hour of hands); no better plan',
    'adds to the plan (the aim by its weights)',
  ],
] as const)('the aim %o in words', (aim, words, gain) => {
  const sheet = unwrapped(runSheet(planDay({ ...request, aim, oneMore: true })));
  expect(sheet).toMatch(words);
  expect(sheet).toContain(gain);
});
test('nothing to make, and no plan at all', () => {
  const nothing = runSheet(planDay({ ...request, products: [{ make: 'vinegar', from: 'plum' }] }));
  expect(nothing).toContain('Nothing you asked for can be made today.');
  const none = runSheet(
    planDay({
      ...request,
      products: [
        { make: 'jam', from: 'peach', jar: 'half-pint', least: 900 },
        { make: 'jars', from: 'peach', form: 'sauce', jar: 'pint' },
      ],
    }),
  );
  expect(none).toContain('# Run sheet: no plan');
  expect(none).toContain('- At least 900 of peach jam in half-pints');
  expect(none).toContain('## Left out, and why');
});
test('every make, every aim, and what is to buy', () => {
  const kitchen = {
    ...request.kitchen,
    freezeDryer: { trays: 4, trayArea: '100 in2', ice: '8 lb' },
    dryer: { trays: 40, trayArea: '200 in2' },
    pantry: [{ item: 'sugar', amount: '1 lb' }],
  } as PlanDayInput['kitchen'];
  const sheets = (['most worth', 'least waste', 'fewest hours'] as const).map((aim) =>
    runSheet(
      planDay({
        lots: [{ food: 'apple', raw: '90 lb' }],
        kitchen,
        products: [
          { make: 'freeze-dried', from: 'apples', size: '1 oz', most: 3, least: 1 },
          { make: 'jars', from: 'apples', form: 'sauce', jar: 'pint', least: 4 },
          { make: 'jars', from: 'apples', form: 'slices', jar: 'pint', syrup: 'medium', least: 1 },
          { make: 'vinegar', from: 'apples', least: 1 },
          { make: 'jelly stock', from: 'apples', most: 1, worth: 9 },
          { make: 'leather', from: 'apples', thickness: '1/4 in' },
          { make: 'dried', from: 'apples', form: 'rings', size: '8 oz', most: 9 },
        ],
        aim,
      }),
    ),
  );
  const [worth, waste, fewest] = sheets as [string, string, string];
  expect(worth).toContain('Freeze-dryer: ');
  expect(worth).toContain('Apple vinegar');
  expect(unwrapped(worth)).toContain('unknown strength');
  expect(waste).toContain('Aim: least waste');
  expect(fewest).toContain('Aim: fewest hours');
  expect(fewest).toContain('## Not made today');
  for (const sheet of sheets) expect(sheet).not.toMatch(/NaN|undefined|Infinity/);
});
test('a plan that is not proven says how much better one could be', () => {
  const plan = planDay(request) as FeasibleDay;
  expect(runSheet({ ...plan, provenBest: false, gap: 0.0213 })).toContain('a plan up to 2.2 % better may exist');
});
