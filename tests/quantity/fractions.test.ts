import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/common/exact';
import { parseAmount } from '../../src/quantity/amount';
import { fractionText, roundToStep } from '../../src/quantity/fractions';

describe('fractionText', () => {
  test.each([
    [1.5, 4, '1 1/2'],
    [0.375, 8, '3/8'],
    [2, 8, '2'],
    [0, 8, '0'],
    [-0.25, 4, '-1/4'],
    [7 / 3, 3, '2 1/3'],
    [0.5, 6, '1/2'],
    [2 / 3, 6, '2/3'],
  ])('%d in parts of %d is %s', (value, parts, text) => expect(fractionText(exact(value), parts)).toBe(text));

  test('what is written reads back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -4000, max: 4000 }), fc.constantFrom(2, 3, 4, 8, 16), (count, parts) => {
        const value = exact(count).div(parts);
        const read = parseAmount(fractionText(value, parts));
        expect(read).toEqual(value);
      }),
    );
  });
});

describe('roundToStep', () => {
  test('goes to its side, and noise of doubles does not cost a step', () => {
    expect(roundToStep(2.0000000000000004, 1, 'up').toNumber()).toBe(2);
    expect(roundToStep(1.9999999999999996, 1, 'down').toNumber()).toBe(2);
    expect(roundToStep(2.001, 1, 'up').toNumber()).toBe(3);
    expect(roundToStep(2.999, 1, 'down').toNumber()).toBe(2);
    expect(roundToStep(2.5, 1, 'nearest').toNumber()).toBe(3);
    expect(roundToStep(-2.5, 1, 'up').toNumber()).toBe(-2);
  });

  test('up is never below, down never above, and both within a step', () => {
    const value = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(value, fc.constantFrom(0.125, 0.25, 0.5, 1, 5), (x, step) => {
        const up = roundToStep(x, step, 'up').toNumber();
        const down = roundToStep(x, step, 'down').toNumber();
        expect(up).toBeGreaterThanOrEqual(x - 1e-11 * x);
        expect(down).toBeLessThanOrEqual(x + 1e-11 * x);
        expect(up - down).toBeLessThanOrEqual(step * (1 + 1e-9));
      }),
    );
  });
});
