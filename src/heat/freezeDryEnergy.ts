import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import { caution } from '../sources/cautions';
import { mass } from '../words/mass';
import { efficiency } from '../words/shares';
import { iceTemperatureField, sublimationBasis, sublimationEnthalpy } from './ice';
import { drawn, type HeatNeeded } from './needed';
import { shareBasis, shareOr, usual } from './tables';

/** The heat goes into the ice at the tray, and out of the vapor again at the condenser. */
const WAYS = 2;

const schema = /* @__PURE__ */ fields({
  /** The ice that leaves the load; `freezeDryLoad` answers it. */
  ice: mass(),
  /** How cold the ice is while it sublimes, 30 to 273.16 K; -20 degC when left out, and it hardly matters. */
  temperature: optional(iceTemperatureField(30)),
  /** The two heats of the ice as a share of what the machine draws, 1 to 100 %; 12 to 60 % (likely 20 %) when left out. */
  efficiency: optional(efficiency({ min: 0.01, max: 1 })),
});
export type FreezeDryEnergyInput = z.input<typeof schema>;

/**
 * The heat and the energy that freeze-drying takes.
 *
 * heat = ice x enthalpy of sublimation, by Murphy and Koop (2005) Eq. 5; energy = 2 x heat / efficiency, for the
 * condenser takes the same heat out again. The efficiency is 12 to 60 % (likely 20 %) unless given, which is common
 * practice: these tables hold no published figure. Where you know the machine's power or read a meter, ask
 * for the `machine`.
 *
 * Source: Murphy and Koop (2005) Eq. 5, recalled, and within 0.2 kJ/kg of the IAPWS enthalpies from -35 to 0 degC.
 *
 * @returns `energy` in kWh; `heat` in kJ, to sublime the ice once
 * @throws StillroomError OUT_OF_RANGE, MISSING
 */
export function freezeDryEnergy(input: FreezeDryEnergyInput): HeatNeeded {
  const { ice, ...given } = readInput(schema, input);
  const kelvin = valueIn(given.temperature ?? { value: usual('ice-temperature').likely, unit: 'degC' }, 'K');
  const kilojoules = valueIn(ice, 'kg') * sublimationEnthalpy(kelvin);
  return answer({
    energy: drawn(WAYS * kilojoules, shareOr(given.efficiency, 'freeze-dryer-share')),
    heat: { value: kilojoules, unit: 'kJ' },
    basis: [...sublimationBasis('heat'), shareBasis(given.efficiency, 'freeze-dryer-share', 'energy')],
    cautions: [caution('estimate')],
  });
}
