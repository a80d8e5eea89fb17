import { describe, expect, test } from 'vitest';
import { phOf } from '../../src/acid/index';
import { FOOD_PH, RECALLED_PH } from '../../src/acid/tables';
import { expectError } from '../helpers/errors';

describe('every row of the lists', () => {
  test.each([...FOOD_PH, ...RECALLED_PH].map((row) => [`${row.food} (${row.source}, ${row.obtained})`, row] as const))(
    '%s is behind the answer for its name',
    (_, row) => {
      const answer = phOf({ food: row.food });
      expect(answer.figures).toContainEqual({
        food: row.food,
        low: row.pHLow,
        high: row.pHHigh,
        source: row.source,
        recalled: row.obtained === 'memory',
      });
      // never called acid where a row says otherwise
      if (row.pHHigh > 4.6) expect(answer.class).toBe('low-acid');
    },
  );
});

test('a base name gathers its varieties but no canned or pickled forms', () => {
  const foods = phOf({ food: 'apples' }).figures.map(({ food }) => food);
  expect(foods).toContain('Apple, Winesap');
  expect(foods).not.toContain('Apple, baked with sugar');
  expect(phOf({ food: 'cucumber' }).pH.low).toBe(5.1);
  expect(phOf({ food: 'beets, canned, acidified' }).pH).toEqual({ low: 4.3, high: 4.6 });
});

test('a food listed only cooked still answers', () => {
  expect(phOf({ food: 'hominy' }).pH).toEqual({ low: 6, high: 6 });
});

// USDA Guide 1 (msu-pfs-acidity): some tomatoes and figs lie above 4.6 unless acidified
test.each(['tomatoes', 'figs', 'tomato juice', 'Figs, Calimyrna'])('%s are never acid by their typical pH', (food) => {
  const answer = phOf({ food });
  expect(answer.class).toBe('low-acid');
  expect(answer.cautions.map(({ id }) => id)).toContain('acidify-every-jar');
});

test('a list on both sides of the limit is low-acid and says so', () => {
  const answer = phOf({ food: 'apricots' });
  expect(answer).toMatchObject({ class: 'low-acid', crosses: true, pH: { low: 3.3, high: 4.8 } });
  expect(answer.cautions.map(({ id }) => id)).toContain('both-sides-of-limit');
});

test('recalled rows make the class stricter, widen nothing that is published, and say so', () => {
  const persimmon = phOf({ food: 'persimmons' });
  expect(persimmon).toMatchObject({ class: 'low-acid', pH: { low: 4.42, high: 4.7 } });
  expect(persimmon.cautions.map(({ id }) => id)).toContain('recalled');
  const tomato = phOf({ food: 'tomato' });
  expect(tomato.pH).toEqual({ low: 4, high: 4.6 });
  expect(tomato.figures.some(({ high, recalled }) => recalled && high === 4.9)).toBe(true);
  expect(phOf({ food: 'mango' }).cautions.map(({ id }) => id)).not.toContain('recalled');
});

test('every answer warns that a typical pH proves nothing', () => {
  for (const food of ['peach', 'lemon juice', 'corn']) {
    expect(phOf({ food }).cautions.map(({ id }) => id)).toContain('typical-ph-no-proof');
  }
});

test.each([
  'pickled cherry pepper',
  'cherry peppers',
  'cherry tomatoes and peppers',
  'pepper relish',
  'pickled squash',
])('a false friend is not served for %s', (food) => {
  expectError(() => phOf({ food }), 'UNKNOWN_NAME', 'food');
});

test('bad input', () => {
  expectError(() => phOf({ food: 'granite' }), 'UNKNOWN_NAME', 'food');
  expectError(() => phOf({} as never), 'MISSING', 'food');
  expect(() => phOf({ food: 'strawbery' })).toThrow('strawberr');
});
