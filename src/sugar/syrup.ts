import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { MassInput, Quantity, TemperatureInput, VolumeInput } from '../quantity/types';
import { liquidTemperature, REFERENCE_TEMPERATURE } from '../solution/fields';
import { balanceBasis, mixOf } from '../solution/massBalance';
import { densityAt, densityBasis } from '../solution/sucroseDensity';
import { solubilityAt, solubilityBasis } from '../solution/sucroseSolubility';
import { type Basis, type Caution, derived } from '../sources/basis';
import { basisOf } from '../sources/table';
import { brix as brixWord } from '../words/brix';
import type { JarInput } from '../words/jar';
import { mass } from '../words/mass';
import { volume } from '../words/volume';
import { sugarCaution } from './cautions';
import { oneOf, under } from './inputs';
import {
  brixOfCups,
  CUP_OF_WATER,
  canningSyrup,
  freezingSyrup,
  ML_PER_CUP,
  STRENGTHS,
  type SyrupStrength,
} from './printedSyrups';
import { cupOf, sugarBasis } from './sweeteners';
import { type Cups, cupsForJars, jarField, jarOf, jarsField, nearest } from './syrupJars';

const PURPOSES = ['canning', 'freezing'] as const;
const schema = fields({
  /** Degrees Brix, 0 to 100: percent of sugar by weight. */
  brix: optional(brixWord()),
  /** Or the name of a printed syrup: `very light`, `light`, `medium`, `heavy`, `very heavy`. */
  strength: optional(choice('a syrup strength', STRENGTHS)),
  /** How much syrup, by volume. */
  volume: optional(volume()),
  /** Or by mass. */
  mass: optional(mass()),
  /** Or for how many jars of fruit, 1 to 1,000: a count with `jar`, or `"7 quarts"`. */
  jars: optional(jarsField()),
  /** The size of the jars. */
  jar: optional(jarField()),
  /** `canning` when left out; `freezing` for the printed syrups of freezer packs. */
  purpose: optional(choice('what the syrup is for', PURPOSES)),
  /** At which it must stay dissolved and at which its volume is taken, 0 to 100 degC; 20 degC when left out. */
  temperature: optional(liquidTemperature()),
});
type HowStrong =
  | {
      /** Degrees Brix, 0 to 100: percent of sugar by weight. */
      readonly brix: number;
      readonly strength?: undefined;
      readonly purpose?: undefined;
    }
  | {
      /** The name of a printed syrup. */
      readonly strength: SyrupStrength;
      /** `canning` when left out; `freezing` for the printed syrups of freezer packs. */
      readonly purpose?: (typeof PURPOSES)[number];
      readonly brix?: undefined;
    };
type HowMuch =
  | {
      /** How much syrup, by volume. */
      readonly volume: VolumeInput;
      readonly mass?: undefined;
      readonly jars?: undefined;
      readonly jar?: undefined;
    }
  | {
      /** How much syrup, by mass. */
      readonly mass: MassInput;
      readonly volume?: undefined;
      readonly jars?: undefined;
      readonly jar?: undefined;
    }
  | {
      /** For how many jars of fruit: a count, or `"7 quarts"`. */
      readonly jars: number | string;
      /** The size of the jars, where `jars` is a count. */
      readonly jar?: JarInput;
      readonly volume?: undefined;
      readonly mass?: undefined;
    };
export type SyrupInput = HowStrong &
  HowMuch & {
    /** At which it must stay dissolved and at which its volume is taken, 0 to 100 degC; 20 degC when left out. */
    readonly temperature?: TemperatureInput;
  };

