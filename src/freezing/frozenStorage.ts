import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, optional, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/index';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import type { Span } from './span';
import { freezingCaution, rule } from './tables';

const schema = fields({
  /** Temperature of the freezer; 0 degF by default. */
  temperature: optional(temperature()),
});
export type FrozenStorageInput = z.input<typeof schema>;

export interface FrozenStorage {
  /** The figures are here. */
  readonly known: true;
  /** Months in which fruit and vegetables keep a high quality. */
  readonly months: Span<number>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * How many months frozen fruit and vegetables keep a high quality.
 *
 * The figure is printed for 0 degF (-18 degC) or below. For a warmer freezer none is printed, so none is given.
 *
 * @param input - `temperature` of the freezer
 * @returns `months`, or `known: false` for a freezer warmer than 0 degF
 *
 * @example
 * ```ts
 * import { frozenStorage } from 'stillroom/freezing';
 *
 * const deepFreeze = frozenStorage({ temperature: '0 degF' });
 * deepFreeze.known && deepFreeze.months; // => { low: 8, high: 12 }
 * frozenStorage({ temperature: '15 degF' }).known; // => false
 * ```
 */
export function frozenStorage(input: FrozenStorageInput = {}): FrozenStorage | NotKnown {
  const { temperature: freezer } = readInput(schema, input);
  const limit = rule('freezer-temperature');
  const months = rule('storage-months');
  const cautions = [freezingCaution('freezing-does-not-sterilize')];
  if (freezer !== undefined && valueIn(freezer, 'degF') > limit.high) {
    return answer(
      notKnown({
        code: 'freezer too warm',
        text: `These tables hold storage months for a freezer at ${limit.high} degF (-18 degC) or below; quality falls faster in a warmer one.`,
        instead: 'Turn the freezer colder and check it with a thermometer, or eat what is in it first.',
        basis: [basisOf(limit, 'reason', 'temperature of the freezer')],
        cautions,
      }),
    );
  }
  return answer({
    known: true,
    months: { low: months.low, high: months.high },
    basis: [basisOf(months, 'months'), basisOf(limit, 'months', 'temperature of the freezer')],
    cautions,
  });
}
