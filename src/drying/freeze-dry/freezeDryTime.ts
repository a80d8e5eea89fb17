import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { iceBasis, icePressure, iceTemperature, sublimationBasis, sublimationEnthalpy } from '../../heat/ice';
import {
  choice,
  density,
  fields,
  length,
  list,
  mass,
  number,
  optional,
  pressure,
  readInput,
  share,
  temperature,
  time,
} from '../../quantity/fields';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { refuseWetter, shareLeft } from '../../solution/massBalance';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { caution } from '../cautions';
import { freezeDriedMoisture } from '../keep/storage';
import { freezeDryingRow } from './freezeDryLoad';

const BALANCE = freezeDryingRow('energyMassBalance');
const TIME = freezeDryingRow('sublimationTime');
const SPLIT = freezeDryingRow('coffeeExtractSplit');
/** Of a 12.5 mm layer of coffee extract: 60 % of the time went into sublimation, 40 % into the bound water. */
const SUBLIMATION_SHARE = 0.6;
const TRIPLE_K = 273.16;

const schema = fields({
  thickness: length({ max: { value: 10, unit: 'cm' } }),
  faces: optional(choice('which faces dry', ['one', 'both'])),
  moisture: share({ below: 1 }),
  targetMoisture: optional(share({ below: 1 })),
  density: optional(density({ max: { value: 2, unit: 'g/mL' } })),
  conductivity: number('thermal conductivity of the dry layer in W/(m K), above 0 and at most 10', {
    above: 0,
    max: 10,
  }),
  permeability: number('permeability of the dry layer in kg/(m s Pa), above 0 and at most 1', { above: 0, max: 1 }),
  surface: temperature({ min: { value: -80, unit: 'degC' }, max: { value: 120, unit: 'degC' } }),
  vapour: optional(pressure({ min: { value: 0, unit: 'Pa' } })),
  condenser: optional(temperature({ min: { value: -120, unit: 'degC' }, max: { value: 0, unit: 'degC' } })),
});
export type FreezeDryTimeInput = z.input<typeof schema>;

