import { describe, expect, test } from 'vitest';
import { type DayPlan, type FeasibleDay, planDay } from '../../src/plan/index';
import { runSheet } from '../../src/sheet/index';
import { exampleDay } from '../helpers/plans';
import { DAY_NAMES, FEASIBLE_NAMES, feasiblePlan, planOf, randomSheetDay } from './days';

/** Lines joined again where they were wrapped. */
const unwrapped = (sheet: string) => sheet.replace(/\n {2}/g, ' ');
const BAD = /NaN|Infinity|undefined|\[object|[\uE000-\uE00F]/;
/** The front: all before the first card. */
const frontOf = (sheet: string) => sheet.split('\n## ')[0] ?? '';
const partOf = (sheet: string, title: string) => sheet.split(`## ${title}`)[1]?.split('\n## ')[0] ?? '';

describe.each(DAY_NAMES)('%s', (name) => {
  test.each(['markdown', 'html'] as const)('prints as %s, in both units, with nothing missing', (as) => {
    for (const units of ['us', 'metric', undefined] as const) {
      const page = runSheet(planOf(name), {
        as,
        ...(units === undefined ? {} : { unitSystem: units }),
        date: '2026-08-15',
      });
      expect(page).not.toMatch(BAD);
      expect(page.length).toBeGreaterThan(300);
    }
  });
});

describe('the example', () => {
  const sheet = unwrapped(runSheet(planOf('the example'), { date: '2026-08-15', title: 'PEACHES' }));
  test('the front has at most 60 lines, the sheet far fewer than the 412 of before', () => {
    const lines = runSheet(planOf('the example')).split('\n');
    expect(lines.findIndex((line) => line.startsWith('## '))).toBeLessThanOrEqual(60);
    expect(lines.length).toBeLessThan(300);
  });
  test.each([
    '# PEACHES · Sat 15 August · 3,450 ft · 2 cooks · start 8:00',
    'An invented example',
    // Guide 2 of the USDA guide, peaches halved or sliced, hot pack, quarts, 3,001 to 6,000 ft
    '**up to 7 quart jars IN** · boil seen __ : __ → **35 min** → off',
    '## A Peach halves in quarts: 35 min',
    // light syrup for 7 quarts: by the load, in the row of its pot and on the card
    'in syrup of 2 1/4 cups sugar, 9 cups water',
    '**2 1/4 cups** sugar, **9 cups** water',
    'refrigerator, never the canner',
    '## Left out, and what would let it in',
    'No price: apples from the tree',
  ])('says %s', (text) => expect(sheet).toContain(text));
  test('no line of a list is said twice', () => {
    for (const part of ['Cautions of the day', 'Sources', 'Costs', 'Why this and not that']) {
      const lines = partOf(sheet, part).split('\n- ');
      expect(lines.length).toBeGreaterThan(2);
      expect(new Set(lines).size).toBe(lines.length);
    }
  });
});

describe('the metric day', () => {
  const sheet = unwrapped(runSheet(planOf('a metric day')));
  test('acid stands where the jars are filled, and on the card', () => {
    // 2 tbsp a quart, 1 tbsp a pint: USDA guide, Guide 3, acidification
    expect(frontOf(sheet)).toMatch(
      /FILL (?:up to )?\d+ quart jars to 1\/2 in \(13 mm\)\*\*(?:, likely \d+)? · \*\*ACID: 2 tbsp of bottled lemon/,
    );
    const tomatoes = feasiblePlan('a metric day').products.filter(({ canning }) => canning?.acidToAdd !== undefined);
    expect(sheet.match(/\*\*ACID\*\* \*\*[12] tbsp of bottled lemon juice.*never left out/g)?.length).toBe(
      tomatoes.length,
    );
  });
  test('no cups, pounds or degrees Fahrenheit in what is measured; pressure in both', () => {
    expect(frontOf(sheet)).not.toMatch(/\bcups?\b|\blb\b|\boz\b|°F/);
    expect(frontOf(sheet)).toContain('10 psi (69 kPa)');
  });
  test('the other units where they are asked for', () => {
    const front = frontOf(runSheet(planOf('a metric day'), { unitSystem: 'us' }));
    expect(front).toMatch(/\d lb/);
    expect(front).not.toMatch(/\d kg|mm\)|kPa/);
  });
});

