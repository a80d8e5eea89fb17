import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, mass, optional, readInput, share } from '../quantity/fields';
import { sureRange } from '../quantity/range';
import { valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import { joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { appliance, applianceEnergy } from './applianceEnergy';
import { sublimationHeat } from './ice';
import { drawn, type HeatNeeded } from './needed';

/** The ice is about this cold while it sublimes, as in `freezeDryLoad`; the heat hardly changes with it. */
const ICE: Quantity<'temperature'> = { value: -20, unit: 'degC' };
/** The heat goes into the ice at the tray, and out of the vapour again at the condenser. */
const WAYS = 2;
/**
 * Share of a freeze-dryer's energy that is one of the two heats; the rest runs the compressor, the vacuum pump and the
 * freezing. Common practice, no source: about 13, 8 and 2.6 kWh for a kilogram of ice.
 */
export const FREEZE_DRYER: Range<number> = { low: 0.12, likely: 0.2, high: 0.6 };

const schema = /* @__PURE__ */ fields({
  ice: mass(),
  efficiency: optional(share({ min: 0.01, max: 1 })),
  machine: optional(appliance()),
});
export type FreezeDryEnergyInput = z.input<typeof schema>;

/**
 * The energy that freeze-drying takes.
 *
 * energy = 2 x ice x enthalpy of sublimation / efficiency: the heat that turns the ice to vapour, and the same again
 * that the condenser takes out of it. The efficiency is 12 to 60 % (likely 20 %) unless given, which is common practice:
 * no published figure was found, and a meter on the machine says more. Where the machine's power is known, power x time
 * x duty.
 *
 * Source: enthalpy of sublimation as in `sublimationHeat`, at -20 degC.
 *
 * @param input.ice - that leaves the load; `freezeDryLoad` answers it
 * @param input.efficiency - the two heats as a share of what the machine draws, 0.01 to 1; or
 * @param input.machine - its `power`, `time` and, where it goes on and off, `duty`
 * @returns `energy` in kWh; `heat` in kJ, to sublime the ice once
 * @throws StillroomError CONTRADICTION with both `efficiency` and `machine`, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { freezeDryEnergy } from 'stillroom/heat';
 *
 * const batch = freezeDryEnergy({ ice: '3 kg' });
 * batch.heat.value; // ≈ 8514
 * batch.energy.likely.value; // ≈ 23.6
 * ```
 */
export function freezeDryEnergy(input: FreezeDryEnergyInput): HeatNeeded {
  const { ice, efficiency, machine } = readInput(schema, input);
  if (efficiency !== undefined && machine !== undefined) {
    fail('CONTRADICTION', 'machine', input.machine, 'either the efficiency or what the machine draws, and not both');
  }
  const sublimation = sublimationHeat({ temperature: ICE });
  const kilojoules = valueIn(ice, 'kg') * valueIn(sublimation.heatPerKilogram, 'kJ');
  const heat: Quantity<'energy'> = { value: kilojoules, unit: 'kJ' };
  if (machine !== undefined) {
    const run = applianceEnergy(machine);
    return answer({ energy: run.energy, heat, basis: joinBasis(sublimation.basis, run.basis), cautions: [] });
  }
  return answer({
    energy: drawn(WAYS * kilojoules, efficiency === undefined ? FREEZE_DRYER : sureRange(efficiency)),
    heat,
    basis: joinBasis(sublimation.basis, [
      {
        of: "share of the machine's energy that is heat of the ice",
        kind: efficiency === undefined ? 'common-practice' : 'measured',
      },
    ]),
    cautions: [caution('estimate')],
  });
}
