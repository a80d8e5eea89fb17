import packagesJson from '../../data/sugar/pectin-packages.json';
import recipesJson from '../../data/sugar/recipes.json';
import remakeJson from '../../data/sugar/remake-jelly.json';
import { answer } from '../common/answer';
import { findNamed, lookUp, type Named } from '../common/names';
import { fail } from '../errors/StillroomError';
import { choice, count, fields, name, number, optional, readInput, volume } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity, VolumeInput } from '../quantity/types';
import type { Basis, Caution, Refusal } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { sugarCaution } from './cautions';
import { oneOf } from './inputs';
import { JUICE_AT_A_TIME } from './sugarForJuice';

const KINDS = ['none', 'powdered', 'liquid'] as const;
/** The added pectin of a recipe. */
export type AddedPectin = (typeof KINDS)[number];
const PRODUCTS = ['jam', 'jelly', 'preserves'] as const;

type Ends = readonly [least: number, most: number];
export interface RecipeRow extends Sourced, Named {
  readonly product: (typeof PRODUCTS)[number];
  readonly pectin: AddedPectin;
  readonly fruit: Ends;
  readonly measure: string;
  readonly sugar: Ends;
  readonly lemonJuice: number;
  readonly lemonOptional?: boolean;
  readonly water?: number;
  readonly rawPounds?: number;
  readonly pectinAmount?: string;
  readonly packages?: number;
  readonly halfPints?: Ends;
  readonly foods?: readonly string[];
  readonly measuredAs?: 'crushed' | 'chopped' | 'whole';
  readonly lemonKind?: 'lemon juice' | 'bottled lemon juice';
  /** Cups of vinegar, and of the strained juice that the sugar is for. */
  readonly vinegar?: number;
  readonly juice?: number;
  readonly spice?: string;
  readonly spiceTsp?: number;
  readonly quantitiesDisagree?: true;
}
const recipes = asTable<RecipeRow>(recipesJson).rows;

interface PackageRow extends Sourced {
  readonly name: 'powdered' | 'liquid';
  readonly grams?: number;
  readonly millilitres?: number;
}
const packages = asTable<PackageRow>(packagesJson).rows;

/**
 * The printed jam recipes that name a food, in the order of the table: read in a copy, with a yield and without a
 * contradiction.
 */
export const printedJams = (food: string): readonly PrintedJam[] =>
  recipes.flatMap((row) =>
    row.product === 'jam' &&
    row.obtained !== 'memory' &&
    row.quantitiesDisagree !== true &&
    row.halfPints !== undefined &&
    row.foods?.includes(food) === true
      ? [{ ...row, halfPints: row.halfPints, ...pectinOf(row) }]
      : [],
  );
/** The foods that some printed jam recipe names. */
export const foodsOfJams = (): string[] =>
  [...new Set(recipes.flatMap(({ foods = [] }) => foods))].filter((food) => printedJams(food).length > 0);
/** A jam recipe as the plan reads it: one batch. */
export interface PrintedJam extends RecipeRow, Pick<JamRecipe, 'pectinMass' | 'pectinVolume'> {
  readonly halfPints: Ends;
}

/** So many packages on a scale (powdered) or in a measure (liquid). */
function pectinOf(row: RecipeRow): Pick<JamRecipe, 'pectinMass' | 'pectinVolume'> {
  const one = packages.find(({ name: kind }) => kind === row.pectin);
  const { grams, millilitres } = one ?? {};
  const many = row.packages ?? 0;
  if (grams !== undefined) return { pectinMass: { value: grams * many, unit: 'g' } };
  return millilitres === undefined ? {} : { pectinVolume: { value: millilitres * many, unit: 'mL' } };
}

