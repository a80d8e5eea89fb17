/** Density and latent heat of water in plain SI numbers, for this module and those above it. */
import liquidJson from '../../data/steam/liquid-water.json';
import saturatedJson from '../../data/steam/saturated-water.json';
import type { Basis } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable } from '../sources/table';
import type { liquidRow, saturatedRow } from './tables';

type SaturatedTerm = RowOf<typeof saturatedRow>;
const liquid = asTable<RowOf<typeof liquidRow>>(liquidJson);
const saturated = asTable<SaturatedTerm>(saturatedJson);
export const liquidSource = liquid.rows[0]?.source as string;
export const saturatedSource = saturated.rows[0]?.source as string;

// IAPWS SR6-08(2011), section 4
export const LIQUID_COLDEST = 253.15;
const R = 461.51805; // J/(kg K)
const TR = 10; // K
const P0 = 1e5; // Pa

/** Density (kg/m3) of liquid water at 0.1 MPa and a temperature (K), 253.15 K to 383.15 K; SR6-08 equation 1. */
export function liquidDensity(kelvin: number): number {
  const alpha = TR / (593 - kelvin);
  const beta = TR / (kelvin - 232);
  let sum = 0;
  for (const { a, n, b, m } of liquid.rows) sum += a * alpha ** (n ?? 0) + b * beta ** m;
  return P0 / (R * TR * sum);
}

// IAPWS SR1-86(1992): the critical point
const TC = 647.096; // K
const PC = 22.064e6; // Pa
const RHO_C = 322; // kg/m3

/** Sum of the terms of one equation, and of its derivative by tau. */
function series(equation: SaturatedTerm['equation'], tau: number): { sum: number; slope: number } {
  let sum = 0;
  let slope = 0;
  for (const row of saturated.rows) {
    if (row.equation !== equation) continue;
    const power = row.sixths / 6;
    sum += row.coefficient * tau ** power;
    slope += row.coefficient * power * tau ** (power - 1);
  }
  return { sum, slope };
}

/** Density (kg/m3) of water on the saturation line at a temperature (K); SR1-86 equation 2. */
export const saturatedLiquidDensity = (kelvin: number): number =>
  RHO_C * (1 + series('liquid density', 1 - kelvin / TC).sum);

/** Density (kg/m3) of steam on the saturation line at a temperature (K); SR1-86 equation 3. */
export const saturatedSteamDensity = (kelvin: number): number =>
  RHO_C * Math.exp(series('vapor density', 1 - kelvin / TC).sum);

/**
 * Heat (J/kg) that turns water into steam at a temperature (K), by the Clapeyron equation
 * T (1/rho_steam - 1/rho_water) dp/dT on the three equations of SR1-86. The one home of this heat: an equation of the
 * standard serves boiling, drying and machines alike, and reaches into the canner, where a table ends at 100 degC.
 */
export function vaporizationHeat(kelvin: number): number {
  const { sum, slope } = series('vapor pressure', 1 - kelvin / TC);
  const pressure = PC * Math.exp((TC / kelvin) * sum);
  // d/dT of (Tc/T) sum(tau) = -(Tc/T^2) sum - slope/T
  const rise = pressure * (-(TC / kelvin ** 2) * sum - slope / kelvin);
  return kelvin * (1 / saturatedSteamDensity(kelvin) - 1 / saturatedLiquidDensity(kelvin)) * rise;
}

/** What a heat of vaporization rests on: `of` is the path of the answer's field. */
export const vaporizationBasis = (of: string): Basis => ({
  of,
  kind: 'equation',
  source: saturatedSource,
  locator: 'equations 1 to 3',
  note: 'latent heat of vaporization of water',
});
