import * as z from 'zod/mini';
import servingsJson from '../../../data/plan/servings.json';
import { isMass } from '../../quantity/fields';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { MAKES, type Makes } from '../../recipes/rows/tables';
import { forReaders, id, positive, practiceColumns, type RowOf, text } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { customary } from '../figures/customary';
import type { Kept } from '../program/decide';

/** What one unit holds, as far as it is known. */
export interface UnitSize {
  readonly net?: { readonly kg: number; readonly estimated: boolean };
  readonly litres?: number;
}

/** The net weight and the volume of one jar, bag, pack or sheet. */
export function unitSize({ making, said: { jars, packs, trays } }: Pick<Kept, 'making' | 'said'>): UnitSize {
  const weighed = (mass: Quantity<'mass'> | undefined, estimated = false) =>
    mass === undefined ? {} : { net: { kg: valueIn(mass, 'kg'), estimated } };
  if (jars !== undefined) {
    const litres = valueIn(jars.fillVolume, 'L');
    const net = jars.netMass ?? quantityIn(litres * customary('jar-density'), 'kg', 'kg');
    return { ...weighed(net, jars.netMass === undefined), litres };
  }
  if (packs !== undefined) return weighed(packs.packSize);
  if (trays !== undefined)
    return making.size === undefined ? weighed(trays.stopWeight?.likely, true) : weighed(making.size);
  return making.liters === undefined ? {} : { litres: making.liters };
}

export type Serving = Quantity<'mass'> | Quantity<'volume'>;

export const servingRow = () =>
  z.strictObject({
    id: forReaders(id()),
    makes: z.array(z.enum(MAKES)).check(z.minLength(1)),
    amount: positive(),
    unit: text(),
    metricAmount: positive(),
    metricUnit: text(),
    ...practiceColumns(),
  });
const servings = asTable<RowOf<typeof servingRow>>(servingsJson).rows;

/** The customary serving of what a recipe makes; none of what is not eaten as it is. */
export function customaryServing(makes: Makes, metric: boolean): Serving | undefined {
  const row = servings.find((each) => each.makes.includes(makes));
  if (row === undefined) return undefined;
  const { amount, unit, metricAmount, metricUnit } = row;
  return (metric ? { value: metricAmount, unit: metricUnit } : { value: amount, unit }) as Serving;
}

/** How many servings one unit holds; nothing where that cannot be known. */
export function servingsIn({ net, litres }: UnitSize, serving: Serving): number | undefined {
  if (isMass(serving)) return net && net.kg / valueIn(serving, 'kg');
  return litres && litres / valueIn(serving, 'L');
}
