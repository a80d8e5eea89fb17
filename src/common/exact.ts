/** Which way a figure is rounded: to the nearest step, or always up or down where one side is the safe one. */
export type Rounding = 'nearest' | 'up' | 'down';

/** An exact figure as a table writes it: a decimal text, or a fraction of two. */
export type ExactText = string | readonly [numerator: string, denominator: string];

/** What stands for an exact number: itself, a number as it is written, or a decimal text. */
export type Value = Exact | number | string;

const tenTo = (power: number): bigint => 10n ** BigInt(power);
const sizeOf = (whole: bigint): bigint => (whole < 0n ? -whole : whole);
const bitsOf = (whole: bigint): number => whole.toString(2).length;

/** The largest whole number that divides both (Euclid). */
function commonOf(one: bigint, other: bigint): bigint {
  let [large, small] = [sizeOf(one), other];
  while (small !== 0n) [large, small] = [small, large % small];
  return large;
}

/** A quotient as a whole number; one that lies halfway goes away from zero. `below` is above zero. */
function wholeOf(above: bigint, below: bigint, rounding: Rounding): bigint {
  const whole = above / below;
  const rest = above % below;
  const away = above < 0n ? -1n : 1n;
  if (rounding === 'nearest') return 2n * sizeOf(rest) >= below ? whole + away : whole;
  return rest !== 0n && (rounding === 'up') === rest > 0n ? whole + away : whole;
}

/** The smallest power of two that a double holds. */
const SMALLEST_POWER = -1074;
/** How many binary digits a double has. */
const BITS = 53;

/** The double nearest to a quotient above zero; of two as near, the one whose last digit in twos is zero. */
function nearestDouble(above: bigint, below: bigint): number {
  let power = Math.max(bitsOf(above) - bitsOf(below) - BITS, SMALLEST_POWER);
  for (; ; power++) {
    const [top, unit] = power < 0 ? [above << BigInt(-power), below] : [above, below << BigInt(power)];
    const whole = top / unit;
    if (bitsOf(whole) > BITS) continue;
    const over = 2n * (top % unit) - unit;
    const nearest = over > 0n || (over === 0n && whole % 2n === 1n) ? whole + 1n : whole;
    // in two steps, since 2 to the power may be more or less than a double holds
    const half = Math.trunc(power / 2);
    return Number(nearest) * 2 ** half * 2 ** (power - half);
  }
}

/** How many digits are written of a number whose digits never end. */
const MOST_DIGITS = 40;

/** An exact number: a fraction of two whole numbers in its lowest terms. Nothing is rounded until it says so. */
export class Exact {
  readonly above: bigint;
  readonly below: bigint;
  constructor(above: bigint, below: bigint) {
    if (below === 0n) throw new RangeError('divided by zero');
    const common = (below < 0n ? -1n : 1n) * commonOf(above, sizeOf(below));
    this.above = above / common;
    this.below = below / common;
  }

  plus(value: Value): Exact {
    const { above, below } = exact(value);
    return new Exact(this.above * below + above * this.below, this.below * below);
  }
  minus(value: Value): Exact {
    return this.plus(exact(value).times(-1));
  }
  times(value: Value): Exact {
    const { above, below } = exact(value);
    return new Exact(this.above * above, this.below * below);
  }
  div(value: Value): Exact {
    const { above, below } = exact(value);
    return this.times(new Exact(below, above));
  }
  abs(): Exact {
    return new Exact(sizeOf(this.above), this.below);
  }

  /** Below zero, zero or above, as this number is below the other, the same or above it. */
  cmp(value: Value): -1 | 0 | 1 {
    const { above, below } = exact(value);
    const [one, other] = [this.above * below, above * this.below];
    return one < other ? -1 : one > other ? 1 : 0;
  }
  lt(value: Value): boolean {
    return this.cmp(value) < 0;
  }
  lte(value: Value): boolean {
    return this.cmp(value) <= 0;
  }
  gt(value: Value): boolean {
    return this.cmp(value) > 0;
  }
  gte(value: Value): boolean {
    return this.cmp(value) >= 0;
  }
  isZero(): boolean {
    return this.above === 0n;
  }

  /** Rounded to `places` places after the point, or before it where they are below zero. */
  toPlaces(places: number, rounding: Rounding = 'nearest'): Exact {
    const [by, of] = places < 0 ? [1n, tenTo(-places)] : [tenTo(places), 1n];
    return new Exact(wholeOf(this.above * by, this.below * of, rounding) * of, by);
  }
  /** Rounded to `digits` digits, from the first that is not zero. */
  toDigits(digits: number): Exact {
    const size = this.abs();
    const least = String(size.above).length - String(size.below).length;
    return this.toPlaces(digits - least - (size.lt(`1e${least}`) ? 0 : 1));
  }

  /** The nearest double. */
  toNumber(): number {
    if (this.above === 0n) return 0;
    const size = nearestDouble(sizeOf(this.above), this.below);
    return this.above < 0n ? 0 - size : size;
  }
  /** All its digits; of a number whose digits never end, the first 40. */
  toString(): string {
    const ends = tenTo(bitsOf(this.below)) % this.below === 0n;
    const { above, below } = ends ? this : this.toDigits(MOST_DIGITS);
    let places = 0;
    while (tenTo(places) % below !== 0n) places += 1;
    const digits = String((sizeOf(above) * tenTo(places)) / below).padStart(places + 1, '0');
    const point = digits.length - places;
    return `${above < 0n ? '-' : ''}${digits.slice(0, point)}${places === 0 ? '' : `.${digits.slice(point)}`}`;
  }
}

/** The exact number that is written: a double stands for the shortest decimal that rounds to it. */
export function exact(value: Value): Exact {
  if (value instanceof Exact) return value;
  const [digits = '', power = '0'] = String(value).split('e');
  const [whole = '', places = ''] = digits.split('.');
  const tens = Number(power) - places.length;
  const above = BigInt(whole + places);
  return tens < 0 ? new Exact(above, tenTo(-tens)) : new Exact(above * tenTo(tens), 1n);
}
