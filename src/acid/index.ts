/**
 * Acid: acid and low-acid foods, typical pH, vinegar and brine strength, pickle recipes, ferments.
 * @module
 */
export { type AcidClass, type AcidClassInput, acidClass } from './acidClass';
export { type AcidForJars, type AcidForJarsInput, acidForJars } from './acidForJars';
export {
  type Brine,
  type BrineInput,
  type BrineRatios,
  type BrineStrength,
  type BrineStrengthInput,
  brine,
  brineStrength,
} from './brine';
export {
  type FermentSalt,
  type FermentSaltInput,
  type FermentTime,
  type FermentTimeInput,
  fermentSalt,
  fermentTime,
} from './ferment';
export { type PasteurizePickles, type PasteurizePicklesInput, pasteurizePickles } from './pasteurizePickles';
export { type PhOf, type PhOfInput, phOf } from './phOf';
export {
  type CheckPickleLiquidInput,
  checkPickleLiquid,
  type PickleLiquidCheck,
  type PickleRecipe,
  type PickleRecipeInput,
  pickleRecipe,
  pickleRecipes,
} from './pickle';
export { type PickleRule, pickleRules } from './pickleRules';
export { type SaltMeasure, type SaltMeasureInput, saltMeasure } from './saltMeasure';
export {
  type DilutedVinegar,
  type DiluteVinegarInput,
  diluteVinegar,
  type VinegarStrength,
  type VinegarStrengthInput,
  vinegarStrength,
} from './vinegarStrength';
