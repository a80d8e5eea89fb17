/**
 * Lethality: the heat in a temperature record, for checking the record and never for making a process.
 * @module
 */
export {
  type HeatResistance,
  type HeatResistanceEntry,
  type HeatResistanceInput,
  heatResistance,
  type PublishedEnds,
} from './heatResistance';
export {
  type HoldLethality,
  type HoldLethalityInput,
  type Lethality,
  type LethalityInput,
  lethality,
} from './lethality';
export {
  type PublishedLethality,
  type PublishedLethalityEntry,
  type PublishedLethalityInput,
  publishedLethality,
} from './publishedLethality';
export type { LogPoint } from './readLog';
export { type ZValue, type ZValueInput, zValue } from './zValue';
