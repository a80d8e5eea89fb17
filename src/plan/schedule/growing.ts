/** Programs in which one product may grow and all others stay as an order of work has them. */
import type { Kept } from '../program/decide';
import type { DayProgram } from '../program/decisions';
import type { Prepared } from '../program/prepare';

/** For each product that may still be worth more: the program in which only it may grow, the worthiest first. */
export function growing(
  program: DayProgram,
  { makings }: Pick<Prepared, 'makings'>,
  kept: readonly Kept[],
): DayProgram[] {
  const ready = new Map(kept.map(({ making, decided }) => [making.activity.product, decided.ready]));
  const worths = makings.map(({ activity }) => {
    const kg = 1 / Math.max(...activity.supplies.map(({ unitsPerKg }) => unitsPerKg.likely));
    return { product: activity.product, perKg: activity.worth / kg };
  });
  return worths
    .sort((one, other) => other.perKg - one.perKg)
    .map(({ product }) => ({
      ...program,
      bounds: program.bounds.map((bound) =>
        bound.of.of !== 'most' || bound.of.product === product
          ? bound
          : { ...bound, max: Math.min(bound.max ?? Number.POSITIVE_INFINITY, ready.get(bound.of.product) ?? 0) },
      ),
    }));
}
