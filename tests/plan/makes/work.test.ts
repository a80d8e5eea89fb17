import { describe, expect, test } from 'vitest';
import { LIFT_A_JAR } from '../../../src/plan/figures/liftAJar';
import { printedMinutes, stepsOf, usualMinutesPerPound, workOf } from '../../../src/plan/makes/work';
import { RECIPES, recipeOfId } from '../../../src/recipes/rows/rows';
import type { RecipeRow } from '../../../src/recipes/rows/tables';

const work = (id: string, pack = 'hot') => workOf(recipeOfId(id) as RecipeRow, pack);

describe('minutes by hand, half way between the quick and the slow end of each operation', () => {
  test('frozen green beans', () => {
    const { handsPerKg, handsPerUnit, blanch, pot, end } = work('frozen-green-beans');
    // wash 0.5 to 2, snap 6 to 12, drain 0.2 to 0.6 min a kg
    expect(handsPerKg).toBeCloseTo(1.25 + 9 + 0.4, 9);
    // pack 1 to 2.5, label 0.1 to 0.3 min a bag
    expect(handsPerUnit).toBeCloseTo(1.75 + 0.2, 9);
    expect(blanch).toBe(3);
    expect(pot).toBeUndefined();
    expect(end).toBe('freeze');
  });
  test('peach jam: the pot is watched as long as it boils down', () => {
    const { handsPerKg, handsPerUnit, handsPerBatch, pot, end } = work('peach-jam-no-added-pectin');
    // wash 1.25, stem 5, peel 5.5, pit 4, crush 2 min a kg
    expect(handsPerKg).toBeCloseTo(17.75, 9);
    // fill hot 0.7 to 1.5, wipe and lid 0.3 to 0.6 min a jar
    expect(handsPerUnit).toBeCloseTo(1.1 + 0.45, 9);
    // skim 1 to 3 min
    expect(handsPerBatch).toBe(2);
    expect(pot).toEqual({ minutes: 40, printed: 0, stirred: true, boilsDown: true, cookedWhole: false });
    expect(end).toBe('can');
  });
  test('a printed time comes before the customary one, at its slow end', () => {
    // apples for sauce cook 5 to 20 min
    expect(work('apple-sauce').pot?.minutes).toBeGreaterThanOrEqual(20);
    expect(printedMinutes({ do: 'steam', time: { low: '3 min', high: '5 min' } })).toBe(5);
    expect(printedMinutes({ do: 'soak', time: '12 h', times: 2 })).toBe(1440);
    expect(printedMinutes({ do: 'wash' })).toBeUndefined();
  });
});

describe('where a recipe ends', () => {
  test.each([
    ['sauerkraut', 'ferment'],
    ['dried-apple-slices', 'dry'],
    ['freeze-dried-fruit', 'freeze-dry'],
    ['choice-salsa', 'keep cold'],
    ['tomato-crushed', 'can'],
  ])('%s: %s', (id, end) => expect(work(id).end).toBe(end));
  test('every recipe with a process ends in the canner, unless it ferments for weeks before', () => {
    for (const row of RECIPES) {
      const { end } = workOf(row, stepsOf(row, 'hot').length === 0 ? 'raw' : 'hot');
      const canned = row.keeps.some((keep) => 'process' in keep);
      const ferments = row.steps.some((step) => step.do === 'ferment');
      if (end === 'can') expect(canned, row.id).toBe(true);
      if (canned && !ferments) expect(end, row.id).toBe('can');
    }
  });
});

test('what a pack leaves out is not work: a raw pack is not heated', () => {
  expect(work('peach-halves-or-slices', 'hot').pot?.minutes).toBe(6.5);
  expect(work('peach-halves-or-slices', 'raw').pot).toBeUndefined();
});
test('what stands for hours is no work of hands', () => {
  const { soak, handsPerKg } = work('apple-juice');
  expect(soak).toBe(48 * 60);
  expect(handsPerKg).toBeLessThan(60);
});
test('all minutes of all recipes are such as a person can work', () => {
  for (const row of RECIPES) {
    for (const pack of ['hot', 'raw']) {
      const { handsPerKg, handsPerUnit, handsPerBatch, soak } = workOf(row, pack);
      for (const minutes of [handsPerKg, handsPerUnit, handsPerBatch, soak]) {
        expect(minutes, row.id).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(minutes), row.id).toBe(true);
      }
      expect(handsPerKg, row.id).toBeLessThan(120);
    }
  }
  expect(LIFT_A_JAR).toBeGreaterThan(0);
});
test('the usual minutes of a pound: of the recipe in that form', () => {
  // 10.65 min a kg
  expect(usualMinutesPerPound('green-bean', 'pieces', ['frozen'])).toBeCloseTo(10.65 * 0.45359237, 9);
  expect(usualMinutesPerPound('leek', undefined, ['frozen'])).toBe(4);
});
