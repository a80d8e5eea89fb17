/** Sums in two doubles: what a rounded figure leaves out, as a second double. */

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
/** Places after the point that most numbers stay within. */
const FEW = 6;
/** A smaller number is written with an exponent. */
const WITH_EXPONENT = 1e-6;
/** A larger one has more digits than its two parts hold. */
const LONGEST = 1e16;

/**
 * A double stands for the shortest decimal that rounds to it: 0.1 for one tenth, which no double is. This is what that
 * decimal has beyond the double itself; NaN where it takes an exponent or more than 22 places to write.
 */
export function writtenRest(value: number): number {
  for (let places = 0; places <= FEW; places++) {
    const power = POWERS[places] as number;
    const whole = Math.round(value * power);
    if (whole >= CERTAIN || whole <= -CERTAIN) break;
    if (whole / power === value) {
      const product = value * power;
      return (whole - product - productRest(value, power, product)) / power;
    }
  }
  return longRest(value);
}

/** The same for a number of any length, from its digits: the last nine of them apart, so that both parts are exact. */
function longRest(value: number): number {
  const size = Math.abs(value);
  if (size < WITH_EXPONENT || size >= LONGEST) return Number.NaN;
  const text = String(size);
  const point = text.indexOf('.');
  const power = POWERS[point < 0 ? 0 : text.length - point - 1];
  if (power === undefined) return Number.NaN;
  const digits = point < 0 ? text : text.slice(0, point) + text.slice(point + 1);
  const high = Number(digits.slice(0, -9)) * 1e9;
  const low = Number(digits.slice(-9));
  const product = size * power;
  const rest = (high - product + low - productRest(size, power, product)) / power;
  return value < 0 ? -rest : rest;
}
