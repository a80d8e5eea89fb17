import { describe, expect, test } from 'vitest';
import { foodRows } from '../../src/foods/tables';
import { typicalWaterActivity } from '../../src/water-activity/index';
import { foodActivityRows } from '../../src/water-activity/typicalWaterActivity';
import { codeAndPath as errorOf } from '../helpers/errors';
import { known } from '../helpers/known';

const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
const nameOf = (id: string): string => foodRows.find((row) => row.id === id)?.name ?? id;

test('foods by their kitchen names; recalled figures say so', () => {
  const jam = known(typicalWaterActivity({ food: 'jam' }));
  expect([jam.food, jam.waterActivity]).toEqual(['jam', { low: 0.6, high: 0.85 }]);
  expect(jam.figures.map(({ printed }) => printed)).toEqual(['jams and jellies']);
  const leather = known(typicalWaterActivity({ food: 'fruit leather' }));
  expect(ids(leather)).toContain('recalled');
  expect(ids(typicalWaterActivity({ food: 'raisin' }))).not.toContain('recalled');
  expect(errorOf(() => typicalWaterActivity({ food: 'gravel' }))).toEqual(['UNKNOWN_NAME', 'food']);
});

test('a form may be in the name or beside it, but not both', () => {
  const one = known(typicalWaterActivity({ food: 'dried apples' }));
  const other = known(typicalWaterActivity({ food: 'apple', form: 'dried' }));
  expect(one).toEqual(other);
  expect(one.waterActivity).toEqual({ low: 0.7, high: 0.75 });
  expect(errorOf(() => typicalWaterActivity({ food: 'dried apples', form: 'leather' }))).toEqual([
    'CONTRADICTION',
    'form',
  ]);
});

test('a figure of dried fruit is not served for fresh, nor one of fresh for dried', () => {
  expect(typicalWaterActivity({ food: 'fruit' })).toMatchObject({ waterActivity: { low: 0.98, high: 1 } });
  expect(typicalWaterActivity({ food: 'fruit', form: 'dried' })).toMatchObject({
    waterActivity: { low: 0.6, high: 0.85 },
  });
  expect(typicalWaterActivity({ food: 'tomato', form: 'leather' }).known).toBe(false);
});

describe('every row', () => {
  const pairs = foodActivityRows.flatMap((row) =>
    [row.food ?? [], row.foods ?? []]
      .flat()
      .map((food) => [`${food} ${row.form ?? ''} ${row.printed}`, food, row] as const),
  );
  test.each(pairs)('%s is within what its food answers', (_, food, row) => {
    const answer = known(
      typicalWaterActivity({ food: nameOf(food), ...(row.form === undefined ? {} : { form: row.form }) }),
    );
    const served = answer.figures.find(({ printed }) => printed === row.printed);
    // a recalled row gives way to one that was read
    if (served === undefined) expect(row.obtained).toBe('memory');
    else {
      expect(served.waterActivity).toEqual({ low: row.low, high: row.high });
      expect(answer.waterActivity.low).toBeLessThanOrEqual(row.low);
      expect(answer.waterActivity.high).toBeGreaterThanOrEqual(row.high);
    }
  });
});

test('every food of the pantry has an answer or a no', () => {
  for (const { name } of foodRows) {
    const answer = typicalWaterActivity({ food: name });
    if (!answer.known) {
      expect(answer.reason).toMatchObject({ code: 'no-water-activity' });
      expect(answer.instead.length).toBeGreaterThan(0);
    }
  }
});
