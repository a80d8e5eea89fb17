import type * as z from 'zod/mini';
import json from '../../data/solution/sucrose-refractive-index.json';
import { answer } from '../common/answer';
import { fields, number, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, joinBasis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { correctionAt, correctionOrFail, refractometerTemperature } from './correctRefractometer';
import { REFERENCE_TEMPERATURE } from './fields';
import type { BrixReading } from './specificGravity';
import { between, type Point, solveRising } from './table';

interface IndexRow extends Sourced {
  readonly brix: number;
  readonly nD20: number;
}
const rows = asTable<IndexRow>(json).rows;
const byBrix: readonly Point[] = rows.map((row) => [row.brix, row.nD20]);
const byIndex: readonly Point[] = rows.map((row) => [row.nD20, row.brix]);
const [LOWEST] = byIndex[0] as Point;
const [HIGHEST, LAST_BRIX] = byIndex.at(-1) as Point;
const basis = rows.slice(0, 1).map((row) => basisOf(row, 'refractive index at 20 degC'));

const degrees = (temperature: Quantity<'temperature'> | undefined): number =>
  temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(temperature, 'degC');

const schema = fields({
  brix: number(`degrees Brix from 0 to ${LAST_BRIX}`, { min: 0, max: LAST_BRIX }),
  temperature: optional(refractometerTemperature()),
});
export type RefractiveIndexInput = z.input<typeof schema>;
export interface RefractiveIndex {
  /** At 589 nm (sodium D line). */
  readonly refractiveIndex: number;
  readonly basis: readonly Basis[];
}

/**
 * Refractive index of a sucrose solution.
 *
 * At 20 degC the ICUMSA 1974 table, one row for each degree Brix, on straight lines between (within 3e-6). At
 * another temperature the index is that of the reading an uncorrected refractometer would show, by the tables of
 * `correctRefractometer`.
 *
 * @param input - `brix`: 0 to 95 (above 85 an extension with four decimals); `temperature`: 20 degC when left out,
 * 5 to 30 degC as far as the correction tables reach
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { refractiveIndex } from 'stillroom/solution';
 *
 * refractiveIndex({ brix: 50 }).refractiveIndex; // ≈ 1.42009
 * refractiveIndex({ brix: 5.8 }).refractiveIndex; // ≈ 1.341452
 * ```
 */
export function refractiveIndex(input: RefractiveIndexInput): RefractiveIndex {
  const given = readInput(schema, input);
  const t = degrees(given.temperature);
  const { reading, corrected } = readingAt(given.brix, t);
  return answer({ refractiveIndex: between(byBrix, reading) as number, basis: joinBasis(basis, corrected) });
}

/** What an uncorrected refractometer shows at t degC in a solution of this Brix. */
function readingAt(brix: number, t: number): { reading: number; corrected: readonly Basis[] } {
  if (t === REFERENCE_TEMPERATURE) return { reading: brix, corrected: [] };
  // reading + correction(reading) = brix; corrections are below one degree and change slowly with the reading
  const low = Math.max(0, brix - 1);
  const high = Math.min(LAST_BRIX, brix + 1);
  const reading = solveRising((r) => r + (correctionAt(r, t)?.correction ?? 0), brix, low, high);
  return { reading, corrected: correctionOrFail(reading, t, 'brix').basis };
}

const inverseSchema = fields({
  refractiveIndex: number(`a refractive index from ${LOWEST} to ${HIGHEST}`, { min: LOWEST, max: HIGHEST }),
  temperature: optional(refractometerTemperature()),
});
export type BrixFromRefractiveIndexInput = z.input<typeof inverseSchema>;

/**
 * Brix from a measured refractive index: the inverse of `refractiveIndex`.
 *
 * @param input - `refractiveIndex`: 1.33299 (water) to 1.532; `temperature` of the sample: 20 degC when left out
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { brixFromRefractiveIndex } from 'stillroom/solution';
 *
 * brixFromRefractiveIndex({ refractiveIndex: 1.341452 }).brix; // ≈ 5.8
 * ```
 */
export function brixFromRefractiveIndex(input: BrixFromRefractiveIndexInput): BrixReading {
  const given = readInput(inverseSchema, input);
  const t = degrees(given.temperature);
  const reading = between(byIndex, given.refractiveIndex) as number;
  const correction = correctionOrFail(reading, t, 'refractiveIndex');
  return answer({
    brix: reading + correction.correction,
    basis: joinBasis(basis, t === REFERENCE_TEMPERATURE ? [] : correction.basis),
  });
}
