import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, kitchenElevation, optional, power, readInput, share, time, volume } from '../quantity/fields';
import { mapRange, sureRange } from '../quantity/range';
import { valueIn } from '../quantity/scale';
import type { LengthInput, PowerInput, ShareInput, TimeInput, VolumeInput } from '../quantity/types';
import { caution } from '../sources/cautions';
import { boilOffEnergy } from './boilOffEnergy';
import { efficiency, HOLDING, holdingBasis } from './burner';
import { type EnergyNeeded, kilowattHours } from './needed';

const schema = /* @__PURE__ */ fields({
  time: time({ max: { value: 7, unit: 'day' } }),
  burnerPower: optional(power({ max: { value: 100, unit: 'kW' } })),
  holding: optional(share({ above: 0 })),
  evaporationPerHour: optional(volume({ max: { value: 100, unit: 'L' } })),
  efficiency: optional(efficiency()),
  elevation: optional(kitchenElevation()),
});

/** Either the burner, or the water that boils away each hour. */
export type BoilingEnergyInput = {
  /** How long it boils, up to 7 days. */
  readonly time: TimeInput;
} & (
  | {
      /** The burner's rated power, up to 100 kW. */
      readonly burnerPower: PowerInput;
      /** Share of it that holds the boil, above 0 to 100 %; 25 to 70 % when left out. */
      readonly holding?: ShareInput | undefined;
      readonly evaporationPerHour?: undefined;
      readonly efficiency?: undefined;
      readonly elevation?: undefined;
    }
  | {
      /** What boils away in an hour, up to 100 L. */
      readonly evaporationPerHour: VolumeInput;
      /** Share of the burner's energy that reaches the pot, 5 to 100 %; 35 to 80 % when left out. */
      readonly efficiency?: ShareInput | undefined;
      /** Of the kitchen; sea level when left out. */
      readonly elevation?: LengthInput | undefined;
      readonly burnerPower?: undefined;
      readonly holding?: undefined;
    }
);

/**
 * The energy to keep a pot at the boil, once it boils.
 *
 * By the burner: energy = rated power x share x time, the share of a covered pot from 25 to 70 % (likely 40 %) unless
 * given; common practice, for no published figure was found. By the water that boils away: that of `boilOffEnergy` for
 * water an hour x time, a litre weighing 1 kg; the better of the two where it has been measured.
 *
 * @param input - `time`: how long it boils, above 0 to 7 days; with
 * `burnerPower`, rated, up to 100 kW, and `holding`, the share of it that holds the boil, above 0 to 1; or with
 * `evaporationPerHour`, what boils away in an hour, up to 100 L, `efficiency`, the share of the burner's energy that
 * reaches the pot, 0.05 to 1, and `elevation` of the kitchen; sea level if not given
 * @returns `energy` in kWh; by the water also `heat` in kJ
 * @throws StillroomError MISSING with neither burner nor evaporation, CONTRADICTION with both or with a field of the
 *   other, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { boilingEnergy } from 'stillroom/heat';
 *
 * boilingEnergy({ time: '30 min', burnerPower: '2 kW' }).energy.likely; // => { value: 0.4, unit: 'kWh' }
 * boilingEnergy({ time: '30 min', evaporationPerHour: '1 L' }).energy.likely.value; // ≈ 0.57
 * ```
 */
export function boilingEnergy(input: BoilingEnergyInput): EnergyNeeded {
  const given = readInput(schema, input);
  const hours = valueIn(given.time, 'h');
  if (given.evaporationPerHour !== undefined) {
    refuse(input, ['burnerPower', 'holding'], 'the water that boils away or the burner, and not both');
    return answer(
      boilOffEnergy({
        water: { value: valueIn(given.evaporationPerHour, 'L') * hours, unit: 'kg' },
        efficiency: given.efficiency,
        elevation: given.elevation,
      }),
    );
  }
  if (given.burnerPower === undefined) {
    fail('MISSING', 'burnerPower', undefined, "the burner's rated power, or what boils away in an hour");
  }
  refuse(input, ['efficiency', 'elevation'], 'no such field with the rated power');
  const kilowatts = valueIn(given.burnerPower, 'kW');
  return answer({
    energy: mapRange(given.holding === undefined ? HOLDING : sureRange(given.holding), (share) =>
      kilowattHours(kilowatts * share * hours),
    ),
    basis: [{ of: 'rated power of the burner', kind: 'measured' }, holdingBasis(given.holding)],
    cautions: [caution('estimate')],
  });
}

/** The fields that belong to the other way of asking. */
function refuse(input: BoilingEnergyInput, names: readonly (keyof BoilingEnergyInput)[], expected: string): void {
  for (const name of names) if (input[name] !== undefined) fail('CONTRADICTION', name, input[name], expected);
}
