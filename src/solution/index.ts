/**
 * Sugar and salt in water: density, refractive index, solubility, boiling-point rise.
 * @module
 */
export { type SucroseDensity, type SucroseDensityInput, sucroseDensity } from './sucroseDensity';
export { type SucroseSolubility, type SucroseSolubilityInput, sucroseSolubility } from './sucroseSolubility';
