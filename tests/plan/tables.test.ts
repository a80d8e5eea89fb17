import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import cautions from '../../data/plan/cautions.json';
import { planCaution } from '../../src/plan/cautions';
import { MAKES } from '../../src/plan/planInput';
import { workTimes } from '../../src/plan/work';

test('the cautions of the plan', () => {
  const schema = z.array(z.strictObject({ id: z.string().check(z.regex(/^[a-z-]+$/)), text: z.string() }));
  for (const { id, text } of schema.parse(cautions)) expect(planCaution(id).text).toBe(text);
  expect(() => planCaution('none such')).toThrow('no caution');
});
test('every make has work times; what is packed raw is not cooked', () => {
  for (const make of MAKES) expect(workTimes(make, undefined, undefined).perPound).toBeGreaterThan(0);
  expect(workTimes('jars', 'halves', 'raw').cook).toBeUndefined();
  expect(workTimes('jars', 'butter', 'hot')).toEqual({ perPound: 1.5, perUnit: 2, cook: 150, stir: true });
});
