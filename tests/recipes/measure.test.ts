import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { valueIn } from '../../src/quantity/scale';
import type { Quantity } from '../../src/quantity/types';
import { isVolume, measured } from '../../src/recipes/measure';

describe('an amount as a cook measures it', () => {
  test('one batch is the printed amount', () => {
    expect(measured('2 1/4 cups', 1, 'nearest')).toEqual({ value: 2.25, unit: 'cup' });
    expect(measured('1/3 cup', 1, 'up').unit).toBe('cup');
  });

  test.each([
    ['2 tbsp', 2, 'up', { value: 0.25, unit: 'cup' }],
    ['1/4 tsp', 3, 'up', { value: 0.75, unit: 'tsp' }],
    ['1 tbsp', 1.5, 'nearest', { value: 1.5, unit: 'tbsp' }],
    ['8 lb', 2.5, 'nearest', { value: 20, unit: 'lb' }],
    ['100 mL', 1.5, 'nearest', { value: 150, unit: 'mL' }],
  ] as const)('%s times %d', (printed, times, side, expected) => {
    expect(measured(printed, times, side)).toEqual(expected);
  });

  test('nothing is rounded to nothing', () => {
    expect(measured('1/8 tsp', 0.1, 'down').value).toBeGreaterThan(0);
  });

  const amount = fc.record({
    value: fc.integer({ min: 1, max: 40 }),
    unit: fc.constantFrom('tsp', 'tbsp', 'cup', 'quart', 'mL'),
    times: fc.double({ min: 0.25, max: 20, noNaN: true }),
  });
  const ml = (quantity: { value: number; unit: string }) => valueIn(quantity as Quantity<'volume'>, 'mL');
  test('rounded up it is never less, rounded down never more, than the printed proportion', () => {
    fc.assert(
      fc.property(amount, ({ value, unit, times }) => {
        const printed = `${value} ${unit}`;
        const exact = ml({ value, unit }) * times;
        // a hundred millionth for the doubles of the units
        expect(ml(measured(printed, times, 'up'))).toBeGreaterThanOrEqual(exact * (1 - 1e-8));
        const down = measured(printed, times, 'down');
        const least = ml({ value: 1 / 8, unit: 'tsp' });
        expect(ml(down)).toBeLessThanOrEqual(
          Math.max(exact, least, unit === 'mL' ? 1 : 0, unit === 'quart' ? ml({ value: 0.25, unit }) : 0) * (1 + 1e-8),
        );
      }),
    );
  });

  test('a volume is told from a mass', () => {
    expect(isVolume({ value: 1, unit: 'cup' })).toBe(true);
    expect(isVolume({ value: 1, unit: 'lb' })).toBe(false);
  });
});
