/**
 * Lethality: the heat in a temperature record, for checking the record and never for making a process.
 * @module
 */
export {
  type HoldLethality,
  type HoldLethalityInput,
  type Lethality,
  type LethalityInput,
  lethality,
} from './lethality';
export {
  type HeatResistanceEntry,
  type PublishedEnds,
  type PublishedHeat,
  type PublishedHeatInput,
  type PublishedLethalityEntry,
  publishedHeat,
} from './publishedHeat';
export type { LogPoint } from './readLog';
export type { ZValue, ZValueInput } from './zValue';
