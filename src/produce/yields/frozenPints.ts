/** The raw weight that the tables print for a frozen pint. Internal: `rawForJars` answers it. */
import { figuresFor } from '../../foods/figuresFor';
import type { Sourced } from '../../sources/table';
import { type Span, spanOf } from '../span';
import { type FrozenRow, frozenRows, poundsRows } from './tables';

/** Pounds a frozen pint by one row: as printed, or the container over its pints where it prints measures. */
function poundsPerPint({ lb, pt_frozen, perPintFrozen, perPintUnit }: FrozenRow): number[] {
  if (perPintUnit === 'lb') return [...perPintFrozen];
  return lb === null ? [] : [lb / pt_frozen[1], lb / pt_frozen[0]];
}

/** Pounds a frozen pint over every row for the food, and those rows; rows that were read go before recalled ones. */
export function frozenPints(food: string): { readonly pounds: Span; readonly rows: readonly Sourced[] } | undefined {
  const foods = figuresFor(food, 'yields');
  const frozen = frozenRows.filter((row) => foods.includes(row.food)).map((row) => ({ row, lb: poundsPerPint(row) }));
  const extension = poundsRows
    .filter((row) => foods.includes(row.food))
    .map((row) => ({ row, lb: row.lbPerPtFrozen ?? [] }));
  const printed = [...frozen, ...extension].filter(({ lb }) => lb.length > 0);
  const read = printed.filter(({ row }) => row.obtained !== 'memory');
  const used = read.length > 0 ? read : printed;
  if (used.length === 0) return undefined;
  const figures = used.flatMap(({ lb }) => lb);
  const { low, high } = spanOf(figures[0] as number, figures);
  return { pounds: { low, likely: (low + high) / 2, high }, rows: used.map(({ row }) => row) };
}
