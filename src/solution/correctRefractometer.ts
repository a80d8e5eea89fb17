import type * as z from 'zod/mini';
import newerJson from '../../data/solution/refractometer-correction-newer.json';
import olderJson from '../../data/solution/refractometer-correction-older.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Range } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { brixField, REFERENCE_TEMPERATURE } from './fields';
import { between, type Point } from './table';

interface CorrectionRow extends Sourced {
  readonly temperature: number;
  readonly corrections: readonly Point[];
}
const newer = asTable<CorrectionRow>(newerJson).rows;
const older = asTable<CorrectionRow>(olderJson).rows;

/** The correction of one table at a reading and t degC, straight lines between its rows and columns. */
function correctionOf(rows: readonly CorrectionRow[], reading: number, t: number): number | undefined {
  const first = rows.findLastIndex((row) => row.temperature <= t);
  const low = rows[first];
  if (low === undefined) return undefined;
  const atLow = between(low.corrections, reading);
  if (atLow === undefined || low.temperature === t) return atLow;
  const high = rows[first + 1];
  const atHigh = high === undefined ? undefined : between(high.corrections, reading);
  if (high === undefined || atHigh === undefined) return undefined;
  return atLow + ((atHigh - atLow) * (t - low.temperature)) / (high.temperature - low.temperature);
}

const COLDEST = newer[0]?.temperature as number;
const HOTTEST = older.at(-1)?.temperature as number;

export interface Correction {
  readonly correction: number;
  readonly range: Range<number>;
  readonly basis: readonly Basis[];
}

/** What is added to a reading at t degC; undefined where no table reaches. */
export function correctionAt(reading: number, t: number): Correction | undefined {
  if (t === REFERENCE_TEMPERATURE) {
    return {
      correction: 0,
      range: { low: 0, likely: 0, high: 0 },
      basis: older.slice(0, 1).map((row) => basisOf(row, 'correction')),
    };
  }
  const one = correctionOf(newer, reading, t);
  const other = correctionOf(older, reading, t);
  const likely = one ?? other;
  if (likely === undefined) return undefined;
  const low = Math.min(likely, other ?? likely);
  const high = Math.max(likely, other ?? likely);
  const tables = [...(one === undefined ? [] : newer.slice(0, 1)), ...(other === undefined ? [] : older.slice(0, 1))];
  return { correction: likely, range: { low, likely, high }, basis: tables.map((row) => basisOf(row, 'correction')) };
}

/** The same, or the error that says where the tables reach. */
export function correctionOrFail(reading: number, t: number, path: string): Correction {
  const found = correctionAt(reading, t);
  if (found !== undefined) return found;
  fail(
    'OUT_OF_RANGE',
    path,
    reading,
    'readings of 10 to 75 from 10 degC, of 10 to 30 from 5 degC, of 5 to 75 from 15 degC; or bring the sample to 20 degC',
  );
}

/** The sample temperatures that the correction tables reach. */
export const refractometerTemperature = () =>
  temperature({ min: { value: COLDEST, unit: 'degC' }, max: { value: HOTTEST, unit: 'degC' } });

const schema = fields({
  reading: brixField('a reading in degrees Brix from 0 to 100'),
  temperature: refractometerTemperature(),
});
export type CorrectRefractometerInput = z.input<typeof schema>;
export interface CorrectedReading {
  /** The reading at 20 degC. */
  readonly brix: number;
  /** What was added to the reading. */
  readonly correction: number;
  /** What the two published tables make of it, where both reach. */
  readonly range: Range<number>;
  readonly basis: readonly Basis[];
}

/**
 * What a refractometer without its own temperature correction would have shown at 20 degC.
 *
 * Adds the published correction, on straight lines between rows and columns. Below 18 degC the newer table is
 * followed (OIV-MA-AS2-02, ICUMSA based), above it the international table of the 1930s as the CRC Handbook gives
 * it. Where both reach they differ by up to 0.06; the range shows both. An instrument marked ATC corrects itself.
 *
 * @param input - `reading`: 5 to 75 degrees Brix (10 to 75 below 15 degC, 10 to 30 below 10 degC); `temperature` of
 * the sample: 5 to 30 degC
 * @throws StillroomError OUT_OF_RANGE outside the tables
 *
 * @example
 * ```ts
 * import { correctRefractometer } from 'stillroom/solution';
 *
 * correctRefractometer({ reading: 62, temperature: '25 degC' }).brix; // ≈ 62.36
 * correctRefractometer({ reading: 50, temperature: '15 degC' }).correction; // ≈ -0.38
 * ```
 */
export function correctRefractometer(input: CorrectRefractometerInput): CorrectedReading {
  const given = readInput(schema, input);
  const { reading } = given;
  const found = correctionOrFail(reading, valueIn(given.temperature, 'degC'), 'reading');
  const { low, likely, high } = found.range;
  return answer({
    brix: reading + found.correction,
    correction: found.correction,
    range: { low: reading + low, likely: reading + likely, high: reading + high },
    basis: found.basis,
  });
}
