import { describe, expect, test } from 'vitest';
import { KINDS } from '../../../src/foods/tables';
import { MAKES } from '../../../src/recipes/rows/tables';
import { rankOf } from '../../../src/recipes/ways/order';

describe('the usual order', () => {
  test.each([
    ['fruit', 'fruit in jars', 'jam'],
    ['fruit', 'jam', 'leather'],
    ['vegetable', 'tomatoes in jars', 'sauce'],
    ['vegetable', 'vegetables in jars', 'frozen'],
    ['meat', 'frozen', 'meat in jars'],
    ['fish', 'frozen', 'fish in jars'],
  ] as const)('of %s has %s before %s', (kind, first, then) => {
    expect(rankOf(kind, first)).toBeLessThan(rankOf(kind, then));
  });

  test('puts what it does not name last', () => {
    const last = Math.max(...MAKES.map((makes) => rankOf('fruit', makes)));
    expect(rankOf('fruit', 'fish in jars')).toBe(last);
    expect(rankOf('fruit', 'fruit in jars')).toBe(0);
  });

  test('has a place for every kind of food and everything that is made', () => {
    for (const kind of KINDS) for (const makes of MAKES) expect(rankOf(kind, makes)).toBeGreaterThanOrEqual(0);
  });

  test('names nothing twice', () => {
    for (const kind of KINDS) {
      const ranks = MAKES.map((makes) => rankOf(kind, makes));
      const named = ranks.filter((rank) => rank < Math.max(...ranks));
      expect(new Set(named).size).toBe(named.length);
    }
  });
});
