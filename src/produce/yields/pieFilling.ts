import type * as z from 'zod/mini';
import table from '../../../data/produce/pie-fillings.json';
import { answer } from '../../common/answer';
import { Decimal } from '../../common/decimal';
import { lookUp } from '../../common/names';
import { count, fields, name, readInput } from '../../quantity/fields';
import { quantityIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { caution } from '../cautions';

const schema = fields({
  fruit: name('the fruit of a pie filling: apple, blueberry, sour cherry or peach'),
  quarts: count('quarts', 1, 10_000),
});
export type PieFillingInput = z.input<typeof schema>;

export interface PieFillingIngredient {
  readonly ingredient: string;
  readonly amount: Quantity<'volume'>;
}
export interface PieFilling {
  readonly fruit: string;
  readonly quarts: number;
  readonly ingredients: readonly PieFillingIngredient[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

type Amounts = Readonly<Record<string, number>>;
export interface PieFillingRow extends Sourced {
  readonly filling: string;
  readonly oneQuart: Amounts;
  readonly sevenQuarts: Amounts;
  /** The acid of one quart counts for every quart: the column for seven prints less of it. */
  readonly acidByQuart?: true;
}
export const pieFillings = asTable<PieFillingRow>(table).rows;
const fillings = pieFillings.map((row) => ({ name: row.filling, synonyms: [`${row.filling} pie filling`], row }));

const UNITS = { cups: 'cup', qt: 'quart', tbsp: 'tbsp', tsp: 'tsp' } as const;
const QUARTS_IN_LOAD = 7;
const ACID = 'bottled lemon juice';

/** `bottledLemonJuice_tbsp` -> `bottled lemon juice` and its unit. */
function readKey(key: string): { ingredient: string; unit: 'cup' | 'quart' | 'tbsp' | 'tsp' } {
  const [words = '', unit = ''] = key.split('_');
  return {
    ingredient: words.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
    unit: UNITS[unit as keyof typeof UNITS],
  };
}

const amountsOf = (amounts: Amounts, times: number) =>
  Object.entries(amounts).map(([key, value]) => {
    const { ingredient, unit } = readKey(key);
    return { ingredient, amount: { value: new Decimal(value).times(times).toNumber(), unit } as Quantity<'volume'> };
  });

/**
 * What goes into so many quarts of pie filling, by the printed formula.
 *
 * The guide prints a column for one quart and one for seven, and they are not multiples of each other: full canner
 * loads of seven quarts take the second, the quarts left over the first. Where the second prints less lemon juice a quart
 * than the first because the page contradicts itself (blueberry), every quart takes that of the first.
 *
 * @param input.fruit - `apple`, `blueberry`, `sour cherry` or `peach`
 * @param input.quarts - 1 to 10,000
 * @returns `ingredients` with amounts, each in the unit of the column that gives most of it
 * @throws StillroomError UNKNOWN_NAME for another fruit: it has no tested filling here
 *
 * Source: pie filling formulas of the Complete Guide to Home Canning, as copied by extension services.
 *
 * @example
 * ```ts
 * import { pieFilling } from 'stillroom/produce';
 *
 * pieFilling({ fruit: 'apples', quarts: 7 }).ingredients[0]; // => { ingredient: 'fruit', amount: { value: 6, unit: 'quart' } }
 * ```
 */
export function pieFilling(input: PieFillingInput): PieFilling {
  const { fruit, quarts } = readInput(schema, input);
  const { row } = lookUp(fruit, fillings, 'fruit', 'fruit with a tested pie filling');
  const loads = Math.floor(quarts / QUARTS_IN_LOAD);
  const single = quarts % QUARTS_IN_LOAD;
  const isAcid = ({ ingredient }: PieFillingIngredient) => row.acidByQuart === true && ingredient === ACID;
  const parts = [
    ...(loads > 0 ? amountsOf(row.sevenQuarts, loads) : []),
    ...(single > 0 ? amountsOf(row.oneQuart, single) : []),
  ].filter((part) => !isAcid(part));
  parts.push(...amountsOf(row.oneQuart, quarts).filter(isAcid));
  const ingredients = new Map<string, Quantity<'volume'>>();
  for (const { ingredient, amount } of parts) {
    const before = ingredients.get(ingredient);
    const more = before === undefined ? amount : quantityIn(amount.value, amount.unit, before.unit);
    ingredients.set(ingredient, before === undefined ? more : { value: before.value + more.value, unit: before.unit });
  }
  return answer({
    fruit: row.filling,
    quarts,
    ingredients: [...ingredients].map(([ingredient, amount]) => ({ ingredient, amount })),
    basis: [basisOf(row, 'ingredients')],
    cautions: [caution('starch-for-cooking'), caution('tested-only')],
  });
}
