import { expect, test } from 'vitest';
import { figuresFor } from '../../src/foods/figuresFor';
import { forms, whatIsKnown } from '../../src/foods/index';
import { craftRows, foodRows, knownRows } from '../../src/foods/tables';

const craftsOf = (food: string) => new Map(whatIsKnown({ food }).crafts.map((entry) => [entry.craft, entry]));

test('whatIsKnown names the crafts of every food, and lends none that may not be lent', () => {
  const own = new Map(knownRows.map((row) => [row.food, new Set(row.crafts.map(({ craft }) => craft))]));
  const lends = new Set(craftRows.filter((row) => row.lends).map((row) => row.id));
  for (const { id, name, wider = [] } of foodRows) {
    const known = craftsOf(name);
    for (const craft of own.get(id) ?? []) expect(known.get(craft), `${id} ${craft}`).not.toHaveProperty('from');
    for (const [craft, { widerFood: from }] of known) {
      if (from === undefined) continue;
      expect(lends.has(craft), `${id} ${craft}`).toBe(true);
      const lender = foodRows.find((row) => row.name === from);
      expect(wider.some(({ food }) => food === lender?.id)).toBe(true);
      expect(figuresFor(id, craft)).toContain(lender?.id);
    }
  }
});

test('whatIsKnown says which wider food the figures are from', () => {
  expect(craftsOf('sour cherry').get('drying')).toMatchObject({ widerFood: 'cherry' });
  expect(craftsOf('cherry').get('drying')).not.toHaveProperty('from');
  expect(craftsOf('pawpaw').size).toBe(0);
});

test('forms gives all, or those that the tables of a food name', () => {
  const all = forms().map(({ form }) => form);
  const apple = forms({ food: 'apples' }).map(({ form }) => form);
  expect(apple).toEqual(expect.arrayContaining(['slices', 'rings']));
  expect(apple.length).toBeLessThan(all.length);
  expect(forms({ food: 'pawpaw' })).toEqual([]);
  expect(forms().find(({ form }) => form === 'halves or slices')?.either).toEqual(['halves', 'slices']);
});
