import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { balanceBasis, refuseWetter, shareLeft } from '../solution/massBalance';
import { caution } from '../sources/cautions';
import { mass } from '../words/mass';
import { efficiency, moisture, targetMoisture } from '../words/shares';
import { temperature } from '../words/temperature';
import { dryerTemperature, dryingHeatBasis, GUIDE_DRYING_TEMPERATURE, heatToDry, START_C } from './dryingHeat';
import { drawn, type HeatNeeded } from './needed';
import { figureBasis, shareBasis, shareOr } from './tables';

const schema = /* @__PURE__ */ fields({
  /** The food as it goes into the dryer, ready: washed, trimmed, cut. */
  fresh: mass(),
  /** Its water as a share of its mass, 0 to below 1 or percent. */
  moisture: moisture({ below: 1 }),
  /** The same when it is dry, at most `moisture`. */
  targetMoisture: targetMoisture({ below: 1 }),
  /** How warm the food goes in, 0 to 100 degC; 21 degC when left out. */
  startTemperature: optional(temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } })),
  /** Of the dryer, 20 to 100 degC and at least `startTemperature`; 140 degF when left out. */
  temperature: optional(dryerTemperature()),
  /** Share of the dryer's energy that dries, 5 to 100 %; 25 to 100 % (likely 50 %) when left out. */
  efficiency: optional(efficiency({ min: 0.05, max: 1 })),
});
export type DryEnergyInput = z.input<typeof schema>;

export interface DryEnergy extends HeatNeeded {
  /** The water that leaves the food, in the unit of `fresh`. */
  readonly waterRemoved: Quantity<'mass'>;
}

/**
 * The heat and the energy that drying takes: warming the food and evaporating its water.
 *
 * heat = fresh x 3.8 kJ/(kg K) x (dryer - start) + water x latent heat at the dryer's temperature; energy = heat /
 * efficiency, 25 to 100 % (likely 50 %) unless given. The heat is the least that does it; what a dryer really draws, the
 * weather and the trays decide too. Where you know its power or read a meter, ask for the `machine`.
 *
 * Source: printed examples give 26 % (a diesel tray dryer), 47 % (a gas dryer) and, for 18 lb of green beans in a home
 * dryer, 5.4 kWh, of which 95 % is the least heat; the middle of the range is common practice.
 *
 * @returns `energy` in kWh, `heat` in kJ, `waterRemoved` in the unit of `fresh`
 * @throws StillroomError CONTRADICTION when the target is wetter than the start, or the dryer colder than the food
 */
export function dryEnergy(input: DryEnergyInput): DryEnergy {
  const { fresh, startTemperature: start, ...given } = readInput(schema, input);
  refuseWetter(given.moisture, given.targetMoisture, input.targetMoisture);
  const startC = start === undefined ? START_C : valueIn(start, 'degC');
  const dryerC = valueIn(given.temperature ?? GUIDE_DRYING_TEMPERATURE, 'degC');
  if (dryerC < startC) fail('CONTRADICTION', 'temperature', input.temperature, 'a dryer warmer than the food');
  const removed = 1 - shareLeft(given.moisture, given.targetMoisture);
  const kilograms = valueIn(fresh, 'kg');
  const kilojoules = heatToDry(kilograms, kilograms * removed, startC, dryerC);
  return answer({
    energy: drawn(kilojoules, shareOr(given.efficiency, 'dryer-share')),
    heat: { value: kilojoules, unit: 'kJ' },
    waterRemoved: { value: fresh.value * removed, unit: fresh.unit },
    basis: [
      balanceBasis('waterRemoved'),
      ...dryingHeatBasis('heat'),
      ...(given.efficiency === undefined
        ? ['dryer-diesel', 'dryer-gas', 'dryer-beans'].map((id) => figureBasis(id, 'energy'))
        : []),
      shareBasis(given.efficiency, 'dryer-share', 'energy'),
    ],
    cautions: [caution('estimate')],
  });
}
