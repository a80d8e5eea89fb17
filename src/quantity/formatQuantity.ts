import { type Exact, exact } from '../common/exact';
import { fail } from '../errors/StillroomError';
import { fractionText, type Rounding, roundToStep } from './fractions';
import { parseQuantity } from './parseQuantity';
import { exactIn } from './scale';
import { findUnit, isPointOnly, pluralOf, type Unit, unitsOf } from './units';

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
const FRACTIONS: ReadonlyMap<string, number> = new Map(
  Object.entries({
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
  }),
);
const STEPS: ReadonlyMap<string, number> = new Map(
  Object.entries({
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
  }),
);

/**
 * Writes a quantity for a cook: kitchen fractions for US measures, whole or decimal steps for metric ones,
 * rounded to the nearest step or always to the safe side.
 *
 * @param quantity - a text such as `"1.51 cup"`, or `{ value, unit }`
 * @param options - how to write it: `unit`, `rounding` (`nearest`, `up`, `down`), `fraction` (2, 3, 4, 8, 16), `step`
 * @throws StillroomError as `parseQuantity`; OUT_OF_RANGE, UNKNOWN_NAME or UNKNOWN_FIELD for an option
 *
 * @example
 * ```ts
 * import { formatQuantity } from 'stillroom/quantity';
 *
 * formatQuantity({ value: 2.3333333, unit: 'cup' }, { fraction: 3 }); // => '2 1/3 cups'
 * formatQuantity('1.01 cup', { rounding: 'up', fraction: 8 }); // => '1 1/8 cups'
 * formatQuantity('437 g', { step: 5, rounding: 'down' }); // => '435 g'
 * formatQuantity('3400 ft', { unit: 'm' }); // => '1036 m'
 * ```
 */
export function formatQuantity(quantity: AnyQuantity | string, options: FormatOptions = {}): string {
  const given = parseQuantity(quantity, undefined, 'quantity');
  const { unit, rounding = 'nearest', fraction, step } = readOptions(options);
  const dimension = findUnit(given.unit)?.dimension ?? 'mass';
  const target = unit === undefined ? { unit: given.unit, dimension } : findUnit(unit, dimension);
  if (target === undefined || target.dimension !== dimension) {
    fail(
      'WRONG_DIMENSION',
      'options.unit',
      unit,
      `a unit of ${dimension} (${unitsOf(dimension).slice(0, 8).join(', ')})`,
    );
  }
  const value = exactIn(given, target.unit);
  const parts = fraction ?? (step === undefined ? FRACTIONS.get(target.unit) : undefined);
  if (parts !== undefined) {
    const rounded = roundToStep(value, exact(1).div(parts), rounding);
    return withUnit(fractionText(rounded, parts), rounded, target.unit);
  }
  const rounded = roundToStep(value, step ?? STEPS.get(target.unit) ?? 0.01, rounding);
  const digits = rounded.toString();
  // a comma in a metric figure would be read as a decimal one by half of its readers
  return withUnit(isPointOnly(target) ? groupThousands(digits) : digits, rounded, target.unit);
}

const PARTS: readonly number[] = [2, 3, 4, 8, 16];
const ROUNDINGS: readonly Rounding[] = ['nearest', 'up', 'down'];
const OPTIONS = ['unit', 'rounding', 'fraction', 'step'];

function readOptions(options: unknown): FormatOptions {
  if (typeof options !== 'object' || options === null || Array.isArray(options)) {
    fail('WRONG_TYPE', 'options', options, `an object with any of ${OPTIONS.join(', ')}`);
  }
  const extra = Object.keys(options).find((key) => !OPTIONS.includes(key));
  if (extra !== undefined) fail('UNKNOWN_FIELD', `options.${extra}`, extra, `one of ${OPTIONS.join(', ')}`);
  const { unit, rounding, fraction, step } = options as Record<string, unknown>;
  if (unit !== undefined && typeof unit !== 'string') fail('WRONG_TYPE', 'options.unit', unit, 'the name of a unit');
  if (rounding !== undefined && !(ROUNDINGS as readonly unknown[]).includes(rounding)) {
    fail('UNKNOWN_NAME', 'options.rounding', rounding, `one of ${ROUNDINGS.join(', ')}`);
  }
  if (fraction !== undefined && !(PARTS as readonly unknown[]).includes(fraction)) {
    fail('OUT_OF_RANGE', 'options.fraction', fraction, `one of ${PARTS.join(', ')}`);
  }
  if (step !== undefined && !(typeof step === 'number' && step >= SMALLEST_STEP && step <= LARGEST_STEP)) {
    fail('OUT_OF_RANGE', 'options.step', step, `a step from ${SMALLEST_STEP} to ${LARGEST_STEP}`);
  }
  return options as FormatOptions;
}
/** Nobody measures finer or coarser; a step beyond would print digits without end. */
const SMALLEST_STEP = 1e-9;
const LARGEST_STEP = 1e9;

function withUnit(text: string, value: Exact, unit: string): string {
  const name = value.abs().lte(1) && !value.isZero() ? unit : pluralOf(unit);
  return `${text} ${name.replace('delta deg', 'deg').replace('deg', '°')}`;
}

/** `12345.6` -> `12,345.6`. */
export function groupThousands(text: string): string {
  const [whole = '', fraction] = text.split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}
