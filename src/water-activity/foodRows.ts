import type { FoundFood } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { isWithin } from '../foods/isWithin';
import { nameOf } from '../foods/tables';
import type { Basis } from '../sources/basis';
import { basisOf, type Sourced } from '../sources/table';

/** A row of a table of foods. */
export interface FoodRow extends Sourced {
  readonly food: string;
  readonly form?: string;
}

/**
 * The rows of a food, or of the first wider food that has any: those in the form asked for, else those that name no
 * form; where no form is asked for, those that name none, else all.
 */
export function rowsFor<Row extends FoodRow>(
  rows: readonly Row[],
  { id }: FoundFood,
  wanted: string | undefined,
): Row[] {
  for (const each of figuresFor(id, 'isotherm')) {
    const own = rows.filter((row) => row.food === each);
    const inForm = own.filter(({ form: has }) => wanted !== undefined && has !== undefined && isWithin(has, wanted));
    const plain = own.filter(({ form: has }) => has === undefined);
    const found = inForm.length > 0 ? inForm : plain.length > 0 || wanted !== undefined ? plain : own;
    if (found.length > 0) return found;
  }
  return [];
}

/** A line of the basis; it names the food of the row where that is a wider one. */
export const rowBasis = (row: FoodRow, asked: FoundFood, of: string, note: string): Basis => ({
  ...basisOf(row, of, `${note} of ${nameOf(row.food)}`),
  ...(row.food === asked.id ? {} : { food: nameOf(row.food) }),
});
