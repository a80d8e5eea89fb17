import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import { parseQuantity } from '../quantity/parseQuantity';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, behind, type Caution, measured } from '../sources/basis';
import { basisOf, practiceBasis } from '../sources/table';
import { waterDensity } from '../steam/waterDensity';
import { type JarSizeRow, jar as jarWord, type ReadJar } from '../words/jar';
import { length } from '../words/length';
import { mass } from '../words/mass';
import { type JarMouth, type MouthRow, mouthRow, mouth as mouthWord } from '../words/mouth';
import { temperature } from '../words/temperature';
import { jarCaution } from './cautions';

/** A jar as the other functions use it. */
export interface Jar {
  /** What people call it: `wide-mouth pint`. */
  readonly name: string;
  /** The published size that it is, or is sold as; absent for a jar of no published size. */
  readonly size?: string;
  /** What it holds to the rim: measured, or the nominal capacity. */
  readonly capacity: Quantity<'volume'>;
  /** Which of the two the capacity is. */
  readonly capacityIs: 'brimful' | 'nominal';
  /** `regular` or `wide`; absent where the opening was measured. */
  readonly mouth?: JarMouth;
  /** Diameter of the mouth. */
  readonly opening: Quantity<'length'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const openingOf = (row: MouthRow) => ({
  /** `regular` or `wide`, where the jar does not say. */
  mouth: row.name,
  opening: parseQuantity(`${row.opening_in} in`, 'length'),
});
const openingBasis = (row: MouthRow): Basis => basisOf(row, 'opening', `diameter of a ${row.name} mouth, about`);
const measuredCapacity = (capacityIs: Jar['capacityIs']): Basis =>
  measured('capacity', `${capacityIs} capacity of the jar`);
const sizeBasis = (row: JarSizeRow): Basis => basisOf(row, 'capacity', `nominal capacity of the ${row.name} jar`);
const regularMouth = (): Basis => practiceBasis('mouth', 'a regular mouth, as none was named');
const sizeCautions = (row: JarSizeRow | undefined): Caution[] =>
  row?.name === 'half-gallon' ? [jarCaution('half-gallon-juice-only')] : [];

/** The mouth that is asked for and the one that the jar's name says must agree. */
function mouthOf({ mouth: said }: ReadJar, asked: JarMouth | undefined): JarMouth | undefined {
  if (said !== undefined && asked !== undefined && said !== asked) {
    fail('CONTRADICTION', 'mouth', asked, `the mouth that the jar's name says, ${said}`);
  }
  return asked ?? said;
}

function soldJar(read: ReadJar, asked: JarMouth | undefined): Jar {
  const { name, size, volume } = read;
  const mouth = mouthOf(read, asked);
  const row = mouthRow(mouth ?? 'regular');
  const assumed: Basis[] = mouth === undefined ? [regularMouth()] : [];
  const plain = size === undefined ? `${name} jar` : name;
  return {
    name: row.name === 'wide' ? `wide-mouth ${plain}` : plain,
    ...(size === undefined ? {} : { size: name }),
    capacity: volume,
    capacityIs: 'nominal',
    ...openingOf(row),
    basis: [size === undefined ? measuredCapacity('nominal') : sizeBasis(size), openingBasis(row), ...assumed],
    cautions: [jarCaution('nominal-capacity'), ...sizeCautions(size)],
  };
}

type Measured = NonNullable<ReadJar['measured']>;

function ownJar(read: ReadJar, own: Measured, asked: JarMouth | undefined): Jar {
  const { size, volume } = read;
  const given = own.brimful ?? own.nominal;
  const capacity = given ?? volume;
  const mouth = own.opening === undefined ? mouthOf(read, asked) : undefined;
  const row = mouth && mouthRow(mouth);
  const opening = own.opening ?? (row && openingOf(row).opening);
  if (opening === undefined) {
    fail('MISSING', 'jar.opening', undefined, 'the diameter inside the mouth (or mouth: "regular" or "wide")');
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
      given === undefined && size !== undefined ? sizeBasis(size) : measuredCapacity(capacityIs),
      row === undefined ? measured('opening', 'diameter of the mouth') : openingBasis(row),
    ],
    cautions: [...(capacityIs === 'nominal' ? [jarCaution('nominal-capacity')] : []), ...sizeCautions(size)],
  };
}

/** The jar that was read, with its capacity and mouth. */
export const resolveJar = (read: ReadJar, mouth: JarMouth | undefined): Jar =>
  read.measured === undefined ? soldJar(read, mouth) : ownJar(read, read.measured, mouth);

