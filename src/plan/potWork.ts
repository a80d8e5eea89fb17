import { quantityIn, valueIn } from '../quantity/scale';
import type { PotWork } from './dayPlan';
import { type Kept, NOISE } from './decide';
import { potsOf } from './kitchen';
import type { Kitchen } from './planInput';
import { batches, groupsOf, loads } from './program';
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
  const litresOf = ({ making, decided }: Kept) => decided.rawKg * (making.activity.cook?.litresPerKg ?? 0);
  const enough = withBatchForEachLoad(
    kept,
    kept.map((each) => Math.ceil(litresOf(each) / (pots[largest]?.litres ?? 1) - NOISE)),
    counts.map((own) => own.reduce((sum, count) => sum + count, 0)),
    values,
  );
  return kept.map((each, index) => {
    const { cookMinutes } = each.said;
    const pot = pots[largest];
    if (cookMinutes === undefined || pot === undefined) return undefined;
    const planned = counts[index] as number[];
    const litres = litresOf(each);
    const fewest = enough[index] as number;
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

/** The batches that the pot asks for, and of those planned as many more as the canner loads ask for. */
function withBatchForEachLoad(
  kept: readonly Kept[],
  fewest: readonly number[],
  planned: readonly number[],
  values: ReadonlyMap<string, number>,
): number[] {
  const enough = [...fewest];
  const places = new Map(kept.map(({ making }, index) => [making.activity.product, index]));
  for (const [key, group] of groupsOf(kept.map(({ making }) => making.activity))) {
    const cooked = group.filter(({ cook }) => cook !== undefined).map(({ product }) => places.get(product) as number);
    const canners = group[0]?.canning?.canners ?? [];
    const loaded = canners.reduce((sum, { canner }) => sum + decidedOf(values, loads(key, canner)), 0);
    let missing = loaded - cooked.reduce((sum, index) => sum + (fewest[index] as number), 0);
    for (const index of cooked) {
      const more = Math.max(0, Math.min(missing, (planned[index] as number) - (fewest[index] as number)));
      enough[index] = (fewest[index] as number) + more;
      missing -= more;
    }
  }
  return enough;
}
