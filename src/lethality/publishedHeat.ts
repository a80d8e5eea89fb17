import type * as z from 'zod/mini';
import resistanceJson from '../../data/lethality/heat-resistance.json';
import publishedJson from '../../data/lethality/published-lethality.json';
import { answer } from '../common/answer';
import { fields, name, optional, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { lethalityCaution } from './cautions';
import { having } from './having';
import type { publishedRow, resistanceRow } from './tables';

type ResistanceRow = RowOf<typeof resistanceRow>;
type FigureRow = RowOf<typeof publishedRow>;
const resistances = asTable<ResistanceRow>(resistanceJson).rows;
const figures = asTable<FigureRow>(publishedJson).rows;

const schema = /* @__PURE__ */ fields({
  /** Any words of an organism's name, such as `botulinum`, for its heat resistance. */
  organism: optional(name('an organism, such as "botulinum"')),
  /** Any words of a food or an aim, such as `apple cider`, for the heat that is called enough. */
  about: optional(name('a food or an aim, such as "acidified vegetables"')),
});

export type PublishedHeatInput = z.input<typeof schema>;

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
  readonly heatedIn?: string;
  /** Temperature of the D value. */
  readonly reference?: Quantity<'temperature'>;
  /** Time for one log10 reduction at the reference temperature. */
  readonly dValue?: PublishedEnds<Quantity<'time'>>;
  /** Degrees that make the kill ten times as fast. */
  readonly z?: PublishedEnds<Quantity<'temperatureDifference'>>;
  /** What the line says besides. */
  readonly notes?: string;
}
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
export interface PublishedHeat {
  /** D and z values, one entry for each line that names the organism; all lines where nothing is asked for. */
  readonly resistance: readonly HeatResistanceEntry[];
  /** Times called enough, one entry for each line about the food or aim; all lines where nothing is asked for. */
  readonly enough: readonly PublishedLethalityEntry[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const ends = <T>(low: number | null, high: number | null, make: (value: number) => T): PublishedEnds<T> | undefined =>
  low === null || high === null ? undefined : { low: make(low), high: make(high) };

function resistanceOf(row: ResistanceRow): HeatResistanceEntry {
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
    ...(row.medium === '' ? {} : { heatedIn: row.medium }),
    ...(row.reference === null ? {} : { reference: { value: row.reference, unit: row.unit } }),
    ...(dValue === undefined ? {} : { dValue }),
    ...(zRange === undefined ? {} : { z: zRange }),
    ...(row.notes === undefined ? {} : { notes: row.notes }),
  };
}

function enoughOf(row: FigureRow): PublishedLethalityEntry {
  return {
    about: row.about,
    what: row.what,
    time: { low: { value: row.low, unit: row.time }, high: { value: row.high, unit: row.time } },
    reference: { value: row.reference, unit: row.unit },
    ...(row.z === null ? {} : { z: { value: row.z, unit: row.unit === 'degF' ? 'delta degF' : 'delta degC' } }),
    ...(row.notes === undefined ? {} : { notes: row.notes }),
  };
}

/** The line in words, no two alike: what, where, and the figures. */
const nameOf = ({ organism, medium, reference, dLow, dHigh, zLow, zHigh, unit }: ResistanceRow): string =>
  [
    organism,
    medium,
    ...(reference === null ? [] : [`D ${dLow} to ${dHigh} min at ${reference} ${unit}`]),
    ...(zLow === null ? [] : [`z ${zLow} to ${zHigh} ${unit}`]),
  ]
    .filter((part) => part !== '')
    .join(', ');

/**
 * What is published about heat: how much of it destroys an organism or an enzyme (D and z values), and how much of it
 * sources call enough for an aim. It is there to compare a record with; none of it is a home process.
 *
 * Every line of the sources is given, for they differ; the library picks none. Name an `organism`, or what it is
 * `about`, or both; all lines come where you name neither.
 *
 * Source: the row of `data/lethality/heat-resistance.json` or `published-lethality.json` that the basis line of each
 * entry names.
 *
 * @throws StillroomError UNKNOWN_NAME, offering the nearest
 *
 * @example
 * ```ts
 * import { publishedHeat } from 'stillroom/lethality';
 *
 * const [first, second] = publishedHeat({ organism: 'botulinum' }).resistance;
 * first.reference; // => { value: 250, unit: 'degF' }
 * second.dValue.high; // => { value: 0.21, unit: 'min' }
 * const [figure] = publishedHeat({ about: 'acidified vegetables' }).enough;
 * figure.time.high; // => { value: 5.6, unit: 'min' }
 * figure.z; // => { value: 16.7, unit: 'delta degF' }
 * ```
 */
export function publishedHeat(input: PublishedHeatInput = {}): PublishedHeat {
  const { organism, about } = readInput(schema, input);
  const all = organism === undefined && about === undefined;
  const destroyed =
    organism === undefined
      ? all
        ? resistances
        : []
      : having(organism, resistances, (row) => row.organism, 'organism', 'organism');
  const enough =
    about === undefined ? (all ? figures : []) : having(about, figures, (row) => row.about, 'about', 'food or aim');
  const recalled = destroyed.some((row) => row.obtained === 'memory');
  return answer({
    resistance: destroyed.map(resistanceOf),
    enough: enough.map(enoughOf),
    basis: [
      ...destroyed.map((row) => basisOf(row, 'resistance[]', nameOf(row))),
      ...enough.map((row) => basisOf(row, 'enough[]', `${row.about}: ${row.what}`)),
    ],
    cautions: [
      lethalityCaution('resistance-varies'),
      lethalityCaution('published-heat-no-process'),
      ...(recalled ? [caution('recalled')] : []),
    ],
  });
}
