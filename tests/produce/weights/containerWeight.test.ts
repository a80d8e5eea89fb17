import { describe, expect, test } from 'vitest';
import { containerWeight, frozenPintsFromRaw } from '../../../src/produce/index';
import { customaryRows } from '../../../src/produce/yields/printed';
import { codeOf, thrownBy as errorOf } from '../../helpers/errors';

const pounds = (produce: string, container: string) => {
  const { low, likely, high } = containerWeight({ produce, container }).weight;
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
    const lug = containerWeight({ produce: 'peach', container: 'lug' });
    expect(lug.weight.likely.value).toBe(20.5); // 19 to 22, twice; the recalled 22 stays out
    expect(lug.cautions.map(({ id }) => id)).toContain('recalled');
    expect(pounds('eggplant', 'bushel')).toEqual([33, 33, 33]);
  });

  test('a group has the containers of its name and of its members', () => {
    expect(pounds('sour cherries', 'lug')).toEqual([15, 25, 25]);
    expect(pounds('raspberries', '24-quart crate')[1]).toBe(36);
  });

  test('the law of a State', () => {
    const { weight, basis } = containerWeight({ produce: 'potatoes', container: 'bushel', state: 'arkansas' });
    expect(weight.likely.value).toBe(60);
    expect(basis[0]?.of).toBe('legal weight of the bushel');
    expect(errorOf(() => containerWeight({ produce: 'apple', container: 'bushel', state: 'Ohio' })).path).toBe('state');
    expect(codeOf(() => containerWeight({ produce: 'kale', container: 'bushel', state: 'Iowa' }))).toBe('UNKNOWN_NAME');
    expect(codeOf(() => containerWeight({ produce: 'apple', container: 'peck', state: 'Iowa' }))).toBe('CONTRADICTION');
  });

  test('an unknown container is refused with those that are printed', () => {
    const error = errorOf(() => containerWeight({ produce: 'pear', container: 'sack' }));
    expect(error.path).toBe('container');
    expect(error.expected).toContain('western box');
    const none = errorOf(() => containerWeight({ produce: 'jicama', container: 'box' }));
    expect(none.expected).toContain('none is printed');
  });

  test('every customary row is reached', () => {
    for (const { produce, container, lb } of customaryRows) {
      const { low, high } = containerWeight({ produce, container }).weight;
      expect([low.value <= lb[0], lb[1] <= high.value], `${produce} ${container}`).toEqual([true, true]);
    }
  });
});

describe('frozen pints', () => {
  test('by pounds a pint, read rows before recalled ones', () => {
    const { pints, rawPerPint, cautions } = frozenPintsFromRaw({ produce: 'apple', raw: '48 lb' });
    expect(pints).toEqual({ low: 32, likely: 34, high: 38 });
    expect([rawPerPint.low.value, rawPerPint.high.value]).toEqual([1.25, 1.5]);
    expect(cautions.map(({ id }) => id)).not.toContain('recalled');
    const beans = frozenPintsFromRaw({ produce: 'snap beans', raw: '30 lb' });
    expect(beans.pints).toMatchObject({ low: 30, high: 44 }); // 30 / 0.667, printed as 45
    expect(beans.cautions.map(({ id }) => id)).toContain('recalled');
  });

  test('rows printed by the quart or pint of fruit go by the crate', () => {
    const { pints } = frozenPintsFromRaw({ produce: 'blackberries', raw: '36 lb' });
    expect(pints).toMatchObject({ low: 32, high: 36 });
    expect(frozenPintsFromRaw({ produce: 'strawberries', raw: '36 lb' }).pints.high).toBe(38);
  });

  test('in the unit asked in', () => {
    expect(frozenPintsFromRaw({ produce: 'plum', raw: '10 kg' }).rawPerPint.low.unit).toBe('kg');
  });

  test('is refused where none is printed', () => {
    expect(codeOf(() => frozenPintsFromRaw({ produce: 'jicama', raw: '1 lb' }))).toBe('UNKNOWN_NAME');
  });
});
