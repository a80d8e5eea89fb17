import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, list, number, optional, readInput, share } from '../quantity/fields';
import { mapRange, sureRange } from '../quantity/range';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { measured } from '../sources/basis';
import { vaporizationBasis } from '../steam/water';
import { energy } from '../words/energy';
import { mass } from '../words/mass';
import { power } from '../words/power';
import { time } from '../words/time';
import { GUIDE_DRYING_TEMPERATURE, latentHeatAt } from './dryingHeat';
import type { EnergyNeeded } from './needed';
import { figureBasis } from './tables';

const machinePower = () => power({ max: { value: 100, unit: 'kW' } });
const duty = () => share({ above: 0 });
const phase = () =>
  fields({
    /** What it draws while it runs, above 0 to 100 kW. */
    power: machinePower(),
    /** How long. */
    time: time(),
    /** Share of the time that it runs, above 0 to 100 %; all of it when left out. */
    duty: optional(duty()),
  });
const schema = /* @__PURE__ */ fields({
  /** What it draws while it runs, above 0 to 100 kW; with `time`. */
  power: optional(machinePower()),
  /** How long it is plugged in. */
  time: optional(time()),
  /** Share of the time that it runs, above 0 to 100 %; all of it when left out. */
  duty: optional(duty()),
  /** Instead of `power` and `time`: the phases of a run, such as warming up and holding; 1 to 100. */
  phases: optional(list('the phases of the run', phase(), 1, 100)),
  /** Instead of both: what a meter showed, or the heat of the fuel burned. */
  metered: optional(energy()),
  /** What the load of a dryer lost, for the share that dried. */
  waterRemoved: optional(mass()),
  /** kJ for a kilogram of water, 2,000 to 3,000; that of water at 140 degF when left out. */
  latentHeat: optional(number('latent heat in kJ/kg, from 2,000 to 3,000', { min: 2000, max: 3000 })),
});
export type ApplianceEnergyInput = z.input<typeof schema>;

export interface ApplianceEnergy extends EnergyNeeded {
  /** Energy for each kilogram of water removed, kWh; where `waterRemoved` is given. */
  readonly perKilogramWater?: Quantity<'energy'>;
  /** Share of the energy that evaporated water, for the `efficiency` of `drying`; where `waterRemoved` is given. */
  readonly efficiency?: number;
}

type Given = z.output<typeof schema>;
/** Joules, by the one way that is given. */
function joulesOf(
  { power: watts, time: long, duty: part, phases, metered }: Given,
  asked: ApplianceEnergyInput,
): number {
  const ways = [watts ?? long ?? part, phases, metered].filter((way) => way !== undefined);
  if (ways.length > 1) {
    const second = metered === undefined ? 'phases' : 'metered';
    fail('CONTRADICTION', second, asked[second], 'power and time, or phases, or metered: only one of them');
  }
  if (metered !== undefined) return valueIn(metered, 'J');
  if (phases === undefined) {
    if (watts === undefined) fail('MISSING', 'power', undefined, 'power and time, or phases, or metered');
    if (long === undefined) fail('MISSING', 'time', undefined, 'how long it is plugged in');
  }
  const runs = phases ?? [{ power: watts as Quantity<'power'>, time: long as Quantity<'time'>, duty: part }];
  return runs.reduce((sum, run) => sum + valueIn(run.power, 'W') * valueIn(run.time, 's') * (run.duty ?? 1), 0);
}

/**
 * The energy of a machine that is plugged in: a dryer, a freeze-dryer, a freezer that keeps what is in it; and how much
 * of a dryer's energy evaporated water.
 *
 * energy = sum of power x time x duty, or what a meter shows. The rated power is the most it draws: where a thermostat or
 * a compressor goes on and off, give the share of the time that it runs. efficiency = water x latent heat / energy.
 *
 * Source: U.S. Department of Energy, estimating appliance and home electronic energy use.
 *
 * @returns `energy` in kWh, its three ends the same
 * @throws StillroomError MISSING, CONTRADICTION with more than one of the three ways, OUT_OF_RANGE
 */
export function applianceEnergy(input: ApplianceEnergyInput): ApplianceEnergy {
  const given = readInput(schema, input);
  if (given.latentHeat !== undefined && given.waterRemoved === undefined) {
    fail('MISSING', 'waterRemoved', undefined, 'the water that the latent heat is for');
  }
  const joules = joulesOf(given, input);
  const inKilowattHours = (each: number) => quantityIn<'energy'>(each, 'J', 'kWh');
  const water = given.waterRemoved === undefined ? undefined : valueIn(given.waterRemoved, 'kg');
  const latent = given.latentHeat ?? latentHeatAt(valueIn(GUIDE_DRYING_TEMPERATURE, 'degC'));
  return answer({
    energy: mapRange(sureRange(joules), inKilowattHours),
    ...(water === undefined
      ? {}
      : { perKilogramWater: inKilowattHours(joules / water), efficiency: (water * latent * 1000) / joules }),
    basis: [
      measured('energy', given.metered === undefined ? 'power and time' : 'the meter'),
      ...(given.metered === undefined
        ? [
            {
              of: 'energy',
              kind: 'equation' as const,
              source: 'doe-appliance',
              locator: 'formula and window-fan example',
              note: 'energy = power x time x duty',
            },
          ]
        : []),
      ...(water === undefined ? [] : [measured('efficiency', 'water removed')]),
      ...(water === undefined || given.latentHeat !== undefined
        ? []
        : [vaporizationBasis('efficiency'), figureBasis('dryer-temperature', 'efficiency')]),
    ],
    cautions: [],
  });
}
