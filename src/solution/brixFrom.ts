import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, number, optional, readInput } from '../quantity/fields';
import { mapRange, sureRange } from '../quantity/range';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { temperature } from '../words/temperature';
import { brixOfRise, followedRise, MOST_BRIX, placeFields, placeOf, riseBasis } from './boilingRise';
import { REFERENCE_TEMPERATURE } from './fields';
import { brixOfIndex, HIGHEST_INDEX, indexBasis, LOWEST_INDEX } from './refractiveIndex';
import { correctionBasis, correctionOrFail, sampleTemperature } from './refractometer';
import { baumeOf, brixOfSpecificGravity, densityBasis, gravityOfBaume, specificGravityAt } from './sucroseDensity';
import { constantBasis } from './tables';

const HEAVIEST = /* @__PURE__ */ specificGravityAt(100, REFERENCE_TEMPERATURE);
const STRONGEST = /* @__PURE__ */ baumeOf(HEAVIEST);
const schema = /* @__PURE__ */ fields({
  /** What a refractometer without its own temperature correction shows, 0 to 100 on its Brix scale. */
  reading: optional(number('a reading on the Brix scale from 0 to 100', { min: 0, max: 100 })),
  /** Measured refractive index, 1.33299 (water) to 1.532. */
  refractiveIndex: optional(
    number(`a refractive index from ${LOWEST_INDEX} to ${HIGHEST_INDEX}`, { min: LOWEST_INDEX, max: HIGHEST_INDEX }),
  ),
  /** Of the sample, with `reading` or `refractiveIndex`: 5 to 30 degC; 20 degC when left out. */
  temperature: optional(sampleTemperature()),
  /** Hydrometer's specific gravity at 20 degC, 1 (water) to 1.555. */
  specificGravity: optional(
    number(`a specific gravity 20/20 from 1 to ${HEAVIEST.toFixed(3)}`, { min: 1, max: HEAVIEST }),
  ),
  /** Hydrometer's degrees Baume at 20 degC, 0 to 51.8. */
  baume: optional(number(`degrees Baume from 0 to ${STRONGEST.toFixed(1)}`, { min: 0, max: STRONGEST })),
  /** What the thermometer shows in the boiling pot, from the boil of water there to that of 95 Brix. */
  boiling: optional(temperature()),
  ...placeFields,
});
export type BrixFromInput = z.input<typeof schema>;
type Given = z.output<typeof schema>;

