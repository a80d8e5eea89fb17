/** What is to be made, as it was read: the recipe, the foods that go in, and the lots they come from. */

import type { FoundFood } from '../../foods/fields';
import { isWithin } from '../../foods/isWithin';
import { foodsNamed } from '../../foods/lookUpFood';
import { formName, nameOf } from '../../foods/tables';
import { testedProcess } from '../../process/testedProcess';
import { formOfId } from '../../produce/forms';
import { pectinKind } from '../../recipes/pectin';
import { isFor, RECIPES } from '../../recipes/rows/rows';
import type { IngredientRow, Makes, RecipeRow } from '../../recipes/rows/tables';
import { amongTheSame } from '../../recipes/ways/order';
import type { KnownLot } from '../request/lots';
import type { Wanted } from '../request/planInput';
import { type Day, type LeftOutProduct, leftOut, type Product } from './making';

/** Kg and liters that all of it adds to each kg of prepared food. */
export const tasteAdds = ({ taste = [] }: Product): { readonly kg: number; readonly liters: number } => ({
  kg: taste.reduce((sum, { kg }) => sum + kg, 0),
  liters: taste.reduce((sum, { liters }) => sum + liters, 0),
});

/** The roles of what a recipe is made of, as against what goes in besides. */
const MAIN: ReadonlySet<IngredientRow['role']> = new Set(['fruit', 'vegetable', 'meat', 'fish']);
export const isMain = ({ role, food }: Pick<IngredientRow, 'role' | 'food'>): boolean =>
  food === '@scope' || MAIN.has(role);

/** The line of the recipe's own food. */
export const scopeLine = ({ ingredients }: RecipeRow, food: string): IngredientRow | undefined =>
  ingredients.find((line) => isMain(line) && line.food === food) ??
  ingredients.find((line) => isMain(line) && line.food === '@scope');

/** What else is cut up and goes in: foods that the page prints beside the recipe's own. */
export const othersOf = ({ ingredients }: RecipeRow, foods: readonly string[]): readonly IngredientRow[] =>
  ingredients.filter(
    (line) =>
      isMain(line) && line.optional !== true && line.food !== '@scope' && !foods.includes(line.food ?? line.item ?? ''),
  );

/** Whether a recipe takes its food as a pulp: pulps of several foods mix. */
export const isPulp = ({ ingredients }: RecipeRow): boolean => {
  const form = ingredients.find(({ food }) => food === '@scope')?.form;
  return form !== undefined && formOfId(form)?.behaves === 'puree';
};

/** How many things of the pantry a recipe cannot do without that this kitchen does not list; none where it lists nothing. */
export function pantryLacking({ request }: Day, { ingredients }: RecipeRow): number {
  const { pantry } = request.kitchen;
  if (pantry === undefined) return 0;
  const held = new Set(pantry.flatMap(({ item }) => foodsNamed(item).map(({ id }) => id)));
  const needed = ingredients.filter(
    ({ role, optional, food }) => optional !== true && NEEDED.has(role) && food !== undefined,
  );
  return needed.filter((line) => {
    const choices = line.choose === undefined ? [line] : needed.filter(({ choose }) => choose === line.choose);
    return !choices.some(({ food }) => held.has(food as string));
  }).length;
}
const NEEDED: ReadonlySet<IngredientRow['role']> = new Set(['acid', 'sugar', 'pectin', 'starch']);

/** Whether several foods may go into one batch of a recipe. */
const mixes = ({ mix }: RecipeRow): boolean => mix === 'may mix' || mix === 'as printed';

/** The forms that a recipe is for: its own, and the one that its food is measured in. */
const formsOf = (row: RecipeRow, food: string): readonly string[] =>
  [row.form, scopeLine(row, food)?.form].filter((each): each is string => each !== undefined);

/** Whether the minutes of a page are those of one cut: it is blanched or steamed before it is frozen. */
const isByCut = ({ makes, steps }: RecipeRow): boolean =>
  makes === 'frozen' && steps.some((step) => step.do === 'blanch' || step.do === 'steam');

