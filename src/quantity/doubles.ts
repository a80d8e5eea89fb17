/** Sums in two doubles: what a rounded figure leaves out, as a second double. */

/** From one unit to another: y = by x + plus, each figure as two doubles that hold 32 digits of it between them. */
export interface Scale {
  readonly by: number;
  readonly byRest: number;
  readonly plus: number;
  readonly plusRest: number;
}

/** Splits a double into two halves of 26 bits (Veltkamp 1968). */
const SPLITTER = 2 ** 27 + 1;

/** What the rounded product of two doubles leaves out, exactly (Dekker 1971). */
export function productRest(one: number, other: number, product: number): number {
  const oneSplit = SPLITTER * one;
  const oneHigh = oneSplit - (oneSplit - one);
  const oneLow = one - oneHigh;
  const otherSplit = SPLITTER * other;
  const otherHigh = otherSplit - (otherSplit - other);
  const otherLow = other - otherHigh;
  return oneHigh * otherHigh - product + oneHigh * otherLow + oneLow * otherHigh + oneLow * otherLow;
}

/** The powers of ten that a double holds exactly. */
export const POWERS: readonly number[] = Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));
/** A number of so few digits is the only one of its length near its double. */
const CERTAIN = 1e15;
/** Most numbers that people write are whole millionths. */
const MILLION = 1e6;
/** A smaller number is written with an exponent. */
const WITH_EXPONENT = 1e-6;
/** A larger one has more digits than its two parts hold. */
const LONGEST = 1e16;

/**
 * A double stands for the shortest decimal that rounds to it: 0.1 for one tenth, which no double is. This is what that
 * decimal has beyond the double itself; NaN where it takes an exponent or more than 22 places to write.
 */
export function writtenRest(value: number): number {
  if (Math.trunc(value) === value && value < CERTAIN && value > -CERTAIN) return 0;
  const product = value * MILLION;
  const whole = Math.round(product);
  if (whole < CERTAIN && whole > -CERTAIN && whole / MILLION === value) {
    return (whole - product - productRest(value, MILLION, product)) / MILLION;
  }
  return longRest(value);
}

const ZERO = 48;
/** How many of its last digits are read by themselves: then both parts of a long number are exact. */
const LOW = 9;
/** The same for a number of any length, from its digits. */
function longRest(value: number): number {
  const size = Math.abs(value);
  if (size < WITH_EXPONENT || size >= LONGEST) return Number.NaN;
  const text = String(size);
  let point = text.length - 1;
  let high = 0;
  let low = 0;
  let lowDigits = 0;
  for (let at = 0; at < text.length; at++) {
    const digit = text.charCodeAt(at) - ZERO;
    if (digit < 0) point = at;
    else if (at < text.length - LOW) high = high * 10 + digit;
    else {
      low = low * 10 + digit;
      lowDigits += 1;
    }
  }
  const power = POWERS[text.length - 1 - point];
  if (power === undefined) return Number.NaN;
  const product = size * power;
  const whole = high * (POWERS[lowDigits] as number);
  const rest = (whole - product + low - productRest(size, power, product)) / power;
  return value < 0 ? -rest : rest;
}
