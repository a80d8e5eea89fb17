/**
 * Sugar and salt in water: density, refractive index, solubility, boiling-point rise.
 * @module
 */
export { type Baume, type BaumeInput, type BrixFromBaumeInput, baume, brixFromBaume } from './baume';
export {
  type BrineDensity,
  type BrineDensityInput,
  brineDensity,
  type SaltFromDensity,
  type SaltFromDensityInput,
  saltFromDensity,
} from './brineDensity';
export { type CorrectedReading, type CorrectRefractometerInput, correctRefractometer } from './correctRefractometer';
export {
  type BrixFromRefractiveIndexInput,
  brixFromRefractiveIndex,
  type RefractiveIndex,
  type RefractiveIndexInput,
  refractiveIndex,
} from './refractiveIndex';
export {
  type SoluteProperties,
  type SolutePropertiesInput,
  type SoluteRow,
  type SoluteTable,
  type SoluteTableInput,
  soluteProperties,
  soluteTable,
} from './soluteProperties';
export {
  type BrixFromSpecificGravityInput,
  type BrixReading,
  brixFromSpecificGravity,
  type SpecificGravity,
  type SpecificGravityInput,
  specificGravity,
} from './specificGravity';
export { type SucroseDensity, type SucroseDensityInput, sucroseDensity } from './sucroseDensity';
export { type SucroseSolubility, type SucroseSolubilityInput, sucroseSolubility } from './sucroseSolubility';
export {
  type BrixFromBoiling,
  type BrixFromBoilingInput,
  brixFromBoiling,
  type SyrupBoilingTemperature,
  type SyrupBoilingTemperatureInput,
  syrupBoilingTemperature,
} from './syrupBoilingTemperature';
