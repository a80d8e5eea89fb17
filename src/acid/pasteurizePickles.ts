import type * as z from 'zod/mini';
import { handOut } from '../common/handOut';
import { fields, name, optional, readInput, temperature, time } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { caution } from '../sources/cautions';
import type { Basis, Caution, Refusal } from '../sources/index';
import { basisOf } from '../sources/table';
import { acidCaution, pickleRule, printed } from './tables';

const schema = fields({
  recipe: optional(name('the pickle recipe')),
  coldest: optional(temperature()),
  hottest: optional(temperature()),
  held: optional(time()),
});
export type PasteurizePicklesInput = z.input<typeof schema>;

export interface PasteurizePickles {
  /** Water that the filled jars go into. */
  readonly start: { readonly low: Quantity<'temperature'>; readonly high: Quantity<'temperature'> };
  /** Water over the jars. */
  readonly waterOverJars: Quantity<'length'>;
  /** Water during the hold: never below `low`; above `high` pickles may soften. */
  readonly hold: { readonly low: Quantity<'temperature'>; readonly high: Quantity<'temperature'> };
  readonly time: Quantity<'time'>;
  /** With `coldest` and `held`: whether the record met the printed treatment. */
  readonly verdict?: 'met' | 'not met' | 'met, but hot enough to soften';
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Low-temperature pasteurization of pickles: the printed treatment, and whether a record met it.
 *
 * Only for a recipe that itself allows it, never for reduced-sodium pickles.
 *
 * @param input.recipe - the recipe; one with reduced sodium (or salt) is refused
 * @param input.coldest - lowest water temperature of the hold
 * @param input.hottest - highest water temperature of the hold
 * @param input.held - how long it was held
 * @returns the treatment, with a `verdict` where `coldest` and `held` are given; or a refusal
 *
 * @example
 * ```ts
 * import { pasteurizePickles } from 'stillroom/acid';
 *
 * const check = pasteurizePickles({ coldest: '179 degF', hottest: '184 degF', held: '30 min' });
 * 'verdict' in check && check.verdict; // => 'not met'
 * ```
 */
export function pasteurizePickles(input: PasteurizePicklesInput = {}): PasteurizePickles | Refusal {
  const { recipe, coldest, hottest, held } = readInput(schema, input);
  const where = pickleRule('pasteurization-where');
  const cautions = [acidCaution('keep-the-proportions'), caution('tested-only'), caution('follow-local-guidance')];
  if (recipe !== undefined && /reduced|low|less|no/i.test(recipe) && /sodium|salt/i.test(recipe)) {
    return handOut({
      tested: false,
      reason: 'Low-temperature pasteurization is not for pickles with reduced sodium: salt is part of what keeps them.',
      instead: 'Use the boiling-water time printed for the recipe.',
      basis: [basisOf(where, 'where low-temperature pasteurization is allowed')],
      cautions,
    });
  }
  const hold = pickleRule('pasteurization-hold');
  const start = pickleRule('pasteurization-start');
  const over = pickleRule('pasteurization-water-over-jars');
  const highest = pickleRule('pasteurization-highest');
  const [startLow, startHigh] = printed(start, 'range');
  const minutes = printed(hold, 'value');
  const low = printed(hold, 'lowest');
  const high = printed(highest, 'value');
  const NOISE = 1e-9;
  const met =
    coldest !== undefined &&
    held !== undefined &&
    valueIn(coldest, 'degF') >= low - NOISE &&
    valueIn(held, 'min') >= minutes - NOISE;
  const hot = hottest !== undefined && valueIn(hottest, 'degF') > high + NOISE;
  const verdict = met ? (hot ? 'met, but hot enough to soften' : 'met') : 'not met';
  return handOut({
    start: { low: { value: startLow, unit: 'degF' }, high: { value: startHigh, unit: 'degF' } },
    waterOverJars: { value: printed(over, 'value'), unit: 'in' },
    hold: { low: { value: low, unit: 'degF' }, high: { value: high, unit: 'degF' } },
    time: { value: minutes, unit: 'min' },
    ...(coldest === undefined || held === undefined ? {} : { verdict }),
    basis: [
      basisOf(hold, 'hold'),
      basisOf(start, 'start'),
      basisOf(over, 'water over the jars'),
      basisOf(highest, 'upper limit'),
      basisOf(where, 'only where the recipe says so'),
    ],
    cautions,
  });
}
