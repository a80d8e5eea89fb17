import { expect, test } from 'vitest';
import type { Making } from '../../../src/plan/makes/making';
import { tellApart } from '../../../src/plan/program/tellApart';

/** What is made, by its name; or a product that is left out, whose name is what was asked for. */
const made = (label: string) => ({ label, activity: {} }) as unknown as Making;
const out = { code: 'no-lot', text: '', instead: '', wanted: {} };
const jars = { make: { word: 'jars' }, from: [{ id: 'peach', name: 'peaches' }], jar: 'quart' } as const;
const HALVES = 'peach halves in quarts';
test.each([
  [
    'by the pack',
    HALVES,
    [
      { ...jars, pack: 'hot' },
      { ...jars, pack: 'raw' },
    ],
    ['peach halves in quarts, hot pack', 'peach halves in quarts, raw pack'],
  ],
  ['by the syrup', HALVES, [jars, { ...jars, syrup: 'light' }], [HALVES, 'peach halves in quarts, light syrup']],
  [
    'by the canner',
    HALVES,
    [{ ...jars, method: 'dial-gauge' }, jars],
    ['peach halves in quarts, dial-gauge', 'peach halves in quarts'],
  ],
  [
    'by the size',
    'peach slices, frozen',
    [{ packSize: { value: 1, unit: 'lb' } }, { packSize: { value: 2, unit: 'lb' } }],
    ['peach slices, frozen, 1 lb', 'peach slices, frozen, 2 lb'],
  ],
  [
    'by the thickness',
    'peach leather',
    [{ thickness: { value: 3, unit: 'mm' } }, {}],
    ['peach leather, 3 mm', 'peach leather'],
  ],
  ['by number', HALVES, [jars, jars], ['peach halves in quarts (1)', 'peach halves in quarts (2)']],
  [
    'by the recipe',
    'gift',
    [
      { name: 'gift', recipe: { name: 'apple butter' } },
      { name: 'gift', recipe: { name: 'peach jam' } },
    ],
    ['gift, apple butter', 'gift, peach jam'],
  ],
  ['not where nobody would mix them up', HALVES, [{ ...jars, pack: 'hot', syrup: 'light' }], [HALVES]],
] as const)('%s', (_, label, products, names) => {
  expect(
    tellApart(
      products.map(() => made(label)),
      products as never,
    ),
  ).toEqual(names);
});
test('what is left out is called what was asked for, and told apart too', () => {
  const asked = [
    jars,
    { recipe: { name: 'fig jam', makes: 'jam', foods: ['fig'] }, from: [{ id: 'fig', name: 'fig' }] },
    { name: 'for the fair', ...jars },
    {},
    jars,
  ];
  expect(tellApart(asked.map(() => out) as never, asked as never)).toEqual([
    'peaches jars in quarts (1)',
    'fig jam',
    'for the fair',
    '',
    'peaches jars in quarts (2)',
  ]);
});
