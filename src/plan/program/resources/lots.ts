import type { Activity } from '../../request/activity';
import { raw, readied } from '../decisions';
import { bound, type DayTerm, type Draft, limit, use } from '../draft';

/** The food that an activity takes, other lots by the unit among it; trimmings are no part of a lot's weight. */
export function lots(draft: Draft, { product, supplies, madeOf, also = [] }: Activity): void {
  for (const { lot, kgPerUnit } of also) use(draft, { of: 'lot', lot }, [readied(product), kgPerUnit]);
  if (madeOf !== 'fruit') return;
  for (const { lot } of supplies) use(draft, { of: 'lot', lot }, [raw(lot, product), 1]);
}

/** Trimmings are counted on at the poor end of what the other products drop. */
export function trimmings(draft: Draft): void {
  draft.capacity.lots.forEach((_, lot) => {
    const taken: DayTerm[] = [];
    const dropped: DayTerm[] = [];
    for (const { product, supplies, madeOf } of draft.activities) {
      for (const supply of supplies) {
        if (supply.lot !== lot) continue;
        if (madeOf === 'trimmings') taken.push([raw(lot, product), -1]);
        else dropped.push([raw(lot, product), supply.trimmingsPerKg.low]);
      }
    }
    if (taken.length > 0) bound(draft, { of: 'trimmings', lot }, [...taken, ...dropped], { min: 0 });
  });
}

export function lotsHeld(draft: Draft): void {
  draft.capacity.lots.forEach((kg, lot) => {
    limit(draft, { of: 'lot', lot }, kg);
  });
}
