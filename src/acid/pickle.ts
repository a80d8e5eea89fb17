import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, name, number, optional, readInput, share, volume } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { caution } from '../sources/cautions';
import type { Basis, Caution, Refusal } from '../sources/index';
import { basisOf } from '../sources/table';
import { recipeRow } from './recipes';
import { acidCaution, type DrainedStep, LEAST_ACETIC, pickleRule, RECIPES, type RecipeRow } from './tables';

const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
const times = (quantity: Quantity<'volume'>, by: number): Quantity<'volume'> => ({
  value: quantity.value * by,
  unit: quantity.unit,
});
/** Acetic acid of the printed vinegar and water together. */
const printedAcetic = (row: RecipeRow): number => (row.vinegarCups * LEAST_ACETIC) / (row.vinegarCups + row.waterCups);

const timesField = () => optional(number('how many times the recipe, above 0', { above: 0, max: 1000 }));

/** How many times a recipe may be made is in its row: whole batches, and not more than a kitchen does in a day. */
function checkTimes(row: RecipeRow, asked: number, given: unknown): void {
  const { most, whole } = row.batches;
  if (asked > most || (whole && !Number.isInteger(asked))) {
    const what = whole ? `a whole number of batches from 1 to ${most}` : `above 0 and at most ${most}`;
    fail('OUT_OF_RANGE', 'times', given, `${what}: make more as another batch, never as a larger one`);
  }
}

const recipeSchema = fields({
  recipe: name('a pickle recipe, such as "pickled beets"'),
  times: timesField(),
});
export type PickleRecipeInput = z.input<typeof recipeSchema>;

/** What is done to the vegetables first. Its liquid is drained: none of it belongs to the covering liquid. */
export interface DrainedBefore {
  /** What to do: `salt under ice`. */
  readonly what: string;
  /** Canning or pickling salt for one round. */
  readonly salt?: Quantity<'volume'>;
  /** Water for one round. */
  readonly water?: Quantity<'volume'>;
  /** Ice for one round. */
  readonly ice?: Quantity<'volume'>;
  /** Vinegar of 5 % acetic acid for one round, beside that of the covering liquid. */
  readonly vinegar?: Quantity<'volume'>;
  /** Sugar for one round. */
  readonly sugar?: Quantity<'volume'>;
  /** How often it is done, each time with these amounts; 1 when left out. */
  readonly rounds?: number;
  /** How long one round takes. */
  readonly time?: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  /** `gallon` where the salt is for each gallon of the water you need, and not for the recipe. */
  readonly each?: 'gallon';
}

