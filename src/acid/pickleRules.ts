import { answer } from '../common/answer';
import type { Basis } from '../sources/basis';
import { basisOf } from '../sources/table';
import { PICKLE_RULES } from './tables';

export interface PickleRule {
  /** Fixed name of the rule. */
  readonly rule: string;
  /** What it is about. */
  readonly about: string;
  /** The figure, where it is one. */
  readonly value?: number;
  /** The figure, where it is a range. */
  readonly range?: readonly [low: number, high: number];
  /** Unit and meaning of the figure. */
  readonly unit: string;
  /** Where it comes from. */
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
      rule: row.id,
      about: row.about,
      ...(row.value === undefined ? {} : { value: row.value }),
      ...(row.range === undefined ? {} : { range: row.range }),
      unit: row.unit,
      basis: basisOf(row, row.value === undefined ? (row.range === undefined ? 'unit' : 'range') : 'value', row.about),
    })),
  );
}
