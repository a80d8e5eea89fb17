/**
 * Sugar and salt in water: density, refractive index, solubility, boiling-point rise.
 * @module
 */
export { type BrineDensity, type BrineDensityInput, brineDensity } from './brineDensity';
export { type BrixFrom, type BrixFromInput, brixFrom } from './brixFrom';
export { type RefractiveIndex, type RefractiveIndexInput, refractiveIndex } from './refractiveIndex';
export { type SoluteProperties, type SolutePropertiesInput, soluteProperties } from './soluteProperties';
export { type SucroseDensity, type SucroseDensityInput, sucroseDensity } from './sucroseDensity';
export { type SucroseSolubility, type SucroseSolubilityInput, sucroseSolubility } from './sucroseSolubility';
export {
  type SyrupBoilingTemperature,
  type SyrupBoilingTemperatureInput,
  syrupBoilingTemperature,
} from './syrupBoilingTemperature';
