import { answer } from '../common/answer';
import { fields, mass, name, number, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { MassInput, Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { massBalance } from './inputs';
import { pectinClass, pectinRows } from './pectinClass';

const grade = (what: string) => number(`${what}: grams of sugar set by a gram, 1 to 1,000`, { min: 1, max: 1000 });
/** Grade: grams of sugar that a gram of pectin sets as a standard jelly of 65 % solids. */
const gradeBasis = (what: string): Basis => ({
  of: what,
  kind: 'published',
  source: 'lowe',
  locator: 'chapter on jelly: pectin grade',
  seen: 'reproduction',
});
const batchBasis = (what: string): Basis => ({
  of: what,
  kind: 'published',
  source: 'toledo',
  locator: 'chapter 3, fruit preserves: 1 kg of 100-grade pectin for 100 kg of sugar',
  seen: 'reproduction',
});

const schema = fields({
  sugar: mass(),
  grade: grade('the grade of the pectin'),
  fruitName: optional(name('a fruit')),
  fruit: optional(mass()),
});
export interface PectinNeededInput {
  readonly sugar: MassInput;
  /** 100 or 150 are usual: grams of sugar set by a gram of pectin. */
  readonly grade: number;
  /** For its group, and for what pectin it may bring. */
  readonly fruitName?: string;
  readonly fruit?: MassInput;
}
export interface PectinNeeded {
  /** The full dose, as if the fruit brought none. */
  readonly pectin: Quantity<'mass'>;
  /** What the fruit itself brings, on average, as calcium pectate. */
  readonly fromFruit?: Quantity<'mass'>;
  readonly group?: 1 | 2 | 3;
  readonly needs?: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The pectin that sets a weight of sugar, by its grade; and, where the fruit is named, whether it needs any.
 *
 * Formula: pectin = sugar / grade (a 100-grade pectin sets 100 times its weight of sugar as a jelly of 65 % solids).
 * That is the full dose. A fruit of group 1 that is not overripe brings enough of its own; how much of the dose a
 * fruit of group 2 wants only a test of its juice can tell (`sugarForJuice`). The fruit's own pectin is an average
 * of analyses, of another quality than the graded one, and is shown, not deducted.
 *
 * @param input - `sugar`; `grade`: 1 to 1,000; `fruitName` and `fruit` (a mass): optional
 * @throws StillroomError OUT_OF_RANGE; UNKNOWN_NAME for a fruit in no table
 *
 * @example
 * ```ts
 * import { pectinNeeded } from 'stillroom/sugar';
 *
 * pectinNeeded({ sugar: '55 kg', grade: 150 }).pectin.value; // ≈ 0.3667
 * ```
 */
export function pectinNeeded(input: PectinNeededInput): PectinNeeded {
  const given = readInput(schema, input);
  const known = given.fruitName === undefined ? undefined : pectinClass({ fruit: given.fruitName });
  const row = given.fruitName === undefined ? undefined : pectinRows(given.fruitName)[0];
  const share = row?.pectin ?? undefined;
  return answer({
    pectin: { value: given.sugar.value / given.grade, unit: given.sugar.unit },
    ...(given.fruit === undefined || share === undefined
      ? {}
      : { fromFruit: quantityIn((valueIn(given.fruit, 'g') * share) / 100, 'g', given.sugar.unit) }),
    ...(known === undefined ? {} : { group: known.group, needs: known.needs }),
    basis: joinBasis([gradeBasis('grade'), batchBasis('pectin')], known?.basis ?? []),
    cautions: [...(known?.cautions ?? []), caution('estimate')],
  });
}

const swapSchema = fields({
  pectin: mass(),
  grade: grade('the grade of the recipe'),
  newGrade: grade('the grade at hand'),
});
export interface SwapPectinGradeInput {
  readonly pectin: MassInput;
  readonly grade: number;
  readonly newGrade: number;
}
export interface SwapPectinGrade {
  readonly pectin: Quantity<'mass'>;
  readonly basis: readonly Basis[];
}

/**
 * The weight of a pectin of another grade that sets as much.
 *
 * Formula: new weight = weight x grade / new grade.
 *
 * @param input - `pectin`: the recipe's; `grade` and `newGrade`: 1 to 1,000
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { swapPectinGrade } from 'stillroom/sugar';
 *
 * swapPectinGrade({ pectin: '50 g', grade: 150, newGrade: 100 }).pectin; // => { value: 75, unit: 'g' }
 * ```
 */
export function swapPectinGrade(input: SwapPectinGradeInput): SwapPectinGrade {
  const given = readInput(swapSchema, input);
  return answer({
    pectin: { value: (given.pectin.value * given.grade) / given.newGrade, unit: given.pectin.unit },
    basis: [gradeBasis('grade'), massBalance('weight')],
  });
}

const strengthSchema = fields({ pectin: mass(), grade: grade('the grade of the pectin'), total: mass() });
export interface PectinStrengthInput {
  readonly pectin: MassInput;
  readonly grade: number;
  /** The whole mix. */
  readonly total: MassInput;
}
export interface PectinStrength {
  /** Grade times mass fraction of pectin; some 5 makes a good gel. */
  readonly sag: number;
  readonly basis: readonly Basis[];
}

/**
 * Setting strength of a mix in SAG units: grade of the pectin times its share of the mass.
 *
 * Source: Practical Action technical brief on jams, p. 6 (30 g of 150-grade pectin in 900 g is 5 SAG).
 *
 * @param input - `pectin` and `total`: masses; `grade`: 1 to 1,000
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { pectinStrength } from 'stillroom/sugar';
 *
 * pectinStrength({ pectin: '30 g', grade: 150, total: '900 g' }).sag; // => 5
 * ```
 */
export function pectinStrength(input: PectinStrengthInput): PectinStrength {
  const given = readInput(strengthSchema, input);
  return answer({
    sag: (valueIn(given.pectin, 'g') * given.grade) / valueIn(given.total, 'g'),
    basis: [{ of: 'SAG', kind: 'published', source: 'practical-action', locator: 'pp. 3, 6', seen: 'reproduction' }],
  });
}
