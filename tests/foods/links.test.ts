/** What the tables of all modules say of their foods: the words of the page, beside the food they are linked to. */
import { expect, test } from 'vitest';
import { foodsNamed } from '../../src/foods/lookUpFood';
import { foodRows } from '../../src/foods/tables';
import { rowsOf } from './known';

const ids = new Set(foodRows.map(({ id }) => id));
const related = new Map(foodRows.map(({ id, wider = [] }) => [id, new Set([id, ...wider.map(({ food }) => food)])]));

/** The foods of a row that are linked by id; none where its table is not linked. */
const linked = (row: Readonly<Record<string, unknown>>): string[] =>
  [row.food ?? [], row.foods ?? []].flat().filter((each): each is string => typeof each === 'string' && ids.has(each));

/** Rows whose page prints a mixture or a dish, and tables say so; each figure is for the foods named. */
const SAID = new Set([
  'produce/canning-yields: grapefruit and orange sections is citrus, linked to grapefruit, orange',
  'produce/canning-yields: beans, baked, dry weight is baked-beans, linked to dry-bean',
  'produce/canning-yields: beans, dry, with tomato or molasses sauce (dry weight) is dry-beans-in-sauce, linked to dry-bean',
  'produce/canning-yields: pumpkin and winter squash, cubed is pumpkin-and-winter-squash, linked to pumpkin, winter-squash',
  'produce/edible-culinary: beet, with tops is beet-greens, linked to beet',
  'produce/edible-culinary: pear is pear, linked to asian-pear',
]);

test('the words of a page mean the food of the row, a kind of it, or what it is a kind of', () => {
  const crafts = rowsOf('foods/crafts') as readonly { readonly tables: readonly string[] }[];
  const wrong = crafts.flatMap(({ tables }) =>
    tables.flatMap((table) =>
      rowsOf(table).flatMap((row) => {
        const foods = linked(row);
        if (foods.length === 0 || typeof row.printed !== 'string') return [];
        const [found, ...more] = foodsNamed(row.printed);
        if (found === undefined || more.length > 0) return [];
        const near = foods.some((food) => related.get(food)?.has(found.id) || related.get(found.id)?.has(food));
        return near ? [] : [`${table}: ${row.printed} is ${found.id}, linked to ${foods.join(', ')}`];
      }),
    ),
  );
  expect(wrong.filter((line) => !SAID.has(line))).toEqual([]);
});
