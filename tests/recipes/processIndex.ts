/**
 * Writes data/process/recipes.json: of each recipe that ends in a heat process, what the answer of a process says of
 * it. The recipes themselves stay out of the process module, so that who asks for minutes does not load them all.
 */
import { writeFileSync } from 'node:fs';
import { foodOf, nameOf } from '../../src/foods/tables';
import { rowsOf } from '../../src/process/tables';
import { mustKeepOf, RECIPES } from '../../src/recipes/rows/rows';
import type { IngredientRow } from '../../src/recipes/rows/tables';

const COLUMNS = {
  id: 'id of the recipe in data/recipes',
  name: 'what its page calls it',
  names: 'other names of it',
  process: 'name of the process that it ends in: `recipe` of the process rows',
  foods: 'ids of the foods that its page names',
  packFoods: 'the foods of one pack, where its page names fewer for it',
  askedBy:
    'ids of the foods that the process is asked for by, where they are not all of `foods`; empty: by the product alone',
  product: 'true where the foods are what it is made of: ketchup, a syrup, a puree',
  excludes: 'ids of foods that its page, or later guidance, leaves out',
  acid: 'the acid of its ingredients that is never left out: what, how much for one batch or in each jar, and which are choices',
  mustKeep: 'what must not be changed, in words',
  scale: 'what the page says of other sizes of the batch',
};

/** What is no longer the food that it is made of. */
const SAUCES: ReadonlySet<string> = new Set(['syrup', 'puree', 'juice']);

/** The lines of acid that the recipe is never made without. */
const acidOf = (ingredients: readonly IngredientRow[]) =>
  ingredients
    .filter(({ role, keep }) => role === 'acid' && keep === true)
    .map(({ food, item, amount, perJar, choose }) => ({
      what: food === undefined ? item : nameOf(food),
      ...(amount === undefined ? {} : { amount }),
      ...(perJar === undefined ? {} : { perJar }),
      ...(choose === undefined ? {} : { choose }),
    }));

/** The text of the table. */
export function indexOfRecipes(): string {
  const rows = RECIPES.flatMap((row) =>
    row.keeps.flatMap((keep) => {
      // what is only common practice never ends in a heat process
      if (!('process' in keep) || !('source' in row)) return [];
      const { id, name, names, foods, packFoods, askedBy, excludes, ingredients, mustKeep, batch, makes } = row;
      const [first] = rowsOf(keep.process);
      const product = SAUCES.has(makes) || (first !== undefined && foodOf(first.food).kind === 'prepared');
      const acid = acidOf(ingredients);
      return [
        JSON.stringify({
          id,
          name,
          ...(names === undefined ? {} : { names }),
          process: keep.process,
          foods,
          ...(packFoods === undefined ? {} : { packFoods }),
          ...(askedBy === undefined ? {} : { askedBy }),
          ...(product ? { product } : {}),
          ...(excludes === undefined ? {} : { excludes }),
          ...(acid.length === 0 ? {} : { acid }),
          ...(mustKeep === undefined ? {} : { mustKeep: mustKeepOf(row) }),
          scale: batch.scale,
          source: row.source,
          locator: row.locator,
          obtained: row.obtained,
          ...(row.seen === undefined ? {} : { seen: row.seen }),
        }),
      ];
    }),
  );
  const head = {
    table: 'recipes',
    title: 'The recipes that end in a heat process, for the answers of the process module',
    columns: COLUMNS,
    notes: 'Written by `npx tsx tests/recipes/processIndex.ts` from data/recipes; a test compares it.',
  };
  return `${JSON.stringify(head, undefined, 2).slice(0, -2)},\n  "rows": [\n    ${rows.join(',\n    ')}\n  ]\n}\n`;
}

if (process.argv[1]?.endsWith('recipes/processIndex.ts') === true)
  writeFileSync(new URL('../../data/process/recipes.json', import.meta.url), indexOfRecipes());
