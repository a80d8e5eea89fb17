/** The syrup that jars of fruit take: the printed cups for a load, shared out by the jar. */
import { fail } from '../errors/StillroomError';
import { reading } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import { type JarInput, type ReadJar, readJar } from '../words/jar';
import { brixOfCups, type CanningSyrupRow, canningSyrup, STRENGTHS } from './printedSyrups';

const JARS = 'how many jars, 1 to 1,000: a whole number with `jar`, or a text such as "7 quarts"';
/** The longest text that is read. */
const LONGEST = 60;

export interface Jars {
  readonly count: number;
  readonly jar?: ReadJar;
}

/** Reads `7`, or the count and the size in one text: `"7 quarts"`. */
export const jarsField = () =>
  reading<number | string, Jars>((given) => {
    if (typeof given !== 'number' && typeof given !== 'string') fail('WRONG_TYPE', '', given, JARS);
    const [, digits, size] =
      typeof given === 'string' ? (/^(\d{1,4})[\s-]+(\S.*)$/.exec(given.slice(0, LONGEST).trim()) ?? []) : [];
    if (typeof given === 'string' && digits === undefined) fail('NOT_A_QUANTITY', '', given, JARS);
    const count = typeof given === 'number' ? given : Number(digits);
    if (!Number.isInteger(count) || count < 1 || count > 1000) fail('OUT_OF_RANGE', '', given, JARS);
    return size === undefined ? { count } : { count, jar: readJar(size, '') };
  });
export const jarField = () => reading<JarInput, ReadJar>((given) => readJar(given, ''));

/** Sugar and water in cups, as a page prints them. */
export interface Cups {
  readonly sugar: number;
  readonly water: number;
  /** Cups of syrup, where the page prints them. */
  readonly made?: number;
}

/** The size of the jars, named once. */
export function jarOf({ jar: said }: Jars, jar: ReadJar | undefined, given: unknown): ReadJar {
  if (said !== undefined && jar !== undefined) fail('CONTRADICTION', 'jar', given, 'the size of the jars once');
  return said ?? jar ?? fail('MISSING', 'jar', undefined, 'the size of the jars, such as "pint"');
}

/**
 * The printed cups for a number of jars: a ninth of the batch of 9 pints for each pint; for quarts a quarter of it up
 * to 4, a seventh of the batch of 7 quarts for more. Other jars count as pints, by their volume.
 */
export function cupsForJars(row: CanningSyrupRow, count: number, jar: ReadJar): Cups {
  const quarts = jar.size?.name === 'quart';
  const large = quarts && count > 4;
  const share = quarts ? count / (large ? 7 : 4) : (count * valueIn(jar.volume, 'pint')) / 9;
  return {
    sugar: share * (large ? row.sugar7Quarts : row.sugar9Pints),
    water: share * (large ? row.water7Quarts : row.water9Pints),
  };
}

/** The printed strength nearest to a Brix: its volume is what the jars take. */
export const nearest = (brix: number): CanningSyrupRow =>
  STRENGTHS.map(canningSyrup)
    .map((row) => ({ row, off: Math.abs(brixOfCups(row.percent, 100 - row.percent) - brix) }))
    .sort((one, other) => one.off - other.off)[0]?.row as CanningSyrupRow;
