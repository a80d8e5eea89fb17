import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { lookUp, type Named } from '../../common/names';
import { fields, name, readInput } from '../../quantity/fields';
import type { Basis, Caution } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { caution } from '../cautions';
import { type RecipeRow, recipeRows } from './share';

const schema = fields({ product: name('a product, such as "apple butter"') });
export type RecipeYieldInput = z.input<typeof schema>;

export interface RecipeYield {
  readonly product: string;
  /** Main ingredients of one batch, each with its unit after the underscore: `apples_lb`. */
  readonly batch: Readonly<Record<string, number>>;
  /** Jars that the batch fills, as printed; none where the printed copies disagree about the jar. */
  readonly jars: { readonly low: number; readonly high: number };
  readonly jar?: 'quart' | 'pint' | 'half-pint';
  /** How far it is boiled down, where printed. */
  readonly reduction?: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const products: readonly (Named & { readonly row: RecipeRow })[] = recipeRows.map((row) => ({
  name: row.product,
  row,
}));

/** The products with a printed batch yield. */
export const recipeYieldNames = (): string[] => products.map((product) => product.name).sort();

/**
 * How many jars the printed batch of a tested formula fills: fruit butters, chutneys, salsas, sauces, ketchup.
 *
 * Such formulas are made as printed and not scaled by the jar. The batch names the main ingredients only: it is for
 * readying jars and produce, not a recipe.
 *
 * @param input.product - `apple butter`, `mango chutney`, `tomato ketchup` ...
 * @returns `batch`, `jars` (low and high as printed) and `jar`
 * @throws StillroomError UNKNOWN_NAME for a product in no table, offering the nearest
 *
 * Source: Complete Guide to Home Canning, Guides 2 to 5, and copies of it.
 *
 * @example
 * ```ts
 * import { recipeYield } from 'stillroom/produce';
 *
 * const { jars, jar, batch } = recipeYield({ product: 'apple butter' });
 * [jars.low, jars.high, jar, batch.apples_lb]; // => [8, 9, 'pint', 8]
 * ```
 */
export function recipeYield(input: RecipeYieldInput): RecipeYield {
  const given = readInput(schema, input);
  const { row } = lookUp(given.product, products, 'product', 'product with a printed batch yield');
  return answer({
    product: row.product,
    batch: row.batch,
    jars: { low: row.jars[0], high: row.jars[1] },
    ...(row.jar === null ? {} : { jar: row.jar }),
    ...(row.reduction === undefined ? {} : { reduction: row.reduction }),
    basis: [basisOf(row, 'yield of the batch')],
    cautions: [caution('yield-is-no-process'), ...(row.jar === null ? [caution('copies-disagree-on-yield')] : [])],
  });
}