export interface BrixFrom {
  /** Strength of the solution, degrees Brix at 20 degC. */
  readonly brix: number;
  /** What the published sources make of the same reading, where they differ. */
  readonly brixRange: Range<number>;
  /** What was added to the reading of a refractometer for its temperature. */
  readonly correction?: number;
  /** Degrees C above boiling water; where `boiling` is given. */
  readonly rise?: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const WAYS = ['reading', 'refractiveIndex', 'specificGravity', 'baume', 'boiling'] as const;
type Way = (typeof WAYS)[number];
/** The fields that belong to one way of measuring only. */
const BESIDE: Readonly<Record<'temperature' | 'elevation' | 'pressure', readonly Way[]>> = {
  temperature: ['reading', 'refractiveIndex'],
  elevation: ['boiling'],
  pressure: ['boiling'],
};

/** The one way that is given. */
function wayOf(given: Given, asked: BrixFromInput): Way {
  const [way, second] = WAYS.filter((each) => given[each] !== undefined);
  if (way === undefined) fail('MISSING', 'reading', undefined, `one of ${WAYS.join(', ')}`);
  if (second !== undefined) fail('CONTRADICTION', second, asked[second], `only one of ${WAYS.join(', ')}`);
  for (const [field, ways] of Object.entries(BESIDE)) {
    const name = field as keyof typeof BESIDE;
    if (given[name] !== undefined && !ways.includes(way)) {
      fail('CONTRADICTION', name, asked[name], `no ${name} with ${way}; it goes with ${ways.join(' or ')}`);
    }
  }
  return way;
}

/** By a refractometer: the reading at the sample's temperature, and what brings it to 20 degC. */
function byReading(reading: number, sample: Quantity<'temperature'> | undefined, way: Way, basis: Basis[]): BrixFrom {
  const t = sample === undefined ? REFERENCE_TEMPERATURE : valueIn(sample, 'degC');
  const found = correctionOrFail(reading, t, way);
  return {
    brix: reading + found.correction,
    brixRange: mapRange(found.range, (each) => reading + each),
    correction: found.correction,
    basis: [...basis, ...(t === REFERENCE_TEMPERATURE && basis.length > 0 ? [] : correctionBasis(found, 'brix'))],
    cautions: [],
  };
}

/** By a hydrometer, at 20 degC. */
function byGravity(gravity: number, basis: Basis[]): BrixFrom {
  const brix = brixOfSpecificGravity(gravity);
  return { brix, brixRange: sureRange(brix), basis: [...basis, ...densityBasis('brix')], cautions: [] };
}

/** By the thermometer in the boiling pot. */
function byBoiling(boil: Quantity<'temperature'>, given: Given, asked: BrixFromInput): BrixFrom {
  const place = placeOf(given);
  const water = valueIn(place.water, 'K');
  const rise = valueIn(boil, 'K') - water;
  const most = followedRise(MOST_BRIX, place.pascals);
  if (rise < 0 || rise > most) {
    const show = (degrees: number) => quantityIn(water + degrees, 'K', boil.unit).value.toFixed(1);
    fail(
      'OUT_OF_RANGE',
      'boiling',
      asked.boiling,
      `a boiling temperature from ${show(0)} (water here) to ${show(most)} ${boil.unit} (${MOST_BRIX} Brix)`,
    );
  }
  const range = brixOfRise(rise, place.pascals);
  return {
    brix: range.likely,
    brixRange: range,
    rise,
    basis: [...riseBasis('brix', 'brixRange'), ...place.basis.map((line) => ({ ...line, of: 'rise' }))],
    cautions: place.cautions,
  };
}

/**
 * How strong a syrup, a juice or a boiling jam is, from what you measure: a refractometer's reading or index, a
 * hydrometer's specific gravity or degrees Baume, or the temperature of the boiling pot.
 *
 * A reading off 20 degC gets the published correction, on straight lines between rows and columns: below 18 degC of the
 * newer table (OIV-MA-AS2-02, ICUMSA based), above it of the international table of the 1930s as the CRC Handbook gives
 * it; where both reach they differ by up to 0.06, and the range shows both. A refractometer marked ATC corrects itself:
 * leave the temperature out. A refractive index is read in the ICUMSA 1974 table. Gravity and Baume turn `specificGravity`
 * round. A boil turns `syrupBoilingTemperature` round: a degree matters (at 65 Brix, 1 degC is about 4 Brix), so check
 * the thermometer in boiling water first, and trust a refractometer more.
 *
 * @param input - one of `reading` (5 to 75 off 20 degC; 10 to 75 below 15 degC, 10 to 30 below 10 degC),
 * `refractiveIndex`, `specificGravity`, `baume`, `boiling`; with the first two the sample's `temperature`, with the last
 * `elevation` or `pressure`, sea level when neither is given
 * @throws StillroomError MISSING without any of the five; CONTRADICTION with two, or with a field of another one;
 * OUT_OF_RANGE outside the tables, below the boil of water or beyond 95 Brix
 *
 * @example
 * ```ts
 * import { brixFrom } from 'stillroom/solution';
 *
 * brixFrom({ reading: 62, temperature: '25 degC' }).brix; // ≈ 62.36
 * brixFrom({ refractiveIndex: 1.341452 }).brix; // ≈ 5.8
 * brixFrom({ specificGravity: 1.04 }).brix; // ≈ 10.0
 * brixFrom({ baume: 11.1 }).brix; // ≈ 20
 * brixFrom({ boiling: '104.96 degC' }).brix; // ≈ 70.0
 * ```
 */
export function brixFrom(input: BrixFromInput): BrixFrom {
  const given = readInput(schema, input);
  const way = wayOf(given, input);
  const value = given[way];
  if (way === 'boiling') return answer(byBoiling(value as Quantity<'temperature'>, given, input));
  const figure = value as number;
  if (way === 'reading') return answer(byReading(figure, given.temperature, way, []));
  if (way === 'refractiveIndex') {
    return answer(byReading(brixOfIndex(figure), given.temperature, way, [indexBasis('brix')]));
  }
  return answer(
    way === 'baume'
      ? byGravity(gravityOfBaume(figure), [constantBasis('baume-modulus', 'brix')])
      : byGravity(figure, []),
  );
}
