import type { Activity } from '../../request/activity';
import { readied } from '../decisions';
import { type Draft, limit, use } from '../draft';

/** Jars, lids, bags and freezer room that the units readied take. */
export function stock(draft: Draft, { product, stockPerUnit }: Activity): void {
  for (const { stock: kind, amount } of stockPerUnit)
    use(draft, { of: 'stock', stock: kind }, [readied(product), amount]);
}

export function stockHeld(draft: Draft): void {
  for (const { stock: kind, amount } of draft.capacity.stock) limit(draft, { of: 'stock', stock: kind }, amount);
}
