import type * as z from 'zod/mini';
import { handOut } from '../common/handOut';
import { lookUp, type Named } from '../common/names';
import { fields, name, number, optional, ratio, readInput, volume } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { caution } from '../sources/cautions';
import type { Basis, Caution, Refusal } from '../sources/index';
import { basisOf } from '../sources/table';
import { acidCaution, LEAST_ACETIC, pickleRule, RECIPES, type RecipeRow } from './tables';

const SYNONYMS: Readonly<Record<string, readonly string[]>> = {
  'fermented dill pickles': ['dill pickles, fermented', 'crock dill pickles'],
  'quick fresh-pack dill pickles': ['quick dill pickles', 'fresh-pack dill pickles', 'dill pickles'],
  'bread-and-butter pickles': ['bread and butter pickles'],
  'sweet gherkin pickles': ['sweet gherkins', 'gherkins'],
  'pickled three-bean salad': ['three-bean salad'],
  'pickled dilly beans': ['dilly beans'],
  'pickled dilled beans': ['dilled beans', 'dilled green beans'],
  'pickled dilled okra': ['dilled okra', 'pickled okra'],
  'pickled cauliflower or Brussels sprouts': ['pickled cauliflower', 'pickled Brussels sprouts'],
  'pickled yellow pepper rings': ['yellow pepper rings', 'pickled banana peppers'],
  'pickled bread-and-butter zucchini': ['bread-and-butter zucchini', 'pickled zucchini'],
  'pickled corn relish': ['corn relish'],
  'pickled green tomato relish': ['green tomato relish'],
  'pickled mixed vegetables': ['mixed pickles', 'mixed vegetable pickles'],
  'pickle relish': ['cucumber relish'],
};
interface NamedRecipe extends Named {
  readonly row: RecipeRow;
}
const NAMED: readonly NamedRecipe[] = RECIPES.map((row) => ({
  name: row.recipe,
  synonyms: SYNONYMS[row.recipe] ?? [],
  row,
}));
const rowOf = (recipe: string): RecipeRow => lookUp(recipe, NAMED, 'recipe', 'pickle recipe').row;

const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
/** Acetic acid of the printed vinegar and water together. */
const printedAcetic = (row: RecipeRow): number => (row.vinegarCups * LEAST_ACETIC) / (row.vinegarCups + row.waterCups);

const recipeSchema = fields({
  recipe: name('a pickle recipe, such as "pickled beets"'),
  times: optional(number('how many times the recipe, above 0 and at most 50', { above: 0, max: 50 })),
});
export type PickleRecipeInput = z.input<typeof recipeSchema>;

