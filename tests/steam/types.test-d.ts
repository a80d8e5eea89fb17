import { expectTypeOf, test } from 'vitest';
import type { Quantity, Range } from '../../src/quantity/index';
import { airPressure, boilingTemperature, moistAir, steamTemperature } from '../../src/steam/index';

test('each field takes its own dimension', () => {
  airPressure({ elevation: '3,400 ft' });
  // @ts-expect-error a pressure where an elevation belongs
  airPressure({ elevation: '14.7 psi' });
  steamTemperature({ gauge: '11 psi', elevation: '2000 ft' });
  // @ts-expect-error a mass where a pressure belongs
  steamTemperature({ gauge: '11 lb', elevation: '2000 ft' });
  // @ts-expect-error the elevation is never taken for granted
  expectTypeOf(steamTemperature).toBeCallableWith({ gauge: '11 psi' });
});

test('boiling takes an elevation or a pressure', () => {
  boilingTemperature({ elevation: '0 m' });
  boilingTemperature({ pressure: '1 atm' });
  // @ts-expect-error not both
  expectTypeOf(boilingTemperature).toBeCallableWith({ elevation: '0 m', pressure: '1 atm' });
  expectTypeOf(boilingTemperature({ elevation: '0 ft' }))
    .toHaveProperty('temperature')
    .toEqualTypeOf<Quantity<'temperature'>>();
});

test('an elevation that is only observed is a range', () => {
  expectTypeOf(boilingTemperature({ temperature: '203 degF' }))
    .toHaveProperty('elevation')
    .toEqualTypeOf<Range<Quantity<'length'>>>();
});

test('the dew point may be missing', () => {
  expectTypeOf(moistAir).returns.toHaveProperty('dewPoint').toEqualTypeOf<Quantity<'temperature'> | undefined>();
});
