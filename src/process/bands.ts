/** Elevation bands: which one a place belongs to, compared exactly so that 304.8 m is exactly 1,000 ft. */

import { formatQuantity, groupThousands } from '../quantity/formatQuantity';
import { compareIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { derived } from '../sources/basis';
import { basisOf } from '../sources/table';
import type { CanningMethod } from '../words/method';
import type { Refused } from './refusal';
import { type BandRow, bandRows, type ProcessRow } from './tables';

/** Index of the first band whose upper end the elevation does not pass; undefined above the last. */
export function bandIndex(elevation: Quantity<'length'>, upToFt: readonly (number | null)[]): number | undefined {
  const index = upToFt.findIndex((upTo) => upTo === null || compareIn(elevation, 'ft', upTo) <= 0);
  return index === -1 ? undefined : index;
}

/** The bands a row is printed in: by its method and by how many cells it has. */
export function bandsOf(row: Pick<ProcessRow, 'method' | 'minutes' | 'psi'>): BandRow {
  const cells = row.psi ?? (row.minutes as readonly number[]);
  const found = bandRows.find((band) => band.method === row.method && band.upToFt.length === cells.length);
  // every row has its bands: tests/process/tables.test.ts reads each one
  if (found === undefined) throw new Error(`no bands for ${row.method} with ${cells.length} cells`);
  return found;
}

/** A band in words: `0 to 1,000 ft`, `above 6,000 ft`. */
export function bandText(upToFt: readonly (number | null)[], index: number): string {
  const feet = (value: number) => groupThousands(String(value));
  const before = index === 0 ? 0 : (upToFt[index - 1] ?? 0);
  const upTo = upToFt[index];
  if (upTo === null || upTo === undefined) return `above ${feet(before)} ft`;
  return `${before === 0 ? '0' : feet(before + 1)} to ${feet(upTo)} ft`;
}

/** Why no pressure of this canner holds at a place: its highest printed one is too low for air as thin as there. */
export function thinAir(method: CanningMethod, elevation: Quantity<'length'>): Refused | undefined {
  const band = bandRows.find((row) => row.method === method && row.thinAirFt !== undefined);
  if (band?.thinAirFt === undefined || compareIn(elevation, 'ft', band.thinAirFt) <= 0) return undefined;
  const end = formatQuantity({ value: band.thinAirFt, unit: 'ft' });
  return {
    code: 'air too thin',
    text: `above about ${end} the air is so thin that steam at the highest pressure printed for a ${method} canner is cooler than the tables allow anywhere`,
    basis: [basisOf(band, 'reason', 'elevation bands'), derived('reason', 'steam temperature at the highest pressure')],
  };
}
