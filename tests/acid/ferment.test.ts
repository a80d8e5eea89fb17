import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fermentSalt, fermentTime } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

const kraut = (produce: `${number} lb`) => {
  const answer = fermentSalt({ food: 'sauerkraut', produce });
  if (!('salt' in answer)) throw new Error('refused');
  return answer;
};

test('sauerkraut: 3 tbsp to 5 lb, within the 2 to 3 % of the standard', () => {
  const answer = kraut('5 lb');
  expect(answer.salt).toEqual({ value: 3, unit: 'tbsp' });
  expect(answer.saltMass).toEqual({ value: 54, unit: 'g' });
  expect(answer.ratio).toBeGreaterThan(answer.standard?.low ?? 1);
  expect(answer.ratio).toBeLessThan(answer.standard?.high ?? 0);
  // the whole-recipe figure of the same bulletin, 12 tbsp for 25 lb, is weaker and is not served
  expect(kraut('25 lb').salt.value).toBe(15);
  expect((12 * 18) / (25 * 453.59237)).toBeLessThan(answer.standard?.low ?? 0);
});

test('salt grows with the cabbage', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), (pounds) => {
      const answer = fermentSalt({ food: 'cabbage', produce: { value: pounds, unit: 'lb' } });
      expect('salt' in answer && answer.ratio).toBeCloseTo(0.0238, 4);
    }),
  );
});

test('dill pickles: brine for the cucumbers', () => {
  const answer = fermentSalt({ food: 'cucumbers', produce: '8 lb' });
  expect(answer).toMatchObject({ salt: { value: 1, unit: 'cup' }, water: { value: 16 }, ratioOf: 'water' });
  expect('ratio' in answer && answer.ratio).toBeCloseTo(292 / (16 * 236.5882365 * 0.9982071), 6);
});

test('other ferments are refused', () => {
  expect(fermentSalt({ food: 'kimchi', produce: '5 lb' })).toMatchObject({ tested: false });
  expect(fermentTime({ food: 'kimchi', temperature: '70 degF' })).toMatchObject({ tested: false });
});

const time = (food: string, degF: number) => {
  const answer = fermentTime({ food, temperature: { value: degF, unit: 'degF' } });
  if (!('fit' in answer)) throw new Error('refused');
  return [answer.fit, answer.time?.low.value, answer.time?.high.value];
};

test('only printed bands give weeks', () => {
  expect(time('sauerkraut', 72)).toEqual(['good', 3, 4]);
  expect(time('sauerkraut', 60)).toEqual(['good', 5, 6]);
  expect(time('sauerkraut', 68)).toEqual(['between', 3, 6]);
  expect(time('sauerkraut', 59)).toEqual(['too cold', undefined, undefined]);
  expect(time('sauerkraut', 75.1)).toEqual(['too warm', undefined, undefined]);
  expect(time('dill pickles', 55)).toEqual(['good', 5, 6]);
  expect(time('dill pickles', 54)).toEqual(['too cold', undefined, undefined]);
  expect(time('dill pickles', 78)).toEqual(['between', undefined, undefined]);
  expect(time('dill pickles', 81)).toEqual(['too warm', undefined, undefined]);
});

test('the notes tell what goes wrong', () => {
  const note = (food: string, degF: number) => {
    const answer = fermentTime({ food, temperature: { value: degF, unit: 'degF' } });
    return 'note' in answer ? answer.note : '';
  };
  expect(note('sauerkraut', 50)).toContain('may not ferment');
  expect(note('dill pickles', 50)).toContain('Colder');
  expect(note('sauerkraut', 90)).toContain('soft');
});

test('degrees Celsius at the edge of a band', () => {
  // 70 degF and 75 degF
  expect(fermentTime({ food: 'kraut', temperature: { value: (70 - 32) / 1.8, unit: 'degC' } })).toMatchObject({
    fit: 'good',
  });
  expect(fermentTime({ food: 'kraut', temperature: { value: (75 - 32) / 1.8, unit: 'degC' } })).toMatchObject({
    fit: 'good',
  });
});

test('bad input', () => {
  expectError(() => fermentSalt({ food: 'cabbage', produce: '-5 lb' }), 'OUT_OF_RANGE', 'produce');
  expectError(() => fermentTime({ food: 'cabbage', temperature: '100 degC' }), 'OUT_OF_RANGE', 'temperature');
  expectError(() => fermentTime({ food: 'cabbage', temperature: '70 lb' as never }), 'WRONG_DIMENSION', 'temperature');
});
