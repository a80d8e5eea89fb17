/**
 * Records: what a batch was, whether it kept the rules, what its label says, and better figures for next time.
 * @module
 */
export { type BatchRecord, type BatchRecordInput, batchRecord } from './batchRecord';
export { type CheckCooling, type CheckCoolingInput, type CoolingStage, checkCooling } from './checkCooling';
export type { Evidence, EvidenceStatus } from './evidence';
export type { Finding, FindingKind, Remedy, RuleBroken } from './findings';
export { type LabelFields, type LabelFieldsInput, labelFields } from './labelFields';
export type { LearnedFigure, LearnFigureInput } from './learnFigure';
export {
  type LearnedEntry,
  type LearnedFromRecords,
  type LearnFromRecordsInput,
  learnFromRecords,
  type RecordOutlier,
} from './learnFromRecords';
export { type NetWeightCheck, type NetWeightCheckInput, netWeightCheck } from './netWeightCheck';
export type { LearnedFigureName, PassedOver } from './observations';
export { type RecordRule, type RecordRules, type RecordRulesInput, recordRules } from './recordRules';
export { type BatchReview, type ReviewBatchInput, reviewBatch } from './reviewBatch';
export { type ShelfLife, type ShelfLifeInput, shelfLife } from './shelfLife';
export type { Outlier } from './statistics';
export { type UseBy, type UseByInput, useBy } from './useBy';
