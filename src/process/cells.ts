/** The printed lines of a process at one place: their figures, and which of them are not served. */
import { formatQuantity } from '../quantity/formatQuantity';
import { exactIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { basisOf } from '../sources/table';
import { ruleFigures } from './canningRules';
import type { Refused } from './refusal';
import type { Alternative, ProcessRow } from './tables';

/** Why a cell of a table is not served. */
const REFUSED_CELLS = {
  'not-recommended': {
    code: 'line not recommended',
    text: 'the source prints this line as not recommended at this elevation',
  },
  recalled: {
    code: 'figure recalled',
    text: 'the figure of these tables for this elevation was recalled and not read in a copy',
  },
} as const;
const RECALLED = {
  code: 'figure recalled',
  text: 'the figures of these tables for this process were recalled and not read in a copy',
} as const;
/** How near a wanted gauge pressure must be to a printed one, psi: the reading of a figure given in kPa. */
const SAME_PRESSURE = 0.05;

/** A row's figures in one elevation band, or why they are not served. */
export interface Cell {
  readonly row: ProcessRow;
  readonly band: number;
  readonly minutes: number;
  readonly psi?: number;
  readonly refused?: Pick<Refused, 'code' | 'text'>;
}

/** One printed line: its minutes and its pressure belong together. */
export interface ProcessLine {
  /** Its letter: `a`, `b` or `c`. */
  readonly alternative: Alternative;
  /** Process time, minutes. */
  readonly minutes: number;
  /** Gauge pressure to hold, of the pressure methods. */
  readonly pressure?: Quantity<'pressure'>;
  /** Whether the empty jars must be sterilized. */
  readonly sterilizeJars: boolean;
}

export function cellOf(row: ProcessRow, band: number): Cell {
  const minutes = typeof row.minutes === 'number' ? row.minutes : (row.minutes[band] as number);
  const psi = row.psi?.[band];
  const why = row.refused?.[String(band)];
  const refused = row.obtained === 'memory' ? RECALLED : why === undefined ? undefined : REFUSED_CELLS[why];
  return {
    row,
    band,
    minutes,
    ...(typeof psi === 'number' ? { psi } : {}),
    ...(refused === undefined ? {} : { refused }),
  };
}

/** Jars are sterilized where the time at the lowest elevations is under 10 minutes, and never for pressure. */
export function needsSterileJars(row: ProcessRow): boolean {
  const [base = 0] = typeof row.minutes === 'number' ? [Number.POSITIVE_INFINITY] : row.minutes;
  const { low } = ruleFigures('sterilize');
  return base < low;
}

export const psiQuantity = (value: number): Quantity<'pressure'> => ({ value, unit: 'psi' });

export function lineOf({ row, minutes, psi }: Cell): ProcessLine {
  return {
    alternative: row.alternative ?? 'a',
    minutes,
    ...(psi === undefined ? {} : { pressure: psiQuantity(psi) }),
    sterilizeJars: needsSterileJars(row),
  };
}

/** Which of the printed lines is asked for. */
export interface WantedLine {
  readonly alternative?: string | undefined;
  readonly pressure?: Quantity<'pressure'> | undefined;
}

/** The one printed line to serve of those for this food, pack and jar; or why none is. */
export function chooseCell(cells: readonly Cell[], asked: WantedLine): Cell | Refused {
  const wanted = cells.filter(
    (cell) =>
      (asked.alternative === undefined || (cell.row.alternative ?? 'a') === asked.alternative) &&
      (asked.pressure === undefined ||
        (cell.psi !== undefined && exactIn(asked.pressure, 'psi').minus(cell.psi).abs().lte(SAME_PRESSURE))),
  );
  const served = wanted.find((cell) => cell.refused === undefined);
  if (served !== undefined) return served;
  const open = cells.filter((cell) => cell.refused === undefined);
  const described = open.map((cell) => {
    const { alternative, minutes, pressure } = lineOf(cell);
    return `${alternative}: ${minutes} min${pressure === undefined ? '' : ` at ${pressure.value} psi`}`;
  });
  const hint = open.length === 0 ? {} : { hint: { text: `printed here: ${described.join('; ')}`, holds: () => true } };
  const [first] = wanted;
  if (first === undefined) {
    const what =
      asked.pressure === undefined ? `line ${asked.alternative}` : formatQuantity(asked.pressure, { step: 0.01 });
    return { code: 'no such line', text: `no line is printed in these tables for ${what} at this elevation`, ...hint };
  }
  const why = first.refused as NonNullable<Cell['refused']>;
  return { ...why, ...hint, basis: [basisOf(first.row, 'reason', 'the line that is not served')] };
}
