import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fields, mass, optional, readInput, share } from '../../quantity/fields';
import { mapRange, turnRange } from '../../quantity/range';
import type { Quantity, Range } from '../../quantity/types';
import { refuseWetter, shareLeft } from '../../solution/massBalance';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { caution } from '../cautions';
import { endsOf, setting } from '../guide/settings';
import { MOISTURE_BASES } from './moistureBasis';
import { moistureRange } from './moistureRange';

const DRIED = setting('residualMoisture_properlyDriedFood');

const schema = fields({
  trimmings: mass(),
  moisture: moistureRange(),
  targetMoisture: optional(share({ below: 1 })),
  loss: optional(share({ below: 1 })),
});
export type PowderInput = z.input<typeof schema>;

export interface Powder {
  /** What the dried trimmings weigh: stop drying here. The low end is dry enough in every case. */
  readonly dried: Range<Quantity<'mass'>>;
  /** What is left after grinding and sifting. */
  readonly powder: Range<Quantity<'mass'>>;
  readonly waterRemoved: Range<Quantity<'mass'>>;
  readonly targetMoisture: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Powder from trimmings (peels, cores, ends, strained skins): dried until they snap, ground and sifted.
 *
 * dried = trimmings (1 - moisture) / (1 - target); powder = dried (1 - loss). The target is 5 %, the dry end of what
 * properly dried food holds, for anything moister gums the mill and cakes.
 *
 * @param input.trimmings - sound, washed trimmings
 * @param input.moisture - their moisture: one ratio or `{ low, likely, high }`, wet basis
 * @param input.targetMoisture - when brittle; 5 % if not given
 * @param input.loss - share lost in grinding and sifting, 0 to below 1; none if not given
 * @returns weights in the unit of `trimmings`
 * @throws StillroomError CONTRADICTION when the target is wetter than the start
 *
 * @example
 * ```ts
 * import { powder } from 'stillroom/drying';
 *
 * powder({ trimmings: '2 kg', moisture: '88 %', loss: '3 %' }).powder.likely.value; // ≈ 0.245
 * ```
 */
export function powder(input: PowderInput): Powder {
  const { trimmings, moisture, targetMoisture = endsOf(DRIED)[0] / 100, loss = 0 } = readInput(schema, input);
  refuseWetter(moisture.low, targetMoisture, input.targetMoisture);
  const { value, unit } = trimmings;
  const left = turnRange(mapRange(moisture, (start) => shareLeft(start, targetMoisture)));
  return answer({
    dried: mapRange(left, (share) => ({ value: value * share, unit })),
    powder: mapRange(left, (share) => ({ value: value * share * (1 - loss), unit })),
    waterRemoved: turnRange(mapRange(left, (share) => ({ value: value * (1 - share), unit }))),
    targetMoisture,
    basis: joinBasis(
      [MOISTURE_BASES],
      input.targetMoisture === undefined ? [basisOf(DRIED, 'moisture of properly dried food, the dry end')] : [],
    ),
    cautions: [caution('no-pits-in-powder'), caution('powder-cakes'), caution('estimate')],
  });
}
