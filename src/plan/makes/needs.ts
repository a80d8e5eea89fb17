/** What a recipe must have before it is planned: its acid, and amounts for the food. */
import type { IngredientRow } from '../../recipes/rows/tables';
import type { Batch } from './amounts';
import { type LeftOutProduct, leftOut, type Product } from './making';
import type { Parts } from './recipe';

/** Rows whose acid is not among their lines, though the process asks for it in the mix. */
export const hasAcid = ({ parts }: Parts): boolean =>
  parts.some(({ line }) => line.role === 'acid' && line.keep === true);

/** Whether a recipe's parts are printed for a batch that the page does not measure: then how much of them is not known. */
export const lacksAmounts = ({ parts }: Pick<Parts, 'parts'>, batch: Batch | undefined): boolean =>
  batch === undefined &&
  parts.some(({ per, line }) => per.of === 'batch' && (line.keep === true || SETS.has(line.role)));
const SETS: ReadonlySet<IngredientRow['role']> = new Set(['acid', 'pectin', 'starch', 'sugar']);

/** A product that a page does not measure. */
export const noAmounts = ({ wanted, row }: Product): LeftOutProduct =>
  leftOut(wanted, {
    code: 'no-amounts',
    text: `the page of ${row.name} prints no amount of its food for a batch, or no yield`,
    instead: 'make it by the page, outside the plan',
  });
