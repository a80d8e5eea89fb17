/**
 * The heat and the energy of the kitchen: the stove, drying, freeze-drying, machines, ice, and what it costs.
 * @module
 */
export type { ApplianceEnergy, ApplianceEnergyInput } from './applianceEnergy';
export type { DryEnergy, DryEnergyInput } from './dryEnergy';
export { type EnergyCost, type EnergyCostInput, energyCost } from './energyCost';
export {
  type CookingWork,
  type DryingWork,
  type EnergyNeededInput,
  energyNeeded,
  type FreezeDryingWork,
  type MachineWork,
} from './energyNeeded';
export type { FreezeDryEnergyInput } from './freezeDryEnergy';
export { type IceVapourPressure, type IceVapourPressureInput, iceVapourPressure } from './iceVapourPressure';
export type { EnergyNeeded, HeatNeeded } from './needed';
export type { StoveEnergy, StoveEnergyInput } from './stoveEnergy';
