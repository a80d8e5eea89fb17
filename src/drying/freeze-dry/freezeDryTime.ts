import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { iceBasis, icePressure, iceTemperature, sublimationBasis, sublimationEnthalpy } from '../../heat/ice';
import { fields, number, optional, readInput } from '../../quantity/fields';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { refuseWetter, shareLeft } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { density } from '../../words/density';
import { length } from '../../words/length';
import { pressure } from '../../words/pressure';
import { moisture as moistureWord, targetMoisture as targetMoistureWord } from '../../words/shares';
import { temperature } from '../../words/temperature';
import { caution } from '../cautions';
import { pieceDensity } from '../guide/trayLoad';
import { freezeDriedMoisture } from '../moisture/targetMoisture';
import { figure } from '../rows';
import { freezeDrying } from './tables';

const BALANCE = freezeDrying('front-balance');
const TIME = freezeDrying('sublimation-time');
/** Of a 12.5 mm layer of coffee extract: how much of the time the ice takes, the rest being the bound water's. */
const SPLIT = freezeDrying('coffee-extract-split');
const TRIPLE_K = 273.16;

const schema = /* @__PURE__ */ fields({
  /** Of the frozen layer: up to 10 cm. */
  thickness: length({ max: { value: 10, unit: 'cm' } }),
  /** How many faces dry: 1 (on a tray; if not given) or 2. */
  faces: optional(number('how many faces dry: 1 or 2', { min: 1, max: 2, integer: true })),
  /** Of the food, wet basis: 0 to below 1, or percent. */
  moisture: moistureWord({ below: 1 }),
  /** When dry, wet basis: 0 to below 1 or percent; 2 % if not given. */
  targetMoisture: optional(targetMoistureWord({ below: 1 })),
  /** Of the layer: up to 2 g/mL; 1 g/mL if not given. */
  density: optional(density({ max: { value: 2, unit: 'g/mL' } })),
  /** Thermal conductivity of the dry layer, W/(m K): above 0 to 10; about 0.035 for coffee extract. */
  conductivity: number('thermal conductivity of the dry layer in W/(m K), above 0 and at most 10', {
    above: 0,
    max: 10,
  }),
  /** Permeability of the dry layer, kg/(m s Pa): above 0 to 1; about 2.6e-8 for coffee extract. */
  permeability: number('permeability of the dry layer in kg/(m s Pa), above 0 and at most 1', { above: 0, max: 1 }),
  /** Of the dry surface: -80 to 120 degC. */
  surfaceTemperature: temperature({ min: { value: -80, unit: 'degC' }, max: { value: 120, unit: 'degC' } }),
  /** Of the water vapor in the chamber: 0 or more; or give `condenserTemperature`. */
  vaporPressure: optional(pressure({ min: { value: 0, unit: 'Pa' } })),
  /** Of the condenser, which sets the vapor pressure: -120 to 0 degC. */
  condenserTemperature: optional(temperature({ min: { value: -120, unit: 'degC' }, max: { value: 0, unit: 'degC' } })),
});
export type FreezeDryTimeInput = z.input<typeof schema>;

