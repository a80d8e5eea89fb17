import { expect, test } from 'vitest';
import { tellApart } from '../../../src/plan/program/tellApart';

const jars = { make: 'jars', from: 'peaches', form: 'halves', jar: 'quart' } as const;
test.each([
  [
    'by the pack',
    [
      { ...jars, pack: 'hot' },
      { ...jars, pack: 'raw' },
    ],
    ['peach halves in quarts, hot pack', 'peach halves in quarts, raw pack'],
  ],
  [
    'by the syrup',
    [jars, { ...jars, syrup: 'light' }],
    ['peach halves in quarts', 'peach halves in quarts, light syrup'],
  ],
  [
    'by the canner',
    [{ ...jars, method: 'dial-gauge' }, jars],
    ['peach halves in quarts, dial-gauge', 'peach halves in quarts'],
  ],
  [
    'by the size',
    [
      { make: 'frozen', from: 'x', size: { value: 1, unit: 'lb' } },
      { make: 'frozen', from: 'x', size: { value: 2, unit: 'lb' } },
    ],
    ['peach slices, frozen, 1 lb', 'peach slices, frozen, 2 lb'],
  ],
  [
    'by the thickness',
    [
      { make: 'leather', from: 'x', thickness: { value: 3, unit: 'mm' } },
      { make: 'leather', from: 'x' },
    ],
    ['peach leather, 3 mm', 'peach leather'],
  ],
  ['by number', [jars, jars], ['peach halves in quarts (1)', 'peach halves in quarts (2)']],
  [
    'by the make',
    [
      { ...jars, name: 'gift' },
      { make: 'jam', from: 'x', name: 'gift' },
    ],
    ['gift, jars', 'gift, jam'],
  ],
] as const)('%s', (_, products, names) => {
  expect(tellApart(products as never, ['peach', 'peach'])).toEqual(names);
});
test('whole fruit is named as such', () => {
  expect(
    tellApart(
      [
        { ...jars, form: 'whole' },
        { make: 'dried', from: 'x' },
        { make: 'freeze-dried', from: 'x' },
        { make: 'vinegar', from: 'x' },
      ] as never,
      ['plum', 'plum', 'plum', 'plum'],
    ),
  ).toEqual(['plums, whole, in quarts', 'plum slices, dried', 'plum slices, freeze-dried', 'plum vinegar']);
});