const schema = /* @__PURE__ */ fields({
  /** A size by name, a volume or a measured jar. */
  jar: jarWord(),
  /** `regular` or `wide`, where the jar does not say. */
  mouth: optional(mouthWord()),
});
const weighedSchema = /* @__PURE__ */ fields({
  /** Weight of the water alone that fills the jar to the rim, in place of `jar`. */
  water: mass(),
  /** Of the water, 0 to 100 degC. */
  temperature: temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } }),
  /** Diameter inside the mouth, up to 1 m; or `mouth`. */
  opening: optional(length({ max: { value: 1, unit: 'm' } })),
  /** `regular` or `wide`; regular where neither is given. */
  mouth: optional(mouthWord()),
});
export type DescribeJarInput = z.input<typeof schema>;
export type WeighedJarInput = z.input<typeof weighedSchema>;

/** A jar whose water was weighed: brimful = mass / density of water at its temperature. */
function weighedJar(input: WeighedJarInput): Jar {
  const { water, temperature: warmth, opening, mouth } = readInput(weighedSchema, input);
  if (opening !== undefined && mouth !== undefined) {
    fail('CONTRADICTION', 'mouth', input.mouth, 'an opening or a mouth, not both');
  }
  const { density, basis } = waterDensity({ temperature: warmth });
  const unit = water.unit === 'lb' || water.unit === 'oz' ? 'fl oz' : 'mL';
  const capacity = quantityIn<'volume'>(valueIn(water, 'g') / valueIn(density, 'g/mL'), 'mL', unit);
  const row = opening === undefined ? mouthRow(mouth ?? 'regular') : undefined;
  return {
    name: 'measured jar',
    capacity,
    capacityIs: 'brimful',
    ...(row === undefined ? { opening: opening as Quantity<'length'> } : openingOf(row)),
    basis: [
      measured('capacity', 'weight of the water'),
      ...behind('capacity', basis).map((line) => ({ ...line, note: 'density of water' })),
      row === undefined ? measured('opening', 'diameter of the mouth') : openingBasis(row),
      ...(opening === undefined && mouth === undefined ? [regularMouth()] : []),
    ],
    cautions: [],
  };
}

/**
 * What is known of a jar: its size, capacity and mouth, each with where the figure comes from; or what your own jar holds
 * to the rim, from the weight of the water that fills it.
 *
 * A size has a published nominal capacity and no published brimful one; a measured jar is better. Weigh the dry jar,
 * fill it with water to the rim, weigh again, and give the difference as `water`: brimful = mass / density of water at
 * its temperature. The lift of the air, about 1 part in 1,000, is left out. A jar named without its mouth is taken as a
 * regular one, and `basis` says so.
 *
 * Source: USDA Complete Guide to Home Canning (AIB 539), Guide 1; sizes of 4 and 28 oz from Kansas State Extension;
 * density of water by IAPWS SR6-08.
 *
 * @returns name, size, capacity (`capacityIs` brimful or nominal), mouth and its diameter; of weighed water the capacity
 *   in fl oz for a weight in lb or oz, otherwise in mL
 * @throws StillroomError UNKNOWN_NAME for a size in no table, offering the nearest
 *
 * @example
 * ```ts
 * import { describeJar, fillJar } from 'stillroom/jars';
 *
 * const jar = describeJar({ jar: 'wide-mouth pints' });
 * jar.name; // => 'wide-mouth pint'
 * jar.capacity; // => { value: 16, unit: 'fl oz' }
 * jar.opening; // => { value: 3, unit: 'in' }
 * describeJar({ jar: { brimful: '502 mL', opening: '60 mm' } }).capacityIs; // => 'brimful'
 * const { capacity: brimful, opening } = describeJar({ water: '500 g', temperature: '20 degC', opening: '60 mm' });
 * brimful.value; // ≈ 500.9
 * fillJar({ jar: { brimful, opening }, headspace: '12 mm' }).fillVolume.value; // ≈ 467
 * describeJar({ jar: 'firkin' }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function describeJar(input: WeighedJarInput): Jar;
export function describeJar(input: DescribeJarInput): Jar;
export function describeJar(input: DescribeJarInput | WeighedJarInput): Jar {
  if (typeof input === 'object' && input !== null && 'water' in input) return answer(weighedJar(input));
  const { jar, mouth } = readInput(schema, input);
  return answer(resolveJar(jar, mouth));
}
