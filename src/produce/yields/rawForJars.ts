import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import type { Given } from '../../common/given';
import { fail } from '../../errors/StillroomError';
import { food, form } from '../../foods/fields';
import { fields, optional, readInput } from '../../quantity/fields';
import { roundToStep } from '../../quantity/fractions';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { NotKnown } from '../../sources/no';
import { count } from '../../words/count';
import { jar as jarWord, type ReadJar } from '../../words/jar';
import { mapSpan, type Span, spanIn } from '../span';
import { bought, massBought } from '../weights/asBought';
import { type JarAnswer, type Need, needFor } from './jarNeed';
import { guideQuart } from './printed';

const JARS_AT_MOST = 1_000_000;
const rawSchema = fields({
  /** A fruit or vegetable by any of its names, with or without a form: `peach`, `peach halves`. */
  food: food(),
  /** `halves`, `slices`, `whole`, `crushed`, `sauce`, `juice` ...; `frozen` for freezer packs. */
  form: optional(form()),
  /** A size by name (`half-pint`, `pint`, `12 oz` ...), a volume or a measured jar. */
  jar: jarWord(),
  /** How many jars to fill, 1 to 1,000,000. */
  jars: count('jars', 1, JARS_AT_MOST),
});
const jarsSchema = fields({
  /** A fruit or vegetable by any of its names, with or without a form: `peach`, `peach halves`. */
  food: food(),
  /** `halves`, `slices`, `whole`, `crushed`, `sauce`, `juice` ...; `frozen` for freezer packs. */
  form: optional(form()),
  /** A size by name, a volume or a measured jar. */
  jar: jarWord(),
  /** As bought or picked: a mass, a volume, or a number of pieces or containers; in place of `jars`. */
  raw: bought(),
});
export type RawForJarsInput = Given<z.input<typeof rawSchema>>;
export type JarsFromRawInput = Given<z.input<typeof jarsSchema>>;

/** What to buy or pick. */
export interface RawForJars extends JarAnswer {
  /** The jar by name. */
  readonly jar: string;
  /** How many of them. */
  readonly jars: number;
  /** What they take as bought, in lb. */
  readonly raw: Range<Quantity<'mass'>>;
}
/** What a raw amount fills. */
export interface JarsFromRaw extends JarAnswer {
  /** The jar by name. */
  readonly jar: string;
  /** Full jars, rounded down. */
  readonly jars: Range<number>;
  /** Raw mass that one jar takes, in the unit of `raw`. */
  readonly rawPerJar: Range<Quantity<'mass'>>;
}

/** The printed pounds for one jar and for a canner load of them. */
interface JarNeed {
  readonly perJar: Span;
  /** A printed load: the number of jars, and the pounds they take. */
  readonly load: { readonly jars: number; readonly pounds: number } | undefined;
}

const QUARTS_IN_LOAD = 7;
const PINTS_IN_LOAD = 9;

function jarNeed({ quart, guide }: Pick<Need, 'quart' | 'guide'>, jar: ReadJar): JarNeed {
  const quarts = valueIn(jar.volume, 'quart');
  const scaled = (likely: number): Span => mapSpan(quart, (pounds) => (pounds / quart.likely) * likely);
  const plain = scaled(quart.likely * quarts);
  if (guide === undefined) return { perJar: plain, load: undefined };
  if (jar.name === 'quart') {
    const pounds = guide.lbPer7Quarts;
    return {
      perJar: scaled(guideQuart(guide)),
      load: pounds === undefined ? undefined : { jars: QUARTS_IN_LOAD, pounds },
    };
  }
  if (jar.name === 'half-pint' && guide.lbPer9HalfPints !== undefined) {
    return {
      perJar: scaled(guide.lbPer9HalfPints / PINTS_IN_LOAD),
      load: { jars: PINTS_IN_LOAD, pounds: guide.lbPer9HalfPints },
    };
  }
  if (quarts > 0.5) return { perJar: plain, load: undefined };
  const { lbPer9Pints: pints, lbPer9PintsRange: range } = guide;
  const load = pints ?? (range === undefined ? undefined : (range[0] + range[1]) / 2);
  if (load === undefined) return { perJar: plain, load: undefined };
  const perPint = guide.lbPerPint ?? load / PINTS_IN_LOAD;
  return {
    perJar: scaled(perPint * quarts * 2),
    load: jar.name === 'pint' ? { jars: PINTS_IN_LOAD, pounds: load } : undefined,
  };
}

/**
 * Pounds for a number of jars: the printed average a jar, held between the printed loads that they fill and that
 * they would go into, so that every printed figure comes out as printed and more jars never take less.
 */
function poundsFor({ perJar, load }: JarNeed, jars: number): Span {
  const even = perJar.likely * jars;
  const likely =
    load === undefined
      ? even
      : Math.min(Math.max(even, Math.floor(jars / load.jars) * load.pounds), Math.ceil(jars / load.jars) * load.pounds);
  return { low: Math.min(perJar.low * jars, likely), likely, high: Math.max(perJar.high * jars, likely) };
}

