/**
 * Drying and freeze-drying: moisture bases, the weight to stop at, guides, leather, powder, forecasts, storage.
 * @module
 */
export { type DriedMass, type DriedMassInput, driedMass } from './driedMass';
export { type DryingHeat, type DryingHeatInput, dryingHeat } from './dryingHeat';
export { type DryBasisInput, dryBasis, type MoistureAnswer, type WetBasisInput, wetBasis } from './moistureBasis';
export type { MoistureRangeInput } from './moistureRange';
export { type StopWeight, type StopWeightInput, stopWeight } from './stopWeight';
