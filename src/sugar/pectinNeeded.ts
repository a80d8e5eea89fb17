import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { food as foodField } from '../foods/fields';
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
import { noPectin, type PectinGroup, pectinKnown } from './pectinOf';
import { potBasis } from './potRules';

const grade = (what: string) => number(`${what}: grams of sugar set by a gram, 1 to 1,000`, { min: 1, max: 1000 });
const schema = fields({
  /** Grade of the pectin at hand, 1 to 1,000: grams of sugar set by a gram of it; 100 and 150 are usual. */
  grade: grade('the grade of the pectin'),
  /** The sugar to set; or */
  sugar: optional(massWord()),
  /** the pectin that a recipe asks for. */
  recipe: optional(
    fields({
      /** How much pectin. */
      pectin: massWord(),
      /** Its grade, 1 to 1,000. */
      grade: grade('the grade of the recipe'),
    }),
  ),
  /** The whole mix, for its setting strength. */
  mass: optional(massWord()),
  /** The fruit, for its group and for what pectin it may bring. */
  food: optional(foodField()),
  /** The mass of the fruit, with `food`. */
  ready: optional(readyWord()),
});
export type PectinNeededInput = z.input<typeof schema>;
export interface PectinNeeded {
  /** The full dose of the pectin at hand, as if the fruit brought none. */
  readonly pectin: Quantity<'mass'>;
  /** With `mass`: setting strength in SAG, grade times share of pectin; some 5 makes a good gel. */
  readonly sag?: number;
  /** With `food` and `ready`: what the fruit itself brings, on average, as calcium pectate. */
  readonly fromFruit?: Quantity<'mass'>;
  /** With `food`: its group, 1 to 3 (see `pectinOf`). */
  readonly group?: PectinGroup;
  /** With `food`: what a jelly of it needs besides sugar. */
  readonly needs?: string;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * How much pectin of a grade sets an amount of sugar, or replaces a recipe's pectin of another grade; and how
 * strongly it sets.
 *
 * Formula: pectin = sugar / grade (a 100-grade pectin sets 100 times its weight of sugar as a jelly of 65 % solids);
 * in place of a recipe's, pectin = recipe's pectin x its grade / grade. SAG = grade x pectin / whole mix: 30 g of
 * 150-grade pectin in 900 g is 5.
 *
 * That is the full dose. A fruit of group 1 that is not overripe brings enough; how much of the dose a fruit of group
 * 2 needs, only a test of its juice can say (`jelly`). The fruit's own pectin is an average of analyses, of another
 * quality than the graded one, and is shown, not deducted.
 *
 * Sources: Lowe, Experimental Cookery; Toledo, Fundamentals of Food Process Engineering; Practical Action, technical
 * brief on jams, p. 6.
 *
 * @param input - `grade` of the pectin at hand: 1 to 1,000; `sugar`, or `recipe` with its `pectin` and `grade`;
 * `mass` of the whole mix, `food` and `ready`: optional
 * @returns `pectin` in the unit of the sugar or of the recipe's pectin; or `known: false` for a fruit in no table
 * @throws StillroomError OUT_OF_RANGE; MISSING, CONTRADICTION; UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { pectinNeeded } from 'stillroom/sugar';
 *
 * const dose = pectinNeeded({ sugar: '55 kg', grade: 150 });
 * 'pectin' in dose && dose.pectin.value; // ≈ 0.3667
 * const other = pectinNeeded({ recipe: { pectin: '50 g', grade: 150 }, grade: 100, mass: '1.5 kg' });
 * 'pectin' in other && other.pectin; // => { value: 75, unit: 'g' }
 * 'pectin' in other && other.sag; // => 5
 * ```
 */
export function pectinNeeded(input: PectinNeededInput): PectinNeeded | NotKnown {
  const given = readInput(schema, input);
  const { food, ready, sugar, recipe, mass } = given;
  oneOf(given, ['sugar', 'recipe']);
  if (ready !== undefined && food === undefined) fail('MISSING', 'food', undefined, 'the fruit that is weighed');
  const known = food === undefined ? undefined : pectinKnown(food, food.form);
  if (food !== undefined && known === undefined) return answer(noPectin(food.name));
  const pectin: Quantity<'mass'> =
    recipe === undefined
      ? { value: (sugar as Quantity<'mass'>).value / given.grade, unit: (sugar as Quantity<'mass'>).unit }
      : { value: (recipe.pectin.value * recipe.grade) / given.grade, unit: recipe.pectin.unit };
  const share = known?.composition.pectin;
  return answer({
    pectin,
    ...(mass === undefined ? {} : { sag: (valueIn(pectin, 'g') * given.grade) / valueIn(mass, 'g') }),
    ...(ready === undefined || share === undefined
      ? {}
      : { fromFruit: quantityIn<'mass'>(valueIn(ready, 'g') * share, 'g', pectin.unit) }),
    ...(known?.group === undefined ? {} : { group: known.group, needs: known.needs as string }),
    basis: [
      potBasis('pectin-grade', 'pectin'),
      ...(recipe === undefined ? [potBasis('pectin-dose', 'pectin')] : []),
      ...(mass === undefined ? [] : [potBasis('sag', 'sag')]),
      ...(known?.basis ?? []).flatMap((line) =>
        line.of === 'group'
          ? [line]
          : ready !== undefined && share !== undefined && line.of === 'composition'
            ? [{ ...line, of: 'fromFruit' }]
            : [],
      ),
    ],
    cautions: [...(known === undefined ? [] : [sugarCaution('overripe-sets-less')]), caution('estimate')],
  });
}
