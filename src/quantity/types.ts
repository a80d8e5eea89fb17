import type { Dimension, Unit, UnitSpelling } from './units';

/** An amount with its unit: plain JSON. */
export interface Quantity<D extends Dimension = Dimension> {
  readonly value: number;
  readonly unit: Unit<D>;
}

type Vulgar = '¼' | '½' | '¾' | '⅓' | '⅔' | '⅛' | '⅜' | '⅝' | '⅞';
type Amount =
  | `${number}`
  | `${number},${number}`
  | `${number}/${number}`
  | `${number} ${number}/${number}`
  | `${'' | `${number}` | `${number} `}${Vulgar}`;

/** `2 lb 3 oz`, `5 ft 4 in`. */
type Mixed<D extends Dimension> = D extends 'mass'
  ? `${number} lb ${Amount} oz`
  : D extends 'length'
    ? `${number} ft ${Amount} in`
    : D extends 'volume'
      ? `${number} ${'cup' | 'cups'} ${Amount} tbsp`
      : D extends 'time'
        ? `${number} h ${number} min`
        : never;

/** What a caller may write for a quantity: `"62 lb"`, `"1 1/2 cups"`, `"½ in"`, or `{ value, unit }`. */
export type QuantityInput<D extends Dimension> =
  | `${Amount} ${UnitSpelling<D>}`
  | Mixed<D>
  | { readonly value: number; readonly unit: UnitSpelling<D> };

export type MassInput = QuantityInput<'mass'>;
export type VolumeInput = QuantityInput<'volume'>;
export type LengthInput = QuantityInput<'length'>;
export type AreaInput = QuantityInput<'area'>;
export type TemperatureInput = QuantityInput<'temperature'>;
export type TemperatureDifferenceInput = QuantityInput<'temperatureDifference'>;
export type PressureInput = QuantityInput<'pressure'>;
export type TimeInput = QuantityInput<'time'>;
export type EnergyInput = QuantityInput<'energy'>;
export type PowerInput = QuantityInput<'power'>;
export type DensityInput = QuantityInput<'density'>;

/** What nature varies: the ends that a plan must hold at, and the value to expect. */
export interface Range<T = Quantity> {
  readonly low: T;
  readonly likely: T;
  readonly high: T;
}

/** A ratio (moisture, solids, salt, yield): a number from 0 to 1, or a text in percent such as `"85 %"`. */
export type RatioInput = number | `${number}%` | `${number} %`;

/** An amount of money with its plain currency code. */
export interface Money {
  readonly value: number;
  readonly unit: string;
}
/** `"24.50 USD"`, or `{ value, unit }` with a three-letter currency code. */
export type MoneyInput = `${number} ${Uppercase<string>}` | Money;
