/**
 * Produce: what raw weight gives ready, what it takes to fill jars, and what a measure of it weighs.
 * @module
 */
export { produceNames } from './catalogue';
export {
  type MassFromVolumeInput,
  type MassOfVolume,
  massFromVolume,
  type VolumeFromMassInput,
  type VolumeOfMass,
  volumeFromMass,
} from './massFromVolume';
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
