import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, optional, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution, Refusal } from '../sources/index';
import { basisOf } from '../sources/table';
import { freezingCaution, rule } from './tables';

const schema = fields({ temperature: optional(temperature()) });
export type FrozenStorageInput = z.input<typeof schema>;

export interface FrozenStorage {
  /** Months in which fruit and vegetables keep a high quality. */
  readonly months: { readonly low: number; readonly high: number };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How many months frozen fruit and vegetables keep a high quality.
 *
 * The figure is printed for 0 degF (-18 degC) or below. For a warmer freezer none is printed, so none is given.
 *
 * @param input.temperature - of the freezer; 0 degF when left out
 * @returns `months`, or a refusal for a freezer warmer than 0 degF
 *
 * @example
 * ```ts
 * import { frozenStorage } from 'stillroom/freezing';
 *
 * const answer = frozenStorage({ temperature: '0 degF' });
 * 'months' in answer && answer.months; // => { low: 8, high: 12 }
 * 'months' in frozenStorage({ temperature: '15 degF' }); // => false
 * ```
 */
export function frozenStorage(input: FrozenStorageInput = {}): FrozenStorage | Refusal {
  const { temperature: freezer } = readInput(schema, input);
  const limit = rule('freezer-temperature');
  const months = rule('storage-months');
  const basis = [basisOf(months, 'months of storage'), basisOf(limit, 'temperature of the freezer')];
  const cautions = [freezingCaution('freezing-does-not-sterilize')];
  if (freezer !== undefined && valueIn(freezer, 'degF') > limit.high) {
    return answer({
      tested: false,
      reason: `Storage months are printed for a freezer at ${limit.high} degF (-18 degC) or below; quality falls faster in a warmer one.`,
      instead: 'Turn the freezer colder and check it with a thermometer, or eat what is in it first.',
      basis,
      cautions,
    });
  }
  return answer({ months: { low: months.low, high: months.high }, basis, cautions });
}
