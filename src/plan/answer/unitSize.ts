import { isMass } from '../../quantity/fields';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { BAG } from '../makes/dryingLots';
import { POWDER_JAR } from '../makes/trimmings';
import type { Kept } from '../program/decide';
import type { Make, Wanted } from '../request/planInput';

/** What one unit holds, as far as it is known. */
export interface UnitSize {
  readonly net?: { readonly kg: number; readonly estimated: boolean };
  readonly litres?: number;
}

/** Kg in a litre of what a jar is filled with: common practice. */
const JAR_DENSITY = 1;

/** The net weight and the volume of one jar, bag, pack or sheet. */
export function unitSize({ make, size }: Wanted, { jars, packs, trays }: Kept['said']): UnitSize {
  const weighed = (mass: Quantity<'mass'> | undefined, estimated = false) =>
    mass === undefined ? {} : { net: { kg: valueIn(mass, 'kg'), estimated } };
  switch (make) {
    case 'jars':
    case 'jam': {
      if (jars === undefined) return {};
      const litres = valueIn(jars.fillVolume, 'L');
      const net = weighed(jars.netMass ?? quantityIn(litres * JAR_DENSITY, 'kg', 'kg'), jars.netMass === undefined);
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

/** What one eats at a time, in US and in metric measure: common practice, no source. Jelly stock is an ingredient. */
const CUSTOMARY: Readonly<Partial<Record<Make, readonly [us: Serving, metric: Serving]>>> = {
  jars: [
    { value: 0.5, unit: 'cup' },
    { value: 125, unit: 'mL' },
  ],
  jam: [
    { value: 1, unit: 'tbsp' },
    { value: 15, unit: 'mL' },
  ],
  dried: [
    { value: 1.5, unit: 'oz' },
    { value: 40, unit: 'g' },
  ],
  'freeze-dried': [
    { value: 0.5, unit: 'oz' },
    { value: 15, unit: 'g' },
  ],
  leather: [
    { value: 1, unit: 'oz' },
    { value: 30, unit: 'g' },
  ],
  frozen: [
    { value: 5, unit: 'oz' },
    { value: 140, unit: 'g' },
  ],
  powder: [
    { value: 0.1, unit: 'oz' },
    { value: 3, unit: 'g' },
  ],
  vinegar: [
    { value: 1, unit: 'tbsp' },
    { value: 15, unit: 'mL' },
  ],
};

/** The customary serving of a make; none of what is not eaten as it is. */
export const customaryServing = (make: Make, metric: boolean): Serving | undefined => CUSTOMARY[make]?.[metric ? 1 : 0];

/** How many servings one unit holds; nothing where that cannot be known. */
export function servingsIn({ net, litres }: UnitSize, serving: Serving): number | undefined {
  if (isMass(serving)) return net && net.kg / valueIn(serving, 'kg');
  return litres && litres / valueIn(serving, 'L');
}
