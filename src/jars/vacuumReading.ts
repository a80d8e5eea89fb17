import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, pressure, readInput } from '../quantity/fields';
import { quantityIn, toDecimalIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';

const schema = /* @__PURE__ */ fields({
  /** Air pressure (see `airPressure` of stillroom/steam). */
  outside: pressure(),
  /** Absolute pressure in the headspace, not above `outside`. */
  inside: pressure({ min: { value: 0, unit: 'Pa' } }),
});
export type VacuumReadingInput = z.input<typeof schema>;

export interface VacuumReading {
  /** In the unit of `outside`. */
  readonly vacuum: Quantity<'pressure'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** How a vacuum gauge on a lid reads. */
export const VACUUM_BASIS: Basis = {
  of: 'vacuum: outside pressure less inside pressure',
  kind: 'published',
  source: 'iasri-canning',
  locator: 'lesson 3.2.3.3',
  seen: 'original',
};

/**
 * The vacuum in a sealed jar: the air pressure outside less the absolute pressure inside. The same jar reads less
 * where the air is thinner.
 *
 * Source: IASRI course on unit operations in canning, lesson 3.2.3.3.
 *
 * @returns the vacuum in the unit of `outside`
 * @throws StillroomError CONTRADICTION when the pressure inside is the higher one
 *
 * @example
 * ```ts
 * import { vacuumReading } from 'stillroom/jars';
 *
 * vacuumReading({ outside: '760 mmHg', inside: '500 mmHg' }).vacuum; // => { value: 260, unit: 'mmHg' }
 * ```
 */
export function vacuumReading(input: VacuumReadingInput): VacuumReading {
  const { outside, inside } = readInput(schema, input);
  const difference = toDecimalIn(outside, outside.unit).minus(toDecimalIn(inside, outside.unit));
  if (difference.isNegative()) fail('CONTRADICTION', 'inside', input.inside, 'at most the pressure outside');
  return answer({
    vacuum: quantityIn(difference.toNumber(), outside.unit, outside.unit),
    basis: [VACUUM_BASIS],
    cautions: [],
  });
}
