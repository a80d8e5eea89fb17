import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, optional, power, readInput, share, time } from '../quantity/fields';
import { mapRange, sureRange } from '../quantity/range';
import { quantityIn, valueIn } from '../quantity/scale';
import type { EnergyNeeded } from './needed';

/** What a machine draws and for how long. */
export const appliance = () =>
  fields({ power: power({ max: { value: 100, unit: 'kW' } }), time: time(), duty: optional(share({ above: 0 })) });
const schema = /* @__PURE__ */ appliance();
export type ApplianceEnergyInput = z.input<typeof schema>;

/**
 * The energy of a machine that is plugged in: a dryer, a freeze-dryer, a freezer that keeps what is in it.
 *
 * energy = power x time x duty. The rated power is the most it draws: where a thermostat or a compressor goes on and
 * off, give the share of the time that it runs, or what a meter shows. `dryerEnergy` adds up a dryer's phases.
 *
 * Source: U.S. Department of Energy, estimating appliance and home electronic energy use.
 *
 * @param input.power - while it runs, above 0 to 100 kW
 * @param input.time - plugged in
 * @param input.duty - share of the time that it runs, above 0 to 1; 1 if not given
 * @returns `energy` in kWh, its ends the same
 * @throws StillroomError OUT_OF_RANGE, MISSING
 *
 * @example
 * ```ts
 * import { applianceEnergy } from 'stillroom/heat';
 *
 * applianceEnergy({ power: '450 W', time: '9 h' }).energy.likely; // => { value: 4.05, unit: 'kWh' }
 * applianceEnergy({ power: '1200 W', time: '1 day', duty: '20 %' }).energy.likely.value; // ≈ 5.76
 * ```
 */
export function applianceEnergy(input: ApplianceEnergyInput): EnergyNeeded {
  const given = readInput(schema, input);
  const joules = valueIn(given.power, 'W') * valueIn(given.time, 's') * (given.duty ?? 1);
  return answer({
    energy: mapRange(sureRange(joules), (each) => quantityIn<'energy'>(each, 'J', 'kWh')),
    basis: [
      { of: 'power and time', kind: 'measured' },
      {
        of: 'energy = power x time x duty',
        kind: 'equation',
        source: 'doe-appliance',
        locator: 'formula and window-fan example',
      },
    ],
    cautions: [],
  });
}
