import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { choice, fields, isMass, list, name, optional, readInput } from '../quantity/fields';
import { roundToStep } from '../quantity/fractions';
import { exactIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf, practiceBasis } from '../sources/table';
import { amount } from '../words/amount';
import { count } from '../words/count';
import { mass } from '../words/mass';
import { recordCaution } from './cautions';
import { isoDate } from './date';
import { lotCodeBasis, lotCodeOf } from './lotCode';
import { MOST_BATCHES } from './recordFields';
import { figureOf, LABEL_RULES, rowNamed } from './tables';

const ingredient = /* @__PURE__ */ fields({
  /** Its name, as the label shall say it. */
  name: name('an ingredient'),
  /** Its mass in the batch, above zero. */
  mass: mass(),
});
const schema = /* @__PURE__ */ fields({
  /** What it is: `Peach jam`. */
  name: name('what it is, such as "peach jam"'),
  /** Net weight or volume of one jar or bag, above zero. */
  net: amount(),
  /** Whose rules the net contents follow: `US` (if not given) or `EU`. */
  market: optional(choice('whose rules to follow', ['US', 'EU'])),
  /** Ingredients, 1 to 100; the label lists the heaviest first and keeps your order where masses are equal. */
  ingredients: optional(list('ingredients', ingredient, 1, 100)),
  /** The lot code. */
  lotCode: optional(name('a lot code')),
  /** To make a lot code: number of the batch of that name on the day `made`, 1 to 999. */
  batchOfDay: optional(count('the number of the batch on that day', 1, MOST_BATCHES)),
  /** Day of making as ISO text. */
  made: optional(isoDate('the day it was made')),
  /** Day to use it by as ISO text; not before `made`. */
  useBy: optional(isoDate('the day to use it by')),
  /** Who made it. */
  maker: optional(name('who made it')),
  /** Where it was made. */
  place: optional(name('where it was made')),
  /** How to keep it: `Keep in a refrigerator once opened`. */
  keep: optional(name('how to keep it')),
  /** Allergens in it, up to 50. */
  allergens: optional(list('allergens', name('an allergen'), 0, 50)),
});
export type LabelFieldsInput = Given<z.input<typeof schema>>;

