import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { fillBasis, fillOf, potFillRow, roomTaken } from '../../../src/plan/kitchen/fillOf';
import { readTable } from '../../helpers/tables';

test('the table: each thing that recipes make once, one row for the rest', () => {
  const rows = z.array(potFillRow()).parse(readTable('plan', 'pot-fill').rows);
  const named = rows.flatMap(({ makes = [] }) => makes);
  expect(new Set(named).size).toBe(named.length);
  expect(rows.filter(({ makes }) => makes === undefined).map(({ share }) => share)).toEqual([2 / 3]);
  for (const { makes = [], share } of rows) for (const each of makes) expect(fillOf({}, each)).toBe(share);
});

describe('how full a pot may be', () => {
  test('a third with jam, two thirds with sauce, whatever the pot', () => {
    expect(fillOf({}, 'jam')).toBe(1 / 3);
    expect(fillOf({}, 'sauce')).toBe(2 / 3);
    expect(fillOf({})).toBe(2 / 3);
  });
  test('as the cook says: one share at rest, one that foams', () => {
    const pot = { fill: 0.75, foaming: 0.4 };
    expect([fillOf(pot), fillOf(pot, 'sauce'), fillOf(pot, 'jam')]).toEqual([0.75, 0.75, 0.4]);
    expect(fillOf({ foaming: 0.4 }, 'sauce')).toBe(2 / 3);
    // a pot that is never to be filled higher is not for foam either
    expect(fillOf({ fill: 0.25 }, 'jelly')).toBe(0.25);
  });
  test('room taken of the plain fill: where it takes most, and never less than its own', () => {
    expect(roomTaken([], 'jam')).toBeCloseTo(2, 12);
    expect(roomTaken([{}, { fill: 0.9, foaming: 0.3 }], 'jam')).toBeCloseTo(3, 12);
    expect(roomTaken([{}], 'sauce')).toBe(1);
  });
  test('says why', () => {
    expect(fillBasis('jam', 'pots')).toEqual({
      of: 'pots',
      kind: 'common-practice',
      note: 'how full a pot with jam may be',
    });
  });
});
