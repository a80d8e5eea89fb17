import { expect, test } from 'vitest';
import { BACK_TEXTS } from '../../src/sheet/backWords';
import { CODES } from '../../src/sheet/words';

test('the texts of the back are of the one table', () => {
  expect(Object.keys(BACK_TEXTS).filter((code) => !(CODES as readonly string[]).includes(code))).toEqual([]);
});
