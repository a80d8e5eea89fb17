import { expectTypeOf, test } from 'vitest';
import type { Quantity } from '../../src/quantity/index';
import { concentrate, gelTemperature, jamBalance, sweeten, syrup } from '../../src/sugar/index';

test('a quantity of the wrong kind does not compile', () => {
  // @ts-expect-error a volume is not a mass
  syrup({ brix: 30, volume: '1 kg' });
  // @ts-expect-error one of brix and strength
  syrup({ brix: 30, strength: 'light', volume: '1 L' });
  // @ts-expect-error no such strength
  syrup({ strength: 'thick', volume: '1 L' });
  // @ts-expect-error fruit is weighed
  sweeten({ mass: '2 quarts', brix: 10, targetBrix: 20 });
  // @ts-expect-error a diameter is a length
  concentrate({ mass: '1 kg', solids: 0.1, targetSolids: 0.2, potSize: { diameter: '2 L' } });
  // @ts-expect-error solids are a share
  jamBalance({ ready: '1 kg', solids: '1 kg', sugarToFruit: 1, finishSolids: 0.65 });
  // @ts-expect-error an elevation is a length
  gelTemperature({ elevation: '90 kPa' });
});

test('answers carry their dimension', () => {
  expectTypeOf(syrup({ brix: 30, mass: '1 kg' }).sugar).toEqualTypeOf<Quantity<'mass'>>();
  expectTypeOf(gelTemperature({ elevation: '0 m' }).temperature).toEqualTypeOf<Quantity<'temperature'>>();
});
