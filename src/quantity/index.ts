/**
 * Quantities: kitchen amounts with units, read, converted exactly and written with safe rounding.
 * @module
 */
export { convert } from './convert';
export { type FormatOptions, formatQuantity } from './formatQuantity';
export type { Rounding } from './fractions';
export { parseQuantity } from './parseQuantity';
export type {
  AreaInput,
  DensityInput,
  EnergyInput,
  LengthInput,
  MassInput,
  Money,
  MoneyInput,
  PowerInput,
  PressureInput,
  Quantity,
  QuantityInput,
  Range,
  ShareInput,
  TemperatureDifferenceInput,
  TemperatureInput,
  TimeInput,
  VolumeInput,
} from './types';
export type { Dimension, Unit, UnitSpelling } from './units';
