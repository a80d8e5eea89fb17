import type * as z from 'zod/mini';
import tcsJson from '../../data/water-activity/tcs.json';
import { answer } from '../common/answer';
import { fields, flag, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf } from '../sources/table';
import { pH as pHWord } from '../words/pH';
import { activityCaution } from './cautions';
import { activityField } from './fields';
import type { TableRow } from './schemas';

type TcsRow = TableRow<'tcs'>;
const rows = asTable<TcsRow>(tcsJson).rows;

const schema = fields({
  /** Water activity of the food, above 0 and below 1. */
  waterActivity: activityField(),
  /** pH of the food, 0 to 14. */
  pH: pHWord(),
  /** Whether it was cooked enough to destroy vegetative cells and packaged afterward, so that none come back. */
  heatTreatedAndPackaged: flag('whether the food was heated to destroy vegetative cells and packaged afterward'),
});
export type TcsClassInput = z.input<typeof schema>;
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
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const upTo = (value: number, end: number, included: boolean): boolean => (included ? value <= end : value < end);

/**
 * Whether a food needs time and temperature control for safety (TCS), by the two tables of the FDA Food Code that
 * compare pH with water activity: Table A for food heated and then packaged, Table B for all other. It is a rule for
 * those who sell food, and no recipe for canning (for that see `acidClass`).
 *
 * @param input - `waterActivity`: above 0 and below 1; `pH`: 0 to 14; `heatTreatedAndPackaged`: true where the food was
 * cooked enough to destroy vegetative cells and packaged afterward so that none come back
 * @throws StillroomError OUT_OF_RANGE, MISSING
 *
 * @example
 * ```ts
 * import { tcsClass } from 'stillroom/water-activity';
 *
 * tcsClass({ pH: 5.0, waterActivity: 0.94, heatTreatedAndPackaged: true }).ruledAs; // => 'non-TCS'
 * tcsClass({ pH: 4.4, waterActivity: 0.93, heatTreatedAndPackaged: false }).ruledAs; // => 'PA'
 * ```
 */
export function tcsClass(input: TcsClassInput): TcsClass {
  const { waterActivity, pH, heatTreatedAndPackaged } = readInput(schema, input);
  const table = heatTreatedAndPackaged ? 'A' : 'B';
  // rows and columns ascend and the last ones reach 1 and 14, so the first that holds both is the cell
  const row = rows.find(
    (cell) =>
      cell.table === table &&
      upTo(waterActivity, cell.aw_to, cell.aw_to_included) &&
      upTo(pH, cell.pH_to, cell.pH_to_included),
  ) as TcsRow;
  return answer({
    ruledAs: row.class,
    table,
    printedCell: { row: row.aw, column: row.pH },
    basis: [basisOf(row, 'ruledAs', `Table ${table}`)],
    cautions: [
      ...(row.class === 'PA' ? [activityCaution('product-assessment')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