export interface PickleRecipe {
  readonly recipe: string;
  /** Vegetables of the recipe made once, as printed. */
  readonly produce: string;
  readonly times: number;
  /** Vinegar of 5 % acetic acid. */
  readonly vinegar: Quantity<'volume'>;
  readonly water: Quantity<'volume'>;
  readonly lemonJuice?: Quantity<'volume'>;
  readonly oil?: Quantity<'volume'>;
  /** Canning or pickling salt. */
  readonly salt?: Quantity<'volume'>;
  readonly sugar?: Quantity<'volume'>;
  /** Jars printed. */
  readonly yields?: { readonly low: number; readonly high: number; readonly jar: string };
  /** Acetic acid of vinegar and water together, before sugar and food. */
  readonly acetic: number;
  /** What is done to the vegetables first. */
  readonly before?: string;
  readonly note?: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The covering liquid of a printed pickle or relish recipe, once or several times over, its proportions kept.
 *
 * @param input.recipe - `"pickled beets"`, `"bread-and-butter pickles"`
 * @param input.times - how many times the recipe; 1 when left out
 * @returns vinegar (5 %), water, salt and sugar as printed, times `times`; `acetic` of the liquid
 * @throws StillroomError UNKNOWN_NAME, with the nearest names
 *
 * @example
 * ```ts
 * import { pickleRecipe } from 'stillroom/acid';
 *
 * pickleRecipe({ recipe: 'pickled beets', times: 2 }).vinegar; // => { value: 8, unit: 'cup' }
 * ```
 */
export function pickleRecipe(input: PickleRecipeInput): PickleRecipe {
  const { recipe, times = 1 } = readInput(recipeSchema, input);
  const row = rowOf(recipe);
  const scaled = <K extends string>(key: K, quantity: Quantity<'volume'> | undefined) =>
    (quantity === undefined ? {} : { [key]: { value: quantity.value * times, unit: quantity.unit } }) as {
      [P in K]?: Quantity<'volume'>;
    };
  return handOut({
    recipe: row.recipe,
    produce: row.produce,
    times,
    vinegar: cups(row.vinegarCups * times),
    water: cups(row.waterCups * times),
    ...scaled('lemonJuice', row.lemonJuiceCups === undefined ? undefined : cups(row.lemonJuiceCups)),
    ...scaled('oil', row.oilCups === undefined ? undefined : cups(row.oilCups)),
    ...scaled('salt', row.salt),
    ...scaled('sugar', row.sugar),
    ...(row.yields === undefined
      ? {}
      : { yields: { low: row.yields.low * times, high: row.yields.high * times, jar: row.yields.jar } }),
    acetic: printedAcetic(row),
    ...(row.before === undefined ? {} : { before: row.before }),
    ...(row.notes === undefined ? {} : { note: row.notes }),
    basis: [basisOf(row, 'quantities of the recipe')],
    cautions: [acidCaution('keep-the-proportions'), caution('follow-local-guidance')],
  });
}

const checkSchema = fields({
  recipe: name('a pickle recipe, such as "pickled beets"'),
  vinegar: volume(),
  acetic: ratio({ above: 0, max: 0.3 }),
  water: optional(volume({ min: { value: 0, unit: 'L' } })),
  times: optional(number('how many times the recipe, above 0 and at most 50', { above: 0, max: 50 })),
});
export type CheckPickleLiquidInput = z.input<typeof checkSchema>;

export interface PickleLiquidCheck {
  readonly recipe: string;
  /**
   * `kept`: as strong as printed; `stronger`: more acid, sourer and no less safe; `too weak`: diluted below the recipe;
   * `too little`: strong enough, but less acid in all than `times` the recipe holds.
   */
  readonly verdict: 'kept' | 'stronger' | 'too weak' | 'too little';
  /** Acetic acid of vinegar and water together: printed and given. */
  readonly printedAcetic: number;
  readonly acetic: number;
  /** Water to vinegar by volume, as printed. */
  readonly printedWaterToVinegar: number;
  readonly waterToVinegar: number;
  /** Most water that this vinegar may have. */
  readonly mostWater: Quantity<'volume'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Cups are measured to about this share. */
const MEASURING = 0.01;

/**
 * Whether the vinegar and water you mean to use keep a printed recipe's strength.
 *
 * Vinegar below 5 % acetic acid is refused: no other ratio makes up for it. Stronger vinegar counts by its acid.
 *
 * @param input.recipe - a printed recipe, as for `pickleRecipe`
 * @param input.vinegar - volume you mean to use
 * @param input.acetic - its strength from the label
 * @param input.water - volume of water; none when left out
 * @param input.times - how many times the recipe's vegetables it is for; left out, only the strength is checked
 * @returns `verdict`, and the most water this vinegar may have, in the unit of `vinegar`; or a refusal
 *
 * @example
 * ```ts
 * import { checkPickleLiquid } from 'stillroom/acid';
 *
 * const check = checkPickleLiquid({ recipe: 'pickled beets', vinegar: '4 cups', acetic: '5 %', water: '3 cups' });
 * 'verdict' in check && check.verdict; // => 'too weak'
 * 'verdict' in checkPickleLiquid({ recipe: 'pickled beets', vinegar: '4 cups', acetic: '4 %' }); // => false
 * ```
 */
export function checkPickleLiquid(input: CheckPickleLiquidInput): PickleLiquidCheck | Refusal {
  const { recipe, vinegar, acetic, water, times } = readInput(checkSchema, input);
  const row = rowOf(recipe);
  const least = pickleRule('vinegar-acidity');
  const basis = [basisOf(row, 'vinegar and water of the recipe'), basisOf(least, 'least strength of vinegar')];
  if (acetic < LEAST_ACETIC) {
    return handOut({
      tested: false,
      reason: `The vinegar is ${Number((acetic * 100).toPrecision(3))} % acetic acid. Tested pickles are made with ${LEAST_ACETIC * 100} %; weaker vinegar leaves the jars less acid than the recipe was tested at.`,
      instead: 'Use vinegar labelled 5 % (50 grain) or stronger; keep this one for salads.',
      basis,
      cautions: [acidCaution('vinegar-below-five'), acidCaution('low-acid-in-jars')],
    });
  }
  const vinegarCups = valueIn(vinegar, 'cup');
  const waterCups = water === undefined ? 0 : valueIn(water, 'cup');
  const printed = printedAcetic(row);
  const given = (vinegarCups * acetic) / (vinegarCups + waterCups);
  const share = given / printed;
  const enough =
    times === undefined || vinegarCups * acetic >= row.vinegarCups * LEAST_ACETIC * times * (1 - MEASURING);
  const strength = share < 1 - MEASURING ? 'too weak' : share > 1 + MEASURING ? 'stronger' : 'kept';
  return handOut({
    recipe: row.recipe,
    verdict: strength !== 'too weak' && !enough ? 'too little' : strength,
    printedAcetic: printed,
    acetic: given,
    printedWaterToVinegar: row.waterCups / row.vinegarCups,
    waterToVinegar: waterCups / vinegarCups,
    // where the printed liquid is vinegar alone, doubles must not leave a speck below zero
    mostWater: quantityIn(Math.max(0, (vinegarCups * acetic) / printed - vinegarCups), 'cup', vinegar.unit),
    basis,
    cautions: [acidCaution('keep-the-proportions'), caution('follow-local-guidance')],
  });
}

/** The names of the printed pickle and relish recipes. */
export function pickleRecipes(): readonly string[] {
  return handOut(RECIPES.map(({ recipe }) => recipe));
}