test('two days: a line for the second, breaks, names, and the times of venting and waiting', () => {
  const sheet = runSheet(planOf('two days under pressure'), { date: '2026-08-15' });
  expect(sheet).toMatch(/\n\| \*\*Sun 16 August\*\* /);
  expect(sheet).toMatch(/\n\| 12:30 +\| Break until 13:00/);
  expect(frontOf(sheet).split('\n')[0]).toContain('cook, helper');
  // 15 psi of a weighted gauge above 1,000 ft
  expect(sheet).toMatch(
    /vent 10 min → \*\*15 psi\*\* seen __ : __ → \*\*2[05] min\*\* → off __ : __ → no pressure __ : __ → wait 10 min/,
  );
});
test('a busy machine, food set aside, and the shopping line', () => {
  const front = frontOf(runSheet(planOf('no products named')));
  expect(front).toContain('**BUSY** freeze-dryer to 14:00');
  expect(front).toMatch(
    /\*\*SET ASIDE\*\* .* of strawberry to eat fresh · throw out about .* of strawberry that are not sound/,
  );
  expect(front).toMatch(/\*\*BUY\*\* .*sugar/);
});
test('without jars, pots and canners their columns are not there', () => {
  expect(frontOf(runSheet(planOf('drying only')))).toMatch(/\| TIME +\| HANDS +\| TRAYS/);
});
test('no plan: a short page that says why, and the most you can ask for', () => {
  const page = runSheet(planOf('more than there is'));
  expect(page.split('\n').length).toBeLessThan(30);
  expect(page).toContain('# RUN SHEET: NO PLAN');
  expect(page).toContain('- At least 30 of peach halves in quarts');
  expect(page).toMatch(/- Peach halves in quarts: \d+, not 30/);
  expect(runSheet(planOf('more than there is'), { as: 'html' })).toContain('<h1>RUN SHEET: NO PLAN</h1>');
});
test('nothing to make', () => {
  const plan = planDay({ ...exampleDay('day.json'), products: [{ make: 'vinegar', from: 'plum' }] });
  const page = runSheet(plan);
  expect(page).toContain('Nothing can be made today.');
  expect(page).not.toMatch(BAD);
});
test.each([
  ['most worth', /Aim: most worth\. No better plan/],
  ['least cost', /Aim: least cost \(\d\.\d\d USD for each jar or pack promised\)/],
  [{ worth: 1, waste: 0, handsHours: 5 }, /Aim: a mix \(1 for each unit of worth, 5 against each hour of hands\)/],
] as const)('the aim %o in words', (aim, words) => {
  const plan = feasiblePlan('the example');
  const objective = aim === 'least cost' ? -1.5 : plan.objective;
  expect(unwrapped(runSheet({ ...plan, aim, objective, provenBest: true } as FeasibleDay))).toMatch(words);
});
test('a plan that is not proven says how much better one could be', () => {
  const plan = feasiblePlan('the example');
  expect(runSheet({ ...plan, provenBest: false, gap: 0.0213 })).toContain('A plan up to 3% better may exist');
});

const evil =
  '</td></style><script>alert(1)</script> [x](https://a.b) ![y](https://c.d)\n\n# heading\n| a | b | \uE003 "q"';
describe('names in a sheet stay names', () => {
  const input = {
    lots: [{ food: 'apple', raw: '20 lb', name: `lot ${evil}` }],
    kitchen: {
      elevation: '500 m',
      hours: '6 h',
      hands: ['cook <b>*|_[x](y)'],
      dryer: { trays: 6, trayArea: '200 in2' },
    },
    products: [{ make: 'dried', from: 'apples', packSize: '4 oz', name: `product ${evil}` }],
  } as const;
  const plan = planDay(input) as DayPlan;
  const plain = planDay({
    ...input,
    lots: [{ food: 'apple', raw: '20 lb', name: 'lot' }],
    kitchen: { ...input.kitchen, hands: ['cook'] },
    products: [{ make: 'dried', from: 'apples', packSize: '4 oz', name: 'product' }],
  });
  const count = (text: string, sign: RegExp) => text.match(sign)?.length ?? 0;
  test('in Markdown', () => {
    const [sheet, other] = [runSheet(plan, { title: 'T <b>' }), runSheet(plain, { title: 'T' })];
    expect(sheet).not.toMatch(/<script|<\/td|<b>|(?<!\\)\]\(|https?:\/\/[ac]/);
    expect(sheet).toContain('&lt;script&gt;');
    for (const sign of [/^#/gm, /^\|/gm, /^- /gm]) expect(count(sheet, sign)).toBe(count(other, sign));
  });
  test('in HTML', () => {
    const [sheet, other] = [runSheet(plan, { as: 'html', title: '</title><i>' }), runSheet(plain, { as: 'html' })];
    expect(sheet).not.toMatch(/<script|<i>|<\/style>.*<\/style>/s);
    for (const sign of [/</g, />/g]) expect(count(sheet, sign)).toBe(count(other, sign));
  });
});

test.each([undefined, null, {}, { feasible: true }, { feasible: false }, 'plan', []])('%s is no plan', (plan) => {
  expect(() => runSheet(plan as never)).toThrow(expect.objectContaining({ name: 'StillroomError', path: 'plan' }));
});
test.each([
  [{ as: 'pdf' }, 'as'],
  [{ units: 'imperial' }, 'units'],
  [{ date: 'today' }, 'date'],
  [{ date: 5 }, 'date'],
  [{ title: '' }, 'title'],
  [{ title: 'x'.repeat(81) }, 'title'],
  [{ format: 'html' }, 'format'],
  [null, 'options'],
])('%j is refused', (options, path) => {
  expect(() => runSheet(planOf('drying only'), options as never)).toThrow(
    expect.objectContaining({ name: 'StillroomError', path }),
  );
});

test('days by chance print without a gap', () => {
  let printed = 0;
  for (let seed = 1; seed <= 300; seed += 1) {
    const plan = planDay(randomSheetDay(seed));
    const units = (['us', 'metric', undefined] as const)[seed % 3];
    for (const as of ['markdown', 'html'] as const) {
      const page = runSheet(plan, {
        as,
        ...(units === undefined ? {} : { unitSystem: units }),
        ...(seed % 2 ? { date: '2026-12-31' } : {}),
      });
      expect(page, `seed ${seed}`).not.toMatch(BAD);
    }
    if (plan.feasible && plan.products.length > 0) printed += 1;
  }
  expect(printed).toBeGreaterThan(200);
}, 240_000);
test('all days are there', () => expect(FEASIBLE_NAMES.length).toBe(DAY_NAMES.length - 1));
