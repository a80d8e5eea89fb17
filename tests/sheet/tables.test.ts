import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { besideRow } from '../../src/sheet/beside';
import { readTable } from '../helpers/tables';

test('where a caution stands: each row puts it beside work, on the card, or with one that says the same', () => {
  const rows = z.array(besideRow()).parse(readTable('sheet', 'beside').rows);
  for (const { beside, says, card } of rows) expect([beside, says, card].some((each) => each !== undefined)).toBe(true);
  expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
});
