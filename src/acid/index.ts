/**
 * Acid: acid and low-acid foods, typical pH, vinegar and brine strength, ferments.
 * @module
 */
export { type AcidClass, type AcidClassInput, acidClass, type ListedFood } from './acidClass';
export { type AcidForJars, type AcidForJarsInput, acidForJars } from './acidForJars';
export { type Brine, type BrineInput, type BrineShares, brine } from './brine';
export { type DilutedVinegar, type DiluteVinegarInput, diluteVinegar } from './diluteVinegar';
export { type Crock, type Ferment, type FermentInput, type FermentSalt, ferment } from './ferment';
export type { FermentWeeks } from './fermentWeeks';
export type { LeastSalt } from './leastSalt';
export { type PasteurizePickles, type PasteurizePicklesInput, pasteurizePickles } from './pasteurizePickles';
export type { ListedPh } from './phOf';
export { type SaltMeasure, type SaltMeasureInput, saltMeasure } from './saltMeasure';
