import type { Activity } from '../../request/activity';
import { readied } from '../decisions';
import { type Draft, limit, scaled, use } from '../draft';

/** Minutes of hands: for each kg that is prepared, and for each unit that is filled. */
export function hands(draft: Draft, activity: Activity): void {
  use(draft, { of: 'hands' }, ...scaled(activity, () => activity.handsPerKg), [
    readied(activity.product),
    activity.handsPerUnit,
  ]);
}

export const handsHeld = (draft: Draft): void =>
  limit(draft, { of: 'hands' }, draft.capacity.hands * draft.capacity.minutes);
