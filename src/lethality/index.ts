/**
 * Lethality: the heat in a temperature record, for checking the record and never for making a process.
 * @module
 */
export { type DValueAt, type DValueAtInput, dValueAt } from './dValueAt';
export { type EquivalentTime, type EquivalentTimeInput, equivalentTime } from './equivalentTime';
export {
  type HeatResistance,
  type HeatResistanceEntry,
  type HeatResistanceInput,
  heatResistance,
  type PublishedEnds,
} from './heatResistance';
export { type HoldLethality, type HoldLethalityInput, holdLethality } from './holdLethality';
export { type Lethality, type LethalityInput, lethality } from './lethality';
export { type LethalRate, type LethalRateInput, lethalRate } from './lethalRate';
export {
  type DecimalReductions,
  type DecimalReductionsInput,
  decimalReductions,
  type ReductionTime,
  type ReductionTimeInput,
  reductionTime,
} from './logReductions';
export {
  type PublishedLethality,
  type PublishedLethalityEntry,
  type PublishedLethalityInput,
  publishedLethality,
} from './publishedLethality';
export type { LogPoint } from './readLog';
export { type ZValue, type ZValueInput, zValue } from './zValue';
