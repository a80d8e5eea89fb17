import { Decimal as Base } from 'decimal.js';

/** Decimal with 40 digits, of the library's own, so that an app's Decimal settings change nothing here. */
export const Decimal = Base.clone({ precision: 40, rounding: Base.ROUND_HALF_UP });
export type Decimal = Base;