export interface Syrup {
  /** Percent of sugar by weight; less than the percentage that a table of canning syrups prints. */
  readonly brix: number;
  /** The percentage that the table prints for the strength: sugar by volume. */
  readonly printedPercent?: number;
  /** The sugar by weight. */
  readonly sugar: Quantity<'mass'>;
  /** The water by weight. */
  readonly water: Quantity<'mass'>;
  /** The syrup it makes, by weight. */
  readonly mass: Quantity<'mass'>;
  /** What it fills, at the temperature asked for. */
  readonly volume: Quantity<'volume'>;
  /** The sugar by measure, as a kitchen without a scale measures it. */
  readonly sugarVolume: Quantity<'volume'>;
  /** The water by measure. */
  readonly waterVolume: Quantity<'volume'>;
  /** Of a canning syrup: the fruit that is usually packed in it. */
  readonly packedIn?: string;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
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

/** Cups as weights: sugar by the weight of a cup, water at 20 degC. */
const weighed = ({ sugar, water }: Cups) => ({ sugar: sugar * cupOf('sugar'), water: water * CUP_OF_WATER });
const volumeOf = (brix: number, grams: number, t: number): number => grams / (densityAt(brix, t) / 1000) / ML_PER_CUP;

/** A syrup as its page prints it, in cups. */
function fromCups(cups: Cups, t: number) {
  const { sugar, water } = weighed(cups);
  const brix =
    100 *
    mixOf([
      { mass: sugar, solids: 1 },
      { mass: water, solids: 0 },
    ]).solids;
  return {
    brix,
    sugar: { value: sugar, unit: 'g' as const },
    water: { value: water, unit: 'g' as const },
    mass: { value: sugar + water, unit: 'g' as const },
    volume: { value: cups.made ?? volumeOf(brix, sugar + water, t), unit: 'cup' as const },
    sugarVolume: { value: cups.sugar, unit: 'cup' as const },
    waterVolume: { value: cups.water, unit: 'cup' as const },
  };
}

/** A syrup of a Brix, for a volume or a mass of it. */
function fromBrix(brix: number, t: number, made: { volume?: Quantity<'volume'>; mass?: Quantity<'mass'> }) {
  const density = densityAt(brix, t) / 1000; // g/mL
  const grams =
    made.mass === undefined ? valueIn(made.volume as Quantity<'volume'>, 'mL') * density : valueIn(made.mass, 'g');
  const massUnit = made.mass?.unit ?? 'g';
  const volumeUnit = made.volume?.unit ?? 'cup';
  const sugar = (grams * brix) / 100;
  return {
    brix,
    sugar: quantityIn(sugar, 'g', massUnit),
    water: quantityIn(grams - sugar, 'g', massUnit),
    mass: made.mass ?? quantityIn(grams, 'g', massUnit),
    volume: made.volume ?? quantityIn(grams / density, 'mL', volumeUnit),
    sugarVolume: quantityIn(sugar / cupOf('sugar'), 'cup', volumeUnit),
    waterVolume: quantityIn((grams - sugar) / CUP_OF_WATER, 'cup', volumeUnit),
  };
}

/** The printed mix for the freezer, scaled to what it makes. */
function forFreezer(strength: SyrupStrength, made: { volume?: Quantity<'volume'>; mass?: Quantity<'mass'> }) {
  const row = freezingSyrup(strength);
  const one = weighed({ sugar: row.sugarCups, water: row.waterCups });
  const batches =
    made.mass === undefined
      ? valueIn(made.volume as Quantity<'volume'>, 'cup') / row.yieldCups
      : valueIn(made.mass, 'g') / (one.sugar + one.water);
  const cups = { sugar: row.sugarCups * batches, water: row.waterCups * batches, made: row.yieldCups * batches };
  return { row, cups };
}

/**
 * How much sugar and water make a syrup, for a volume, a mass or a number of jars of fruit.
 *
 * By Brix: sugar = mass x Brix/100, the volume from the density of the syrup. By name: the printed percentages of
 * the canning syrups (10, 20, 30, 40, 50) are cups of sugar in cups of sugar plus water, not percent by weight, so a
 * medium syrup is 30 % by volume and 26.6 Brix. The volume of a syrup is less than the cups that went into it:
 * dissolved sugar fills some of the water's room.
 *
 * For jars: the printed cups for 9 pints, which also do 4 quarts, or for 7 quarts, shared out by the jar; jars of
 * another size count as pints by their volume. With `brix`, as much syrup as the printed strength nearest to it makes.
 * For the freezer (`purpose`): the five printed mixes, scaled by the volume they make.
 *
 * Sources: canning syrups, Complete Guide to Home Canning, Guide 2 (Michigan State University Extension, record
 * 01600835); freezing syrups, National Center for Home Food Preservation; density ICUMSA SPS-4; weight of a cup of
 * sugar USDA SR28.
 *
 * @param input - `brix` (0 to 100) or `strength` (`very light`, `light`, `medium`, `heavy`, `very heavy`); `volume`,
 * `mass` or `jars` (with `jar`, or `"7 quarts"`); `purpose`: `canning` or `freezing`; `temperature` (0 to 100 degC, 20
 * degC when left out) at which it must stay dissolved and at which its volume is taken
 * @returns masses in the unit of the mass given, otherwise grams; volumes likewise, otherwise cups
 * @throws StillroomError OUT_OF_RANGE above the solubility of sugar at that temperature; MISSING, CONTRADICTION
 *
 * @example
 * ```ts
 * import { syrup } from 'stillroom/sugar';
 *
 * syrup({ brix: 30, mass: '1 kg' }).sugar; // => { value: 0.3, unit: 'kg' }
 * syrup({ strength: 'medium', volume: '2 quarts' }).brix; // ≈ 26.6
 * syrup({ strength: 'medium', jars: '7 quarts' }).sugarVolume; // => { value: 3.75, unit: 'cup' }
 * syrup({ strength: 'medium', volume: '10 cups', purpose: 'freezing' }).sugarVolume; // => { value: 3.5, unit: 'cup' }
 * syrup({ brix: 80, volume: '1 L' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function syrup(input: SyrupInput): Syrup {
  const given = readInput(schema, input);
  const { strength, jars } = given;
  oneOf(given, ['brix', 'strength']);
  oneOf(given, ['volume', 'mass', 'jars']);
  if (given.jar !== undefined && jars === undefined) fail('CONTRADICTION', 'jar', input.jar, 'a jar only with jars');
  if (given.purpose === 'freezing' && (strength === undefined || jars !== undefined)) {
    fail('CONTRADICTION', 'purpose', input.purpose, 'a strength, and a volume or a mass, for the freezer');
  }
  const t = given.temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(given.temperature, 'degC');
  const how = {
    ...(given.volume === undefined ? {} : { volume: given.volume }),
    ...(given.mass === undefined ? {} : { mass: given.mass }),
  };
  if (strength !== undefined && given.purpose === 'freezing') {
    const { row, cups } = forFreezer(strength, how);
    const made = fromCups(cups, t);
    return answer({
      ...made,
      printedPercent: row.percent,
      basis: [basisOf(row, 'sugarVolume', 'sugar, water and yield of the syrup'), sugarBasis('sugar')],
      cautions: [],
    });
  }
  const row = strength === undefined ? undefined : canningSyrup(strength);
  const named = row === undefined ? {} : { printedPercent: row.percent, packedIn: row.packedIn };
  const cautions = [sugarCaution('syrup-not-for-safety')];
  if (jars !== undefined) {
    const jar = jarOf(jars, given.jar, input.jar);
    const cups = cupsForJars(row ?? nearest(given.brix as number), jars.count, jar);
    if (row !== undefined) {
      const basis = [basisOf(row, 'sugarVolume', 'cups of water and sugar'), sugarBasis('sugar')];
      return answer({ ...fromCups(cups, t), ...named, basis: [...basis, ...densityBasis('volume')], cautions });
    }
    const { volume: filled } = fromCups(cups, t);
    how.volume = filled;
  }
  const brix = row === undefined ? (given.brix as number) : brixOfCups(row.percent, 100 - row.percent);
  const dissolves = checkDissolves(brix, t, 'brix');
  return answer({
    ...fromBrix(brix, t, how),
    ...named,
    basis: [
      ...(row === undefined ? [] : [basisOf(row, 'brix', 'strength')]),
      ...(jars === undefined ? [] : [derived('volume', 'as much as the printed syrup nearest in strength makes')]),
      balanceBasis('sugar'),
      ...densityBasis('volume'),
      sugarBasis('sugarVolume'),
      ...under('brix', 'solubility limit', solubilityBasis('brix')),
    ],
    cautions: [...dissolves, ...cautions],
  });
}
