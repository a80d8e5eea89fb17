import { expectTypeOf, test } from 'vitest';
import {
  blanching,
  foodProperties,
  freezerLoad,
  freezerPack,
  freezingHeadspace,
  freezingTime,
  frozenStorage,
} from '../../src/freezing/index';
import type { Quantity } from '../../src/quantity/index';

test('a quantity of the wrong kind does not compile', () => {
  // @ts-expect-error a freezer has a volume
  freezerLoad({ freezerVolume: '15 lb' });
  // @ts-expect-error fruit is weighed or measured
  freezerPack({ food: 'peach', style: 'syrup', amount: '5 in' });
  // @ts-expect-error no such pack
  freezerPack({ food: 'peach', style: 'brine', amount: '5 lb' });
  // @ts-expect-error no such style of pack
  freezingHeadspace({ style: 'frozen', mouth: 'regular', jar: 'pint' });
  // @ts-expect-error a jar is no number
  freezingHeadspace({ style: 'dry', mouth: 'regular', jar: 16 });
  // @ts-expect-error vegetables are weighed
  blanching({ food: 'corn', ready: '3 cups' });
  // @ts-expect-error a freezer has a temperature
  frozenStorage({ temperature: '0 lb' });
  // @ts-expect-error a temperature
  foodProperties({ composition: { moisture: 1 }, temperature: '20 psi' });
  // @ts-expect-error latent heat is a number in kJ/kg
  freezingTime({ shape: 'slab', latentHeat: '250 kJ' });
});

test('answers are plain quantities, or a no that must be looked at', () => {
  expectTypeOf(freezerLoad({ freezerVolume: '15 ft3' }).perDay.low).toEqualTypeOf<Quantity<'mass'>>();
  const pack = freezerPack({ food: 'peach', style: 'syrup', amount: '5 lb' });
  // @ts-expect-error a no has no syrup
  pack.syrup;
});
