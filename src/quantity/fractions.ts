import { type Exact, exact, type Rounding } from '../common/exact';

export type { Rounding };

/**
 * Rounds to a multiple of `step`. Noise below 1 part in 10^12 is taken off first, so that a figure that is
 * whole but for the arithmetic of doubles (2.0000000000000004) does not go up a whole step.
 */
export function roundToStep(value: Exact | number, step: Exact | number | string, rounding: Rounding): Exact {
  const steps = exact(value).div(step).toDigits(12);
  return steps.toPlaces(0, rounding).times(step);
}

/**
 * Writes a number as kitchen people do: `1 1/2`, `3/8`, `2`. The value must already be a multiple of
 * 1/`denominator`; the fraction is reduced.
 */
export function fractionText(value: Exact, denominator: number): string {
  const sign = value.lt(0) ? '-' : '';
  const parts = value.abs().times(denominator).toPlaces(0).toNumber();
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
