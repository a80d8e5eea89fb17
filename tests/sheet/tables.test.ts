import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { readTable } from '../helpers/tables';

test('where a caution stands: each row puts it beside work, on the card, or with one that says the same', () => {
  const text = z.string().check(z.minLength(1));
  const row = z.strictObject({
    id: z.string().check(z.regex(/^[a-z-]+$/)),
    beside: z.optional(text),
    says: z.optional(text),
    card: z.optional(z.literal(true)),
    reason: text,
    obtained: z.literal('common-practice'),
  });
  const rows = z.array(row).parse(readTable('sheet', 'beside').rows);
  for (const { beside, says, card } of rows) expect([beside, says, card].some((each) => each !== undefined)).toBe(true);
  expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
});