const recipeFields = {
  fruit: name('a fruit'),
  product: choice('a product', PRODUCTS),
  pectin: choice('the added pectin', KINDS),
};
const schema = fields(recipeFields);
export interface JamRecipeOf {
  readonly fruit: string;
  readonly product: (typeof PRODUCTS)[number];
  /** `none`, `powdered` or `liquid`: they are different recipes, not substitutes. */
  readonly pectin: AddedPectin;
}
export interface Volumes {
  readonly low: Quantity<'volume'>;
  readonly high: Quantity<'volume'>;
}
export interface JamRecipe {
  /** As the source names it. */
  readonly name: string;
  /** Prepared fruit or juice, and how it is measured. */
  readonly fruit: Volumes;
  readonly measure: string;
  readonly sugar: Volumes;
  readonly lemonJuice?: Quantity<'volume'>;
  readonly lemonOptional?: boolean;
  /** Vinegar of 5 percent acidity that the recipe holds. */
  readonly vinegar?: Quantity<'volume'>;
  /** Strained juice that the sugar is for, where the fruit is measured before it is strained. */
  readonly juice?: Quantity<'volume'>;
  readonly water?: Quantity<'volume'>;
  /** Raw fruit for the juice or the prepared fruit. */
  readonly raw?: Quantity<'mass'>;
  /** Added pectin as printed, */
  readonly pectin?: string;
  /** and weighed or measured, where a package is of the common size. */
  readonly pectinMass?: Quantity<'mass'>;
  readonly pectinVolume?: Quantity<'volume'>;
  /** The printed yield. */
  readonly halfPints?: { readonly low: number; readonly high: number };
  readonly notes?: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
const ends = ([low, high]: Ends, times: number): Volumes => ({ low: cups(low * times), high: cups(high * times) });

function findRecipe({ fruit, product, pectin }: JamRecipeOf): RecipeRow {
  const of = recipes.filter((row) => row.product === product && row.pectin === pectin);
  if (of.length === 0) {
    fail(
      'UNKNOWN_NAME',
      'pectin',
      pectin,
      `no printed ${product} recipe has it; known: ${KINDS.filter((kind) => recipes.some((row) => row.product === product && row.pectin === kind)).join(', ')}`,
    );
  }
  const [own] = findNamed(fruit, of);
  return own ?? lookUp(fruit, of, 'fruit', `${product} recipe with ${pectin === 'none' ? 'no added' : pectin} pectin`);
}

const cautionsOf = (row: RecipeRow): Caution[] => [
  ...(row.obtained === 'memory' ? [caution('recalled')] : []),
  ...(row.lemonJuice > 0 && row.lemonOptional !== true ? [sugarCaution('acid-for-set')] : []),
  sugarCaution('one-batch'),
  sugarCaution('boiling-sugar-burns'),
];

function batchOf(row: RecipeRow, times: number): Omit<JamRecipe, 'basis' | 'cautions'> {
  return {
    name: row.name,
    fruit: ends(row.fruit, times),
    measure: row.measure,
    sugar: ends(row.sugar, times),
    ...(row.lemonJuice === 0 ? {} : { lemonJuice: { value: row.lemonJuice * times, unit: 'tbsp' as const } }),
    ...(row.lemonOptional === undefined ? {} : { lemonOptional: row.lemonOptional }),
    ...(row.vinegar === undefined ? {} : { vinegar: cups(row.vinegar * times) }),
    ...(row.juice === undefined ? {} : { juice: cups(row.juice * times) }),
    ...(row.water === undefined ? {} : { water: cups(row.water * times) }),
    ...(row.rawPounds === undefined ? {} : { raw: { value: row.rawPounds * times, unit: 'lb' as const } }),
    ...(row.pectinAmount === undefined ? {} : { pectin: row.pectinAmount }),
    ...pectinOf(row),
    ...(row.halfPints === undefined
      ? {}
      : { halfPints: { low: row.halfPints[0] * times, high: row.halfPints[1] * times } }),
    ...(row.notes === undefined ? {} : { notes: row.notes }),
  };
}

/**
 * A printed batch of jam, jelly or preserves: fruit, sugar, acid and pectin as the source prints them.
 *
 * Sources: Complete Guide to Home Canning, Guide 7; university extension pages; Home and Garden Bulletin 56; each row
 * says which. Rows recalled and not seen carry the caution for it. The heat process is `testedProcess`'s to answer.
 *
 * @param input - `fruit`, `product` (`jam`, `jelly`, `preserves`), `pectin` (`none`, `powdered`, `liquid`)
 * @throws StillroomError UNKNOWN_NAME where no such recipe is printed, offering the nearest
 *
 * @example
 * ```ts
 * import { jamRecipe } from 'stillroom/sugar';
 *
 * jamRecipe({ fruit: 'apricots', product: 'jam', pectin: 'none' }).sugar.low; // => { value: 4, unit: 'cup' }
 * ```
 */
export function jamRecipe(input: JamRecipeOf): JamRecipe {
  const row = findRecipe(readInput(schema, input));
  return answer({ ...batchOf(row, 1), basis: [basisOf(row, 'recipe')], cautions: cautionsOf(row) });
}

const scaleSchema = fields({
  ...recipeFields,
  times: optional(number('how many times the recipe in one pot: above 0 and at most 1,000', { above: 0, max: 1000 })),
  halfPints: optional(count('half-pints wanted', 1, 10_000)),
});
export interface ScaleRecipeInput extends JamRecipeOf {
  /** So many times the recipe in one pot; or */
  readonly times?: number;
  /** so many half-pints, in as many separate batches as they take. */
  readonly halfPints?: number;
}
export interface ScaledRecipe {
  readonly tested: true;
  /** Pots to cook, one after another. */
  readonly batches: number;
  /** What goes into each. */
  readonly batch: Omit<JamRecipe, 'basis' | 'cautions'>;
  /** For all of them. */
  readonly total: { readonly fruit: Volumes; readonly sugar: Volumes };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * A printed recipe for another amount: as many separate batches as it takes, never a bigger pot than sets.
 *
 * Juice for jelly without added pectin may be cooked up to 8 cups at a time (Guide 7: 6 to 8), and less of it than the
 * recipe is no harm. Every other recipe is cooked as it stands: a bigger batch boils longer before it sets, which
 * breaks pectin down, and a packet of pectin is made for the printed weight of fruit and sugar. Beyond that the answer
 * is a refusal with its reason. Recipes recalled and not seen are not scaled.
 *
 * @param input - the recipe as in `jamRecipe`, and `times` or `halfPints`
 * @returns the batches, or a refusal (`tested: false`)
 * @throws StillroomError UNKNOWN_NAME, MISSING, CONTRADICTION
 *
 * @example
 * ```ts
 * import { scaleRecipe } from 'stillroom/sugar';
 *
 * scaleRecipe({ fruit: 'strawberry', product: 'jam', pectin: 'powdered', times: 2 }).tested; // => false
 * const peach = scaleRecipe({ fruit: 'peach', product: 'jam', pectin: 'none', halfPints: 20 });
 * peach.tested && peach.batches; // => 4
 * ```
 */
export function scaleRecipe(input: ScaleRecipeInput): ScaledRecipe | Refusal {
  const given = readInput(scaleSchema, input);
  oneOf(given, ['times', 'halfPints']);
  const row = findRecipe(given);
  const refuse = (reason: string, instead: string): Refusal => ({
    tested: false,
    reason,
    instead,
    basis: [basisOf(row, 'recipe')],
    cautions: cautionsOf(row),
  });
  if (row.obtained === 'memory') {
    return answer(
      refuse('This recipe was recalled and not read in a copy.', 'Read the printed recipe first, or take another.'),
    );
  }
  if (row.quantitiesDisagree === true) {
    return answer(
      refuse("The copy's quantities and its yield contradict each other.", 'Take another recipe for this fruit.'),
    );
  }
  if (given.times !== undefined) return answer(scaleInOnePot(row, given.times, refuse));
  if (row.halfPints === undefined) {
    return answer(refuse('The source prints no yield for this recipe.', 'Give the number of batches, one pot each.'));
  }
  return answer(scaled(row, Math.ceil((given.halfPints as number) / row.halfPints[0]), 1));
}

function scaleInOnePot(row: RecipeRow, times: number, refuse: (reason: string, instead: string) => Refusal) {
  const separate = `Cook ${Math.ceil(times)} separate batches.`;
  if (row.pectin === 'none' && row.product === 'jelly') {
    const juice = row.fruit[1] * times;
    if (juice <= JUICE_AT_A_TIME.high * (1 + 1e-12)) return scaled(row, 1, times);
    return refuse(
      `${Number(juice.toFixed(2))} cups of juice are more than the ${JUICE_AT_A_TIME.low} to ${JUICE_AT_A_TIME.high} that set reliably in one pot: a longer boil breaks the pectin down.`,
      `Cook ${Math.ceil(juice / JUICE_AT_A_TIME.high)} separate batches.`,
    );
  }
  if (times === 1) return scaled(row, 1, 1);
  if (times > 1)
    return refuse('A larger batch boils longer before it sets, and long boiling breaks pectin down.', separate);
  if (row.pectin === 'none') return scaled(row, 1, times);
  return refuse(
    'A packet of pectin is made for the whole printed batch.',
    'Cook the whole batch, or a recipe without added pectin.',
  );
}

const scaled = (row: RecipeRow, batches: number, times: number): ScaledRecipe => ({
  tested: true,
  batches,
  batch: batchOf(row, times),
  total: { fruit: ends(row.fruit, times * batches), sugar: ends(row.sugar, times * batches) },
  basis: [basisOf(row, 'recipe')],
  cautions: cautionsOf(row),
});

interface RemakeRow extends Sourced {
  readonly pectin: AddedPectin;
  readonly sugar: number;
  readonly water: number;
  readonly lemonJuice: number;
  readonly pectinTsp?: number;
  readonly pectinTbsp?: number;
  readonly boilSeconds: Ends;
}
const remakes = asTable<RemakeRow>(remakeJson).rows;
const REMAKE_CUPS = 4; // the printed quantities are for 4 cups of soft jelly

const remakeSchema = fields({ jelly: volume(), pectin: choice('the pectin to remake it with', KINDS) });
export interface RemakeJellyInput {
  /** The soft jelly at hand. */
  readonly jelly: VolumeInput;
  readonly pectin: AddedPectin;
}
export interface RemakeJelly {
  readonly sugar: Quantity<'volume'>;
  readonly water: Quantity<'volume'>;
  /** Bottled. */
  readonly lemonJuice: Quantity<'volume'>;
  /** Powdered or liquid pectin, by the spoon. */
  readonly pectin?: Quantity<'volume'>;
  /** At a full rolling boil. */
  readonly boil: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  /** Pots of up to 8 cups, one after another. */
  readonly batches: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * What a jelly that stayed soft is boiled up again with.
 *
 * Source: Complete Guide to Home Canning, Guide 7, and University of Tennessee PB724, p. 38: quantities for 4 cups,
 * scaled to the jelly at hand. The row for liquid pectin is recalled.
 *
 * @param input - `jelly`: a volume; `pectin`: `powdered`, `liquid` or `none` (boil it down with lemon juice)
 * @throws StillroomError as every volume
 *
 * @example
 * ```ts
 * import { remakeJelly } from 'stillroom/sugar';
 *
 * remakeJelly({ jelly: '6 cups', pectin: 'powdered' }).pectin; // => { value: 6, unit: 'tsp' }
 * ```
 */
export function remakeJelly(input: RemakeJellyInput): RemakeJelly {
  const given = readInput(remakeSchema, input);
  const row = remakes.find(({ pectin }) => pectin === given.pectin) as RemakeRow;
  const jelly = valueIn(given.jelly, 'cup');
  const times = jelly / REMAKE_CUPS;
  const seconds = (value: number): Quantity<'time'> => ({ value, unit: 's' });
  const spoons: Quantity<'volume'> | undefined =
    row.pectinTsp !== undefined
      ? { value: row.pectinTsp * times, unit: 'tsp' }
      : row.pectinTbsp !== undefined
        ? { value: row.pectinTbsp * times, unit: 'tbsp' }
        : undefined;
  return answer({
    sugar: cups(row.sugar * times),
    water: cups(row.water * times),
    lemonJuice: quantityIn(row.lemonJuice * times, 'tbsp', 'tbsp'),
    ...(spoons === undefined ? {} : { pectin: spoons }),
    boil: { low: seconds(row.boilSeconds[0]), high: seconds(row.boilSeconds[1]) },
    batches: Math.ceil(jelly / JUICE_AT_A_TIME.high - 1e-9),
    basis: [basisOf(row, 'remaking 4 cups of soft jelly')],
    cautions: [...(row.obtained === 'memory' ? [caution('recalled')] : []), sugarCaution('boiling-sugar-burns')],
  });
}
