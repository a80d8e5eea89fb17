import { Exact, exact } from '../common/exact';
import { fail } from '../errors/StillroomError';
import { POWERS } from './doubles';

/**
 * A number as it was written: a fraction of two whole numbers that doubles hold exactly, which one division rounds to
 * the nearest double; of two large ones where it has too many digits for that.
 */
export type Figure = { readonly above: number; readonly below: number } | Exact;

/** The nearest double. */
export const numberOf = (figure: Figure): number =>
  figure instanceof Exact ? figure.toNumber() : figure.above / figure.below;
/** The number itself. */
export const exactOf = (figure: Figure): Exact =>
  figure instanceof Exact ? figure : exact(figure.above).div(figure.below);

/** No kitchen number is longer; a longer text is not read at all. */
export const LONGEST_TEXT = 100;

/** An amount at the start of a text, as a reader with a decimal point and one with a decimal comma understand it. */
export interface Amount {
  /** With a decimal point and commas between thousands, as in the US; nothing when that gives no number. */
  readonly point: Figure | undefined;
  /** With a decimal comma and points between thousands; the same object as `point` where both read the same. */
  readonly comma: Figure | undefined;
  /** Where the amount ends. */
  readonly end: number;
}

// Signs are compared by their code, which is NaN past the end of a text.
const ZERO = 48;
const NINE = 57;
const POINT = 46;
const COMMA = 44;
const SPACE = 32;
/** The fractions in one sign begin at ¼. */
const FIRST_VULGAR = 0xbc;
export const isDigit = (sign: number): boolean => sign >= ZERO && sign <= NINE;
/** Whether a number may begin with this sign, a minus left aside. */
export const startsNumber = (sign: number): boolean =>
  isDigit(sign) || sign === POINT || sign === COMMA || (sign >= FIRST_VULGAR && VULGAR.has(sign));
const isSlash = (sign: number): boolean => sign === 47 || sign === 0x2044;
const isMinus = (sign: number): boolean => sign === 45 || sign === 0x2212;
export const isSpace = (sign: number): boolean =>
  sign === SPACE || (sign >= 9 && sign <= 13) || (sign >= 160 && String.fromCharCode(sign).trim() === '');

/** The first place from `at` on that is no space. */
export function skipSpaces(text: string, at: number): number {
  let end = at;
  while (isSpace(text.charCodeAt(end))) end += 1;
  return end;
}
function skipDigits(text: string, at: number): number {
  let end = at;
  while (isDigit(text.charCodeAt(end))) end += 1;
  return end;
}

/** The vulgar-fraction characters, each as what it divides. */
const VULGAR: ReadonlyMap<number, Figure> = new Map(
  ['½12', '⅓13', '⅔23', '¼14', '¾34', '⅕15', '⅖25', '⅗35', '⅘45', '⅙16', '⅚56', '⅛18', '⅜38', '⅝58', '⅞78'].map(
    (sign) => [sign.charCodeAt(0), { above: Number(sign[1]), below: Number(sign[2]) }],
  ),
);

/**
 * A number with this decimal mark, and this sign between thousands. A first group of thousands has one to three digits
 * and never starts with a zero: 0,500 is no group.
 */
function readMarked(text: string, from: number, to: number, mark: number, between: number): Figure | undefined {
  let value = 0;
  let digits = 0; // since the last sign that is no digit
  let groups = 0;
  let marked = false;
  for (let at = from; at < to; at++) {
    const sign = text.charCodeAt(at);
    if (isDigit(sign)) {
      value = value * 10 + sign - ZERO;
      digits += 1;
      continue;
    }
    if (marked || (groups > 0 && digits !== 3)) return undefined;
    if (sign === mark) marked = true;
    else if (groups === 0 && (digits < 1 || digits > 3 || text.charCodeAt(from) === ZERO)) return undefined;
    else groups += 1;
    digits = 0;
  }
  if (digits === 0 || (groups > 0 && !marked && digits !== 3)) return undefined;
  const below = POWERS[marked ? digits : 0];
  if (value <= Number.MAX_SAFE_INTEGER && below !== undefined) return { above: value, below };
  const plain = text.slice(from, to).replaceAll(String.fromCharCode(between), '');
  return exact(plain.replace(String.fromCharCode(mark), '.'));
}

interface Piece {
  readonly value: Figure | undefined;
  readonly end: number;
}

/** `3/8` or `3 ⁄ 8` from this place on; no piece when there is none, no value when it divides by zero. */
function scanFraction(text: string, at: number): Piece | undefined {
  const above = skipDigits(text, at);
  if (above === at) return undefined;
  const slash = skipSpaces(text, above);
  if (!isSlash(text.charCodeAt(slash))) return undefined;
  const start = skipSpaces(text, slash + 1);
  const end = skipDigits(text, start);
  if (end === start) return undefined;
  const over = Number(text.slice(at, above));
  const under = Number(text.slice(start, end));
  if (under === 0) return { value: undefined, end };
  if (Math.max(over, under) <= Number.MAX_SAFE_INTEGER) return { value: { above: over, below: under }, end };
  return { value: exact(text.slice(at, above)).div(text.slice(start, end)), end };
}

function scanVulgar(text: string, at: number): Piece | undefined {
  const value = VULGAR.get(text.charCodeAt(at));
  return value === undefined ? undefined : { value, end: at + 1 };
}

