/** The tables of isotherms, and what each says of itself. Internal. */
import equationsJson from '../../data/water-activity/isotherm-equations.json';
import isothermsJson from '../../data/water-activity/isotherms.json';
import type { Basis } from '../sources/basis';
import { asTable, basisOf } from '../sources/table';
import { assumed } from './assumptions';
import { equationNamed, type IsothermEquation, poleOf } from './isothermEquations';
import type { Limits } from './isothermTypes';
import type { TableRow } from './schemas';

export type IsothermRow = TableRow<'isotherms'>;
export const isotherms = asTable<IsothermRow>(isothermsJson).rows;
const equations = new Map(asTable<TableRow<'isotherm-equations'>>(equationsJson).rows.map((row) => [row.id, row]));

/** The row of an isotherm's equation. */
export function equationRow({ row }: IsothermEquation): TableRow<'isotherm-equations'> {
  const found = equations.get(row);
  if (found === undefined) throw new Error(`no equation ${row}`);
  return found;
}

/** The line of an answer's basis for the form of an equation. */
export function formBasis(equation: IsothermEquation, of: string): Basis {
  const line = basisOf(equationRow(equation), of, `${equation.model} equation`);
  return line.kind === 'published' ? { ...line, kind: 'equation' } : line;
}

/** Whether neither the set nor its equation says over which activities it holds. */
export const isRangeAssumed = (row: IsothermRow): boolean =>
  row.activities === null && equationRow(equationNamed(row.model)).activities === null;

/** The activities a published set may be asked about. */
export function activitiesOf(row: IsothermRow): Limits {
  if (row.activities !== null) return { low: row.activities[0], high: row.activities[1] };
  const [low, high] = equationRow(equationNamed(row.model)).activities ?? [
    assumed('least-isotherm-activity'),
    assumed('most-isotherm-activity'),
  ];
  const { K } = row.parameters;
  // near its pole an equation with K above 1 runs away
  return { low, high: K !== undefined && K > 1 ? Math.min(high, poleOf(K) * assumed('short-of-pole')) : high };
}

/** The temperatures a set is for, degC. */
export function temperaturesOf({ temperature_degC }: IsothermRow): Limits {
  if (temperature_degC === null) return { low: assumed('coolest-isotherm'), high: assumed('warmest-isotherm') };
  return { low: temperature_degC[0], high: temperature_degC[1] };
}
