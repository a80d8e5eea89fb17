import browneJson from '../../data/solution/boiling-rise-browne.json';
import equationsJson from '../../data/solution/boiling-rise-equations.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { elevation, fields, number, optional, pressure, readInput, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { LengthInput, PressureInput, Quantity, Range, TemperatureInput } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { boilingTemperature } from '../steam/boilingTemperature';
import { saturationKelvin, saturationPascals } from '../steam/saturation';
import { between, type Point, solveRising } from './table';

interface BrowneRow extends Sourced {
  readonly brix: number;
  readonly rise: number;
}
interface EquationRow<Letters extends string> extends Sourced {
  readonly equation: string;
  readonly constants: Readonly<Record<Letters, number>>;
  readonly range: string;
}
const browne = asTable<BrowneRow>(browneJson).rows;
const brownePoints: readonly Point[] = [[0, 0], ...browne.map((row): Point => [row.brix, row.rise])];
const equations = asTable<EquationRow<string>>(equationsJson).rows;
const byName = <Letters extends string>(name: string) =>
  equations.find((row) => row.equation === name) as EquationRow<Letters>;
const activity = byName<'Q' | 'a' | 'b' | 'R' | 'sucroseMolarMass' | 'waterMolarMass'>('starzak-peacock');
const cane = byName<'scale' | 'critical' | 'exponent' | 'square' | 'centre' | 'offset'>('batterham-norgate');

const SEA_LEVEL = 101325; // Pa
const ZERO_CELSIUS = 273.15;
const MOST_BRIX = 95;

/** Water activity over a sucrose solution at a temperature in kelvin (Starzak and Peacock). */
function sucroseActivity(brix: number, kelvin: number): number {
  const { Q, a, b, R, sucroseMolarMass, waterMolarMass } = activity.constants;
  const sugar = brix / sucroseMolarMass;
  const x = sugar / (sugar + (100 - brix) / waterMolarMass);
  return (1 - x) * Math.exp((Q / (R * kelvin)) * x * x * (1 + a * x + b * x * x));
}

/** The temperature (K) at which the vapour over the syrup reaches the pressure of the air. */
function boilingKelvin(brix: number, pascals: number): number {
  const water = saturationKelvin(pascals);
  return solveRising((kelvin) => sucroseActivity(brix, kelvin) * saturationPascals(kelvin), pascals, water, water + 80);
}

/** One source's rise above boiling water in degC at a Brix and an air pressure; undefined beyond its last Brix. */
type Rise = (brix: number, pascals: number) => number | undefined;

const followedRise = (brix: number, pascals: number): number =>
  boilingKelvin(brix, pascals) - saturationKelvin(pascals);

/** The table is for sea level; elsewhere it is scaled as the equation scales. */
const browneRise: Rise = (brix, pascals) => {
  const atSea = between(brownePoints, brix);
  if (atSea === undefined || brix === 0) return atSea;
  return (atSea * followedRise(brix, pascals)) / followedRise(brix, SEA_LEVEL);
};

const caneRise: Rise = (brix, pascals) => {
  const { scale, critical, exponent, square, centre, offset } = cane.constants;
  const t = saturationKelvin(pascals) - ZERO_CELSIUS;
  return ((scale * (273 + t) ** 2 * brix ** 2) / (critical - t) ** exponent) * (square * (brix - centre) ** 2 + offset);
};

const LAST_BROWNE = browne.at(-1) as BrowneRow;
/** The other sources, for the range: their rise and the last Brix they reach. */
const OTHERS: readonly { readonly source: string; readonly rise: Rise; readonly last: number }[] = [
  { source: LAST_BROWNE.source, rise: browneRise, last: LAST_BROWNE.brix },
  { source: cane.source, rise: caneRise, last: MOST_BRIX },
];

function risesAt(brix: number, pascals: number): Record<string, number> {
  const rises: Record<string, number> = { [activity.source]: followedRise(brix, pascals) };
  for (const { source, rise } of OTHERS) {
    const degrees = rise(brix, pascals);
    if (degrees !== undefined) rises[source] = degrees;
  }
  return rises;
}

const boilingRiseBasis: readonly Basis[] = [
  { ...basisOf(activity, 'boiling-point rise'), kind: 'equation' },
  ...browne.slice(0, 1).map((row) => basisOf(row, 'range of the boiling-point rise')),
  basisOf(cane, 'range of the boiling-point rise'),
];

