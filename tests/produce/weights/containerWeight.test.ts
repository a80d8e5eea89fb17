import { describe, expect, test } from 'vitest';
import { nameOf } from '../../../src/foods/tables';
import * as produce from '../../../src/produce/index';
import { customaryRows } from '../../../src/produce/yields/tables';
import { codeOf, thrownBy as errorOf } from '../../helpers/errors';
import { known, offered } from '../../helpers/known';

const containerWeight = (input: produce.ContainerWeightInput) => known(produce.kitchenMeasure(input));

const pounds = (food: string, container: string) => {
  const { low, likely, high } = containerWeight({ food, container }).raw;
  return [low.value, likely.value, high.value];
};

describe('container weight', () => {
  test('the canning guide first, every other table in the range', () => {
    expect(pounds('apples', 'bushel')).toEqual([40, 48, 50]); // Colorado 40, Alabama 50
    expect(pounds('peaches', 'bushels')).toEqual([48, 48, 52]);
    expect(pounds('plums', 'bushel')).toEqual([50, 56, 56]);
  });

  test('without the guide, the middle of what is printed', () => {
    expect(pounds('apples', 'peck')).toEqual([10, 12, 14]);
    expect(pounds('strawberries', '8-quart flat')).toEqual([12, 12, 12]);
    expect(pounds('blueberries', 'pint')).toEqual([0.75, 0.75, 1]);
  });

  test('recalled weights do not move the likely one where others were read, and are marked', () => {
    const lug = containerWeight({ food: 'peach', container: 'lug' });
    expect(lug.raw.likely.value).toBe(20.5); // 19 to 22, twice; the recalled 22 stays out
    expect(lug.cautions.map(({ id }) => id)).toContain('recalled');
    expect(pounds('eggplant', 'bushel')).toEqual([33, 33, 33]);
  });

  test('a group has the containers of its name and of its members', () => {
    expect(pounds('sour cherries', 'lug')).toEqual([15, 25, 25]);
    expect(pounds('raspberries', '24-quart crate')[1]).toBe(36);
  });

  test('the law of a State', () => {
    const { raw, basis } = containerWeight({ food: 'potatoes', container: 'bushel', state: 'arkansas' });
    expect(raw.likely.value).toBe(60);
    expect(basis[0]).toMatchObject({ of: 'raw', note: 'legal weight of the bushel' });
    expect(errorOf(() => containerWeight({ food: 'apple', container: 'bushel', state: 'Ohio' })).path).toBe('state');
    expect(produce.kitchenMeasure({ food: 'kale', container: 'bushel', state: 'Iowa' }).known).toBe(false);
    expect(codeOf(() => containerWeight({ food: 'apple', container: 'peck', state: 'Iowa' }))).toBe('CONTRADICTION');
  });

  test('an unknown container is refused with those that are printed', () => {
    expect(offered(produce.kitchenMeasure({ food: 'pear', container: 'sack' }))).toContain('a western box of pear');
    expect(offered(produce.kitchenMeasure({ food: 'jicama', container: 'box' }))).toEqual([
      'Weigh one, and give its mass.',
    ]);
  });

  test('every customary row is reached', () => {
    for (const { food, container, lb } of customaryRows) {
      const { low, high } = containerWeight({ food: nameOf(food), container }).raw;
      expect([low.value <= lb[0], lb[1] <= high.value], `${food} ${container}`).toEqual([true, true]);
    }
  });
});
