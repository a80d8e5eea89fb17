import waterVaporization from '../../data/heat/water-vaporization.json';
import { asTable, type Sourced } from '../sources/table';

interface VaporizationRow extends Sourced {
  readonly t_degC: number;
  readonly pSat_kPa: number;
  readonly hVap_kJ_per_kg: number;
}

const { rows } = asTable<VaporizationRow>(waterVaporization);
/** The table's first row, for the basis of an answer that used it. */
export const vaporizationRow = rows[0] as VaporizationRow;

/**
 * Latent heat of vaporization of water, kJ/kg, by straight lines between the rows of the table (0.01 to 100 degC;
 * the curve bends so little that this is within 0.1 kJ/kg).
 */
export function latentHeat(degC: number): number {
  const next = Math.max(
    1,
    rows.findIndex(({ t_degC }) => t_degC >= degC),
  );
  const below = rows[next - 1] as VaporizationRow;
  const above = rows[next] as VaporizationRow;
  const part = (degC - below.t_degC) / (above.t_degC - below.t_degC);
  return below.hVap_kJ_per_kg + part * (above.hVap_kJ_per_kg - below.hVap_kJ_per_kg);
}
