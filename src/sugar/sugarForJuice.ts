import jellyJson from '../../data/sugar/jelly-juice.json';
import sugarJson from '../../data/sugar/sugar-for-juice.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { choice, fields, mass, name, readInput, volume } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { MassInput, Quantity, VolumeInput } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { sugarCaution } from './cautions';
import { cupOf, sweetenerBasis } from './sweeteners';

const RESULTS = ['one lump', 'several lumps', 'flakes', 'most juices', 'cooking test'] as const;
interface SugarRow extends Sourced {
  readonly result: (typeof RESULTS)[number];
  readonly sugar: number;
  readonly atMost?: boolean;
}
interface JellyRow extends Sourced, Named {
  readonly waterPerPound: readonly [least: number, most: number];
  readonly simmer: readonly [least: number, most: number];
  readonly sugarPerJuice: readonly [least: number, most: number];
  readonly lemonPerJuice: number;
  readonly lemonOptional?: boolean;
}
const sugars = asTable<SugarRow>(sugarJson).rows;
const jellies = asTable<JellyRow>(jellyJson).rows;

const schema = fields({ juice: volume(), result: choice('what the pectin test showed', RESULTS) });
export interface SugarForJuiceInput {
  /** Strained juice. */
  readonly juice: VolumeInput;
  /**
   * Of the alcohol test: `one lump`, `several lumps`, `flakes`; `cooking test` where a small sample set with 3/4 of its
   * volume of sugar; `most juices` untested.
   */
  readonly result: (typeof RESULTS)[number];
}
export interface SugarForJuice {
  readonly sugar: Quantity<'volume'>;
  readonly sugarMass: Quantity<'mass'>;
  /** True where the figure is the most that the juice can set. */
  readonly atMost: boolean;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The sugar that a juice can set, by its pectin: much pectin takes much sugar, little pectin little.
 *
 * A cup of juice takes 1 cup of sugar where the alcohol test gives one lump, 3/4 cup where it gives several, at most
 * 1/2 cup where only flakes form; 3/4 cup for most juices. The test: 1 tsp of cooked, cooled juice stirred into 1 tbsp
 * of rubbing alcohol. Source: alcohol test of the USDA Bureau of Chemistry, as two cookbooks report it.
 *
 * @param input - `juice`: a volume; `result`: what the test showed
 * @throws StillroomError UNKNOWN_NAME for another result
 *
 * @example
 * ```ts
 * import { sugarForJuice } from 'stillroom/sugar';
 *
 * sugarForJuice({ juice: '4 cups', result: 'several lumps' }).sugar; // => { value: 3, unit: 'cup' }
 * ```
 */
export function sugarForJuice(input: SugarForJuiceInput): SugarForJuice {
  const given = readInput(schema, input);
  const row = sugars.find(({ result }) => result === given.result) as SugarRow;
  return answer({
    sugar: { value: given.juice.value * row.sugar, unit: given.juice.unit },
    sugarMass: { value: valueIn(given.juice, 'cup') * row.sugar * cupOf('sugar'), unit: 'g' },
    atMost: row.atMost === true,
    basis: [basisOf(row, 'sugar for a cup of juice'), ...sweetenerBasis('sugar', 'weight of a cup of sugar')],
    cautions: [sugarCaution('never-taste-alcohol-test')],
  });
}

/** The most juice to cook at a time, cups: Complete Guide to Home Canning, Guide 7 (6 to 8 cups). */
export const JUICE_AT_A_TIME = { low: 6, high: 8 } as const;
const JUICE_PER_POUND = 1; // cup at least, the same guide

const jellySchema = fields({ fruit: name('apple, blackberry, crabapple, grape or plum'), mass: mass() });
export interface JellyFromFruitInput {
  readonly fruit: string;
  /** Whole washed fruit. */
  readonly mass: MassInput;
}
export interface JellyFromFruit {
  /** To add before simmering: the least and the most. */
  readonly water: { readonly low: Quantity<'volume'>; readonly high: Quantity<'volume'> };
  readonly simmer: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  /** At least so much clear juice. */
  readonly juice: Quantity<'volume'>;
  readonly sugar: { readonly low: Quantity<'volume'>; readonly high: Quantity<'volume'> };
  readonly lemonJuice: Quantity<'volume'>;
  readonly lemonOptional: boolean;
  /** Pots of juice to cook one after another, 6 cups in each. */
  readonly batches: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Jelly without added pectin from whole fruit: water and minutes to draw the juice, sugar and lemon juice for it.
 *
 * Source: Complete Guide to Home Canning, Guide 7. A pound gives at least a cup of clear juice; no more than 6 to 8
 * cups of it are cooked at a time. The guide's printed yields of jelly are not used: three of them cannot be met by
 * mass balance (7 to 9 half-pints from 4 cups of juice and 3 to 4 of sugar); weigh with `jamBalance` instead.
 *
 * @param input - `fruit`: apple, blackberry, crabapple, grape or plum; `mass` of it
 * @throws StillroomError UNKNOWN_NAME for another fruit
 *
 * @example
 * ```ts
 * import { jellyFromFruit } from 'stillroom/sugar';
 *
 * const jelly = jellyFromFruit({ fruit: 'crab apples', mass: '6 lb' });
 * jelly.water.high; // => { value: 6, unit: 'cup' }
 * jelly.sugar.low; // => { value: 6, unit: 'cup' }
 * ```
 */
export function jellyFromFruit(input: JellyFromFruitInput): JellyFromFruit {
  const given = readInput(jellySchema, input);
  const row = lookUp(given.fruit, jellies, 'fruit', 'fruit for jelly without added pectin');
  const pounds = valueIn(given.mass, 'lb');
  const juice = pounds * JUICE_PER_POUND;
  const cups = (value: number) => ({ value, unit: 'cup' as const });
  const minutes = (value: number) => ({ value, unit: 'min' as const });
  return answer({
    water: { low: cups(pounds * row.waterPerPound[0]), high: cups(pounds * row.waterPerPound[1]) },
    simmer: { low: minutes(row.simmer[0]), high: minutes(row.simmer[1]) },
    juice: cups(juice),
    sugar: { low: cups(juice * row.sugarPerJuice[0]), high: cups(juice * row.sugarPerJuice[1]) },
    lemonJuice: quantityIn(juice * row.lemonPerJuice, 'tsp', 'tsp'),
    lemonOptional: row.lemonOptional === true,
    batches: Math.ceil(juice / JUICE_AT_A_TIME.low - 1e-9),
    basis: [basisOf(row, 'water, minutes, sugar and lemon juice')],
    cautions: [sugarCaution('one-batch'), sugarCaution('boiling-sugar-burns')],
  });
}
