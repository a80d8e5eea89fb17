/** Lines of a basis as the drying functions say them. */
import type { Basis } from '../sources/basis';
import { basisOf, type Sourced } from '../sources/table';

/** The two ways of stating moisture, and the balance of water and solids that follows from them. */
export const moistureBasis = (of: string): Basis => ({
  of,
  kind: 'equation',
  source: 'singh-heldman',
  note: 'wet basis = water / (water + solids); dry basis = water / solids',
});

/** The cook's own figures. */
export const measured = (of: string, note?: string): Basis => ({
  of,
  kind: 'measured',
  ...(note === undefined ? {} : { note }),
});

/** The line of a row that may be a wider food's: `lender` is that food's name. */
export const basisFrom = (row: Sourced, of: string, note?: string, lender?: string): Basis => ({
  ...basisOf(row, of, note),
  ...(lender === undefined ? {} : { food: lender }),
});
