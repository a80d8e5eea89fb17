import { answer } from '../common/answer';
import type { Basis } from '../sources/index';
import { basisOf } from '../sources/table';
import { PICKLE_RULES } from './tables';

export interface PickleRule {
  /** Fixed name. */
  readonly rule: string;
  readonly about: string;
  readonly value?: number;
  readonly range?: readonly [low: number, high: number];
  /** Unit and meaning of the figure. */
  readonly unit: string;
  readonly basis: Basis;
}

/**
 * The printed rules for pickles: vinegar strength, pH limits, low-temperature pasteurization, blossom end, lime soak.
 *
 * @example
 * ```ts
 * import { pickleRules } from 'stillroom/acid';
 *
 * pickleRules().find(({ rule }) => rule === 'vinegar-acidity').value; // => 5
 * ```
 */
export function pickleRules(): readonly PickleRule[] {
  return answer(
    PICKLE_RULES.map((row) => ({
      rule: row.rule,
      about: row.about,
      ...(row.value === undefined ? {} : { value: row.value }),
      ...(row.range === undefined ? {} : { range: row.range }),
      unit: row.unit,
      basis: basisOf(row, row.about),
    })),
  );
}
