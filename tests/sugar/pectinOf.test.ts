import { expect, test } from 'vitest';
import { pectinOf } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

type Known = Extract<ReturnType<typeof pectinOf>, { composition: unknown }>;
const known = (input: Parameters<typeof pectinOf>[0]): Known => {
  const answer = pectinOf(input);
  if ('known' in answer) throw new Error(answer.reason.text);
  return answer;
};

test('a name of several kinds is answered for the one that needs most', () => {
  const apple = known({ food: 'apple' });
  expect(apple.group).toBe(2);
  expect(apple.lines).toEqual([
    { food: 'apple', printed: 'ripe apple', group: 2 },
    { food: 'tart apple', printed: 'sour apple', group: 1 },
  ]);
  expect(apple.composition.pectin).toBe(0.006);
  expect(known({ food: 'sour apples' }).group).toBe(1);
  expect(known({ food: 'Concord grapes' }).lines.length).toBe(2);
  // bottled juice is no line of the fruit
  expect(known({ food: 'grapes' }).lines.map(({ printed }) => printed)).not.toContain('bottled grape juice');
  expect(known({ food: 'grape juice' }).lines.map(({ printed }) => printed)).toEqual(['bottled grape juice']);
  expect(known({ food: 'blackberry', form: 'underripe' }).group).toBe(1);
});

test('a kind of fruit goes by the wider one, and the basis says so', () => {
  const damson = known({ food: 'damson' });
  expect(damson.group).toBe(1);
  expect(damson.basis.every(({ food }) => food === 'plum')).toBe(true);
});

test('fruit without an analysis has no composition; fruit without a line has no group', () => {
  const { composition, basis } = known({ food: 'loquats' });
  expect(composition).toEqual({});
  expect(basis.length).toBe(1);
  expect(known({ food: 'banana' })).not.toHaveProperty('group');
});

test('two analyses of grapefruit are joined', () => {
  expect(known({ food: 'grapefruit' }).composition).toMatchObject({ pectin: 0.003, acid: 0.015, pH: 3.3 });
  expect(known({ food: 'pineapple' }).composition.pectin).toBeUndefined();
});

test('a food in neither table, and bad input', () => {
  expect(pectinOf({ food: 'turnip' })).toMatchObject({ known: false, reason: { code: 'no-pectin' } });
  expect(errorOf(() => pectinOf({ food: 'granite' }))).toBe('UNKNOWN_NAME food');
  expect(errorOf(() => pectinOf({ food: 7 as never }))).toBe('WRONG_TYPE food');
  expect(errorOf(() => pectinOf({ food: 'grape juice', form: 'ripe' }))).toBe('CONTRADICTION form');
});
