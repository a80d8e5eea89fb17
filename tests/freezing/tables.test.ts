import { describe, expect, test } from 'vitest';
import { formName, nameOf } from '../../src/foods/tables';
import { heatsByMoisture } from '../../src/freezing/heatsByMoisture';
import {
  beforeFreezingRow,
  blanchingRow,
  blanchingWaterRow,
  COMPONENTS,
  CONSTANTS,
  CORRELATIONS,
  componentRow,
  constantRow,
  correlation,
  correlationRow,
  freezingCaution,
  headspaceRow,
  PACKS,
  packRow,
  practiceRow,
  recalledPointRow,
  rowOf,
  rule,
  ruleRow,
  SHAPES,
  shapeRow,
  THERMAL_TEXTBOOK,
  THERMAL_VEGETABLES,
  thermalRow,
  usUnitRow,
} from '../../src/freezing/tables';
import { checkTables, expectFolder, readTable } from '../helpers/tables';

const TABLES = {
  rules: ruleRow(),
  headspace: headspaceRow(),
  'fruit-packs': packRow(),
  'fruit-packs-recalled': packRow(),
  blanching: blanchingRow(),
  'blanching-recalled': blanchingRow(),
  'before-freezing': beforeFreezingRow(),
  'blanching-water': blanchingWaterRow(),
  'thermal-vegetables': thermalRow(),
  'thermal-us-units': usUnitRow(),
  'thermal-textbook': thermalRow(),
  'freezing-points-recalled': recalledPointRow(),
  'component-polynomials': componentRow(),
  correlations: correlationRow(),
  'plank-shapes': shapeRow(),
  constants: constantRow(),
  practice: practiceRow(),
} as const;
const ROWS = {
  rules: 19,
  headspace: 12,
  'fruit-packs': 36,
  'fruit-packs-recalled': 14,
  blanching: 40,
  'blanching-recalled': 14,
  'before-freezing': 9,
  'blanching-water': 7,
  'thermal-vegetables': 19,
  'thermal-us-units': 18,
  'thermal-textbook': 15,
  'freezing-points-recalled': 38,
  'component-polynomials': 22,
  correlations: 16,
  'plank-shapes': 3,
  constants: 8,
  practice: 2,
} as const;

checkTables('freezing', TABLES);
test('each file has its schema here', () => expectFolder('freezing', Object.keys(TABLES)));
test.each(Object.entries(ROWS))('%s has %i rows', (name, count) => {
  expect(readTable('freezing', name).rows).toHaveLength(count);
});

type Row = Readonly<Record<string, unknown>>;
describe.each(Object.keys(TABLES))('table %s', (name) => {
  const rows: Row[] = readTable('freezing', name).rows;
  test('an id is there once, foods and forms are in the pantry', () => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const { food = [], foods = [], forms = [] } of rows) {
      for (const each of [food, foods].flat()) expect(nameOf(String(each))).toBeTruthy();
      for (const each of [forms].flat()) expect(formName(String(each))).toBeTruthy();
    }
  });
  test('ends are in order', () => {
    for (const row of rows) {
      if (row.low !== undefined) expect(row.low).toBeLessThanOrEqual(Number(row.high));
      for (const value of Object.values(row)) {
        if (!Array.isArray(value) || typeof value[0] !== 'number') continue;
        expect(value[0]).toBeLessThanOrEqual(Number(value[1]));
      }
    }
  });
  test('what is recalled stands apart, where a table says so', () => {
    if (name.endsWith('-recalled')) expect(rows.every(({ obtained }) => obtained === 'memory')).toBe(true);
  });
});

test('of several rows for one food and pack, what was read is answered with first', () => {
  for (const row of PACKS) {
    expect(row.rank === 5, row.id).toBe(row.obtained === 'memory');
    const same = PACKS.filter(
      (other) => other.pack === row.pack && other.foods.some((food) => row.foods.includes(food)),
    );
    for (const food of row.foods) {
      const ranks = same.filter(({ foods }) => foods.includes(food)).map(({ rank }) => rank);
      expect(new Set(ranks).size, row.id).toBe(ranks.length);
    }
  }
});

test('the parts of a vegetable make up its weight; fiber is part of the carbohydrate', () => {
  for (const { food, water, protein = 0, fat = 0, carbohydrate = 0, fiber = 0, ash = 0 } of THERMAL_VEGETABLES) {
    expect(Math.abs(water + protein + fat + carbohydrate + ash - 100), food).toBeLessThan(0.7);
    expect(fiber, food).toBeLessThanOrEqual(carbohydrate);
  }
});

test('every shape: R is a quarter of P, since slab, cylinder and sphere share the ratio', () => {
  for (const { P, R } of SHAPES) expect(R).toBeCloseTo(P / 4, 12);
});

test('the constants of the sources agree with the equations that use them', () => {
  const value = (id: string) => rowOf(CONSTANTS, id).value;
  expect(value('fusion-earle')).toBe(heatsByMoisture(1).latent);
  expect(value('specific-heat-of-water')).toBe(heatsByMoisture(1).above);
  expect(value('fusion-ashrae')).toBe(334);
  const ice = COMPONENTS.find((row) => row.component === 'ice' && row.property === 'density');
  expect(value('density-of-ice')).toBe(ice?.a0);
  // the 9 % by which freezing water grows, from the same polynomials at 0 degC
  const water = COMPONENTS.find((row) => row.component === 'water' && row.property === 'density');
  expect((100 * ((water?.a0 ?? 0) - (ice?.a0 ?? 1))) / (ice?.a0 ?? 1)).toBeCloseTo(value('growth-on-freezing'), 0);
  expect(value('fusion-singh-heldman')).toBe(333.2);
  expect(value('fusion-chen')).toBe(333.6);
  expect(value('specific-heat-of-ice')).toBe(2.05);
});

test('the textbook prints latent heats near 335 x water, but for fish (an oddity of the source)', () => {
  for (const row of THERMAL_TEXTBOOK) {
    const off = Math.abs(row.latentHeat - 3.35 * row.water);
    if (row.food === 'fish') expect(off).toBeGreaterThan(40);
    else expect(off, row.food).toBeLessThan(10);
  }
});

test('every formula of the table is named once', () => {
  expect(new Set(CORRELATIONS.map(({ id }) => id)).size).toBe(16);
});

test('a name that is in no table is our own mistake', () => {
  expect(() => rule('nothing')).toThrow('no row nothing');
  expect(() => correlation('nothing')).toThrow('no row nothing');
  expect(() => freezingCaution('nothing')).toThrow('no row nothing');
});
