import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { modelRow, studyRow, thinLayerRow } from '../../src/drying/curve/tables';
import {
  collapseRow,
  freezeDryingRow,
  glassFormulaRow,
  glassFruitRow,
  glassSugarRow,
} from '../../src/drying/freeze-dry/tables';
import {
  dipRow,
  fatRow,
  guideRow,
  jerkyRow,
  jerkyStep,
  leatherHoursRow,
  leatherRow,
  pasteurizingRow,
  rehydrationItemRow,
  rehydrationRow,
  yieldRow,
} from '../../src/drying/guide/tables';
import { dryingCurve, type ThinLayerModel } from '../../src/drying/index';
import { monthsRow, storageRow } from '../../src/drying/keep/tables';
import { itemRow, practiceRow } from '../../src/drying/rows';
import { foodRows, formRows } from '../../src/foods/tables';
import { checkTables, dataFolder, readTable } from '../helpers/tables';

/** The tables of each room, and the schema of their rows. */
const ROOMS = {
  drying: { practice: practiceRow() },
  'drying/guide': {
    guide: guideRow(),
    settings: itemRow(),
    yields: yieldRow(),
    fat: fatRow(),
    pretreatments: dipRow(),
    leather: leatherRow(),
    'leather-hours': leatherHoursRow(),
    jerky: jerkyRow(),
    pasteurizing: pasteurizingRow(),
    rehydration: rehydrationRow(),
    'rehydration-general': rehydrationItemRow(),
  },
  'drying/curve': { diffusivity: studyRow(), 'kinetics-models': modelRow(), 'thin-layer': thinLayerRow() },
  'drying/freeze-dry': {
    'freeze-drying': freezeDryingRow(),
    collapse: collapseRow(),
    'glass-transition-fruit': glassFruitRow(),
    'glass-transition-sugars': glassSugarRow(),
    'gordon-taylor': glassFormulaRow(),
  },
  'drying/keep': { 'storage-months': monthsRow(), 'storage-general': storageRow(), oxygen: itemRow() },
} as const;

interface Linked {
  readonly id: string;
  readonly food?: string;
  readonly foods?: readonly string[];
  readonly form?: string;
  readonly forms?: readonly string[];
  readonly soakByForm_minutes?: object;
  readonly soakByFood_minutes?: object;
}
const foods = new Set(foodRows.map(({ id }) => id));
const forms = new Set(formRows.map(({ id }) => id));

for (const [room, tables] of Object.entries(ROOMS)) checkTables(room, tables);

describe.each(Object.entries(ROOMS))('%s', (room, tables) => {
  test('holds these tables and nothing else', () => {
    const files = readdirSync(dataFolder(room)).filter((file) => file.endsWith('.json') && file !== 'cautions.json');
    expect(files.sort()).toEqual(
      Object.keys(tables)
        .map((name) => `${name}.json`)
        .sort(),
    );
  });
  test.each(Object.keys(tables))('%s has unique ids, and foods and forms of the pantry', (name) => {
    const rows: readonly Linked[] = readTable(room, name).rows;
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const row of rows) {
      const named = [row.food ?? [], row.foods ?? [], Object.keys(row.soakByFood_minutes ?? {})].flat();
      for (const food of named) expect(foods, row.id).toContain(food);
      const cuts = [row.form ?? [], row.forms ?? [], Object.keys(row.soakByForm_minutes ?? {})].flat();
      for (const form of cuts) expect(forms, row.id).toContain(form);
    }
  });
});

test('a schema refuses a row that lacks a column or has one too many', () => {
  const [row] = readTable('drying/keep', 'storage-months').rows;
  const { months_70degF: _, ...short } = row;
  expect(monthsRow().safeParse(row).success).toBe(true);
  expect(monthsRow().safeParse(short).success).toBe(false);
  expect(monthsRow().safeParse({ ...row, more: 1 }).success).toBe(false);
  expect(monthsRow().safeParse({ ...row, months_70degF: [4, 3] }).success).toBe(false);
});

test('the other glass transitions lie between water and the printed extremes', () => {
  for (const row of readTable('drying/freeze-dry', 'glass-transition-sugars').rows) {
    expect(row.Tg_degC).toBeGreaterThan(-20);
    expect(row.Tg_degC).toBeLessThan(110);
  }
});

test('the thin-layer constants start at a moisture ratio of about one and fall', () => {
  for (const { id, a, b, c, k, n } of readTable('drying/curve', 'thin-layer').rows) {
    const constants = Object.fromEntries(
      Object.entries({ a, b, c, k, n }).filter((entry): entry is [string, number] => entry[1] !== undefined),
    );
    const at = (minutes: number) =>
      dryingCurve({ model: id as ThinLayerModel, constants, timeUnit: 'min', time: { value: minutes, unit: 'min' } })
        .moistureRatio;
    expect(at(0)).toBeGreaterThan(0.95);
    expect(at(0)).toBeLessThan(1.05);
    expect(at(60)).toBeLessThan(at(30));
  }
});

test('the unsafe jerky direction is marked, and never found', () => {
  const rows: { id: string; offered: boolean }[] = readTable('drying/guide', 'jerky').rows;
  const kept = rows.filter(({ offered }) => !offered).map(({ id }) => id);
  expect(kept).toEqual(['preheat', 'unsafe-1997']);
  for (const id of kept) expect(() => jerkyStep(id)).toThrow(`no row ${id}`);
});
