/**
 * Printed recipes: what a food can become, scaled to what you have, with the process or keeping each ends in.
 * @module
 */
export type { Recipe, RecipeIngredient, RecipeInput, RecipeKeeping, RecipeStep } from './recipe';
export { recipe } from './recipe';
export type { Makes, Role } from './rows/tables';
export type { WayProcess } from './ways/canned';
export type { Lack } from './ways/lacking';
export type { ClosedWay, Need, TimeSpan, Way, WaysToKeep, WaysToKeepInput } from './waysToKeep';
export { waysToKeep } from './waysToKeep';
