/**
 * Records: what a batch was, whether it kept the rules, what its label says, and better figures for next time.
 * @module
 */
export { type BatchRecord, type BatchRecordInput, batchRecord, parseRecord, serializeRecord } from './batchRecord';
export { type CheckCooling, type CheckCoolingInput, type CoolingStage, checkCooling } from './checkCooling';
export type { Evidence, EvidenceState } from './evidence';
export type { Finding, FindingKind, Remedy, RuleBroken } from './findings';
export { type LabelFields, type LabelFieldsInput, labelFields } from './labelFields';
export {
  type LearnedFigure,
  type LearnedMoisture,
  type LearnedYield,
  type LearnFigureInput,
  type LearnMoistureInput,
  type LearnYieldInput,
  learnFigure,
  learnMoisture,
  learnYield,
  type SetAside,
} from './learnFigure';
export {
  type LearnedEntry,
  type LearnedFromRecords,
  type LearnedWhat,
  type LearnFromRecordsInput,
  learnFromRecords,
  type PassedOver,
  type RecordSetAside,
} from './learnFromRecords';
export { type NetWeightCheck, type NetWeightCheckInput, netWeightCheck } from './netWeightCheck';
export {
  type KeepRecordUntilInput,
  keepRecordUntil,
  type LotCodeInput,
  lotCode,
  type RecordRule,
  type RecordRules,
  type RecordRulesInput,
  recordRules,
} from './recordRules';
export { type BatchReview, type ReviewBatchInput, reviewBatch } from './reviewBatch';
export { type Q10Input, q10, type ShelfLifeAtInput, shelfLifeAt } from './shelfLife';
export {
  type MeanAndSpread,
  type UpdatedMean,
  type UpdatedMeanAndSpread,
  type UpdateMeanAndSpreadInput,
  type UpdateMeanInput,
  updateMean,
  updateMeanAndSpread,
} from './updateNormal';
export { type UseBy, type UseByInput, useBy } from './useBy';
