/**
 * Drying and freeze-drying: moisture bases, the weight to stop at, printed guides, tray loads, leather, powder, finish
 * forecasts, freeze-dry loads and times, conditioning, storage, oxygen absorbers, rehydration.
 * @module
 */

export {
  type FinishForecast,
  type FinishForecastInput,
  finishForecast,
  type KnownFinish,
  type UnknownFinish,
} from './curve/finishForecast';
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
} from './curve/thinLayer';
export { type FreezeDryLoad, type FreezeDryLoadInput, freezeDryLoad } from './freeze-dry/freezeDryLoad';
export {
  type DrynessByWeight,
  type DrynessByWeightInput,
  drynessByWeight,
  type FreezeDryTime,
  type FreezeDryTimeInput,
  freezeDryTime,
} from './freeze-dry/freezeDryTime';
export {
  type FreezeDryCollapse,
  type FreezeDryCollapseInput,
  freezeDryCollapse,
  type GlassTransition,
  type GlassTransitionInput,
  glassTransition,
} from './freeze-dry/glassTransition';
export {
  type DryingGuide,
  type DryingGuideInput,
  dryingGuide,
  type PrintedDrying,
  type PrintedYield,
} from './guide/dryingGuide';
export {
  type Conditioning,
  type ConditioningInput,
  conditioning,
  type Pasteurizing,
  type PasteurizingInput,
  type PasteurizingTreatment,
  pasteurizing,
} from './guide/finishing';
export { type Jerky, type JerkyInput, type JerkySteps, jerky } from './guide/jerky';
export { type Leather, type LeatherInput, leather } from './guide/leather';
export { type PretreatmentDip, type PretreatmentDipInput, pretreatmentDip } from './guide/pretreatmentDip';
export { type Rehydrate, type RehydrateInput, rehydrate } from './guide/rehydrate';
export { type TrayLoad, type TrayLoadInput, trayLoad } from './guide/trayLoad';
export {
  type OxygenAbsorbers,
  type OxygenAbsorbersCount,
  type OxygenAbsorbersInput,
  oxygenAbsorbers,
} from './keep/oxygenAbsorbers';
export {
  type DriedStorage,
  type DriedStorageInput,
  driedStorage,
  type MoistureAfterStorage,
  type MoistureAfterStorageInput,
  moistureAfterStorage,
} from './keep/storage';
export { type DriedMass, type DriedMassInput, driedMass } from './moisture/driedMass';
export {
  type DryBasisInput,
  dryBasis,
  type MoistureAnswer,
  type WetBasisInput,
  wetBasis,
} from './moisture/moistureBasis';
export {
  type MoistureNow,
  type MoistureNowInput,
  moistureNow,
  type StartMoisture,
  type StartMoistureInput,
  startMoisture,
} from './moisture/moistureNow';
export type { MoistureRangeInput } from './moisture/moistureRange';
export { type Powder, type PowderInput, powder } from './moisture/powder';
export { type StopWeight, type StopWeightInput, stopWeight } from './moisture/stopWeight';
