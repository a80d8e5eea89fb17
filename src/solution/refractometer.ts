/** What a refractometer shows at other temperatures than 20 degC. Internal: `brixFrom` and `refractiveIndex` use it. */
import newerJson from '../../data/solution/refractometer-correction-newer.json';
import olderJson from '../../data/solution/refractometer-correction-older.json';
import { fail } from '../errors/StillroomError';
import type { Range } from '../quantity/types';
import type { Basis } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { temperature } from '../words/temperature';
import { REFERENCE_TEMPERATURE } from './fields';
import { between } from './table';
import type { correctionRow } from './tables';

type CorrectionRow = RowOf<typeof correctionRow>;
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
  /** The row that stands for each table that was read. */
  readonly rows: readonly CorrectionRow[];
}

/** What is added to a reading at t degC; undefined where no table reaches. */
export function correctionAt(reading: number, t: number): Correction | undefined {
  if (t === REFERENCE_TEMPERATURE) {
    return { correction: 0, range: { low: 0, likely: 0, high: 0 }, rows: older.slice(0, 1) };
  }
  const one = correctionOf(newer, reading, t);
  const other = correctionOf(older, reading, t);
  const likely = one ?? other;
  if (likely === undefined) return undefined;
  const low = Math.min(likely, other ?? likely);
  const high = Math.max(likely, other ?? likely);
  const rows = [...(one === undefined ? [] : newer.slice(0, 1)), ...(other === undefined ? [] : older.slice(0, 1))];
  return { correction: likely, range: { low, likely, high }, rows };
}

/** The same, or the error that says where the tables reach. */
export function correctionOrFail(reading: number, t: number, path: string, given: unknown = reading): Correction {
  const found = correctionAt(reading, t);
  if (found !== undefined) return found;
  fail(
    'OUT_OF_RANGE',
    path,
    given,
    'readings of 10 to 75 from 10 degC, of 10 to 30 from 5 degC, of 5 to 75 from 15 degC; or bring the sample to 20 degC',
  );
}

/** The basis of a correction: `of` is the path of the answer's field. */
export const correctionBasis = ({ rows }: Correction, of: string): Basis[] =>
  rows.map((row) => basisOf(row, of, 'correction of a reading to 20 degC'));

/** The temperatures of a sample that the correction tables reach. */
export const sampleTemperature = () =>
  temperature({ min: { value: COLDEST, unit: 'degC' }, max: { value: HOTTEST, unit: 'degC' } });
