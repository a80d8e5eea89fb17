import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { findNamed, lookUp } from '../common/names';
import { fail, within } from '../errors/StillroomError';
import { parseAmount } from '../quantity/amount';
import { fields, length, name, optional, readInput, reading, volume } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { LengthInput, Quantity, VolumeInput } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { jarCaution } from './cautions';
import { type JarMouth, type JarSizeRow, type MouthRow, mouthRows, sizeRows } from './tables';

/** A jar of the user's own, measured with water and a ruler. */
export interface MeasuredJar {
  /** The size it is sold as (`pint`), for canner loads and processes. */
  readonly size?: string;
  /** Its capacity as sold, where no brimful capacity is known. */
  readonly nominal?: VolumeInput;
  /** What it holds when full to the rim. */
  readonly brimful?: VolumeInput;
  /** Diameter inside the mouth. */
  readonly opening?: LengthInput;
  /** `regular` or `wide`, in place of `opening`. */
  readonly mouth?: string;
}
/** A size by name (`"pint"`, `"wide-mouth quart"`, `"8 oz"`), or a measured jar. */
export type JarInput = string | MeasuredJar;

/** A jar as the other functions use it. */
export interface Jar {
  readonly name: string;
  /** The published size it is or is sold as; none for a measured jar of no known size. */
  readonly size?: string;
  /** What it holds to the rim: measured, or the nominal capacity. */
  readonly capacity: Quantity<'volume'>;
  readonly capacityIs: 'brimful' | 'nominal';
  readonly mouth?: JarMouth;
  /** Diameter of the mouth. */
  readonly opening: Quantity<'length'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const measuredJar = /* @__PURE__ */ fields({
  size: optional(name('the size the jar is sold as, such as pint')),
  nominal: optional(volume()),
  brimful: optional(volume()),
  opening: optional(length({ max: { value: 1, unit: 'm' } })),
  mouth: optional(name('a mouth: regular or wide')),
});

const LONGEST_NAME = 120;
const WIDE = /\bwide[\s-]*mouth(?:ed)?\b|\bwide\b/i;
const REGULAR = /\b(?:regular|standard)[\s-]*mouth(?:ed)?\b|\b(?:regular|standard)\b/i;

const bareSize = (text: string): string =>
  text
    .replace(WIDE, ' ')
    .replace(REGULAR, ' ')
    .replace(/½/g, ' 1/2')
    .replace(/\b(?:jars?|mason|canning|preserving)\b/gi, ' ')
    // said with "and", which the comparison of names leaves out: it must not become a half-pint
    .replace(/\b(?:pints?|1 pint|one pint) and (?:a )?half\b/i, '24 oz')
    .replace(/\bone and a half pints?\b/i, '24 oz')
    .replace(/(\d)-(?=[a-z])/gi, '$1 ')
    .replace(/\bounces?\b/gi, 'oz')
    .replace(/[,()]/g, ' ')
    .trim();

/** The published size of this name; the mouth may stand in the name and is left out of it. */
export function sizeNamed(text: string, path: string): JarSizeRow {
  const bare = bareSize(text);
  const [found] = findNamed(bare, sizeRows);
  if (found !== undefined) return found;
  return lookUp(text, sizeRows, path, 'jar size, or a measured jar such as { brimful: "500 mL", opening: "70 mm" }');
}

/** The mouth by any of its names. */
const mouthNamed = (text: string, path: string) => lookUp(text, mouthRows, path, 'mouth, regular or wide');

/** The mouth that a name says, such as `wide-mouth pint`. */
const mouthSaid = (text: string): JarMouth | undefined =>
  WIDE.test(text) ? 'wide' : REGULAR.test(text) ? 'regular' : undefined;

const openingOf = (row: MouthRow) => ({
  mouth: row.name,
  opening: { value: Number(parseAmount(row.opening_in)), unit: 'in' } satisfies Quantity<'length'>,
});
const openingBasis = (row: MouthRow): Basis => basisOf(row, `diameter of a ${row.name} mouth, about`);
const sizeBasis = (row: JarSizeRow): Basis => basisOf(row, `nominal capacity of the ${row.name} jar`);
const sizeCautions = (row: JarSizeRow | undefined): Caution[] =>
  row?.name === 'half-gallon' ? [jarCaution('half-gallon-juice-only')] : [];

function namedJar(text: string, mouth: string | undefined): Jar {
  const size = sizeNamed(text, 'jar');
  const said = mouthSaid(text);
  const asked = mouth === undefined ? undefined : mouthNamed(mouth, 'mouth').name;
  if (said !== undefined && asked !== undefined && said !== asked) {
    fail('CONTRADICTION', 'mouth', mouth, `the mouth that the jar's name says, ${said}`);
  }
  const row = mouthNamed(asked ?? said ?? 'regular', 'mouth');
  const assumed: Basis[] =
    asked === undefined && said === undefined
      ? [{ of: 'a regular mouth, as none was named', kind: 'common-practice' }]
      : [];
  return {
    name: row.name === 'wide' ? `wide-mouth ${size.name}` : size.name,
    size: size.name,
    capacity: { value: size.nominal_floz, unit: 'fl oz' },
    capacityIs: 'nominal',
    ...openingOf(row),
    basis: [sizeBasis(size), openingBasis(row), ...assumed],
    cautions: [jarCaution('nominal-capacity'), ...sizeCautions(size)],
  };
}

function ownJar(given: MeasuredJar, mouth: string | undefined): Jar {
  const own = readInput(measuredJar, given);
  const size = own.size === undefined ? undefined : sizeNamed(own.size, 'size');
  if (own.brimful && own.nominal && valueIn(own.brimful, 'mL') < valueIn(own.nominal, 'mL')) {
    fail('CONTRADICTION', 'brimful', given.brimful, 'at least as much as the nominal capacity');
  }
  const measured = own.brimful ?? own.nominal;
  const capacity = measured ?? (size && ({ value: size.nominal_floz, unit: 'fl oz' } as const));
  if (capacity === undefined) fail('MISSING', 'brimful', undefined, 'what the jar holds when full to the rim');
  const asked = own.mouth ?? mouth ?? mouthSaid(own.size ?? '');
  const row = asked === undefined || own.opening !== undefined ? undefined : mouthNamed(asked, 'mouth');
  const opening = own.opening ?? (row && openingOf(row).opening);
  if (opening === undefined) {
    fail('MISSING', 'opening', undefined, 'the diameter inside the mouth (or mouth: "regular" or "wide")');
  }
  const capacityIs = own.brimful === undefined ? 'nominal' : 'brimful';
  return {
    name: size === undefined ? `${capacity.value} ${capacity.unit} jar` : `${size.name} (own jar)`,
    ...(size === undefined ? {} : { size: size.name }),
    capacity,
    capacityIs,
    ...(row === undefined ? {} : { mouth: row.name }),
    opening,
    basis: [
      measured === undefined && size !== undefined
        ? sizeBasis(size)
        : { of: `${capacityIs} capacity of the jar`, kind: 'measured' },
      row === undefined ? { of: 'diameter of the mouth', kind: 'measured' } : openingBasis(row),
    ],
    cautions: [...(capacityIs === 'nominal' ? [jarCaution('nominal-capacity')] : []), ...sizeCautions(size)],
  };
}

/** The field of a jar. It is resolved with `resolveJar`, once the mouth is known. */
export const jarField = () =>
  reading<JarInput, JarInput>((given) => {
    const expected = 'a jar size such as pint, or a measured jar';
    if (given === undefined) fail('MISSING', '', given, expected);
    if (typeof given === 'string' && (given.trim() === '' || given.length > LONGEST_NAME)) {
      fail('UNKNOWN_NAME', '', given, expected);
    }
    if (typeof given !== 'string' && (typeof given !== 'object' || given === null || Array.isArray(given))) {
      fail('WRONG_TYPE', '', given, expected);
    }
    return given as JarInput;
  });
export const mouthField = () => optional(name('a mouth: regular or wide'));

/** The jar behind a name or a measured jar. */
export function resolveJar(jar: JarInput, mouth: string | undefined): Jar {
  return typeof jar === 'string' ? namedJar(jar, mouth) : within('jar', () => ownJar(jar, mouth));
}

const schema = /* @__PURE__ */ fields({ jar: jarField(), mouth: mouthField() });
export type DescribeJarInput = z.input<typeof schema>;

/**
 * What is known of a jar: its size, capacity and mouth, each with where the figure comes from.
 *
 * A size has a published nominal capacity and no published brimful one; a measured jar (see `brimfulCapacity`) is
 * better. A jar named without its mouth is taken as a regular one, and `basis` says so.
 *
 * Source: USDA Complete Guide to Home Canning (AIB 539), Guide 1; sizes of 4 and 28 oz from Kansas State Extension.
 *
 * @param input.jar - a size (`pint`, `wide-mouth quart`, `8 oz`) or a measured jar `{ brimful, opening }`
 * @param input.mouth - `regular` or `wide`, where the jar does not say
 * @returns name, size, capacity (`capacityIs` brimful or nominal), mouth and its diameter
 * @throws StillroomError UNKNOWN_NAME for a size in no table, offering the nearest
 *
 * @example
 * ```ts
 * import { describeJar } from 'stillroom/jars';
 *
 * const jar = describeJar({ jar: 'wide-mouth pints' });
 * jar.name; // => 'wide-mouth pint'
 * jar.capacity; // => { value: 16, unit: 'fl oz' }
 * jar.opening; // => { value: 3, unit: 'in' }
 * describeJar({ jar: { brimful: '502 mL', opening: '60 mm' } }).capacityIs; // => 'brimful'
 * describeJar({ jar: 'firkin' }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function describeJar(input: DescribeJarInput): Jar {
  const { jar, mouth } = readInput(schema, input);
  return answer(resolveJar(jar, mouth));
}
