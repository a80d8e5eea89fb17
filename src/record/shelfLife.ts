import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, number, readInput, temperature, time } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { recordCaution } from './cautions';

const store = () => temperature({ min: { value: -40, unit: 'degC' }, max: { value: 60, unit: 'degC' } });
const life = () => fields({ life: time(), temperature: store() });
const Q10_BASIS: Basis = { of: 'Q10', kind: 'equation', source: 'labuza-1982', locator: 'definition of Q10' };
const cautions = (): Caution[] => [
  recordCaution('one-temperature-rule'),
  recordCaution('quality-not-safety'),
  caution('estimate'),
];

const q10Schema = /* @__PURE__ */ fields({ cooler: life(), warmer: life() });
export type Q10Input = z.input<typeof q10Schema>;

/**
 * How many times longer a food keeps its quality 10 degC cooler, from two of your own storage tests.
 *
 * Q10 = (life cooler / life warmer)^(10 / (T warmer - T cooler)), degC.
 *
 * @param input - `cooler`, `warmer`: `{ life, temperature }`, -40 to 60 degC, the warmer one warmer
 * @throws StillroomError CONTRADICTION where the warmer is not warmer, OUT_OF_RANGE
 *
 * Source: Labuza, Shelf-Life Dating of Foods, definition of Q10 (recalled).
 *
 * @example
 * ```ts
 * import { q10 } from 'stillroom/record';
 *
 * q10({
 *   cooler: { life: '20 weeks', temperature: '20 degC' },
 *   warmer: { life: '10 weeks', temperature: '30 degC' },
 * }).q10; // ≈ 2.000
 * ```
 */
export function q10(input: Q10Input): {
  readonly q10: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
} {
  const { cooler, warmer } = readInput(q10Schema, input);
  const apart = valueIn(warmer.temperature, 'degC') - valueIn(cooler.temperature, 'degC');
  if (apart < 1)
    fail('CONTRADICTION', 'warmer.temperature', input.warmer.temperature, 'at least 1 degC warmer than the cooler one');
  const ratio = valueIn(cooler.life, 'day') / valueIn(warmer.life, 'day');
  const value = ratio ** (10 / apart);
  if (!(value >= 0.01 && value <= 100))
    fail('OUT_OF_RANGE', 'cooler.life', input.cooler.life, 'lives whose Q10 is from 0.01 to 100');
  return answer({ q10: value, basis: [Q10_BASIS], cautions: cautions() });
}

const lifeSchema = /* @__PURE__ */ fields({
  /** `{ life, temperature }`. */
  known: life(),
  /** Of the other store, -40 to 60 degC. */
  temperature: store(),
  /** 1 to 20 (see `q10`). */
  q10: number('Q10 from 1 to 20', { min: 1, max: 20 }),
});
export type ShelfLifeAtInput = z.input<typeof lifeSchema>;

/**
 * How long a food keeps its quality at another temperature, from a life you know and its Q10.
 *
 * life = known life x Q10^((T known - T) / 10), degC.
 *
 * @returns `life` in the unit of the known one
 * @throws StillroomError OUT_OF_RANGE
 *
 * Source: the definition of Q10 (Labuza, Shelf-Life Dating of Foods, recalled), turned round.
 *
 * @example
 * ```ts
 * import { shelfLifeAt } from 'stillroom/record';
 *
 * const known = { life: '1 week', temperature: '100 degF' } as const;
 * shelfLifeAt({ known, temperature: '70 degF', q10: 2 }).life.value; // ≈ 3.17
 * ```
 */
export function shelfLifeAt(input: ShelfLifeAtInput): {
  readonly life: Quantity<'time'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
} {
  const { known, temperature: other, q10: factor } = readInput(lifeSchema, input);
  const apart = valueIn(known.temperature, 'degC') - valueIn(other, 'degC');
  const { value, unit } = known.life;
  return answer({
    life: quantityIn(value * factor ** (apart / 10), unit, unit),
    basis: [Q10_BASIS],
    cautions: cautions(),
  });
}
