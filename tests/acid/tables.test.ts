import { describe, expect, test } from 'vitest';
import { drySaltRow } from '../../src/acid/leastSalt';
import { LIMITS, limitRow, limitRowSchema, pHLimit } from '../../src/acid/phLimits';
import { closestReading, READINGS, readingRow } from '../../src/acid/phReading';
import {
  acidCaution,
  brineFigureRow,
  FERMENT_SALT,
  FERMENT_TIME,
  FERMENTS,
  FOOD_PH,
  fermentRow,
  fermentSaltRow,
  fermentTimeRow,
  foodPhRow,
  JAR_ACIDS,
  jarAcidRow,
  pickleRule,
  printed,
  RECALLED_PH,
  ruleRow,
  SALT_MEASURES,
  saltMeasureRow,
} from '../../src/acid/tables';
import { formName, nameOf } from '../../src/foods/tables';
import { acidRows } from '../../src/process/tables';
import { checkTables, expectFolder, readTable } from '../helpers/tables';

type Row = Readonly<Record<string, unknown>>;
/** Where a row has both, the low end is not above the high one. */
const PAIRS = [
  ['pHLow', 'pHHigh'],
  ['degFLow', 'degFHigh'],
  ['weeksLow', 'weeksHigh'],
  ['gramsLow', 'gramsHigh'],
  ['percentLow', 'percentHigh'],
] as const;

const TABLES = {
  'acid-in-jars': jarAcidRow(),
  'brine-figures': brineFigureRow(),
  'ferment-salt': fermentSaltRow(),
  'ferment-time': fermentTimeRow(),
  ferments: fermentRow(),
  'food-ph': foodPhRow(),
  'food-ph-recalled': foodPhRow(),
  'ph-limits': limitRowSchema(),
  'ph-readings': readingRow(),
  'pickle-rules': ruleRow(),
  'salt-measures': saltMeasureRow(),
} as const;
const ROWS = {
  'ferment-salt': 8,
  'ferment-time': 10,
  'food-ph': 221,
  'food-ph-recalled': 48,
  'ph-limits': 9,
  'ph-readings': 3,
  'pickle-rules': 14,
  'salt-measures': 5,
} as const;

checkTables('acid', TABLES);
test('each file has its schema here', () => expectFolder('acid', Object.keys(TABLES)));

describe.each(Object.keys(TABLES))('table %s', (name) => {
  const rows: Row[] = readTable('acid', name).rows;
  test('an id is there once, and a row is about a food or none', () => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const { food, foods } of rows) expect(food === undefined || foods === undefined).toBe(true);
  });
  test('ends are in order, foods and forms are in the pantry', () => {
    for (const row of rows) {
      for (const [low, high] of PAIRS)
        if (row[low] !== undefined) expect(row[low]).toBeLessThanOrEqual(Number(row[high]));
      for (const food of [row.food ?? [], row.foods ?? []].flat()) expect(nameOf(String(food))).toBeTruthy();
      for (const form of [row.form ?? [], row.forms ?? []].flat()) expect(formName(String(form))).toBeTruthy();
    }
  });
});

test.each(Object.entries(ROWS))('%s has %i rows', (name, count) => {
  expect(readTable('acid', name).rows).toHaveLength(count);
});

test('what is recalled stands apart', () => {
  expect(RECALLED_PH.every(({ obtained }) => obtained === 'memory')).toBe(true);
  expect(FOOD_PH.some(({ obtained }) => obtained === 'memory')).toBe(false);
});

test('the acid of each jar is in the process tables, in its low-acid foods for pressure only', () => {
  for (const { acid } of JAR_ACIDS) {
    expect(acidRows.filter((row) => row.acid === acid).map(({ where }) => where)).toContain('each jar');
  }
});

test('a ferment is in the salt table and in the time table', () => {
  for (const { id, foods } of FERMENTS) {
    expect(foods[0]).toBe(id);
    expect(FERMENT_SALT.some((row) => row.food === id && row.leastOf !== undefined)).toBe(true);
    expect(FERMENT_TIME.some((row) => row.food === id)).toBe(true);
  }
});

