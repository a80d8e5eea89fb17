import { assertType, expectTypeOf, test } from 'vitest';
import {
  convert,
  formatQuantity,
  type LengthInput,
  type MassInput,
  type Quantity,
  type ShareInput,
  type VolumeInput,
} from '../../src/quantity/index';

test('a quantity is written with a unit of its own dimension', () => {
  assertType<MassInput>('62 lb');
  assertType<MassInput>('2 lb 3 oz');
  assertType<MassInput>({ value: 1, unit: 'kg' });
  assertType<VolumeInput>('1 1/2 cups');
  assertType<VolumeInput>('1½ cups');
  assertType<VolumeInput>('12 fl oz');
  assertType<LengthInput>('3,400 ft');
  assertType<LengthInput>('½ in');
  assertType<ShareInput>('85 %');
  // @ts-expect-error a mass where a volume belongs
  assertType<VolumeInput>('62 lb');
  // @ts-expect-error a volume where a mass belongs
  assertType<MassInput>('12 fl oz');
  // @ts-expect-error no amount
  assertType<MassInput>('some lb');
  // @ts-expect-error no unit
  assertType<MassInput>('62');
  // @ts-expect-error a unit of another dimension
  assertType<MassInput>({ value: 1, unit: 'cup' });
});

test('convert takes a unit of the same dimension', () => {
  expectTypeOf(convert('1 cup', 'mL')).toEqualTypeOf<Quantity>();
  // @ts-expect-error a volume is no mass
  convert('1 cup', 'lb');
});

test('a quantity of any kind can be written', () => {
  assertType<string>(formatQuantity({ value: 1, unit: 'in' } as Quantity<'length'>));
  assertType<string>(formatQuantity({ value: 1, unit: 'lb' } as Quantity<'mass'>));
  // @ts-expect-error a unit of no table
  formatQuantity({ value: 1, unit: 'furlong' });
});
