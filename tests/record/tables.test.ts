import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { parseAmount } from '../../src/quantity/amount';
import { keepRecordUntil, recordRules, reviewBatch } from '../../src/record/index';
import {
  coolingRows,
  labelRuleRows,
  mavRows,
  mistakeRows,
  RECORD_TOPICS,
  recordRuleRows,
  ruleNamed,
  tneRows,
  vitaminCRows,
} from '../../src/record/tables';
import { checkTables, expectFolder, sourced } from '../helpers/tables';

const text = z.string().min(5);
const rows = {
  'record-rules': z.strictObject({
    topic: z.enum(RECORD_TOPICS),
    rule: z.string().min(3),
    text,
    figure: z.number().positive().optional(),
    unit: z.enum(['year', 'pH', 'day', 'h', 'log']).optional(),
    field: z.string().optional(),
    ...sourced,
  }),
  'mistake-rules': z.strictObject({ rule: text, text, hours: z.number().positive().optional(), ...sourced }),
  'maximum-allowable-variation': z.strictObject({
    over_g: z.number().nullable(),
    to_g: z.number(),
    over_lb: z.number().nullable(),
    to_lb: z.number(),
    mav_g: z.number().nullable(),
    mav_lb: z.number().nullable(),
    mav_oz: z.string().nullable(),
    mav_share: z.number().optional(),
    ...sourced,
  }),
  'tolerable-negative-error': z.strictObject({
    over: z.number(),
    to: z.number().nullable(),
    tne_g: z.number().nullable(),
    tne_percent: z.number().nullable(),
    ...sourced,
  }),
  'label-rules': z.strictObject({
    rule: z.string().min(4),
    text,
    least_lb: z.number().optional(),
    below_lb: z.number().optional(),
    ...sourced,
  }),
  'cooling-limits': z.strictObject({
    rule: text,
    from_degF: z.number().nullable(),
    to_degF: z.number(),
    max_hours: z.number(),
    ...sourced,
  }),
  evidence: z.strictObject({
    line: z.string().min(4),
    how: z.array(z.enum(['jars', 'dried', 'oil', 'other'])).min(1),
    where: z.array(z.enum(['shelf', 'refrigerator', 'freezer'])).min(1),
    kinds: z.array(z.enum(['any', 'fruit', 'vegetable', 'meat', 'poultry', 'fish', 'egg', 'dairy'])).min(1),
    measure: z.string(),
    most: z.number().positive().optional(),
    unit: z.string().optional(),
    foods: z.array(z.string()).min(1).optional(),
    field: z.string().min(4),
    wanted: text,
    next: text,
    remedies: z.array(z.enum(['refrigerate', 'freeze', 'discard'])).min(1),
    hours: z.number().positive().optional(),
    reason: text,
    ...sourced,
  }),
  'vitamin-c-stored': z.strictObject({ place: text, mean_degF: z.number(), retention_percent: z.number(), ...sourced }),
};
checkTables('record', rows);

test('the folder holds these tables and no other', () => {
  // lists of names, whose shapes are in tests/record/evidence.test.ts
  expectFolder('record', [...Object.keys(rows), 'kinds-of-foods', 'mixed-foods']);
});

describe('figures', () => {
  // Handbook 133, Table 2-5 is recalled: only its inner order and its own conversions can be checked
  test('the ladder of variations rises, has no gap, and its columns agree', () => {
    mavRows.forEach((row, i) => {
      expect(row.obtained).toBe('memory');
      const before = mavRows[i - 1];
      if (before === undefined) {
        expect(row.mav_share).toBe(0.1);
        return;
      }
      expect([row.over_g, row.over_lb]).toEqual([before.to_g, before.to_lb]);
      expect(row.mav_g).toBeGreaterThan(before.mav_g ?? 0);
      expect(Math.abs((row.mav_g as number) - (row.mav_lb as number) * 453.59237)).toBeLessThan(0.1);
      // the fraction of an ounce is the same figure to the nearest sixteenth
      const ounces = (parseAmount(row.mav_oz as string) as { toNumber(): number }).toNumber();
      expect(Math.abs(ounces - (row.mav_lb as number) * 16)).toBeLessThan(1 / 32);
    });
  });

  // UK SI 2006/1258, Schedule 5: a step and its neighbour meet at their common end
  test('the steps of tolerable errors meet', () => {
    const error = (row: (typeof tneRows)[number], at: number) => row.tne_g ?? (at * (row.tne_percent as number)) / 100;
    tneRows.slice(1).forEach((row, i) => {
      const before = tneRows[i] as (typeof tneRows)[number];
      expect(row.over).toBe(before.to);
      expect(error(row, row.over)).toBeCloseTo(error(before, row.over), 9);
    });
  });

  // 21 CFR 114.80 and 114.100
  test('pH 4.6 and 4.0, 3 years', () => {
    expect(ruleNamed(recordRuleRows, 'equilibrium-ph').figure).toBe(4.6);
    expect(ruleNamed(recordRuleRows, 'ph-meter').figure).toBe(4);
    expect(keepRecordUntil({ made: '2024-02-29' }).until).toBe('2027-02-28');
  });

  // Food Code 3-501.14; University of Maine
  test('cooling limits', () => {
    expect(coolingRows.map((row) => [row.from_degF, row.to_degF, row.max_hours])).toEqual([
      [135, 70, 2],
      [135, 41, 6],
      [null, 40, 6],
    ]);
  });

  // Industrial and Engineering Chemistry, 1947, abstract
  test('vitamin C in two warehouses', () => {
    expect(vitaminCRows.map((row) => [row.mean_degF, row.retention_percent])).toEqual([
      [58, 100],
      [77, 78],
    ]);
  });

  // Nebraska 2 h, Iowa State 24 h
  test('hours for a wrong process', () => {
    expect(mistakeRows.flatMap(({ hours }) => hours ?? [])).toEqual([2, 24, 24]);
  });

  test('every rule is served, with its basis', () => {
    const { rules, cautions } = recordRules();
    expect(rules).toHaveLength(recordRuleRows.length + labelRuleRows.length);
    for (const topic of [...RECORD_TOPICS, 'label'] as const)
      expect(recordRules({ topic }).rules.length).toBeGreaterThan(0);
    for (const rule of rules) expect(rule.basis).toHaveLength(1);
    expect(cautions.map(({ id }) => id)).toContain('recalled');
    expect(recordRules({ topic: 'filing' }).cautions.map(({ id }) => id)).not.toContain('recalled');
    expect(rules.filter(({ figure }) => figure !== undefined).every(({ unit }) => unit !== undefined)).toBe(true);
  });

  test('the fields of a batch record are those that a bare record leaves out', () => {
    const bare = { lot: 'A', date: '2026-08-14', product: 'x', produce: [{ produce: 'x', raw: '1 lb' }] } as const;
    const { notRecorded } = reviewBatch({ record: bare });
    const fields = recordRuleRows.flatMap(({ field }) => field ?? []);
    expect(notRecorded.map(({ field }) => field)).toEqual(
      fields.filter((field) => !['lot', 'date', 'product'].includes(field)),
    );
  });

  test('a rule or a caution that is not there is our own mistake', async () => {
    const { recordCaution } = await import('../../src/record/cautions');
    expect(() => ruleNamed(mistakeRows, 'no-such')).toThrow('no rule');
    expect(() => recordCaution('no-such')).toThrow('no caution');
  });
});
