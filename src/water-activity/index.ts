/**
 * Water activity: solutions and mixtures, isotherms, and what can grow.
 * @module
 */

export { type DryMixActivity, type DryMixActivityInput, dryMixActivity } from './dryMixActivity';
export type { FitIsothermInput, FittedIsotherm, FittedPoint } from './fitIsotherm';
export { fitIsotherm } from './fitIsotherm';
export { type FruitWaterActivity, type FruitWaterActivityInput, fruitWaterActivity } from './fruitWaterActivity';
export { type GrowthAt, type GrowthAtInput, growthAt, type MayGrow } from './growthAt';
export type { GrowthBand, SaltedFish } from './growthBand';
export type { OrganismKind } from './growthLimits';
export { type IsothermActivity, type IsothermActivityInput, isothermActivity } from './isothermActivity';
export { type IsothermMoisture, type IsothermMoistureInput, isothermMoisture } from './isothermMoisture';
export type { IsothermParameters, IsothermUsed, Limits } from './isothermTypes';
export { type Keeps, type KeepsInput, keeps, type Standing } from './keeps';
export type { SolutionModel } from './modelNames';
export {
  type SaturatedSaltHumidity,
  type SaturatedSaltHumidityInput,
  saturatedSaltHumidity,
} from './saturatedSaltHumidity';
export type { ShiftWaterActivity, ShiftWaterActivityInput } from './shiftWaterActivity';
export type { SoluteForActivity, SoluteForActivityInput } from './soluteForActivity';
export {
  type SoluteMass,
  type SolutionByFreezing,
  type SolutionByParts,
  type SolutionPart,
  type SolutionWaterActivity,
  type SolutionWaterActivityInput,
  solutionWaterActivity,
} from './solutionWaterActivity';
export type { TcsClass } from './tcsClass';
export type { TypicalFigure, TypicalFigures } from './typicalFigures';
export {
  type Monolayer,
  type SorptionPoint,
  type SorptionSeries,
  type SorptionSet,
  type TemperatureSpan,
  type WaterActivityOf,
  type WaterActivityOfInput,
  waterActivityOf,
} from './waterActivityOf';
