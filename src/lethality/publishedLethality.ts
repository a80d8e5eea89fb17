import type * as z from 'zod/mini';
import json from '../../data/lethality/published-lethality.json';
import { answer } from '../common/answer';
import { fields, name, optional, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { lethalityCaution } from './cautions';
import { having } from './having';
import type { PublishedEnds } from './heatResistance';

interface FigureRow extends Sourced {
  readonly about: string;
  readonly what: string;
  readonly low: number;
  readonly high: number;
  readonly time: 'min' | 's';
  readonly reference: number;
  readonly z: number | null;
  readonly unit: 'degC' | 'degF';
}

const table = asTable<FigureRow>(json);

const schema = /* @__PURE__ */ fields({ about: optional(name('a food or an aim, such as "acidified vegetables"')) });

export type PublishedLethalityInput = z.input<typeof schema>;

/** One figure in print. */
export interface PublishedLethalityEntry {
  readonly about: string;
  readonly what: string;
  /** At the reference temperature. */
  readonly time: PublishedEnds<Quantity<'time'>>;
  readonly reference: Quantity<'temperature'>;
  /** Where the source states one. */
  readonly z?: Quantity<'temperatureDifference'>;
  readonly notes?: string;
  readonly basis: Basis;
}
export interface PublishedLethality {
  readonly entries: readonly PublishedLethalityEntry[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const basisFor = (row: FigureRow): Basis => basisOf(row, `${row.about}: ${row.what}`);

function entryOf(row: FigureRow): PublishedLethalityEntry {
  return {
    about: row.about,
    what: row.what,
    time: { low: { value: row.low, unit: row.time }, high: { value: row.high, unit: row.time } },
    reference: { value: row.reference, unit: row.unit },
    ...(row.z === null ? {} : { z: { value: row.z, unit: row.unit === 'degF' ? 'delta degF' : 'delta degC' } }),
    ...(row.notes === undefined ? {} : { notes: row.notes }),
    basis: basisFor(row),
  };
}

/**
 * Heat that publications call enough for an aim, as time at a reference temperature: what the minutes of a record can
 * be set beside. None of it makes or licenses a home process.
 *
 * Source: the row of `data/lethality/published-lethality.json` that each entry names.
 *
 * @param input.about - any words of the food or the aim, such as `botulinum` or `apple cider`; all when left out
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
    basis: joinBasis(rows.map(basisFor)),
    cautions: [lethalityCaution('published-heat-no-process'), lethalityCaution('resistance-varies')],
  });
}
