/**
 * Produce: what raw weight gives ready, what it takes to fill jars, and what a measure of it weighs.
 * @module
 */
export { produceNames } from './catalogue';
export { type Composition, type CompositionInput, composition } from './composition/composition';
export {
  type DescribeProduceInput,
  describeProduce,
  type ProduceDescription,
  type Proximates,
} from './composition/describeProduce';
export { type FoodComposition, type FoodCompositionInput, foodComposition } from './composition/foodComposition';
export { type JuiceBrix, type JuiceBrixInput, juiceBrix } from './composition/juiceBrix';
export { type ContainerWeight, type ContainerWeightInput, containerWeight } from './weights/containerWeight';
export {
  type MassFromVolumeInput,
  type MassOfVolume,
  massFromVolume,
  type VolumeFromMassInput,
  type VolumeOfMass,
  volumeFromMass,
} from './weights/massFromVolume';
export { type FrozenPintsFromRaw, type FrozenPintsFromRawInput, frozenPintsFromRaw } from './yields/frozenPintsFromRaw';
export { type PieFilling, type PieFillingIngredient, type PieFillingInput, pieFilling } from './yields/pieFilling';
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
} from './yields/rawForJars';
export {
  type RawForReady,
  type RawForReadyInput,
  type ReadyFromRaw,
  type ReadyFromRawInput,
  rawForReady,
  readyFromRaw,
  type TrimmingsPart,
} from './yields/readyFromRaw';
export { type RecipeYield, type RecipeYieldInput, recipeYield, recipeYieldNames } from './yields/recipeYield';
