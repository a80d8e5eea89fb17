/**
 * Lethality: the heat in a temperature record, for checking the record and never for making a process.
 * @module
 */
export { type Lethality, type LethalityInput, lethality } from './lethality';
export type { LogPoint } from './readLog';
