import { expectTypeOf, test } from 'vitest';
import {
  checkHeadspace,
  checkSeal,
  fillJar,
  type HeadspaceCheck,
  type JarsFor,
  jarsFor,
  type LoadsFor,
  loadsFor,
  sealVacuum,
} from '../../src/jars/index';
import type { Quantity } from '../../src/quantity/index';

test('a quantity of the wrong kind does not compile', () => {
  // @ts-expect-error a headspace is a length
  fillJar({ jar: 'pint', headspace: '1 cup' });
  // @ts-expect-error a density is not a mass
  fillJar({ jar: 'pint', headspace: '1/2 in', density: '1 lb' });
  // @ts-expect-error jars are filled from a volume
  jarsFor({ volume: '62 lb', jar: 'pint', headspace: '1/2 in' });
  // @ts-expect-error a measured jar has a volume
  fillJar({ jar: { brimful: '500 g', opening: '60 mm' }, headspace: '1/2 in' });
  // @ts-expect-error jars are counted
  loadsFor({ jars: '9', jar: 'pint' });
  // @ts-expect-error a reading is a length
  checkHeadspace({ food: 'jam', measured: '1 oz' });
  // @ts-expect-error the lid has three looks
  checkSeal({ sinceProcessing: '14 h', lid: 'dented' });
  // @ts-expect-error a temperature is not a pressure
  sealVacuum({ closingTemperature: '14 psi', elevation: '0 m' });
});

test('answers are plain values', () => {
  expectTypeOf(jarsFor).returns.toEqualTypeOf<JarsFor>();
  expectTypeOf(loadsFor).returns.toEqualTypeOf<LoadsFor>();
  expectTypeOf<HeadspaceCheck['verdict']>().toEqualTypeOf<'right' | 'too little' | 'too much'>();
  expectTypeOf<JarsFor['remainder']>().toEqualTypeOf<Quantity<'volume'>>();
});
