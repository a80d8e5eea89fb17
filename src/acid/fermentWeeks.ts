/** The printed weeks of a ferment at a temperature. */
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { basisOf } from '../sources/table';
import { FERMENT_TIME, type FermentTimeRow, printed, rowWhere } from './tables';

/** How long it ferments at a temperature. */
export interface FermentWeeks {
  /** `good`: a printed band; `between`: between two printed bands or just outside one; or outside what ferments well. */
  readonly fit: 'good' | 'between' | 'too cold' | 'too warm';
  /** Weeks of the printed band; between two bands, from the shorter of one to the longer of the other. */
  readonly time?: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  /** The same in words. */
  readonly note: string;
}

interface Fit {
  readonly fit: FermentWeeks['fit'];
  readonly rows: readonly FermentTimeRow[];
  readonly note: string;
}

/** Which printed bands answer a temperature, in degF. */
function fitOf(
  degF: number,
  bands: readonly FermentTimeRow[],
  cold: FermentTimeRow | undefined,
  warm: FermentTimeRow,
): Fit {
  const lowest = Math.min(...bands.map((row) => printed(row, 'degFLow')));
  const inside = bands.filter((row) => degF >= printed(row, 'degFLow') && degF <= printed(row, 'degFHigh'));
  if (inside.length > 0) return { fit: 'good', rows: inside, note: 'A printed band of temperature.' };
  if (degF < lowest) {
    return {
      fit: 'too cold',
      rows: [],
      note:
        cold === undefined ? 'Colder than any printed band.' : `It ${printed(cold, 'outcome')} at this temperature.`,
    };
  }
  if (degF > printed(warm, 'degF')) {
    return { fit: 'too warm', rows: [], note: `It ${printed(warm, 'outcome')} at this temperature.` };
  }
  const above = bands.filter((row) => printed(row, 'degFLow') > degF);
  return above.length > 0
    ? { fit: 'between', rows: bands, note: 'Between two printed bands: somewhere from the one to the other.' }
    : { fit: 'between', rows: [], note: 'Warmer than the printed bands; no time is printed.' };
}

/** The weeks of a ferment, by its id, in a crock at a temperature. */
export function weeksAt(ferment: string, crock: Quantity<'temperature'>): { value: FermentWeeks; basis: Basis[] } {
  const rows = FERMENT_TIME.filter((row) => row.food === ferment);
  const bands = rows.filter((row) => row.what === 'time');
  const cold = rows.find((row) => row.what === 'too-cold-below');
  const warm = rowWhere(rows, (row) => row.what === 'too-warm-above', 'line above which it is too warm');
  const degF = Number(valueIn(crock, 'degF').toFixed(6)); // the last digits of a conversion from degC
  const { fit, rows: served, note } = fitOf(degF, bands, cold, warm);
  const week = (value: number) => ({ value, unit: 'week' as const });
  return {
    value: {
      fit,
      ...(served.length === 0
        ? {}
        : {
            time: {
              low: week(Math.min(...served.map((row) => printed(row, 'weeksLow')))),
              high: week(Math.max(...served.map((row) => printed(row, 'weeksHigh')))),
            },
          }),
      note,
    },
    basis: [
      ...(served.length === 0
        ? bands.map((row) => basisOf(row, 'weeks.fit'))
        : served.map((row) => basisOf(row, 'weeks.time'))),
      ...(cold === undefined ? [] : [basisOf(cold, 'weeks.fit', 'too cold below')]),
      basisOf(warm, 'weeks.fit', 'too warm above'),
    ],
  };
}
