import type * as z from 'zod/mini';
import { acidCaution, LEAST_ACETIC, pickleRule } from '../acid/tables';
import { answer } from '../common/answer';
import { fields, number, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NoDetails, type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { otherShare } from '../words/shares';
import { volume } from '../words/volume';
import { type CoveringLiquid, coveringLiquid } from './coveringLiquid';
import { recipeField } from './recipe';
import { pageOf } from './rows/rows';
import type { RecipeRow } from './rows/tables';
import { sizeOf } from './scale';

const liquid = () => volume({ min: { value: 0, unit: 'L' } });
const schema = /* @__PURE__ */ fields({
  /** The recipe: its id or a name, such as `pickled beets`. */
  recipe: recipeField(),
  /** Volume of vinegar you mean to use. */
  vinegar: volume(),
  /** Its strength from the label: above 0 and at most 0.3, or text in percent. */
  acetic: otherShare('acetic', 'Acetic acid of a vinegar as on its label: grams in 100 mL.', { above: 0, max: 0.3 }),
  /** Volume of water; none when left out. */
  waterVolume: optional(liquid()),
  /** Volume of bottled lemon juice; none when left out. */
  lemonJuice: optional(liquid()),
  /** How many batches it is for, as in `recipe`; left out, only the proportions are checked. */
  batches: optional(number('batches, above 0', { above: 0, max: 1000 })),
});
export type CheckPickleLiquidInput = z.input<typeof schema>;

export interface PickleLiquidCheck {
  /** Fixed name of the recipe. */
  readonly recipe: string;
  /** What its page calls it. */
  readonly name: string;
  /**
   * `kept`: as printed. `stronger`: more acid, sourer and no less safe. `too weak`: diluted below the recipe.
   * `too much water`: more water to the vinegar than printed, even if strong vinegar makes up for it.
   * `too little lemon juice`: the recipe prints lemon juice as well as vinegar. `too little`: right proportions, but
   * less vinegar than the batches hold.
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
interface Liquid extends Omit<CoveringLiquid, 'acetic'> {
  readonly acetic: number;
  readonly batches: number | undefined;
}

/** Acetic acid of the printed vinegar and water together, a share. */
const printedShare = ({ vinegar, water, acetic = LEAST_ACETIC }: CoveringLiquid): number =>
  (vinegar * acetic) / (vinegar + water);

function verdictOn(printed: CoveringLiquid, liquid: Liquid): PickleLiquidCheck['verdict'] {
  const { vinegar, water, lemonJuice, acetic } = liquid;
  const share = (vinegar * acetic) / (vinegar + water) / printedShare(printed);
  if (share < 1 - MEASURING) return 'too weak';
  // strong vinegar buys no water: the recipe was tested with 5 % and with this much water
  if (water > (vinegar * printed.water * (1 + MEASURING)) / printed.vinegar) return 'too much water';
  if (lemonJuice < (vinegar * printed.lemonJuice * (1 - MEASURING)) / printed.vinegar) return 'too little lemon juice';
  if (liquid.batches !== undefined && vinegar < printed.vinegar * liquid.batches * (1 - MEASURING)) return 'too little';
  return share > 1 + MEASURING ? 'stronger' : 'kept';
}

/** Why a check is refused, for any amounts. */
function refusalOf(
  row: RecipeRow,
  printed: CoveringLiquid | undefined,
  acetic: number,
): Omit<NoDetails, 'basis'> | undefined {
  if (row.makes === 'ferment') {
    return {
      code: 'a-ferment',
      text: `What keeps ${row.name} is their salt and the acid of the ferment; vinegar and water alone cannot be checked.`,
      instead: 'Take vinegar, water and salt from recipe, and check the salt with brine.',
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
  if (printed === undefined) {
    return {
      code: 'no-vinegar',
      text: `These tables hold no amount of vinegar for ${row.name}. Where the acid is bottled lemon or lime juice, vinegar does not take its place: it is weaker.`,
      instead: 'Take the acid that `recipe` names for it, all of it.',
      cautions: [acidCaution('keep-the-proportions'), caution('follow-local-guidance')],
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
 * import { checkPickleLiquid } from 'stillroom/recipes';
 *
 * const check = checkPickleLiquid({ recipe: 'pickled beets', vinegar: '4 cups', acetic: '5 %', waterVolume: '3 cups' });
 * 'verdict' in check && check.verdict; // => 'too weak'
 * 'verdict' in checkPickleLiquid({ recipe: 'pickled beets', vinegar: '4 cups', acetic: '4 %' }); // => false
 * ```
 */
export function checkPickleLiquid(input: CheckPickleLiquidInput): PickleLiquidCheck | NotKnown {
  const { recipe: row, vinegar, acetic, waterVolume: water, lemonJuice, batches } = readInput(schema, input);
  if (batches !== undefined) sizeOf(row, batches, 'batches');
  const least = pickleRule('vinegar-acidity');
  const printed = coveringLiquid(row);
  const refused = refusalOf(row, printed, acetic);
  if (refused !== undefined || printed === undefined) {
    const basis = [pageOf(row, 'reason', 'the recipe'), basisOf(least, 'reason', 'least strength of vinegar')];
    return answer(notKnown({ ...(refused as Omit<NoDetails, 'basis'>), basis }));
  }
  const liquid = {
    vinegar: valueIn(vinegar, 'cup'),
    water: water === undefined ? 0 : valueIn(water, 'cup'),
    lemonJuice: lemonJuice === undefined ? 0 : valueIn(lemonJuice, 'cup'),
    acetic,
    batches,
  };
  const withVinegar = (printedCups: number) =>
    quantityIn((liquid.vinegar * printedCups) / printed.vinegar, 'cup', vinegar.unit);
  return answer({
    recipe: row.id,
    name: row.name,
    verdict: verdictOn(printed, liquid),
    printedAcetic: printedShare(printed),
    acetic: (liquid.vinegar * acetic) / (liquid.vinegar + liquid.water),
    printedWaterToVinegar: printed.water / printed.vinegar,
    waterToVinegar: liquid.water / liquid.vinegar,
    mostWater: withVinegar(printed.water),
    ...(printed.lemonJuice === 0 ? {} : { leastLemonJuice: withVinegar(printed.lemonJuice) }),
    basis: [
      pageOf(row, 'printedAcetic', 'vinegar and water of the recipe'),
      basisOf(least, 'verdict', 'least strength of vinegar'),
    ],
    cautions: [
      acidCaution('keep-the-proportions'),
      ...(acetic > LEAST_ACETIC * (1 + MEASURING) ? [acidCaution('stronger-vinegar')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
