/** The ends of a range as a word's meaning states them. */
import type { Bounds } from '../quantity/fields';
import type { Dimension } from '../quantity/units';
import type { WordMeaning } from './word';

type Ends = Pick<WordMeaning, 'low' | 'high' | 'above'>;

/** Of a quantity that is above zero unless the field says otherwise; `least` is the usual low end. */
export function quantityEnds<D extends Dimension>({ above, min, max }: Bounds<D>, least?: WordMeaning['low']): Ends {
  const low = above ?? min ?? least;
  return {
    ...(low === undefined ? {} : { low }),
    ...(max === undefined ? {} : { high: max }),
    ...(low !== undefined && (above !== undefined || min === undefined) ? { above: true } : {}),
  };
}

/** Limits of a plain number. */
export interface NumberLimits {
  /** The lowest value, itself allowed. */
  readonly min?: number;
  /** The highest value, itself allowed. */
  readonly max?: number;
  /** The value must be above this. */
  readonly above?: number;
  /** The value must be below this. */
  readonly below?: number;
}

/** Of a plain number between `low` and `high` unless the field says otherwise. */
export const numberEnds = ({ min, max, above, below }: NumberLimits, low: number, high: number): Ends => ({
  low: above ?? min ?? low,
  high: below ?? max ?? high,
  ...(above === undefined ? {} : { above: true }),
});
