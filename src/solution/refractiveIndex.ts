import type * as z from 'zod/mini';
import json from '../../data/solution/sucrose-refractive-index.json';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { brix } from '../words/brix';
import { REFERENCE_TEMPERATURE } from './fields';
import { correctionAt, correctionBasis, correctionOrFail, sampleTemperature } from './refractometer';
import { between, type Point, solveRising } from './table';
import type { indexRow } from './tables';

type IndexRow = RowOf<typeof indexRow>;
const rows = asTable<IndexRow>(json).rows;
const byBrix: readonly Point[] = rows.map((row) => [row.brix, row.nD20]);
const byIndex: readonly Point[] = rows.map((row) => [row.nD20, row.brix]);
/** The ends of the table: an index, and the Brix of the last. */
export const [LOWEST_INDEX] = byIndex[0] as Point;
export const [HIGHEST_INDEX, LAST_BRIX] = byIndex.at(-1) as Point;

/** Brix at 20 degC of an index within the table. */
export const brixOfIndex = (index: number): number => between(byIndex, index) as number;
/** What it rests on: `of` is the path of the answer's field. */
export const indexBasis = (of: string): Basis => basisOf(rows[0] as IndexRow, of, 'refractive index at 20 degC');

const schema = /* @__PURE__ */ fields({
  /** Strength of the solution, 0 to 95 degrees Brix. */
  brix: brix({ max: LAST_BRIX }),
  /** Of the sample, 5 to 30 degC. */
  temperature: sampleTemperature(),
});
export type RefractiveIndexInput = z.input<typeof schema>;
export interface RefractiveIndex {
  /** At 589 nm (sodium D line). */
  readonly refractiveIndex: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * Refractive index of a sucrose solution. `brixFrom` is the inverse.
 *
 * At 20 degC the ICUMSA 1974 table, one row for each degree Brix, on straight lines between (within 3e-6). At
 * another temperature the index is that of the reading an uncorrected refractometer would show, by the correction tables
 * of `brixFrom`.
 *
 * @param input - `brix`: 0 to 95 (above 85 an extension with four decimals); `temperature`: 5 to 30 degC, as
 * far as the correction tables reach
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { refractiveIndex } from 'stillroom/solution';
 *
 * refractiveIndex({ brix: 50, temperature: '20 degC' }).refractiveIndex; // ≈ 1.42009
 * refractiveIndex({ brix: 5.8, temperature: '20 degC' }).refractiveIndex; // ≈ 1.341452
 * ```
 */
export function refractiveIndex(input: RefractiveIndexInput): RefractiveIndex {
  const given = readInput(schema, input);
  const { reading, corrected } = readingAt(given.brix, valueIn(given.temperature, 'degC'), input.brix);
  return answer({
    refractiveIndex: between(byBrix, reading) as number,
    basis: [indexBasis('refractiveIndex'), ...corrected],
    cautions: [],
  });
}

/** What an uncorrected refractometer shows at t degC in a solution of this Brix. */
function readingAt(strength: number, t: number, given: unknown): { reading: number; corrected: readonly Basis[] } {
  if (t === REFERENCE_TEMPERATURE) return { reading: strength, corrected: [] };
  // reading + correction(reading) = strength; corrections are below one degree and change slowly with the reading
  const low = Math.max(0, strength - 1);
  const high = Math.min(LAST_BRIX, strength + 1);
  const reading = solveRising((r) => r + (correctionAt(r, t)?.correction ?? 0), strength, low, high);
  return { reading, corrected: correctionBasis(correctionOrFail(reading, t, 'brix', given), 'refractiveIndex') };
}
