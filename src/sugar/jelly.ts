import * as z from 'zod/mini';
import jellyJson from '../../data/sugar/jelly-juice.json';
import sugarJson from '../../data/sugar/sugar-for-juice.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { food as foodField } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { nameOf } from '../foods/tables';
import { choice, fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { forReaders, id, type RowOf, sourcedColumns, text } from '../sources/columns';
import { type NotKnown, notKnown } from '../sources/no';
import { asTable, basisOf } from '../sources/table';
import { raw as rawWord } from '../words/raw';
import { volume } from '../words/volume';
import { sugarCaution } from './cautions';
import { juiceAtATime, potBasis, potRule } from './potRules';
import { type RemakeJelly, type RemakeJellyInput, remakeJelly } from './remakeJelly';
import { cupOf, sugarBasis } from './sweeteners';

const TESTS = ['one lump', 'several lumps', 'flakes', 'most juices', 'cooking test'] as const;
const ends = () => z.tuple([z.number().check(z.gte(0)), z.number()]);
export const sugarForJuiceRow = () =>
  z.strictObject({
    id: id(),
    result: z.enum(TESTS),
    sugar: z.number(),
    atMost: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export const jellyJuiceRow = () =>
  z.strictObject({
    id: id(),
    food: id(),
    printed: forReaders(text()),
    waterPerPound: ends(),
    simmer: ends(),
    sugarPerJuice: ends(),
    lemonPerJuice: z.number(),
    lemonOptional: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
type SugarRow = RowOf<typeof sugarForJuiceRow>;
type JellyRow = RowOf<typeof jellyJuiceRow>;
const sugars = asTable<SugarRow>(sugarJson).rows;
const jellies = asTable<JellyRow>(jellyJson).rows;

const schema = fields({
  /** Apple, blackberry, crabapple, grape or plum; with `raw`. */
  food: optional(foodField()),
  /** Whole washed fruit, by mass; or */
  raw: optional(rawWord()),
  /** the strained juice, by volume. */
  juice: optional(volume()),
  /**
   * What a pectin test of the juice showed. The alcohol test: `one lump`, `several lumps`, `flakes`; `cooking test` where
   * a small sample set with 3/4 of its volume of sugar; `most juices` untested.
   */
  pectinTest: optional(choice('what the pectin test showed', TESTS)),
});
export type JellyInput = z.input<typeof schema>;

/** Two ends of a printed amount; equal where one is printed. */
export interface VolumeEnds {
  /** The least. */
  readonly low: Quantity<'volume'>;
  /** The most. */
  readonly high: Quantity<'volume'>;
}
export interface Jelly {
  /** The strained juice: at least this much, where it is drawn from the fruit. */
  readonly juice: Quantity<'volume'>;
  /** The sugar for it, by weight. */
  readonly sugar: { readonly low: Quantity<'mass'>; readonly high: Quantity<'mass'> };
  /** The same by measure. */
  readonly sugarVolume: VolumeEnds;
  /** True where the sugar is the most that the juice can set. */
  readonly sugarIsMost: boolean;
  /** Of fruit: water to add before it simmers. */
  readonly waterVolume?: VolumeEnds;
  /** Of fruit: how long it simmers before it is strained. */
  readonly simmer?: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  /** Of fruit: lemon juice for the juice. */
  readonly lemonJuice?: Quantity<'volume'>;
  /** Of fruit: whether the lemon juice may be left out. */
  readonly lemonOptional?: boolean;
  /** Pots of juice to cook one after another, 6 cups in each. */
  readonly batches: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
const minutes = (value: number): Quantity<'time'> => ({ value, unit: 'min' });

/** What the page prints for a weight of fruit. */
function drawJuice(row: JellyRow, raw: Quantity<'mass'>) {
  const pounds = valueIn(raw, 'lb');
  const juice = pounds * potRule('juice-per-pound').value;
  return {
    juice: cups(juice),
    waterVolume: { low: cups(pounds * row.waterPerPound[0]), high: cups(pounds * row.waterPerPound[1]) },
    simmer: { low: minutes(row.simmer[0]), high: minutes(row.simmer[1]) },
    lemonJuice: quantityIn<'volume'>(juice * row.lemonPerJuice, 'tsp', 'tsp'),
    lemonOptional: row.lemonOptional === true,
  };
}

const noJelly = (food: string): NotKnown =>
  notKnown({
    code: 'no-jelly',
    text: `These tables hold no jelly of ${food} without added pectin.`,
    instead: [
      { text: 'Strain the juice and test it: give juice and pectinTest.' },
      ...jellies.map((row) => ({ text: `It is held for ${nameOf(row.food)}.`, food: nameOf(row.food) })),
    ],
    basis: [derived('reason', 'what the jelly table holds')],
    cautions: [],
  });

/**
 * Jelly without added pectin: water and minutes to draw the juice from fruit, and the sugar that the juice can set; or,
 * for a `softJelly` that did not set, what to add before you boil it again.
 *
 * A pound of fruit gives at least a cup of clear juice; no more than 6 to 8 cups of it are cooked at a time. The sugar
 * is the page's for the fruit, or by a test of the juice: a cup takes 1 cup of sugar where the alcohol test gives one
 * lump, 3/4 cup where it gives several, at most 1/2 cup where only flakes form; 3/4 cup for most juices. The test: 1
 * tsp of cooked, cooled juice stirred into 1 tbsp of rubbing alcohol; never taste it.
 *
 * The guide's printed yields of jelly are not used: three of them cannot be met by mass balance (7 to 9 half-pints
 * from 4 cups of juice and 3 to 4 of sugar); weigh with `jamBalance` instead.
 *
 * A soft jelly takes the printed quantities for 4 cups, scaled to what is at hand; those for liquid pectin are recalled.
 *
 * Sources: Complete Guide to Home Canning, Guide 7; Michigan State University Extension for the cooking test; University
 * of Tennessee PB724, p. 38, for soft jelly. The sugar by the alcohol test and for most juices is recalled.
 *
 * @param input - `food` (apple, blackberry, crabapple, grape or plum) with `raw`, or `juice`; `pectinTest`: what the
 * test showed, needed for juice without its fruit; or `softJelly`, a volume, with `pectin`: `powdered`, `liquid` or `none`
 * (boil it down with lemon juice)
 * @returns sugar for the juice, with water, minutes and lemon juice for fruit; or `known: false` for another fruit
 * @throws StillroomError MISSING, CONTRADICTION; UNKNOWN_NAME for another result
 *
 * @example
 * ```ts
 * import { jelly } from 'stillroom/sugar';
 *
 * const crabapple = jelly({ food: 'crab apples', raw: '6 lb' });
 * 'waterVolume' in crabapple && crabapple.waterVolume?.high; // => { value: 6, unit: 'cup' }
 * 'sugar' in crabapple && crabapple.sugarVolume.low; // => { value: 6, unit: 'cup' }
 * const tested = jelly({ juice: '4 cups', pectinTest: 'several lumps' });
 * 'sugar' in tested && tested.sugarVolume.high; // => { value: 3, unit: 'cup' }
 * jelly({ softJelly: '6 cups', pectin: 'powdered' }).pectinVolume; // => { value: 6, unit: 'tsp' }
 * ```
 */
export function jelly(input: RemakeJellyInput): RemakeJelly;
export function jelly(input: JellyInput): Jelly | NotKnown;
export function jelly(input: JellyInput | RemakeJellyInput): Jelly | RemakeJelly | NotKnown {
  return typeof input === 'object' && input !== null && 'softJelly' in input ? remakeJelly(input) : newJelly(input);
}

function newJelly(input: JellyInput): Jelly | NotKnown {
  const { food, raw, juice: strained, pectinTest } = readInput(schema, input);
  if (raw !== undefined && strained !== undefined)
    fail('CONTRADICTION', 'juice', input.juice, 'fruit or juice, not both');
  if (raw === undefined && strained === undefined) fail('MISSING', 'raw', undefined, 'whole fruit, or strained juice');
  if (food === undefined && (raw !== undefined || pectinTest === undefined)) {
    fail(
      'MISSING',
      raw === undefined ? 'pectinTest' : 'food',
      undefined,
      raw === undefined ? 'a test of the juice' : 'the fruit',
    );
  }
  const row = food && jellies.find((one) => figuresFor(food.id, 'jam').includes(one.food));
  if (food !== undefined && row === undefined && (raw !== undefined || pectinTest === undefined)) {
    return answer(noJelly(food.name));
  }
  const drawn = row === undefined || raw === undefined ? undefined : drawJuice(row, raw);
  const juice = strained ?? (drawn?.juice as Quantity<'volume'>);
  const test = sugars.find(({ result }) => result === pectinTest);
  const [low, high] = test === undefined ? (row as JellyRow).sugarPerJuice : ([test.sugar, test.sugar] as const);
  const grams = (each: number): Quantity<'mass'> => ({
    value: valueIn(juice, 'cup') * each * cupOf('sugar'),
    unit: 'g',
  });
  const measured = (each: number): Quantity<'volume'> => ({ value: juice.value * each, unit: juice.unit });
  const lent = row === undefined || row.food === food?.id ? {} : { food: nameOf(row.food) };
  return answer({
    juice,
    sugar: { low: grams(low), high: grams(high) },
    sugarVolume: { low: measured(low), high: measured(high) },
    sugarIsMost: test?.atMost === true,
    ...drawn,
    batches: Math.ceil(valueIn(juice, 'cup') / juiceAtATime().low - 1e-9),
    basis: [
      test === undefined
        ? { ...basisOf(row as JellyRow, 'sugarVolume'), ...lent }
        : basisOf(test, 'sugarVolume', 'sugar for a cup of juice'),
      ...(drawn === undefined
        ? []
        : [{ ...basisOf(row as JellyRow, 'waterVolume'), ...lent }, potBasis('juice-per-pound', 'juice')]),
      sugarBasis('sugar'),
      potBasis('juice-at-a-time-low', 'batches'),
    ],
    cautions: [
      ...(test === undefined ? [] : [sugarCaution('never-taste-alcohol-test')]),
      ...(test?.obtained === 'memory' ? [caution('recalled')] : []),
      ...(drawn === undefined ? [] : [sugarCaution('one-batch'), sugarCaution('boiling-sugar-burns')]),
    ],
  });
}
