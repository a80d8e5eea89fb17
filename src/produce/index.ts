/**
 * Produce: what raw weight gives ready, what it takes to fill jars, and what a measure of it weighs.
 * @module
 */
export { produceNames } from './catalogue';
export { type Composition, type CompositionInput, composition } from './composition';
export { type ContainerWeight, type ContainerWeightInput, containerWeight } from './containerWeight';
export {
  type DescribeProduceInput,
  describeProduce,
  type ProduceDescription,
  type Proximates,
} from './describeProduce';
export { type FoodComposition, type FoodCompositionInput, foodComposition } from './foodComposition';
export { type FrozenPintsFromRaw, type FrozenPintsFromRawInput, frozenPintsFromRaw } from './frozenPintsFromRaw';
export { type JuiceBrix, type JuiceBrixInput, juiceBrix } from './juiceBrix';
export {
  type MassFromVolumeInput,
  type MassOfVolume,
  massFromVolume,
  type VolumeFromMassInput,
  type VolumeOfMass,
  volumeFromMass,
} from './massFromVolume';
export { type PieFilling, type PieFillingIngredient, type PieFillingInput, pieFilling } from './pieFilling';
export {
  type JarsFromRaw,
  type JarsFromRawInput,
  jarsFromRaw,
  type RawForJars,
  type RawForJarsInput,
  type ReadyPerQuart,
  type ReadyPerQuartInput,
  rawForJars,
  readyPerQuart,
  type YieldRoad,
} from './rawForJars';
export {
  type RawForReady,
  type RawForReadyInput,
  type ReadyFromRaw,
  type ReadyFromRawInput,
  rawForReady,
  readyFromRaw,
  type TrimmingsPart,
} from './readyFromRaw';
export { type RecipeYield, type RecipeYieldInput, recipeYield, recipeYieldNames } from './recipeYield';