/** How well a recipe answers to a form: by that name, by a wider or narrower one, or not. */
function formRank(row: RecipeRow, foods: readonly string[], form: string | undefined): number {
  if (form === undefined || foods.some((food) => formsOf(row, food).includes(form))) return 0;
  return foods.some((food) => hasForm(row, food, form)) ? 1 : 2;
}

/** Whether a recipe is for a form: its own form, or the one that its food is measured in, is that form or holds it. */
export function hasForm(row: RecipeRow, food: string, form: string): boolean {
  return formsOf(row, food).some((each) => each === form || isWithin(form, each) || isWithin(each, form));
}

function pectinOf({ ingredients }: RecipeRow): 'none' | 'powdered' | 'liquid' {
  const line = ingredients.find(({ role }) => role === 'pectin');
  return line === undefined ? 'none' : pectinKind(line);
}

function pectinFits(row: RecipeRow, { pectin }: Wanted): boolean {
  if (pectin === undefined) return true;
  const kind = pectinOf(row);
  return typeof pectin === 'string' ? kind === pectin : (kind !== 'none') === pectin;
}

/** Whether nothing is left of the pieces. */
const isPulped = (row: RecipeRow): boolean =>
  isPulp(row) || row.steps.some((step) => step.do === 'puree' || step.do === 'press');

/** How plain a pack is: pieces before pulp, and without sugar before sweetened. */
const plainness = (row: RecipeRow): number =>
  row.ingredients.reduce(
    (sum, { food, role, optional, per }) => {
      if (food === '@scope') return sum;
      // a syrup takes its own pot and measure
      if (per?.of === 'water') return sum + 4;
      return optional === true ? sum : sum + (role === 'sugar' || role === 'sweetener' ? 2 : 1);
    },
    isPulped(row) ? 4 : 0,
  );

/** Recipes in the order in which they are tried: the kind first, then the food's own page, then the plainer one. */
function inOrder(
  { request, lots }: Day,
  rows: readonly RecipeRow[],
  makes: readonly Makes[],
  foods: readonly string[],
  form: string | undefined,
) {
  const atHand = new Set(request.kitchen.pantry?.map(({ item }) => item));
  const lotFoods = new Set(lots.map(({ food }) => food));
  const held = { none: false, powdered: atHand.has('pectin'), liquid: atHand.has('liquid pectin') };
  const keysOf = (row: RecipeRow): readonly number[] => [
    makes.indexOf(row.makes),
    formRank(row, foods, form),
    othersOf(row, foods).filter(({ food }) => food === undefined || !lotFoods.has(food)).length,
    held[pectinOf(row)] ? 0 : 1,
    amongTheSame(foods[0] as string, row.id),
    row.makes === 'frozen' || row.makes === 'dried' ? plainness(row) : 0,
    row.foods.length === 1 ? 0 : 1,
  ];
  return rows
    .map((row, place) => ({ row, keys: [...keysOf(row), place] }))
    .sort((one, other) => {
      const at = one.keys.findIndex((key, index) => key !== other.keys[index]);
      return at < 0 ? 0 : (one.keys[at] as number) - (other.keys[at] as number);
    })
    .map(({ row }) => row);
}

/** Why no recipe is for a form: with the tested recipes that come nearest, where it was to be canned. */
function noForm(day: Day, wanted: Wanted, rows: readonly RecipeRow[], food: FoundFood): LeftOutProduct {
  const { form, jar = 'pint', method, make } = wanted;
  const named = formName(form as string);
  const { kitchen } = day.request;
  const text = `these tables hold no recipe for ${food.name} in the form ${named}`;
  const canner = method ?? kitchen.canners?.[0]?.method;
  if (make?.canned === true && canner !== undefined) {
    const asked = { food: food.name, form: named, jar, method: canner, elevation: kitchen.elevation };
    const found = testedProcess(asked);
    if (!found.tested) {
      const [first, second] = found.instead.map((each) => each.text);
      const instead = [first, second].filter((each) => each !== undefined).join(', or ');
      return leftOut(wanted, { code: 'no-recipe-for-form', text: found.reason.text, instead });
    }
  }
  const forms = [
    ...new Set(rows.flatMap((row) => (row.makes === 'frozen' ? scopeLine(row, food.id)?.form : row.form) ?? [])),
  ].map(formName);
  return leftOut(wanted, { code: 'no-recipe-for-form', text, instead: `ask for ${forms.join(' or ')}` });
}

