import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkHeadspace } from '../../src/jars/index';
import { codeOf, pathOf } from '../helpers/errors';

describe('checkHeadspace', () => {
  test.each([
    ['jelly', 0.25],
    ['Preserves', 0.25],
    ['strawberry jam', 0.25],
    ['apple butter', 0.25],
    ['purees', 0.25],
    ['applesauce', 0.5],
    ['peaches', 0.5],
    ['peach halves', 0.5],
    ['Sliced carrots', 1],
    ['tomatoes', 0.5],
    ['green tomato relish', 0.5],
    ['sauerkraut', 0.5],
    ['whole grapes', 1],
    ['mincemeat', 1],
    ['green beans', 1],
    ['red meats', 1],
    ['chicken', 1.25],
  ])('%s: %d in is right', (product, value) => {
    expect(checkHeadspace({ product, measured: { value, unit: 'in' } })).toMatchObject({
      verdict: 'right',
      least: { value, unit: 'in' },
    });
  });

  test('a sixteenth of an inch is within a reading, more is not', () => {
    const verdict = (measured: string) => checkHeadspace({ product: 'fruit', measured: measured as '1 in' }).verdict;
    expect(verdict('7/16 in')).toBe('right');
    expect(verdict('9/16 in')).toBe('right');
    expect(verdict('3/8 in')).toBe('too little');
    expect(verdict('5/8 in')).toBe('too much');
    expect(verdict('0 in')).toBe('too little');
  });

  test('answers in the unit of the reading', () => {
    expect(checkHeadspace({ product: 'low-acid', measured: '20 mm' })).toMatchObject({
      verdict: 'too little',
      least: { value: 25.4, unit: 'mm' },
      most: { value: 31.75, unit: 'mm' },
    });
  });

  test('the headspace printed with a recipe goes before the class, and may stand alone', () => {
    // spaghetti sauce is printed with 1 in although tomatoes take 1/2 in (USDA guide, Guide 3)
    const printed = checkHeadspace({ product: 'tomato', printed: '1 in', measured: '1 in' });
    expect(printed.verdict).toBe('right');
    expect(printed.cautions.map(({ id }) => id)).not.toContain('recipe-headspace-first');
    expect(checkHeadspace({ printed: '1 1/2 in', measured: '1 in' }).verdict).toBe('too little');
    expect(checkHeadspace({ product: 'tomato', measured: '1 in' }).cautions.map(({ id }) => id)).toContain(
      'recipe-headspace-first',
    );
  });

  test('with a jar it says how much to take out or add', () => {
    // half an inch under a regular mouth: half of 72.6 mL
    const over = checkHeadspace({ product: 'fruit', measured: '1 in', jar: 'pint' });
    expect(over.adjust).toEqual({
      action: 'add',
      volume: { value: expect.closeTo(72.6 / 2 / 29.5735, 2), unit: 'fl oz' },
    });
    const under = checkHeadspace({ product: 'poultry', measured: '1 in', jar: 'quart', mouth: 'wide' });
    expect(under.adjust).toEqual({
      action: 'take out',
      volume: { value: expect.closeTo(115.8 / 4 / 29.5735, 2), unit: 'fl oz' },
    });
    expect(checkHeadspace({ product: 'fruit', measured: '1/2 in', jar: 'pint' }).adjust).toBeUndefined();
  });

  test('the verdict only ever goes from too little over right to too much as the headspace grows', () => {
    const order = ['too little', 'right', 'too much'];
    fc.assert(
      fc.property(
        fc.constantFrom('jam', 'fruit', 'low-acid', 'poultry', 'some vegetables and meats'),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (product, value, more) => {
          const at = (depth: number) => checkHeadspace({ product, measured: { value: depth, unit: 'in' } }).verdict;
          expect(order.indexOf(at(value + more))).toBeGreaterThanOrEqual(order.indexOf(at(value)));
        },
      ),
    );
  });

  test.each([
    // tested recipes differ for these, so the class must not answer for them
    [{ product: 'lima beans', measured: '1 in' }, 'UNKNOWN_NAME', 'product'],
    [{ product: 'tomato sauce', measured: '1/4 in' }, 'UNKNOWN_NAME', 'product'],
    [{ product: 'peanut butter', measured: '1/4 in' }, 'UNKNOWN_NAME', 'product'],
    // only whole grapes are printed
    [{ product: 'grape halves', measured: '1 in' }, 'UNKNOWN_NAME', 'product'],
    [{ product: '', measured: '1 in' }, 'UNKNOWN_NAME', 'product'],
    [{ measured: '1 in' }, 'MISSING', 'product'],
    [{ product: 'jam' }, 'MISSING', 'measured'],
    [{ product: 'jam', measured: '-1 in' }, 'OUT_OF_RANGE', 'measured'],
    [{ product: 'jam', measured: '1 cup' }, 'WRONG_DIMENSION', 'measured'],
    [{ product: 'jam', measured: '1 in', jar: 'tub' }, 'UNKNOWN_NAME', 'jar'],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => checkHeadspace(input as never))).toBe(code);
    expect(pathOf(() => checkHeadspace(input as never))).toBe(path);
  });
});
