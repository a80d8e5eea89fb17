import type * as z from 'zod/mini';
import tcsJson from '../../data/water-activity/tcs.json';
import { answer } from '../common/answer';
import { fields, flag, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { activityCaution } from './cautions';
import { activityField } from './fields';
import { pHField } from './growthAt';

interface TcsRow extends Sourced {
  readonly table: 'A' | 'B';
  readonly aw: string;
  readonly aw_to: number;
  readonly aw_to_included: boolean;
  readonly pH: string;
  readonly pH_to: number;
  readonly pH_to_included: boolean;
  readonly class: 'non-TCS' | 'PA';
}
const rows = asTable<TcsRow>(tcsJson).rows;

const schema = fields({
  waterActivity: activityField(),
  pH: pHField(),
  heatTreatedAndPackaged: flag('whether the food was heated to destroy vegetative cells and packaged afterwards'),
});
export type TcsClassInput = z.input<typeof schema>;
export interface TcsClass {
  /** `non-TCS`, or `PA`: product assessment required, and until then treated as needing control. */
  readonly class: 'non-TCS' | 'PA';
  readonly table: 'A' | 'B';
  /** The printed row and column. */
  readonly cell: { readonly waterActivity: string; readonly pH: string };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const upTo = (value: number, end: number, included: boolean): boolean => (included ? value <= end : value < end);

/**
 * Whether a food needs time and temperature control for safety, by the two tables of the FDA Food Code that weigh
 * pH against water activity: Table A for food heated and then packaged, Table B for all other.
 *
 * @param input - `waterActivity`: 0 to 1, exclusive; `pH`: 0 to 14; `heatTreatedAndPackaged`: true where the food was
 * cooked enough to destroy vegetative cells and packaged afterwards so that none come back
 * @throws StillroomError OUT_OF_RANGE, MISSING
 *
 * @example
 * ```ts
 * import { tcsClass } from 'stillroom/water-activity';
 *
 * tcsClass({ pH: 5.0, waterActivity: 0.94, heatTreatedAndPackaged: true }).class; // => 'non-TCS'
 * tcsClass({ pH: 4.4, waterActivity: 0.93, heatTreatedAndPackaged: false }).class; // => 'PA'
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
    class: row.class,
    table,
    cell: { waterActivity: row.aw, pH: row.pH },
    basis: [basisOf(row, `Table ${table}`)],
    cautions: [
      ...(row.class === 'PA' ? [activityCaution('product-assessment')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
