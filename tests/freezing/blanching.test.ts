import { describe, expect, test } from 'vitest';
import { nameOf } from '../../src/foods/tables';
import { cutOf } from '../../src/freezing/beforeFreezing';
import { blanching } from '../../src/freezing/index';
import { BLANCHING } from '../../src/freezing/tables';
import { expectError } from '../helpers/errors';

const minutesOf = (input: Parameters<typeof blanching>[0]) => {
  const answer = blanching(input);
  if (!answer.known) throw new Error(answer.reason.text);
  return answer;
};

test('every row answers by its own name and form', () => {
  for (const row of BLANCHING) {
    const form = cutOf(row) === '' ? {} : { form: cutOf(row) };
    const printed = row.waterMinutes ?? row.steamMinutes;
    expect(minutesOf({ food: nameOf(row.food), ...form }).minutes).toEqual({ low: printed?.[0], high: printed?.[1] });
  }
});

test('a form is found by any of its words', () => {
  expect(minutesOf({ food: 'asparagus', form: 'large' }).minutes.high).toBe(4);
  expect(minutesOf({ food: 'carrots', form: 'sliced' }).form).toBe('diced');
  expect(minutesOf({ food: 'cauliflower', form: 'florets' }).minutes.high).toBe(3);
  expect(minutesOf({ food: 'cauliflower', form: 'large pieces' }).minutes.high).toBe(4);
});

test('steam: printed where it is, else half as long again', () => {
  expect(minutesOf({ food: 'green beans', blanchIn: 'steam' }).minutes).toEqual({ low: 5, high: 5 });
  expect(minutesOf({ food: 'celery', blanchIn: 'steam' }).minutes).toEqual({ low: 4.5, high: 4.5 });
  expect(minutesOf({ food: 'mushrooms', form: 'slices' }).blanchIn).toBe('steam');
  // the second source boils button and medium mushrooms, never slices
  expect(blanching({ food: 'mushrooms', form: 'slices', blanchIn: 'water' })).toMatchObject({ known: false });
  expect(minutesOf({ food: 'mushrooms', form: 'button', blanchIn: 'water' }).minutes).toEqual({ low: 3, high: 3 });
  expect(minutesOf({ food: 'mushrooms', form: 'buttons or quarters' }).minutes).toEqual({ low: 3.5, high: 3.5 });
});

test('corn on the cob cools twice as long', () => {
  expect(minutesOf({ food: 'corn on the cob', form: 'medium ears' }).coolingMinutes).toEqual({ low: 18, high: 18 });
  expect(minutesOf({ food: 'broccoli' }).coolingMinutes).toEqual({ low: 3, high: 3 });
});

test('water and ice for the weight', () => {
  expect(minutesOf({ food: 'broccoli', ready: '2 lb' })).toMatchObject({
    waterVolume: { value: 2, unit: 'gallon' },
    ice: { value: 2, unit: 'lb' },
  });
  expect(minutesOf({ food: 'broccoli', ready: '2 lb', blanchIn: 'steam' }).waterVolume).toBeUndefined();
});

test('a second source stands beside the list, or alone', () => {
  expect(minutesOf({ food: 'cauliflower' })).toMatchObject({
    minutes: { low: 3 },
    otherSource: { minutes: { low: 4 } },
  });
  expect(minutesOf({ food: 'dandelion greens' })).toMatchObject({ minutes: { low: 3 } });
  expect(minutesOf({ food: 'rhubarb', blanchIn: 'steam' }).minutes.low).toBe(2.25);
});

test.each(['beets', 'pumpkin', 'winter squash', 'sweet potatoes'])('%s are cooked instead', (food) => {
  expect(blanching({ food })).toMatchObject({ known: false, reason: { text: expect.stringContaining('cooked') } });
});

test('beets are cooked by size, as two pages print', () => {
  const answer = blanching({ food: 'beets' });
  expect(!answer.known && answer.instead[0]?.text).toBe(
    'Cook it until tender, 25 to 30 min (2 in across), 45 to 50 min (medium); cool it and pack it.',
  );
});

test('recalled times say so; blanching is no process for jars', () => {
  const ids = (food: string, form?: string) =>
    minutesOf(form === undefined ? { food } : { food, form }).cautions.map(({ id }) => id);
  expect(ids('parsnip', '1/2 in cubes')).toContain('recalled');
  expect(ids('green peas')).not.toContain('recalled');
  expect(ids('broccoli')).not.toContain('recalled');
  expect(ids('broccoli')).toContain('blanching-no-process');
});

