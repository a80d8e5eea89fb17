/** How far above water a sucrose syrup boils, in plain numbers: the sources, and what they make of a Brix or a rise. */
import browneJson from '../../data/solution/boiling-rise-browne.json';
import equationsJson from '../../data/solution/boiling-rise-equations.json';
import { fail } from '../errors/StillroomError';
import { optional } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { boilingTemperature } from '../steam/boilingTemperature';
import { saturationKelvin, saturationPascals } from '../steam/saturation';
import { elevation } from '../words/elevation';
import { pressure } from '../words/pressure';
import { between, type Point, solveRising } from './table';
import type { browneRow, riseEquationRow } from './tables';

type BrowneRow = RowOf<typeof browneRow>;
type EquationRow = RowOf<typeof riseEquationRow>;
const browne = asTable<BrowneRow>(browneJson).rows;
const brownePoints: readonly Point[] = [[0, 0], ...browne.map((row): Point => [row.brix, row.rise])];
const equations = asTable<EquationRow>(equationsJson).rows;
const byId = <Letters extends string>(id: string) =>
  equations.find((row) => row.id === id) as EquationRow & { readonly constants: Readonly<Record<Letters, number>> };
const activity = byId<'Q' | 'a' | 'b' | 'R' | 'sucroseMolarMass' | 'waterMolarMass'>('starzak-peacock');
const cane = byId<'scale' | 'critical' | 'exponent' | 'square' | 'center' | 'offset'>('batterham-norgate');

const SEA_LEVEL = 101325; // Pa: the standard atmosphere
const ZERO_CELSIUS = 273.15;
/** The last Brix that the equations are asked for. */
export const MOST_BRIX = 95;

/** Water activity over a sucrose solution at a temperature in kelvin (Starzak and Peacock). */
function sucroseActivity(brix: number, kelvin: number): number {
  const { Q, a, b, R, sucroseMolarMass, waterMolarMass } = activity.constants;
  const sugar = brix / sucroseMolarMass;
  const x = sugar / (sugar + (100 - brix) / waterMolarMass);
  return (1 - x) * Math.exp((Q / (R * kelvin)) * x * x * (1 + a * x + b * x * x));
}

/** The temperature (K) at which the vapor over the syrup reaches the pressure of the air. */
function boilingKelvin(brix: number, pascals: number): number {
  const water = saturationKelvin(pascals);
  return solveRising((kelvin) => sucroseActivity(brix, kelvin) * saturationPascals(kelvin), pascals, water, water + 80);
}

/** One source's rise above boiling water in degC at a Brix and an air pressure; undefined beyond its last Brix. */
type Rise = (brix: number, pascals: number) => number | undefined;

/** The rise by the equation that is followed. */
export const followedRise = (brix: number, pascals: number): number =>
  boilingKelvin(brix, pascals) - saturationKelvin(pascals);

/** The table is for sea level; elsewhere it is scaled as the equation scales. */
const browneRise: Rise = (brix, pascals) => {
  const atSea = between(brownePoints, brix);
  if (atSea === undefined || brix === 0) return atSea;
  return (atSea * followedRise(brix, pascals)) / followedRise(brix, SEA_LEVEL);
};

const caneRise: Rise = (brix, pascals) => {
  const { scale, critical, exponent, square, center, offset } = cane.constants;
  const t = saturationKelvin(pascals) - ZERO_CELSIUS;
  return ((scale * (273 + t) ** 2 * brix ** 2) / (critical - t) ** exponent) * (square * (brix - center) ** 2 + offset);
};

const LAST_BROWNE = browne.at(-1) as BrowneRow;
/** The other sources, for the range: their rise and the last Brix they reach. */
const OTHERS: readonly { readonly source: string; readonly rise: Rise; readonly last: number }[] = [
  { source: LAST_BROWNE.source, rise: browneRise, last: LAST_BROWNE.brix },
  { source: cane.source, rise: caneRise, last: MOST_BRIX },
];

/** The rise by the equation that is followed, and by each source that reaches so far, under its id. */
export function risesAt(brix: number, pascals: number): { likely: number; bySource: Record<string, number> } {
  const likely = followedRise(brix, pascals);
  const bySource: Record<string, number> = { [activity.source]: likely };
  for (const { source, rise } of OTHERS) {
    const degrees = rise(brix, pascals);
    if (degrees !== undefined) bySource[source] = degrees;
  }
  return { likely, bySource };
}

/** The Brix that each source makes of a rise: the one followed, and the ends of all. */
export function brixOfRise(rise: number, pascals: number): Range<number> {
  const brix = solveRising((candidate) => followedRise(candidate, pascals), rise, 0, MOST_BRIX);
  const others = OTHERS.flatMap(({ rise: riseOf, last }) => {
    const at = (candidate: number) => riseOf(candidate, pascals) as number;
    return at(last) < rise ? [] : [solveRising(at, rise, 0, last)];
  });
  return { low: Math.min(brix, ...others), likely: brix, high: Math.max(brix, ...others) };
}

/** What a rise rests on: the paths of the answer's figure and of its range. */
export const riseBasis = (of: string, range: string): Basis[] => [
  { ...basisOf(activity, of, 'boiling-point rise of sucrose solutions'), kind: 'equation' },
  ...browne.slice(0, 1).map((row) => basisOf(row, range, 'boiling-point rise by an older handbook')),
  basisOf(cane, range, 'boiling-point rise of cane syrups'),
];

/** The air over the pot: its elevation or its pressure. */
export const placeFields = {
  /** Of the kitchen, -500 to 5,000 m; sea level when neither this nor `pressure` is given. */
  elevation: /* @__PURE__ */ optional(elevation()),
  /** Absolute pressure over the pot, 5 to 200 kPa, instead of the elevation. */
  pressure: /* @__PURE__ */ optional(pressure({ min: { value: 5, unit: 'kPa' }, max: { value: 200, unit: 'kPa' } })),
};

/** Where the pot is. */
export interface Place {
  readonly water: Quantity<'temperature'>;
  readonly pascals: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The boil of water there; without a place it is the standard atmosphere, which has no weather to mind. */
export function placeOf(given: {
  elevation?: Quantity<'length'> | undefined;
  pressure?: Quantity<'pressure'> | undefined;
}): Place {
  if (given.elevation !== undefined && given.pressure !== undefined) {
    fail('CONTRADICTION', 'pressure', given.pressure, 'an elevation or a pressure, not both');
  }
  const boil = boilingTemperature(
    given.elevation === undefined
      ? { pressure: given.pressure ?? { value: SEA_LEVEL, unit: 'Pa' } }
      : { elevation: given.elevation },
  );
  const nowhere = given.elevation === undefined && given.pressure === undefined;
  return {
    water: boil.temperature,
    pascals: saturationPascals(valueIn(boil.temperature, 'K')),
    basis: boil.basis,
    cautions: nowhere ? [] : boil.cautions,
  };
}
