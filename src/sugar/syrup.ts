import syrupsJson from '../../data/sugar/canning-syrups.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, mass, optional, readInput, volume } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { MassInput, Quantity, TemperatureInput, VolumeInput } from '../quantity/types';
import { liquidTemperature, REFERENCE_TEMPERATURE } from '../solution/fields';
import { densityAt, densityBasis } from '../solution/sucroseDensity';
import { solubilityAt, solubilityBasis } from '../solution/sucroseSolubility';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { brix } from '../words/brix';
import { sugarCaution } from './cautions';
import { massBalance, oneOf } from './inputs';
import { cupOf, sweetenerBasis } from './sweeteners';

export const STRENGTHS = ['very light', 'light', 'medium', 'heavy', 'very heavy'] as const;
/** The names of the canning syrups. */
export type SyrupStrength = (typeof STRENGTHS)[number];

export interface CanningSyrupRow extends Sourced {
  readonly strength: SyrupStrength;
  readonly percent: number;
  readonly water9Pints: number;
  readonly sugar9Pints: number;
  readonly water7Quarts: number;
  readonly sugar7Quarts: number;
  readonly packedIn: string;
}
const rows = asTable<CanningSyrupRow>(syrupsJson).rows;
export const canningSyrup = (strength: SyrupStrength): CanningSyrupRow =>
  rows.find((row) => row.strength === strength) as CanningSyrupRow;

export const ML_PER_CUP = 236.5882365; // exact: 231 in3 / 16
/** Grams of water in a US cup at 20 degC. */
export const CUP_OF_WATER = (densityAt(0, REFERENCE_TEMPERATURE) / 1000) * ML_PER_CUP;

/** Brix by mass of so many cups of sugar stirred into so many cups of water. */
export function brixOfCups(sugar: number, water: number): number {
  const grams = sugar * cupOf('sugar');
  return (100 * grams) / (grams + water * CUP_OF_WATER);
}

/** A Brix that pure sucrose cannot reach at t degC is refused; one inside the spread of the sources is cautioned. */
export function checkDissolves(brix: number, t: number, path: string): Caution[] {
  const { low, high } = solubilityAt(t);
  if (brix > high) {
    fail(
      'OUT_OF_RANGE',
      path,
      brix,
      `at most ${high.toFixed(1)} degrees Brix, all the sugar that water holds at ${Number(t.toFixed(1))} degC`,
    );
  }
  return brix > low ? [sugarCaution('may-crystallize')] : [];
}

const schema = fields({
  brix: optional(brix()),
  strength: optional(choice('a syrup strength', STRENGTHS)),
  volume: optional(volume()),
  mass: optional(mass()),
  temperature: optional(liquidTemperature()),
});
export type SyrupInput = { readonly temperature?: TemperatureInput } & (
  | { readonly brix: number; readonly strength?: undefined }
  | { readonly strength: SyrupStrength; readonly brix?: undefined }
) &
  (
    | { readonly volume: VolumeInput; readonly mass?: undefined }
    | { readonly mass: MassInput; readonly volume?: undefined }
  );
export interface Syrup {
  /** Percent of sugar by mass. */
  readonly brix: number;
  readonly sugar: Quantity<'mass'>;
  readonly water: Quantity<'mass'>;
  readonly mass: Quantity<'mass'>;
  /** What it fills, at the temperature asked for. */
  readonly volume: Quantity<'volume'>;
  /** The sugar in cups of 200 g, as a kitchen without a scale measures it. */
  readonly sugarVolume: Quantity<'volume'>;
  readonly waterVolume: Quantity<'volume'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How much sugar and water make a syrup of a strength, for a volume or a mass of it.
 *
 * By Brix: sugar = mass x Brix/100, the volume from the density of the syrup. By name: the printed percentages of
 * the canning syrups (10, 20, 30, 40, 50) are cups of sugar in cups of sugar plus water, not percent by weight, so a
 * medium syrup is 30 % by volume and 26.6 Brix. Names follow the printed percentage with sugar at 200 g a cup.
 * The volume of a syrup is less than the cups that went into it: dissolved sugar fills some of the water's room.
 *
 * Sources: canning-syrup table (Michigan State University Extension, record 01600835); density ICUMSA SPS-4;
 * weight of a cup of sugar USDA SR28.
 *
 * @param input - `brix` (0 to 100) or `strength` (`very light`, `light`, `medium`, `heavy`, `very heavy`); `volume`
 * or `mass` of syrup; `temperature` (0 to 100 degC, 20 degC when left out) at which it must stay dissolved and at
 * which its volume is taken
 * @returns masses in the unit of the mass given, grams for a volume; volumes likewise, cups for a mass
 * @throws StillroomError OUT_OF_RANGE above the solubility of sugar at that temperature; MISSING, CONTRADICTION
 *
 * @example
 * ```ts
 * import { syrup } from 'stillroom/sugar';
 *
 * syrup({ brix: 30, mass: '1 kg' }).sugar; // => { value: 0.3, unit: 'kg' }
 * syrup({ strength: 'medium', volume: '2 quarts' }).brix; // ≈ 26.6
 * syrup({ brix: 80, volume: '1 L' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function syrup(input: SyrupInput): Syrup {
  const given = readInput(schema, input);
  oneOf(given, ['brix', 'strength']);
  oneOf(given, ['volume', 'mass']);
  const t = given.temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(given.temperature, 'degC');
  const row = given.strength === undefined ? undefined : canningSyrup(given.strength);
  const brix = row === undefined ? (given.brix as number) : brixOfCups(row.percent, 100 - row.percent);
  const cautions = checkDissolves(brix, t, 'brix');
  const density = densityAt(brix, t) / 1000; // g/mL
  const grams =
    given.mass === undefined ? valueIn(given.volume as Quantity<'volume'>, 'mL') * density : valueIn(given.mass, 'g');
  const massUnit = given.mass?.unit ?? 'g';
  const volumeUnit = given.volume?.unit ?? 'cup';
  const sugar = (grams * brix) / 100;
  return answer({
    brix,
    sugar: quantityIn(sugar, 'g', massUnit),
    water: quantityIn(grams - sugar, 'g', massUnit),
    mass: given.mass ?? quantityIn(grams, 'g', massUnit),
    volume: given.volume ?? quantityIn(grams / density, 'mL', volumeUnit),
    sugarVolume: quantityIn(sugar / cupOf('sugar'), 'cup', volumeUnit),
    waterVolume: quantityIn((grams - sugar) / CUP_OF_WATER, 'cup', volumeUnit),
    basis: [
      ...(row === undefined ? [] : [basisOf(row, 'strength')]),
      massBalance('sugar and water'),
      ...densityBasis('volume'),
      ...sweetenerBasis('sugar', 'cups of sugar'),
      ...solubilityBasis('solubility limit'),
    ],
    cautions: [...cautions, sugarCaution('syrup-not-for-safety')],
  });
}
