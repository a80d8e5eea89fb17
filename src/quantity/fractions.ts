import { Decimal } from '../common/decimal';

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
