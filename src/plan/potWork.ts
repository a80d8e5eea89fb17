import { quantityIn, valueIn } from '../quantity/scale';
import type { PotWork } from './dayPlan';
import { type Kept, NOISE } from './decide';
import { potsOf } from './kitchen';
import type { Kitchen } from './planInput';
import { batches } from './program';
import { decidedOf } from './relaxation';

/**
 * The batches of each product: as few as can be, in the largest pot, where its minutes allow; otherwise as the program
 * shared them out.
 *
 * @returns one for each product that is kept; none for what is not cooked
 */
export function potWorkOf(
  kitchen: Kitchen,
  kept: readonly Kept[],
  values: ReadonlyMap<string, number>,
): (PotWork | undefined)[] {
  const pots = potsOf(kitchen).map((pot) => ({ ...pot, litres: valueIn(pot.most, 'L') }));
  const largest = pots.findIndex(({ litres }) => litres === Math.max(...pots.map((pot) => pot.litres)));
  const minutes = valueIn(kitchen.hours, 'min');
  const counts = kept.map(({ making }) =>
    pots.map((_, pot) => decidedOf(values, batches(making.activity.product, pot))),
  );
  const busy = pots.map((_, pot) =>
    kept.reduce((sum, { said }, index) => sum + (counts[index]?.[pot] ?? 0) * (said.cookMinutes ?? 0), 0),
  );
  return kept.map(({ making, decided, said }, index) => {
    const { cookMinutes } = said;
    const pot = pots[largest];
    if (cookMinutes === undefined || pot === undefined) return undefined;
    const planned = counts[index] as number[];
    const litres = decided.rawKg * (making.activity.cook?.litresPerKg ?? 0);
    const fewest = Math.ceil(litres / pot.litres - NOISE);
    const more = (fewest - (planned[largest] as number)) * cookMinutes;
    const fits = (busy[largest] as number) + more <= minutes;
    if (fits) busy[largest] = (busy[largest] as number) + more;
    return {
      minutesEach: cookMinutes,
      volume: quantityIn<'volume'>(litres, 'L', pot.most.unit),
      batches: pots.flatMap(({ label, most }, at) => {
        const count = fits ? (at === largest ? fewest : 0) : (planned[at] as number);
        return count > 0 ? [{ pot: label, batches: count, most }] : [];
      }),
    };
  });
}
