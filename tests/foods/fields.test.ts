import { describe, expect, test } from 'vitest';
import { food, form, readFood, readForm } from '../../src/foods/fields';
import { figuresFor } from '../../src/foods/figuresFor';
import { formsIn, isWithin } from '../../src/foods/isWithin';
import { formName, formRows, nameOf } from '../../src/foods/tables';
import { fields, readInput } from '../../src/quantity/fields';

const thrown = (work: () => unknown) => {
  try {
    work();
  } catch (error) {
    return error;
  }
  return undefined;
};

describe('the field of a food', () => {
  const schema = fields({ food: food(), form: form() });

  test('gives id, name, and the form that the name says', () => {
    expect(readInput(schema, { food: 'string beans', form: 'cut' })).toEqual({
      food: { id: 'green-bean', name: 'green bean' },
      form: 'pieces',
    });
    expect(readFood('applesauce')).toEqual({ id: 'apple', name: 'apple', form: 'sauce' });
  });

  test('an error names the path, the text as given, and what is near', () => {
    expect(thrown(() => readInput(schema, { food: 'strawbery', form: 'whole' }))).toMatchObject({
      code: 'UNKNOWN_NAME',
      path: 'food',
      given: 'strawbery',
      nearest: expect.arrayContaining(['strawberry']),
    });
    expect(thrown(() => readInput(schema, { food: 'peach', form: 'havles' }))).toMatchObject({
      code: 'UNKNOWN_NAME',
      path: 'form',
      nearest: expect.arrayContaining(['halves']),
    });
    expect(thrown(() => readFood('chili', 'lots[0].food'))).toMatchObject({
      path: 'lots[0].food',
      expected: 'one food; that name could be chile pepper or chile con carne',
    });
    expect(thrown(() => readInput(schema, { form: 'whole' }))).toMatchObject({ code: 'MISSING', path: 'food' });
    expect(thrown(() => readFood(7))).toMatchObject({ code: 'WRONG_TYPE' });
    expect(thrown(() => readForm(null))).toMatchObject({ code: 'WRONG_TYPE' });
    expect(thrown(() => readForm('constructor'))).toMatchObject({ code: 'UNKNOWN_NAME' });
    expect(thrown(() => readFood('__proto__'))).toMatchObject({ code: 'UNKNOWN_NAME' });
  });
});

test('figuresFor gives the food, then the wider ones that lend this craft, in order', () => {
  expect(figuresFor('jalapeno', 'drying')).toEqual(['jalapeno', 'chile-pepper', 'pepper']);
  expect(figuresFor('jalapeno', 'process')).toEqual(['jalapeno']);
  expect(figuresFor('blackberry', 'containers')).toEqual(['blackberry', 'berry']);
  expect(figuresFor('blackberry', 'ph')).toEqual(['blackberry']);
  expect(figuresFor('apple', 'no such craft')).toEqual(['apple']);
});

test('isWithin follows the forms; formsIn holds only what a page prints together', () => {
  expect(isWithin('halves', 'pieces')).toBe(true);
  expect(isWithin('diced', 'pieces')).toBe(true);
  expect(isWithin('pieces', 'halves')).toBe(false);
  expect(isWithin('halves', 'halves-or-slices')).toBe(true);
  expect(formsIn('halves-or-slices')).toEqual(['halves-or-slices', 'halves', 'slices']);
  expect(formsIn('cubes')).toEqual(['cubes']);
  for (const { id } of formRows) expect(isWithin(id, id)).toBe(true);
});

test('every name of a form means it', () => {
  for (const { id, name, names, alone = [] } of formRows) {
    for (const each of [name, ...names, ...alone]) expect(readForm(each), each).toBe(id);
  }
});

test('an id that no table has is a mistake of the library', () => {
  expect(() => nameOf('no-such-food')).toThrow('no food has the id no-such-food');
  expect(() => formName('no-such-form')).toThrow('no form has the id no-such-form');
});
