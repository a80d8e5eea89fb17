/**
 * Air and steam: air pressure and boiling point by elevation, steam temperature by gauge, properties of water.
 * @module
 */
export { type AirPressure, type AirPressureInput, airPressure } from './airPressure';
export { type BoilingTemperature, type BoilingTemperatureInput, boilingTemperature } from './boilingTemperature';
export type { ElevationFromBoiling, ElevationFromBoilingInput } from './elevationFromBoiling';
export { type LatentHeat, type LatentHeatInput, latentHeat } from './latentHeat';
export { type MoistAir, type MoistAirInput, moistAir } from './moistAir';
export { type SaturationPressure, type SaturationPressureInput, saturationPressure } from './saturationPressure';
export {
  type SaturationTemperature,
  type SaturationTemperatureInput,
  saturationTemperature,
} from './saturationTemperature';
export { type SteamTemperature, type SteamTemperatureInput, steamTemperature } from './steamTemperature';
export { type WaterDensity, type WaterDensityInput, waterDensity } from './waterDensity';
