import { Decimal } from '../common/decimal';

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
/** The vulgar-fraction characters, for use inside a regular expression's class. */
export const VULGAR_CHARACTERS = Object.keys(VULGAR).join('');

const WHOLE = String.raw`\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?|\.\d+`;
const FRACTION = String.raw`\d+\s*[/⁄]\s*\d+`;
/** One amount at the start of a text: `1 1/2`, `1-1/2`, `1½`, `3/8`, `2.5`, `1,000`. */
export const AMOUNT = String.raw`[-−]?(?:${FRACTION}|(?:${WHOLE})(?:(?:\s+|\s*-\s*)(?:${FRACTION})|\s*[${VULGAR_CHARACTERS}])?|[${VULGAR_CHARACTERS}])`;

const WHOLE_ONLY = new RegExp(`^(?:${AMOUNT})$`);

/**
 * Reads a kitchen number exactly: decimals, fractions, mixed numbers, vulgar-fraction characters and
 * thousands separated by commas.
 *
 * @returns the value, or nothing when the text is no number or divides by zero
 */
export function parseAmount(text: string): Decimal | undefined {
  const trimmed = text.trim();
  if (!WHOLE_ONLY.test(trimmed)) return undefined;
  const negative = /^[-−]/.test(trimmed);
  const plain = trimmed
    .replace(/^[-−]/, '')
    .replace(/⁄/g, '/')
    .replace(/,/g, '')
    .replace(new RegExp(`[${VULGAR_CHARACTERS}]`), (sign) => ` ${VULGAR[sign]}`)
    .replace(/\s*\/\s*/, '/')
    .trim();
  let total = new Decimal(0);
  for (const part of plain.split(/\s+|-/).filter((piece) => piece !== '')) {
    const [above, below] = part.split('/');
    const value = new Decimal(above ?? 0);
    if (below !== undefined && new Decimal(below).isZero()) return undefined;
    total = total.plus(below === undefined ? value : value.div(below));
  }
  return negative ? total.neg() : total;
}

/** Which way a figure is rounded: to the nearest step, or always up or down where one side is the safe one. */
export type Rounding = 'nearest' | 'up' | 'down';

const MODES: Readonly<Record<Rounding, 2 | 3 | 4>> = {
  nearest: Decimal.ROUND_HALF_UP,
  up: Decimal.ROUND_CEIL,
  down: Decimal.ROUND_FLOOR,
};

/**
 * Rounds to a multiple of `step`. Noise below 1 part in 10^12 is taken off first, so that a figure that is
 * whole but for the arithmetic of doubles (2.0000000000000004) does not go up a whole step.
 */
export function roundToStep(value: Decimal | number, step: Decimal | number | string, rounding: Rounding): Decimal {
  const steps = new Decimal(value).div(step).toSignificantDigits(12);
  return steps.toDecimalPlaces(0, MODES[rounding]).times(step);
}

/**
 * Writes a number as kitchen people do: `1 1/2`, `3/8`, `2`. The value must already be a multiple of
 * 1/`denominator`; the fraction is reduced.
 */
export function fractionText(value: Decimal, denominator: number): string {
  const sign = value.isNegative() && !value.isZero() ? '-' : '';
  const parts = value.abs().times(denominator).toDecimalPlaces(0).toNumber();
  const whole = Math.floor(parts / denominator);
  let above = parts % denominator;
  let below = denominator;
  while (above !== 0 && above % 2 === 0 && below % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  if (above !== 0 && above % 3 === 0 && below % 3 === 0) {
    above /= 3;
    below /= 3;
  }
  if (above === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}${above}/${below}` : `${sign}${whole} ${above}/${below}`;
}
