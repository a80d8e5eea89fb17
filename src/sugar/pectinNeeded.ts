import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food as foodField, form as formField } from '../foods/fields';
import { formName } from '../foods/tables';
import { fields, number, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { NotKnown } from '../sources/no';
import { mass as massWord } from '../words/mass';
import { ready as readyWord } from '../words/ready';
import { sugarCaution } from './cautions';
import { oneOf } from './inputs';
import { type FruitComposition, type ListedPectin, noPectin, type PectinGroup, pectinKnown } from './pectinOf';
import { potBasis } from './potRules';

const grade = (what: string) => number(`${what}: grams of sugar set by a gram, 1 to 1,000`, { min: 1, max: 1000 });
const schema = fields({
  /** Grade of the pectin at hand, 1 to 1,000: grams of sugar set by a gram of it; 100 and 150 are usual. */
  grade: optional(grade('the grade of the pectin')),
  /** The sugar to set; or */
  sugar: optional(massWord()),
  /** the pectin that a recipe asks for. */
  inPlaceOf: optional(
    fields({
      /** How much pectin. */
      dose: massWord(),
      /** Its grade, 1 to 1,000. */
      grade: grade('the grade of the recipe'),
    }),
  ),
  /** The whole mix, for its setting strength. */
  mass: optional(massWord()),
  /** The fruit, by any name, for its group and for what pectin it brings: `quinces`, `tart apples`. */
  food: optional(foodField()),
  /** Its ripeness or form, where it matters: `ripe`, `underripe`, `juice`. */
  form: optional(formField()),
  /** The mass of the fruit, with `food`. */
  ready: optional(readyWord()),
});
export type PectinNeededInput = z.input<typeof schema>;
export interface PectinNeeded {
  /** With `grade`: the full dose of the pectin at hand, as if the fruit brought none. */
  readonly dose?: Quantity<'mass'>;
  /** With `mass`: setting strength in SAG, grade times share of pectin; some 5 makes a good gel. */
  readonly sag?: number;
  /** With `food` and `ready`: what the fruit itself brings, on average, as calcium pectate. */
  readonly fromFruit?: Quantity<'mass'>;
  /** With `food`: its trade name. */
  readonly food?: string;
  /**
   * With `food`: 1: enough pectin and acid by itself; 2: may lack one; 3: always lacks one or both. Where the name covers
   * kinds of different groups, that of the kind that needs most. Absent where the list does not name the fruit.
   */
  readonly group?: PectinGroup;
  /** With `food`: what a jelly of it needs besides sugar. */
  readonly jellyNeeds?: string;
  /** With `food`: every line of the list behind the group, the one that needs most first. */
  readonly lines?: readonly ListedPectin[];
  /** With `food`: its average composition where it was analyzed. */
  readonly composition?: FruitComposition;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * What pectin a jelly or jam needs: how much the fruit brings, and so what else it needs besides sugar; how much pectin
 * of a grade sets an amount of sugar, or replaces a recipe's pectin of another grade; and how strongly it sets.
 *
 * Formula: dose = sugar / grade (a 100-grade pectin sets 100 times its weight of sugar as a jelly of 65 % solids); in
 * place of a recipe's, dose = recipe's dose x its grade / grade. SAG = grade x dose / whole mix: 30 g of 150-grade
 * pectin in 900 g is 5.
 *
 * That is the full dose. A fruit of group 1 that is not overripe brings enough; how much of the dose a fruit of group
 * 2 needs, only a test of its juice can say (`jelly`). The fruit's own pectin is an average of analyses, of another
 * quality than the graded one, and is shown, not deducted. A name that covers several kinds (apple: tart or ripe) is
 * answered for the kind that needs most; `lines` has them all.
 *
 * Sources: Lowe, Experimental Cookery; Toledo, Fundamentals of Food Process Engineering; Practical Action, technical
 * brief on jams, p. 6; pectin and acid table of So Easy to Preserve (University of Georgia); Belitz et al., Food
 * Chemistry, Table 18.3 (pectin as calcium pectate); grapefruit pulp Baker 1997.
 *
 * @param input - `food` (with its `form`), or the `grade` of the pectin at hand with `sugar` or `inPlaceOf` a recipe's, or both
 * @returns `group`, `jellyNeeds` and `composition` of the fruit; `dose` in the unit of the sugar or of the recipe's dose; or
 *   `known: false` for a food in no table
 * @throws StillroomError OUT_OF_RANGE; MISSING, CONTRADICTION; UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { pectinNeeded } from 'stillroom/sugar';
 *
 * pectinNeeded({ food: 'quinces' }).group; // => 1
 * pectinNeeded({ food: 'black currants' }).composition.pectinShare; // => 0.017
 * pectinNeeded({ sugar: '55 kg', grade: 150 }).dose.value; // ≈ 0.3667
 * const other = pectinNeeded({ inPlaceOf: { dose: '50 g', grade: 150 }, grade: 100, mass: '1.5 kg' });
 * other.dose; // => { value: 75, unit: 'g' }
 * other.sag; // => 5
 * ```
 */
export function pectinNeeded(input: PectinNeededInput): PectinNeeded | NotKnown {
  const given = readInput(schema, input);
  const { food, ready, mass } = given;
  if (ready !== undefined && food === undefined) fail('MISSING', 'food', undefined, 'the fruit that is weighed');
  if (given.form !== undefined && food === undefined) fail('MISSING', 'food', undefined, 'the fruit of this form');
  const dosed = doseOf(given, input);
  const known = food === undefined ? undefined : pectinKnown(food, formOf(food, given.form, input));
  if (food !== undefined && known === undefined) return answer(noPectin(food.name));
  const share = known?.composition.pectinShare;
  const fromFruit =
    ready === undefined || share === undefined
      ? undefined
      : quantityIn<'mass'>(valueIn(ready, 'g') * share, 'g', dosed?.dose.unit ?? ready.unit);
  const { basis = [], ...fruit } = known ?? {};
  return answer({
    ...(dosed === undefined ? {} : { dose: dosed.dose }),
    ...(dosed === undefined || mass === undefined
      ? {}
      : { sag: (valueIn(dosed.dose, 'g') * dosed.grade) / valueIn(mass, 'g') }),
    ...(fromFruit === undefined ? {} : { fromFruit }),
    ...fruit,
    basis: [
      ...(dosed?.basis ?? []),
      ...(mass === undefined ? [] : [potBasis('sag', 'sag')]),
      ...basis,
      ...(fromFruit === undefined
        ? []
        : basis.filter(({ of }) => of === 'composition').map((line) => ({ ...line, of: 'fromFruit' }))),
    ],
    cautions: [
      ...(known === undefined ? [] : [sugarCaution('overripe-sets-less')]),
      ...(dosed === undefined && fromFruit === undefined ? [] : [caution('estimate')]),
    ],
  });
}

/** One form: that of the name, or that beside it. */
function formOf(food: FoundFood, asked: string | undefined, input: PectinNeededInput): string | undefined {
  if (asked !== undefined && food.form !== undefined && asked !== food.form) {
    fail('CONTRADICTION', 'form', input.form, `one form: ${input.food} is ${formName(food.form)}`);
  }
  return asked ?? food.form;
}

/** The pectin at hand that sets the sugar or replaces the recipe's; nothing where only a fruit is asked about. */
function doseOf(given: z.output<typeof schema>, input: PectinNeededInput) {
  const { food, grade, sugar, inPlaceOf: recipe, mass } = given;
  if (grade === undefined) {
    const other = sugar ?? recipe ?? mass;
    if (other !== undefined) fail('MISSING', 'grade', undefined, 'the grade of the pectin at hand, such as 150');
    if (food === undefined)
      fail('MISSING', 'food', input.food, 'a fruit, or the grade of the pectin with the sugar to set');
    return undefined;
  }
  oneOf(given, ['sugar', 'inPlaceOf']);
  const dose: Quantity<'mass'> =
    recipe === undefined
      ? { value: (sugar as Quantity<'mass'>).value / grade, unit: (sugar as Quantity<'mass'>).unit }
      : { value: (recipe.dose.value * recipe.grade) / grade, unit: recipe.dose.unit };
  return {
    dose,
    grade,
    basis: [potBasis('pectin-grade', 'dose'), ...(recipe === undefined ? [potBasis('pectin-dose', 'dose')] : [])],
  };
}
