import { describe, expect, test } from 'vitest';
import { parseAmount } from '../../src/quantity/amount';
import { reviewBatch } from '../../src/record/index';
import {
  addedRow,
  COOLING,
  coolingRow,
  ERRORS,
  evidenceRow,
  figureOf,
  labelRuleRow,
  MISTAKES,
  mavRow,
  mistakeRow,
  mixedRow,
  RECORD_RULES,
  recordRuleRow,
  rowNamed,
  tneRow,
  VARIATIONS,
  VITAMIN_C,
  vitaminRow,
} from '../../src/record/tables';
import { checkTables, expectFolder, readTable } from '../helpers/tables';

const TABLES = {
  'added-kinds': addedRow(),
  'cooling-limits': coolingRow(),
  evidence: evidenceRow(),
  'label-rules': labelRuleRow(),
  'maximum-allowable-variation': mavRow(),
  'mistake-rules': mistakeRow(),
  'mixed-foods': mixedRow(),
  'record-rules': recordRuleRow(),
  'tolerable-negative-error': tneRow(),
  'vitamin-c-stored': vitaminRow(),
} as const;
checkTables('record', TABLES);

test('the folder holds these tables and no other', () => {
  expectFolder('record', Object.keys(TABLES));
});

test.each(Object.keys(TABLES))('each row of %s has its own id', (name) => {
  const ids = readTable('record', name).rows.map((row: { id: string }) => row.id);
  expect(new Set(ids).size).toBe(ids.length);
});

describe('figures', () => {
  // Handbook 133, Table 2-5 is recalled: only its inner order and its own conversions can be checked
  test('the ladder of variations rises, has no gap, and its columns agree', () => {
    VARIATIONS.forEach((row, i) => {
      expect(row.obtained).toBe('memory');
      const before = VARIATIONS[i - 1];
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
    const error = (row: (typeof ERRORS)[number], at: number) => row.tne_g ?? (at * (row.tne_percent as number)) / 100;
    ERRORS.slice(1).forEach((row, i) => {
      const before = ERRORS[i] as (typeof ERRORS)[number];
      expect(row.over).toBe(before.to);
      expect(error(row, row.over)).toBeCloseTo(error(before, row.over), 9);
    });
  });

  // 21 CFR 114.80 and 114.100
  test('pH 4.6 and 4.0, 3 years', () => {
    expect(rowNamed(RECORD_RULES, 'equilibrium-ph').figure).toBe(4.6);
    expect(rowNamed(RECORD_RULES, 'ph-meter').figure).toBe(4);
  });

  // Food Code 3-501.14; University of Maine
  test('cooling limits', () => {
    expect(COOLING.map((row) => [row.from_degF, row.to_degF, row.max_hours])).toEqual([
      [135, 70, 2],
      [135, 41, 6],
      [undefined, 40, 6],
    ]);
  });

  // Industrial and Engineering Chemistry, 1947, abstract
  test('vitamin C in two warehouses', () => {
    expect(VITAMIN_C.map((row) => [row.mean_degF, row.retention_percent])).toEqual([
      [58, 100],
      [77, 78],
    ]);
  });

  // Nebraska 2 h, Iowa State 24 h
  test('hours for a wrong process', () => {
    expect(MISTAKES.flatMap(({ hours }) => hours ?? [])).toEqual([2, 24, 24]);
  });

  test('the fields of a batch record are those that a bare record leaves out', () => {
    const bare = { date: '2026-08-14', name: 'x', lots: [{ food: 'x', raw: '1 lb' }] } as const;
    const { notRecorded } = reviewBatch({ record: bare });
    const fields = RECORD_RULES.flatMap(({ field }) => field ?? []);
    expect(notRecorded.map(({ field }) => field)).toEqual(
      fields.filter((field) => !['lotCode', 'date', 'name'].includes(field)),
    );
  });

  test('a rule or a caution that is not there is our own mistake', async () => {
    const { recordCaution } = await import('../../src/record/cautions');
    expect(() => rowNamed(MISTAKES, 'no-such')).toThrow('no row');
    expect(() => recordCaution('no-such')).toThrow('no caution');
    expect(() => figureOf(rowNamed(MISTAKES, 'untested'), 'hours')).toThrow('no hours');
  });
});
