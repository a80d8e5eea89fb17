import type * as z from 'zod/mini';
import cubicJson from '../../data/water-activity/salt-cubic-fits.json';
import exponentialJson from '../../data/water-activity/salt-exponential-fits.json';
import logJson from '../../data/water-activity/salt-log-fits.json';
import namesJson from '../../data/water-activity/salt-names.json';
import tableJson from '../../data/water-activity/saturated-salts.json';
import recalledJson from '../../data/water-activity/saturated-salts-recalled.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fail } from '../errors/StillroomError';
import { choice, fields, name, optional, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { activityCaution } from './cautions';
import { KELVIN, REFERENCE_TEMPERATURE, rangeAround } from './fields';

interface PrintedRow extends Sourced {
  readonly salt: string;
  readonly t_degC: number;
  readonly rh_pct: number;
  readonly u_pct?: number | null;
  readonly spread_pct?: readonly [number, number];
}
interface CubicRow extends Sourced {
  readonly salt: string;
  readonly A0: number;
  readonly A1: number;
  readonly A2: number;
  readonly A3: number;
}
interface ExponentialRow extends Sourced {
  readonly salt: string;
  readonly compound: string;
  readonly t_min_degC: number;
  readonly t_max_degC: number;
  readonly A: number;
  readonly B: number;
  readonly rh25_pct: number;
}
interface LogRow extends Sourced {
  readonly salt: string;
  readonly k1: number;
  readonly k2: number;
}
const salts = asTable<Named & Sourced>(namesJson).rows;
const printed = asTable<PrintedRow>(tableJson).rows;
const recalled = asTable<PrintedRow>(recalledJson).rows;
const cubics = asTable<CubicRow>(cubicJson).rows;
const exponentials = asTable<ExponentialRow>(exponentialJson).rows;
const logs = asTable<LogRow>(logJson).rows;

const FITS = ['table', 'cubic', 'exponential', 'log'] as const;
const schema = fields({
  salt: name('the name or formula of a salt'),
  temperature: optional(temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } })),
  fit: optional(choice('a way to the figure', FITS)),
});
export type SaturatedSaltHumidityInput = z.input<typeof schema>;
export interface SaturatedSaltHumidity {
  /** Relative humidity over the saturated solution, as a ratio: its water activity. */
  readonly waterActivity: number;
  readonly range: Range<number>;
  /** The same in percent. */
  readonly relativeHumidity: number;
  readonly fit: (typeof FITS)[number];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

interface Figure {
  /** percent */
  readonly rh: number;
  /** percent either way, or the ends */
  readonly ends: readonly [number, number];
  readonly fit: (typeof FITS)[number];
  readonly row: Sourced;
  readonly cautions: readonly Caution[];
}

/** Rounding of a figure printed to two decimals, and of the exponential fit by its own word, in percent RH. */
const RECALLED_ERROR = 0.5;
const CUBIC_ERROR = 0.5;
const EXPONENTIAL_ERROR = 2;
const LOG_ERROR = 2;
/** The cubic fits are for the range of the table they meet. */
const CUBIC_RANGE = [0, 50] as const;
/** The logarithmic fits were read without a range. */
const LOG_RANGE = [5, 45] as const;

const endsOf = (row: PrintedRow): readonly [number, number] =>
  row.spread_pct ?? [row.rh_pct - (row.u_pct ?? RECALLED_ERROR), row.rh_pct + (row.u_pct ?? RECALLED_ERROR)];

/** A printed figure, or one on the line between two. */
function fromRows(rows: readonly PrintedRow[], t: number): Figure | undefined {
  const below = rows.findLast((row) => row.t_degC <= t);
  const above = rows.find((row) => row.t_degC >= t);
  if (below === undefined || above === undefined) return undefined;
  const share = above === below ? 0 : (t - below.t_degC) / (above.t_degC - below.t_degC);
  const between = (one: number, other: number): number => one + share * (other - one);
  const [low, high] = [endsOf(below), endsOf(above)];
  return {
    rh: between(below.rh_pct, above.rh_pct),
    ends: [between(low[0], high[0]), between(low[1], high[1])],
    fit: 'table',
    row: below,
    cautions: [
      ...(share === 0 ? [] : [activityCaution('salt-between-rows')]),
      ...(below.obtained === 'memory' ? [caution('recalled')] : []),
    ],
  };
}

const fitted = (rh: number, error: number, fit: Figure['fit'], row: Sourced): Figure => ({
  rh,
  ends: [rh - error, rh + error],
  fit,
  row,
  cautions: [],
});

/** The ways to a figure for one salt, each with the temperatures it is for. */
function waysTo(salt: string) {
  const ways: { fit: Figure['fit']; from: number; to: number; at: (t: number) => Figure | undefined }[] = [];
  for (const rows of [printed, recalled]) {
    const own = rows.filter((row) => row.salt === salt);
    const [first, last] = [own[0], own.at(-1)];
    if (first === undefined || last === undefined) continue;
    ways.push({ fit: 'table', from: first.t_degC, to: last.t_degC, at: (t) => fromRows(own, t) });
  }
  const cubic = cubics.find((row) => row.salt === salt);
  if (cubic !== undefined) {
    const { A0, A1, A2, A3 } = cubic;
    const at = (t: number) => fitted(A0 + t * (A1 + t * (A2 + t * A3)), CUBIC_ERROR, 'cubic', cubic);
    ways.push({ fit: 'cubic', from: CUBIC_RANGE[0], to: CUBIC_RANGE[1], at });
  }
  const exponential = exponentials.find((row) => row.salt === salt || row.compound === salt);
  if (exponential !== undefined) {
    const { A, B, t_min_degC: from, t_max_degC: to } = exponential;
    const at = (t: number) => fitted(A * Math.exp(B / (t + KELVIN)), EXPONENTIAL_ERROR, 'exponential', exponential);
    ways.push({ fit: 'exponential', from, to, at });
  }
  const log = logs.find((row) => row.salt === salt);
  if (log !== undefined) {
    const at = (t: number) => fitted(100 * Math.exp(log.k1 / (t + KELVIN) - log.k2), LOG_ERROR, 'log', log);
    ways.push({ fit: 'log', from: LOG_RANGE[0], to: LOG_RANGE[1], at });
  }
  return ways;
}

/**
 * The humidity over a saturated salt solution: a known point to check a water-activity meter or a hygrometer by.
 *
 * The printed table comes first (OIML R 121, 5 to 80 degC), then recalled figures for salts it lacks, then the fits:
 * `cubic` `RH = A0 + A1 t + A2 t^2 + A3 t^3`, `exponential` `RH = A exp(B/T)`, `log` `ln aw = k1/T - k2`.
 * Printed rows are given exactly; between two of them, the straight line.
 *
 * @param input - `salt`: formula or name (`NaCl`, `table salt`, `magnesium chloride`); `temperature`: 0 to 100 degC,
 * 25 degC when left out; `fit`: to ask for one of the fits
 * @throws StillroomError UNKNOWN_NAME; OUT_OF_RANGE at a temperature that nothing is printed for
 *
 * @example
 * ```ts
 * import { saturatedSaltHumidity } from 'stillroom/water-activity';
 *
 * saturatedSaltHumidity({ salt: 'NaCl', temperature: '25 degC' }).relativeHumidity; // => 75.3
 * saturatedSaltHumidity({ salt: 'potassium chloride', temperature: '20 degC' }).waterActivity; // ≈ 0.851
 * ```
 */
export function saturatedSaltHumidity(input: SaturatedSaltHumidityInput): SaturatedSaltHumidity {
  const { salt: asked, temperature: at, fit } = readInput(schema, input);
  const compound = exponentials.find((row) => row.compound.toLowerCase() === asked.toLowerCase());
  const salt = compound?.salt ?? lookUp(asked, salts, 'salt', 'salt').name;
  const t = at === undefined ? REFERENCE_TEMPERATURE : valueIn(at, 'degC');
  const all = waysTo(salt);
  const ways = fit === undefined ? all.filter((way) => way.fit !== 'log') : all.filter((way) => way.fit === fit);
  if (ways.length === 0) {
    fail(
      'UNKNOWN_NAME',
      'fit',
      fit,
      `one of those published for ${salt}: ${[...new Set(all.map((way) => way.fit))].join(', ')}`,
    );
  }
  const way = ways.find(({ from, to }) => t >= from && t <= to);
  const figure = way?.at(t);
  if (figure === undefined) {
    const ranges = ways.map(({ from, to }) => `${from} to ${to} degC`).join(', ');
    fail(
      'OUT_OF_RANGE',
      'temperature',
      `${t} degC`,
      `a temperature that a figure for ${salt} is published for: ${ranges}`,
    );
  }
  const basis = basisOf(figure.row, `relative humidity over saturated ${salt}`);
  return answer({
    waterActivity: figure.rh / 100,
    range: {
      ...rangeAround(figure.rh / 100, 0),
      low: Math.max(figure.ends[0], 0) / 100,
      high: Math.min(figure.ends[1], 100) / 100,
    },
    relativeHumidity: figure.rh,
    fit: figure.fit,
    basis: [figure.fit === 'table' || basis.kind === 'recalled' ? basis : { ...basis, kind: 'equation' }],
    cautions: figure.cautions,
  });
}
