import { Decimal as Base } from 'decimal.js';

/** Decimal with 40 digits, of the tests' own: what exact numbers are checked against. */
export const Decimal = Base.clone({ precision: 40, rounding: Base.ROUND_HALF_UP });
export type Decimal = Base;
