/** What the scanner of amounts is checked against: a grammar that reads every number as a decimal. */

import { fail } from '../../../src/errors/StillroomError';
import { Decimal } from './decimal';

/** The vulgar-fraction characters, each as what it divides. */
const VULGAR: ReadonlyMap<string, readonly [above: number, below: number]> = new Map([
  ['½', [1, 2]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['¼', [1, 4]],
  ['¾', [3, 4]],
  ['⅕', [1, 5]],
  ['⅖', [2, 5]],
  ['⅗', [3, 5]],
  ['⅘', [4, 5]],
  ['⅙', [1, 6]],
  ['⅚', [5, 6]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
]);

/** No kitchen number is longer; a longer text is not read at all. */
export const LONGEST_TEXT = 100;

/** An amount at the start of a text, as a reader with a decimal point and one with a decimal comma understand it. */
export interface Amount {
  /** With a decimal point and commas between thousands, as in the US; nothing when that gives no number. */
  readonly point: Decimal | undefined;
  /** With a decimal comma and points between thousands; nothing when that gives no number. */
  readonly comma: Decimal | undefined;
  /** Where the amount ends. */
  readonly end: number;
}

export const isDigit = (sign: string | undefined): boolean => sign !== undefined && sign >= '0' && sign <= '9';
export const isSpace = (sign: string | undefined): boolean => sign !== undefined && sign.trim() === '';
export const isVulgar = (sign: string | undefined): boolean => sign !== undefined && VULGAR.has(sign);
const isSlash = (sign: string | undefined): boolean => sign === '/' || sign === '⁄';
const isMinus = (sign: string | undefined): boolean => sign === '-' || sign === '−';

/** The first place from `at` on whose sign is not of this kind. */
export function skip(text: string, at: number, kind: (sign: string | undefined) => boolean): number {
  let end = at;
  while (kind(text[end])) end += 1;
  return end;
}

// A first group of thousands never starts with a zero: 0,500 is no group. Each pattern reads a text of at most
// LONGEST_TEXT signs, and no two of its parts can take the same sign.
const POINT_GROUPS = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/;
const POINT_PLAIN = /^(?:\d+(?:\.\d+)?|\.\d+)$/;
const COMMA_GROUPS = /^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d+)?$/;
const COMMA_PLAIN = /^(?:\d+(?:,\d+)?|,\d+)$/;

function readWithPoint(digits: string): Decimal | undefined {
  if (POINT_PLAIN.test(digits)) return new Decimal(digits);
  return POINT_GROUPS.test(digits) ? new Decimal(digits.replace(/,/g, '')) : undefined;
}

function readWithComma(digits: string): Decimal | undefined {
  if (COMMA_PLAIN.test(digits)) return new Decimal(digits.replace(',', '.'));
  if (COMMA_GROUPS.test(digits)) return new Decimal(digits.replace(/\./g, '').replace(',', '.'));
  // 1.5 is written so in both ways
  return POINT_PLAIN.test(digits) ? new Decimal(digits) : undefined;
}

const fraction = (above: number | string, below: number | string): Decimal | undefined =>
  new Decimal(below).isZero() ? undefined : new Decimal(above).div(below);

interface Piece {
  readonly value: Decimal | undefined;
  readonly end: number;
}

/** `3/8` or `3 ⁄ 8` from this place on; no piece when there is none. */
function scanFraction(text: string, at: number): Piece | undefined {
  const above = skip(text, at, isDigit);
  const slash = skip(text, above, isSpace);
  if (above === at || !isSlash(text[slash])) return undefined;
  const start = skip(text, slash + 1, isSpace);
  const end = skip(text, start, isDigit);
  return end === start ? undefined : { value: fraction(text.slice(at, above), text.slice(start, end)), end };
}

function scanVulgar(text: string, at: number): Piece | undefined {
  const parts = VULGAR.get(text[at] ?? '');
  return parts === undefined ? undefined : { value: fraction(...parts), end: at + 1 };
}

/** What may stand after a whole number: `½`, ` 1/2`, `-1/2`. */
function scanAfterWhole(text: string, at: number): Piece | undefined {
  const next = skip(text, at, isSpace);
  const vulgar = scanVulgar(text, next);
  if (vulgar !== undefined) return vulgar;
  if (isMinus(text[next])) return scanFraction(text, skip(text, next + 1, isSpace));
  return next === at ? undefined : scanFraction(text, next);
}

const isNumberSign = (sign: string | undefined): boolean => isDigit(sign) || sign === '.' || sign === ',';

/**
 * Reads one amount from a place of a text: `1 1/2`, `1-1/2`, `1½`, `3/8`, `2.5`, `1,000`, with or without a minus.
 * Looks at each sign once.
 *
 * @returns nothing when no number starts there
 */
export function scanAmount(text: string, at = 0): Amount | undefined {
  const negative = isMinus(text[at]);
  const start = negative ? at + 1 : at;
  const signed = (value: Decimal | undefined): Decimal | undefined => (negative ? value?.neg() : value);
  const alone = scanFraction(text, start) ?? scanVulgar(text, start);
  if (alone !== undefined) {
    const value = signed(alone.value);
    return { point: value, comma: value, end: alone.end };
  }
  const whole = skip(text, start, isNumberSign);
  if (whole === start) return undefined;
  const digits = text.slice(start, whole);
  const rest = scanAfterWhole(text, whole);
  const added = (value: Decimal | undefined): Decimal | undefined =>
    rest === undefined ? value : rest.value && value?.plus(rest.value);
  return {
    point: signed(added(readWithPoint(digits))),
    comma: signed(added(readWithComma(digits))),
    end: rest?.end ?? whole,
  };
}

/** Whether readers of two countries would take the amount for two different numbers. */
export const isTwofold = ({ point, comma }: Amount): boolean =>
  point === undefined || (comma !== undefined && !comma.eq(point));

/** A number as nobody misreads it: 1250, and 1.0360 with a fourth place, since 1.036 could be a thousand and some. */
const unmistakable = (value: Decimal): string => {
  const digits = value.toFixed();
  return /^-?[1-9]\d{0,2}\.\d{3}$/.test(digits) ? `${digits}0` : digits;
};

/** What to write instead of an amount that two readers would read differently, or that has a decimal comma. */
export function oneReadingOf({ point, comma }: Amount, unit = ''): string {
  const written = (value: Decimal): string => `"${unmistakable(value)}${unit === '' ? '' : ` ${unit}`}"`;
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
export function parseAmount(text: string): Decimal | undefined {
  if (typeof text !== 'string') fail('WRONG_TYPE', 'text', text, 'a string such as "1 1/2"');
  const amount = amountOf(text);
  if (amount === undefined) return undefined;
  if (amount.point === undefined && amount.comma === undefined) return undefined;
  if (isTwofold(amount)) fail('NOT_A_QUANTITY', 'text', text, oneReadingOf(amount));
  return amount.point;
}

/** The amount that a whole text is, read in both ways; nothing when it is no amount. */
export function amountOf(text: string): Amount | undefined {
  if (text.length > LONGEST_TEXT) return undefined;
  const trimmed = text.trim();
  const amount = scanAmount(trimmed);
  return amount?.end === trimmed.length ? amount : undefined;
}
