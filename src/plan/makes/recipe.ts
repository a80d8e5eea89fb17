import ingredientsJson from '../../../data/plan/recipe-ingredients.json';
import stepsJson from '../../../data/plan/recipe-steps.json';
import recipesJson from '../../../data/plan/recipes.json';
import type { TestedProcess } from '../../process/testedProcess';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Unit } from '../../quantity/units';
import type { Basis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { readJar } from '../../words/jar';
import type { Activity } from '../request/activity';
import type { Ingredient, IngredientRole } from '../request/plannedProduct';
import { type Day, type Decided, massOf, volumeOf } from './making';
import { kgOfMeasure, pantryItem } from './pantry';

/** Which printed recipe a canned product is made by. */
export interface RecipeRow extends Sourced {
  readonly recipe: string;
  /** The foods that the page names; left out where the process itself knows them. */
  readonly foods?: readonly string[];
  readonly forms: readonly string[];
  readonly packs?: readonly string[];
  readonly cover?: string;
}
export const recipeRows = asTable<RecipeRow>(recipesJson).rows;

/** What a recipe takes besides the fruit or vegetable itself. */
export interface IngredientRow extends Sourced {
  readonly recipe: string;
  readonly what: string;
  readonly item?: string;
  readonly role: IngredientRole;
  readonly amount: number;
  readonly unit: Unit<'volume'>;
  /** The amount is for so many of these. */
  readonly per: number;
  readonly perUnit: Unit<'mass'> | Unit<'volume'>;
  readonly perOf: 'raw' | 'ready' | 'jar';
  readonly mustKeep?: true;
}
export const ingredientRows = asTable<IngredientRow>(ingredientsJson).rows;

interface StepRow extends Sourced {
  readonly recipe: string;
  readonly pack?: string;
  readonly do: string;
  readonly of?: string;
  readonly least?: number;
  readonly most?: number;
  readonly unit?: string;
  readonly to?: string;
  readonly optional?: true;
}
export const stepRows = asTable<StepRow>(stepsJson).rows;

/** A printed recipe with what belongs to it. */
export interface PrintedRecipe {
  readonly row: RecipeRow;
  readonly ingredients: readonly IngredientRow[];
  readonly steps: readonly string[];
  readonly basis: readonly Basis[];
}

/** The recipe of a process for a food by its trade name; none where these tables hold none. */
export function recipeFor(process: TestedProcess, trade: string): PrintedRecipe | undefined {
  const row = recipeRows.find(
    ({ foods, forms, packs }) =>
      forms.includes(process.form) &&
      (packs?.includes(process.pack) ?? true) &&
      (foods === undefined || foods.includes(process.food) || foods.includes(trade)),
  );
  return row && printed(row, process.pack);
}

/** A recipe by its name in the table. */
export function recipeNamed(name: string): PrintedRecipe {
  const row = recipeRows.find(({ recipe }) => recipe === name);
  if (row === undefined) throw new Error(`no recipe ${name}`);
  return printed(row, 'hot');
}

function printed(row: RecipeRow, pack: string): PrintedRecipe {
  return {
    row,
    ingredients: ingredientRows.filter(({ recipe }) => recipe === row.recipe),
    steps: stepRows
      .filter((step) => step.recipe === row.recipe && (step.pack ?? pack) === pack)
      .map((step) => stepText(step)),
    basis: [basisOf(row, 'ingredients', 'the printed recipe')],
  };
}

function stepText({ do: verb, of, least, most, unit, to, optional }: StepRow): string {
  const time =
    least === undefined || most === undefined ? '' : ` for ${least === most ? least : `${least} to ${most}`} ${unit}`;
  const text = `${verb}${of === undefined ? '' : ` ${of}`}${time}${to === undefined ? '' : `, until ${to}`}.`;
  return optional ? `If you like: ${text}` : `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** Of an ingredient for one of what it is for: a raw kg, a litre ready, or a jar. */
function cupsOf({ amount, unit, per, perUnit, perOf }: IngredientRow, jar: string): number {
  const cups = valueIn<'volume'>({ value: amount, unit }, 'cup');
  if (perOf === 'raw') return cups / (per * valueIn<'mass'>({ value: 1, unit: perUnit as Unit<'mass'> }, 'kg'));
  const litres = per * valueIn<'volume'>({ value: 1, unit: perUnit as Unit<'volume'> }, 'L');
  return perOf === 'ready' ? cups / litres : (cups / litres) * valueIn(readJar(jar).volume, 'L');
}

/** What the pantry gives for each unit and each kg, of everything the recipe takes from it. */
export function pantryOf({ ingredients }: PrintedRecipe, jar: string): NonNullable<Activity['pantry']> {
  return Object.fromEntries(
    ingredients.flatMap((row) => {
      const item = pantryItem(row.item);
      if (item === undefined) return [];
      const { kg } = kgOfMeasure(item, { value: cupsOf(row, jar), unit: 'cup' });
      return [
        [
          item,
          {
            perUnit: row.perOf === 'jar' ? kg : 0,
            perReadyKg: row.perOf === 'ready' ? kg : 0,
            perRawKg: row.perOf === 'raw' ? kg : 0,
          },
        ],
      ];
    }),
  );
}

/** The recipe's own lines for what a day makes of it. */
export function ingredientLines(
  day: Day,
  { ingredients }: PrintedRecipe,
  jar: string,
  { rawKg, readyKg, ready }: Decided,
): Ingredient[] {
  return ingredients.map((row): Ingredient => {
    const many = { raw: rawKg, ready: readyKg.high, jar: ready }[row.perOf];
    const amount: Quantity<'volume'> = spooned(cupsOf(row, jar) * many);
    const item = pantryItem(row.item);
    const kg = item === undefined ? undefined : kgOfMeasure(item, amount).kg;
    const weighed = row.role === 'sugar' && kg !== undefined;
    return {
      what: row.what,
      role: row.role,
      ...(weighed && day.metric ? { amount: massOf(day, kg) } : { amount: volumeOf(day, amount) }),
      ...(weighed && !day.metric ? { or: massOf(day, kg) } : {}),
      ...(item === undefined && row.role !== 'liquid' ? { toBuy: true as const } : {}),
      note: `${measure(row)}${row.mustKeep === true ? ', never less' : ''}`,
    };
  });
}

/** Cups, or spoons where it is less than a quarter of a cup. */
export const spooned = (cups: number): Quantity<'volume'> =>
  cups >= 0.25 ? { value: cups, unit: 'cup' } : quantityIn<'volume'>(cups, 'cup', cups >= 1 / 16 ? 'tbsp' : 'tsp');

const OF = { raw: 'as bought', ready: 'prepared', jar: 'in jars' } as const;
const measure = ({ amount, unit, per, perUnit, perOf }: IngredientRow): string =>
  `${Number(amount.toFixed(3))} ${unit} to ${per} ${perUnit} ${OF[perOf]}`;
