import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import cautions from '../../data/plan/cautions.json';
import { customaryServing } from '../../src/plan/answer/unitSize';
import { planCaution } from '../../src/plan/cautions';
import { longestWait, type WaitId } from '../../src/plan/check/waits';
import { customary, customaryRange } from '../../src/plan/customary';
import { countedIn } from '../../src/plan/makes/counted';
import { makesOf } from '../../src/plan/request/planFields';
import { RECIPES } from '../../src/recipes/rows/rows';
import { MAKES } from '../../src/recipes/rows/tables';
import { readTable } from '../helpers/tables';

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
  const text = z.string().check(z.minLength(1));
  const row = z.strictObject({
    id: z.enum(['filled-jar', 'filled-tray', 'prepared', 'hot-canner', 'hot-sauce']),
    what: text,
    from: text,
    until: text,
    minutes: z.int().check(z.positive()),
    reason: text,
    obtained: z.literal('common-practice'),
  });
  const { rows, columns } = readTable('plan', 'waits');
  const read = z.array(row).parse(rows);
  expect(Object.keys(columns)).toEqual(Object.keys(read[0] as object).filter((name) => name !== 'obtained'));
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
  const text = z.string().check(z.minLength(1));
  const row = z.strictObject({
    id: z.string().check(z.regex(/^[a-z-]+$/)),
    what: text,
    value: z.number(),
    low: z.optional(z.number().check(z.positive())),
    high: z.optional(z.number().check(z.positive())),
    unit: z.string(),
    reason: text,
    obtained: z.literal('common-practice'),
  });
  const read = z.array(row).parse(readTable('plan', 'customary').rows);
  expect(new Set(read.map(({ id }) => id)).size).toBe(read.length);
  for (const { id, value, low = value, high = value } of read) {
    expect(customary(id)).toBe(value);
    expect(customaryRange(id)).toEqual({ low, likely: value, high });
    expect(low <= value && value <= high, id).toBe(true);
  }
  expect(() => customary('none such')).toThrow('no customary figure');
});

const text = z.string().check(z.minLength(1));
const above = z.number().check(z.positive());
const practice = { reason: z.string().check(z.minLength(20)), obtained: z.literal('common-practice') };
const make = z.enum(MAKES);

test('wider words for what to make: each with what recipes make, and a recipe for each', () => {
  const row = z.strictObject({
    id: text,
    makes: z.array(make).check(z.minLength(1)),
    canned: z.optional(z.literal(true)),
    ...practice,
  });
  for (const { id, makes, canned } of z.array(row).parse(readTable('plan', 'makes').rows)) {
    // a wider word that recipes use too means their kind first
    expect(makes[0]).toBe(MAKES.find((each) => each === id) ?? makes[0]);
    expect(makesOf(id)).toEqual(makes);
    for (const each of makes) {
      const rows = RECIPES.filter((recipe) => recipe.makes === each);
      expect(
        rows.some(({ keeps }) => canned !== true || keeps.some((keep) => 'process' in keep)),
        `${id} ${each}`,
      ).toBe(true);
    }
  }
  expect(makesOf('none such')).toEqual([]);
});
test('what products are counted in: one and several', () => {
  const row = z.strictObject({ id: z.string().check(z.regex(/^[a-z-]+$/)), one: text, many: text, ...practice });
  for (const { id, one, many } of z.array(row).parse(readTable('plan', 'units').rows)) {
    expect(countedIn(id, '8 oz')).toEqual({
      unit: one.replace('{size}', '8 oz'),
      plural: many.replace('{size}', '8 oz'),
    });
    expect(many).not.toBe(one);
  }
  expect(() => countedIn('none such')).toThrow('no unit');
});
test('servings: one for each kind that is eaten as it is', () => {
  const serving = z.strictObject({
    id: text,
    makes: z.array(make).check(z.minLength(1)),
    amount: above,
    unit: text,
    metricAmount: above,
    metricUnit: text,
    ...practice,
  });
  const servings = z.array(serving).parse(readTable('plan', 'servings').rows);
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
