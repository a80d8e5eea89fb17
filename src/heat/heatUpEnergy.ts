import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, mass, number, optional, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { MassInput, ShareInput, TemperatureInput } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { burnerBasis, burnerShare, efficiency } from './burner';
import { dryingHeatBasis, heatToDry } from './dryingHeat';
import { drawn, figure, figureBasis, type HeatNeeded } from './needed';

const unfrozen = () => temperature({ min: { value: 0, unit: 'degC' }, max: { value: 150, unit: 'degC' } });
const schema = /* @__PURE__ */ fields({
  mass: mass(),
  from: unfrozen(),
  to: unfrozen(),
  food: optional(choice('what is heated', ['water', 'food'])),
  specificHeat: optional(number('a specific heat in kJ/(kg K), from 0.5 to 5', { min: 0.5, max: 5 })),
  efficiency: optional(efficiency()),
});

export interface HeatUpEnergyInput {
  /** What is heated. */
  readonly mass: MassInput;
  /** Where it starts, 0 to 150 degC. */
  readonly from: TemperatureInput;
  /** Where it ends, at least `from`. */
  readonly to: TemperatureInput;
  /** Water when left out, which takes the most; or produce. */
  readonly food?: 'water' | 'food' | undefined;
  /** Its own specific heat, kJ/(kg K), in place of `food`; see `initialFreezingPoint` and `foodProperties`. */
  readonly specificHeat?: number | undefined;
  /** Share of the burner's energy that reaches the pot, 5 to 100 %; 35 to 80 % when left out. */
  readonly efficiency?: ShareInput | undefined;
}

/**
 * The energy to heat up water or food, without boiling any away.
 *
 * heat = mass x specific heat x (to - from); energy = heat / efficiency. Specific heat: water 4.186, produce 3.8
 * kJ/(kg K). The efficiency is 35 to 80 % (likely 55 %) unless given, from a gas flame to induction; common practice.
 *
 * Source: specific heats as printed in a textbook example of drying.
 *
 * @param input.mass - what is heated
 * @param input.from - where it starts, 0 to 150 degC
 * @param input.to - where it ends, the same or above
 * @param input.food - `water` (if not given) or `food`
 * @param input.specificHeat - kJ/(kg K), 0.5 to 5, in place of `food`
 * @param input.efficiency - share of the burner's energy that reaches the pot, 0.05 to 1
 * @returns `energy` in kWh, `heat` in kJ
 * @throws StillroomError CONTRADICTION when `to` is below `from`, or both `food` and `specificHeat` are given;
 *   OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { heatUpEnergy } from 'stillroom/heat';
 *
 * const water = heatUpEnergy({ mass: '10 kg', from: '15 degC', to: '95 degC', efficiency: '50 %' });
 * water.heat; // => { value: 3348.8, unit: 'kJ' }
 * water.energy.likely.value; // ≈ 1.86
 * ```
 */
export function heatUpEnergy(input: HeatUpEnergyInput): HeatNeeded {
  const given = readInput(schema, input);
  const [from, to] = [valueIn(given.from, 'degC'), valueIn(given.to, 'degC')];
  if (to < from) fail('CONTRADICTION', 'to', input.to, 'a temperature of at least `from`');
  if (given.food !== undefined && given.specificHeat !== undefined) {
    fail('CONTRADICTION', 'specificHeat', input.specificHeat, 'either the food or its specific heat, and not both');
  }
  const kilograms = valueIn(given.mass, 'kg');
  const isFood = given.food === 'food';
  const kilojoules = isFood
    ? heatToDry(kilograms, 0, from, to) // no water leaves: warming alone
    : kilograms * (given.specificHeat ?? figure('water-heat').value) * (to - from);
  const heatBasis: Basis =
    given.specificHeat === undefined
      ? isFood
        ? (dryingHeatBasis[0] as Basis)
        : figureBasis('water-heat')
      : { of: 'specific heat', kind: 'measured' };
  return answer({
    energy: drawn(kilojoules, burnerShare(given.efficiency)),
    heat: { value: kilojoules, unit: 'kJ' },
    basis: [heatBasis, burnerBasis(given.efficiency)],
    cautions: [caution('estimate')],
  });
}
