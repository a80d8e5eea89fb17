import servingsJson from '../../../data/plan/servings.json';
import { isMass } from '../../quantity/fields';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { asTable, type Practice } from '../../sources/table';
import { customary } from '../customary';
import { BAG } from '../makes/dryingLots';
import { POWDER_JAR } from '../makes/trimmings';
import type { Kept } from '../program/decide';
import type { Make, Wanted } from '../request/planInput';

/** What one unit holds, as far as it is known. */
export interface UnitSize {
  readonly net?: { readonly kg: number; readonly estimated: boolean };
  readonly litres?: number;
}

/** The net weight and the volume of one jar, bag, pack or sheet. */
export function unitSize({ make, size }: Wanted, { jars, packs, trays }: Kept['said']): UnitSize {
  const weighed = (mass: Quantity<'mass'> | undefined, estimated = false) =>
    mass === undefined ? {} : { net: { kg: valueIn(mass, 'kg'), estimated } };
  switch (make) {
    case 'jars':
    case 'jam': {
      if (jars === undefined) return {};
      const litres = valueIn(jars.fillVolume, 'L');
      const net = weighed(
        jars.netMass ?? quantityIn(litres * customary('jar-density'), 'kg', 'kg'),
        jars.netMass === undefined,
      );
      return { ...net, litres };
    }
    case 'dried':
    case 'freeze-dried':
      return weighed(size ?? BAG);
    case 'powder':
      return weighed(size ?? POWDER_JAR);
    case 'frozen':
      return weighed(packs?.size);
    case 'leather':
      return weighed(trays?.stopWeight?.likely, true);
    case 'vinegar':
    case 'jelly stock':
      return { litres: valueIn({ value: 1, unit: 'quart' }, 'L') };
  }
}

export type Serving = Quantity<'mass'> | Quantity<'volume'>;

interface ServingRow extends Practice {
  readonly make: Make;
  readonly amount: number;
  readonly unit: string;
  readonly metricAmount: number;
  readonly metricUnit: string;
}
const servings = asTable<ServingRow>(servingsJson).rows;

/** The customary serving of a make; none of what is not eaten as it is. */
export function customaryServing(make: Make, metric: boolean): Serving | undefined {
  const row = servings.find((each) => each.make === make);
  if (row === undefined) return undefined;
  const { amount, unit, metricAmount, metricUnit } = row;
  return (metric ? { value: metricAmount, unit: metricUnit } : { value: amount, unit }) as Serving;
}

/** How many servings one unit holds; nothing where that cannot be known. */
export function servingsIn({ net, litres }: UnitSize, serving: Serving): number | undefined {
  if (isMass(serving)) return net && net.kg / valueIn(serving, 'kg');
  return litres && litres / valueIn(serving, 'L');
}
