import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fields, optional, readInput, share } from '../../quantity/fields';
import { mapRange, turnRange } from '../../quantity/range';
import type { Quantity, Range } from '../../quantity/types';
import { balanceBasis, refuseWetter, sharesLeft } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/basis';
import { targetMoisture as targetMoistureWord } from '../../words/shares';
import { trimmings as trimmingsWord } from '../../words/trimmings';
import { caution } from '../cautions';
import { fatFields, fatIfNamed } from '../guide/fat';
import { moistureRange } from './moistureRange';
import { driestMoisture } from './targetMoisture';

const schema = /* @__PURE__ */ fields({
  ...fatFields,
  /** Sound, washed trimmings: a mass above zero. */
  trimmings: trimmingsWord(),
  /** Their moisture, wet basis: 0 to below 1 or percent, one or `{ low, likely, high }`. */
  moisture: moistureRange(),
  /** The moisture when brittle, wet basis: 0 to below 1 or percent; 5 % if not given. */
  targetMoisture: optional(targetMoistureWord({ below: 1 })),
  /** Share lost in grinding and sifting: 0 to below 1 or percent; none if not given. */
  loss: optional(share({ below: 1 })),
});
export type PowderInput = z.input<typeof schema>;

export interface Powder {
  /** What the dried trimmings weigh: stop drying here. The low end is dry enough in every case. */
  readonly dried: Range<Quantity<'mass'>>;
  /** What is left after grinding and sifting. */
  readonly powder: Range<Quantity<'mass'>>;
  /** The water that goes. */
  readonly waterRemoved: Range<Quantity<'mass'>>;
  /** The moisture to reach, wet basis. */
  readonly targetMoisture: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * Powder from trimmings (peels, cores, ends, strained skins): dry them until they snap, grind and sift them.
 *
 * dried = trimmings (1 - moisture) / (1 - target); powder = dried (1 - loss). The target is 5 %, the dry end of what
 * properly dried food holds: anything moister gums up the mill and cakes. Never use pits, kernels, green potato peel or
 * rhubarb leaves.
 *
 * @returns masses in the unit of `trimmings`
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
  const given = readInput(schema, input);
  const { trimmings, moisture, loss = 0 } = given;
  const usual = driestMoisture('targetMoisture');
  const targetMoisture = given.targetMoisture ?? usual.moisture;
  refuseWetter(moisture.low, targetMoisture, input.targetMoisture);
  const fat = fatIfNamed(given, moisture.likely, 'dried', input.form);
  const { value, unit } = trimmings;
  const left = sharesLeft(moisture, targetMoisture);
  return answer({
    dried: mapRange(left, (part) => ({ value: value * part, unit })),
    powder: mapRange(left, (part) => ({ value: value * part * (1 - loss), unit })),
    waterRemoved: turnRange(mapRange(left, (part) => ({ value: value * (1 - part), unit }))),
    targetMoisture,
    basis: [
      balanceBasis('dried'),
      balanceBasis('powder'),
      balanceBasis('waterRemoved'),
      ...(given.targetMoisture === undefined ? usual.basis : []),
      ...fat.basis,
    ],
    cautions: [...fat.cautions, caution('no-pits-in-powder'), caution('powder-cakes'), caution('estimate')],
  });
}
