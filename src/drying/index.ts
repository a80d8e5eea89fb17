/**
 * Drying and freeze-drying: moisture bases, the mass to stop at, printed guides, tray loads, leather, powder, finish
 * forecasts, freeze-dry loads and times, finishing, storage, oxygen absorbers, rehydration.
 * @module
 */

export { type DryingCurve, type DryingCurveInput, dryingCurve } from './curve/dryingCurve';
export type { DryingStudy, DryingStudyInput, KnownDryingStudy } from './curve/dryingStudy';
export {
  type FinishForecast,
  type FinishForecastInput,
  finishForecast,
  type KnownFinish,
  type UnknownFinish,
} from './curve/finishForecast';
export type { DryingCurveFit, FitDryingCurveInput } from './curve/fitDryingCurve';
export type { CurveConstants, ThinLayerModel } from './curve/thinLayer';
export type { DrynessByWeighing, DrynessByWeighingInput } from './freeze-dry/drynessByWeighing';
export type { FreezeDryCollapse, FreezeDryCollapseInput, KnownCollapse } from './freeze-dry/freezeDryCollapse';
export { type FreezeDryLoad, type FreezeDryLoadInput, freezeDryLoad } from './freeze-dry/freezeDryLoad';
export { type FreezeDryTime, type FreezeDryTimeInput, freezeDryTime } from './freeze-dry/freezeDryTime';
export {
  type GlassTransition,
  type GlassTransitionInput,
  glassTransition,
  type KnownGlassTransition,
} from './freeze-dry/glassTransition';
export {
  type DryingGuide,
  type DryingGuideInput,
  dryingGuide,
  type KnownDryingGuide,
} from './guide/dryingGuide';
export {
  type Conditioning,
  type FinishDried,
  type FinishDriedInput,
  type FinishedDried,
  finishDried,
  type InsectTreatment,
} from './guide/finishDried';
export { type Jerky, type JerkyInput, type JerkySteps, jerky } from './guide/jerky';
export { type Leather, type LeatherInput, type LeatherSheets, leather } from './guide/leather';
export type { HoursSpan } from './guide/leatherByThickness';
export {
  type DipRecipe,
  type KnownDip,
  type PretreatmentDip,
  type PretreatmentDipInput,
  pretreatmentDip,
} from './guide/pretreatmentDip';
export type { DryingCut, DryingSteps, PrintedDrying, PrintedYield, Thickness } from './guide/printedDrying';
export { type KnownRehydration, type Rehydrate, type RehydrateInput, rehydrate } from './guide/rehydrate';
export { type TrayLoad, type TrayLoadInput, trayLoad } from './guide/trayLoad';
export { type DriedStorage, type DriedStorageInput, driedStorage, type KnownDriedStorage } from './keep/driedStorage';
export {
  type MoistureAfterStorage,
  type MoistureAfterStorageInput,
  moistureAfterStorage,
} from './keep/moistureAfterStorage';
export {
  type OxygenAbsorbers,
  type OxygenAbsorbersCount,
  type OxygenAbsorbersInput,
  oxygenAbsorbers,
} from './keep/oxygenAbsorbers';
export { type DriedMass, type DriedMassInput, driedMass } from './moisture/driedMass';
export {
  type DryBasisInput,
  dryBasis,
  type MoistureAnswer,
  type WetBasisInput,
  wetBasis,
} from './moisture/moistureBasis';
export {
  type MoistureByWeighing,
  type MoistureByWeighingInput,
  moistureByWeighing,
} from './moisture/moistureByWeighing';
export type { MoistureRangeInput } from './moisture/moistureRange';
export { type Powder, type PowderInput, powder } from './moisture/powder';
export { type StopWeight, type StopWeightInput, stopWeight } from './moisture/stopWeight';
