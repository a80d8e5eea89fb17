/**
 * The heat and the energy of the kitchen: the stove, drying, freeze-drying, machines, ice, and what it costs.
 * @module
 */
export { type ApplianceEnergy, type ApplianceEnergyInput, applianceEnergy } from './applianceEnergy';
export { type DryEnergy, type DryEnergyInput, dryEnergy } from './dryEnergy';
export { type EnergyCost, type EnergyCostInput, energyCost } from './energyCost';
export { type FreezeDryEnergyInput, freezeDryEnergy } from './freezeDryEnergy';
export { type FrostPoint, type FrostPointInput, frostPoint } from './frostPoint';
export { type IceVapourPressure, type IceVapourPressureInput, iceVapourPressure } from './iceVapourPressure';
export type { EnergyNeeded, HeatNeeded } from './needed';
export { type StoveEnergy, type StoveEnergyInput, stoveEnergy } from './stoveEnergy';