/** The recipes that a product may be made by, best first; or why there is none. */
export function recipesFor(
  day: Day,
  wanted: Wanted,
  foods: readonly FoundFood[],
): readonly RecipeRow[] | LeftOutProduct {
  const ids = foods.map(({ id }) => id);
  const named = foods.map(({ name }) => name).join(' and ');
  const { recipe, make, form } = wanted;
  if (wanted.sugarToFruit !== undefined) {
    return leftOut(wanted, {
      code: 'recipe-changed',
      text: '`sugarToFruit` would change the printed recipe, and its process holds for that recipe only',
      instead: 'leave `sugarToFruit` off for the printed recipe, or freeze or dry the fruit',
    });
  }
  const makes = make?.makes ?? (recipe === undefined ? [] : [recipe.makes]);
  const fits = (row: RecipeRow): boolean =>
    ids.every((id) => isFor(row, id)) &&
    (ids.length === 1 || mixes(row)) &&
    (make?.canned !== true || row.keeps.some((keep) => 'process' in keep));
  const all = (recipe === undefined ? RECIPES : [recipe]).filter((row) => makes.includes(row.makes) && fits(row));
  if (all.length === 0) {
    const what = recipe?.name ?? make?.word ?? 'anything';
    const own = RECIPES.filter(fits);
    return leftOut(wanted, {
      code: 'no-recipe',
      text:
        recipe === undefined
          ? `these tables hold no recipe for ${what} of ${named}`
          : `the page of ${what} does not name ${named}`,
      instead: own.length === 0 ? 'use it fresh' : `make ${[...new Set(own.map((row) => row.makes))].join(', ')}`,
    });
  }
  const pectin = all.filter((row) => pectinFits(row, wanted));
  if (pectin.length === 0) {
    return leftOut(wanted, {
      code: 'no-recipe-for-pectin',
      text: `these tables hold no printed recipe for ${named} ${make?.word ?? ''} with that pectin`,
      instead: `ask for ${[...new Set(all.map(pectinOf))].map((kind) => `pectin: "${kind}"`).join(' or ')}`,
    });
  }
  const inForm = form === undefined ? pectin : pectin.filter((row) => ids.some((id) => hasForm(row, id, form)));
  // minutes of blanching hold for the cut of their page; what is dried or frozen as it is may be cut otherwise
  const asCut = pectin.some(isByCut)
    ? []
    : pectin.filter((row) => (row.makes === 'dried' || row.makes === 'frozen') && !isPulped(row));
  const open = inForm.length > 0 ? inForm : asCut;
  if (open.length === 0) return noForm(day, wanted, pectin, foods[0] as FoundFood);
  const ordered = inOrder(day, open, makes, ids, form);
  // what cannot be made here is not replaced by another kind of thing
  return ordered.filter((row) => row.makes === ordered[0]?.makes);
}

/** The lots of a product: of the foods that were named, or of every food that the recipe is for. */
export const lotsOf = ({ lots }: Day, foods: readonly string[]): readonly KnownLot[] =>
  lots.filter(({ food }) => foods.includes(food));

/** The product of a recipe. */
export function productOf(
  wanted: Wanted,
  index: number,
  row: RecipeRow,
  foods: readonly FoundFood[],
  lots: readonly KnownLot[],
): Product {
  const [food] = foods as readonly [FoundFood, ...FoundFood[]];
  const line = scopeLine(row, food.id);
  const form = wanted.form ?? food.form ?? line?.form ?? row.form;
  return {
    wanted,
    index,
    row,
    food,
    foods: foods.map(({ id }) => id),
    // a food with its own line goes in by that measure, and never in the place of another
    lots: lots.filter((lot) => scopeLine(row, lot.food) === line),
    ...(form === undefined ? {} : { form: formName(form) }),
  };
}

/** Names of foods, for words. */
export const namesOf = (ids: readonly string[]): string => ids.map(nameOf).join(' and ');
