/**
 * Sugar, pectin and the pot: syrups, sweetening, cooking down, jam balances, gel point.
 * @module
 */
export { type Concentrated, type ConcentrateInput, concentrate } from './concentrate';
export { type GelTemperature, type GelTemperatureInput, gelTemperature } from './gelTemperature';
export { type JamBalance, type JamBalanceInput, type JamRecipeInput, jamBalance } from './jamBalance';
export type { PartsInput } from './parts';
export { type Sweetened, type SweetenInput, sweeten } from './sweeten';
export { type Syrup, type SyrupInput, type SyrupStrength, syrup } from './syrup';
