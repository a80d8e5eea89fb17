import type * as z from 'zod/mini';
import formulaTable from '../../data/heat/ice-formulas.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, pressure, readInput, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/index';
import { asTable, basisOf, type Sourced } from '../sources/table';

interface FormulaRow extends Sourced {
  readonly quantity: string;
  readonly formula: string;
  readonly Tt_K?: number;
  readonly pt_Pa?: number;
  readonly a?: readonly number[];
  readonly b?: readonly number[];
  readonly range_K?: readonly [number, number];
}

const formulas = asTable<FormulaRow>(formulaTable).rows;
const formula = (start: string): FormulaRow =>
  formulas.find(({ quantity }) => quantity.startsWith(start)) as FormulaRow;

const SUBLIMATION = formula('sublimation pressure of ice Ih');
const TRIPLE_K = SUBLIMATION.Tt_K as number;
const TRIPLE_PA = SUBLIMATION.pt_Pa as number;
const COLDEST_K = (SUBLIMATION.range_K as readonly [number, number])[0];
const ENTHALPY = formula('enthalpy of sublimation');

/** Pa over ice at T in K (IAPWS R14-08 (2011) Eq. 6): ln(p/pt) = (1/theta) sum a_i theta^b_i, theta = T/Tt. */
export function icePressure(kelvin: number): number {
  const theta = kelvin / TRIPLE_K;
  const { a = [], b = [] } = SUBLIMATION;
  const sum = a.reduce((total, factor, i) => total + factor * theta ** (b[i] as number), 0);
  return TRIPLE_PA * Math.exp(sum / theta);
}

/** kJ/kg to sublime ice at T in K (Murphy and Koop Eq. 5, over 18.015268 g/mol). */
export function sublimationEnthalpy(kelvin: number): number {
  const perMole = 46782.5 + 35.8925 * kelvin - 0.07414 * kelvin ** 2 + 541.5 * Math.exp(-((kelvin / 123.75) ** 2));
  return perMole / 18.015268;
}

/** K at which ice has this vapour pressure: the inverse of `icePressure`, by bisection. */
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

export const iceBasis: readonly Basis[] = [basisOf(SUBLIMATION, 'vapour pressure over ice')];
export const sublimationBasis: readonly Basis[] = [
  basisOf(ENTHALPY, 'enthalpy of sublimation; within 0.2 kJ/kg of the IAPWS enthalpies from -35 to 0 degC'),
];

const iceTemperatureField = () =>
  temperature({ min: { value: COLDEST_K, unit: 'K' }, max: { value: TRIPLE_K, unit: 'K' } });

const schema = fields({ temperature: iceTemperatureField() });
export type IceVapourPressureInput = z.input<typeof schema>;

export interface IceVapourPressure {
  readonly pressure: Quantity<'pressure'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The vapour pressure over ice: below it ice sublimes, above it vapour settles as frost.
 *
 * IAPWS R14-08 (2011) Eq. 6, from 50 K to the triple point, 273.16 K (0.01 degC).
 *
 * @param input.temperature - of the ice, 50 to 273.16 K
 * @returns `pressure` in Pa
 * @throws StillroomError OUT_OF_RANGE where there is no ice, or the formula does not reach
 *
 * @example
 * ```ts
 * import { iceVapourPressure } from 'stillroom/heat';
 *
 * iceVapourPressure({ temperature: '-43.15 degC' }).pressure.value; // ≈ 8.94735
 * ```
 */
export function iceVapourPressure(input: IceVapourPressureInput): IceVapourPressure {
  const { temperature: ice } = readInput(schema, input);
  return answer({ pressure: { value: icePressure(valueIn(ice, 'K')), unit: 'Pa' }, basis: iceBasis, cautions: [] });
}

const frostSchema = fields({ pressure: pressure({ max: { value: TRIPLE_PA, unit: 'Pa' } }) });
export type FrostPointInput = z.input<typeof frostSchema>;

export interface FrostPoint {
  readonly temperature: Quantity<'temperature'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The temperature at which ice has a given vapour pressure: how cold the ice in a freeze-dryer stays at the chamber's
 * pressure of water vapour. The inverse of `iceVapourPressure`.
 *
 * @param input.pressure - of the water vapour, up to the triple point's 611.657 Pa
 * @returns `temperature` in degC
 * @throws StillroomError OUT_OF_RANGE above the triple point, where ice melts
 *
 * @example
 * ```ts
 * import { frostPoint } from 'stillroom/heat';
 *
 * frostPoint({ pressure: '103.239 Pa' }).temperature.value; // ≈ -20.00
 * ```
 */
export function frostPoint(input: FrostPointInput): FrostPoint {
  const { pressure: vapour } = readInput(frostSchema, input);
  const pascal = valueIn(vapour, 'Pa');
  const least = icePressure(COLDEST_K);
  if (pascal > TRIPLE_PA || pascal < least) {
    fail('OUT_OF_RANGE', 'pressure', input.pressure, `a pressure from ${least.toExponential(2)} to ${TRIPLE_PA} Pa`);
  }
  return answer({ temperature: quantityIn(iceTemperature(pascal), 'K', 'degC'), basis: iceBasis, cautions: [] });
}

const heatSchema = fields({
  temperature: temperature({ min: { value: 30, unit: 'K' }, max: { value: TRIPLE_K, unit: 'K' } }),
});
export type SublimationHeatInput = z.input<typeof heatSchema>;

export interface SublimationHeat {
  /** Heat to turn one kilogram of ice into vapour, kJ. */
  readonly heatPerKilogram: Quantity<'energy'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The heat that turns one kilogram of ice straight into vapour; it hardly changes with temperature.
 *
 * Murphy and Koop (2005) Eq. 5, from 30 to 273.16 K, recalled, and checked to within 0.2 kJ/kg against the IAPWS
 * enthalpies of the table from -35 to 0 degC.
 *
 * @param input.temperature - of the ice, 30 to 273.16 K
 * @returns `heatPerKilogram` in kJ
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { sublimationHeat } from 'stillroom/heat';
 *
 * sublimationHeat({ temperature: '-20 degC' }).heatPerKilogram.value; // ≈ 2838
 * ```
 */
export function sublimationHeat(input: SublimationHeatInput): SublimationHeat {
  const { temperature: ice } = readInput(heatSchema, input);
  return answer({
    heatPerKilogram: { value: sublimationEnthalpy(valueIn(ice, 'K')), unit: 'kJ' },
    basis: sublimationBasis,
    cautions: [],
  });
}
