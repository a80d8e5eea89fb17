/** The pantry's own tables: ids, names, links. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { nameKey, wordsOf } from '../../src/common/names';
import { figuresFor } from '../../src/foods/figuresFor';
import { keyOf } from '../../src/foods/lookUpFood';
import {
  craftGroupRow,
  craftGroupRows,
  craftRow,
  craftRows,
  foodRow,
  foodRows,
  formRow,
  formRows,
  KINDS,
  knownRow,
  knownRows,
  sharedNameRow,
  sharedNames,
} from '../../src/foods/tables';
import { knownNow, makeKnown, rowsOf } from './known';

const SCHEMAS: Readonly<Record<string, z.ZodMiniType>> = {
  foods: foodRow(),
  forms: formRow(),
  crafts: craftRow(),
  'craft-groups': craftGroupRow(),
  'shared-names': sharedNameRow(),
  known: knownRow(),
};
const foodIds = foodRows.map((row) => row.id);
const formIds = formRows.map((row) => row.id);
const craftIds = craftRows.map((row) => row.id);
const groupIds = craftGroupRows.map((row) => row.id);
const data = new URL('../../data/', import.meta.url);
/** The texts that stand twice in a list. */
const twice = (texts: readonly string[]): string[] => texts.filter((each, index) => texts.indexOf(each) !== index);

describe.each(Object.entries(SCHEMAS))('%s', (table, schema) => {
  const whole = JSON.parse(readFileSync(new URL(`foods/${table}.json`, data), 'utf8')) as {
    columns: Record<string, string>;
    rows: Record<string, unknown>[];
  };

  test('reads, row by row', () => {
    expect(z.array(schema).safeParse(whole.rows).error?.issues ?? []).toEqual([]);
  });

  test('explains each of its columns, and no other', () => {
    const named = new Set<string>();
    const walk = (value: unknown, path: string): void => {
      if (Array.isArray(value)) for (const item of value) walk(item, `${path}[]`);
      else if (typeof value === 'object' && value !== null) {
        for (const [key, inner] of Object.entries(value)) {
          const here = path === '' ? key : `${path}.${key}`;
          named.add(here);
          walk(inner, here);
        }
      }
    };
    for (const row of whole.rows) walk(row, '');
    // what no row needs yet may be explained
    expect([...named].filter((column) => !(column in whole.columns))).toEqual([]);
    expect(Object.keys(whole.columns).filter((column) => column !== 'reason' && !named.has(column))).toEqual([]);
  });
});

test('the tables of the folder are all here', () => {
  const files = readdirSync(new URL('foods/', data)).map((file) => file.replace('.json', ''));
  expect(files.sort()).toEqual(Object.keys(SCHEMAS).sort());
});

/** Those of a column's ids that no row of the list has. */
const strangers = (ids: readonly string[], list: readonly string[]): string[] => ids.filter((id) => !list.includes(id));

test('each id that a row names is there', () => {
  const foods = [
    ...foodRows.flatMap(({ wider = [], not = [], whenFresh = [] }) =>
      [...wider, ...not].map(({ food }) => food).concat(whenFresh),
    ),
    ...sharedNames.flatMap((row) => row.foods),
    ...knownRows.map(({ food }) => food),
  ];
  expect(strangers(foods, foodIds)).toEqual([]);
  const forms = [
    ...foodRows.flatMap(({ asForm = [] }) => asForm.map(({ form }) => form)),
    ...formRows.flatMap(({ either = [], within = [] }) => [...either, ...within]),
    ...knownRows.flatMap(({ crafts }) => crafts.flatMap((each) => each.forms)),
  ];
  expect(strangers(forms, formIds)).toEqual([]);
  const crafts = [
    ...craftGroupRows.flatMap((row) => row.crafts),
    ...knownRows.flatMap((row) => row.crafts.map(({ craft }) => craft)),
  ];
  expect(strangers(crafts, craftIds)).toEqual([]);
  const lent = foodRows.flatMap(({ wider = [] }) => wider.flatMap((each) => each.crafts));
  expect(strangers(lent, [...craftIds, ...groupIds])).toEqual([]);
});

test('an id is made of the name as the table writes it, and stands once', () => {
  for (const [table, rows] of Object.entries({ foods: foodRows, forms: formRows, 'shared-names': sharedNames })) {
    expect(rows.map((row) => row.id)).toEqual(rowsOf(`foods/${table}`).map((row) => row.id));
  }
  expect(twice(foodRows.map((row) => row.id))).toEqual([]);
  expect(twice(formRows.map((row) => row.id))).toEqual([]);
  expect(twice(craftRows.map((row) => row.id))).toEqual([]);
});

