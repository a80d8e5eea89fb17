import { describe, expect, test } from 'vitest';
import { formName, nameOf } from '../../src/foods/tables';
import { sugarCaution } from '../../src/sugar/cautions';
import { gelRow } from '../../src/sugar/gelRoute';
import { gelPointRow, gelRuleRow } from '../../src/sugar/gelTemperature';
import { legalJam } from '../../src/sugar/index';
import { factorRow, lawRow, usFruitRow } from '../../src/sugar/jamLaw';
import { jellyJuiceRow, sugarForJuiceRow } from '../../src/sugar/jelly';
import { pectinClassRow, pectinContentRow } from '../../src/sugar/pectinOf';
import { potRule, potRuleRow } from '../../src/sugar/potRules';
import { canningSyrupRow, freezingSyrupRow } from '../../src/sugar/printedSyrups';
import { remakeRow } from '../../src/sugar/remakeJelly';
import { stageRow } from '../../src/sugar/sugarStages';
import { sweetener, sweetenerRow } from '../../src/sugar/sweeteners';
import { checkTables, expectFolder, readTable } from '../helpers/tables';

const TABLES = {
  'canning-syrups': canningSyrupRow(),
  'freezing-syrups': freezingSyrupRow(),
  sweeteners: sweetenerRow(),
  'gel-point': gelPointRow(),
  'gel-point-rules': gelRuleRow(),
  'pectin-classes': pectinClassRow(),
  'pectin-content': pectinContentRow(),
  'jelly-juice': jellyJuiceRow(),
  'sugar-for-juice': sugarForJuiceRow(),
  'us-jam-fruit': usFruitRow(),
  'composition-law': lawRow(),
  'fruit-factors': factorRow(),
  'gel-chemistry': gelRow(),
  'pot-rules': potRuleRow(),
  'remake-jelly': remakeRow(),
  'sugar-stages': stageRow(),
};
const read = (name: string) => readTable('sugar', name);

checkTables('sugar', TABLES);
test('each file has its schema here', () => expectFolder('sugar', Object.keys(TABLES)));

describe.each(Object.keys(TABLES))('table %s', (name) => {
  const rows: Readonly<Record<string, unknown>>[] = read(name).rows;
  test('an id is there once; foods and forms are in the pantry', () => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const row of rows) {
      for (const food of [row.food ?? [], row.foods ?? []].flat()) expect(nameOf(String(food))).toBeTruthy();
      if (row.form !== undefined) expect(formName(String(row.form))).toBeTruthy();
    }
  });
  test('two ends are in order', () => {
    for (const pair of rows.flatMap((row) => Object.values(row)).filter(Array.isArray)) {
      if (typeof pair[0] === 'number') expect(pair[0]).toBeLessThanOrEqual(pair[1]);
    }
  });
});

test('the printed syrup percentages are sugar by volume of the printed cups, within 1.3', () => {
  for (const row of read('canning-syrups').rows) {
    expect(Math.abs((100 * row.sugar9Pints) / (row.sugar9Pints + row.water9Pints) - row.percent)).toBeLessThan(1.3);
    expect(Math.abs((100 * row.sugar7Quarts) / (row.sugar7Quarts + row.water7Quarts) - row.percent)).toBeLessThan(1.3);
  }
});

interface Law {
  rule: string;
  products: string[];
  fruits: string;
  foods?: string[];
  fruitParts?: number;
  sweetenerParts?: number;
  solidsLeast?: number;
  solidsMost?: number;
  fruitLeast?: number;
}
const FRUIT_OF: Record<string, string> = { any: 'plum', other: 'plum', 'group-1': 'strawberry', 'group-2': 'peach' };

test.each((read('composition-law').rows as Law[]).map((row) => [row.rule, row] as const))(
  '%s: met at its limit, missed below it',
  (rule, row) => {
    for (const food of row.foods?.map(nameOf) ?? [FRUIT_OF[row.fruits] as string]) {
      for (const product of row.products) {
        const of = (share: number) => {
          const fruit = (row.fruitParts ?? 50) * share;
          const jam = row.fruitLeast === undefined ? 100 : (50 * 1000) / row.fruitLeast;
          const answer = legalJam({
            spread: product as never,
            food,
            ready: { value: fruit, unit: 'kg' },
            sugar: { value: row.sweetenerParts ?? 50, unit: 'kg' },
            jam: { value: jam, unit: 'kg' },
            finishSolids: ((row.solidsLeast ?? 65) / 100) * share,
          });
          if ('known' in answer) throw new Error(answer.reason.text);
          return answer.checks.filter((check) => check.title === rule);
        };
        expect(of(1).length).toBeGreaterThan(0);
        expect(of(1).every(({ meets }) => meets)).toBe(true);
        expect(of(0.99).some(({ meets }) => meets && row.solidsMost === undefined)).toBe(false);
      }
    }
  },
);

test('every caution can be found, and no other', () => {
  for (const { id } of read('cautions')) expect(sugarCaution(id).id).toBe(id);
  expect(() => sugarCaution('no-such')).toThrow('no caution');
  expect(() => potRule('no-such')).toThrow('no rule');
  expect(() => sweetener('salt')).toThrow('no sweetener');
});
