import { expect, test } from 'vitest';
import { countedIn } from '../../../src/plan/makes/counted';

test.each([
  ['jar', 'pint', 'pint jar', 'pint jars'],
  ['bag', '8 oz', 'bag of 8 oz', 'bags of 8 oz'],
  ['pack', '1 lb', 'pack of 1 lb', 'packs of 1 lb'],
  ['sheet', '', 'sheet', 'sheets'],
  ['quart', '', 'quart', 'quarts'],
])('%s', (id, size, unit, plural) => {
  expect(countedIn(id, size)).toEqual({ unit, plural });
});
test('a unit that no row has is a fault of the code', () => {
  expect(() => countedIn('barrel')).toThrow('no unit barrel');
});
