import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { foodOf, formOf } from '../../src/foods/tables';
import * as composition from '../../src/produce/composition/tables';
import * as figures from '../../src/produce/figures';
import * as forms from '../../src/produce/forms';
import { readyFromRaw } from '../../src/produce/index';
import * as weights from '../../src/produce/weights/tables';
import { guideQuart } from '../../src/produce/yields/printed';
import * as yields from '../../src/produce/yields/tables';
import { known } from '../helpers/known';
import { expectLeftOut } from '../helpers/tables';

const { cutRows, servesFor } = forms;
const { canningRows, sievedRows } = yields;
const { kitchenWeights, preservedWeights, rawWeights } = weights;

const rows = {
  cuts: forms.cutRow,
  forms: forms.formRow,
  figures: figures.figureRow,
  'edible-sr28': yields.refuseRow,
  'edible-ers2022': yields.factorRow,
  'edible-extension': yields.trimRow,
  'edible-culinary': yields.trimRow,
  'edible-buying-guide': yields.trimRow,
  'canning-yields': yields.canningRow,
  'containers-customary': yields.quartsRow,
  'containers-fruit': yields.containerFruitRow,
  'pounds-per-unit': yields.poundsRow,
  'frozen-yields-fruit': yields.frozenRow,
  'frozen-yields-vegetable': yields.frozenRow,
  'sieved-yields': yields.sievedRow,
  'weights-raw': weights.rawWeightRow,
  'weights-preserved': weights.preservedWeightRow,
  'kitchen-weights': weights.kitchenWeightRow,
  'legal-bushels': weights.legalBushelRow,
  'containers-recalled': weights.recalledContainerRow,
  'composition-raw': composition.rawCompositionRow,
  'composition-preserved': composition.preservedCompositionRow,
  'brix-us-minimum': composition.brixRow,
  'brix-us-average': composition.brixRow,
  'brix-eu-minimum': composition.brixRow,
  'brix-blueberry': composition.blueberryRow,
  'citrus-juice-acid': composition.citrusRow,
  'sugar-acid-belitz': composition.belitzRow,
  'sugar-acid-mcgee': composition.mcgeeRow,
};

const folder = new URL('../../data/produce/', import.meta.url);
const read = (file: string) => JSON.parse(readFileSync(new URL(file, folder), 'utf8'));

describe('each table is as its schema says', () => {
  test.each(Object.entries(rows))('%s', (name, schema) => {
    const table = read(`${name}.json`);
    expect(table.table).toBe(name);
    const parsed = z.array(schema() as unknown as z.ZodType).safeParse(table.rows);
    expect(parsed.success ? [] : parsed.error.issues.slice(0, 5)).toEqual([]);
    expectLeftOut(`produce/${name}`, schema());
  });

  test('and every table of the folder has one', () => {
    const files = readdirSync(folder).filter((file) => file !== 'cautions.json');
    expect(files.sort()).toEqual(
      Object.keys(rows)
        .map((name) => `${name}.json`)
        .sort(),
    );
  });
});

describe('the links to the pantry', () => {
  test.each(Object.keys(rows))('%s: every food and form is there', (name) => {
    for (const row of read(`${name}.json`).rows) {
      for (const food of [row.food, ...(row.foods ?? []), ...(row.holds ?? [])]) {
        if (food !== undefined) expect(foodOf(food).id).toBe(food);
      }
      for (const form of [row.form, row.as, row.cupForm, ...(row.forms ?? []), ...(row.filled ?? [])]) {
        if (form !== undefined) expect(formOf(form).id).toBe(form);
      }
    }
  });

  test('every column is explained', () => {
    const common = new Set(['source', 'locator', 'obtained', 'seen', 'notes']);
    for (const name of Object.keys(rows)) {
      const { columns, rows: all } = read(`${name}.json`);
      const used = new Set(all.flatMap((row: object) => Object.keys(row)).filter((key: string) => !common.has(key)));
      expect(
        [...used].filter((key) => !(String(key) in columns)),
        name,
      ).toEqual([]);
    }
  });

  test('every number of the food tables belongs to one food', () => {
    const linked = cutRows.flatMap(({ ndb: numbers }) => numbers);
    expect(new Set(linked).size).toBe(linked.length);
    for (const file of ['edible-sr28.json', 'composition-raw.json', 'weights-raw.json']) {
      for (const row of read(file).rows) expect(cutRows.find(({ food }) => food === row.food)?.ndb).toContain(row.ndb);
    }
  });

  test('a wider food lends, and at least 60 foods have refuse, water and weights', () => {
    expect(servesFor('black-currant', 'yields')).toEqual(['black-currant', 'currant', 'berry']);
    const has = (file: string) => new Set(read(file).rows.map((row: { food: string }) => row.food));
    const [refuse, water, weight] = ['edible-sr28.json', 'composition-raw.json', 'weights-raw.json'].map(has);
    const full = cutRows.filter(({ food }) => refuse?.has(food) && water?.has(food) && weight?.has(food));
    expect(full.length).toBeGreaterThanOrEqual(60);
  });
});

