/** The printed recipes of jam, jelly and preserves, and the packages of pectin they ask for. */
import * as z from 'zod/mini';
import packagesJson from '../../data/sugar/pectin-packages.json';
import recipesJson from '../../data/sugar/recipes.json';
import { foodsNamed } from '../foods/lookUpFood';
import { nameOf } from '../foods/tables';
import type { Quantity } from '../quantity/types';
import type { Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';
import { sugarCaution } from './cautions';

export const PECTINS = ['none', 'powdered', 'liquid'] as const;
/** The added pectin of a recipe. */
export type AddedPectin = (typeof PECTINS)[number];
export const SPREADS = ['jam', 'jelly', 'preserves'] as const;
export type Ends = readonly [least: number, most: number];

const ends = () => z.tuple([z.number().check(z.gte(0)), z.number()]);
const some = () => z.exactOptional(positive());
export const recipeRow = () =>
  z.strictObject({
    id: id(),
    product: z.enum(SPREADS),
    pectin: z.enum(PECTINS),
    name: text(),
    food: z.exactOptional(id()),
    /** The foods that the page names: no other goes into its jars. */
    foods: z.exactOptional(z.array(id()).check(z.minLength(1))),
    /** Whether all of them go into one pot. */
    together: z.exactOptional(z.literal(true)),
    form: z.exactOptional(id()),
    fruit: ends(),
    measure: text(),
    measuredAs: z.exactOptional(z.enum(['crushed', 'chopped', 'whole'])),
    sugar: ends(),
    lemonJuice: z.number().check(z.gte(0)),
    lemonOptional: z.exactOptional(z.literal(true)),
    lemonKind: z.exactOptional(z.enum(['lemon juice', 'bottled lemon juice'])),
    /** Cups of vinegar, and of the strained juice that the sugar is for. */
    vinegar: some(),
    juice: some(),
    water: some(),
    spice: z.exactOptional(text()),
    spiceTsp: some(),
    rawPounds: some(),
    pectinAmount: z.exactOptional(text()),
    packages: z.exactOptional(z.int()),
    halfPints: z.exactOptional(ends()),
    quantitiesDisagree: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export const packageRow = () =>
  z.strictObject({ id: z.enum(['powdered', 'liquid']), grams: some(), milliliters: some(), ...sourcedColumns() });
export type RecipeRow = RowOf<typeof recipeRow>;
export const recipes = asTable<RecipeRow>(recipesJson).rows;
const packages = asTable<RowOf<typeof packageRow>>(packagesJson).rows;

/** The added pectin of a recipe on a scale (powdered) or in a measure (liquid), where a package has the usual size. */
export interface PectinAmount {
  /** Powdered pectin by weight. */
  readonly pectinMass?: Quantity<'mass'>;
  /** Liquid pectin by volume. */
  readonly pectinVolume?: Quantity<'volume'>;
}
/** The packages of a recipe, weighed or measured. */
export function pectinOfRecipe(row: RecipeRow): PectinAmount {
  const { grams, milliliters } = packages.find((one) => one.id === row.pectin) ?? {};
  const many = row.packages ?? 0;
  if (grams !== undefined) return { pectinMass: { value: grams * many, unit: 'g' } };
  return milliliters === undefined ? {} : { pectinVolume: { value: milliliters * many, unit: 'mL' } };
}

/** What goes with every answer about a recipe. */
export const recipeCautions = (row: RecipeRow): Caution[] => [
  ...(row.obtained === 'memory' ? [caution('recalled')] : []),
  ...(row.lemonJuice > 0 && row.lemonOptional !== true ? [sugarCaution('acid-for-set')] : []),
  sugarCaution('one-batch'),
  sugarCaution('boiling-sugar-burns'),
];

/** A jam recipe as the plan reads it: one batch. */
export interface PrintedJam extends RecipeRow, PectinAmount {
  readonly halfPints: Ends;
}
/**
 * The printed jam recipes that name a food, in the order of the table: read in a copy, with a yield and without a
 * contradiction. A recipe of several fruits in one pot is none for one of them.
 */
export function printedJams(food: string): readonly PrintedJam[] {
  const [found, ...others] = foodsNamed(food);
  if (found === undefined || others.length > 0) return [];
  return recipes.flatMap((row) =>
    row.product === 'jam' &&
    row.obtained !== 'memory' &&
    row.quantitiesDisagree !== true &&
    row.together !== true &&
    row.halfPints !== undefined &&
    row.foods?.includes(found.id) === true
      ? [{ ...row, halfPints: row.halfPints, ...pectinOfRecipe(row) }]
      : [],
  );
}
/** The trade names of the foods that some printed jam recipe names. */
export const foodsOfJams = (): string[] =>
  [...new Set(recipes.flatMap(({ foods = [] }) => foods))].map(nameOf).filter((food) => printedJams(food).length > 0);
