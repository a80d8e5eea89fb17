import type { Dimension, Unit, UnitSpelling } from './units';

/** An amount with its unit: plain JSON. */
export interface Quantity<D extends Dimension = Dimension> {
  /** How much, in `unit`. */
  readonly value: number;
  /** Name of the unit: `kg`, `cup`, `degF`. */
  readonly unit: Unit<D>;
}

type Amount =
  | `${number}`
  | `${number},${number}`
  | `${number}/${number}`
  | `${number} ${number}/${number}`
  | `${'' | `${number}`}${'¼' | '½' | '¾' | '⅓' | '⅔'}`;

/**
 * The units that the type checker accepts in a text: those people write. A text in any other spelling that
 * `parseQuantity` reads is given as `{ value, unit }`. The list is short because every one of them stands beside
 * every form of an amount, and the checker compares them all.
 */
interface WrittenUnits {
  mass: 'g' | 'mg' | 'kg' | 'lb' | 'lbs' | 'oz' | 'gram' | 'grams' | 'pound' | 'pounds' | 'ounce' | 'ounces' | 'tonne';
  volume:
    | 'mL'
    | 'dL'
    | 'L'
    | 'm3'
    | 'tsp'
    | 'tbsp'
    | 'fl oz'
    | 'cup'
    | 'cups'
    | 'pint'
    | 'pints'
    | 'quart'
    | 'quarts'
    | 'gallon'
    | 'gallons'
    | 'teaspoon'
    | 'teaspoons'
    | 'tablespoon'
    | 'tablespoons'
    | 'liter'
    | 'liters'
    | 'pt'
    | 'qt'
    | 'gal'
    | 'dry pint'
    | 'dry pints'
    | 'dry quart'
    | 'dry quarts'
    | 'peck'
    | 'pecks'
    | 'bushel'
    | 'bushels'
    | 'in3'
    | 'ft3'
    | 'imperial fl oz'
    | 'imperial pint'
    | 'imperial pints'
    | 'imperial gallon'
    | 'imperial gallons'
    | 'metric cup'
    | 'metric cups';
  length: 'm' | 'mm' | 'cm' | 'km' | 'in' | 'inch' | 'inches' | 'ft' | 'foot' | 'feet';
  area: 'm2' | 'cm2' | 'in2' | 'ft2';
  temperature: 'degC' | 'degF' | '°C' | '°F' | 'K';
  temperatureDifference: 'degC' | 'degF' | '°C' | '°F' | 'K';
  pressure: Unit<'pressure'>;
  time: 's' | 'min' | 'minute' | 'minutes' | 'h' | 'hour' | 'hours' | 'day' | 'days' | 'week' | 'weeks';
  energy: Unit<'energy'>;
  power: Unit<'power'>;
  density: Unit<'density'>;
}

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
  | `${Amount} ${WrittenUnits[D]}`
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

/** A range for anything nature varies: the ends that a plan must hold at, and the value to expect. */
export interface Range<T = Quantity> {
  /** Low end: a plan still holds here. */
  readonly low: T;
  /** The value to expect. */
  readonly likely: T;
  /** High end: a plan still holds here. */
  readonly high: T;
}

/** A share (moisture, solids, salt, yield): a number from 0 to 1, or a text in percent such as `"85 %"`. */
export type ShareInput = number | `${number}%` | `${number} %`;

/** An amount of money with its plain currency code. */
export interface Money {
  /** How much. */
  readonly value: number;
  /** Three-letter currency code: `USD`. */
  readonly unit: string;
}
/** `"24.50 USD"`, or `{ value, unit }` with a three-letter currency code. */
export type MoneyInput = `${number} ${Uppercase<string>}` | Money;

/** An argument with exactly one of the named fields: none is missing one, none has two. */
export type OneOf<T, Names extends keyof T> = Omit<T, Names> &
  {
    [Name in Names]: { [Own in keyof Pick<T, Name>]-?: Exclude<T[Own], undefined> } & {
      [Other in Exclude<Names, Name>]?: undefined;
    };
  }[Names];
