import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, number, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import { lethalityCaution } from './cautions';
import { holdTime } from './terms';

const schema = /* @__PURE__ */ fields({
  /** Time for one log10 reduction, above 0. */
  dValue: holdTime(),
  /** Time at the temperature of the D value, above 0; or `reductions`. */
  time: optional(holdTime()),
  /** How many times the survivors fall to a tenth, above 0 to 100; or `time`. */
  reductions: optional(number('log10 reductions: a number above 0 and at most 100', { above: 0, max: 100 })),
});
export type DecimalReductionsInput = z.input<typeof schema>;
export interface DecimalReductions {
  /** How many times the number of survivors falls to a tenth. */
  readonly reductions: number;
  /** Time at the temperature of the D value; in its unit where the reductions were given. */
  readonly time: Quantity<'time'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * How many log10 reductions a time brings at the temperature of a D value, or how long a number of reductions takes:
 * n = t / D, t = n D.
 *
 * With the `minutes` of a record (see `lethality`) it says what the record is worth against one organism. It is the
 * arithmetic behind published figures (12 times 0.21 min); it is not a process.
 *
 * Source: Singh and Heldman, Introduction to Food Engineering, chapter 5 (decimal reduction time).
 *
 * @throws StillroomError MISSING with neither, CONTRADICTION with both, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { decimalReductions } from 'stillroom/lethality';
 *
 * decimalReductions({ time: '151.2 s', dValue: '0.21 min' }).reductions; // ≈ 12
 * decimalReductions({ reductions: 12, dValue: '0.21 min' }).time; // => { value: 2.52, unit: 'min' }
 * ```
 */
export function decimalReductions(input: DecimalReductionsInput): DecimalReductions {
  const { dValue, time, reductions } = readInput(schema, input);
  if (time !== undefined && reductions !== undefined) {
    fail('CONTRADICTION', 'reductions', input.reductions, 'a time or a number of reductions, not both');
  }
  const of = time === undefined ? 'time' : 'reductions';
  if (time === undefined && reductions === undefined) {
    fail('MISSING', 'time', undefined, 'a time, or a number of reductions');
  }
  const found =
    time === undefined
      ? {
          reductions: reductions as number,
          time: quantityIn(dValue.value * (reductions as number), dValue.unit, dValue.unit),
        }
      : { reductions: valueIn(time, 'min') / valueIn(dValue, 'min'), time };
  return answer({
    ...found,
    basis: [
      { of, kind: 'equation', source: 'singh-heldman', locator: 'chapter 5, decimal reduction time' },
      measured(of === 'time' ? 'reductions' : 'time'),
    ],
    cautions: ['record-check-only', 'published-heat-no-process', 'resistance-varies'].map(lethalityCaution),
  });
}
