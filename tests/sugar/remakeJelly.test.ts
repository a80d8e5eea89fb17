import { expect, test } from 'vitest';
import { jelly } from '../../src/sugar/index';

test('soft jelly again', () => {
  expect(jelly({ softJelly: '1 quart', pectin: 'powdered' })).toMatchObject({
    sugarVolume: { value: 0.25, unit: 'cup' },
    pectinVolume: { value: 4, unit: 'tsp' },
    boil: { low: { value: 30, unit: 's' } },
    batches: 1,
  });
  expect(jelly({ softJelly: '12 cups', pectin: 'none' })).toMatchObject({ lemonJuice: { value: 6 }, batches: 2 });
  expect(jelly({ softJelly: '12 cups', pectin: 'none' }).pectinVolume).toBeUndefined();
  expect(jelly({ softJelly: '4 cups', pectin: 'liquid' }).cautions.map(({ id }) => id)).toContain('recalled');
});
