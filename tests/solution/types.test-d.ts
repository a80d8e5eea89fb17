import { expectTypeOf, test } from 'vitest';
import type { Quantity } from '../../src/quantity/index';
import { brineDensity, brixFrom, sucroseDensity, syrupBoilingTemperature } from '../../src/solution/index';

test('a quantity of the wrong kind does not compile', () => {
  // @ts-expect-error a temperature is not a length
  sucroseDensity({ brix: 50, temperature: '20 ft' });
  // @ts-expect-error Brix is no share
  sucroseDensity({ brix: '50 %', temperature: '20 degC' });
  // @ts-expect-error a density is not a mass
  brineDensity({ density: '1.03 kg' });
  // @ts-expect-error an elevation is a length
  syrupBoilingTemperature({ brix: 50, elevation: '90 kPa' });
  // @ts-expect-error a boil is a temperature
  brixFrom({ boiling: '105 g' });
});

test('answers carry their dimension', () => {
  expectTypeOf(sucroseDensity({ brix: 50, temperature: '20 degC' }).density).toEqualTypeOf<Quantity<'density'>>();
  expectTypeOf(syrupBoilingTemperature({ brix: 50 }).temperature).toEqualTypeOf<Quantity<'temperature'>>();
});