test('the dry salt that is served is the strongest line that was read', () => {
  const shares = FERMENT_SALT.filter((row) => row.saltTbsp !== undefined && row.obtained !== 'memory').map(
    ({ id, saltTbsp = 0, produceLb = 1 }) => ({ id, share: saltTbsp / produceLb }),
  );
  expect(shares.sort((one, other) => other.share - one.share)[0]?.id).toBe(drySaltRow().id);
});

test('the limit is 4.6 on every line but the one for tomatoes', () => {
  expect(limitRow('home-acid').pH).toBe(4.6);
  expect(limitRow('home-low-acid').pH).toBe(4.6);
  expect(limitRow('law-tomato').pH).toBe(4.7);
  // the pickle rules repeat it
  for (const rule of ['acid-food', 'acidified-food', 'low-acid-food']) expect(pickleRule(rule).value).toBe(4.6);
  expect(pickleRule('water-activity').value).toBe(0.85);
  expect(limitRow('named-low-acid').printed).toContain('milk');
});

// 21 CFR 114.3 and 113.3(n), USDA Guide 1: every line that is written more than once
test('each line of the limit table holds its own figures', () => {
  expect(LIMITS.map(({ pH, relation, waterActivityAbove }) => [pH, relation, waterActivityAbove])).toEqual([
    [4.6, '>', undefined],
    [4.6, '<=', undefined],
    [4.6, '<=', undefined],
    [4.6, '<=', 0.85],
    [4.6, '>', 0.85],
    [4.7, '<', undefined],
    [4.6, '>', 0.85],
    [undefined, undefined, undefined],
    [undefined, undefined, undefined],
  ]);
  const { value, lowest, highest } = pickleRule('pasteurization-hold');
  expect([value, lowest, highest]).toEqual([30, 180, 185]);
});

test('one instrument is assumed, and not the closest', () => {
  expect(READINGS.filter((row) => row.assumed === true).map(({ within }) => within)).toEqual([0.1]);
  expect(READINGS.map(({ within }) => within)).toEqual([0.05, 0.1, 0.5]);
  expect(closestReading().within).toBe(0.05);
});

test('recalled pH agrees with the published copy of the same list where both have a row', () => {
  // FDA list 2003, quoted or read, against what was recalled of it
  const published = new Map(
    FOOD_PH.filter((row) => row.source === 'fda-ph-foods').map((row) => [row.printed.toLowerCase(), row]),
  );
  const both = RECALLED_PH.filter((row) => published.has(row.printed.toLowerCase()));
  expect(both.length).toBeGreaterThan(2);
  for (const row of both) {
    const read = published.get(row.printed.toLowerCase());
    expect([row.printed, row.pHLow, row.pHHigh]).toEqual([row.printed, read?.pHLow, read?.pHHigh]);
  }
});

test('salt for sauerkraut: every line of the table, as a share of the cabbage', () => {
  const tbsp = SALT_MEASURES.find((row) => row.measure === 'tbsp' && row.obtained === 'read')?.gramsLow ?? 0;
  const shares = FERMENT_SALT.filter((row) => row.food === 'sauerkraut' && row.produceLb !== undefined).map((row) => {
    const grams = (row.saltTbsp ?? 0) * tbsp + (row.saltLb ?? 0) * 453.59237;
    return [row.obtained, Number((grams / ((row.produceLb ?? 1) * 453.59237)).toFixed(4))];
  });
  expect(shares).toEqual([
    ['read', 0.0238],
    ['read', 0.019],
    ['memory', 0.02],
  ]);
  const recalled = FERMENT_SALT.find((row) => row.use === 'share-of-the-cabbage' && row.obtained === 'memory');
  expect([recalled?.percentLow, recalled?.percentHigh]).toEqual([2.25, 2.5]);
  // finished sauerkraut of the standard: acid as lactic
  expect(FERMENT_SALT.flatMap(({ lacticPercentAtLeast: least = 0 }) => (least > 0 ? [least] : []))).toEqual([1.5]);
});

test('a name that is in no table is our own mistake', () => {
  expect(() => pickleRule('nothing')).toThrow('no pickle rule');
  expect(() => limitRow('nothing')).toThrow('no limit');
  expect(() => pHLimit('named-above')).toThrow('no pH in the limit');
  expect(() => acidCaution('nothing')).toThrow('no caution');
  expect(() => printed(limitRow('named-low-acid'), 'pH')).toThrow('no pH in the row');
});
