/**
 * Heat processes: the published time and pressure for a food, form, pack, jar and canner at an elevation, or a refusal.
 * @module
 */
export type { Acidity } from '../words/acidity';
export type { JarInput, MeasuredJar } from '../words/jar';
export type { CanningMethod } from '../words/method';
export type { AnyPack, Pack } from '../words/pack';
export type { ProcessAcid } from './acid';
export { type BoilingMinutes, type BoilingMinutesInput, boilingMinutes } from './boilingMinutes';
export {
  type CanningRule,
  type CanningRules,
  type CanningRulesInput,
  type CanningTopic,
  canningRules,
} from './canningRules';
export {
  type ElevationMinutes,
  type ElevationMinutesInput,
  type ElevationRule,
  elevationMinutes,
} from './elevationMinutes';
export { type GaugePressure, type GaugePressureInput, gaugePressure } from './gaugePressure';
export { type LoadStep, type LoadTimeline, type LoadTimelineInput, loadTimeline } from './loadTimeline';
export {
  type NotCanned,
  type PrintedProcess,
  type ProcessBand,
  type ProcessesFor,
  type ProcessesForInput,
  processesFor,
} from './processesFor';
export type { RefusalCode } from './refusal';
export type { Keep, ListedJar, PrintedMethod } from './tables';
export { type ProcessLine, type TestedProcess, type TestedProcessInput, testedProcess } from './testedProcess';
