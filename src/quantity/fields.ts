/**
 * The fields that input schemas are built from, and `readInput`, which checks an argument against its schema and
 * throws the library's one error. Internal: modules import it, callers see only the types it yields.
 */
import * as z from 'zod/mini';
import { nearestNames } from '../common/names';
import { fail, StillroomError } from '../errors/StillroomError';
import { formatQuantity } from './formatQuantity';
import { LONGEST_NAME, refusePrototypeKeys, toErrors } from './inputErrors';
import { parseMoney } from './money';
import { parseQuantity, readQuantity } from './parseQuantity';
import { readerOf, reading } from './reader';
import { exactIn, inUnit } from './scale';
import { parseShare } from './share';
import type { Money, MoneyInput, Quantity, QuantityInput, ShareInput } from './types';
import { type Dimension, findUnit, type Unit } from './units';

export { reading } from './reader';

/** Bounds of a quantity, each in any unit; `above` is exclusive, the others inclusive. */
export interface Bounds<D extends Dimension> {
  readonly above?: Quantity<D>;
  readonly min?: Quantity<D>;
  readonly max?: Quantity<D>;
}

/** Whether a number is inside of bounds, in the unit that they are made for. */
type Inside = (value: number, unit: string) => boolean;

/** One end of bounds in a unit: the nearest double, and whether it is itself inside. */
function endIn(
  unit: string,
  bound: { value: number; unit: string } | undefined,
  holds: (comparison: number) => boolean,
  open: number,
) {
  if (bound === undefined) return { at: open, holds: true };
  const at = inUnit(bound.value, bound.unit, unit);
  return { at, holds: holds(exactIn({ value: at, unit }, bound.unit).cmp(bound.value)) };
}

/** The test of bounds; its ends are made once for each unit that a caller writes. */
function insideOf<D extends Dimension>({ above, min, max }: Bounds<D>): Inside {
  const known = new Map<string, { low: ReturnType<typeof endIn>; high: ReturnType<typeof endIn> }>();
  const endsIn = (unit: string) => {
    const low = endIn(unit, above ?? min, (side) => side > 0 || (side === 0 && above === undefined), -Infinity);
    const ends = { low, high: endIn(unit, max, (side) => side <= 0, Infinity) };
    known.set(unit, ends);
    return ends;
  };
  return (value, unit) => {
    const { low, high } = known.get(unit) ?? endsIn(unit);
    return (
      (value > low.at || (value === low.at && low.holds)) && (value < high.at || (value === high.at && high.holds))
    );
  };
}

function outside<D extends Dimension>({ above, min, max }: Bounds<D>, given: unknown): never {
  const write = (bound: Quantity<D>) => formatQuantity(bound as Quantity, { step: 1e-6 });
  const low = above === undefined ? (min === undefined ? '' : ` of at least ${write(min)}`) : ` above ${write(above)}`;
  const high = max === undefined ? '' : `${low === '' ? ' of' : ' and'} at most ${write(max)}`;
  return fail('OUT_OF_RANGE', '', given, `a value${low}${high}`);
}

/** A quantity of one dimension within bounds; of two readings of its number, one outside of the bounds is none. */
export function quantityField<D extends Dimension>(dimension: D, bounds: Bounds<D> = {}) {
  const inside = insideOf(bounds);
  return reading<QuantityInput<D>, Quantity<D>>(
    (given) => {
      const quantity = readQuantity(given, dimension, '', inside);
      return inside(quantity.value, quantity.unit) ? quantity : outside(bounds, given);
    },
    { kind: dimension, ...bounds },
  );
}

const quantity =
  <D extends Dimension>(dimension: D, unit: Unit<D>, largest: number) =>
  (bounds: Bounds<D> = {}) =>
    quantityField(dimension, {
      ...(bounds.min === undefined ? { above: { value: 0, unit } } : {}),
      max: { value: largest, unit },
      ...bounds,
    });

