import { fail, within } from '../errors/StillroomError';
import { type ApplianceEnergy, type ApplianceEnergyInput, applianceEnergy } from './applianceEnergy';
import { type DryEnergy, type DryEnergyInput, dryEnergy } from './dryEnergy';
import { type FreezeDryEnergyInput, freezeDryEnergy } from './freezeDryEnergy';
import type { HeatNeeded } from './needed';
import { type StoveEnergy, type StoveEnergyInput, stoveEnergy } from './stoveEnergy';

/** A pot on the stove: heated up, boiled down, held at the boil. */
export interface CookingWork {
  /** What is heated up, boiled off, held. */
  readonly cooking: StoveEnergyInput;
}
/** Food in a dryer, by its water. */
export interface DryingWork {
  /** The food, and its moisture before and after. */
  readonly drying: DryEnergyInput;
}
/** Food in a freeze-dryer, by its ice. */
export interface FreezeDryingWork {
  /** The ice that leaves the load. */
  readonly freezeDrying: FreezeDryEnergyInput;
}
/** A machine that is plugged in, by its power or a meter. */
export interface MachineWork {
  /** Its power and time, its phases, or what a meter showed. */
  readonly machine: ApplianceEnergyInput;
}
/** One piece of work. */
export type EnergyNeededInput = CookingWork | DryingWork | FreezeDryingWork | MachineWork;

const KINDS = ['cooking', 'drying', 'freezeDrying', 'machine'] as const;
type Kind = (typeof KINDS)[number];

/**
 * The energy that a piece of work takes: a pot on the stove, food in a dryer or a freeze-dryer, or a machine that is
 * plugged in. `energyCost` says what it costs; `loadTimeline` answers the energy of a canner load, `freezeEnergy` that
 * of freezing.
 *
 * `cooking`: mass x specific heat x (to - from) / efficiency, with 4.186 kJ/(kg K) for water and 3.8 for food; water boiled
 * away x latent heat / efficiency; rated power x share x time for a covered pot held at the boil.
 * `drying`: heat = fresh x 3.8 kJ/(kg K) x (dryer - start) + water x latent heat; energy = heat / efficiency.
 * `freezeDrying`: heat = ice x enthalpy of sublimation; energy = 2 x heat / efficiency, as the condenser takes it out again.
 * `machine`: the sum of power x time x duty, or what a meter shows; efficiency = water x latent heat / energy.
 * An efficiency that is not given is a range of common practice, so the energy is one too.
 *
 * Source: textbook figures of specific heat and dryers; IAPWS SR1-86(1992); Murphy and Koop (2005) Eq. 5; U.S.
 * Department of Energy on appliances. The `basis` of each answer names its own.
 *
 * @param input - one of `cooking`, `drying`, `freezeDrying` and `machine`, each with its own fields
 * @returns `energy` in kWh, with `heat` in kJ where it is known, and what the kind of work adds
 * @throws StillroomError MISSING with none of the four, CONTRADICTION with two; the errors of each, at its path
 *
 * @example
 * ```ts
 * import { energyNeeded } from 'stillroom/heat';
 *
 * energyNeeded({ cooking: { boilOff: '3.65 kg', efficiency: '55 %' } }).energy.likely.value; // ≈ 4.16
 * const beans = energyNeeded({ drying: { fresh: '18 lb', moisture: '90 %', targetMoisture: '6 %' } });
 * beans.energy.low.value; // ≈ 5.1
 * energyNeeded({ freezeDrying: { ice: '3 kg' } }).heat.value; // ≈ 8514
 * const phases = [{ power: '675 W', time: '2 h' }, { power: '450 W', time: '9 h' }] as const;
 * const dryer = energyNeeded({ machine: { phases: [...phases], waterRemoved: '16 lb' } });
 * dryer.energy.likely; // => { value: 5.4, unit: 'kWh' }
 * dryer.efficiency; // ≈ 0.88
 * ```
 */
export function energyNeeded(input: CookingWork): StoveEnergy;
export function energyNeeded(input: DryingWork): DryEnergy;
export function energyNeeded(input: FreezeDryingWork): HeatNeeded;
export function energyNeeded(input: MachineWork): ApplianceEnergy;
export function energyNeeded(input: EnergyNeededInput): StoveEnergy | DryEnergy | HeatNeeded | ApplianceEnergy {
  const kind = kindOf(input);
  const given = (input as unknown as Record<Kind, never>)[kind];
  const answers = { cooking: stoveEnergy, drying: dryEnergy, freezeDrying: freezeDryEnergy, machine: applianceEnergy };
  return within(kind, () => answers[kind](given));
}

function kindOf(input: unknown): Kind {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    return fail('WRONG_TYPE', '', input, `an object with one of ${KINDS.join(', ')}`);
  }
  const names = Object.keys(input);
  const unknown = names.find((name) => !KINDS.some((kind) => kind === name));
  if (unknown !== undefined)
    fail('UNKNOWN_FIELD', unknown, unknown, `one of ${KINDS.join(', ')}`, { options: [...KINDS] });
  const [first, second] = KINDS.filter((kind) => (input as Record<string, unknown>)[kind] !== undefined);
  if (first === undefined) return fail('MISSING', 'cooking', undefined, `one of ${KINDS.join(', ')}`);
  if (second !== undefined) fail('CONTRADICTION', second, second, `only one of ${KINDS.join(', ')}`);
  return first;
}
