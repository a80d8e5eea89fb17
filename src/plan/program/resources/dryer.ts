import type { Activity } from '../../request/activity';
import { trays } from '../decisions';
import { bound, type Draft, decide, limit, scaled, use } from '../draft';

/** Trays of the dryer, each for as many days as it stays loaded. */
export function dryer(draft: Draft, activity: Activity): void {
  const { product, traysPerKg, trayShare = 1, costPerTray = 0 } = activity;
  if (traysPerKg === undefined) return;
  decide(draft, trays(product));
  bound(draft, { of: 'room on trays', product }, [[trays(product), 1], ...scaled(activity, () => -traysPerKg)], {
    min: 0,
  });
  use(draft, { of: 'dryer trays' }, [trays(product), trayShare]);
  draft.counts.cost.push([trays(product), costPerTray]);
}

export const dryerHeld = (draft: Draft): void => limit(draft, { of: 'dryer trays' }, draft.capacity.trays);
