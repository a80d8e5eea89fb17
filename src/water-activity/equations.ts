/** The equations of water activity as the table of models has them. Internal. */
import modelsJson from '../../data/water-activity/models.json';
import type { Basis } from '../sources/basis';
import { asTable, basisOf } from '../sources/table';
import type { TableRow } from './schemas';

type ModelRow = TableRow<'models'>;
type ModelFigure = 'least_activity' | 'least_E' | 'most_E' | 'most_below_zero_degC';

const rows = new Map(asTable<ModelRow>(modelsJson).rows.map((row) => [row.id, row]));

/** The row of this id; the id comes from our own code, so a missing one is met by every test. */
function equation(id: string): ModelRow {
  const row = rows.get(id);
  if (row === undefined) throw new Error(`no equation ${id}`);
  return row;
}

/** The line of an answer's basis for an equation. */
export function equationBasis(id: string, of = 'waterActivity'): Basis {
  const row = equation(id);
  const line = basisOf(row, of, row.equation);
  return line.kind === 'published' ? { ...line, kind: 'equation' } : line;
}

/** An end of the range that an equation is published for. */
export function publishedEnd(id: string, end: ModelFigure): number {
  const value = equation(id)[end];
  if (value === undefined) throw new Error(`no ${end} of the equation ${id}`);
  return value;
}
