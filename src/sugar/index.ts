/**
 * Sugar, pectin and the pot: syrups, sweetening, cooking down, jam balances and recipes, law, gel point.
 * @module
 */
export { type Concentrated, type ConcentrateInput, concentrate } from './concentrate';
export { type GelCondition, type GelConditions, type GelConditionsInput, gelConditions } from './gelConditions';
export type { SetRoute } from './gelRoute';
export { type GelTemperature, type GelTemperatureInput, gelTemperature } from './gelTemperature';
export { type JamBalance, type JamBalanceInput, jamBalance } from './jamBalance';
export type { JamProduct } from './jamLaw';
export { type Jelly, type JellyInput, jelly } from './jelly';
export { type LegalCheck, type LegalJam, type LegalJamInput, legalJam } from './legalJam';
export type { PartsInput } from './parts';
export { type PearsonSquare, type PearsonSquareInput, pearsonSquare } from './pearsonSquare';
export { type PectinNeeded, type PectinNeededInput, pectinNeeded } from './pectinNeeded';
export type { FruitComposition, ListedPectin, PectinGroup } from './pectinOf';
export type { SyrupStrength } from './printedSyrups';
export type { RemakeJelly, RemakeJellyInput } from './remakeJelly';
export { type SugarStage, type SugarStages, type SugarStagesInput, sugarStages } from './sugarStages';
export { type Sweetened, type SweetenInput, sweeten } from './sweeten';
export { type SweetenedToTaste, type SweetenToTasteInput, sweetenToTaste } from './sweetenToTaste';
export { type Syrup, type SyrupInput, syrup } from './syrup';