// Unless a field says otherwise these are above zero, and below a size that no kitchen reaches.
/** A mass above zero and up to 1,000 t. */
export const mass = quantity('mass', 'kg', 1e6);
/** A volume above zero and up to 1,000 m3. */
export const volume = quantity('volume', 'L', 1e6);
const ANY_MASS: Bounds<'mass'> = { above: { value: 0, unit: 'kg' }, max: { value: 1e6, unit: 'kg' } };
const ANY_VOLUME: Bounds<'volume'> = { above: { value: 0, unit: 'L' }, max: { value: 1e6, unit: 'L' } };
/** A mass or a volume within the same limits: what a cook may weigh or measure. */
export function massOrVolume() {
  const insideMass = insideOf(ANY_MASS);
  const insideVolume = insideOf(ANY_VOLUME);
  return reading<QuantityInput<'mass'> | QuantityInput<'volume'>, Quantity<'mass'> | Quantity<'volume'>>((given) => {
    const quantity = parseQuantity(given);
    const { value, unit } = quantity;
    if (isMass(quantity)) return insideMass(value, unit) ? quantity : outside(ANY_MASS, given);
    if (isVolume(quantity)) return insideVolume(value, unit) ? quantity : outside(ANY_VOLUME, given);
    return fail('WRONG_DIMENSION', '', given, 'a mass or a volume such as "3 lb" or "2 quarts"');
  });
}
/** Whether a quantity is a mass. */
export const isMass = (quantity: { readonly unit: string }): quantity is Quantity<'mass'> =>
  findUnit(quantity.unit)?.dimension === 'mass';
const isVolume = (quantity: { readonly unit: string }): quantity is Quantity<'volume'> =>
  findUnit(quantity.unit)?.dimension === 'volume';
/** A length above zero and up to 10 km. */
export const length = quantity('length', 'm', 1e4);
/** An area above zero and up to 10,000 m2. */
export const area = quantity('area', 'm2', 1e4);
/** A time above zero and up to 100 years. */
export const time = quantity('time', 'day', 36525);
/** An energy above zero. */
export const energy = quantity('energy', 'kWh', 1e9);
/** A power above zero. */
export const power = quantity('power', 'kW', 1e6);
/** A density above zero and up to 25 g/mL. */
export const density = quantity('density', 'g/mL', 25);
/** A difference of temperature above zero. */
export const temperatureDifference = quantity('temperatureDifference', 'delta degC', 1000);
/** An absolute pressure above zero, or a gauge pressure with `min` at zero. */
export const pressure = quantity('pressure', 'MPa', 100);
/** A temperature, by default from absolute zero to 1,000 degC. */
export const temperature = (bounds: Bounds<'temperature'> = {}) =>
  quantityField('temperature', {
    min: { value: -273.15, unit: 'degC' },
    max: { value: 1000, unit: 'degC' },
    ...bounds,
  });
/** An elevation within the range of the standard atmosphere here: -500 to 5,000 m. */
export const elevation = () =>
  quantityField('length', { min: { value: -500, unit: 'm' }, max: { value: 5000, unit: 'm' } });
/** The elevation of a kitchen: above -500 m, lower than any dry land, and up to 5,000 m. */
export const kitchenElevation = () =>
  quantityField('length', { above: { value: -500, unit: 'm' }, max: { value: 5000, unit: 'm' } });

/** A share as a number from 0 to 1, or a text in percent; limits are on the number. */
export const share = (limits: { min?: number; max?: number; above?: number; below?: number } = {}) =>
  reading<ShareInput, number>(
    (given) => {
      const value = parseShare(given);
      const { min = 0, max = 1, above = -1, below = 2 } = limits;
      if (value < min || value > max || value <= above || value >= below) {
        const low = above >= 0 ? `above ${above}` : `of at least ${min}`;
        const high = below <= 1 ? `below ${below}` : `at most ${max}`;
        fail('OUT_OF_RANGE', '', given, `a share ${low} and ${high} (or the same in percent)`);
      }
      return value;
    },
    { kind: 'share', min: 0, max: 1, ...limits },
  );

/** Money: `"24.50 USD"`. */
export const money = () => reading<MoneyInput, Money>((given) => parseMoney(given));

/** A plain number within limits; `what` says what it is, for the error: `a pH from 0 to 14`. */
export const number = (
  what: string,
  limits: { min?: number; max?: number; above?: number; below?: number; integer?: boolean } = {},
) =>
  reading<number, number>(
    (given) => {
      if (given === undefined) fail('MISSING', '', given, what);
      if (typeof given !== 'number') fail('WRONG_TYPE', '', given, what);
      const { min = -1e15, max = 1e15, above = -Infinity, below = Infinity, integer = false } = limits;
      const inside = given >= min && given <= max && given > above && given < below;
      if (!inside || (integer && !Number.isInteger(given))) fail('OUT_OF_RANGE', '', given, what);
      return given;
    },
    { kind: 'number', ...limits },
  );

/** A whole number from `min` to `max`. */
export const count = (what: string, min = 0, max = 1_000_000) =>
  number(`${what}: a whole number from ${min} to ${max}`, { min, max, integer: true });

