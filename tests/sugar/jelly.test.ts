import { expect, test } from 'vitest';
import { jelly } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('sugar by the pectin test', () => {
  expect(jelly({ juice: '6 cups', pectinTest: 'flakes' })).toMatchObject({
    sugarVolume: { low: { value: 3, unit: 'cup' }, high: { value: 3, unit: 'cup' } },
    sugarIsMost: true,
  });
  expect(jelly({ juice: '6 cups', pectinTest: 'one lump' })).toMatchObject({
    sugar: { low: { value: 1200 }, high: { value: 1200 } },
    sugarIsMost: false,
  });
  const answer = jelly({ juice: '6 cups', pectinTest: 'flakes' });
  expect(answer.cautions.map(({ id }) => id)).toContain('never-taste-alcohol-test');
  expect(errorOf(() => jelly({ juice: '6 cups', pectinTest: 'soup' as never }))).toBe('UNKNOWN_NAME pectinTest');
});

test('jelly from whole fruit, in pots of six cups of juice', () => {
  const answer = jelly({ food: 'apples', raw: '13 lb' });
  if (!('sugar' in answer)) throw new Error('not known');
  const { juice, batches, sugarVolume, lemonJuice } = answer;
  expect([juice.value, batches, sugarVolume.low.value, lemonJuice?.value]).toEqual([13, 3, 9.75, 19.5]);
  expect(jelly({ food: 'grape', raw: '6 lb' })).toMatchObject({ batches: 1, lemonOptional: false });
  // a test of the juice goes before the page
  expect(jelly({ food: 'apple', raw: '4 lb', pectinTest: 'one lump' })).toMatchObject({
    sugarVolume: { low: { value: 4 } },
  });
  expect(jelly({ food: 'apple', juice: '4 cups' })).toMatchObject({ sugarVolume: { low: { value: 3 } } });
});

test('other fruit, and bad input', () => {
  expect(jelly({ food: 'melon', raw: '6 lb' })).toMatchObject({ known: false, reason: { code: 'no-jelly' } });
  expect(jelly({ food: 'melon', juice: '6 cups', pectinTest: 'flakes' })).toHaveProperty('sugar');
  expect(errorOf(() => jelly({ food: 'apple' }))).toBe('MISSING raw');
  expect(errorOf(() => jelly({ raw: '6 lb' }))).toBe('MISSING food');
  expect(errorOf(() => jelly({ juice: '6 cups' }))).toBe('MISSING pectinTest');
  expect(errorOf(() => jelly({ food: 'apple', raw: '1 lb', juice: '6 cups' }))).toBe('CONTRADICTION juice');
});
