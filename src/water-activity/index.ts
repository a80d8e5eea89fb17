/**
 * Water activity: solutions and mixtures, isotherms, growth limits and the tables of pH and water activity.
 * @module
 */
export { type ActivityBand, type ActivityBandInput, activityBand } from './activityBand';
export { type DryMixActivity, type DryMixActivityInput, dryMixActivity } from './dryMixActivity';
export { type EquilibriumPoints, type EquilibriumPointsInput, equilibriumPoints } from './equilibriumPoints';
export {
  type FreezingPointActivity,
  type FreezingPointActivityInput,
  freezingPointActivity,
} from './freezingPointActivity';
export { type FruitWaterActivity, type FruitWaterActivityInput, fruitWaterActivity } from './fruitWaterActivity';
export { type GrowthAt, type GrowthAtInput, growthAt, type MayGrow } from './growthAt';
export type { OrganismKind } from './growthLimits';
export type { IsothermParameters } from './isotherm';
export { type IsothermActivity, type IsothermActivityInput, isothermActivity } from './isothermActivity';
export { type IsothermFoodSets, type IsothermSet, isothermFoods } from './isothermFoods';
export {
  type IsothermMoisture,
  type IsothermMoistureInput,
  type IsothermUsed,
  isothermMoisture,
} from './isothermMoisture';
export { type Keeps, type KeepsInput, keeps, type Standing } from './keeps';
export { type MonolayerMoisture, type MonolayerMoistureInput, monolayerMoisture } from './monolayerMoisture';
export { type RegulatoryClass, type RegulatoryClassInput, regulatoryClass } from './regulatoryClass';
export {
  type SaturatedSaltHumidity,
  type SaturatedSaltHumidityInput,
  saturatedSaltHumidity,
} from './saturatedSaltHumidity';
export { type ShiftWaterActivity, type ShiftWaterActivityInput, shiftWaterActivity } from './shiftWaterActivity';
export { type SoluteForActivity, type SoluteForActivityInput, soluteForActivity } from './soluteForActivity';
export {
  type SoluteMass,
  type SolutionModel,
  type SolutionWaterActivity,
  type SolutionWaterActivityInput,
  solutionWaterActivity,
} from './solutionWaterActivity';
export { type TcsClass, type TcsClassInput, tcsClass } from './tcsClass';
export {
  type TypicalWaterActivity,
  type TypicalWaterActivityInput,
  typicalWaterActivity,
} from './typicalWaterActivity';