export interface FreezeDryTime {
  /** Of the ice front while it retreats: compare with `glassTransition`. */
  readonly iceTemperature: Quantity<'temperature'>;
  /** Of the vapor at the ice front. */
  readonly icePressure: Quantity<'pressure'>;
  /** Until the ice is gone. */
  readonly sublimationTime: Quantity<'time'>;
  /** With the bound water too, at the split of the one published layer. */
  readonly totalTime: Quantity<'time'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** K of the ice front: heat through the dry layer equals heat carried off by the vapor; by bisection. */
function frontKelvin(conductivity: number, permeability: number, surface: number, vapor: number): number {
  const surplus = (kelvin: number): number =>
    conductivity * (surface - kelvin) -
    sublimationEnthalpy(kelvin) * 1000 * permeability * (icePressure(kelvin) - vapor);
  if (surface > TRIPLE_K && surplus(TRIPLE_K) > 0) return Number.POSITIVE_INFINITY;
  let low = 100;
  let high = Math.min(surface, TRIPLE_K);
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (surplus(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

type Given = z.output<typeof schema>;

/** K of the ice front; refuses a surface or a vapor at which ice does not sublime, or melts. */
function frontOf(given: Given, input: FreezeDryTimeInput): number {
  const { vaporPressure, condenserTemperature } = given;
  if ((vaporPressure === undefined) === (condenserTemperature === undefined)) {
    const expected = 'either the condenser or the vapor, and not both';
    fail('CONTRADICTION', 'condenserTemperature', input.condenserTemperature, expected);
  }
  const vapor =
    condenserTemperature === undefined
      ? valueIn(vaporPressure as Quantity<'pressure'>, 'Pa')
      : icePressure(valueIn(condenserTemperature, 'K'));
  const surface = valueIn(given.surfaceTemperature, 'K');
  const coldest = vapor > icePressure(50) ? iceTemperature(Math.min(vapor, icePressure(TRIPLE_K))) : 50;
  const refuse = (expected: string) => fail('CONTRADICTION', 'surfaceTemperature', input.surfaceTemperature, expected);
  if (surface <= coldest || vapor >= icePressure(TRIPLE_K)) {
    refuse('a surface warmer than ice at the pressure of the vapor');
  }
  const front = frontKelvin(given.conductivity, given.permeability, surface, vapor);
  if (front > TRIPLE_K) refuse('a surface cool enough that the ice does not melt');
  return front;
}

/**
 * How cold the ice front stays and how long the ice takes to leave a layer in a freeze-dryer, by the model of the
 * uniformly retreating ice front with the dry layer in control.
 *
 * kt (T0 - Ts) = dHs K (Ps - P0), with Ps the vapor pressure of ice at Ts; time = ice L2 / (2 K (Ps - P0)), ice in kg in
 * a cubic meter of layer and L the depth that dries (half the thickness where both faces dry). The time is to the end of
 * sublimation; `totalTime` adds the bound water in the 60 to 40 split published for one layer of coffee extract.
 *
 * @returns `iceTemperature` in degC, `icePressure` in Pa, times in h
 * @throws StillroomError CONTRADICTION for both or neither of `vaporPressure` and `condenserTemperature`, or where the
 *   ice would melt or not sublime at all
 *
 * @example
 * ```ts
 * import { freezeDryTime } from 'stillroom/drying';
 *
 * freezeDryTime({
 *   thickness: '12.5 mm',
 *   moisture: '74 %',
 *   conductivity: 0.035,
 *   permeability: 2.6252e-8,
 *   surfaceTemperature: '30 degC',
 *   condenserTemperature: '-40 degC',
 * }).iceTemperature.value; // ≈ -29.3
 * ```
 */
export function freezeDryTime(input: FreezeDryTimeInput): FreezeDryTime {
  const given = readInput(schema, input);
  const residual = freezeDriedMoisture('sublimationTime');
  const target = given.targetMoisture ?? residual.moisture;
  refuseWetter(given.moisture, target, input.targetMoisture);
  const front = frontOf(given, input);
  const depth = valueIn(given.thickness, 'm') / (given.faces ?? 1);
  const perMilliliter = given.density === undefined ? pieceDensity() : valueIn(given.density, 'g/mL');
  const icePerCubicMeter = perMilliliter * 1000 * (1 - shareLeft(given.moisture, target));
  // through the heat that the layer lets in: the same as through the vapor, and steady where Ps nears P0
  const heat = sublimationEnthalpy(front) * 1000;
  const surface = valueIn(given.surfaceTemperature, 'K');
  const seconds = (icePerCubicMeter * heat * depth ** 2) / (2 * given.conductivity * (surface - front));
  return answer({
    iceTemperature: quantityIn(front, 'K', 'degC'),
    icePressure: { value: icePressure(front), unit: 'Pa' },
    sublimationTime: quantityIn(seconds, 's', 'h'),
    totalTime: quantityIn(seconds / figure(SPLIT.sublimationShare), 's', 'h'),
    basis: [
      basisOf(BALANCE, 'iceTemperature', 'balance of heat and vapor at the ice front'),
      ...iceBasis('icePressure'),
      basisOf(TIME, 'sublimationTime'),
      ...sublimationBasis('sublimationTime'),
      ...(given.targetMoisture === undefined ? residual.basis : []),
      basisOf(SPLIT, 'totalTime', 'share of the time that is sublimation'),
    ],
    cautions: [caution('keep-below-collapse'), caution('freeze-dried-must-be-dry'), caution('estimate')],
  });
}
