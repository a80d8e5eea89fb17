/**
 * Drying and freeze-drying: moisture bases, the weight to stop at, printed guides, tray loads, leather, powder, finish
 * forecasts, freeze-dry loads and times, conditioning, storage, oxygen absorbers, rehydration.
 * @module
 */
export { type DriedMass, type DriedMassInput, driedMass } from './driedMass';
export {
  type DryerEnergy,
  type DryerEnergyInput,
  type DryingRateTime,
  type DryingRateTimeInput,
  dryerEnergy,
  dryingRateTime,
} from './dryerEnergy';
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
export {
  type Conditioning,
  type ConditioningInput,
  conditioning,
  type Pasteurizing,
  type PasteurizingInput,
  type PasteurizingTreatment,
  pasteurizing,
} from './finishing';
export { type FreezeDryLoad, type FreezeDryLoadInput, freezeDryLoad } from './freezeDryLoad';
export {
  type DrynessByWeight,
  type DrynessByWeightInput,
  drynessByWeight,
  type FreezeDryTime,
  type FreezeDryTimeInput,
  freezeDryTime,
} from './freezeDryTime';
export {
  type FreezeDryCollapse,
  type FreezeDryCollapseInput,
  freezeDryCollapse,
  type GlassTransition,
  type GlassTransitionInput,
  glassTransition,
} from './glassTransition';
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
export { type Jerky, type JerkyInput, type JerkySteps, jerky } from './jerky';
export { type Leather, type LeatherInput, leather } from './leather';
export { type DryBasisInput, dryBasis, type MoistureAnswer, type WetBasisInput, wetBasis } from './moistureBasis';
export {
  type MoistureNow,
  type MoistureNowInput,
  moistureNow,
  type StartMoisture,
  type StartMoistureInput,
  startMoisture,
} from './moistureNow';
export type { MoistureRangeInput } from './moistureRange';
export {
  type OxygenAbsorbers,
  type OxygenAbsorbersCount,
  type OxygenAbsorbersInput,
  oxygenAbsorbers,
} from './oxygenAbsorbers';
export { type Powder, type PowderInput, powder } from './powder';
export { type PretreatmentDip, type PretreatmentDipInput, pretreatmentDip } from './pretreatmentDip';
export { type Rehydrate, type RehydrateInput, rehydrate } from './rehydrate';
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
