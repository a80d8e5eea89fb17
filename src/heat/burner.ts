import { share } from '../quantity/fields';
import { sureRange } from '../quantity/range';
import type { Range } from '../quantity/types';
import type { Basis } from '../sources/basis';

/** Share of a burner's heat that reaches the pot, gas flame to induction; common practice, no source. */
export const EFFICIENCY: Range<number> = { low: 0.35, likely: 0.55, high: 0.8 };

/** Share of a burner's energy that reaches the pot, as `loadTimeline` takes it. */
export const efficiency = () => share({ min: 0.05, max: 1 });

/** The share given, or that of gas flames to induction. */
export const burnerShare = (given: number | undefined): Range<number> =>
  given === undefined ? EFFICIENCY : sureRange(given);

export const burnerBasis = (given: number | undefined): Basis => ({
  of: "share of the burner's energy that reaches the pot",
  kind: given === undefined ? 'common-practice' : 'measured',
});

/**
 * Share of a burner's rated power that keeps a covered pot or canner at the boil; common practice, no source. It stands
 * to reason: 0.5 to 1.5 L of water an hour that boil away take 0.3 to 0.9 kW, the walls give off some 0.3 kW, and half
 * of what a 2 to 3 kW burner draws reaches the pot.
 */
export const HOLDING: Range<number> = { low: 0.25, likely: 0.4, high: 0.7 };
export const holdingBasis = (given: number | undefined): Basis => ({
  of: "share of the burner's rated power that holds the boil",
  kind: given === undefined ? 'common-practice' : 'measured',
});