describe('corn: cobs by size, kernels by their own time', () => {
  test.each([
    ['on the cob, small ears', 7, 10],
    ['on the cob, medium', 9, 13],
    ['large ears', 11, 16],
    ['kernels', 4, 6],
    ['whole kernel', 4, 6],
    ['cream style', 4, 6],
  ])('%s', (form, water, steam) => {
    for (const food of ['corn', 'sweet corn', 'Sweet Corn']) {
      expect(minutesOf({ food, form }).minutes).toEqual({ low: water, high: water });
      expect(minutesOf({ food, form, blanchIn: 'steam' }).minutes).toEqual({ low: steam, high: steam });
    }
  });
  test('a size or a cut that is left open is asked for, never filled in', () => {
    expectError(() => blanching({ food: 'corn', form: 'on the cob' }), 'UNKNOWN_NAME', 'form');
    expect(() => blanching({ food: 'corn', form: 'on the cob' })).toThrow('small ears; medium ears; large ears');
    expectError(() => blanching({ food: 'corn' }), 'MISSING', 'form');
    expectError(() => blanching({ food: 'sweet corn' }), 'MISSING', 'form');
    expectError(() => blanching({ food: 'corn on the cob' }), 'MISSING', 'form');
    expect(minutesOf({ food: 'corn kernels' }).minutes.high).toBe(4);
  });
});

test.each([
  ['cauliflower', 'whole head'],
  ['zucchini', 'whole'],
  ['broccoli', 'whole head'],
  ['eggplant', 'slices'],
  ['celery', 'slices'],
  ['snap bean', 'puree'],
])('a cut that is not printed is refused, also where a vegetable has one row: %s, %s', (food, form) => {
  expectError(() => blanching({ food, form }), 'UNKNOWN_NAME', 'form');
});

test('the name of the food and the form must not say two cuts', () => {
  expectError(() => blanching({ food: 'corn kernel', form: 'on the cob' }), 'CONTRADICTION', 'form');
});

test('a food of the pantry without a time is not known', () => {
  expect(blanching({ food: 'leek' })).toMatchObject({ known: false, reason: { code: 'not in these tables' } });
});

test('a wider food lends its time, and the answer says so', () => {
  const { basis, food } = minutesOf({ food: 'zucchini', form: 'cubes' });
  expect(food).toBe('zucchini');
  expect(basis[0]).toMatchObject({ of: 'minutes', food: 'summer squash' });
});

test('the cuts that the pages name', () => {
  expect(minutesOf({ food: 'carrot', form: 'slices' }).minutes.high).toBe(2);
  expect(minutesOf({ food: 'carrot', form: 'slices' }).otherSource).toEqual({ minutes: { low: 3, high: 3 } });
  expect(minutesOf({ food: 'green bean', form: 'whole' }).minutes.high).toBe(3);
  expect(minutesOf({ food: 'spinach', form: 'leaves' }).minutes.high).toBe(2);
  expect(minutesOf({ food: 'zucchini', form: 'cubes' })).toMatchObject({
    blanchIn: 'steam',
    minutes: { low: 2, high: 3 },
  });
});

test('steam shows no boiling-water time of another source', () => {
  for (const food of ['broccoli', 'cauliflower', 'corn kernel']) {
    expect(minutesOf({ food }).otherSource).toBeDefined();
    expect(minutesOf({ food, blanchIn: 'steam' }).otherSource).toBeUndefined();
  }
  expect(minutesOf({ food: 'lima bean', form: 'medium' }).otherSource?.minutes.high).toBe(3);
  expect(minutesOf({ food: 'lima bean', form: 'large' }).otherSource).toBeUndefined();
});

test('a minute more from 5,000 ft, and as long to cool', () => {
  const at = (elevation: '4,999 ft' | '5,000 ft' | '1600 m') => minutesOf({ food: 'broccoli', elevation });
  expect(at('4,999 ft').minutes.high).toBe(3);
  expect(at('5,000 ft')).toMatchObject({ minutes: { low: 4, high: 4 }, coolingMinutes: { high: 4 } });
  expect(at('1600 m').minutes.high).toBe(4);
});

test('leafy greens take twice the water', () => {
  expect(minutesOf({ food: 'spinach', ready: '2 lb' }).waterVolume).toEqual({ value: 4, unit: 'gallon' });
});

test.each([
  ['onion', 'chopped'],
  ['green pepper', 'dices'],
  ['zucchini', 'grated'],
])('%s, %s: frozen raw, as printed', (food, form) => {
  expect(blanching({ food, form })).toMatchObject({
    known: false,
    reason: { text: expect.stringContaining('no blanching') },
  });
});

test('bad input', () => {
  expectError(() => blanching({ food: 'asparagus' }), 'MISSING', 'form');
  expect(() => blanching({ food: 'asparagus' })).toThrow('small stalks; medium stalks; large stalks');
  expectError(() => blanching({ food: 'asparagus', form: 'purple' }), 'UNKNOWN_NAME', 'form');
  expectError(() => blanching({ food: 'asparagus', form: 'stalk' }), 'UNKNOWN_NAME', 'form');
  expectError(() => blanching({ food: 'granite' }), 'UNKNOWN_NAME', 'food');
  expectError(() => blanching({ food: 'broccoli', ready: '2 cups' as never }), 'WRONG_DIMENSION', 'ready');
});
