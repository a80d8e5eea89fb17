import type * as z from 'zod/mini';
import json from '../../data/lethality/heat-resistance.json';
import { answer } from '../common/answer';
import { fields, name, optional, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { lethalityCaution } from './cautions';
import { having } from './having';
import type { resistanceRow } from './tables';

type ResistanceRow = RowOf<typeof resistanceRow>;
const table = asTable<ResistanceRow>(json);

const schema = /* @__PURE__ */ fields({
  /** Any words of the organism's name, such as `botulinum`; all entries when left out. */
  organism: optional(name('an organism, such as "botulinum"')),
});

export type HeatResistanceInput = z.input<typeof schema>;

/** The ends of a published range; equal where one figure is printed. */
export interface PublishedEnds<T> {
  /** Low end. */
  readonly low: T;
  /** High end. */
  readonly high: T;
}
/** One published line of heat resistance. */
export interface HeatResistanceEntry {
  /** What is destroyed. */
  readonly organism: string;
  /** Food or medium, where the source names it. */
  readonly medium?: string;
  /** Temperature of the D value. */
  readonly reference?: Quantity<'temperature'>;
  /** Time for one log10 reduction at the reference temperature. */
  readonly dValue?: PublishedEnds<Quantity<'time'>>;
  /** Degrees that make the kill ten times as fast. */
  readonly z?: PublishedEnds<Quantity<'temperatureDifference'>>;
  /** What the line says besides. */
  readonly notes?: string;
}
export interface HeatResistance {
  /** Every line that names the organism; `basis` has one line for each, in the same order. */
  readonly entries: readonly HeatResistanceEntry[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const ends = <T>(low: number | null, high: number | null, make: (value: number) => T): PublishedEnds<T> | undefined =>
  low === null || high === null ? undefined : { low: make(low), high: make(high) };

function entryOf(row: ResistanceRow): HeatResistanceEntry {
  const dValue = ends(row.dLow, row.dHigh, (value): Quantity<'time'> => ({ value, unit: 'min' }));
  const zRange = ends(
    row.zLow,
    row.zHigh,
    (value): Quantity<'temperatureDifference'> => ({
      value,
      unit: row.unit === 'degF' ? 'delta degF' : 'delta degC',
    }),
  );
  return {
    organism: row.organism,
    ...(row.medium === '' ? {} : { medium: row.medium }),
    ...(row.reference === null ? {} : { reference: { value: row.reference, unit: row.unit } }),
    ...(dValue === undefined ? {} : { dValue }),
    ...(zRange === undefined ? {} : { z: zRange }),
    ...(row.notes === undefined ? {} : { notes: row.notes }),
  };
}

/**
 * Published heat resistance: D and z values of what has to be destroyed, or kept.
 *
 * Every line of the sources that names the organism is given, for they differ; the library picks none.
 *
 * Source: the row of `data/lethality/heat-resistance.json` that the basis line of each entry names.
 *
 * @throws StillroomError UNKNOWN_NAME, offering the nearest
 *
 * @example
 * ```ts
 * import { heatResistance } from 'stillroom/lethality';
 *
 * const [first, second] = heatResistance({ organism: 'botulinum' }).entries;
 * first.reference; // => { value: 250, unit: 'degF' }
 * second.dValue.high; // => { value: 0.21, unit: 'min' }
 * ```
 */
export function heatResistance(input: HeatResistanceInput): HeatResistance {
  const { organism } = readInput(schema, input);
  const rows =
    organism === undefined ? table.rows : having(organism, table.rows, (row) => row.organism, 'organism', 'organism');
  const recalled = rows.some((row) => row.obtained === 'memory');
  return answer({
    entries: rows.map(entryOf),
    basis: rows.map((row, index) => basisOf(row, `entries[${index}]`)),
    cautions: [
      lethalityCaution('resistance-varies'),
      lethalityCaution('published-heat-no-process'),
      ...(recalled ? [caution('recalled')] : []),
    ],
  });
}
