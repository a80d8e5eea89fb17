/**
 * Heat processes: the published time and pressure for a food, form, pack, jar and canner at an elevation, or a refusal.
 * @module
 */
export type { ProcessAcid } from './acid';
export {
  type CanningRule,
  type CanningRules,
  type CanningRulesInput,
  type CanningTopic,
  canningRules,
} from './canningRules';
export type { ProcessJarInput } from './jar';
export type { CanningMethod, ListedJar, Pack, PrintedMethod } from './tables';
export { type ProcessLine, type TestedProcess, type TestedProcessInput, testedProcess } from './testedProcess';
