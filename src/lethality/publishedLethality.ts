import type * as z from 'zod/mini';
import json from '../../data/lethality/published-lethality.json';
import { answer } from '../common/answer';
import { fields, name, optional, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { lethalityCaution } from './cautions';
import { having } from './having';
import type { PublishedEnds } from './heatResistance';
import type { publishedRow } from './tables';

type FigureRow = RowOf<typeof publishedRow>;
const table = asTable<FigureRow>(json);

const schema = /* @__PURE__ */ fields({
  /** Any words of the food or the aim, such as `apple cider`; all entries when left out. */
  about: optional(name('a food or an aim, such as "acidified vegetables"')),
});

export type PublishedLethalityInput = z.input<typeof schema>;

/** One figure in print. */
export interface PublishedLethalityEntry {
  /** Food and aim. */
  readonly about: string;
  /** What the figure is. */
  readonly what: string;
  /** At the reference temperature. */
  readonly time: PublishedEnds<Quantity<'time'>>;
  /** Temperature that the time is for. */
  readonly reference: Quantity<'temperature'>;
  /** Where the source states one. */
  readonly z?: Quantity<'temperatureDifference'>;
  /** What the line says besides. */
  readonly notes?: string;
}
export interface PublishedLethality {
  /** Every figure that is asked for; `basis` has one line for each, in the same order. */
  readonly entries: readonly PublishedLethalityEntry[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

function entryOf(row: FigureRow): PublishedLethalityEntry {
  return {
    about: row.about,
    what: row.what,
    time: { low: { value: row.low, unit: row.time }, high: { value: row.high, unit: row.time } },
    reference: { value: row.reference, unit: row.unit },
    ...(row.z === null ? {} : { z: { value: row.z, unit: row.unit === 'degF' ? 'delta degF' : 'delta degC' } }),
    ...(row.notes === undefined ? {} : { notes: row.notes }),
  };
}

/**
 * How much heat published sources call enough for an aim, as time at a reference temperature, to compare a record
 * with. None of it is a home process.
 *
 * Source: the row of `data/lethality/published-lethality.json` that the basis line of each entry names.
 *
 * @throws StillroomError UNKNOWN_NAME, offering the nearest
 *
 * @example
 * ```ts
 * import { publishedLethality } from 'stillroom/lethality';
 *
 * const [figure] = publishedLethality({ about: 'acidified vegetables' }).entries;
 * figure.time.high; // => { value: 5.6, unit: 'min' }
 * figure.z; // => { value: 16.7, unit: 'delta degF' }
 * ```
 */
export function publishedLethality(input: PublishedLethalityInput): PublishedLethality {
  const { about } = readInput(schema, input);
  const rows = about === undefined ? table.rows : having(about, table.rows, (row) => row.about, 'about', 'food or aim');
  return answer({
    entries: rows.map(entryOf),
    basis: rows.map((row, index) => basisOf(row, `entries[${index}]`)),
    cautions: [lethalityCaution('published-heat-no-process'), lethalityCaution('resistance-varies')],
  });
}
