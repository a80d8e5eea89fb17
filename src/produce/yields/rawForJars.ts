import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { count, fields, mass, readInput } from '../../quantity/fields';
import { roundToStep } from '../../quantity/fractions';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { jar as jarWord, type ReadJar } from '../../words/jar';
import { type CatalogueRow, findProduce } from '../catalogue';
import { caution } from '../cautions';
import { produceDensity } from '../weights/weights';
import { type Form, findForm } from './forms';
import { type CanningRow, guideQuart, printedNeed } from './printed';
import { formField, produceField } from './readyFromRaw';
import { poundsInQuart, readyShare } from './share';
import { mapSpan, memoryCaution, type Span, spanIn, workedOut } from './span';

const JARS_AT_MOST = 1_000_000;
const rawSchema = fields({
  produce: produceField,
  form: formField,
  jar: jarWord(),
  jars: count('jars', 1, JARS_AT_MOST),
});
const jarsSchema = fields({ produce: produceField, form: formField, jar: jarWord(), raw: mass() });
const quartSchema = fields({ produce: produceField, form: formField });
export type RawForJarsInput = z.input<typeof rawSchema>;
export type JarsFromRawInput = z.input<typeof jarsSchema>;
export type ReadyPerQuartInput = z.input<typeof quartSchema>;

/** By which road the answer came: printed pounds for jars, or the share left and the weight of a measure. */
export type YieldRoad = 'printed' | 'weights';