describe('the figures', () => {
  test('proximates make 100 g within rounding, but for vinegar, whose acid is not counted', () => {
    const all = [...read('composition-raw.json').rows, ...read('composition-preserved.json').rows];
    for (const row of all) {
      const sum = row.water_g + row.protein_g + row.fat_g + row.carbohydrate_g + row.ash_g;
      const name: string = row.food;
      if (
        foodOf(name)
          .names.concat(name)
          .some((each) => each.includes('vinegar'))
      )
        expect(sum).toBeLessThan(96);
      // SR28 prints two of the parts of these few from other samples; the widest gap is that of immature cowpeas
      else expect(Math.abs(sum - 100), `${name} ${sum}`).toBeLessThan(2.2);
    }
  });

  test('the printed loads, averages and containers agree, as the reference worked out; figs do not', () => {
    for (const row of canningRows) {
      const { lbPer7Quarts, lbPerQuart, containerLb, containerJars, containerJar } = row;
      if (lbPer7Quarts !== undefined && lbPerQuart !== undefined) {
        const off = Math.abs(lbPer7Quarts / 7 / lbPerQuart - 1);
        expect(off, row.printed).toBeLessThan(row.printed.startsWith('tomatoes, crushed') ? 0.15 : 0.145);
      }
      if (containerLb !== undefined && containerJars !== undefined) {
        const jars = containerLb / (guideQuart(row) / (containerJar === 'pint' ? 2 : 1));
        expect(jars, row.printed).toBeGreaterThanOrEqual(containerJars[0]);
        expect(jars, row.printed).toBeLessThanOrEqual(containerJars[1]);
      }
    }
    const figs = canningRows.find(({ printed }) => printed === 'figs');
    expect((figs?.lbPer7Quarts ?? 0) / 7).toBeCloseTo(2.286, 3);
    expect(figs?.lbPerQuart).toBe(2.5);
  });

  test('a mixture is printed by its parts: 14 quarts of tomatoes with okra take 24 lb and 8 lb, 3 to 1', () => {
    const mixture = canningRows.filter(({ printed }) => printed.startsWith('tomatoes with okra or zucchini'));
    expect(mixture.map(({ foods }) => foods)).toEqual([[], []]);
    expect(mixture.map(({ lbPer7Quarts = 0 }) => lbPer7Quarts * 2)).toEqual([24, 8]);
    expect(mixture.map(({ lbPer9Pints }) => lbPer9Pints)).toEqual([7, 2.5]);
  });

  test('quarts from a container and pounds a quart are of one size in the table of customary weights', () => {
    for (const { lb, quarts: from, lbPerQuart, food: of, notes } of read('containers-customary.json').rows) {
      if (from === undefined || lbPerQuart === undefined || notes !== undefined) continue;
      const [least, most] = lbPerQuart;
      expect(from[0], of).toBeLessThan((lb[1] / least) * 1.05);
      // quarts are whole: a 6 lb basket of grapes gives one, at 4 lb each
      expect(from[1] + 0.6, of).toBeGreaterThan(lb[0] / most / 1.05);
    }
  });

  test('measures of one food weigh alike in the two kitchen tables: within a tenth', () => {
    for (const { printed, food, g_per_cup, g_per_tbsp, g_per_tsp } of kitchenWeights) {
      const near = [
        ['cup', g_per_cup],
        ['tbsp', g_per_tbsp],
        ['tsp', g_per_tsp],
      ] as const;
      for (const [unit, grams] of near) {
        const row = preservedWeights.find(
          (one) => one.food === food && one.unit === unit && one.amount === 1 && !one.filled?.includes('unpacked'),
        );
        if (grams !== undefined && row !== undefined)
          expect(Math.abs(row.grams / grams - 1), printed).toBeLessThan(0.1);
      }
    }
  });

  test('cups of the price survey weigh what cups of the food tables weigh: within a third', () => {
    // apple 110 g, peach 155 g, strawberry 145 g ... Collards and kale are cooked there, raw here.
    const raw = yields.factorRows.filter(({ state, cooked }) => state === 'fresh' && cooked === false);
    let compared = 0;
    for (const { food, cupEquivalent_lb } of raw) {
      const cups = rawWeights.filter((row) => row.food === food && row.unit === 'cup' && row.amount === 1);
      if (cups.length === 0) continue;
      const grams = cupEquivalent_lb * 453.59237;
      const nearest = Math.min(...cups.map((row) => Math.abs(row.grams / grams - 1)));
      expect(nearest, food).toBeLessThan(0.34);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(25);
  });

  test('what was recalled is marked in every row it came from', () => {
    const memory = (file: string) =>
      read(file).rows.filter((row: { obtained: string }) => row.obtained === 'memory').length;
    expect(memory('edible-buying-guide.json')).toBe(15);
    expect(memory('containers-recalled.json')).toBe(38);
    expect(memory('edible-sr28.json')).toBe(0);
    expect(memory('canning-yields.json')).toBe(0);
  });

  test('the mango recipe, the only printed sieved yield, is the one the puree rests on', () => {
    expect(sievedRows.map(({ id }) => id)).toEqual(['mango-sauce']);
    expect(known(readyFromRaw({ food: 'mango', form: 'puree', raw: '5 lb' })).ready.low.value).toBeLessThan(3.25);
  });
});
