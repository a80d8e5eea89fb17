import { describe, expect, test } from 'vitest';
import { findFood, foods } from '../../src/foods/index';
import { foodRows } from '../../src/foods/tables';

const idOf = (text: string): string | undefined => {
  const found = findFood(text);
  return found.known ? found.id : undefined;
};

describe('findFood', () => {
  test('every name of the pantry means its own food, as does its plural and its capitals', () => {
    for (const { id, name, names, asForm = [] } of foodRows) {
      for (const each of [name, ...names, ...asForm.map((form) => form.name)]) {
        expect(idOf(each), each).toBe(id);
        expect(idOf(each.toUpperCase()), each).toBe(id);
      }
    }
  });

  test.each([
    ['pawpaw', 'papaya'],
    ['yam', 'sweet potato'],
    ['popcorn', 'sweet corn'],
    ['ground cherry', 'sour cherry'],
    ['husk tomato', 'tomato'],
    ['horseradish', 'radish'],
    ['green tomato', 'tomato'],
    ['prune', 'plum'],
    ['raisin', 'grape'],
    ['dried currant', 'currant'],
    ['asian pear', 'pear'],
    ['prickly pear', 'pear'],
    ['white peach', 'peach'],
    ['muscadine', 'grape'],
    ['Jerusalem artichoke', 'artichoke'],
    ['black pepper', 'pepper'],
    ['lima bean', 'green bean'],
    ['dry bean', 'green bean'],
    ['soybean', 'edamame'],
    ['lime', 'lemon'],
    ['sour cherry', 'sweet cherry'],
    ['watermelon', 'cantaloupe'],
    ['zucchini', 'winter squash'],
    ['wild mushroom', 'mushroom'],
    ['blue crab', 'crab'],
    ['tuna', 'salmon'],
    ['green olive', 'olive'],
  ])('%s is not %s', (one, other) => {
    expect(idOf(one)).toBeDefined();
    expect(idOf(one)).not.toBe(idOf(other));
  });

  test('a name may hold a form; the order of its words does not matter, unless it makes another food', () => {
    const formOf = (text: string) => {
      const found = findFood(text);
      return found.known ? [found.food, found.form] : found;
    };
    expect(formOf('peach halves')).toEqual(['peach', 'halves']);
    expect(formOf('Apples, sliced')).toEqual(['apple', 'slices']);
    expect(formOf('sour cherry pie filling')).toEqual(['sour cherry', 'pie filling']);
    expect(formOf('canned peaches in heavy syrup')).toEqual(['peach', 'canned in heavy syrup']);
    expect(formOf('tomato paste')).toEqual(['tomato', 'paste']);
    expect(formOf('paste tomatoes')).toEqual(['tomato', undefined]);
    // a food in a form is not put into another
    expect(idOf('applesauce slices')).toBeUndefined();
    // nor is every word of a form one beside a food
    for (const text of ['apple pie', 'pork rind', 'egg roll', 'corn chips']) expect(idOf(text), text).toBeUndefined();
    expect(idOf('fish sauce')).toBe('fish-sauce');
  });

  test('a wide food names the foods it stands for', () => {
    const found = findFood('peppers');
    expect(found.known && found.narrower).toEqual(
      expect.arrayContaining(['bell pepper', 'chile pepper', 'jalapeno', 'pimiento']),
    );
    expect(findFood('strawberry')).not.toHaveProperty('narrower');
  });

  test('what no food is called gets what is near, or nothing', () => {
    expect(findFood('strawbery')).toMatchObject({ known: false, instead: [{ food: 'strawberry' }, {}] });
    const nothing = findFood('');
    expect(nothing).toMatchObject({ known: false, reason: { code: 'not in the pantry' }, instead: [] });
    for (const text of ['constructor', '__proto__', 'x'.repeat(10_000), `${'a b '.repeat(4000)}`, '\u0000', '%']) {
      expect(findFood(text).known, text.slice(0, 20)).toBe(false);
    }
  });

  test('no text is refused, anything else is', () => {
    expect(() => findFood(undefined as never)).toThrow(expect.objectContaining({ code: 'MISSING' }));
    expect(() => findFood({} as never)).toThrow(expect.objectContaining({ code: 'WRONG_TYPE' }));
  });
});

describe('foods', () => {
  test('lists all, or those of a kind', () => {
    expect(foods()).toHaveLength(foodRows.length);
    const fruit = foods({ kind: 'fruit' });
    expect(fruit.length).toBeGreaterThan(60);
    expect(fruit.every(({ kind }) => kind === 'fruit')).toBe(true);
  });
});

test('fresh prunes are plums, and fresh peaches are peaches', () => {
  expect(findFood('fresh prunes')).toMatchObject({ food: 'Italian plum' });
  expect(findFood('Fresh prune halves')).toMatchObject({ food: 'Italian plum', form: 'halves' });
  expect(findFood('prunes')).toMatchObject({ food: 'prune' });
  expect(findFood('fresh peaches')).toMatchObject({ food: 'peach' });
});

test('a mix and a split pea lend themselves no process', () => {
  expect(findFood('mixed berries')).toMatchObject({ food: 'mixed berries' });
  expect(findFood('green split peas')).toMatchObject({ food: 'split pea' });
});
