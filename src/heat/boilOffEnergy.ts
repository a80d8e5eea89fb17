import { answer } from '../common/answer';
import { fields, kitchenElevation, mass, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { LengthInput, MassInput, Quantity, ShareInput } from '../quantity/types';
import { joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { boilingTemperature } from '../steam/boilingTemperature';
import { latentHeat } from '../steam/latentHeat';
import { burnerBasis, burnerShare, efficiency } from './burner';
import { drawn, type HeatNeeded } from './needed';

/** Where the kitchen does not say: near the sea, where the boil is hottest. */
const SEA_LEVEL: Quantity<'length'> = { value: 0, unit: 'm' };

const schema = /* @__PURE__ */ fields({
  water: mass(),
  efficiency: optional(efficiency()),
  elevation: optional(kitchenElevation()),
});

export interface BoilOffEnergyInput {
  /** What boils away; `concentrate` and `jamBalance` answer it as `waterRemoved`. */
  readonly water: MassInput;
  /** Share of the burner's energy that reaches the pot, 5 to 100 %; 35 to 80 % when left out. */
  readonly efficiency?: ShareInput | undefined;
  /** Of the kitchen, up to 5,000 m; sea level when left out. */
  readonly elevation?: LengthInput | undefined;
}

/**
 * The energy to boil water away, as in a jam or a butter: from the boil on, without heating up.
 *
 * heat = water x latent heat at the boiling temperature of the elevation; energy = heat / efficiency, 35 to 80 % (likely
 * 55 %) unless given; common practice. What the walls of the pot give off counts among the losses of the burner.
 *
 * Source: IAPWS SR1-86(1992); U.S. Standard Atmosphere 1976.
 *
 * @param input.water - what boils away
 * @param input.efficiency - share of the burner's energy that reaches the pot, 0.05 to 1
 * @param input.elevation - of the kitchen, above -500 m to 5,000 m; sea level if not given
 * @returns `energy` in kWh, `heat` in kJ
 * @throws StillroomError OUT_OF_RANGE, MISSING
 *
 * @example
 * ```ts
 * import { boilOffEnergy } from 'stillroom/heat';
 *
 * const jam = boilOffEnergy({ water: '3.65 kg', efficiency: '55 %' });
 * jam.heat.value; // ≈ 8237
 * jam.energy.likely.value; // ≈ 4.16
 * ```
 */
export function boilOffEnergy(input: BoilOffEnergyInput): HeatNeeded {
  const { water, efficiency: share, elevation = SEA_LEVEL } = readInput(schema, input);
  const boil = boilingTemperature({ elevation });
  const latent = latentHeat({ temperature: boil.temperature });
  const kilojoules = valueIn(water, 'kg') * valueIn(latent.energy, 'kJ');
  return answer({
    energy: drawn(kilojoules, burnerShare(share)),
    heat: { value: kilojoules, unit: 'kJ' },
    basis: joinBasis(boil.basis, latent.basis, [burnerBasis(share)]),
    cautions: [caution('estimate')],
  });
}
