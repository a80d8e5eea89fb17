/**
 * Sugar, pectin and the pot: syrups, sweetening, cooking down, jam balances and recipes, law, gel point.
 * @module
 */
export { type Concentrated, type ConcentrateInput, concentrate } from './concentrate';
export { type FruitForJam, type FruitForJamInput, fruitForJam } from './fruitForJam';
export { type GelTemperature, type GelTemperatureInput, gelTemperature } from './gelTemperature';
export { type JamBalance, type JamBalanceInput, type JamRecipeInput, jamBalance } from './jamBalance';
export {
  type AddedPectin,
  type JamRecipe,
  type JamRecipeOf,
  jamRecipe,
  type RemakeJelly,
  type RemakeJellyInput,
  remakeJelly,
  type ScaledRecipe,
  type ScaleRecipeInput,
  scaleRecipe,
} from './jamRecipe';
export {
  type JamProduct,
  type LegalCheck,
  type LegalFruitWeight,
  type LegalFruitWeightInput,
  type LegalJam,
  type LegalJamInput,
  legalFruitWeight,
  legalJam,
} from './legalJam';
export type { PartsInput } from './parts';
export { type PearsonSquare, type PearsonSquareInput, pearsonSquare } from './pearsonSquare';
export {
  type FruitComposition,
  type PectinClass,
  type PectinClassInput,
  type PectinContent,
  type PectinContentInput,
  pectinClass,
  pectinContent,
} from './pectinClass';
export {
  type PectinNeeded,
  type PectinNeededInput,
  type PectinStrength,
  type PectinStrengthInput,
  pectinNeeded,
  pectinStrength,
  type SwapPectinGrade,
  type SwapPectinGradeInput,
  swapPectinGrade,
} from './pectinNeeded';
export {
  type GelCondition,
  type GelConditions,
  type GelConditionsInput,
  gelConditions,
  type SetRoute,
  type SetRouteInput,
  setRoute,
} from './setRoute';
export {
  type JellyFromFruit,
  type JellyFromFruitInput,
  jellyFromFruit,
  type SugarForJuice,
  type SugarForJuiceInput,
  sugarForJuice,
} from './sugarForJuice';
export {
  type SugarStage,
  type SugarStageAt,
  type SugarStageAtInput,
  type SugarStages,
  type SugarStagesInput,
  sugarStageAt,
  sugarStages,
} from './sugarStages';
export { type Sweetened, type SweetenInput, sweeten } from './sweeten';
export { type SweetenerMass, type SweetenerMassInput, sweetenerMass } from './sweetenerMass';
export { type SweetenedToTaste, type SweetenToTasteInput, sweetenToTaste } from './sweetenToTaste';
export { type Syrup, type SyrupInput, type SyrupStrength, syrup } from './syrup';
export { type SyrupForLoad, type SyrupForLoadInput, type SyrupLoad, syrupForLoad } from './syrupForLoad';
export { type WaterToThin, type WaterToThinInput, waterToThin } from './waterToThin';
