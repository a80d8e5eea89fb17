import { describe, expect, expectTypeOf, test } from 'vitest';
import * as z from 'zod/mini';
import { id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../../src/sources/columns';
import type { Practice, Sourced } from '../../src/sources/table';

const row = () => z.strictObject({ id: id(), range: z.tuple([positive(), positive()]), ...sourcedColumns() });
const good = { id: 'dip-1', range: [1, 2], source: 'nchfp-dry', locator: '', obtained: 'read', seen: 'original' };

describe('the columns of a row', () => {
  test('take a whole row and nothing besides', () => {
    expect(z.safeParse(row(), good).success).toBe(true);
    for (const change of [
      { id: 'Dip 1' },
      { range: [0, 2] },
      { source: '' },
      { obtained: 'common-practice' },
      { seen: undefined },
      { more: 1 },
    ]) {
      expect(z.safeParse(row(), { ...good, ...change }).success).toBe(false);
    }
  });
  test('of common practice take a reason', () => {
    const practice = z.strictObject({ id: id(), what: text(), ...practiceColumns() });
    const line = { id: 'tap', what: 'a tap', obtained: 'common-practice', reason: 'between winter and summer' };
    expect(z.safeParse(practice, line).success).toBe(true);
    expect(z.safeParse(practice, { ...line, reason: '' }).success).toBe(false);
    expect(z.safeParse(practice, { ...line, id: undefined }).success).toBe(false);
  });
  test('give the type of the row', () => {
    expectTypeOf<RowOf<typeof row>['range']>().toEqualTypeOf<readonly [number, number]>();
    expectTypeOf<RowOf<typeof row>>().toExtend<Sourced>();
    expectTypeOf<RowOf<() => z.ZodMiniObject<ReturnType<typeof practiceColumns>>>>().toExtend<Practice>();
  });
});
