import { describe, expect, test } from 'vitest';
import { phOf } from '../../src/acid/phOf';
import { FOOD_PH, RECALLED_PH } from '../../src/acid/tables';
import { nameOf } from '../../src/foods/tables';
import { expectError } from '../helpers/errors';

type Known = Extract<ReturnType<typeof phOf>, { pH: unknown }>;
const known = (input: Parameters<typeof phOf>[0]): Known => {
  const answer = phOf(input);
  if ('known' in answer) throw new Error(answer.reason.text);
  return answer;
};

describe('every row of the lists', () => {
  test.each(
    [...FOOD_PH, ...RECALLED_PH].map((row) => [`${row.printed} (${row.source}, ${row.obtained})`, row] as const),
  )('%s is behind the answer for its line, under each of its foods', (_, row) => {
    for (const id of row.foods ?? [row.food ?? '']) {
      const answer = known({ food: nameOf(id), listed: row.printed });
      expect(answer.figures).toContainEqual({
        printed: row.printed,
        low: row.pHLow,
        high: row.pHHigh,
        source: row.source,
        recalled: row.obtained === 'memory',
      });
      // never called acid where a row says otherwise
      if (row.pHHigh > 4.6) expect(answer.acidity).toBe('low-acid');
    }
  });
});

test('a food gathers its varieties but no canned or pickled forms', () => {
  const foods = known({ food: 'apples' }).figures.map(({ printed }) => printed);
  expect(foods).toContain('Apple, Winesap');
  expect(foods).not.toContain('Apple, baked with sugar');
  expect(foods).not.toContain('Apple juice');
  expect(known({ food: 'cucumber' }).pH.low).toBe(5.1);
  expect(known({ food: 'beets', form: 'acidified' }).pH).toEqual({ low: 4.3, high: 4.6 });
});

test('a form is read from the name or beside it; cut fruit is fresh fruit', () => {
  expect(known({ food: 'apple juice' })).toEqual(known({ food: 'apple', form: 'juice' }));
  expect(known({ food: 'peach halves' }).pH).toEqual(known({ food: 'peach' }).pH);
  expectError(() => phOf({ food: 'apple juice', form: 'sauce' }), 'CONTRADICTION', 'form');
});

test('one name gives one food', () => {
  expect(known({ food: 'corn' })).toEqual(known({ food: 'sweet corn' }));
  expect(known({ food: 'string beans' })).toEqual(known({ food: 'green beans' }));
});

test('a food that is in no list is not known, and its kinds are offered', () => {
  expect(phOf({ food: 'pawpaw' })).toMatchObject({ known: false, reason: { code: 'no-listed-ph' } });
  expect(phOf({ food: 'apple pie filling' })).toMatchObject({ known: false, instead: [{ food: 'apple' }, {}] });
  const melon = phOf({ food: 'melon' });
  expect('instead' in melon && melon.instead.map(({ food }) => food)).toContain('cantaloupe');
});

test('a wider food lends its lines, and the basis names it', () => {
  const answer = known({ food: 'tart apple' });
  expect(answer.food).toBe('tart apple');
  expect(answer.basis.some(({ food, of }) => food === 'apple' && of === 'pH')).toBe(true);
});

test('a food listed only cooked still answers', () => {
  expect(known({ food: 'hominy' }).pH).toEqual({ low: 6, high: 6 });
});

// USDA Guide 1 (msu-pfs-acidity): some tomatoes and figs lie above 4.6 unless acidified
test.each(['tomatoes', 'figs', 'tomato juice', 'Calimyrna figs'])('%s are never acid by their typical pH', (food) => {
  const answer = known({ food });
  expect(answer.acidity).toBe('low-acid');
  expect(answer.cautions.map(({ id }) => id)).toContain('acidify-every-jar');
});

test('a list on both sides of the limit is low-acid and says so', () => {
  const answer = known({ food: 'apricots' });
  expect(answer).toMatchObject({ acidity: 'low-acid', crosses: true, pH: { low: 3.3, high: 4.8 } });
  expect(answer.cautions.map(({ id }) => id)).toContain('both-sides-of-limit');
});

test('recalled rows make the class stricter, widen nothing that is published, and say so', () => {
  const persimmon = known({ food: 'persimmons' });
  expect(persimmon).toMatchObject({ acidity: 'low-acid', pH: { low: 4.42, high: 4.7 } });
  expect(persimmon.cautions.map(({ id }) => id)).toContain('recalled');
  const tomato = known({ food: 'tomato' });
  expect(tomato.pH).toEqual({ low: 4, high: 4.6 });
  expect(tomato.figures.some(({ high, recalled }) => recalled && high === 4.9)).toBe(true);
  expect(known({ food: 'mango' }).cautions.map(({ id }) => id)).not.toContain('recalled');
});

test('every answer warns that a typical pH proves nothing', () => {
  for (const food of ['peach', 'lemon juice', 'corn']) {
    expect(known({ food }).cautions.map(({ id }) => id)).toContain('typical-ph-no-proof');
  }
});

test.each(['pickled cherry pepper', 'pepper relish', 'pickled squash'])('no fresh food serves for %s', (food) => {
  expect(phOf({ food })).toMatchObject({ known: false });
});

test('a false friend is not served', () => {
  expect(known({ food: 'cherry peppers' }).figures.every(({ printed }) => /pepper/i.test(printed))).toBe(true);
  expectError(() => phOf({ food: 'cherry tomatoes and peppers' }), 'UNKNOWN_NAME', 'food');
  expectError(() => phOf({ food: 'figs', listed: 'Apple, Jonathan' }), 'UNKNOWN_NAME', 'listed');
});

test('bad input', () => {
  expectError(() => phOf({ food: 'granite' }), 'UNKNOWN_NAME', 'food');
  expectError(() => phOf({} as never), 'MISSING', 'food');
  expect(() => phOf({ food: 'strawbery' })).toThrow('strawberr');
});
