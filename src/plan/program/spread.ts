import { scaleRange } from '../../quantity/range';
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

function widenedSupply(supply: Supply, spread: Spread, whole: boolean): Supply {
  const { stove, electricity } = supply.energyPerKg ?? {};
  return {
    ...supply,
    // the more that the lot may weigh makes no whole batch that is sure: it is left over
    unitsPerKg: whole ? scaleRange(supply.unitsPerKg, spread.low) : widened(supply.unitsPerKg, spread),
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

/** What goes in by the raw weight, for the most that the lot may weigh; what goes by the ready weight has its own range. */
const pantryFor = (pantry: NonNullable<Activity['pantry']>, most: number): NonNullable<Activity['pantry']> =>
  Object.fromEntries(
    Object.entries(pantry).map(([item, taken]) => [
      item,
      taken.perRawKg === undefined ? taken : { ...taken, perRawKg: taken.perRawKg * most },
    ]),
  );

/**
 * An activity whose lots nobody weighed: what each likely kg gives is promised at the least the lot may weigh; jars to
 * ready, pots, trays and hours hold at the most. Where every lot was weighed nothing changes.
 */
export function withSpread(activity: Activity, lots: readonly KnownLot[]): Activity {
  const of = ({ lot }: Supply): Spread => lots[lot]?.spread ?? { low: 1, high: 1 };
  const most = Math.max(1, ...activity.supplies.map((supply) => of(supply).high));
  if (activity.supplies.every((supply) => of(supply).low === 1 && of(supply).high === 1)) return activity;
  const { cook, pantry, traysPerKg, freezeDry } = activity;
  return {
    ...activity,
    supplies: activity.supplies.map((supply) =>
      widenedSupply(supply, of(supply), activity.unitsPerBatch !== undefined),
    ),
    handsPerKg: activity.handsPerKg * most,
    ...(activity.laterPerKg === undefined ? {} : { laterPerKg: activity.laterPerKg * most }),
    ...(pantry === undefined ? {} : { pantry: pantryFor(pantry, most) }),
    ...(cook === undefined ? {} : { cook: { ...cook, litresPerKg: cook.litresPerKg * most } }),
    ...(traysPerKg === undefined ? {} : { traysPerKg: traysPerKg * most }),
    ...(freezeDry === undefined
      ? {}
      : { freezeDry: { waterPerKg: freezeDry.waterPerKg * most, traysPerKg: freezeDry.traysPerKg * most } }),
  };
}