/** What may stand after a whole number, from the next sign on: `½`, ` 1/2`, `-1/2`. */
function scanAfterWhole(text: string, end: number, next: number): Piece | undefined {
  const sign = text.charCodeAt(next);
  if (isDigit(sign)) return next === end ? undefined : scanFraction(text, next);
  if (isMinus(sign)) return scanFraction(text, skipSpaces(text, next + 1));
  return sign >= FIRST_VULGAR ? scanVulgar(text, next) : undefined;
}

/** A whole number and its fraction. */
function plus(one: Figure | undefined, other: Figure | undefined): Figure | undefined {
  if (one === undefined || other === undefined) return undefined;
  if (!(one instanceof Exact || other instanceof Exact) && one.below === 1) {
    const above = one.above * other.below + other.above;
    if (above <= Number.MAX_SAFE_INTEGER) return { above, below: other.below };
  }
  return exactOf(one).plus(exactOf(other));
}

const negated = (value: Figure | undefined): Figure | undefined =>
  value && (value instanceof Exact ? value.times(-1) : { above: -value.above, below: value.below });

/**
 * Reads one amount from a place of a text: `1 1/2`, `1-1/2`, `1½`, `3/8`, `2.5`, `1,000`, with or without a minus.
 * Looks at each sign a few times at the most.
 *
 * @returns nothing when no number starts there
 */
export function scanAmount(text: string, at = 0): Amount | undefined {
  const negative = isMinus(text.charCodeAt(at));
  const start = negative ? at + 1 : at;
  let end = start;
  let value = 0;
  let points = 0;
  let commas = 0;
  for (let sign = text.charCodeAt(end); ; sign = text.charCodeAt(end)) {
    if (isDigit(sign)) value = value * 10 + sign - ZERO;
    else if (sign === POINT) points += 1;
    else if (sign === COMMA) commas += 1;
    else break;
    end += 1;
  }
  const marked = points + commas > 0;
  const next = skipSpaces(text, end);
  if (!marked && (end === start || isSlash(text.charCodeAt(next)))) {
    const alone = end === start ? scanVulgar(text, start) : scanFraction(text, start);
    if (alone !== undefined) return both(negative ? negated(alone.value) : alone.value, alone.end);
    if (end === start) return undefined;
  }
  const rest = scanAfterWhole(text, end, next);
  const withPoint =
    marked || value > Number.MAX_SAFE_INTEGER ? readMarked(text, start, end, POINT, COMMA) : { above: value, below: 1 };
  const point = complete(withPoint, rest, negative);
  const after = rest === undefined ? end : rest.end;
  // 15 and 1.5 are written so in both ways
  if (!marked) return both(point, after);
  const withComma = readMarked(text, start, end, COMMA, POINT);
  if (withComma === undefined && commas === 0) return both(point, after);
  return { point, comma: complete(withComma, rest, negative), end: after };
}

const both = (value: Figure | undefined, end: number): Amount => ({ point: value, comma: value, end });

/** A number with its fraction and its sign. */
function complete(value: Figure | undefined, rest: Piece | undefined, negative: boolean): Figure | undefined {
  const sum = rest === undefined ? value : plus(value, rest.value);
  return negative ? negated(sum) : sum;
}

/** Whether readers of two countries would take the amount for two different numbers. */
export const isTwofold = ({ point, comma }: Amount): boolean =>
  point === undefined || (comma !== undefined && comma !== point);

/** A number as nobody misreads it: 1250, and 1.0360 with a fourth place, since 1.036 could be a thousand and some. */
const unmistakable = (value: Figure): string => {
  const digits = exactOf(value).toString();
  return /^-?[1-9]\d{0,2}\.\d{3}$/.test(digits) ? `${digits}0` : digits;
};

/** What to write instead of an amount that two readers would read differently, or that has a decimal comma. */
export function oneReadingOf({ point, comma }: Amount, unit = ''): string {
  const written = (value: Figure): string => `"${unmistakable(value)}${unit === '' ? '' : ` ${unit}`}"`;
  const readings = [comma, point].flatMap((value) => (value === undefined ? [] : [written(value)]));
  return `a number that is read in one way everywhere: write ${readings.join(' or ')}`;
}

/**
 * Reads a kitchen number exactly: decimals, fractions, mixed numbers, vulgar-fraction characters, and thousands
 * separated by commas where that is the only reading (`1,000,000`, `1,234.5`).
 *
 * @param text - at most 100 characters
 * @returns the value, or nothing when the text is no number or divides by zero
 * @throws StillroomError WRONG_TYPE for anything but a string; NOT_A_QUANTITY for a number that people of two
 * countries would read differently (`1,250`, `1.250`) or that has a decimal comma (`0,5`), showing what to write
 */
export function parseAmount(text: string): Exact | undefined {
  if (typeof text !== 'string') fail('WRONG_TYPE', 'text', text, 'a string such as "1 1/2"');
  const amount = amountOf(text);
  if (amount === undefined) return undefined;
  if (amount.point === undefined && amount.comma === undefined) return undefined;
  if (isTwofold(amount)) fail('NOT_A_QUANTITY', 'text', text, oneReadingOf(amount));
  return amount.point && exactOf(amount.point);
}

/** The amount that a whole text is, read in both ways; nothing when it is no amount. */
export function amountOf(text: string): Amount | undefined {
  if (text.length > LONGEST_TEXT) return undefined;
  const trimmed = text.trim();
  const amount = scanAmount(trimmed);
  return amount?.end === trimmed.length ? amount : undefined;
}
