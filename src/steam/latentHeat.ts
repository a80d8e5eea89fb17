import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { mass } from '../words/mass';
import { temperature } from '../words/temperature';
import { vaporizationBasis, vaporizationHeat } from './water';

const schema = /* @__PURE__ */ fields({
  /** Of the water, 0 to 200 degC. */
  temperature: temperature({ min: { value: 0, unit: 'degC' }, max: { value: 200, unit: 'degC' } }),
  /** How much water; 1 kg when left out. */
  mass: optional(mass()),
});

export type LatentHeatInput = z.input<typeof schema>;
export interface LatentHeat {
  /** In BTU for a mass in lb or oz, otherwise in kJ. */
  readonly energy: Quantity<'energy'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const POUNDS: ReadonlySet<string> = new Set(['lb', 'oz', 'grain', 'cwt', 'short ton']);

/**
 * The heat it takes to evaporate water at a temperature: of 1 kg, or of the mass given.
 *
 * The Clapeyron equation, T (1/rho_steam - 1/rho_water) dp/dT, on the equations of the saturation line.
 *
 * Source: IAPWS SR1-86(1992) equations 1 to 3.
 *
 * @returns the energy, in BTU for a mass in lb or oz and in kJ otherwise
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { latentHeat } from 'stillroom/steam';
 *
 * latentHeat({ temperature: '100 degC' }).energy.value; // ≈ 2257
 * latentHeat({ temperature: '212 degF', mass: '1 lb' }).energy.value; // ≈ 970
 * ```
 */
export function latentHeat(input: LatentHeatInput): LatentHeat {
  const given = readInput(schema, input);
  const kilograms = given.mass === undefined ? 1 : valueIn(given.mass, 'kg');
  const joules = kilograms * vaporizationHeat(valueIn(given.temperature, 'K'));
  return answer({
    energy: quantityIn(joules, 'J', given.mass !== undefined && POUNDS.has(given.mass.unit) ? 'BTU' : 'kJ'),
    basis: [vaporizationBasis('energy')],
    cautions: [],
  });
}
