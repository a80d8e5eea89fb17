import { formatQuantity } from '../../quantity/formatQuantity';
import type { Fitted } from '../fit/fitDay';
import type { GapCause } from '../request/dayPlan';

/**
 * What keeps a plan from being proven best: the order of the work of the best plan by the sums of minutes, which ran
 * late, or a search that was cut short. Nothing where the plan is proven best.
 */
export function gapCause({ found, runsLate }: Fitted): GapCause | undefined {
  if (found.optimal) return undefined;
  if (runsLate === undefined)
    return {
      kind: 'search',
      text: 'the search stopped before it had ruled out a better plan: fewer products or lots would let it finish',
    };
  const { minutes, uses } = runsLate;
  if (minutes === 0) {
    const text = 'no order was found for the work of the best plan by the sums of minutes';
    return { kind: 'order of work', text: `${text}: more hours, hands, pots or burners would help` };
  }
  const long = formatQuantity({ value: minutes, unit: 'min' });
  const late = uses.length === 0 ? '' : `, with the ${uses.join(' and the ')} still busy`;
  return {
    kind: 'order of work',
    late: minutes,
    stillBusy: uses,
    text: `the best plan by the sums of minutes ends ${long} after the hours${late}: with that much more time it fits`,
  };
}
