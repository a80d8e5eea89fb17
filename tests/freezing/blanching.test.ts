import { expect, test } from 'vitest';
import { blanching } from '../../src/freezing/index';
import { BLANCHING } from '../../src/freezing/tables';
import { expectError } from '../helpers/errors';

const minutesOf = (input: Parameters<typeof blanching>[0]) => {
  const answer = blanching(input);
  if (!('minutes' in answer)) throw new Error(answer.reason);
  return answer;
};

test('every row answers by its own name and form', () => {
  for (const row of BLANCHING) {
    const form = row.form === '' ? {} : { form: row.form };
    const printed = row.waterMinutes ?? row.steamMinutes;
    expect(minutesOf({ food: row.food, ...form }).minutes).toEqual({ low: printed?.[0], high: printed?.[1] });
  }
});

test('a form is found by any of its words', () => {
  expect(minutesOf({ food: 'asparagus', form: 'large' }).minutes.high).toBe(4);
  expect(minutesOf({ food: 'carrots', form: 'sliced' }).form).toBe('diced, sliced or strips');
  // a vegetable with one row has no forms to tell apart
  expect(minutesOf({ food: 'cauliflower', form: 'small' }).minutes.high).toBe(3);
});

test('steam: printed where it is, else half as long again', () => {
  expect(minutesOf({ food: 'green beans', method: 'steam' }).minutes).toEqual({ low: 5, high: 5 });
  expect(minutesOf({ food: 'celery', method: 'steam' }).minutes).toEqual({ low: 4.5, high: 4.5 });
  expect(minutesOf({ food: 'mushrooms', form: 'slices' }).method).toBe('steam');
  expect(minutesOf({ food: 'mushrooms', form: 'slices', method: 'water' }).minutes).toEqual({ low: 3, high: 5 });
});

test('corn on the cob cools twice as long', () => {
  expect(minutesOf({ food: 'corn on the cob', form: 'medium' }).coolingMinutes).toEqual({ low: 18, high: 18 });
  expect(minutesOf({ food: 'broccoli' }).coolingMinutes).toEqual({ low: 3, high: 3 });
});

test('water and ice for the weight', () => {
  expect(minutesOf({ food: 'broccoli', mass: '2 lb' })).toMatchObject({
    water: { value: 2, unit: 'gallon' },
    ice: { value: 2, unit: 'lb' },
  });
  expect(minutesOf({ food: 'broccoli', mass: '2 lb', method: 'steam' }).water).toBeUndefined();
});

test('a second source stands beside the list, or alone', () => {
  expect(minutesOf({ food: 'cauliflower' })).toMatchObject({
    minutes: { low: 3 },
    otherSource: { minutes: { low: 4 } },
  });
  expect(minutesOf({ food: 'dandelion greens' })).toMatchObject({ minutes: { low: 3 } });
  expect(minutesOf({ food: 'rhubarb', method: 'steam' }).minutes.low).toBe(2.25);
});

test.each(['beets', 'pumpkin', 'winter squash', 'sweet potatoes'])('%s are cooked instead', (food) => {
  expect(blanching({ food })).toMatchObject({ tested: false, reason: expect.stringContaining('cooked') });
});

test('recalled times say so; blanching is no process for jars', () => {
  const ids = (food: string, form?: string) =>
    minutesOf(form === undefined ? { food } : { food, form }).cautions.map(({ id }) => id);
  expect(ids('green peas')).toContain('from-memory');
  expect(ids('broccoli')).not.toContain('from-memory');
  expect(ids('broccoli')).toContain('blanching-no-process');
});

test('bad input', () => {
  expectError(() => blanching({ food: 'asparagus' }), 'MISSING', 'form');
  expect(() => blanching({ food: 'asparagus' })).toThrow('small stalk; medium stalk; large stalk');
  expectError(() => blanching({ food: 'asparagus', form: 'purple' }), 'UNKNOWN_NAME', 'form');
  expectError(() => blanching({ food: 'asparagus', form: 'stalk' }), 'UNKNOWN_NAME', 'form');
  expectError(() => blanching({ food: 'granite' }), 'UNKNOWN_NAME', 'food');
  expectError(() => blanching({ food: 'broccoli', mass: '2 cups' as never }), 'WRONG_DIMENSION', 'mass');
});
