import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CheckHeadspaceInput, checkHeadspace, type HeadspaceCheck } from '../../src/jars/index';
import { codeOf, pathOf } from '../helpers/errors';

/** The check of a food that the tables know. */
function check(input: CheckHeadspaceInput): HeadspaceCheck {
  const checked = checkHeadspace(input);
  if (!checked.known) throw new Error(checked.reason.text);
  return checked;
}

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
    expect(check({ food: product, measured: { value, unit: 'in' } })).toMatchObject({
      verdict: 'right',
      leastHeadspace: { value, unit: 'in' },
    });
  });

  test('a sixteenth of an inch is within a reading, more is not', () => {
    const verdict = (measured: string) => check({ food: 'fruit', measured: measured as '1 in' }).verdict;
    expect(verdict('7/16 in')).toBe('right');
    expect(verdict('9/16 in')).toBe('right');
    expect(verdict('3/8 in')).toBe('too little');
    expect(verdict('5/8 in')).toBe('too much');
    expect(verdict('0 in')).toBe('too little');
  });

  test('answers in the unit of the reading', () => {
    expect(check({ food: 'low-acid', measured: '20 mm' })).toMatchObject({
      verdict: 'too little',
      leastHeadspace: { value: 25.4, unit: 'mm' },
      mostHeadspace: { value: 31.75, unit: 'mm' },
    });
  });

  test('the headspace printed with a recipe goes before the class, and may stand alone', () => {
    // spaghetti sauce is printed with 1 in although tomatoes take 1/2 in (USDA guide, Guide 3)
    const printed = check({ food: 'tomato', recipeHeadspace: '1 in', measured: '1 in' });
    expect(printed.verdict).toBe('right');
    expect(printed.cautions.map(({ id }) => id)).not.toContain('recipe-headspace-first');
    expect(check({ recipeHeadspace: '1 1/2 in', measured: '1 in' }).verdict).toBe('too little');
    expect(check({ food: 'tomato', measured: '1 in' }).cautions.map(({ id }) => id)).toContain(
      'recipe-headspace-first',
    );
  });

  test('with a jar it says how much to take out or add', () => {
    // half an inch under a regular mouth: half of 72.6 mL
    const over = check({ food: 'fruit', measured: '1 in', jar: 'pint' });
    expect(over.add).toEqual({ value: expect.closeTo(72.6 / 2 / 29.5735, 2), unit: 'fl oz' });
    expect(over).not.toHaveProperty('takeOut');
    const under = check({ food: 'poultry', measured: '1 in', jar: 'quart', mouth: 'wide' });
    expect(under.takeOut).toEqual({ value: expect.closeTo(115.8 / 4 / 29.5735, 2), unit: 'fl oz' });
    expect(Object.keys(check({ food: 'fruit', measured: '1/2 in', jar: 'pint' }))).not.toContain('add');
  });

  test('takes food and form apart', () => {
    expect(check({ food: 'peach', form: 'halves', measured: '1/2 in' }).verdict).toBe('right');
    expect(check({ food: 'apple', form: 'sauce', measured: '1/2 in' }).verdict).toBe('right');
    expect(check({ food: 'apple', form: 'juice', measured: '1/4 in' }).verdict).toBe('right');
  });

  test('a processed jar is never told to take out or add', () => {
    for (const measured of ['0 in', '1/2 in', '3 in'] as const) {
      const { next, add, takeOut, meaning } = check({
        food: 'peach',
        measured,
        jar: 'pint',
        when: 'after processing',
      });
      expect([...next, meaning].join(' ')).not.toMatch(/before processing|take some out|add food/i);
      expect(next[0]).toMatch(/^Never open a processed jar/);
      expect([add, takeOut]).toEqual([undefined, undefined]);
    }
    expect(check({ food: 'peach', measured: '3 in' }).next).toEqual(['Add food or liquid before processing.']);
  });

  // Nebraska Extension: less than half lost and sealed, use first; more, refrigerate and eat within 2 to 3 days
  test.each([
    ['3 in', { liquidLost: 0.49, hasSealed: true }, 'use first'],
    ['3 in', { liquidLost: 0.5, hasSealed: true }, 'refrigerate'],
    ['3 in', { liquidLost: '60 %', hasSealed: true }, 'refrigerate'],
    ['3 in', { liquidLost: '60 %', hasSealed: false }, 'refrigerate'],
    ['3 in', { liquidLost: '60 %', hasSealed: true, sinceProcessing: '24 h' }, 'refrigerate'],
    ['3 in', { liquidLost: '60 %', hasSealed: true, sinceProcessing: '3 weeks' }, 'discard'],
    ['3 in', { liquidLost: 0.3 }, 'test the seal'],
    ['3 in', { liquidLost: 0.3, hasSealed: false }, 'test the seal'],
    ['3 in', { hasSealed: true }, 'measure the liquid'],
    ['1/2 in', { hasSealed: true }, 'store'],
    ['1/2 in', {}, 'test the seal'],
    ['1/2 in', { liquidLost: 0.2, hasSealed: true }, 'use first'],
    ['0 in', { hasSealed: true }, 'store'],
  ] as const)('after processing, %s and %j: %s', (measured, more, handling) => {
    const answer = check({ food: 'peach', measured, when: 'after processing', ...more });
    expect(answer.handling).toBe(handling);
    if (handling === 'refrigerate') expect(answer.next.join(' ')).toContain('within 2 to 3 days');
    if (handling === 'discard') expect(answer.next.join(' ')).toContain('without tasting');
  });

  test('the verdict only ever goes from too little over right to too much as the headspace grows', () => {
    const order = ['too little', 'right', 'too much'];
    fc.assert(
      fc.property(
        fc.constantFrom('jam', 'fruit', 'low-acid', 'poultry', 'some vegetables and meats'),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (product, value, more) => {
          const at = (depth: number) => check({ food: product, measured: { value: depth, unit: 'in' } }).verdict;
          expect(order.indexOf(at(value + more))).toBeGreaterThanOrEqual(order.indexOf(at(value)));
        },
      ),
    );
  });

  test.each([
    // tested recipes differ for these, so the rule must not answer for them
    ['lima beans', '1 in'],
    ['tomato sauce', '1/4 in'],
    ['mango sauce', '1/4 in'],
    ['green tomato pie filling', '1/2 in'],
    ['peanut butter', '1/4 in'],
    // a jam for the freezer is not canned
    ['freezer jam', '1/4 in'],
    ['pumpkin butter', '1/4 in'],
    ['reduced-sodium sliced dill pickles', '1/4 in'],
    // only whole grapes are printed
    ['grape halves', '1 in'],
    ['strawberry', '1/2 in'],
  ] as const)('these tables print no headspace for %s', (food, measured) => {
    const no = checkHeadspace({ food, measured });
    expect(no).toMatchObject({ known: false, reason: { code: 'not in these tables' } });
    expect(no.known === false && no.instead[0]?.text).toContain('printed with your tested recipe');
    expect(check({ food, measured, recipeHeadspace: measured }).verdict).toBe('right');
  });

  test('a wider food lends its figure and is named', () => {
    expect(check({ food: 'boysenberry', measured: '1/2 in' }).basis[0]).toMatchObject({
      of: 'leastHeadspace',
      food: 'blackberry',
    });
    expect(check({ food: 'blackberry', measured: '1/2 in' }).basis[0]).not.toHaveProperty('food');
  });

  test('a form alone says its food, and the form of the name and the field must agree', () => {
    for (const food of ['juice', 'puree', 'conserve'])
      expect(check({ food, measured: '1/4 in' }).verdict).toBe('right');
    expect(check({ food: 'pie filling', measured: '1 in' }).verdict).toBe('right');
    expect(codeOf(() => checkHeadspace({ food: 'halves', measured: '1/2 in' }))).toBe('UNKNOWN_NAME');
    expect(codeOf(() => checkHeadspace({ food: 'applesauce', form: 'juice', measured: '1/2 in' }))).toBe(
      'CONTRADICTION',
    );
  });

  test.each([
    [{ food: '', measured: '1 in' }, 'UNKNOWN_NAME', 'food'],
    [{ measured: '1 in' }, 'MISSING', 'food'],
    [{ form: 'halves', measured: '1 in' }, 'MISSING', 'food'],
    [{ food: 'aple', measured: '1 in' }, 'UNKNOWN_NAME', 'food'],
    [{ food: 'peach', form: 'haves', measured: '1 in' }, 'UNKNOWN_NAME', 'form'],
    [{ food: 'jam', measured: '1 in', liquidLost: 0.2 }, 'CONTRADICTION', 'liquidLost'],
    [{ food: 'jam', measured: '1 in', when: 'before processing', hasSealed: true }, 'CONTRADICTION', 'hasSealed'],
    [{ food: 'jam', measured: '1 in', when: 'later' }, 'UNKNOWN_NAME', 'when'],
    [{ food: 'jam' }, 'MISSING', 'measured'],
    [{ food: 'jam', measured: '-1 in' }, 'OUT_OF_RANGE', 'measured'],
    [{ food: 'jam', measured: '1 cup' }, 'WRONG_DIMENSION', 'measured'],
    [{ food: 'jam', measured: '1 in', jar: 'tub' }, 'UNKNOWN_NAME', 'jar'],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => checkHeadspace(input as never))).toBe(code);
    expect(pathOf(() => checkHeadspace(input as never))).toBe(path);
  });
});
