import tcsJson from '../../data/water-activity/tcs.json';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf } from '../sources/table';
import { activityCaution } from './cautions';
import type { TableRow } from './schemas';

type TcsRow = TableRow<'tcs'>;
const rows = asTable<TcsRow>(tcsJson).rows;

/** How the FDA Food Code rules on a food that is sold: whether it needs time and temperature control for safety. */
export interface TcsClass {
  /** `non-TCS`, or `PA`: product assessment required; until then treat the food as one that needs control. */
  readonly ruledAs: 'non-TCS' | 'PA';
  /** The printed table: `A` for food heated and then packaged, `B` for all other. */
  readonly table: 'A' | 'B';
  /** Where the food is in the table, as printed. */
  readonly printedCell: {
    /** The row: water activity. */
    readonly row: string;
    /** The column: pH. */
    readonly column: string;
  };
}

const upTo = (value: number, end: number, included: boolean): boolean => (included ? value <= end : value < end);

/** The cell of the two tables that compare pH with water activity: Table A for food heated and then packaged. */
export function tcsClass(
  waterActivity: number,
  pH: number,
  heatTreatedAndPackaged: boolean,
): { tcs: TcsClass; basis: Basis[]; cautions: Caution[] } {
  const table = heatTreatedAndPackaged ? 'A' : 'B';
  // rows and columns ascend and the last ones reach 1 and 14, so the first that holds both is the cell
  const row = rows.find(
    (cell) =>
      cell.table === table &&
      upTo(waterActivity, cell.aw_to, cell.aw_to_included) &&
      upTo(pH, cell.pH_to, cell.pH_to_included),
  ) as TcsRow;
  return {
    tcs: { ruledAs: row.class, table, printedCell: { row: row.aw, column: row.pH } },
    basis: [basisOf(row, 'tcs.ruledAs', `Table ${table}`)],
    cautions: [
      ...(row.class === 'PA' ? [activityCaution('product-assessment')] : []),
      caution('follow-local-guidance'),
    ],
  };
}
