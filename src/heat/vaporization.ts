import json from '../../data/heat/water-vaporization.json';
import type { Basis } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import type { vaporizationRow } from './tables';

type VaporizationRow = RowOf<typeof vaporizationRow>;
const { rows } = asTable<VaporizationRow>(json);

/** The basis of an answer that used the table: `of` is the path of the answer's field. */
export const vaporizationBasis = (of: string): Basis =>
  basisOf(rows[0] as VaporizationRow, of, 'latent heat of vaporization of water');

/**
 * Latent heat of vaporization of water, kJ/kg, on straight lines between the rows of the table (0.01 to 100 degC; the
 * curve bends so little that this is within 0.1 kJ/kg).
 */
export function latentHeatAt(degC: number): number {
  const next = Math.max(
    1,
    rows.findIndex(({ t_degC }) => t_degC >= degC),
  );
  const below = rows[next - 1] as VaporizationRow;
  const above = rows[next] as VaporizationRow;
  const part = (degC - below.t_degC) / (above.t_degC - below.t_degC);
  return below.hVap_kJ_per_kg + part * (above.hVap_kJ_per_kg - below.hVap_kJ_per_kg);
}
