import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, number, optional, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import { type Instead, type NotKnown, notKnown } from '../sources/no';
import { count } from '../words/count';
import { oneOf } from './inputs';
import { batchOf, cupsOf, findJam, type JamBatch, jamBasis, noJam, recipeFields, type Volumes } from './jamRecipe';
import { type RecipeRow, recipeCautions } from './jamRecipes';
import { juiceAtATime, potBasis } from './potRules';

const schema = fields({
  ...recipeFields,
  /** How many times the recipe in one pot: above 0 and at most 1,000; or */
  times: optional(number('how many times the recipe in one pot: above 0 and at most 1,000', { above: 0, max: 1000 })),
  /** half-pints you want, 1 to 10,000, in as many separate batches as they take. */
  halfPints: optional(count('half-pints wanted', 1, 10_000)),
});
export type ScaleJamRecipeInput = z.input<typeof schema>;
export interface ScaledJamRecipe {
  /** Pots to cook, one after another. */
  readonly batches: number;
  /** What goes into each. */
  readonly batch: JamBatch;
  /** Fruit and sugar for all of them. */
  readonly total: { readonly fruit: Volumes; readonly sugar: Volumes };
  /** Where the recipe comes from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** Why an amount is refused, and what to do. */
interface No {
  readonly code: string;
  readonly text: string;
  readonly instead: string | readonly Instead[];
}
interface Pots {
  readonly batches: number;
  readonly times: number;
}

/** How often the recipe goes into one pot. */
function inOnePot(row: RecipeRow, times: number): Pots | No {
  if (row.pectin === 'none' && row.product === 'jelly') {
    const juice = row.fruit[1] * times;
    const { low, high } = juiceAtATime();
    if (juice <= high * (1 + 1e-12)) return { batches: 1, times };
    return {
      code: 'too-much-juice',
      text: `${Number(juice.toFixed(2))} cups of juice are more than the ${low} to ${high} that set reliably in one pot: a longer boil breaks the pectin down.`,
      instead: `Cook ${Math.ceil(juice / high)} separate batches.`,
    };
  }
  if (times === 1) return { batches: 1, times: 1 };
  if (times > 1) {
    return {
      code: 'larger-batch',
      text: 'A larger batch boils longer before it sets, and long boiling breaks pectin down.',
      instead: `Cook ${Math.ceil(times)} separate batches.`,
    };
  }
  if (row.pectin === 'none') return { batches: 1, times };
  return {
    code: 'part-of-a-packet',
    text: 'A packet of pectin is made for the whole printed batch.',
    instead: 'Cook the whole batch, or a recipe without added pectin.',
  };
}

/** The pots that an amount takes. */
function potsFor(row: RecipeRow, times: number | undefined, halfPints: number | undefined): Pots | No {
  if (row.obtained === 'memory') {
    return {
      code: 'recalled',
      text: 'This recipe was recalled and not read in a copy.',
      instead: 'Read the printed recipe first, or take another.',
    };
  }
  if (row.quantitiesDisagree === true) {
    return {
      code: 'amounts-disagree',
      text: "The copy's quantities and its yield contradict each other.",
      instead: 'Take another recipe for this fruit.',
    };
  }
  if (times !== undefined) return inOnePot(row, times);
  if (row.halfPints === undefined) {
    return {
      code: 'no-yield',
      text: 'These tables hold no yield for this recipe.',
      instead: 'Give the number of batches, one pot each.',
    };
  }
  return { batches: Math.ceil((halfPints as number) / row.halfPints[0]), times: 1 };
}

/**
 * A printed recipe for another amount: as many separate batches as it takes, never a bigger pot than sets.
 *
 * Juice for jelly without added pectin may be cooked up to 8 cups at a time (Guide 7: 6 to 8), and less of it than the
 * recipe is no harm. Cook every other recipe as it is printed: a bigger batch boils longer before it sets, which
 * breaks pectin down, and a packet of pectin is made for the printed weight of fruit and sugar. Beyond that the answer
 * says no, with its reason. Recipes recalled and not seen are not scaled.
 *
 * @param input - the recipe as in `jamRecipe`, and `times` or `halfPints`
 * @returns the batches, or `known: false`
 * @throws StillroomError UNKNOWN_NAME, MISSING, CONTRADICTION
 *
 * @example
 * ```ts
 * import { scaleJamRecipe } from 'stillroom/sugar';
 *
 * 'batches' in scaleJamRecipe({ food: 'strawberry', product: 'jam', pectin: 'powdered', times: 2 }); // => false
 * const peach = scaleJamRecipe({ food: 'peach', product: 'jam', pectin: 'none', halfPints: 20 });
 * 'batches' in peach && peach.batches; // => 4
 * ```
 */
export function scaleJamRecipe(input: ScaleJamRecipeInput): ScaledJamRecipe | NotKnown {
  const given = readInput(schema, input);
  oneOf(given, ['times', 'halfPints']);
  const row = findJam(given);
  if (row === undefined) return answer(noJam(given));
  const cautions = recipeCautions(row);
  const pots = potsFor(row, given.times, given.halfPints);
  if ('code' in pots) return answer(notKnown({ ...pots, basis: [jamBasis(row, 'reason', given)], cautions }));
  const { batches, times } = pots;
  return answer({
    batches,
    batch: batchOf(row, times),
    total: { fruit: cupsOf(row.fruit, times * batches), sugar: cupsOf(row.sugar, times * batches) },
    basis: [jamBasis(row, 'batch', given), potBasis('juice-at-a-time-high', 'batches')],
    cautions,
  });
}
