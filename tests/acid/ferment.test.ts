import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ferment } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

type Made = Extract<ReturnType<typeof ferment>, { crock: unknown }>;
const made = (input: Parameters<typeof ferment>[0]): Made => {
  const answer = ferment(input);
  if (!('crock' in answer)) throw new Error(answer.reason.text);
  return answer;
};
const salt = (food: string, ready: `${number} lb`) => {
  const { salting: printed } = made({ food, ready });
  if (printed === undefined) throw new Error('no salt');
  return printed;
};

test('sauerkraut: 3 tbsp to 5 lb, within the 2 to 3 % of the standard', () => {
  const answer = salt('sauerkraut', '5 lb');
  expect(answer.volume).toEqual({ value: 3, unit: 'tbsp' });
  expect(answer.mass).toEqual({ value: 54, unit: 'g' });
  expect(answer.share).toBeGreaterThan(answer.standard?.low ?? 1);
  expect(answer.share).toBeLessThan(answer.standard?.high ?? 0);
  // the whole-recipe figure of the same bulletin, 12 tbsp for 25 lb, is weaker and is not served
  expect(salt('kraut', '25 lb').volume.value).toBe(15);
  expect((12 * 18) / (25 * 453.59237)).toBeLessThan(answer.standard?.low ?? 0);
});

test('salt grows with the cabbage', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), (pounds) => {
      const { salting: printed } = made({ food: 'cabbage', ready: { value: pounds, unit: 'lb' } });
      expect(printed?.share).toBeCloseTo(0.0238, 4);
    }),
  );
});

test('dill pickles: brine for the cucumbers', () => {
  const answer = salt('cucumbers', '8 lb');
  expect(answer).toMatchObject({ volume: { value: 1, unit: 'cup' }, waterVolume: { value: 16 }, shareOf: 'water' });
  expect(answer.share).toBeCloseTo(292 / (16 * 236.5882365 * 0.9982071), 6);
  expect(made({ food: 'pickles' }).food).toBe('fermented dill pickles');
  expect(made({ food: 'dill pickles' }).refrigeratedMonths).toEqual({ low: 4, high: 6 });
});

test('without a weight or a temperature only the crock is answered', () => {
  const answer = made({ food: 'sauerkraut' });
  expect(answer).not.toHaveProperty('salt');
  expect(answer).not.toHaveProperty('weeks');
  expect(answer.crock.headroom).toEqual({ low: { value: 4, unit: 'in' }, high: { value: 5, unit: 'in' } });
});

test.each(['kimchi', 'carrots', 'green tomatoes'])('%s is no ferment of these tables', (food) => {
  expect(ferment({ food, ready: '5 lb' })).toMatchObject({ known: false, reason: { code: 'no-ferment' } });
  expect(ferment({ food, temperature: '70 degF' })).toMatchObject({ known: false });
});

const time = (food: string, degF: number) => {
  const { weeks } = made({ food, temperature: { value: degF, unit: 'degF' } });
  return [weeks?.fit, weeks?.time?.low.value, weeks?.time?.high.value];
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

test('the notes say what goes wrong', () => {
  const note = (food: string, degF: number) => {
    const { weeks } = made({ food, temperature: { value: degF, unit: 'degF' } });
    return weeks?.note ?? '';
  };
  expect(note('sauerkraut', 50)).toContain('may not ferment');
  expect(note('dill pickles', 50)).toContain('Colder');
  expect(note('sauerkraut', 90)).toContain('soft');
});

test('degrees Celsius at the edge of a band', () => {
  // 70 degF and 75 degF
  expect(ferment({ food: 'kraut', temperature: { value: (70 - 32) / 1.8, unit: 'degC' } })).toMatchObject({
    weeks: { fit: 'good' },
  });
  expect(ferment({ food: 'kraut', temperature: { value: (75 - 32) / 1.8, unit: 'degC' } })).toMatchObject({
    weeks: { fit: 'good' },
  });
});

test('bad input', () => {
  expectError(() => ferment({ food: 'cabbage', ready: '-5 lb' }), 'OUT_OF_RANGE', 'ready');
  expectError(() => ferment({ food: 'cabbage', temperature: '100 degC' }), 'OUT_OF_RANGE', 'temperature');
  expectError(() => ferment({ food: 'cabbage', temperature: '70 lb' as never }), 'WRONG_DIMENSION', 'temperature');
  expectError(() => ferment({ food: 'granite' }), 'UNKNOWN_NAME', 'food');
});
