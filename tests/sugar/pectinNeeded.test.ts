import { expect, test } from 'vitest';
import { pectinNeeded } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

type Known = Exclude<ReturnType<typeof pectinNeeded>, { known: false }>;
const known = (input: Parameters<typeof pectinNeeded>[0]): Known => {
  const answer = pectinNeeded(input);
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
  expect(apple.composition?.pectinShare).toBe(0.006);
  expect(known({ food: 'sour apples' }).group).toBe(1);
  expect(known({ food: 'Concord grapes' }).lines?.length).toBe(2);
  // bottled juice is no line of the fruit
  expect(known({ food: 'grapes' }).lines?.map(({ printed }) => printed)).not.toContain('bottled grape juice');
  expect(known({ food: 'grape juice' }).lines?.map(({ printed }) => printed)).toEqual(['bottled grape juice']);
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
  expect(known({ food: 'grapefruit' }).composition).toMatchObject({ pectinShare: 0.003, acidShare: 0.015, pH: 3.3 });
  expect(known({ food: 'pineapple' }).composition?.pectinShare).toBeUndefined();
});

test('a food in neither table, and bad input of a fruit', () => {
  expect(pectinNeeded({ food: 'turnip' })).toMatchObject({ known: false, reason: { code: 'no-pectin' } });
  expect(errorOf(() => pectinNeeded({ food: 'granite' }))).toBe('UNKNOWN_NAME food');
  expect(errorOf(() => pectinNeeded({ food: 7 as never }))).toBe('WRONG_TYPE food');
  expect(errorOf(() => pectinNeeded({ food: 'grape juice', form: 'ripe' }))).toBe('CONTRADICTION form');
});

type Dose = Required<Pick<Known, 'dose'>> & Known;
const dose = (input: Parameters<typeof pectinNeeded>[0]): Dose => {
  const answer = pectinNeeded(input);
  if ('known' in answer) throw new Error(answer.reason.text);
  if (answer.dose === undefined) throw new Error('no dose');
  return { ...answer, dose: answer.dose };
};

test('grade arithmetic', () => {
  expect(dose({ sugar: '55 kg', grade: 150 })).toMatchObject({ dose: { unit: 'kg' } });
  expect(dose({ sugar: '55 kg', grade: 150 }).group).toBeUndefined();
  const quince = dose({ sugar: '2 lb', grade: 100, food: 'quince', ready: '3 lb' });
  expect(quince).toMatchObject({ group: 1, dose: { value: 0.02, unit: 'lb' } });
  expect(quince.fromFruit).toBeUndefined();
  expect(dose({ sugar: '2 lb', grade: 100, food: 'plum', ready: '3 lb' }).fromFruit?.value).toBeCloseTo(0.027, 9);
});

test("in place of a recipe's pectin, and its strength in the mix", () => {
  expect(dose({ inPlaceOf: { dose: '50 g', grade: 150 }, grade: 100 }).dose.value).toBe(75);
  expect(dose({ inPlaceOf: { dose: '30 g', grade: 150 }, grade: 150, mass: '0.9 kg' }).sag).toBeCloseTo(5, 9);
  // another grade sets as strongly
  expect(dose({ inPlaceOf: { dose: '30 g', grade: 150 }, grade: 90, mass: '0.9 kg' }).sag).toBeCloseTo(5, 9);
});

test('bad input', () => {
  expect(pectinNeeded({ sugar: '1 kg', grade: 150, food: 'turnip' })).toMatchObject({ known: false });
  expect(errorOf(() => pectinNeeded({ sugar: '55 kg', grade: 0 }))).toBe('OUT_OF_RANGE grade');
  expect(errorOf(() => pectinNeeded({ grade: 100 }))).toBe('MISSING sugar');
  expect(errorOf(() => pectinNeeded({ sugar: '1 kg', inPlaceOf: { dose: '1 g', grade: 100 }, grade: 100 }))).toBe(
    'CONTRADICTION inPlaceOf',
  );
  expect(errorOf(() => pectinNeeded({ sugar: '1 kg', grade: 100, ready: '1 kg' }))).toBe('MISSING food');
  expect(errorOf(() => pectinNeeded({}))).toBe('MISSING food');
  expect(errorOf(() => pectinNeeded({ sugar: '1 kg' }))).toBe('MISSING grade');
  expect(errorOf(() => pectinNeeded({ food: 'quince', mass: '1 kg' }))).toBe('MISSING grade');
});