interface JarAnswer {
  readonly produce: string;
  readonly form: string;
  readonly road: YieldRoad;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
export interface RawForJars extends JarAnswer {
  readonly jar: string;
  readonly jars: number;
  readonly raw: Range<Quantity<'mass'>>;
}
export interface JarsFromRaw extends JarAnswer {
  readonly jar: string;
  /** Full jars, rounded down. */
  readonly jars: Range<number>;
  /** Raw weight that one jar takes. */
  readonly rawPerJar: Range<Quantity<'mass'>>;
}
export interface ReadyPerQuart extends JarAnswer {
  /** Ready produce in one US quart jar. */
  readonly ready: Range<Quantity<'mass'>>;
  /** Raw produce for it. */
  readonly raw: Range<Quantity<'mass'>>;
}

/**
 * How much more raw produce a packed jar takes than a loose measure of it holds, where no pounds a quart are printed:
 * the middle, and the ends of the middle four fifths, of what the guide's rows give by the two roads (checked in the
 * tests). It stands for close packing, shrinking on heating and what is sorted out besides the refuse.
 */
export const PACKING: Span = { low: 1.19, likely: 1.56, high: 2 };

/** What jars of one produce and form take, in pounds. */
interface Need extends JarAnswer {
  /** Pounds of raw produce a quart. */
  readonly quart: Span;
  readonly guide: CanningRow | undefined;
}

function weighedQuart(produce: CatalogueRow, form: Form, formText: string): Need | undefined {
  const density = produceDensity(produce, form, true);
  if (density === undefined) return undefined;
  const { share } = readyShare(produce, formText);
  const fluid = form.class === 'juice' || form.class === 'sauce' || form.class === 'puree';
  const packing = fluid ? { low: 1, likely: 1, high: 1 } : PACKING;
  const { low, likely, high } = density.gramsPerMl;
  return {
    produce: produce.name,
    form: form.name,
    road: 'weights',
    guide: undefined,
    quart: {
      low: (poundsInQuart(low) * packing.low) / share.span.high,
      likely: (poundsInQuart(likely) * packing.likely) / share.span.likely,
      high: (poundsInQuart(high) * packing.high) / share.span.low,
    },
    basis: joinBasis(
      share.basis,
      density.estimated ? [] : density.rows.map((row) => basisOf(row, 'weight of a measure')),
      [workedOut('raw weight for a jar', 'jar volume x weight of a measure x packing / share left')],
    ),
    cautions: joinCautions(
      [caution('yield-is-no-process'), caution('yield-varies'), caution('estimate')],
      memoryCaution([...share.rows, ...density.rows]),
    ),
  };
}

function needFor(produceText: string, formText: string): Need {
  const produce = findProduce(produceText);
  const form = findForm(formText);
  const printed = printedNeed(produce, form);
  if (printed !== undefined) {
    return {
      produce: produce.name,
      form: form.name,
      road: 'printed',
      guide: printed.guide,
      quart: printed.lbPerQuart,
      basis: joinBasis(printed.rows.map((row) => basisOf(row, 'raw weight for a jar, load or container'))),
      cautions: joinCautions([caution('yield-is-no-process'), caution('yield-varies')], memoryCaution(printed.rows)),
    };
  }
  const weighed = weighedQuart(produce, form, formText);
  if (weighed !== undefined) return weighed;
  fail(
    'UNKNOWN_NAME',
    'form',
    formText,
    `a form of ${produce.name} with printed pounds for a jar, or a weight per measure`,
  );
}

/** The printed pounds for one jar and for a canner load of them. */
interface JarNeed {
  readonly perJar: Span;
  /** A printed load: so many jars take so many pounds. */
  readonly load: { readonly jars: number; readonly pounds: number } | undefined;
}

const QUARTS_IN_LOAD = 7;
const PINTS_IN_LOAD = 9;

function jarNeed({ quart, guide }: Need, jar: ReadJar): JarNeed {
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
 * How much raw produce to buy or pick for so many jars.
 *
 * The printed road first: pounds for a load of 7 quarts or 9 pints, the printed average a jar, and the jars printed
 * for a bushel, lug or crate. The likely figure is the printed average times the jars, held between the printed
 * loads; low and high are the least and most pounds a jar that the tables give. Where nothing is printed: jar volume
 * x weight of a loose measure x packing / share left, with a wider range.
 *
 * @param input.produce - any name of a fruit or vegetable
 * @param input.form - `halves`, `slices`, `whole`, `crushed`, `sauce`, `juice` ...
 * @param input.jar - a size by name (`half-pint`, `pint`, `12 oz` ...), a volume or a measured jar
 * @param input.jars - 1 to 1,000,000
 * @returns `raw` in lb, as the tables print it; `road` says which way it came
 * @throws StillroomError UNKNOWN_NAME for produce, form or jar that is in no table
 *
 * Sources: Complete Guide to Home Canning, Guides 2 to 4; Georgia and Michigan yield tables beside it.
 *
 * @example
 * ```ts
 * import { rawForJars } from 'stillroom/produce';
 *
 * rawForJars({ produce: 'peaches', form: 'halves', jar: 'quart', jars: 7 }).raw.likely; // => { value: 17.5, unit: 'lb' }
 * rawForJars({ produce: 'tomatoes', form: 'whole', jar: 'pint', jars: 9 }).raw.likely; // => { value: 13, unit: 'lb' }
 * ```
 */
export function rawForJars(input: RawForJarsInput): RawForJars {
  const given = readInput(rawSchema, input);
  const { jar } = given;
  const { quart, guide, ...need } = needFor(given.produce, given.form);
  const pounds = poundsFor(jarNeed({ ...need, quart, guide }, jar), given.jars);
  return answer({ ...need, jar: jar.name, jars: given.jars, raw: spanIn(pounds, 'lb', 'lb') });
}

/**
 * How many full jars a raw weight fills: `rawForJars` turned round. Ready the high end, plan on the low one.
 *
 * @param input.produce - any name of a fruit or vegetable
 * @param input.form - see `rawForJars`
 * @param input.jar - a size by name, a volume or a measured jar
 * @param input.raw - weight as bought or picked
 * @returns `jars` whole, rounded down at each end; `rawPerJar` in the unit of `raw`
 * @throws StillroomError UNKNOWN_NAME for produce, form or jar that is in no table
 *
 * @example
 * ```ts
 * import { jarsFromRaw } from 'stillroom/produce';
 *
 * jarsFromRaw({ produce: 'apples', form: 'sliced', jar: 'quart', raw: '22 lb' }).jars.likely; // => 8
 * ```
 */
export function jarsFromRaw(input: JarsFromRawInput): JarsFromRaw {
  const given = readInput(jarsSchema, input);
  const { jar } = given;
  const { quart, guide, ...need } = needFor(given.produce, given.form);
  const one = jarNeed({ ...need, quart, guide }, jar);
  const pounds = valueIn(given.raw, 'lb');
  const likely = jarsFilled(one, pounds);
  const whole = (perJar: number): number => roundToStep(pounds / perJar, 1, 'down').toNumber();
  return answer({
    ...need,
    jar: jar.name,
    jars: { low: Math.min(whole(one.perJar.high), likely), likely, high: Math.max(whole(one.perJar.low), likely) },
    rawPerJar: spanIn(one.perJar, 'lb', given.raw.unit),
  });
}

/**
 * How much ready produce goes into a US quart jar, and the raw produce for it.
 *
 * ready = printed raw pounds a quart x share left: the ready produce to set aside for a jar, which counts what is
 * sorted out and what juice is lost on the way, so it is more than the drained weight in the jar. The low end pairs
 * few pounds with a high share, the high end many pounds with a low share; the weight of a loose quart is within.
 * Where no pounds are printed, the weight of a loose quart x packing.
 *
 * @param input.produce - any name of a fruit or vegetable
 * @param input.form - see `rawForJars`
 * @returns `ready` and `raw` in lb
 * @throws StillroomError UNKNOWN_NAME for produce or form that is in no table
 *
 * @example
 * ```ts
 * import { readyPerQuart } from 'stillroom/produce';
 *
 * readyPerQuart({ produce: 'peaches', form: 'slices' }).ready.likely.value; // ≈ 2.125
 * ```
 */
export function readyPerQuart(input: ReadyPerQuartInput): ReadyPerQuart {
  const given = readInput(quartSchema, input);
  const { quart, guide: _, ...need } = needFor(given.produce, given.form);
  const { share } = readyShare(findProduce(given.produce), given.form);
  const { span } = share;
  const likely = quart.likely * span.likely;
  const loose = poundsInQuart(produceDensity(findProduce(given.produce), findForm(given.form))?.gramsPerMl.likely ?? 0);
  // leaves and mushrooms sink to a fraction in the jar: their loose weight says nothing about it
  const ends = [quart.low * span.high, quart.high * span.low, ...(loose * PACKING.high < likely ? [] : [loose])];
  const ready = { low: Math.min(likely, ...ends), likely, high: Math.max(likely, ...ends) };
  return answer({
    ...need,
    ready: spanIn(ready, 'lb', 'lb'),
    raw: spanIn(quart, 'lb', 'lb'),
    basis: joinBasis(need.basis, share.basis),
    cautions: joinCautions(need.cautions, memoryCaution(share.rows)),
  });
}