export interface FreezeDryTime {
  /** Of the ice front while it retreats: compare with `freezeDryCollapse`. */
  readonly iceTemperature: Quantity<'temperature'>;
  /** Of the vapour at the ice front. */
  readonly icePressure: Quantity<'pressure'>;
  /** Until the ice is gone. */
  readonly sublimationTime: Quantity<'time'>;
  /** With the bound water too, at the split of the one published layer. */
  readonly totalTime: Quantity<'time'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** K of the ice front: heat through the dry layer equals heat carried off by the vapour; by bisection. */
function frontKelvin(conductivity: number, permeability: number, surface: number, vapour: number): number {
  const surplus = (kelvin: number): number =>
    conductivity * (surface - kelvin) -
    sublimationEnthalpy(kelvin) * 1000 * permeability * (icePressure(kelvin) - vapour);
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

/**
 * How cold the ice front stays and how long the ice takes to leave a layer in a freeze-dryer, by the model of the
 * uniformly retreating ice front with the dry layer in control.
 *
 * kt (T0 - Ts) = dHs K (Ps - P0), with Ps the vapour pressure of ice at Ts; time = ice L2 / (2 K (Ps - P0)), ice in kg a
 * cubic metre of layer and L the depth that dries (half the thickness where both faces dry). The time is to the end of
 * sublimation; `totalTime` adds the bound water in the 60 to 40 split published for one layer of coffee extract.
 *
 * @param input.thickness - of the frozen layer, up to 10 cm
 * @param input.faces - `one` (on a tray; if not given) or `both`
 * @param input.moisture - of the food, wet basis; `targetMoisture` when dry, 2 % if not given
 * @param input.density - of the layer; 1 g/mL if not given
 * @param input.conductivity - thermal, of the dry layer, W/(m K); about 0.035 for coffee extract
 * @param input.permeability - of the dry layer, kg/(m s Pa); about 2.6e-8 for coffee extract
 * @param input.surface - temperature of the dry surface
 * @param input.vapour - pressure of water vapour in the chamber, or
 * @param input.condenser - temperature of the condenser, which sets it
 * @returns `iceTemperature` in degC, `icePressure` in Pa, times in h
 * @throws StillroomError CONTRADICTION for both or neither of `vapour` and `condenser`, or where the ice would melt or
 *   not sublime at all
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
 *   surface: '30 degC',
 *   condenser: '-40 degC',
 * }).iceTemperature.value; // ≈ -29.3
 * ```
 */
export function freezeDryTime(input: FreezeDryTimeInput): FreezeDryTime {
  const given = readInput(schema, input);
  if ((given.vapour === undefined) === (given.condenser === undefined)) {
    fail('CONTRADICTION', 'condenser', input.condenser, 'either the condenser or the vapour, and not both');
  }
  const residual = freezeDriedMoisture();
  const target = given.targetMoisture ?? residual.moisture;
  refuseWetter(given.moisture, target, input.targetMoisture);
  const vapour =
    given.condenser === undefined
      ? valueIn(given.vapour as Quantity<'pressure'>, 'Pa')
      : icePressure(valueIn(given.condenser, 'K'));
  const surface = valueIn(given.surface, 'K');
  const coldest = vapour > icePressure(50) ? iceTemperature(Math.min(vapour, icePressure(TRIPLE_K))) : 50;
  if (surface <= coldest || vapour >= icePressure(TRIPLE_K)) {
    fail('CONTRADICTION', 'surface', input.surface, 'a surface warmer than ice at the pressure of the vapour');
  }
  const front = frontKelvin(given.conductivity, given.permeability, surface, vapour);
  if (front > TRIPLE_K) {
    fail('CONTRADICTION', 'surface', input.surface, 'a surface cool enough that the ice does not melt');
  }
  const ice = icePressure(front);
  const depth = valueIn(given.thickness, 'm') / (given.faces === 'both' ? 2 : 1);
  const perMillilitre = given.density === undefined ? 1 : valueIn(given.density, 'g/mL');
  const icePerCubicMetre = perMillilitre * 1000 * (1 - shareLeft(given.moisture, target));
  // through the heat that the layer lets in: the same as through the vapour, and steady where Ps nears P0
  const heat = sublimationEnthalpy(front) * 1000;
  const seconds = (icePerCubicMetre * heat * depth ** 2) / (2 * given.conductivity * (surface - front));
  return answer({
    iceTemperature: quantityIn(front, 'K', 'degC'),
    icePressure: { value: ice, unit: 'Pa' },
    sublimationTime: quantityIn(seconds, 's', 'h'),
    totalTime: quantityIn(seconds / SUBLIMATION_SHARE, 's', 'h'),
    basis: joinBasis(
      [basisOf(BALANCE, 'balance of heat and vapour at the ice front'), basisOf(TIME, 'time of sublimation')],
      [basisOf(SPLIT, 'share of the time that is sublimation')],
      iceBasis('icePressure'),
      sublimationBasis('sublimationTime'),
      given.targetMoisture === undefined ? residual.basis : [],
    ),
    cautions: [caution('keep-below-collapse'), caution('freeze-dried-must-be-dry'), caution('estimate')],
  });
}

const drynessSchema = fields({
  weighings: list(
    'the weighings, two or more',
    fields({ time: time({ min: { value: 0, unit: 's' } }), weight: mass() }),
    2,
    1000,
  ),
  tolerance: optional(share({ above: 0, max: 0.05 })),
});
export type DrynessByWeightInput = z.input<typeof drynessSchema>;

export interface DrynessByWeight {
  readonly verdict: 'dry' | 'not dry' | 'too soon';
  /** Lost between the last two weighings. */
  readonly lost: Quantity<'mass'>;
  /** The same as a share of the weight. */
  readonly lostShare: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Common practice: what a kitchen scale of 1 g can tell on a tray of 500 g, over an hour or more. */
const STEADY = 0.002;
const LEAST_HOURS = 1;

/**
 * Whether a load is dry, by successive weighings: it is when another hour or more takes nothing off that a kitchen
 * scale can see. Common practice in freeze-drying, where the dryness test by touch says little.
 *
 * @param input.weighings - `time` and `weight`, two or more, each later than the last; weigh before the pieces warm up
 *   in moist air
 * @param input.tolerance - the loss between the last two weighings that counts as none, as a share of the weight, above
 *   0 to 0.05; 0.002 if not given
 * @returns `verdict`: `too soon` where the last two weighings are less than an hour apart
 * @throws StillroomError CONTRADICTION for times that repeat or go back, and weights that rise
 *
 * @example
 * ```ts
 * import { drynessByWeight } from 'stillroom/drying';
 *
 * drynessByWeight({
 *   weighings: [
 *     { time: '24 h', weight: '512 g' },
 *     { time: '26 h', weight: '504 g' },
 *   ],
 * }).verdict; // => 'not dry'
 * ```
 */
export function drynessByWeight(input: DrynessByWeightInput): DrynessByWeight {
  const { weighings, tolerance = STEADY } = readInput(drynessSchema, input);
  const { unit } = (weighings[0] as (typeof weighings)[number]).weight;
  const hours = weighings.map((weighing) => valueIn(weighing.time, 'h'));
  const weights = weighings.map((weighing) => valueIn(weighing.weight, unit));
  for (let i = 1; i < weighings.length; i++) {
    if ((hours[i] as number) <= (hours[i - 1] as number)) {
      fail('CONTRADICTION', `weighings[${i}].time`, input.weighings[i]?.time, 'a time after the weighing before');
    }
    if ((weights[i] as number) > (weights[i - 1] as number)) {
      fail(
        'CONTRADICTION',
        `weighings[${i}].weight`,
        input.weighings[i]?.weight,
        'at most the weight before; drying only takes away',
      );
    }
  }
  const end = weighings.length - 1;
  const [before, after] = [weights[end - 1] as number, weights[end] as number];
  const lost = before - after;
  const apart = (hours[end] as number) - (hours[end - 1] as number);
  return answer({
    verdict: lost / before > tolerance ? 'not dry' : apart < LEAST_HOURS ? 'too soon' : 'dry',
    lost: { value: lost, unit },
    lostShare: lost / before,
    basis: [
      { of: 'weighings', kind: 'measured' },
      { of: 'dry when an hour or more takes off no more than the tolerance', kind: 'common-practice' },
    ],
    cautions: [caution('freeze-dried-must-be-dry')],
  });
}
