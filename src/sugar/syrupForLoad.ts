import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, readInput, reading } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { REFERENCE_TEMPERATURE } from '../solution/fields';
import { densityAt } from '../solution/sucroseDensity';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { sugarCaution } from './cautions';
import { cupOf, sweetenerBasis } from './sweeteners';
import { brixOfCups, CUP_OF_WATER, canningSyrup, ML_PER_CUP, STRENGTHS, type SyrupStrength } from './syrup';

/** A number of jars: `"7 quarts"`, `"9 pints"`, `"14-quart"`. */
export type SyrupLoad = `${number} ${'pint' | 'pints' | 'quart' | 'quarts'}` | `${number}-${'pint' | 'quart'}`;

const EXPECTED = 'a number of jars such as "7 quarts" or "9 pints", 1 to 1,000';
const LOAD = /^(\d{1,4})[\s-]+(pint|quart)s?$/;

interface Load {
  readonly jars: number;
  readonly jar: 'pint' | 'quart';
}
const loadField = () =>
  reading<SyrupLoad, Load>((given) => {
    if (given === undefined) fail('MISSING', '', given, EXPECTED);
    if (typeof given !== 'string') fail('WRONG_TYPE', '', given, EXPECTED);
    const [, count, jar] = LOAD.exec(given.trim().toLowerCase().slice(0, 40)) ?? [];
    if (count === undefined) fail('NOT_A_QUANTITY', '', given, EXPECTED);
    const jars = Number(count);
    if (jars < 1 || jars > 1000) fail('OUT_OF_RANGE', '', given, EXPECTED);
    return { jars, jar: jar as Load['jar'] };
  });

const schema = fields({ strength: choice('a syrup strength', STRENGTHS), load: loadField() });
export interface SyrupForLoadInput {
  readonly strength: SyrupStrength;
  readonly load: SyrupLoad;
}
export interface SyrupForLoad {
  /** In cups, as printed. */
  readonly sugar: Quantity<'volume'>;
  readonly water: Quantity<'volume'>;
  /** The same on a scale. */
  readonly sugarMass: Quantity<'mass'>;
  readonly waterMass: Quantity<'mass'>;
  /** Percent of sugar by mass, which is less than the percentage the table prints. */
  readonly brix: number;
  /** The percentage the table prints: sugar by volume. */
  readonly printedPercent: number;
  /** Cups of syrup this makes. */
  readonly volume: Quantity<'volume'>;
  /** The fruit that is usually packed in it. */
  readonly packedIn: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The printed cups of water and sugar for a canner load of fruit in syrup, or for another number of jars.
 *
 * The table prints a batch for 9 pints, which also does 4 quarts, and one for 7 quarts. Pints are a ninth of the first
 * each; up to 4 quarts a quarter of it each; more quarts a seventh of the second each.
 *
 * Source: syrups for canning fruit (Michigan State University Extension, record 01600835; Complete Guide to Home
 * Canning, Guide 2). Masses: 200 g of sugar a cup (USDA SR28), water at 20 degC.
 *
 * @param input - `strength`: `very light`, `light`, `medium`, `heavy`, `very heavy`; `load`: `"7 quarts"`, `"9 pints"`
 * @throws StillroomError UNKNOWN_NAME for another strength; NOT_A_QUANTITY for another load
 *
 * @example
 * ```ts
 * import { syrupForLoad } from 'stillroom/sugar';
 *
 * const syrup = syrupForLoad({ strength: 'medium', load: '7 quarts' });
 * syrup.sugar; // => { value: 3.75, unit: 'cup' }
 * syrup.water; // => { value: 8.25, unit: 'cup' }
 * syrup.brix; // ≈ 27.8
 * ```
 */
export function syrupForLoad(input: SyrupForLoadInput): SyrupForLoad {
  const { strength, load } = readInput(schema, input);
  const row = canningSyrup(strength);
  const large = load.jar === 'quart' && load.jars > 4;
  const share = load.jars / (large ? 7 : load.jar === 'pint' ? 9 : 4);
  const sugar = share * (large ? row.sugar7Quarts : row.sugar9Pints);
  const water = share * (large ? row.water7Quarts : row.water9Pints);
  const brix = brixOfCups(sugar, water);
  const grams = sugar * cupOf('sugar') + water * CUP_OF_WATER;
  return answer({
    sugar: { value: sugar, unit: 'cup' },
    water: { value: water, unit: 'cup' },
    sugarMass: { value: sugar * cupOf('sugar'), unit: 'g' },
    waterMass: { value: water * CUP_OF_WATER, unit: 'g' },
    brix,
    printedPercent: row.percent,
    volume: { value: grams / (densityAt(brix, REFERENCE_TEMPERATURE) / 1000) / ML_PER_CUP, unit: 'cup' },
    packedIn: row.packedIn,
    basis: [basisOf(row, 'cups of water and sugar'), ...sweetenerBasis('sugar', 'weight of a cup of sugar')],
    cautions: [sugarCaution('syrup-not-for-safety')],
  });
}
