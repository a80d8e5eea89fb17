import { fail } from '../../errors/StillroomError';
import { type FoundFood, food, form } from '../../foods/fields';
import { figuresFor } from '../../foods/figuresFor';
import { knownOf } from '../../foods/tables';
import { optional } from '../../quantity/fields';
import type { Basis, Caution } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { fat as fatWord } from '../../words/shares';
import { basisFrom, measured } from '../basis';
import { caution } from '../cautions';
import { fatRowOf, formAsked } from '../pantry';
import { mostFat, setting } from './tables';

/** The fields of an argument that say what is dried. */
export const fatFields = {
  /** What is dried, for its fat: a food of the pantry. */
  food: optional(food()),
  /** Its form, where the fat depends on it: `ground` beef. */
  form: optional(form()),
  /** Its share of fat as it goes in: 0 to below 1, or percent; by `food` if not given. */
  fat: optional(fatWord({ below: 1 })),
};
/** What `fatFields` read. */
export interface FatGiven {
  readonly food?: FoundFood | undefined;
  readonly form?: string | undefined;
  readonly fat?: number | undefined;
}

/** What the fat of a food means for drying it. */
export interface Fat {
  /** Share of the food as it goes in, where it is known. */
  readonly share?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The crafts whose tables hold fruit and vegetables that people dry: less than 1 % of fat, corn and peppers about 2 %. */
const LEAN_CRAFTS = ['drying', 'dried-yields', 'rehydration', 'dried-storage'];
const isLean = (id: string): boolean =>
  LEAN_CRAFTS.some((craft) =>
    figuresFor(id, craft).some((each) => knownOf(each).some((known) => known.craft === craft)),
  );

/** The same where a food need not be named, as in plain arithmetic: without one, the answer does not mention fat. */
export const fatIfNamed = (given: FatGiven, moisture: number, of: string, givenForm: unknown): Fat =>
  given.food === undefined && given.fat === undefined
    ? { basis: [], cautions: [] }
    : fatOf(given, moisture, of, givenForm);

/**
 * How much of a food is fat, by the caller or by the tables, and what to say of it: fat does not dry, and a food that
 * neither knows is never passed over. `of` is the answer's field that the fat bears on.
 *
 * @throws StillroomError CONTRADICTION for fat and water that are more than the whole food, or two forms
 */
export function fatOf(given: FatGiven, moisture: number, of: string, givenForm: unknown): Fat {
  const { food: named, fat } = given;
  const shape = formAsked(named, given.form, givenForm);
  const { rows, lender } = named === undefined ? { rows: [] } : fatRowOf(named.id, shape);
  const [row] = rows;
  const part = fat ?? (row === undefined ? undefined : row.fat_percent / 100);
  if (part === undefined) {
    const lean = named !== undefined && isLean(named.id);
    return { basis: [], cautions: lean ? [] : [caution('fat-not-known')] };
  }
  if (fat !== undefined && fat + moisture > 1 + 1e-9) {
    fail('CONTRADICTION', 'fat', fat, `at most what the moisture leaves, ${Number((1 - moisture).toPrecision(6))}`);
  }
  return {
    share: part,
    basis: [
      fat === undefined && row !== undefined
        ? basisFrom(row, of, `fat of ${row.printed}`, lender)
        : measured(of, 'fat of the food'),
      basisOf(setting('fat-most'), of, 'most fat of food to be dried'),
    ],
    cautions: [
      ...(part > mostFat() / 100 + 1e-9 ? [caution('fat-does-not-dry')] : []),
      ...(fat === undefined && row?.obtained === 'memory' ? [caution('recalled')] : []),
    ],
  };
}
