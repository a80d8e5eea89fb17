/** The ways to the humidity over a saturated salt solution, each with the temperatures it is for. Internal. */
import cubicJson from '../../data/water-activity/salt-cubic-fits.json';
import exponentialJson from '../../data/water-activity/salt-exponential-fits.json';
import logJson from '../../data/water-activity/salt-log-fits.json';
import namesJson from '../../data/water-activity/salt-names.json';
import tableJson from '../../data/water-activity/saturated-salts.json';
import recalledJson from '../../data/water-activity/saturated-salts-recalled.json';
import { lookUp } from '../common/names';
import type { Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, type Sourced } from '../sources/table';
import { assumed } from './assumptions';
import { activityCaution } from './cautions';
import { KELVIN } from './fields';
import type { TableRow } from './schemas';

const salts = asTable<TableRow<'salt-names'>>(namesJson).rows;
const printed = asTable<TableRow<'saturated-salts'>>(tableJson).rows;
const recalled = asTable<TableRow<'saturated-salts-recalled'>>(recalledJson).rows;
const cubics = asTable<TableRow<'salt-cubic-fits'>>(cubicJson).rows;
const exponentials = asTable<TableRow<'salt-exponential-fits'>>(exponentialJson).rows;
const logs = asTable<TableRow<'salt-log-fits'>>(logJson).rows;

export const FITS = ['table', 'cubic', 'exponential', 'log'] as const;
export type Fit = (typeof FITS)[number];

/** The formula of the salt that a caller named, by name, formula, or formula with its water of crystallization. */
export function saltNamed(asked: string): string {
  const compound = exponentials.find((row) => row.compound.toLowerCase() === asked.toLowerCase());
  return compound?.salt ?? lookUp(asked, salts, 'solute', 'salt').name;
}

/** A humidity in percent, as tables print it. */
export interface Humidity {
  /** percent */
  readonly percent: number;
  /** its ends, percent */
  readonly ends: readonly [number, number];
  readonly row: Sourced;
  readonly cautions: readonly Caution[];
}
/** A way to the figure, and the temperatures it is for, degC. */
export interface SaltWay {
  readonly fit: Fit;
  readonly from: number;
  readonly to: number;
  readonly at: (t: number) => Humidity;
}

interface PrintedRow extends Sourced {
  readonly t_degC: number;
  readonly rh_pct: number;
  readonly u_pct?: number | null;
  readonly spread_pct?: readonly [number, number];
}

function endsOf({ rh_pct, u_pct, spread_pct }: PrintedRow): readonly [number, number] {
  const error = u_pct ?? assumed('recalled-humidity-error') * 100;
  return spread_pct ?? [rh_pct - error, rh_pct + error];
}

/** A printed figure, or one on the line between two; `t` lies within the rows. */
function fromRows(rows: readonly PrintedRow[], t: number): Humidity {
  const below = rows.findLast((row) => row.t_degC <= t) as PrintedRow;
  const above = rows.find((row) => row.t_degC >= t) as PrintedRow;
  const part = above === below ? 0 : (t - below.t_degC) / (above.t_degC - below.t_degC);
  const between = (one: number, other: number): number => one + part * (other - one);
  const [low, high] = [endsOf(below), endsOf(above)];
  return {
    percent: between(below.rh_pct, above.rh_pct),
    ends: [between(low[0], high[0]), between(low[1], high[1])],
    row: below,
    cautions: [
      ...(part === 0 ? [] : [activityCaution('salt-between-rows')]),
      ...(below.obtained === 'memory' ? [caution('recalled')] : []),
    ],
  };
}

function fitted(percent: number, errorId: string, row: Sourced): Humidity {
  const error = assumed(errorId) * 100;
  return { percent, ends: [percent - error, percent + error], row, cautions: [] };
}

/** The ways to a figure for one salt, the best first. */
export function waysTo(salt: string): readonly SaltWay[] {
  const ways: SaltWay[] = [];
  for (const rows of [printed, recalled] as readonly (readonly (PrintedRow & { readonly salt: string })[])[]) {
    const own = rows.filter((row) => row.salt === salt);
    const [first, last] = [own[0], own.at(-1)];
    if (first === undefined || last === undefined) continue;
    ways.push({ fit: 'table', from: first.t_degC, to: last.t_degC, at: (t) => fromRows(own, t) });
  }
  const cubic = cubics.find((row) => row.salt === salt);
  if (cubic !== undefined) {
    const { A0, A1, A2, A3 } = cubic;
    const at = (t: number) => fitted(A0 + t * (A1 + t * (A2 + t * A3)), 'cubic-fit-error', cubic);
    ways.push({ fit: 'cubic', from: assumed('cubic-fit-coolest'), to: assumed('cubic-fit-warmest'), at });
  }
  const exponential = exponentials.find((row) => row.salt === salt || row.compound === salt);
  if (exponential !== undefined) {
    const { A, B, t_min_degC: from, t_max_degC: to } = exponential;
    const at = (t: number) => fitted(A * Math.exp(B / (t + KELVIN)), 'exponential-fit-error', exponential);
    ways.push({ fit: 'exponential', from, to, at });
  }
  const log = logs.find((row) => row.salt === salt);
  if (log !== undefined) {
    const at = (t: number) => fitted(100 * Math.exp(log.k1 / (t + KELVIN) - log.k2), 'log-fit-error', log);
    ways.push({ fit: 'log', from: assumed('log-fit-coolest'), to: assumed('log-fit-warmest'), at });
  }
  return ways;
}
