import type { Range } from '../../quantity/types';
import type { Activity, Supply } from '../request/activity';
import type { KnownLot } from '../request/lots';

type Spread = KnownLot['spread'];

/** A figure for each likely kg of a lot, over all that the lot may weigh. */
const widened = (range: Range<number>, { low, high }: Spread): Range<number> => ({
  low: range.low * low,
  likely: range.likely,
  high: range.high * high,
});

function widenedSupply(supply: Supply, spread: Spread): Supply {
  const { stove, electricity } = supply.energyPerKg ?? {};
  return {
    ...supply,
    unitsPerKg: widened(supply.unitsPerKg, spread),
    trimmingsPerKg: widened(supply.trimmingsPerKg, spread),
    readyPerKg: widened(supply.readyPerKg, spread),
    ...(supply.energyPerKg === undefined
      ? {}
      : {
          energyPerKg: {
            ...(stove === undefined ? {} : { stove: widened(stove, spread) }),
            ...(electricity === undefined ? {} : { electricity: widened(electricity, spread) }),
          },
        }),
  };
}

/**
 * An activity whose lots nobody weighed: what each likely kg gives is promised at the least the lot may weigh; jars to
 * ready, pots, trays and hours hold at the most. Where every lot was weighed nothing changes.
 */
export function withSpread(activity: Activity, lots: readonly KnownLot[]): Activity {
  const of = ({ lot }: Supply): Spread => lots[lot]?.spread ?? { low: 1, high: 1 };
  const most = Math.max(1, ...activity.supplies.map((supply) => of(supply).high));
  if (activity.supplies.every((supply) => of(supply).low === 1 && of(supply).high === 1)) return activity;
  const { cook, traysPerKg, freezeDry } = activity;
  return {
    ...activity,
    supplies: activity.supplies.map((supply) => widenedSupply(supply, of(supply))),
    handsPerKg: activity.handsPerKg * most,
    ...(cook === undefined ? {} : { cook: { ...cook, litresPerKg: cook.litresPerKg * most } }),
    ...(traysPerKg === undefined ? {} : { traysPerKg: traysPerKg * most }),
    ...(freezeDry === undefined
      ? {}
      : { freezeDry: { waterPerKg: freezeDry.waterPerKg * most, traysPerKg: freezeDry.traysPerKg * most } }),
  };
}
