/**
 * Printed recipes: what a food can become, scaled to what you have, with the process or keeping each ends in.
 * @module
 */
export { type CheckPickleLiquidInput, checkPickleLiquid, type PickleLiquidCheck } from './checkPickleLiquid';
export type { RecipeIngredient } from './ingredient';
export type { RecipeKeeping } from './keeping';
export type { Mixture, MixtureInput } from './mixture';
export { mixture } from './mixture';
export type { OwnProcess, OwnProcessInput } from './ownProcess';
export { ownProcess } from './ownProcess';
export type { Recipe, RecipeInput } from './recipe';
export { recipe } from './recipe';
export type { Makes, Role } from './rows/tables';
export type { RecipeStep } from './step';
export type { WayProcess } from './ways/canned';
export type { Lack } from './ways/lacking';
export type { ClosedWay, Need, TimeSpan, Way } from './ways/way';
export type { WaysToKeep, WaysToKeepInput } from './waysToKeep';
export { waysToKeep } from './waysToKeep';
