import { describe, expect, test } from 'vitest';
import { foodRows, nameOf } from '../../src/foods/tables';
import { solutionWaterActivity, waterActivityOf } from '../../src/water-activity/index';
import { isotherms } from '../../src/water-activity/isothermTables';
import { foodActivityRows } from '../../src/water-activity/typicalFigures';
import { codeAndPath as errorOf } from '../helpers/errors';
import { known } from '../helpers/known';

const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
const of = (food: string, form?: string) => known(waterActivityOf({ food, ...(form === undefined ? {} : { form }) }));

test('recalled figures say so, a damaged copy too', () => {
  expect(ids(of('gelatin'))).toContain('recalled');
  expect(ids(of('kiwi'))).not.toContain('recalled');
  expect(ids(of('sucrose'))).toContain('damaged-copy');
  expect(ids(of('potato starch'))).not.toContain('damaged-copy');
});

test('every set of constants is listed with its food', () => {
  const foods = [...new Set(isotherms.map(({ food }) => food))];
  expect(foods.flatMap((food) => of(nameOf(food)).isotherms.map(({ set }) => set)).sort()).toEqual(
    isotherms.map(({ id }) => id).sort(),
  );
});

test('a figure says the form it was printed for, whether or not one is asked for', () => {
  expect(of('potato').monolayers.map((each) => each.form)).toEqual(['flakes']);
  expect(of('potato', 'powder').monolayers).toEqual([]);
  expect(of('potato', 'flakes').monolayer).toEqual({ low: 0.05, high: 0.05 });
  expect(of('potato flakes').monolayers[0]?.form).toBe('flakes');
  expect(errorOf(() => waterActivityOf({ food: 'potato flakes', form: 'powder' }))).toEqual(['CONTRADICTION', 'form']);
});

test('a figure of a wider food says whose it is', () => {
  const golden = of('golden raisin');
  expect(golden.monolayer).toEqual({ low: 0.0789, high: 0.082 });
  expect(golden.basis.every((line) => line.of !== 'monolayers' || line.food === 'raisin')).toBe(true);
  expect(of('raisin').basis.some((line) => line.food !== undefined)).toBe(false);
});

test('every food of the pantry has an answer or a no', () => {
  for (const { name } of foodRows) {
    const answer = waterActivityOf({ food: name });
    if (!answer.known) expect(answer.reason.code).toBe('no-water-activity');
    else expect(answer.basis.length).toBeGreaterThan(0);
  }
  expect(errorOf(() => waterActivityOf({ food: 'chalk' }))).toEqual(['UNKNOWN_NAME', 'food']);
});

// sloan-labuza-1975 (amorphous sorbitol, anhydrous excepted) against the solution equation: within 0.03
test.each([
  [0.6, 25],
  [0.7, 35],
  [0.8, 55],
  [0.9, 110],
])('amorphous sorbitol in solution at %s', (aw, water) => {
  const points = known(waterActivityOf({ food: 'sorbitol' })).series.find(({ state }) =>
    state.startsWith('amorphous'),
  )?.points;
  expect(points).toContainEqual({ waterActivity: aw, moisture: water / 100 });
  const solution = solutionWaterActivity({
    water: { value: water, unit: 'g' },
    solutes: { sorbitol: '100 g' },
    supersaturated: true,
  });
  expect(Math.abs(solution.waterActivity - aw)).toBeLessThan(0.03);
});

test('foods by their kitchen names; recalled figures say so', () => {
  const jam = known(waterActivityOf({ food: 'jam' }));
  expect([jam.food, jam.typical?.waterActivity]).toEqual(['jam', { low: 0.6, high: 0.85 }]);
  expect(jam.typical?.figures.map(({ printed }) => printed)).toEqual(['jams and jellies']);
  const leather = known(waterActivityOf({ food: 'fruit leather' }));
  expect(ids(leather)).toContain('recalled');
  expect(errorOf(() => waterActivityOf({ food: 'gravel' }))).toEqual(['UNKNOWN_NAME', 'food']);
});

test('a form may be in the name or beside it, but not both', () => {
  const one = known(waterActivityOf({ food: 'dried apples' }));
  const other = known(waterActivityOf({ food: 'apple', form: 'dried' }));
  expect(one).toEqual(other);
  expect(one.typical?.waterActivity).toEqual({ low: 0.7, high: 0.75 });
  expect(errorOf(() => waterActivityOf({ food: 'dried apples', form: 'leather' }))).toEqual(['CONTRADICTION', 'form']);
});

test('a figure of dried fruit is not served for fresh, nor one of fresh for dried', () => {
  expect(waterActivityOf({ food: 'fruit' })).toMatchObject({ typical: { waterActivity: { low: 0.98, high: 1 } } });
  expect(waterActivityOf({ food: 'fruit', form: 'dried' })).toMatchObject({
    typical: { waterActivity: { low: 0.6, high: 0.85 } },
  });
  expect(waterActivityOf({ food: 'tomato', form: 'leather' })).not.toHaveProperty('typical');
});

describe('every row', () => {
  const pairs = foodActivityRows.flatMap((row) =>
    [row.food ?? [], row.foods ?? []]
      .flat()
      .map((food) => [`${food} ${row.form ?? ''} ${row.printed}`, food, row] as const),
  );
  test.each(pairs)('%s is within what its food answers', (_, food, row) => {
    const { typical } = of(nameOf(food), row.form);
    const served = typical?.figures.find(({ printed }) => printed === row.printed);
    // a recalled row gives way to one that was read
    if (served === undefined) expect(row.obtained).toBe('memory');
    else {
      expect(served.waterActivity).toEqual({ low: row.low, high: row.high });
      expect(typical?.waterActivity.low).toBeLessThanOrEqual(row.low);
      expect(typical?.waterActivity.high).toBeGreaterThanOrEqual(row.high);
    }
  });
});
