/**
 * Records: what a batch was, whether it kept the rules, what its label says, and better figures for next time.
 * @module
 */
export { type BatchRecord, type BatchRecordInput, batchRecord, parseRecord, serializeRecord } from './batchRecord';
export type { Finding, FindingKind, Remedy, RuleBroken } from './findings';
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
export { type BatchReview, type ReviewBatchInput, reviewBatch } from './reviewBatch';
export {
  type MeanAndSpread,
  type UpdatedMean,
  type UpdatedMeanAndSpread,
  type UpdateMeanAndSpreadInput,
  type UpdateMeanInput,
  updateMean,
  updateMeanAndSpread,
} from './updateNormal';
