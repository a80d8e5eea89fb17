/** Jar sizes as the process tables see them: a jar takes the process of the next size the table lists. */
import type { Decimal } from '../common/decimal';
import { fail, StillroomError } from '../errors/StillroomError';
import { reading } from '../quantity/fields';
import { parseQuantity } from '../quantity/parseQuantity';
import { toDecimalIn } from '../quantity/scale';
import type { Quantity, VolumeInput } from '../quantity/types';
import type { ListedJar } from './tables';

/** A jar by its trade name (`"pint"`, `"12 oz"`), or by its nominal volume (`"500 mL"`). */
export type ProcessJarInput = string | VolumeInput;

/** The nominal volume that each listed size is named for. */
const NOMINAL: Readonly<Record<ListedJar, Quantity<'volume'>>> = {
  'half-pint': { value: 0.5, unit: 'pint' },
  pint: { value: 1, unit: 'pint' },
  quart: { value: 1, unit: 'quart' },
  'half-gallon': { value: 0.5, unit: 'gallon' },
};
export const LISTED_JARS = Object.keys(NOMINAL) as readonly ListedJar[];

const nominals = new Map<ListedJar, Decimal>();
/** The nominal volume of a listed size, mL. */
function nominal(size: ListedJar): Decimal {
  const known = nominals.get(size) ?? toDecimalIn(NOMINAL[size], 'mL');
  nominals.set(size, known);
  return known;
}

/** A jar as the caller named it, with its nominal volume. */
export interface ReadJar {
  readonly name: string;
  readonly volume: Quantity<'volume'>;
}

const EXPECTED =
  'a jar: half-pint, pint, quart, half-gallon, 4 oz, 12 oz, 24 oz, 28 oz, or its volume such as "500 mL"';
const NAMES: ReadonlyMap<string, ListedJar> = new Map([
  ['half pint', 'half-pint'],
  ['half gallon', 'half-gallon'],
  ['pint', 'pint'],
  ['pt', 'pint'],
  ['quart', 'quart'],
  ['qt', 'quart'],
]);

function volumeOf(text: string): Quantity<'volume'> {
  const ounces = /^([\d./ ]+)\s*-?\s*(?:oz|ounces?)$/.exec(text);
  return parseQuantity(ounces === null ? text : `${ounces[1]} fl oz`, 'volume', 'jar');
}

/** A listed size as a jar. */
export const listedJar = (size: ListedJar): ReadJar => ({ name: size, volume: NOMINAL[size] });

/** Reads a jar; the name of a listed size wherever the volume is just that. */
export function readJar(given: unknown, path = 'jar'): ReadJar {
  if (given === undefined) fail('MISSING', path, given, EXPECTED);
  if (typeof given !== 'string' && (typeof given !== 'object' || given === null)) {
    fail('WRONG_TYPE', path, given, EXPECTED);
  }
  let volume: Quantity<'volume'>;
  let text = '';
  if (typeof given === 'string') {
    if (given.length > 100) fail('UNKNOWN_NAME', path, given, EXPECTED);
    text = given
      .toLowerCase()
      .replace(/(?<=[a-z\d])-(?=[a-z])|_/g, ' ')
      .replace(/\b(?:canning|jelly|jars?|wide|regular|mouth)\b|\([\d ]*oz\)/g, ' ')
      .replace(/\s+/g, ' ')
      .trim();
    const listed = NAMES.get(text.replace(/s$/, ''));
    try {
      volume = listed === undefined ? volumeOf(text) : NOMINAL[listed];
    } catch (error) {
      if (!(error instanceof StillroomError)) throw error;
      fail(error.code === 'WRONG_DIMENSION' ? 'WRONG_DIMENSION' : 'UNKNOWN_NAME', path, given, EXPECTED);
    }
  } else volume = parseQuantity(given, 'volume', path);
  if (!(volume.value > 0)) fail('OUT_OF_RANGE', path, given, EXPECTED);
  const listed = LISTED_JARS.find((size) => toDecimalIn(volume, 'mL').eq(nominal(size)));
  return { name: listed ?? (text === '' ? `${volume.value} ${volume.unit}` : text), volume };
}

/** The smallest of the listed sizes that holds at least as much as the jar; undefined for a larger jar. */
export function listedSize(jar: ReadJar, sizes: readonly ListedJar[]): ListedJar | undefined {
  const volume = toDecimalIn(jar.volume, 'mL');
  return LISTED_JARS.find((size) => sizes.includes(size) && nominal(size).gte(volume));
}

/** The field of a jar: left out, it says what a jar is. */
export const jarField = () => reading<ProcessJarInput, ReadJar>((given) => readJar(given, ''));
