/** The standard atmosphere in plain SI numbers, for the functions of this module and those above it. */
import json from '../../data/steam/standard-atmosphere.json';
import type { Basis } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable } from '../sources/table';
import type { atmosphereRow } from './tables';

type Constant = RowOf<typeof atmosphereRow>;
const table = asTable<Constant>(json);
/** What a pressure of the standard atmosphere rests on: `of` is the path of the answer's field. */
export const atmosphereBasis = (of: string): Basis => ({
  of,
  kind: 'equation',
  source: table.rows[0]?.source as string,
  locator: 'formula and constants of the lowest layer',
  note: 'air pressure of the standard atmosphere',
});

const constant = (symbol: string): number => (table.rows.find((row) => row.symbol === symbol) as Constant).value;
const P0 = constant('P0');
const T0 = constant('T0');
const LAPSE = constant('L');
const RADIUS = constant('r0');
/** g0 M0 / (R* |L|), some 5.2559; the molar mass is in kg/kmol. */
const EXPONENT = (constant('g0') * constant('M0')) / 1000 / (constant('Rstar') * -LAPSE);

/** Geopotential height (m) of a geometric elevation (m): what gravity, weakening upwards, makes of it. */
export const geopotential = (elevation: number): number => (RADIUS * elevation) / (RADIUS + elevation);

/** Pressure (Pa) of the standard atmosphere at a geometric elevation (m) below 11 km. */
export const standardPressure = (elevation: number): number =>
  P0 * (1 + (LAPSE * geopotential(elevation)) / T0) ** EXPONENT;

/** Temperature (K) of the standard atmosphere at a geometric elevation (m) below 11 km. */
export const standardAirTemperature = (elevation: number): number => T0 + LAPSE * geopotential(elevation);

/** Geometric elevation (m) at which the standard atmosphere has this pressure (Pa). */
export function standardElevation(pressure: number): number {
  const height = (T0 / LAPSE) * ((pressure / P0) ** (1 / EXPONENT) - 1);
  return (RADIUS * height) / (RADIUS - height);
}
