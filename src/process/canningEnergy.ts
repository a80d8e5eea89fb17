import { answer } from '../common/answer';
import { type EnergyNeeded, kilowattHours } from '../heat/needed';
import { shareBasis, shareOr } from '../heat/tables';
import { fields, optional, power, readInput, share } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity, Range, ShareInput } from '../quantity/types';
import type { NotTested } from '../sources/no';
import { type LoadStep, type LoadTimelineInput, loadTimeline } from './loadTimeline';

const schema = /* @__PURE__ */ fields({
  /** Rated power of the burner. */
  burnerPower: power(),
  /** Share of it that holds the boil or the pressure, above 0 to 1. */
  holdingShare: optional(share({ above: 0 })),
});

export interface CanningEnergyInput extends LoadTimelineInput {
  /** Share of the burner's power that holds the boil or the pressure, above 0 to 100 %; 25 to 70 % when left out. */
  readonly holdingShare?: ShareInput | undefined;
}

export interface CanningEnergy extends EnergyNeeded {
  /** The load has a tested process. */
  readonly tested: true;
  /** Of the energy, what brings water and jars to the boil or to pressure, kWh. */
  readonly heatingUp: Range<Quantity<'energy'>>;
  /** And what holds them there while jars go in, steam vents and the process runs, kWh. */
  readonly holding: Range<Quantity<'energy'>>;
}

/**
 * The energy of one canner load, from cold water to the end of the process; a second load starts hot.
 *
 * energy = burner power x (minutes of heating up + share x minutes held), with the minutes of `loadTimeline`. The burner is
 * full on until the boil or the pressure is there, and holds it at 25 to 70 % of its power (likely 40 %) unless given,
 * which is common practice; it is off while the canner rests, cools and is emptied. The process is never shortened to
 * save energy.
 *
 * @param input - the question of `loadTimeline`, with
 * @returns `energy` in kWh, in the two parts `heatingUp` and `holding`, or the refusal of `testedProcess`
 * @throws StillroomError as `loadTimeline`
 *
 * @example
 * ```ts
 * import { canningEnergy } from 'stillroom/process';
 *
 * const load = canningEnergy({
 *   food: 'peach', form: 'halves', pack: 'hot', jar: 'quart', method: 'boiling-water', elevation: '500 ft',
 *   jars: 7, water: '12 quarts', burnerPower: '2400 W',
 * });
 * load.tested && load.energy.likely.value; // ≈ 2.7
 * ```
 */
export function canningEnergy(input: CanningEnergyInput): CanningEnergy | NotTested {
  const { holdingShare, ...load } = { ...input };
  const given = readInput(schema, { burnerPower: load.burnerPower, holdingShare });
  const timeline = loadTimeline(load);
  if (!timeline.tested) return answer(timeline);
  const kilowatts = valueIn(given.burnerPower, 'kW');
  const share = shareOr(given.holdingShare, 'holding-share');
  const hours = (burns: LoadStep['burner'], end: keyof Range): number =>
    timeline.steps.reduce((sum, { burner, minutes }) => sum + (burner === burns ? minutes[end] / 60 : 0), 0);
  const full = (end: keyof Range) => kilowatts * hours('full', end);
  const held = (end: keyof Range) => kilowatts * share[end] * hours('holding', end);
  const ends = (energy: (end: keyof Range) => number): Range<Quantity<'energy'>> => ({
    low: kilowattHours(energy('low')),
    likely: kilowattHours(energy('likely')),
    high: kilowattHours(energy('high')),
  });
  return answer({
    tested: true,
    energy: ends((end) => full(end) + held(end)),
    heatingUp: ends(full),
    holding: ends(held),
    basis: [
      ...timeline.basis.map((line) => ({ ...line, of: 'energy', note: line.note ?? line.of })),
      shareBasis(given.holdingShare, 'holding-share', 'holding'),
    ],
    cautions: timeline.cautions,
  });
}
