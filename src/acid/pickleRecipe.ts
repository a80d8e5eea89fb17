import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, name, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf, practiceBasis } from '../sources/table';
import { checkTimes, printedAcetic, recipeNamed, timesField } from './recipes';
import { acidCaution, type DrainedStep } from './tables';

const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
const times = (quantity: Quantity<'volume'>, by: number): Quantity<'volume'> => ({
  value: quantity.value * by,
  unit: quantity.unit,
});

const schema = fields({
  /** A pickle recipe by name, such as `pickled beets`. */
  recipe: name('a pickle recipe, such as "pickled beets"'),
  /** How many times the recipe: whole batches, 1 to 4; the fermented pickles by the gallon, up to 10. 1 when left out. */
  times: timesField(),
});
export type PickleRecipeInput = z.input<typeof schema>;

/** What is done to the vegetables first. Its liquid is drained: none of it belongs to the covering liquid. */
export interface DrainedFirst extends Omit<DrainedStep, 'time'> {
  /** How long one round takes. */
  readonly time?: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
}

export interface PickleRecipe {
  /** Name of the recipe. */
  readonly recipe: string;
  /** Vegetables of the recipe made once, as printed. */
  readonly vegetables: string;
  /** How many times the recipe. */
  readonly times: number;
  /** Covering liquid: vinegar of 5 % acetic acid. */
  readonly vinegar: Quantity<'volume'>;
  /** Covering liquid: water. */
  readonly water: Quantity<'volume'>;
  /** Covering liquid: bottled lemon juice, as well as the vinegar, not instead of it. */
  readonly lemonJuice?: Quantity<'volume'>;
  /** Covering liquid: oil. */
  readonly oil?: Quantity<'volume'>;
  /** Covering liquid: canning or pickling salt. None where all the salt is drained. */
  readonly salt?: Quantity<'volume'>;
  /** Canning or pickling salt that goes into each jar of this size. */
  readonly saltEachJar?: { readonly salt: Quantity<'volume'>; readonly jar: string };
  /** Covering liquid: sugar. */
  readonly sugar?: Quantity<'volume'>;
  /** What is done to the vegetables first and drained, in order. */
  readonly drained?: readonly DrainedFirst[];
  /** Other parts of the recipe that touch its safety, made once: thickeners, prepared mustard. */
  readonly also?: readonly string[];
  /** Jars printed. */
  readonly yields?: { readonly low: number; readonly high: number; readonly jar: string };
  /** Acetic acid of vinegar and water together, before sugar and food. */
  readonly acetic: number;
  /** What else the page says of the amounts. */
  readonly note?: string;
  /** Where the recipe comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** A step with its amounts multiplied by the number of batches; amounts for a measure of water stay. */
function drainedFirst({ time, ...step }: DrainedStep, by: number): DrainedFirst {
  const scaled = (['salt', 'water', 'ice', 'vinegar', 'sugar'] as const).flatMap((key) => {
    const amount = step[key];
    return amount === undefined || step.each !== undefined ? [] : [[key, times(amount, by)] as const];
  });
  return {
    ...step,
    ...Object.fromEntries(scaled),
    ...(time === undefined
      ? {}
      : { time: { low: { value: time.low, unit: time.unit }, high: { value: time.high, unit: time.unit } } }),
  };
}

/**
 * A printed pickle or relish recipe in whole batches: its covering liquid, and what is drained before it.
 *
 * Salt that draws water from the vegetables is drained, so it is in `drained` and never in the covering liquid. The
 * pages print no rule for scaling: `times` counts batches (1 to 4) that you cook and fill one by one. The fermented
 * dill pickles are printed for each gallon of crock and go by the gallon, up to 10.
 *
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
  const { recipe, times: by = 1 } = readInput(schema, input);
  const row = recipeNamed(recipe);
  checkTimes(row, by, input.times);
  const scaled = <K extends string>(key: K, quantity: Quantity<'volume'> | undefined) =>
    (quantity === undefined ? {} : { [key]: times(quantity, by) }) as { [P in K]?: Quantity<'volume'> };
  return answer({
    recipe: row.recipe,
    vegetables: row.vegetables,
    times: by,
    vinegar: cups(row.vinegarCups * by),
    water: cups(row.waterCups * by),
    ...scaled('lemonJuice', row.lemonJuiceCups === undefined ? undefined : cups(row.lemonJuiceCups)),
    ...scaled('oil', row.oilCups === undefined ? undefined : cups(row.oilCups)),
    ...scaled('salt', row.salt),
    ...(row.saltEachJar === undefined ? {} : { saltEachJar: row.saltEachJar }),
    ...scaled('sugar', row.sugar),
    ...(row.drained === undefined ? {} : { drained: row.drained.map((step) => drainedFirst(step, by)) }),
    ...(row.also === undefined ? {} : { also: row.also }),
    ...(row.yields === undefined
      ? {}
      : { yields: { low: row.yields.low * by, high: row.yields.high * by, jar: row.yields.jar } }),
    acetic: printedAcetic(row),
    ...(row.notes === undefined ? {} : { note: row.notes }),
    basis: [
      basisOf(row, 'vinegar', 'amounts of the recipe'),
      ...(by === 1 ? [] : [practiceBasis('times', 'how many batches a kitchen cooks in a day')]),
    ],
    cautions: [
      acidCaution('keep-the-proportions'),
      ...(row.batches.whole && by > 1 ? [acidCaution('batch-by-batch')] : []),
      ...(row.makes === 'ferment' ? [acidCaution('salt-guards-the-ferment')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
