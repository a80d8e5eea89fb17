import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, name, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NoDetails, type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { otherShare } from '../words/shares';
import { volume } from '../words/volume';
import { checkTimes, printedAcetic, recipeNamed, timesField } from './recipes';
import { acidCaution, LEAST_ACETIC, pickleRule, type RecipeRow } from './tables';

const liquid = () => volume({ min: { value: 0, unit: 'L' } });
const schema = fields({
  /** A pickle recipe by name, such as `pickled beets`. */
  recipe: name('a pickle recipe, such as "pickled beets"'),
  /** Volume of vinegar you mean to use. */
  vinegar: volume(),
  /** Its strength from the label: above 0 and at most 0.3, or text in percent. */
  acetic: otherShare('acetic', 'Acetic acid of a vinegar as on its label: grams in 100 mL.', { above: 0, max: 0.3 }),
  /** Volume of water; none when left out. */
  water: optional(liquid()),
  /** Volume of bottled lemon juice; none when left out. */
  lemonJuice: optional(liquid()),
  /** How many batches it is for; left out, only the proportions are checked. */
  times: timesField(),
});
export type CheckPickleLiquidInput = z.input<typeof schema>;

export interface PickleLiquidCheck {
  /** Name of the recipe. */
  readonly recipe: string;
  /**
   * `kept`: as printed. `stronger`: more acid, sourer and no less safe. `too weak`: diluted below the recipe.
   * `too much water`: more water to the vinegar than printed, even if strong vinegar makes up for it.
   * `too little lemon juice`: the recipe prints lemon juice as well as vinegar. `too little`: right proportions, but
   * less vinegar than `times` the recipe holds.
   */
  readonly verdict: 'kept' | 'stronger' | 'too weak' | 'too much water' | 'too little lemon juice' | 'too little';
  /** Acetic acid of vinegar and water together, as printed: a share. */
  readonly printedAcetic: number;
  /** The same of your vinegar and water. */
  readonly acetic: number;
  /** Parts of water to one of vinegar by volume, as printed. */
  readonly printedWaterToVinegar: number;
  /** The same of your vinegar and water. */
  readonly waterToVinegar: number;
  /** The most water that this vinegar may have, however strong it is. */
  readonly mostWater: Quantity<'volume'>;
  /** Least bottled lemon juice that goes with this vinegar, where the recipe prints some. */
  readonly leastLemonJuice?: Quantity<'volume'>;
  /** Where the recipe comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
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

/** Why a check is refused, for any amounts. */
function refusalOf(row: RecipeRow, acetic: number): Omit<NoDetails, 'basis'> | undefined {
  if (row.makes === 'ferment') {
    return {
      code: 'a-ferment',
      text: `What keeps ${row.recipe} is their salt and the acid of the ferment; vinegar and water alone cannot be checked.`,
      instead: 'Take vinegar, water and salt from pickleRecipe, and check the salt with brine.',
      cautions: [acidCaution('salt-guards-the-ferment'), caution('follow-local-guidance')],
    };
  }
  if (acetic < LEAST_ACETIC) {
    return {
      code: 'weak-vinegar',
      text: `The vinegar is ${Number((acetic * 100).toPrecision(3))} % acetic acid. Tested pickles are made with ${LEAST_ACETIC * 100} %; weaker vinegar leaves the jars less acid than the recipe was tested at.`,
      instead: 'Use vinegar labeled 5 % (50 grain) and sold as food; keep this one for salads.',
      cautions: [acidCaution('vinegar-below-five'), acidCaution('low-acid-in-jars')],
    };
  }
  return undefined;
}

/**
 * Whether the vinegar and water you mean to use keep a printed recipe's proportions.
 *
 * Vinegar below 5 % acetic acid is refused: no other proportion makes up for it. Stronger vinegar counts as 5 %: it may have
 * no more water than printed, and none where the recipe prints none. Where the recipe prints lemon juice as well as
 * vinegar, both must be there.
 *
 * @returns `verdict`, and the most water this vinegar may have, in the unit of `vinegar`; or `known: false`
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
export function checkPickleLiquid(input: CheckPickleLiquidInput): PickleLiquidCheck | NotKnown {
  const { recipe, vinegar, acetic, water, lemonJuice, times: by } = readInput(schema, input);
  const row = recipeNamed(recipe);
  if (by !== undefined) checkTimes(row, by, input.times);
  const least = pickleRule('vinegar-acidity');
  const refused = refusalOf(row, acetic);
  if (refused !== undefined) {
    const basis = [basisOf(row, 'reason', 'the recipe'), basisOf(least, 'reason', 'least strength of vinegar')];
    return answer(notKnown({ ...refused, basis }));
  }
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
    basis: [
      basisOf(row, 'printedAcetic', 'vinegar and water of the recipe'),
      basisOf(least, 'verdict', 'least strength of vinegar'),
    ],
    cautions: [
      acidCaution('keep-the-proportions'),
      ...(acetic > LEAST_ACETIC * (1 + MEASURING) ? [acidCaution('stronger-vinegar')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
