import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import cautions from '../../data/plan/cautions.json';
import { customaryServing } from '../../src/plan/answer/unitSize';
import { planCaution } from '../../src/plan/cautions';
import { longestWait, type WaitId } from '../../src/plan/check/waits';
import { customary, customaryRange } from '../../src/plan/customary';
import { countedIn } from '../../src/plan/makes/counted';
import { workTimes } from '../../src/plan/makes/work';
import { MAKES } from '../../src/plan/request/planInput';
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
test('every make has work times; what is packed raw is not cooked', () => {
  for (const make of MAKES) expect(workTimes(make, undefined, undefined).perPound).toBeGreaterThan(0);
  expect(workTimes('jars', 'halves', 'raw').cook).toBeUndefined();
  expect(workTimes('jars', 'butter', 'hot')).toEqual({ perPound: 1.5, perUnit: 2, cook: 150, stir: true });
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

test('work times: every make, each form once', () => {
  const row = z.strictObject({
    make,
    form: z.optional(text),
    perPound: above,
    perUnit: above,
    cook: z.optional(above),
    stir: z.optional(z.literal(true)),
    ...practice,
  });
  const read = z.array(row).parse(readTable('plan', 'work-times').rows);
  expect(new Set(read.map(({ make: of, form }) => `${of} ${form}`)).size).toBe(read.length);
  for (const { make: of, form, perPound, perUnit, cook } of read)
    expect(workTimes(of, form, 'hot')).toMatchObject({ perPound, perUnit, ...(cook === undefined ? {} : { cook }) });
  for (const { stir, cook } of read) expect(stir === undefined || cook !== undefined).toBe(true);
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
test('servings, and what is steeped', () => {
  const serving = z.strictObject({
    make,
    amount: above,
    unit: text,
    metricAmount: above,
    metricUnit: text,
    ...practice,
  });
  const servings = z.array(serving).parse(readTable('plan', 'servings').rows);
  expect(MAKES.filter((each) => customaryServing(each, true) === undefined)).toEqual(['jelly stock']);
  for (const { make: of, amount, unit, metricAmount, metricUnit } of servings) {
    expect(customaryServing(of, false)).toEqual({ value: amount, unit });
    expect(customaryServing(of, true)).toEqual({ value: metricAmount, unit: metricUnit });
  }
  const steeped = z.strictObject({
    make: z.enum(['vinegar', 'jelly stock']),
    kgLow: above,
    kgLikely: above,
    kgHigh: above,
    water: above,
    waterUnit: text,
    sugar: z.optional(above),
    sugarUnit: z.optional(text),
    step: text,
    caution: text,
    ...practice,
  });
  for (const { kgLow, kgLikely, kgHigh, caution: id } of z.array(steeped).parse(readTable('plan', 'steeped').rows)) {
    expect(kgLow < kgLikely && kgLikely < kgHigh).toBe(true);
    expect(planCaution(id).severity).toBe('danger');
  }
});
