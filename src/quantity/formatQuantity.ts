import { Decimal } from '../common/decimal';
import { fail } from '../errors/StillroomError';
import { fractionText, type Rounding, roundToStep } from './fractions';
import { parseQuantity } from './parseQuantity';
import { toDecimalIn } from './scale';
import { findUnit, pluralOf, type Unit } from './units';

/** A quantity of any kind, so that one of a known kind is one of these too. */
interface AnyQuantity {
  readonly value: number;
  readonly unit: Unit;
}

export interface FormatOptions {
  /** The unit to write it in; its own when left out. */
  readonly unit?: string;
  /** `nearest`, or `up` / `down` where one side is the safe one. */
  readonly rounding?: Rounding;
  /** Kitchen fractions down to one part in this many: 2, 3, 4, 8 or 16. */
  readonly fraction?: 2 | 3 | 4 | 8 | 16;
  /** A decimal step instead of a fraction, such as 5 (g) or 0.1 (kg). */
  readonly step?: number;
}

/** The step of each unit when the caller names none: what a cook can measure. */
const FRACTIONS: Readonly<Record<string, number>> = {
  tsp: 8,
  tbsp: 2,
  cup: 4,
  pint: 2,
  quart: 4,
  gallon: 4,
  in: 8,
  lb: 4,
  oz: 4,
  'fl oz': 2,
  bushel: 4,
  peck: 4,
};
const STEPS: Readonly<Record<string, number>> = {
  g: 1,
  mg: 1,
  kg: 0.01,
  mL: 5,
  L: 0.05,
  mm: 1,
  cm: 0.5,
  m: 1,
  ft: 1,
  degF: 1,
  degC: 0.5,
  psi: 0.5,
  kPa: 1,
  min: 1,
  h: 0.25,
  s: 1,
  day: 1,
  week: 1,
  kWh: 0.1,
  W: 10,
};

/**
 * Writes a quantity for a cook: kitchen fractions for US measures, whole or decimal steps for metric ones,
 * rounded to the nearest step or always to the safe side.
 *
 * @param quantity - a text such as `"1.51 cup"`, or `{ value, unit }`
 * @throws StillroomError as `parseQuantity`; OUT_OF_RANGE for a step that is not above zero
 *
 * @example
 * ```ts
 * import { formatQuantity } from 'stillroom/quantity';
 *
 * formatQuantity({ value: 2.3333333, unit: 'cup' }, { fraction: 3 }); // => '2 1/3 cups'
 * formatQuantity('1.01 cup', { rounding: 'up', fraction: 8 }); // => '1 1/8 cups'
 * formatQuantity('437 g', { step: 5, rounding: 'down' }); // => '435 g'
 * formatQuantity('3400 ft', { unit: 'm' }); // => '1,036 m'
 * ```
 */
export function formatQuantity(quantity: AnyQuantity | string, options: FormatOptions = {}): string {
  const given = parseQuantity(quantity, undefined, 'quantity');
  const dimension = findUnit(given.unit)?.dimension;
  const target = options.unit === undefined ? { unit: given.unit, dimension } : findUnit(options.unit, dimension);
  if (target === undefined || target.dimension !== dimension) {
    fail('WRONG_DIMENSION', 'unit', options.unit, `a unit of ${dimension}`);
  }
  const rounding = options.rounding ?? 'nearest';
  const value = toDecimalIn(given, target.unit);
  const parts = options.fraction ?? (options.step === undefined ? FRACTIONS[target.unit] : undefined);
  if (parts !== undefined) {
    const step = new Decimal(1).div(parts);
    const rounded = roundToStep(value, step, rounding);
    return withUnit(fractionText(rounded, parts), rounded, target.unit);
  }
  const step = options.step ?? STEPS[target.unit] ?? 0.01;
  if (!(step > 0 && Number.isFinite(step))) fail('OUT_OF_RANGE', 'step', step, 'a step above zero');
  const rounded = roundToStep(value, step, rounding);
  return withUnit(groupThousands(rounded.toFixed()), rounded, target.unit);
}

function withUnit(text: string, value: Decimal, unit: string): string {
  const name = value.abs().lte(1) && !value.isZero() ? unit : pluralOf(unit);
  return `${text} ${name.replace('delta deg', 'deg').replace('deg', '°')}`;
}

/** `12345.6` -> `12,345.6`. */
export function groupThousands(text: string): string {
  const [whole = '', fraction] = text.split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}
