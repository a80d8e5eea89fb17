/** The word `jar`: a size by name, a nominal volume, or a measured jar; read here for every function. */
import * as z from 'zod/mini';
import sizeTable from '../../data/words/jar-sizes.json';
import { findNamed, nearestNames } from '../common/names';
import { fail, StillroomError, within } from '../errors/StillroomError';
import { fields, length, optional, readInput, reading, volume } from '../quantity/fields';
import { parseQuantity } from '../quantity/parseQuantity';
import { exactIn, valueIn } from '../quantity/scale';
import type { LengthInput, Quantity, VolumeInput } from '../quantity/types';
import { forReaders, id, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';
import { isNumbered, plainJar, sayMouth, volumeText } from './jarText';
import { type JarMouth, mouth } from './mouth';
import { type WordMeaning, word } from './word';

/** A size of home-canning jars, from the smallest up. */
export const jarSizeColumns = () =>
  z.strictObject({
    id: forReaders(id()),
    name: text(),
    synonyms: z.array(text()).check(z.minLength(1)),
    plural: text(),
    nominal_floz: z.int().check(z.positive()),
    nominal_mL: z.string().check(z.regex(/^\d+\.\d+$/)),
    ...sourcedColumns(),
  });
export type JarSizeRow = RowOf<typeof jarSizeColumns>;
export const sizeRows = asTable<JarSizeRow>(sizeTable).rows;
/** The names of the sizes, from the smallest up. */
export const JAR_SIZES: readonly string[] = sizeRows.map(({ name }) => name);

/** What is known of a jar of your own besides its mouth. */
interface MeasuredCapacity {
  /** The size it is sold as (`pint`), for canner loads and processes. */
  readonly size?: string;
  /** Its capacity as sold, where no brimful capacity is known. */
  readonly nominal?: VolumeInput;
  /** What it holds when full to the rim. */
  readonly brimful?: VolumeInput;
}
/** A jar of your own, measured with water and a ruler; it says its opening, or that its mouth is a usual one. */
export type MeasuredJar = MeasuredCapacity &
  (
    | {
        /** Diameter inside the mouth. */
        readonly opening: LengthInput;
        /** `regular` or `wide`. */
        readonly mouth?: string;
      }
    | {
        /** `regular` or `wide`, in place of `opening`. */
        readonly mouth: string;
        /** Diameter inside the mouth. */
        readonly opening?: LengthInput;
      }
  );
/** A size by name (`"pint"`, `"wide-mouth quart"`, `"8 oz"`), a volume (`"500 mL"`), or a measured jar. */
export type JarInput = string | VolumeInput | MeasuredJar;

/** A jar as it was read. */
export interface ReadJar {
  /** The size, or the volume: itself a jar that every function reads. */
  readonly name: string;
  /** The published size, where it is one. */
  readonly size?: JarSizeRow;
  /** What tables of sizes go by: the nominal capacity, or the brimful one of a measured jar that has no other. */
  readonly volume: Quantity<'volume'>;
  /** The mouth, where it was named. */
  readonly mouth?: JarMouth;
  /** What was measured, where it is a measured jar. */
  readonly measured?: {
    readonly nominal?: Quantity<'volume'>;
    readonly brimful?: Quantity<'volume'>;
    readonly opening?: Quantity<'length'>;
  };
}

const EXPECTED = `a jar: a size (${JAR_SIZES.join(', ')}), a volume such as "500 mL", or a measured jar such as { brimful: "500 mL", opening: "70 mm" }`;
const LONGEST = 120;

const capacity = (row: JarSizeRow): Quantity<'volume'> => ({ value: row.nominal_floz, unit: 'fl oz' });
/** Below zero, zero or above; exact numbers are asked only where the doubles are the same. */
function compare(one: Quantity<'volume'>, other: Quantity<'volume'>): number {
  if (one.unit === other.unit) return one.value - other.value;
  return valueIn(one, 'mL') - valueIn(other, 'mL') || exactIn(one, 'mL').cmp(exactIn(other, 'mL'));
}

/** The size that holds just this much. */
const sizeOfVolume = (held: Quantity<'volume'>): JarSizeRow | undefined =>
  sizeRows.find((row) => compare(capacity(row), held) === 0);

function jarOfVolume(held: Quantity<'volume'>, given: unknown, path: string): ReadJar {
  if (!(held.value > 0)) fail('OUT_OF_RANGE', path, given, EXPECTED);
  const size = sizeOfVolume(held);
  return size === undefined ? { name: `${held.value} ${held.unit}`, volume: held } : jarOfSize(size);
}

const jarOfSize = (size: JarSizeRow): ReadJar => ({ name: size.name, size, volume: capacity(size) });

const unknown = (given: string, path: string): never =>
  fail('UNKNOWN_NAME', path, given, EXPECTED, { options: JAR_SIZES, nearest: nearestNames(given, JAR_SIZES) });

/** Reads a text with a number in it as a volume, and any other as the name of a size. */
function textJar(given: string, path: string): ReadJar {
  if (given.length > LONGEST) unknown(given, path);
  const said = sayMouth(given, path);
  const { text, beside } = plainJar(said.rest);
  const jar = isNumbered(text) ? jarOfVolume(readVolume(text, given, path), given, path) : named(text, given, path);
  if (beside !== undefined && compare(readVolume(beside, given, path), jar.volume) !== 0) {
    fail('CONTRADICTION', path, given, `one size: ${jar.name} is not ${beside}`);
  }
  return said.mouth === undefined ? jar : { ...jar, mouth: said.mouth };
}

function named(text: string, given: string, path: string): ReadJar {
  const [size] = text === '' ? [] : findNamed(text, sizeRows);
  return size === undefined ? unknown(given, path) : jarOfSize(size);
}

function readVolume(text: string, given: string, path: string): Quantity<'volume'> {
  try {
    return parseQuantity(volumeText(text), 'volume', path);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    if (error.code === 'WRONG_DIMENSION') fail('WRONG_DIMENSION', path, given, EXPECTED);
    return unknown(given, path);
  }
}

/** The size that a measured jar is sold as. */
const soldAs = () =>
  reading<string, ReadJar & { readonly size: JarSizeRow }>((given: unknown) => {
    const { size, ...jar } = typeof given === 'string' ? textJar(given, '') : fail('WRONG_TYPE', '', given, 'a size');
    return size === undefined ? unknown(given as string, '') : { ...jar, size };
  });

const measuredSchema = /* @__PURE__ */ fields({
  size: optional(soldAs()),
  nominal: optional(volume()),
  brimful: optional(volume()),
  opening: optional(length({ max: { value: 1, unit: 'm' } })),
  mouth: optional(mouth()),
});

/** A jar sold as a size is not as large as the next one: then its process would be too short. */
function checkSize(held: Quantity<'volume'>, size: JarSizeRow | undefined, field: string, given: unknown): void {
  const next = size === undefined ? undefined : sizeRows[sizeRows.indexOf(size) + 1];
  if (next !== undefined && compare(held, capacity(next)) >= 0) {
    fail('CONTRADICTION', field, given, `less than a ${next.name} jar holds, as it is sold as ${size?.name} or less`);
  }
}

function measuredJar(given: MeasuredJar): ReadJar {
  const { size: sold, nominal, brimful, opening, mouth: said } = readInput(measuredSchema, given);
  if (brimful && nominal && compare(brimful, nominal) < 0) {
    fail('CONTRADICTION', 'brimful', given.brimful, 'at least as much as the nominal capacity');
  }
  const size = sold?.size ?? (nominal && sizeOfVolume(nominal));
  const own = size === undefined ? undefined : capacity(size);
  // of two figures the larger: a process must never be that of a smaller jar
  const nominals = [nominal, own].filter((each) => each !== undefined);
  const held = nominals.sort(compare).pop() ?? brimful;
  if (held === undefined) fail('MISSING', 'brimful', undefined, 'what the jar holds when full to the rim');
  if (nominal) checkSize(nominal, size, 'nominal', given.nominal);
  if (brimful) checkSize(brimful, size ?? (nominal && sizeAtLeast(nominal)), 'brimful', given.brimful);
  const mouthSaid = said ?? sold?.mouth;
  return {
    name: size?.name ?? `${held.value} ${held.unit}`,
    ...(size === undefined ? {} : { size }),
    volume: held,
    ...(mouthSaid === undefined ? {} : { mouth: mouthSaid }),
    measured: {
      ...(nominal === undefined ? {} : { nominal }),
      ...(brimful === undefined ? {} : { brimful }),
      ...(opening === undefined ? {} : { opening }),
    },
  };
}

/** Reads a jar of any kind: a size by name, a volume, or a measured jar. */
export function readJar(given: unknown, path = 'jar'): ReadJar {
  if (given === undefined) fail('MISSING', path, given, EXPECTED, { options: JAR_SIZES });
  if (typeof given === 'string') return textJar(given, path);
  if (typeof given !== 'object' || given === null || Array.isArray(given)) fail('WRONG_TYPE', path, given, EXPECTED);
  if ('value' in given || 'unit' in given) return jarOfVolume(parseQuantity(given, 'volume', path), given, path);
  return within(path, () => measuredJar(given as MeasuredJar));
}

/** The smallest published size that holds at least this much; nothing for more than the largest. */
export const sizeAtLeast = (held: Quantity<'volume'>): JarSizeRow | undefined =>
  sizeRows.find((row) => compare(capacity(row), held) >= 0);

/**
 * The published size of the jar, or else the next larger one.
 *
 * @throws StillroomError OUT_OF_RANGE for a jar larger than every published size
 */
export const sizeOf = (jar: ReadJar, path = 'jar'): JarSizeRow =>
  jar.size ??
  sizeAtLeast(jar.volume) ??
  fail('OUT_OF_RANGE', path, jar.name, `a jar no larger than a ${JAR_SIZES[JAR_SIZES.length - 1]}`);

/** The smallest of these sizes that holds at least as much as the jar; nothing for a larger jar. */
export const listedSize = <T extends string>(jar: ReadJar, sizes: readonly T[]): T | undefined =>
  JAR_SIZES.find((size) => sizes.includes(size as T) && holds(size, jar)) as T | undefined;

const holds = (size: string, jar: ReadJar): boolean => compare(capacityOf(size), jar.volume) >= 0;

/** The nominal capacity of a size of the tables. */
export const capacityOf = (size: string): Quantity<'volume'> =>
  capacity(sizeRows.find(({ name }) => name === size) as JarSizeRow);

const MEANING: WordMeaning = {
  name: 'jar',
  kind: 'jar',
  says: 'A jar: a size by name, a nominal volume, or a measured jar.',
  choices: JAR_SIZES,
};

/** A jar of any kind. */
export const jar = () =>
  word(
    reading<JarInput, ReadJar>((given) => readJar(given, '')),
    MEANING,
  );

/** Units of which a jar is written in either. */
const METRIC: ReadonlySet<string> = new Set(['mL', 'L']);

/**
 * The name that jars, loads and products of one kitchen are matched by: `pints` and `16 oz` are both `pint`, and `0.5 L`
 * is `500 mL`.
 */
export function readJarName(given: unknown, path = 'jar'): string {
  const { name, size, volume: held } = readJar(given, path);
  if (size !== undefined || !METRIC.has(held.unit)) return name;
  const litres = exactIn(held, 'L');
  return litres.lt(1) ? `${exactIn(held, 'mL')} mL` : `${litres} L`;
}

/** A jar of any kind, of which only the name is used. */
export const jarName = () =>
  word(
    reading<JarInput, string>((given) => readJarName(given, '')),
    MEANING,
  );