export interface PickleRecipe {
  readonly recipe: string;
  /** Vegetables of the recipe made once, as printed. */
  readonly produce: string;
  readonly times: number;
  /** Covering liquid: vinegar of 5 % acetic acid. */
  readonly vinegar: Quantity<'volume'>;
  /** Covering liquid: water. */
  readonly water: Quantity<'volume'>;
  /** Covering liquid: bottled lemon juice, beside the vinegar and not in its place. */
  readonly lemonJuice?: Quantity<'volume'>;
  readonly oil?: Quantity<'volume'>;
  /** Covering liquid: canning or pickling salt. None where all the salt is drained. */
  readonly salt?: Quantity<'volume'>;
  /** Canning or pickling salt that goes into each jar of this size. */
  readonly saltEachJar?: { readonly salt: Quantity<'volume'>; readonly jar: string };
  readonly sugar?: Quantity<'volume'>;
  /** What is done to the vegetables first and drained, in order. */
  readonly drained?: readonly DrainedBefore[];
  /** Other parts of the recipe that touch its safety, made once: thickeners, prepared mustard. */
  readonly also?: readonly string[];
  /** Jars printed. */
  readonly yields?: { readonly low: number; readonly high: number; readonly jar: string };
  /** Acetic acid of vinegar and water together, before sugar and food. */
  readonly acetic: number;
  readonly note?: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

function drainedBefore(step: DrainedStep, by: number): DrainedBefore {
  const { time, each } = step;
  const scaled = (['salt', 'water', 'ice', 'vinegar', 'sugar'] as const).flatMap((key) => {
    const amount = step[key];
    return amount === undefined ? [] : [[key, each === undefined ? times(amount, by) : amount] as const];
  });
  return {
    what: step.what,
    ...Object.fromEntries(scaled),
    ...(step.rounds === undefined ? {} : { rounds: step.rounds }),
    ...(time === undefined
      ? {}
      : { time: { low: { value: time.low, unit: time.unit }, high: { value: time.high, unit: time.unit } } }),
    ...(each === undefined ? {} : { each }),
  };
}

/**
 * A printed pickle or relish recipe in whole batches: its covering liquid, and what is drained before it.
 *
 * Salt that draws water from the vegetables is drained, so it is in `drained` and never in the covering liquid. The
 * pages print no rule for scaling: `times` counts batches (1 to 4) that you cook and fill one by one. The fermented
 * dill pickles are printed for each gallon of crock and go by the gallon, up to 10.
 *
 * @param input.recipe - `"pickled beets"`, `"bread-and-butter pickles"`
 * @param input.times - how many batches; 1 when left out
 * @returns vinegar (5 %), water, salt and sugar as printed, times `times`; `acetic` of the liquid; `drained`
 * @throws StillroomError UNKNOWN_NAME, with the nearest names; OUT_OF_RANGE for `times`
 *
 * @example
 * ```ts
 * import { pickleRecipe } from 'stillroom/acid';
 *
 * pickleRecipe({ recipe: 'pickled beets', times: 2 }).vinegar; // => { value: 8, unit: 'cup' }
 * pickleRecipe({ recipe: 'quick sweet pickles' }).salt; // => undefined
 * pickleRecipe({ recipe: 'quick sweet pickles' }).drained[0].what; // => 'salt under ice'
 * pickleRecipe({ recipe: 'pickled beets', times: 50 }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function pickleRecipe(input: PickleRecipeInput): PickleRecipe {
  const { recipe, times: by = 1 } = readInput(recipeSchema, input);
  const row = recipeRow(recipe);
  checkTimes(row, by, input.times);
  const scaled = <K extends string>(key: K, quantity: Quantity<'volume'> | undefined) =>
    (quantity === undefined ? {} : { [key]: times(quantity, by) }) as { [P in K]?: Quantity<'volume'> };
  return answer({
    recipe: row.recipe,
    produce: row.produce,
    times: by,
    vinegar: cups(row.vinegarCups * by),
    water: cups(row.waterCups * by),
    ...scaled('lemonJuice', row.lemonJuiceCups === undefined ? undefined : cups(row.lemonJuiceCups)),
    ...scaled('oil', row.oilCups === undefined ? undefined : cups(row.oilCups)),
    ...scaled('salt', row.salt),
    ...(row.saltEachJar === undefined ? {} : { saltEachJar: row.saltEachJar }),
    ...scaled('sugar', row.sugar),
    ...(row.drained === undefined ? {} : { drained: row.drained.map((step) => drainedBefore(step, by)) }),
    ...(row.also === undefined ? {} : { also: row.also }),
    ...(row.yields === undefined
      ? {}
      : { yields: { low: row.yields.low * by, high: row.yields.high * by, jar: row.yields.jar } }),
    acetic: printedAcetic(row),
    ...(row.notes === undefined ? {} : { note: row.notes }),
    basis: [
      basisOf(row, 'quantities of the recipe'),
      ...(by === 1 ? [] : [{ of: 'how many batches', kind: 'common-practice' as const }]),
    ],
    cautions: [
      acidCaution('keep-the-proportions'),
      ...(row.batches.whole && by > 1 ? [acidCaution('batch-by-batch')] : []),
      ...(row.makes === 'ferment' ? [acidCaution('salt-guards-the-ferment')] : []),
      caution('follow-local-guidance'),
    ],
  });
}

const checkSchema = fields({
  recipe: name('a pickle recipe, such as "pickled beets"'),
  vinegar: volume(),
  acetic: share({ above: 0, max: 0.3 }),
  water: optional(volume({ min: { value: 0, unit: 'L' } })),
  lemonJuice: optional(volume({ min: { value: 0, unit: 'L' } })),
  times: timesField(),
});
export type CheckPickleLiquidInput = z.input<typeof checkSchema>;

export interface PickleLiquidCheck {
  readonly recipe: string;
  /**
   * `kept`: as printed. `stronger`: more acid, sourer and no less safe. `too weak`: diluted below the recipe.
   * `too much water`: more water to the vinegar than printed, even if strong vinegar makes up for it.
   * `too little lemon juice`: the recipe prints lemon juice beside the vinegar. `too little`: right proportions, but
   * less vinegar than `times` the recipe holds.
   */
  readonly verdict: 'kept' | 'stronger' | 'too weak' | 'too much water' | 'too little lemon juice' | 'too little';
  /** Acetic acid of vinegar and water together: printed and given. */
  readonly printedAcetic: number;
  readonly acetic: number;
  /** Water to vinegar by volume, as printed. */
  readonly printedWaterToVinegar: number;
  readonly waterToVinegar: number;
  /** Most water that this vinegar may have, whatever its strength. */
  readonly mostWater: Quantity<'volume'>;
  /** Least bottled lemon juice that goes with this vinegar, where the recipe prints some. */
  readonly leastLemonJuice?: Quantity<'volume'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Cups are measured to about this share. */
const MEASURING = 0.01;

/** Liquids of a check, in cups. */
interface Liquid {
  readonly vinegar: number;
  readonly water: number;
  readonly lemonJuice: number;
  readonly acetic: number;
  readonly times: number | undefined;
}

function verdictOn(row: RecipeRow, liquid: Liquid): PickleLiquidCheck['verdict'] {
  const { vinegar, water, lemonJuice, acetic } = liquid;
  const share = (vinegar * acetic) / (vinegar + water) / printedAcetic(row);
  if (share < 1 - MEASURING) return 'too weak';
  // strong vinegar buys no water: the recipe was tested with 5 % and with this much water
  if (water > (vinegar * row.waterCups * (1 + MEASURING)) / row.vinegarCups) return 'too much water';
  if (lemonJuice < (vinegar * (row.lemonJuiceCups ?? 0) * (1 - MEASURING)) / row.vinegarCups)
    return 'too little lemon juice';
  if (liquid.times !== undefined && vinegar < row.vinegarCups * liquid.times * (1 - MEASURING)) return 'too little';
  return share > 1 + MEASURING ? 'stronger' : 'kept';
}

/** Why a check is refused, whatever the amounts. */
function refusalOf(row: RecipeRow, acetic: number): Pick<Refusal, 'reason' | 'instead' | 'cautions'> | undefined {
  if (row.makes === 'ferment') {
    return {
      reason: `What keeps ${row.recipe} is their salt and the acid of the ferment; vinegar and water alone cannot be checked.`,
      instead: 'Take vinegar, water and salt from pickleRecipe, and check the salt with brineStrength.',
      cautions: [acidCaution('salt-guards-the-ferment'), caution('follow-local-guidance')],
    };
  }
  if (acetic < LEAST_ACETIC) {
    return {
      reason: `The vinegar is ${Number((acetic * 100).toPrecision(3))} % acetic acid. Tested pickles are made with ${LEAST_ACETIC * 100} %; weaker vinegar leaves the jars less acid than the recipe was tested at.`,
      instead: 'Use vinegar labelled 5 % (50 grain) and sold as food; keep this one for salads.',
      cautions: [acidCaution('vinegar-below-five'), acidCaution('low-acid-in-jars')],
    };
  }
  return undefined;
}

/**
 * Whether the vinegar and water you mean to use keep a printed recipe's proportions.
 *
 * Vinegar below 5 % acetic acid is refused: no other ratio makes up for it. Stronger vinegar counts as 5 %: it may have
 * no more water than printed, and none where the recipe prints none. Where the recipe prints lemon juice beside the
 * vinegar, both must be there.
 *
 * @param input.recipe - a printed recipe, as for `pickleRecipe`
 * @param input.vinegar - volume you mean to use
 * @param input.acetic - its strength from the label
 * @param input.water - volume of water; none when left out
 * @param input.lemonJuice - volume of bottled lemon juice; none when left out
 * @param input.times - how many batches it is for; left out, only the proportions are checked
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
  const { recipe, vinegar, acetic, water, lemonJuice, times: by } = readInput(checkSchema, input);
  const row = recipeRow(recipe);
  if (by !== undefined) checkTimes(row, by, input.times);
  const least = pickleRule('vinegar-acidity');
  const basis = [basisOf(row, 'vinegar and water of the recipe'), basisOf(least, 'least strength of vinegar')];
  const refused = refusalOf(row, acetic);
  if (refused !== undefined) return answer({ tested: false, ...refused, basis });
  const liquid = {
    vinegar: valueIn(vinegar, 'cup'),
    water: water === undefined ? 0 : valueIn(water, 'cup'),
    lemonJuice: lemonJuice === undefined ? 0 : valueIn(lemonJuice, 'cup'),
    acetic,
    times: by,
  };
  const withVinegar = (printedCups: number) =>
    quantityIn((liquid.vinegar * printedCups) / row.vinegarCups, 'cup', vinegar.unit);
  return answer({
    recipe: row.recipe,
    verdict: verdictOn(row, liquid),
    printedAcetic: printedAcetic(row),
    acetic: (liquid.vinegar * acetic) / (liquid.vinegar + liquid.water),
    printedWaterToVinegar: row.waterCups / row.vinegarCups,
    waterToVinegar: liquid.water / liquid.vinegar,
    mostWater: withVinegar(row.waterCups),
    ...(row.lemonJuiceCups === undefined ? {} : { leastLemonJuice: withVinegar(row.lemonJuiceCups) }),
    basis,
    cautions: [
      acidCaution('keep-the-proportions'),
      ...(acetic > LEAST_ACETIC * (1 + MEASURING) ? [acidCaution('stronger-vinegar')] : []),
      caution('follow-local-guidance'),
    ],
  });
}

/** The names of the printed pickle and relish recipes. */
export function pickleRecipes(): readonly string[] {
  return answer(RECIPES.map(({ recipe }) => recipe));
}
