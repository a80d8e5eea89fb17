import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { choice, fields, isMass, list, mass, massOrVolume, name, optional, readInput } from '../quantity/fields';
import { roundToStep } from '../quantity/fractions';
import { toDecimalIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { recordCaution } from './cautions';
import { isoDate } from './date';
import { labelRuleRows, ruleNamed } from './tables';

const schema = /* @__PURE__ */ fields({
  /** What it is. */
  product: name('what it is, such as "peach jam"'),
  /** Net weight or volume of one jar or bag. */
  net: massOrVolume(),
  /** `US` (the usual) or `EU`. */
  rule: optional(choice('the rule', ['US', 'EU'])),
  /** `{ name, mass }`, put in order of weight; equal weights keep your order. */
  ingredients: optional(list('ingredients', fields({ name: name('an ingredient'), mass: mass() }), 1, 100)),
  lot: optional(name('a lot code')),
  made: optional(isoDate('the day it was made')),
  useBy: optional(isoDate('the day to use it by')),
  maker: optional(name('who made it')),
  place: optional(name('where it was made')),
  keep: optional(name('how to keep it')),
  allergens: optional(list('allergens', name('an allergen'), 0, 50)),
});
export type LabelFieldsInput = Given<z.input<typeof schema>>;

export interface LabelFields {
  readonly product: string;
  readonly netContents: string;
  readonly ingredients?: string;
  readonly allergens?: string;
  readonly lot?: string;
  readonly made?: string;
  readonly useBy?: string;
  readonly maker?: string;
  readonly keep?: string;
  /** The same as lines, in the order they usually stand. */
  readonly lines: readonly string[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

type Amount = Quantity<'mass'> | Quantity<'volume'>;

/** An amount in a unit, always rounded down: a label never promises more than the jar holds. */
const down = (amount: Amount, unit: string, step: number): string =>
  roundToStep(toDecimalIn(amount, unit), step, 'down').toFixed();

/** Grams and millilitres whole, ounces to the tenth; small amounts finer, so that none is written as nothing. */
function netText(net: Amount, rule: 'US' | 'EU'): string {
  const weight = isMass(net);
  const [metric, customary] = weight ? ['g', 'oz'] : ['mL', 'fl oz'];
  const small = toDecimalIn(net, metric).lt(10);
  const metricText = `${down(net, metric, small ? 0.1 : 1)} ${metric}`;
  if (rule === 'EU') return metricText;
  const ounces = `${down(net, customary, small ? 0.01 : 0.1)} ${customary}`;
  const both = ruleNamed(labelRuleRows, 'pounds-and-ounces');
  const pounds = toDecimalIn(net, weight ? 'lb' : 'mL');
  if (!weight) return `Net ${ounces} (${metricText})`;
  if (pounds.lt(both.least_lb as number) || pounds.gte(both.below_lb as number))
    return `Net Wt ${ounces} (${metricText})`;
  const tenths = roundToStep(toDecimalIn(net, 'oz'), 0.1, 'down');
  const whole = tenths.div(16).floor();
  const rest = tenths.minus(whole.times(16));
  const inPounds = rest.isZero() ? `${whole} lb` : `${whole} lb ${rest.toFixed()} oz`;
  return `Net Wt ${ounces} (${inPounds}) ${metricText}`;
}

/**
 * The texts for a label: name, net contents, ingredients by falling weight, allergens, lot, days, maker, keeping.
 *
 * Net contents are without jar and lid, rounded down. The US text gives ounces and grams, and from 1 lb to under 4 lb
 * pounds and ounces between; the EU text grams or millilitres. What a law asks of your label is not checked here.
 *
 * @param input - `made`, `useBy`: days as ISO text; `useBy` not before `made`
 * @param input - `lot`, `maker`, `place`, `keep`, `allergens`: texts of your own
 * @throws StillroomError CONTRADICTION for a use-by day before the made day, WRONG_DIMENSION, OUT_OF_RANGE
 *
 * Source: NIST Handbook 133 and the model labeling regulation; the two rules on units are recalled (see `basis`).
 *
 * @example
 * ```ts
 * import { labelFields } from 'stillroom/record';
 *
 * const label = labelFields({
 *   product: 'Peach jam',
 *   net: '18 oz',
 *   ingredients: [{ name: 'sugar', mass: '1.2 kg' }, { name: 'peaches', mass: '1.4 kg' }],
 *   lot: 'PEACH-JAM-2026-226-1',
 * });
 * label.netContents; // => 'Net Wt 18 oz (1 lb 2 oz) 510 g'
 * label.ingredients; // => 'Ingredients: peaches, sugar'
 * ```
 */
export function labelFields(input: LabelFieldsInput): LabelFields {
  const {
    product,
    net,
    rule = 'US',
    ingredients,
    allergens = [],
    lot,
    made,
    useBy,
    maker,
    place,
    keep,
  } = readInput(schema, input);
  if (made !== undefined && useBy !== undefined && useBy.slice(0, 10) < made.slice(0, 10)) {
    fail('CONTRADICTION', 'useBy', useBy, `a day on or after ${made}`);
  }
  const heaviest = ingredients
    ?.map(({ name: ingredient, mass: amount }) => ({ ingredient, grams: toDecimalIn(amount, 'g') }))
    .sort((a, b) => b.grams.cmp(a.grams))
    .map(({ ingredient }) => ingredient)
    .join(', ');
  const texts = {
    product,
    netContents: netText(net, rule),
    ...(heaviest === undefined ? {} : { ingredients: `Ingredients: ${heaviest}` }),
    ...(allergens.length === 0 ? {} : { allergens: `Contains: ${allergens.join(', ')}` }),
    ...(keep === undefined ? {} : { keep }),
    ...(lot === undefined ? {} : { lot: `Lot ${lot}` }),
    ...(made === undefined ? {} : { made: `Made ${made.slice(0, 10)}` }),
    ...(useBy === undefined ? {} : { useBy: `Best used by ${useBy.slice(0, 10)}` }),
    ...(maker === undefined && place === undefined
      ? {}
      : { maker: [maker, place].filter((part) => part !== undefined).join(', ') }),
  };
  const rules = [
    'tare',
    ...(rule === 'US' ? ['dual-units', 'pounds-and-ounces'] : []),
    ...(isMass(net) ? [] : ['liquid-at-20degC']),
  ];
  return answer({
    ...texts,
    lines: Object.values(texts),
    basis: joinBasis(
      rules.map((id) => basisOf(ruleNamed(labelRuleRows, id), `net contents: ${id}`)),
      heaviest === undefined ? [] : [{ of: 'ingredients by falling weight', kind: 'common-practice' }],
    ),
    cautions: [recordCaution('label-law-differs'), ...(rule === 'US' ? [caution('recalled')] : [])],
  });
}
