import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { type FoundFood, food as foodField } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { narrowerOf } from '../foods/lookUpFood';
import { nameOf } from '../foods/tables';
import { choice, fields, list, optional, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { oneOf } from './inputs';
import {
  type Ends,
  PECTINS,
  type PectinAmount,
  pectinOfRecipe,
  type RecipeRow,
  recipeCautions,
  recipes,
  SPREADS,
} from './jamRecipes';

export const recipeFields = {
  /** The fruit; or */
  food: optional(foodField()),
  /** the fruits that go into one pot, 2 to 5. */
  foods: optional(list('the fruits that go into one pot', foodField(), 2, 5)),
  /** `jam`, `jelly` or `preserves`. */
  product: choice('a product', SPREADS),
  /** `none`, `powdered` or `liquid`: they are different recipes, not substitutes. */
  pectin: choice('the added pectin', PECTINS),
};
const schema = fields(recipeFields);
export type JamRecipeInput = z.input<typeof schema>;
/** A recipe as it is asked for, read. */
export type JamAsked = z.output<typeof schema>;

/** Two ends of a printed amount; equal where one is printed. */
export interface Volumes {
  /** The least. */
  readonly low: Quantity<'volume'>;
  /** The most. */
  readonly high: Quantity<'volume'>;
}
/** What goes into one pot. */
export interface JamBatch extends PectinAmount {
  /** The fruit as the source names it. */
  readonly name: string;
  /** Trade names of the foods that the page names; `together`: all of them in one pot. */
  readonly foods: readonly string[];
  /** Whether all of the foods go into one pot. */
  readonly together: boolean;
  /** Prepared fruit or juice. */
  readonly fruit: Volumes;
  /** How it is measured. */
  readonly measure: string;
  /** Sugar. */
  readonly sugar: Volumes;
  /** Lemon juice. */
  readonly lemonJuice?: Quantity<'volume'>;
  /** Whether the lemon juice may be left out. */
  readonly lemonOptional?: boolean;
  /** Vinegar of 5 percent acidity that the recipe holds. */
  readonly vinegar?: Quantity<'volume'>;
  /** Strained juice that the sugar is for, where the fruit is measured before it is strained. */
  readonly juice?: Quantity<'volume'>;
  /** Water. */
  readonly water?: Quantity<'volume'>;
  /** Raw fruit for the juice or the prepared fruit. */
  readonly raw?: Quantity<'mass'>;
  /** Added pectin as printed. */
  readonly pectin?: string;
  /** The printed yield. */
  readonly halfPints?: { readonly low: number; readonly high: number };
  /** What else the page says of the amounts. */
  readonly notes?: string;
}
export interface JamRecipe extends JamBatch {
  /** Where the recipe comes from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
/** Both ends of a printed number of cups, times a number. */
export const cupsOf = ([low, high]: Ends, times: number): Volumes => ({
  low: cups(low * times),
  high: cups(high * times),
});

const namesFood = (row: RecipeRow, id: string): boolean => row.food === id || row.foods?.includes(id) === true;

/** The foods that are asked for: one, or those of one pot. */
export function foodsAsked(asked: JamAsked): readonly [FoundFood, ...FoundFood[]] {
  oneOf(asked, ['food', 'foods']);
  return asked.food === undefined ? (asked.foods as [FoundFood, ...FoundFood[]]) : [asked.food];
}

/** The recipe of a food: one that is of it alone, one that names it, or one of a wider food; of several, their own. */
export function findJam(asked: JamAsked): RecipeRow | undefined {
  const [food, ...more] = foodsAsked(asked);
  const printed = recipes.filter((row) => row.product === asked.product && row.pectin === asked.pectin);
  if (more.length > 0) {
    const ids = [food, ...more].map(({ id }) => id).sort();
    return printed.find((row) => row.together === true && [...(row.foods ?? [])].sort().join() === ids.join());
  }
  return figuresFor(food.id, 'jam')
    .flatMap((id) => [printed.find((row) => row.food === id), printed.find((row) => namesFood(row, id))])
    .find((row) => row !== undefined);
}

const pectinWords = (pectin: RecipeRow['pectin']): string =>
  pectin === 'none' ? 'no added pectin' : `${pectin} pectin`;
const foodsOfRow = ({ food, foods }: RecipeRow): readonly string[] => foods ?? (food === undefined ? [] : [food]);

/** No recipe: what there is for the food, or for its kinds. */
export function noJam(asked: JamAsked): NotKnown {
  const { product, pectin } = asked;
  const foods = foodsAsked(asked);
  const near = foods.flatMap(({ id }) => [id, ...narrowerOf(id)]);
  const others = recipes.filter((row) => near.some((id) => namesFood(row, id)));
  return notKnown({
    code: 'no-printed-recipe',
    text: `These tables hold no recipe for ${foods.map(({ name }) => name).join(' and ')} ${product} with ${pectinWords(pectin)}.`,
    instead:
      others.length > 0
        ? others.map((row) => ({
            text: `Take the recipe for ${row.name} ${row.product} with ${pectinWords(row.pectin)}.`,
            recipe: row.id,
            food: nameOf(row.food ?? (foodsOfRow(row)[0] as string)),
          }))
        : 'Freeze or dry the fruit, or take a tested recipe of an extension service.',
    basis: [derived('reason', 'what the table of recipes holds')],
    cautions: [],
  });
}

/** One pot of a recipe, times a number. */
export function batchOf(row: RecipeRow, times: number): JamBatch {
  return {
    name: row.name,
    foods: foodsOfRow(row).map(nameOf),
    together: row.together === true,
    fruit: cupsOf(row.fruit, times),
    measure: row.measure,
    sugar: cupsOf(row.sugar, times),
    ...(row.lemonJuice === 0 ? {} : { lemonJuice: { value: row.lemonJuice * times, unit: 'tbsp' as const } }),
    ...(row.lemonOptional === undefined ? {} : { lemonOptional: row.lemonOptional }),
    ...(row.vinegar === undefined ? {} : { vinegar: cups(row.vinegar * times) }),
    ...(row.juice === undefined ? {} : { juice: cups(row.juice * times) }),
    ...(row.water === undefined ? {} : { water: cups(row.water * times) }),
    ...(row.rawPounds === undefined ? {} : { raw: { value: row.rawPounds * times, unit: 'lb' as const } }),
    ...(row.pectinAmount === undefined ? {} : { pectin: row.pectinAmount }),
    ...pectinOfRecipe(row),
    ...(row.halfPints === undefined
      ? {}
      : { halfPints: { low: row.halfPints[0] * times, high: row.halfPints[1] * times } }),
    ...(row.notes === undefined ? {} : { notes: row.notes }),
  };
}

/** The basis line of a recipe; names the wider food whose recipe serves. */
export function jamBasis(row: RecipeRow, of: string, asked: JamAsked): Basis {
  const own = foodsAsked(asked).every(({ id }) => namesFood(row, id));
  return {
    ...basisOf(row, of, 'the recipe'),
    ...(own ? {} : { food: nameOf(row.food ?? (foodsOfRow(row)[0] as string)) }),
  };
}

/**
 * A printed batch of jam, jelly or preserves: fruit, sugar, acid and pectin as the source prints them.
 *
 * Sources: Complete Guide to Home Canning, Guide 7; university extension pages; Home and Garden Bulletin 56; each row
 * says which. Rows recalled and not seen carry the caution for it. Ask `testedProcess` for the heat process.
 *
 * @param input - `food`, or `foods` that go into one pot; `product` (`jam`, `jelly`, `preserves`), `pectin` (`none`, `powdered`, `liquid`)
 * @returns the batch; or `known: false` where these tables hold no such recipe, with the recipes of the food
 * @throws StillroomError UNKNOWN_NAME for a name that is no food
 *
 * @example
 * ```ts
 * import { jamRecipe } from 'stillroom/sugar';
 *
 * const apricot = jamRecipe({ food: 'apricots', product: 'jam', pectin: 'none' });
 * 'sugar' in apricot && apricot.sugar.low; // => { value: 4, unit: 'cup' }
 * 'sugar' in jamRecipe({ food: 'apricots', product: 'jelly', pectin: 'liquid' }); // => false
 * ```
 */
export function jamRecipe(input: JamRecipeInput): JamRecipe | NotKnown {
  const asked = readInput(schema, input);
  const row = findJam(asked);
  if (row === undefined) return answer(noJam(asked));
  return answer({ ...batchOf(row, 1), basis: [jamBasis(row, 'fruit', asked)], cautions: recipeCautions(row) });
}
