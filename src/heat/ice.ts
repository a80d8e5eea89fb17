/** Vapor pressure over ice and the heat that sublimes it, in plain SI numbers, for this module and those above it. */
import json from '../../data/heat/ice-formulas.json';
import type { Basis } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { temperature } from '../words/temperature';
import { byId, type iceFormulaRow } from './tables';

const formulas = asTable<RowOf<typeof iceFormulaRow>>(json).rows;
const PRESSURE = /* @__PURE__ */ byId(formulas, 'iapws-sublimation');
const ENTHALPY = /* @__PURE__ */ byId(formulas, 'murphy-koop-enthalpy');
/** The triple point of water. */
export const TRIPLE_K = PRESSURE.Tt_K as number;
export const TRIPLE_PA = PRESSURE.pt_Pa as number;
/** Where the formula of the pressure ends. */
export const COLDEST_K = (PRESSURE.range_K as readonly [number, number])[0];

/** Pa over ice at T in K (IAPWS R14-08 (2011) Eq. 6): ln(p/pt) = (1/theta) sum a_i theta^b_i, theta = T/Tt. */
export function icePressure(kelvin: number): number {
  const theta = kelvin / TRIPLE_K;
  const { a = [], b = [] } = PRESSURE;
  const sum = a.reduce((total, factor, i) => total + factor * theta ** (b[i] as number), 0);
  return TRIPLE_PA * Math.exp(sum / theta);
}

/** kJ/kg to sublime ice at T in K (Murphy and Koop Eq. 5, over the molar mass of water). */
export function sublimationEnthalpy(kelvin: number): number {
  const { a, scale_K, molarMass } = ENTHALPY as Required<typeof ENTHALPY>;
  const [constant, linear, square, bump] = a as [number, number, number, number];
  const perMole = constant + linear * kelvin + square * kelvin ** 2 + bump * Math.exp(-((kelvin / scale_K) ** 2));
  return perMole / molarMass;
}

/** K at which ice has this vapor pressure: the inverse of `icePressure`, by bisection. */
export function iceTemperature(pascal: number): number {
  let low = COLDEST_K;
  let high = TRIPLE_K;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (icePressure(middle) < pascal) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** What a pressure over ice rests on: `of` is the path of the answer's field. */
export const iceBasis = (of: string): readonly Basis[] => [basisOf(PRESSURE, of, 'vapor pressure over ice')];
/** What a heat of sublimation rests on: `of` is the path of the answer's field. */
export const sublimationBasis = (of: string): readonly Basis[] => [
  basisOf(ENTHALPY, of, 'enthalpy of sublimation; within 0.2 kJ/kg of the IAPWS enthalpies from -35 to 0 degC'),
];

/** The temperature of ice, from `coldest` in kelvin to the triple point. */
export const iceTemperatureField = (coldest = COLDEST_K) =>
  temperature({ min: { value: coldest, unit: 'K' }, max: { value: TRIPLE_K, unit: 'K' } });
