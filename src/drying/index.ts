/**
 * Drying and freeze-drying: moisture bases, the weight to stop at, guides, leather, powder, forecasts, storage.
 * @module
 */
export { type DriedMass, type DriedMassInput, driedMass } from './driedMass';
export {
  type DryingGuide,
  type DryingGuideInput,
  dryingGuide,
  type PrintedDrying,
  type PrintedYield,
} from './dryingGuide';
export { type DryingHeat, type DryingHeatInput, dryingHeat } from './dryingHeat';
export {
  type FinishForecast,
  type FinishForecastInput,
  finishForecast,
  type KnownFinish,
  type UnknownFinish,
} from './finishForecast';
export { type FreezeDryLoad, type FreezeDryLoadInput, freezeDryLoad } from './freezeDryLoad';
export {
  type FrostPoint,
  type FrostPointInput,
  frostPoint,
  type IceVapourPressure,
  type IceVapourPressureInput,
  iceVapourPressure,
  type SublimationHeat,
  type SublimationHeatInput,
  sublimationHeat,
} from './ice';
export { type Leather, type LeatherInput, leather } from './leather';
export { type DryBasisInput, dryBasis, type MoistureAnswer, type WetBasisInput, wetBasis } from './moistureBasis';
export type { MoistureRangeInput } from './moistureRange';
export {
  type OxygenAbsorbers,
  type OxygenAbsorbersCount,
  type OxygenAbsorbersInput,
  oxygenAbsorbers,
} from './oxygenAbsorbers';
export { type Powder, type PowderInput, powder } from './powder';
export { type StopWeight, type StopWeightInput, stopWeight } from './stopWeight';
export {
  type DriedStorage,
  type DriedStorageInput,
  driedStorage,
  type MoistureAfterStorage,
  type MoistureAfterStorageInput,
  moistureAfterStorage,
} from './storage';
export {
  type DryingCurveFit,
  type DryingStudy,
  type DryingStudyInput,
  dryingStudy,
  type FitDryingCurveInput,
  fitDryingCurve,
  type MoistureRatio,
  type MoistureRatioInput,
  moistureRatio,
  type SlabMoistureRatioInput,
  slabMoistureRatio,
  type ThinLayerModel,
  type TimeToMoistureRatio,
  type TimeToMoistureRatioInput,
  timeToMoistureRatio,
} from './thinLayer';
export { type TrayLoad, type TrayLoadInput, trayLoad } from './trayLoad';