/** A name or a short text; `what` says what it names. */
export const name = (what: string) =>
  reading<string, string>((given) => {
    if (given === undefined) fail('MISSING', '', given, what);
    if (typeof given !== 'string') fail('WRONG_TYPE', '', given, what);
    const text = given.trim();
    if (text === '' || text.length > LONGEST_NAME) fail('UNKNOWN_NAME', '', given, what);
    return text;
  });

/** One of a few fixed words. */
export const choice = <const T extends string>(what: string, words: readonly T[]) =>
  reading<T, T>(
    (given) => {
      const expected = () => `${what}: ${words.join(', ')}`;
      if (given === undefined) fail('MISSING', '', given, expected());
      if (typeof given !== 'string') fail('WRONG_TYPE', '', given, expected());
      const plain = given.trim().toLowerCase();
      const word = words.find((candidate) => candidate === plain || candidate === given);
      if (word === undefined)
        fail('UNKNOWN_NAME', '', given, expected(), { options: words, nearest: nearestNames(given, words) });
      return word;
    },
    { kind: 'choice', choices: words },
  );

/** True or false. */
export const flag = (what: string) =>
  reading<boolean, boolean>((given) => {
    if (typeof given !== 'boolean')
      fail(given === undefined ? 'MISSING' : 'WRONG_TYPE', '', given, `${what}: true or false`);
    return given;
  });

/** A list of at least `min` and at most `max` items. */
export const list = <S extends z.ZodMiniType>(what: string, item: S, min = 1, max = 1000) =>
  z.pipe(
    reading<z.input<S>[], z.input<S>[]>(
      (given) => {
        if (Array.isArray(given) && given.length >= min && given.length <= max) return given;
        const expected = `${what}: a list of ${min} to ${max}`;
        if (given === undefined) fail('MISSING', '', given, expected);
        if (!Array.isArray(given)) fail('WRONG_TYPE', '', given, expected);
        return fail(given.length > max ? 'TOO_MUCH' : 'OUT_OF_RANGE', '', given, expected);
      },
      { kind: 'list', min, max },
    ),
    z.array(item),
  );

export const optional = z.optional;
/** An object with just these fields; any other field is an error. */
export const fields = <Shape extends z.core.$ZodShape>(shape: Shape) =>
  z.strictObject(shape, {
    error: ({ code }) => {
      const names = Object.keys(shape);
      // zod keeps only a message: for an unknown field it is the list of the known ones
      return code === 'unrecognized_keys' ? names.join(' ') : code === 'invalid_type' ? objectOf(names) : undefined;
    },
  });
const objectOf = (names: readonly string[]): string =>
  `an object with ${names.length === 1 ? 'the field' : 'fields of'} ${names.join(', ')}`;
/** A value that its own reader checks further on; it must be there. `what` says what it is. */
export const given = (what: string) =>
  reading<unknown, unknown>((value) => (value === undefined ? fail('MISSING', '', value, what) : value));
/** `{ low, likely, high }` of one kind of field; their order is the caller's to check. */
export const rangeOf = <S extends z.ZodMiniType>(one: () => S) => fields({ low: one(), likely: one(), high: one() });

/** An argument is one object, and `__proto__` is never data. */
function checkArgument(input: unknown): void {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    fail(input === undefined ? 'MISSING' : 'WRONG_TYPE', '', input, 'one object of named fields');
  }
  refusePrototypeKeys(input);
}

/** A schema and what was read with it. */
interface Asked {
  readonly schema: z.ZodMiniType;
  readonly input: unknown;
}
/** What was being read when an error was thrown. */
const asked = new WeakMap<StillroomError, Asked>();
/** The schema that found an error, and the argument; nothing where a later check found it. */
export const askedWhen = (error: StillroomError): Asked | undefined => asked.get(error);

/**
 * Checks an argument against its schema and returns what it holds, with quantities read.
 *
 * @throws StillroomError for the first thing wrong, naming its path
 */
export function readInput<S extends z.ZodMiniType>(schema: S, input: unknown): z.output<S> {
  checkArgument(input);
  try {
    return readerOf(schema)(input);
  } catch (error) {
    if (error instanceof StillroomError) asked.set(error, { schema, input });
    throw error;
  }
}

/** Every error of an argument, the one that `readInput` throws first; none where it reads it. */
export function errorsOf(schema: z.ZodMiniType, input: unknown): StillroomError[] {
  try {
    checkArgument(input);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return [error];
  }
  return z.safeParse(schema, input).error?.issues.flatMap((issue) => toErrors(issue, input)) ?? [];
}
