/**
 * Produce: what a raw amount gives ready, what it takes to fill jars and packs, what a measure of food weighs, and
 * what is in it.
 * @module
 */
export { type Composition, type CompositionInput, composition, type Proximates } from './composition/composition';
export { type JuiceBrix, type JuiceBrixInput, juiceBrix } from './composition/juiceBrix';
export type { BoughtInput } from './weights/asBought';
export type { ContainerWeight, ContainerWeightInput } from './weights/containerWeight';
export {
  type KitchenMeasureInput,
  kitchenMeasure,
  type MassOfVolume,
  type MassOfVolumeInput,
  type VolumeOfMass,
  type VolumeOfMassInput,
} from './weights/kitchenMeasure';
export type { YieldRoad } from './yields/jarNeed';
export {
  type JarsFromRaw,
  type JarsFromRawInput,
  type RawForJars,
  type RawForJarsInput,
  rawForJars,
} from './yields/rawForJars';
export {
  type RawForReady,
  type RawForReadyInput,
  type ReadyFromRaw,
  type ReadyFromRawInput,
  readyFromRaw,
  type TrimmingsPart,
} from './yields/readyFromRaw';