test('no two foods share a name', () => {
  const names = foodRows.flatMap(({ id: own, name, names: others, asForm = [] }) => [
    ...new Set([name, ...others, ...asForm.map((each) => each.name)].map((each) => `${nameKey(each)} ${own}`)),
  ]);
  const keys = names.map((each) => each.slice(0, each.lastIndexOf(' ')));
  expect(twice(keys)).toEqual([]);
  for (const { name } of sharedNames) expect(keys, name).not.toContain(nameKey(name));
});

test('no food has a name twice, and no name means it plain and in a form', () => {
  for (const { id: own, name, names, asForm = [] } of foodRows) {
    expect(twice([name, ...names].map(nameKey)), own).toEqual([]);
    const inOrder = [name, ...names, ...asForm.map((each) => each.name)].map((each) => wordsOf(each).join(' '));
    expect(twice(inOrder), own).toEqual([]);
  }
});

test('no two forms share a name', () => {
  expect(twice(formRows.flatMap(({ name, names, alone = [] }) => [name, ...names, ...alone].map(keyOf)))).toEqual([]);
});

test('nothing is wider than itself, however far one goes', () => {
  const above = (own: string, trail: readonly string[]): void => {
    expect(trail).not.toContain(own);
    for (const wider of foodRows.find((row) => row.id === own)?.wider ?? []) above(wider.food, [...trail, own]);
  };
  for (const row of foodRows) above(row.id, []);
  const within = (own: string, trail: readonly string[]): void => {
    expect(trail).not.toContain(own);
    for (const wider of formRows.find((row) => row.id === own)?.within ?? []) within(wider, [...trail, own]);
  };
  for (const row of formRows) within(row.id, []);
  for (const { id: own, either = [] } of formRows) expect(either, own).not.toContain(own);
});

/** What keeps food safe in a jar, and what refuses it: no wider food lends it. */
const NEVER_LENT = ['process', 'not-recommended', 'acidification', 'fermenting', 'growth', 'heat-resistance'];

test('no wider food lends a heat process, an acidification, a growth limit or a refusal', () => {
  expect(
    craftRows
      .filter((row) => !row.lends)
      .map((row) => row.id)
      .sort(),
  ).toEqual([...NEVER_LENT].sort());
  for (const { id: own, wider = [] } of foodRows) {
    for (const { food: from, crafts } of wider) {
      expect(
        crafts.filter((each) => NEVER_LENT.includes(each)),
        `${own} from ${from}`,
      ).toEqual([]);
    }
    for (const each of NEVER_LENT) expect(figuresFor(own, each)).toEqual([own]);
  }
});

test('a food that is not this one is another, and goes by the name', () => {
  const byKey = new Map(
    foodRows.flatMap((row) =>
      [row.name, ...row.names, ...(row.asForm ?? []).map((each) => each.name)].map((each) => [nameKey(each), row.id]),
    ),
  );
  for (const { id: own, not = [] } of foodRows) {
    for (const other of not) {
      expect(other.food, own).not.toBe(own);
      expect(byKey.get(nameKey(other.name)), `${own}: ${other.name}`).toBe(other.food);
    }
  }
});

test('a craft names tables that are there, each once', () => {
  const tables = rowsOf('foods/crafts').flatMap((row) => row.tables as string[]);
  expect(twice(tables)).toEqual([]);
  for (const table of tables) expect(rowsOf(table).length, table).toBeGreaterThan(0);
});

test('every kind of food has a food', () => {
  for (const kind of KINDS)
    expect(
      foodRows.some((row) => row.kind === kind),
      kind,
    ).toBe(true);
});

test('the index is what the tables say (npx tsx tests/foods/known.ts)', () => {
  expect(knownNow()).toBe(makeKnown());
  expect(knownRows.length).toBeGreaterThan(100);
});

test('a group of crafts is no craft, and lends only what may be lent', () => {
  const mayLend = new Set(craftRows.filter(({ lends }) => lends).map(({ id: craft }) => craft));
  for (const { id: group, crafts } of craftGroupRows) {
    expect(craftIds).not.toContain(group);
    expect(crafts.filter((each) => !mayLend.has(each))).toEqual([]);
    expect(foodRows.some(({ wider }) => wider?.some((each) => each.crafts.includes(group)))).toBe(true);
  }
});
