/**
 * The heat and the energy of the kitchen: warming, boiling, evaporating, drying, ice, freeze-drying, and what it costs.
 * @module
 */
export { type ApplianceEnergyInput, applianceEnergy } from './applianceEnergy';
export { type BoilingEnergyInput, boilingEnergy } from './boilingEnergy';
export { type BoilOffEnergyInput, boilOffEnergy } from './boilOffEnergy';
export { type DryEnergy, type DryEnergyInput, dryEnergy } from './dryEnergy';
export {
  type DryerEnergy,
  type DryerEnergyInput,
  type DryingRateTime,
  type DryingRateTimeInput,
  dryerEnergy,
  dryingRateTime,
} from './dryerEnergy';
export { type DryingHeat, type DryingHeatInput, dryingHeat } from './dryingHeat';
export { type EnergyCost, type EnergyCostInput, energyCost } from './energyCost';
export { type FreezeDryEnergyInput, freezeDryEnergy } from './freezeDryEnergy';
export { type HeatUpEnergyInput, heatUpEnergy } from './heatUpEnergy';
export {
  type FrostPoint,
  type FrostPointInput,
  frostPoint,
  type IceVapourPressure,
  type IceVapourPressureInput,
  iceVapourPressure,
  type SublimationHeat,
  type SublimationHeatInput,
  sublimationHeat,
} from './ice';
export type { EnergyNeeded, HeatNeeded } from './needed';
