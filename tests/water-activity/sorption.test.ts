import { expect, test } from 'vitest';
import { foodRows, nameOf } from '../../src/foods/tables';
import { solutionWaterActivity, sorption } from '../../src/water-activity/index';
import { isotherms } from '../../src/water-activity/isothermTables';
import { codeAndPath as errorOf } from '../helpers/errors';
import { known } from '../helpers/known';

const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
const of = (food: string, form?: string) => known(sorption({ food, ...(form === undefined ? {} : { form }) }));

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
  expect(errorOf(() => sorption({ food: 'potato flakes', form: 'powder' }))).toEqual(['CONTRADICTION', 'form']);
});

test('the heat of sorption falls as the food takes up water', () => {
  expect(of('blueberry').netHeat).toEqual({ low: 0.25, high: 5.5 });
  expect(of('kiwi').netHeat).toBeUndefined();
});

test('a figure of a wider food says whose it is', () => {
  const golden = of('golden raisin');
  expect(golden.monolayer).toEqual({ low: 0.0789, high: 0.082 });
  expect(golden.basis.every((line) => line.of !== 'monolayers' || line.food === 'raisin')).toBe(true);
  expect(of('raisin').basis.some((line) => line.food !== undefined)).toBe(false);
});

test('every food of the pantry has an answer or a no', () => {
  for (const { name } of foodRows) {
    const answer = sorption({ food: name });
    if (!answer.known) expect(answer.reason.code).toBe('no-sorption');
    else expect(answer.basis.length).toBeGreaterThan(0);
  }
  expect(errorOf(() => sorption({ food: 'chalk' }))).toEqual(['UNKNOWN_NAME', 'food']);
});

// sloan-labuza-1975 (amorphous sorbitol, anhydrous excepted) against the solution equation: within 0.03
test.each([
  [0.6, 25],
  [0.7, 35],
  [0.8, 55],
  [0.9, 110],
])('amorphous sorbitol in solution at %s', (aw, water) => {
  const points = known(sorption({ food: 'sorbitol' })).series.find(({ state }) =>
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
