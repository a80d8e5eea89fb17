import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { temperature } from '../words/temperature';
import { LIQUID_COLDEST, liquidDensity, liquidSource, saturatedLiquidDensity, saturatedSource } from './water';

/** As far as a canner goes; SR1-86 itself reaches the critical point. */
const WARMEST = { value: 150, unit: 'degC' } as const;

/** Up to here (102 degC) the first equation serves, above it the second: they meet within 0.003 kg/m3. */
const SWITCH = 375.15;

const schema = /* @__PURE__ */ fields({
  /** Of the water, -20 to 150 degC. */
  temperature: temperature({ min: { value: LIQUID_COLDEST, unit: 'K' }, max: WARMEST }),
});

export type WaterDensityInput = z.input<typeof schema>;
export interface WaterDensity {
  /** In kg/m3. */
  readonly density: Quantity<'density'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Density (kg/m3) of liquid water at a temperature (K): at 0.1 MPa up to 102 degC, above it under its own steam. */
export const waterKilogramsPerCubicMetre = (kelvin: number): number =>
  kelvin <= SWITCH ? liquidDensity(kelvin) : saturatedLiquidDensity(kelvin);

/**
 * The density of liquid water at a temperature: how much it swells between the filling and the process.
 *
 * Up to 102 degC at 0.1 MPa (the pressure changes it by less than 1 part in 20,000 for each atmosphere); above that
 * under its own steam pressure. Below 0 degC it is water that has not frozen.
 *
 * Source: IAPWS SR6-08(2011) equation 1; IAPWS SR1-86(1992) equation 2 above 102 degC.
 *
 * @returns the density in kg/m3
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { waterDensity } from 'stillroom/steam';
 *
 * waterDensity({ temperature: '298.15 K' }).density.value; // ≈ 997.047013
 * waterDensity({ temperature: '212 degF' }).density.value; // ≈ 958.35
 * waterDensity({ temperature: '240 degF' }).density.value; // ≈ 946.6
 * ```
 */
export function waterDensity(input: WaterDensityInput): WaterDensity {
  const kelvin = valueIn(readInput(schema, input).temperature, 'K');
  const basis: Basis =
    kelvin <= SWITCH
      ? { of: 'density', kind: 'equation', source: liquidSource, locator: 'equation 1' }
      : { of: 'density', kind: 'equation', source: saturatedSource, locator: 'equation 2' };
  return answer({
    density: quantityIn(waterKilogramsPerCubicMetre(kelvin), 'kg/m3', 'kg/m3'),
    basis: [basis],
    cautions: [],
  });
}
