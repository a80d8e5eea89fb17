import { describe, expect, test } from 'vitest';
import { foodProperties, type PrintedPropertiesInput } from '../../src/freezing/index';
import { expectError } from '../helpers/errors';

describe('initial freezing points', () => {
  const point = (input: PrintedPropertiesInput) => {
    const answer = foodProperties(input);
    if (!answer.known) throw new Error(answer.reason.text);
    return answer;
  };
  test('a food of the pantry without a figure is not known', () => {
    expect(foodProperties({ food: 'rutabaga' })).toMatchObject({ known: true });
    expect(foodProperties({ food: 'feijoa' })).toMatchObject({
      known: false,
      reason: { code: 'not in these tables' },
    });
  });

  test('the handbook before the textbook before memory', () => {
    const carrot = point({ food: 'carrots' });
    expect(carrot.temperature).toEqual({ value: -1.4, unit: 'degC' });
    expect(carrot.others.map(({ temperature }) => temperature.value)).toEqual([29.5, -1]);
    expect(carrot.cautions).toEqual([]);
    expect(foodProperties({ food: 'tomatoes' })).toMatchObject({
      food: 'tomato',
      temperature: { value: -1 },
      others: [{ temperature: { value: -0.5 } }],
    });
  });

  test('a recalled point says so and has no heats', () => {
    const figs = point({ food: 'figs' });
    expect(figs.cautions.map(({ id }) => id)).toEqual(['recalled']);
    expect(figs.specificHeatAbove).toBeUndefined();
  });

  test('bad input', () => {
    expectError(() => foodProperties({ food: 'granite' }), 'UNKNOWN_NAME', 'food');
  });
});
