/** The saturation line of water (IAPWS-IF97 region 4) in plain SI numbers, for this module and those above it. */
import json from '../../data/steam/if97-region4.json';
import type { Basis } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable } from '../sources/table';
import type { saturationRow } from './tables';

const table = asTable<RowOf<typeof saturationRow>>(json);
const source = table.rows[0]?.source as string;
/** What a pressure on the saturation line rests on: `of` is the path of the answer's field. */
export const saturationPressureBasis = (of: string): Basis => ({
  of,
  kind: 'equation',
  source,
  locator: 'equation 30, Table 34',
});
/** What a temperature on the saturation line rests on: `of` is the path of the answer's field. */
export const saturationBasis = (of: string): Basis => ({
  of,
  kind: 'equation',
  source,
  locator: 'equation 31, Table 34',
});

const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = table.rows.map((row) => row.n) as [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
];

// IAPWS R7-97(2012), section 8: the range of equations 30 and 31
export const COLDEST = 273.15;
export const HOTTEST = 647.096;
export const LOWEST_PRESSURE = 611.212677;
export const HIGHEST_PRESSURE = 22.064e6;

/** Saturation pressure (Pa) at a temperature (K); equation 30. */
export function saturationPascals(kelvin: number): number {
  const v = kelvin + n9 / (kelvin - n10);
  const a = v * v + n1 * v + n2;
  const b = n3 * v * v + n4 * v + n5;
  const c = n6 * v * v + n7 * v + n8;
  const pascals = ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4 * 1e6;
  return Math.min(pascals, HIGHEST_PRESSURE); // its last digit, so that the critical point can be handed back
}

/** Saturation temperature (K) at a pressure (Pa); equation 31. */
export function saturationKelvin(pascals: number): number {
  const beta = (pascals / 1e6) ** 0.25;
  const e = beta * beta + n3 * beta + n6;
  const f = n1 * beta * beta + n4 * beta + n7;
  const g = n2 * beta * beta + n5 * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const kelvin = (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2;
  return Math.max(kelvin, COLDEST); // its last digit, so that the ice point can be handed back
}
