import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import cautions from '../../data/plan/cautions.json';
import { customaryServing, servingRow } from '../../src/plan/answer/unitSize';
import { longestWait, type WaitId, waitRow } from '../../src/plan/check/waits';
import { planCaution } from '../../src/plan/figures/cautions';
import { customary, customaryRange, customaryRow } from '../../src/plan/figures/customary';
import { potFillRow } from '../../src/plan/kitchen/fillOf';
import { countedIn, unitRow } from '../../src/plan/makes/counted';
import { stepsRow } from '../../src/plan/makes/ownBook';
import { pantryRow } from '../../src/plan/makes/pantry';
import { potFoodRow } from '../../src/plan/makes/pots';
import { freeTasteRow } from '../../src/plan/makes/taste';
import { makesOf, makesRow } from '../../src/plan/request/planFields';
import { RECIPES } from '../../src/recipes/rows/rows';
import { MAKES } from '../../src/recipes/rows/tables';
import { checkTables, expectFolder, readTable } from '../helpers/tables';

const schemas = {
  customary: customaryRow(),
  'free-taste': freeTasteRow(),
  makes: makesRow(),
  'own-steps': stepsRow(),
  pantry: pantryRow(),
  'pot-fill': potFillRow(),
  'pot-foods': potFoodRow(),
  servings: servingRow(),
  units: unitRow(),
  waits: waitRow(),
};
checkTables('plan', schemas);

test('there is no table without a schema', () => {
  expectFolder('plan', Object.keys(schemas));
});

test('the cautions of the plan', () => {
  const schema = z.array(
    z.strictObject({
      id: z.string().check(z.regex(/^[a-z-]+$/)),
      severity: z.enum(['danger', 'quality', 'note']),
      text: z.string(),
    }),
  );
  for (const { id, text } of schema.parse(cautions)) expect(planCaution(id).text).toBe(text);
  expect(() => planCaution('none such')).toThrow('no caution');
});
test('the longest waits: each with its reason, and no jar waits over 20 minutes', () => {
  const read = z.array(waitRow()).parse(readTable('plan', 'waits').rows);
  expect(read.map(({ id, minutes }) => [id, minutes])).toEqual([
    ['filled-jar', 20],
    ['filled-tray', 20],
    ['prepared', 60],
    ['hot-canner', 60],
    ['hot-sauce', 60],
  ]);
  for (const { id, minutes } of read) expect(longestWait(id)).toBe(minutes);
  expect(() => longestWait('none such' as WaitId)).toThrow('no wait');
});

test('customary figures: each with its reason, and read by its id', () => {
  const read = z.array(customaryRow()).parse(readTable('plan', 'customary').rows);
  expect(new Set(read.map(({ id }) => id)).size).toBe(read.length);
  for (const { id, value, low = value, high = value } of read) {
    expect(customary(id)).toBe(value);
    expect(customaryRange(id)).toEqual({ low, likely: value, high });
    expect(low <= value && value <= high, id).toBe(true);
  }
  expect(() => customary('none such')).toThrow('no customary figure');
});

test('wider words for what to make: each with what recipes make, and a recipe for each', () => {
  for (const { word, makes, canned } of z.array(makesRow()).parse(readTable('plan', 'makes').rows)) {
    // a wider word that recipes use too means their kind first
    expect(makes[0]).toBe(MAKES.find((each) => each === word) ?? makes[0]);
    expect(makesOf(word)).toEqual(makes);
    for (const each of makes) {
      const rows = RECIPES.filter((recipe) => recipe.makes === each);
      expect(
        rows.some(({ keeps }) => canned !== true || keeps.some((keep) => 'process' in keep)),
        `${word} ${each}`,
      ).toBe(true);
    }
  }
  expect(makesOf('none such')).toEqual([]);
});
test('what products are counted in: one and several', () => {
  for (const { id, one, many } of z.array(unitRow()).parse(readTable('plan', 'units').rows)) {
    expect(countedIn(id, '8 oz')).toEqual({
      unit: one.replace('{size}', '8 oz'),
      plural: many.replace('{size}', '8 oz'),
    });
    expect(many).not.toBe(one);
  }
  expect(() => countedIn('none such')).toThrow('no unit');
});
test('servings: one for each kind that is eaten as it is', () => {
  const servings = z.array(servingRow()).parse(readTable('plan', 'servings').rows);
  const all = servings.flatMap(({ makes }) => makes);
  expect(new Set(all).size).toBe(all.length);
  expect(MAKES.filter((each) => customaryServing(each, true) === undefined)).toEqual(['stock']);
  for (const { makes, amount, unit, metricAmount, metricUnit } of servings) {
    for (const each of makes) {
      expect(customaryServing(each, false)).toEqual({ value: amount, unit });
      expect(customaryServing(each, true)).toEqual({ value: metricAmount, unit: metricUnit });
    }
  }
});