/** The texts for a label. */
export interface LabelFields {
  /** What it is. */
  readonly name: string;
  /** Net contents, rounded down. */
  readonly netContents: string;
  /** The ingredients, heaviest first. */
  readonly ingredientLine?: string;
  /** The allergens. */
  readonly allergenLine?: string;
  /** How to keep it. */
  readonly keep?: string;
  /** The lot code, with the word `Lot`. */
  readonly lot?: string;
  /** The day of making, with the word `Made`. */
  readonly made?: string;
  /** The day to use it by, with the words `Best used by`. */
  readonly useBy?: string;
  /** Who made it, and where. */
  readonly maker?: string;
  /** All of these, in the usual order. */
  readonly labelLines: readonly string[];
  /** Where the rules come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

type Amount = Quantity<'mass'> | Quantity<'volume'>;

/** An amount in a unit, always rounded down: a label never promises more than the jar holds. */
const down = (amount: Amount, unit: string, step: number): string =>
  roundToStep(exactIn(amount, unit), step, 'down').toString();

/** Grams and milliliters whole, ounces to the tenth; small amounts finer, so that none is written as nothing. */
function netText(net: Amount, market: 'US' | 'EU'): string {
  const weight = isMass(net);
  const [metric, customary] = weight ? ['g', 'oz'] : ['mL', 'fl oz'];
  const small = exactIn(net, metric).lt(10);
  const metricText = `${down(net, metric, small ? 0.1 : 1)} ${metric}`;
  if (market === 'EU') return metricText;
  const ounces = `${down(net, customary, small ? 0.01 : 0.1)} ${customary}`;
  const both = rowNamed(LABEL_RULES, 'pounds-and-ounces');
  const pounds = exactIn(net, weight ? 'lb' : 'mL');
  if (!weight) return `Net ${ounces} (${metricText})`;
  if (pounds.lt(figureOf(both, 'least_lb')) || pounds.gte(figureOf(both, 'below_lb')))
    return `Net Wt ${ounces} (${metricText})`;
  const tenths = roundToStep(exactIn(net, 'oz'), 0.1, 'down');
  const whole = tenths.div(16).toPlaces(0, 'down');
  const rest = tenths.minus(whole.times(16));
  const inPounds = rest.isZero() ? `${whole} lb` : `${whole} lb ${rest.toString()} oz`;
  return `Net Wt ${ounces} (${inPounds}) ${metricText}`;
}

type Asked = z.output<typeof schema>;

/** The lot code: given, or made from name, day and batch. */
function codeOf({ lotCode, batchOfDay, made, place, name: called }: Asked): string | undefined {
  if (batchOfDay === undefined) return lotCode;
  if (lotCode !== undefined) {
    fail('CONTRADICTION', 'batchOfDay', batchOfDay, 'a lot code, or the number of the batch to make one with');
  }
  if (made === undefined) fail('MISSING', 'made', made, 'the day of making, for the lot code');
  return lotCodeOf({ place, name: called, date: made, batchOfDay });
}

/** The ingredients by falling mass. */
const heaviestFirst = (ingredients: NonNullable<Asked['ingredients']>): string =>
  ingredients
    .map(({ name: called, mass: of }) => ({ called, grams: exactIn(of, 'g') }))
    .sort((a, b) => b.grams.cmp(a.grams))
    .map(({ called }) => called)
    .join(', ');

/** The texts that the fields give, in the usual order of a label. */
function textsOf(asked: Asked, code: string | undefined) {
  const { name: called, net, market = 'US', ingredients, allergens = [], made, useBy, maker, place, keep } = asked;
  const by = [maker, place].filter((part) => part !== undefined).join(', ');
  return {
    name: called,
    netContents: netText(net, market),
    ...(ingredients === undefined ? {} : { ingredientLine: `Ingredients: ${heaviestFirst(ingredients)}` }),
    ...(allergens.length === 0 ? {} : { allergenLine: `Contains: ${allergens.join(', ')}` }),
    ...(keep === undefined ? {} : { keep }),
    ...(code === undefined ? {} : { lot: `Lot ${code}` }),
    ...(made === undefined ? {} : { made: `Made ${made.slice(0, 10)}` }),
    ...(useBy === undefined ? {} : { useBy: `Best used by ${useBy.slice(0, 10)}` }),
    ...(by === '' ? {} : { maker: by }),
  };
}

/**
 * The texts for a label: name, net contents, ingredients by falling mass, allergens, lot, days, maker, keeping.
 *
 * Net contents leave out the jar and lid and are rounded down. The US text gives ounces and grams, and from 1 lb to
 * under 4 lb pounds and ounces between; the EU text grams or milliliters. `batchOfDay` makes a lot code of place, name
 * and day, the same as that of `batchRecord`. This does not check what a law asks of your label.
 *
 * @throws StillroomError CONTRADICTION for a use-by day before the day of making, WRONG_DIMENSION, OUT_OF_RANGE
 *
 * Source: NIST Handbook 133 and the model labeling regulation; the two rules on units are recalled (see `basis`); lot code:
 * 21 CFR 113.60(c), day of the year: common practice.
 *
 * @example
 * ```ts
 * import { labelFields } from 'stillroom/record';
 *
 * const label = labelFields({
 *   name: 'Peach jam',
 *   net: '18 oz',
 *   ingredients: [{ name: 'sugar', mass: '1.2 kg' }, { name: 'peaches', mass: '1.4 kg' }],
 *   made: '2026-08-14',
 *   batchOfDay: 1,
 * });
 * label.netContents; // => 'Net Wt 18 oz (1 lb 2 oz) 510 g'
 * label.ingredientLine; // => 'Ingredients: peaches, sugar'
 * label.lot; // => 'Lot PEACH-JAM-2026-226-1'
 * ```
 */
export function labelFields(input: LabelFieldsInput): LabelFields {
  const asked = readInput(schema, input);
  const { net, market = 'US', made, useBy } = asked;
  if (made !== undefined && useBy !== undefined && useBy.slice(0, 10) < made.slice(0, 10)) {
    fail('CONTRADICTION', 'useBy', useBy, `a day on or after ${made}`);
  }
  const code = codeOf(asked);
  const texts = textsOf(asked, code);
  const rules = [
    'tare',
    ...(market === 'US' ? ['dual-units', 'pounds-and-ounces'] : []),
    ...(isMass(net) ? [] : ['liquid-at-20-degc']),
  ].map((id) => rowNamed(LABEL_RULES, id));
  return answer({
    ...texts,
    labelLines: Object.values(texts),
    basis: [
      ...rules.map((row) => basisOf(row, 'netContents', row.text)),
      ...(asked.ingredients === undefined ? [] : [practiceBasis('ingredientLine', 'heaviest first')]),
      ...(asked.batchOfDay === undefined ? [] : lotCodeBasis('lot')),
    ],
    cautions: [recordCaution('label-law-differs'), ...(market === 'US' ? [caution('recalled')] : [])],
  });
}