/** The most jars that these pounds fill: `poundsFor` turned round. */
function jarsFilled({ perJar, load }: JarNeed, pounds: number): number {
  const floor = (value: number): number => roundToStep(value, 1, 'down').toNumber();
  const even = floor(pounds / perJar.likely);
  if (load === undefined) return even;
  const full = floor(pounds / load.pounds) * load.jars;
  return Math.min(Math.max(even, full), full + load.jars - 1);
}

/**
 * How much raw food to buy or pick for a number of jars; or, from the `raw` amount at hand, how many full jars it fills:
 * have jars ready for the high end, and plan on the low one.
 *
 * The printed road first: pounds for a load of 7 quarts or 9 pints, the printed average a jar, and the jars printed
 * for a bushel, lug or crate. The likely figure is the printed average times the jars, held between the printed
 * loads; low and high are the least and most pounds a jar that the tables give. Where nothing is printed: jar volume
 * x weight of a loose measure x packing / share left, with a wider range. Freezer packs (`form: 'frozen'`) have the pounds
 * that are printed for a frozen pint, and nothing where none are.
 *
 * @returns `raw` in lb, as the tables print it; of a `raw` amount `jars` whole, rounded down at each end, and `rawPerJar` in
 *   its unit; `road` says which way it came; `known: false` where a figure is missing, and which, or where no table weighs
 *   the amount
 * @throws StillroomError UNKNOWN_NAME for a food, form or jar that is in no table; CONTRADICTION for both `raw` and `jars`
 *
 * Sources: Complete Guide to Home Canning, Guides 2 to 4; Georgia and Michigan yield tables beside it; for frozen pints
 * Home and Garden Bulletin 10 (most rows recalled, and marked so) and UGA Circular 780.
 *
 * @example
 * ```ts
 * import { rawForJars } from 'stillroom/produce';
 *
 * const peaches = rawForJars({ food: 'peaches', form: 'halves', jar: 'quart', jars: 7 });
 * peaches.known && peaches.raw.likely; // => { value: 17.5, unit: 'lb' }
 * const tomatoes = rawForJars({ food: 'whole tomatoes', jar: 'pint', jars: 9 });
 * tomatoes.known && tomatoes.raw.likely; // => { value: 13, unit: 'lb' }
 * const apples = rawForJars({ food: 'apples', form: 'sliced', jar: 'quart', raw: '22 lb' });
 * apples.known && apples.jars.likely; // => 8
 * const plums = rawForJars({ food: 'plums', form: 'frozen', jar: 'pint', raw: '50 lb' });
 * plums.known && plums.jars; // => { low: 33, likely: 40, high: 50 }
 * ```
 */
export function rawForJars(input: JarsFromRawInput): JarsFromRaw | NotKnown;
export function rawForJars(input: RawForJarsInput): RawForJars | NotKnown;
export function rawForJars(input: RawForJarsInput | JarsFromRawInput): RawForJars | JarsFromRaw | NotKnown {
  if (typeof input !== 'object' || input === null || !('raw' in input)) return rawOf(input);
  if ('jars' in input) fail('CONTRADICTION', 'raw', input.raw, 'the raw amount or how many jars, not both');
  return jarsFromRaw(input);
}

function rawOf(input: RawForJarsInput): RawForJars | NotKnown {
  const given = readInput(rawSchema, input);
  const { jar } = given;
  const found = needFor(given.food, given.form);
  if (!found.known) return answer(found);
  const { quart, guide, ...need } = found;
  const pounds = poundsFor(jarNeed({ quart, guide }, jar), given.jars);
  return answer({ ...need, jar: jar.name, jars: given.jars, raw: spanIn(pounds, 'lb', 'lb') });
}

/** How many full jars a raw amount fills. */
function jarsFromRaw(input: JarsFromRawInput): JarsFromRaw | NotKnown {
  const given = readInput(jarsSchema, input);
  const { jar } = given;
  const found = needFor(given.food, given.form);
  if (!found.known) return answer(found);
  const amount = massBought(given.food.id, given.raw);
  if (!amount.known) return answer(amount);
  const { quart, guide, ...need } = found;
  const { low, likely, high } = amount.raw;
  const one = jarNeed({ quart, guide }, jar);
  const most = jarsFilled(one, valueIn(likely, 'lb'));
  const whole = (raw: Quantity<'mass'>, perJar: number): number =>
    roundToStep(valueIn(raw, 'lb') / perJar, 1, 'down').toNumber();
  return answer({
    ...need,
    jar: jar.name,
    jars: {
      low: Math.min(whole(low, one.perJar.high), most),
      likely: most,
      high: Math.max(whole(high, one.perJar.low), most),
    },
    rawPerJar: spanIn(one.perJar, 'lb', likely.unit),
    basis: [
      ...need.basis.map((line) => ({ ...line, of: line.of === 'raw' ? 'rawPerJar' : line.of })),
      ...amount.basis.map((line) => ({ ...line, of: 'jars' })),
    ],
    cautions: [...need.cautions, ...amount.cautions],
  });
}
