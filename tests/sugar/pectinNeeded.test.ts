import { expect, test } from 'vitest';
import { pectinNeeded } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

type Dose = Extract<ReturnType<typeof pectinNeeded>, { pectin: unknown }>;
const dose = (input: Parameters<typeof pectinNeeded>[0]): Dose => {
  const answer = pectinNeeded(input);
  if ('known' in answer) throw new Error(answer.reason.text);
  return answer;
};

test('grade arithmetic', () => {
  expect(dose({ sugar: '55 kg', grade: 150 })).toMatchObject({ pectin: { unit: 'kg' } });
  expect(dose({ sugar: '55 kg', grade: 150 }).group).toBeUndefined();
  const quince = dose({ sugar: '2 lb', grade: 100, food: 'quince', ready: '3 lb' });
  expect(quince).toMatchObject({ group: 1, pectin: { value: 0.02, unit: 'lb' } });
  expect(quince.fromFruit).toBeUndefined();
  expect(dose({ sugar: '2 lb', grade: 100, food: 'plum', ready: '3 lb' }).fromFruit?.value).toBeCloseTo(0.027, 9);
});

test("in place of a recipe's pectin, and its strength in the mix", () => {
  expect(dose({ recipe: { pectin: '50 g', grade: 150 }, grade: 100 }).pectin.value).toBe(75);
  expect(dose({ recipe: { pectin: '30 g', grade: 150 }, grade: 150, mass: '0.9 kg' }).sag).toBeCloseTo(5, 9);
  // another grade sets as strongly
  expect(dose({ recipe: { pectin: '30 g', grade: 150 }, grade: 90, mass: '0.9 kg' }).sag).toBeCloseTo(5, 9);
});

test('bad input', () => {
  expect(pectinNeeded({ sugar: '1 kg', grade: 150, food: 'turnip' })).toMatchObject({ known: false });
  expect(errorOf(() => pectinNeeded({ sugar: '55 kg', grade: 0 }))).toBe('OUT_OF_RANGE grade');
  expect(errorOf(() => pectinNeeded({ grade: 100 }))).toBe('MISSING sugar');
  expect(errorOf(() => pectinNeeded({ sugar: '1 kg', recipe: { pectin: '1 g', grade: 100 }, grade: 100 }))).toBe(
    'CONTRADICTION recipe',
  );
  expect(errorOf(() => pectinNeeded({ sugar: '1 kg', grade: 100, ready: '1 kg' }))).toBe('MISSING food');
});