interface Place {
  readonly water: Quantity<'temperature'>;
  readonly pascals: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

function placeOf(given: {
  elevation?: Quantity<'length'> | undefined;
  pressure?: Quantity<'pressure'> | undefined;
}): Place {
  if (given.elevation !== undefined && given.pressure !== undefined) {
    fail('CONTRADICTION', 'pressure', given.pressure, 'an elevation or a pressure, not both');
  }
  const {
    temperature: water,
    basis,
    cautions,
  } = boilingTemperature(
    given.elevation === undefined
      ? { pressure: given.pressure ?? { value: SEA_LEVEL, unit: 'Pa' } }
      : { elevation: given.elevation },
  );
  // without a place it is the standard atmosphere at sea level, of which no weather caution need be said
  const silent = given.elevation === undefined && given.pressure === undefined;
  return { water, pascals: saturationPascals(valueIn(water, 'K')), basis, cautions: silent ? [] : cautions };
}

const placeFields = {
  elevation: optional(elevation()),
  pressure: optional(pressure({ min: { value: 5, unit: 'kPa' }, max: { value: 200, unit: 'kPa' } })),
};
const schema = fields({
  brix: number(`degrees Brix from 0 to ${MOST_BRIX}`, { min: 0, max: MOST_BRIX }),
  ...placeFields,
});
export interface SyrupBoilingTemperatureInput {
  readonly brix: number;
  /** Sea level when neither this nor a pressure is given. */
  readonly elevation?: LengthInput;
  /** Absolute pressure over the pot, instead of the elevation. */
  readonly pressure?: PressureInput;
}
export interface SyrupBoilingTemperature {
  readonly temperature: Quantity<'temperature'>;
  /** What the published sources make of it: the lowest, the one followed, the highest. */
  readonly range: Range<Quantity<'temperature'>>;
  /** Of water, in the same pot. */
  readonly boiling: Quantity<'temperature'>;
  /** Degrees C above boiling water by each source, under its id. */
  readonly rises: Readonly<Record<string, number>>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The temperature at which a sucrose syrup boils: what the thermometer shows in a jam or syrup of this strength.
 *
 * Followed: Starzak and Peacock's water activity of sucrose solutions (1997) with the vapour pressure of water by
 * IAPWS-IF97, solved for aw(T) x psat(T) = air pressure; good at every elevation. Sources differ: at sea level and
 * 70 Brix this gives a rise of 5.0 degC, Browne's handbook of 1912 (which kitchen charts follow) 6.5, and
 * Batterham and Norgate's fit to raw cane syrups (recalled) 6.1. The range shows them; Browne's sea-level figures
 * are scaled to the elevation as the equation scales. Fruit acids and invert sugar raise the boiling point of a jam
 * above that of pure sucrose, towards the high end.
 *
 * @param input - `brix`: 0 to 95; `elevation` (-500 to 5,000 m) or `pressure` (5 to 200 kPa absolute), sea level
 * when neither is given
 * @returns temperatures in degF for an elevation in feet, otherwise in degC
 * @throws StillroomError OUT_OF_RANGE, CONTRADICTION
 *
 * @example
 * ```ts
 * import { syrupBoilingTemperature } from 'stillroom/solution';
 *
 * syrupBoilingTemperature({ brix: 70 }).temperature.value; // ≈ 104.96
 * syrupBoilingTemperature({ brix: 65, elevation: '5000 ft' }).temperature.value; // ≈ 209.5
 * ```
 */
export function syrupBoilingTemperature(input: SyrupBoilingTemperatureInput): SyrupBoilingTemperature {
  const given = readInput(schema, input);
  const place = placeOf(given);
  const rises = risesAt(given.brix, place.pascals);
  const water = valueIn(place.water, 'K');
  const at = (rise: number) => quantityIn(water + rise, 'K', place.water.unit);
  const likely = at(rises[activity.source] as number);
  return answer({
    temperature: likely,
    range: { low: at(Math.min(...Object.values(rises))), likely, high: at(Math.max(...Object.values(rises))) },
    boiling: place.water,
    rises,
    basis: joinBasis(boilingRiseBasis, place.basis),
    cautions: place.cautions,
  });
}

const inverseSchema = fields({ temperature: temperature(), ...placeFields });
export interface BrixFromBoilingInput {
  /** What the thermometer shows in the boiling pot. */
  readonly temperature: TemperatureInput;
  readonly elevation?: LengthInput;
  readonly pressure?: PressureInput;
}
export interface BrixFromBoiling {
  readonly brix: number;
  /** What the published sources make of the same rise. */
  readonly range: Range<number>;
  /** Degrees C above boiling water. */
  readonly rise: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Brix of a boiling syrup or jam from its temperature: the inverse of `syrupBoilingTemperature`. A degree matters
 * (at 65 Brix, 1 degC is some 4 Brix): check the thermometer in boiling water first, and trust a refractometer more.
 *
 * @param input - `temperature` in the boiling pot: from the boiling point of water there to that of 95 Brix;
 * `elevation` or `pressure`, sea level when neither is given
 * @throws StillroomError OUT_OF_RANGE below the boiling point of water at that place or beyond 95 Brix
 *
 * @example
 * ```ts
 * import { brixFromBoiling } from 'stillroom/solution';
 *
 * brixFromBoiling({ temperature: '104.96 degC' }).brix; // ≈ 70.0
 * ```
 */
export function brixFromBoiling(input: BrixFromBoilingInput): BrixFromBoiling {
  const given = readInput(inverseSchema, input);
  const place = placeOf(given);
  const rise = valueIn(given.temperature, 'K') - valueIn(place.water, 'K');
  const most = followedRise(MOST_BRIX, place.pascals);
  if (rise < 0 || rise > most) {
    const show = (degrees: number) =>
      quantityIn(valueIn(place.water, 'K') + degrees, 'K', given.temperature.unit).value.toFixed(1);
    fail(
      'OUT_OF_RANGE',
      'temperature',
      input.temperature,
      `a boiling temperature from ${show(0)} (water here) to ${show(most)} ${given.temperature.unit} (${MOST_BRIX} Brix)`,
    );
  }
  const brix = solveRising((candidate) => followedRise(candidate, place.pascals), rise, 0, MOST_BRIX);
  const others = OTHERS.flatMap(({ rise: riseOf, last }) => {
    const at = (candidate: number) => riseOf(candidate, place.pascals) as number;
    return at(last) < rise ? [] : [solveRising(at, rise, 0, last)];
  });
  return answer({
    brix,
    range: { low: Math.min(brix, ...others), likely: brix, high: Math.max(brix, ...others) },
    rise,
    basis: joinBasis(boilingRiseBasis, place.basis),
    cautions: place.cautions,
  });
}
