import * as z from 'zod/mini';
import pantryJson from '../../../data/plan/pantry.json';
import type { ProcessAcid } from '../../process/acid';
import { knownOr } from '../../produce/shape';
import { kitchenMeasure } from '../../produce/weights/kitchenMeasure';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { PANTRY, type PantryItem } from '../../recipes/pantryItems';
import type { Basis } from '../../sources/basis';
import { forReaders, id, positive, type RowOf, sourcedColumns, text } from '../../sources/columns';
import { asTable, practiceBasis } from '../../sources/table';
import { type Day, massOf } from './making';

export const pantryRow = () =>
  z.strictObject({
    id: forReaders(id()),
    item: z.enum(PANTRY),
    weighedAs: z.exactOptional(text()),
    form: z.exactOptional(text()),
    gramsPerCup: z.exactOptional(positive()),
    measured: z.exactOptional(z.boolean()),
    acid: z.exactOptional(z.boolean()),
    /** What recipes print that it stands for. */
    standsFor: z.exactOptional(z.strictObject({ food: id(), form: id() })),
    ...sourcedColumns(),
  });
type PantryRow = RowOf<typeof pantryRow>;
const rows: ReadonlyMap<string, PantryRow> = new Map(asTable<PantryRow>(pantryJson).rows.map((row) => [row.item, row]));

/** The item that stands for a food in a form: bottled lemon juice for lemon juice, whose acid varies. */
export const standsFor = (food: string | undefined, form: string | undefined): PantryItem | undefined =>
  PANTRY.find((item) => {
    const own = rows.get(item)?.standsFor;
    return own !== undefined && own.food === food && own.form === form;
  });

/** Whether a recipe is unsafe without it. */
export const isAcid = (item: PantryItem): boolean => rows.get(item)?.acid === true;

/** Kg of a measure, by the weights of measures that `kitchenMeasure` holds. */
export function kgOfMeasure(
  item: PantryItem,
  volume: Quantity<'volume'>,
): { readonly kg: number; readonly basis: readonly Basis[] } {
  const { weighedAs = item, form, gramsPerCup } = rows.get(item) ?? {};
  if (gramsPerCup !== undefined) {
    return {
      kg: (valueIn(volume, 'cup') * gramsPerCup) / 1000,
      basis: [practiceBasis('ingredients', `weight of a measure of ${item}`)],
    };
  }
  const weighed = kitchenMeasure({ food: weighedAs, ...(form === undefined ? {} : { form }), volume });
  const { mass, basis } = knownOr(weighed, 'food', weighedAs);
  return { kg: valueIn(mass, 'kg'), basis };
}

/** Some kg as the day's recipes write it: by weight, or by the cup or the millilitre. */
export function pantryAmount(day: Day, item: PantryItem, kg: number): Quantity<'mass'> | Quantity<'volume'> {
  if (rows.get(item)?.measured !== true) return massOf(day, kg);
  const cups = kg / kgOfMeasure(item, { value: 1, unit: 'cup' }).kg;
  return quantityIn<'volume'>(cups, 'cup', day.metric ? 'mL' : 'cup');
}

export interface AcidChosen {
  readonly item: PantryItem;
  readonly perJar: Quantity<'volume'>;
}

/** The acid of each jar, where the process leaves the choice: lemon juice, unless only citric acid is in the pantry. */
export function acidChosen(
  { request }: Day,
  { bottledLemonJuice, citricAcid }: Pick<ProcessAcid, 'bottledLemonJuice' | 'citricAcid'>,
): AcidChosen | undefined {
  const has = (item: PantryItem) => (request.kitchen.pantry ?? []).some((each) => each.item === item);
  if (citricAcid !== undefined && has('citric acid') && !has('bottled lemon juice'))
    return { item: 'citric acid', perJar: citricAcid };
  return bottledLemonJuice === undefined ? undefined : { item: 'bottled lemon juice', perJar: bottledLemonJuice };
}
