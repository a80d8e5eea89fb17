import type { Activity } from '../../request/activity';
import { freezeTrays } from '../decisions';
import { bound, type Draft, decide, limit, scaled, use } from '../draft';

/** Trays of the freeze-dryer, and the ice they give. */
export function freezeDryer(draft: Draft, activity: Activity): void {
  const { product, freezeDry, costPerTray = 0 } = activity;
  if (freezeDry === undefined) return;
  const { waterPerKg, traysPerKg } = freezeDry;
  const trays = freezeTrays(product);
  decide(draft, trays);
  bound(draft, { of: 'room on trays', product }, [[trays, 1], ...scaled(activity, () => -traysPerKg)], { min: 0 });
  use(draft, { of: 'freeze-dryer trays' }, [trays, 1]);
  draft.counts.cost.push([trays, costPerTray]);
  use(draft, { of: 'freeze-dryer ice' }, ...scaled(activity, () => waterPerKg));
}

export function freezeDryerHeld(draft: Draft): void {
  const machine = draft.capacity.freezeDryer;
  if (machine === undefined) return;
  limit(draft, { of: 'freeze-dryer trays' }, machine.trays * machine.loads);
  limit(draft, { of: 'freeze-dryer ice' }, machine.iceKg * machine.loads);
}
