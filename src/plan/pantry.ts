import type { ProcessAcid } from '../process/acid';
import { massFromVolume } from '../produce/massFromVolume';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { type Day, massOf } from './makes/context';
import type { PantryItem } from './planInput';

/** What recipes measure, though the pantry holds it by weight. */
export type Measured = Extract<PantryItem, 'bottled lemon juice' | 'citric acid'>;
const isMeasured = (item: PantryItem): item is Measured => item === 'bottled lemon juice' || item === 'citric acid';

/** Kg of a measure, by the weights of measures that `massFromVolume` holds. */
export function kgOfMeasure(
  item: Measured,
  volume: Quantity<'volume'>,
): { readonly kg: number; readonly basis: readonly Basis[] } {
  const { mass, basis } = massFromVolume({ food: item, volume });
  return { kg: valueIn(mass, 'kg'), basis };
}

/** So many kg as the day's recipes write it: by weight, or by the cup or the millilitre. */
export function pantryAmount(day: Day, item: PantryItem, kg: number): Quantity<'mass'> | Quantity<'volume'> {
  if (!isMeasured(item)) return massOf(day, kg);
  const cups = kg / kgOfMeasure(item, { value: 1, unit: 'cup' }).kg;
  return quantityIn<'volume'>(cups, 'cup', day.metric ? 'mL' : 'cup');
}

export interface AcidChosen {
  readonly item: Measured;
  readonly perJar: Quantity<'volume'>;
}

/** The acid of each jar, where the process leaves the choice: lemon juice, unless only citric acid is in the pantry. */
export function acidChosen(
  { request }: Day,
  { bottledLemonJuice, citricAcid }: Pick<ProcessAcid, 'bottledLemonJuice' | 'citricAcid'>,
): AcidChosen | undefined {
  const has = (item: Measured) => (request.kitchen.pantry ?? []).some((each) => each.item === item);
  if (citricAcid !== undefined && has('citric acid') && !has('bottled lemon juice'))
    return { item: 'citric acid', perJar: citricAcid };
  return bottledLemonJuice === undefined ? undefined : { item: 'bottled lemon juice', perJar: bottledLemonJuice };
}
