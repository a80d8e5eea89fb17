import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, pressure, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';

const gasTemperature = () => temperature({ min: { value: -100, unit: 'degC' } });
const schema = /* @__PURE__ */ fields({ pressure: pressure(), from: gasTemperature(), to: gasTemperature() });
export type CooledAirPressureInput = z.input<typeof schema>;

export interface CooledAirPressure {
  /** Absolute, in the unit given. */
  readonly pressure: Quantity<'pressure'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The law of ideal gases at constant volume. */
export const IDEAL_GAS: Basis = {
  of: 'pressure of air by the ideal gas law',
  kind: 'equation',
  source: 'borgnakke',
  locator: 'ideal-gas chapter problem',
};

/**
 * The pressure of dry air in a closed jar of fixed size after it has cooled (or warmed).
 *
 * p2 = p1 × T2/T1, temperatures from absolute zero. A canning jar also loses its steam: see `sealVacuum`.
 *
 * Source: ideal gas law, as in the worked problem of a washed glass in Fundamentals of Thermodynamics.
 *
 *
 * @example
 * ```ts
 * import { cooledAirPressure } from 'stillroom/jars';
 *
 * cooledAirPressure({ pressure: '103 kPa', from: '40 degC', to: '20 degC' }).pressure.value; // ≈ 96.4
 * ```
 */
export function cooledAirPressure(input: CooledAirPressureInput): CooledAirPressure {
  const given = readInput(schema, input);
  const ratio = valueIn(given.to, 'K') / valueIn(given.from, 'K');
  return answer({
    pressure: { value: given.pressure.value * ratio, unit: given.pressure.unit },
    basis: [IDEAL_GAS],
    cautions: [],
  });
}
