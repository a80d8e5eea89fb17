import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, number, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { lethalityCaution } from './cautions';
import { holdTime } from './terms';

const basis = (what: string): Basis[] => [
  { of: what, kind: 'equation', source: 'singh-heldman', locator: 'chapter 5, decimal reduction time' },
];

const timeSchema = /* @__PURE__ */ fields({
  dValue: holdTime(),
  reductions: number('log10 reductions: a number above 0 and at most 100', { above: 0, max: 100 }),
});

export type ReductionTimeInput = z.input<typeof timeSchema>;
export interface ReductionTime {
  /** At the temperature of the D value, in its unit. */
  readonly time: Quantity<'time'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The F value that a number of log10 reductions stands for, at the temperature of the D value: F = n D.
 *
 * It is the arithmetic behind figures in print (12 times 0.21 min), for reading records; it is no process.
 *
 * Source: Singh and Heldman, Introduction to Food Engineering, chapter 5 (decimal reduction time).
 *
 * @param input.dValue - time for one log10 reduction
 * @param input.reductions - above 0, at most 100
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { reductionTime } from 'stillroom/lethality';
 *
 * reductionTime({ dValue: '0.21 min', reductions: 12 }).time; // => { value: 2.52, unit: 'min' }
 * ```
 */
export function reductionTime(input: ReductionTimeInput): ReductionTime {
  const { dValue, reductions } = readInput(timeSchema, input);
  return answer({
    time: quantityIn(dValue.value * reductions, dValue.unit, dValue.unit),
    basis: basis('time'),
    cautions: ['record-check-only', 'published-heat-no-process', 'resistance-varies'].map(lethalityCaution),
  });
}

const countSchema = /* @__PURE__ */ fields({ time: holdTime(), dValue: holdTime() });

export type DecimalReductionsInput = z.input<typeof countSchema>;
export interface DecimalReductions {
  /** How many times the number of survivors falls to a tenth. */
  readonly reductions: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How many log10 reductions a time brings at the temperature of the D value: n = t/D. With the `minutes` of a record
 * (see `lethality`) it says what the record is worth against one organism.
 *
 * Source: as for `reductionTime`.
 *
 * @param input.time - at the temperature of the D value
 * @param input.dValue - time for one log10 reduction
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { decimalReductions } from 'stillroom/lethality';
 *
 * decimalReductions({ time: '151.2 s', dValue: '0.21 min' }).reductions; // ≈ 12
 * ```
 */
export function decimalReductions(input: DecimalReductionsInput): DecimalReductions {
  const { time, dValue } = readInput(countSchema, input);
  return answer({
    reductions: valueIn(time, 'min') / valueIn(dValue, 'min'),
    basis: basis('reductions'),
    cautions: ['record-check-only', 'resistance-varies'].map(lethalityCaution),
  });
}
