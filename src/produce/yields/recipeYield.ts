import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import type { Given } from '../../common/given';
import { food, form } from '../../foods/fields';
import { formName, nameOf } from '../../foods/tables';
import { fields, optional, readInput } from '../../quantity/fields';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import type { Instead, NotKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { caution } from '../cautions';
import { formNamedBy, inWords, missing } from '../shape';
import { type RecipeRow, recipeRows } from './tables';

const schema = fields({
  /** What is made, with or without its form: `apple butter`, `mango chutney`, `ketchup`, `salsa`. */
  food: food(),
  /** Its form or kind, where the name does not say it: `butter`, `tomato paste salsa`. */
  form: optional(form()),
});
export type RecipeYieldInput = Given<z.input<typeof schema>>;

/** One ingredient of a batch. */
export interface BatchIngredient {
  /** What it is. */
  readonly ingredient: string;
  /** How much of it; the least where the page gives a span. */
  readonly amount: Quantity<'mass'> | Quantity<'volume'>;
  /** The most, where the page gives a span. */
  readonly most?: Quantity<'mass'> | Quantity<'volume'>;
  /** Whether the page leaves it to the cook. */
  readonly optional: boolean;
}
/** What one batch fills. */
export interface RecipeYield {
  /** These tables print it. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** The form it is made into, where it has one. */
  readonly form?: string;
  /** The name of the formula, as printed. */
  readonly name: string;
  /** Main ingredients of one batch: for readying jars and food, not a recipe. */
  readonly batch: readonly BatchIngredient[];
  /** Jars that the batch fills, least and most as printed. */
  readonly jars: { readonly low: number; readonly high: number };
  /** Which jar; absent where the printed copies disagree about it. */
  readonly jar?: 'quart' | 'pint' | 'half-pint';
  /** How far it is boiled down, where printed. */
  readonly reduction?: string;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

const offer = (row: RecipeRow): Instead => ({
  text: row.printed,
  ...(row.food === undefined ? {} : { food: nameOf(row.food) }),
  ...(row.form === undefined ? {} : { form: formName(row.form) }),
});

type AnyUnit = Quantity<'mass'> | Quantity<'volume'>;
const quantity = (value: number, unit: string): AnyUnit => ({ value, unit }) as AnyUnit;

/**
 * How many jars the printed batch of a tested formula fills: fruit butters, chutneys, salsas, sauces, ketchup.
 *
 * Make such formulas as printed; they are not scaled by the jar. The batch names the main ingredients only: it is for
 * readying jars and food, not a recipe.
 *
 * @returns `batch`, `jars` (low and high as printed) and `jar`; `known: false` where no table prints such a batch, or
 *   where several fit, with those there are
 * @throws StillroomError UNKNOWN_NAME for a food that is not in the pantry
 *
 * Source: Complete Guide to Home Canning, Guides 2 to 5, and copies of it.
 *
 * @example
 * ```ts
 * import { recipeYield } from 'stillroom/produce';
 *
 * const butter = recipeYield({ food: 'apple butter' });
 * butter.known && [butter.jars.low, butter.jars.high, butter.jar]; // => [8, 9, 'pint']
 * butter.known && butter.batch[0]; // => { ingredient: 'apples', amount: { value: 8, unit: 'lb' }, optional: false }
 * ```
 */
export function recipeYield(input: RecipeYieldInput): RecipeYield | NotKnown {
  const given = readInput(schema, input);
  const { id } = given.food;
  const form = formNamedBy(given.food, given.form);
  const rows = recipeRows.filter((row) => row.food === id);
  const fitting = form === undefined ? rows : rows.filter((row) => row.form === form);
  const [row] = fitting;
  if (row === undefined) {
    const text = `These tables print no batch of ${inWords(id, form)}.`;
    return answer(missing('no batch', text, (rows.length > 0 ? rows : recipeRows).map(offer)));
  }
  if (fitting.length > 1) {
    const text = `These tables print several batches of ${inWords(id, form)}. Say which.`;
    return answer(missing('several batches', text, fitting.map(offer)));
  }
  return answer({
    known: true as const,
    food: nameOf(id),
    ...(row.form === undefined ? {} : { form: formName(row.form) }),
    name: row.printed,
    batch: row.batch.map(({ ingredient, amount, most, unit, optional: free = false }) => ({
      ingredient,
      amount: quantity(amount, unit),
      ...(most === undefined ? {} : { most: quantity(most, unit) }),
      optional: free,
    })),
    jars: { low: row.jars[0], high: row.jars[1] },
    ...(row.jar === null ? {} : { jar: row.jar }),
    ...(row.reduction === undefined ? {} : { reduction: row.reduction }),
    basis: [basisOf(row, 'jars', 'yield of the batch'), basisOf(row, 'batch')],
    cautions: [caution('yield-is-no-process'), ...(row.jar === null ? [caution('copies-disagree-on-yield')] : [])],
  });
}
