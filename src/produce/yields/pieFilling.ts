import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { Decimal } from '../../common/decimal';
import type { Given } from '../../common/given';
import { food } from '../../foods/fields';
import { nameOf } from '../../foods/tables';
import { fields, readInput } from '../../quantity/fields';
import { quantityIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { count } from '../../words/count';
import { caution } from '../cautions';
import { inForms, missing } from '../shape';
import { type PieFillingRow, pieFillingRows } from './tables';

const schema = fields({
  /** The fruit of the filling: apple, blueberry, sour cherry or peach. */
  food: food(),
  /** How many quarts to make, 1 to 10,000. */
  quarts: count('quarts', 1, 10_000),
});
export type PieFillingInput = Given<z.input<typeof schema>>;

/** One ingredient. */
export interface PieFillingIngredient {
  /** What it is: `fruit`, `sugar`, `bottled lemon juice` ... */
  readonly ingredient: string;
  /** How much of it. */
  readonly amount: Quantity<'volume'>;
}
/** What goes into the filling. */
export interface PieFilling {
  /** These tables print the formula. */
  readonly known: true;
  /** Trade name of the fruit. */
  readonly food: string;
  /** How many quarts it makes. */
  readonly quarts: number;
  /** What goes in, each in the unit of the column that gives most of it. */
  readonly ingredients: readonly PieFillingIngredient[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

const QUARTS_IN_LOAD = 7;

interface Part extends PieFillingIngredient {
  readonly acid: boolean;
}
const amountsOf = (column: PieFillingRow['oneQuart'], times: number): Part[] =>
  column.map(({ ingredient, amount, unit, acid = false }) => ({
    ingredient,
    acid,
    amount: { value: new Decimal(amount).times(times).toNumber(), unit } as Quantity<'volume'>,
  }));

/**
 * What goes into a number of quarts of pie filling, by the printed formula.
 *
 * The guide prints a column for one quart and one for seven, and they are not multiples of each other: full canner
 * loads of seven quarts take the second, the quarts left over the first. Where the second prints less lemon juice a
 * quart than the first because the page contradicts itself (blueberry), every quart takes that of the first.
 *
 * @returns `ingredients` with amounts, each in the unit of the column that gives most of it; `known: false` for another
 *   fruit: these tables hold no formula of it
 * @throws StillroomError UNKNOWN_NAME for a food that is not in the pantry
 *
 * Source: pie filling formulas of the Complete Guide to Home Canning, as copied by extension services.
 *
 * @example
 * ```ts
 * import { pieFilling } from 'stillroom/produce';
 *
 * const apple = pieFilling({ food: 'apples', quarts: 7 });
 * apple.known && apple.ingredients[0]; // => { ingredient: 'fruit', amount: { value: 6, unit: 'quart' } }
 * ```
 */
export function pieFilling(input: PieFillingInput): PieFilling | NotKnown {
  const { food: asked, quarts } = readInput(schema, input);
  const row = pieFillingRows.find((each) => each.food === asked.id);
  if (row === undefined || (asked.form !== undefined && asked.form !== row.form)) {
    const offered = pieFillingRows.flatMap((each) => inForms(each.food, [each.form]));
    return answer(missing('no formula', `These tables hold no pie filling of ${asked.name}.`, offered));
  }
  const loads = Math.floor(quarts / QUARTS_IN_LOAD);
  const single = quarts % QUARTS_IN_LOAD;
  const byQuart = ({ acid }: Part): boolean => acid && row.acidByQuart === true;
  const parts = [
    ...(loads > 0 ? amountsOf(row.sevenQuarts, loads) : []),
    ...(single > 0 ? amountsOf(row.oneQuart, single) : []),
  ].filter((part) => !byQuart(part));
  parts.push(...amountsOf(row.oneQuart, quarts).filter(byQuart));
  const ingredients = new Map<string, Quantity<'volume'>>();
  for (const { ingredient, amount } of parts) {
    const before = ingredients.get(ingredient);
    const more = before === undefined ? amount : quantityIn(amount.value, amount.unit, before.unit);
    ingredients.set(ingredient, before === undefined ? more : { value: before.value + more.value, unit: before.unit });
  }
  return answer({
    known: true as const,
    food: nameOf(row.food),
    quarts,
    ingredients: [...ingredients].map(([ingredient, amount]) => ({ ingredient, amount })),
    basis: [basisOf(row, 'ingredients')],
    cautions: [caution('starch-for-cooking'), caution('tested-only')],
  });
}
