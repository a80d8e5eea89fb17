/**
 * Freezing: packs and syrups, headspace, blanching, what a freezer takes in a day, freezing points, properties of food
 * and how long a piece takes to freeze.
 * @module
 */
export { type Blanching, type BlanchingInput, blanching } from './blanching';
export { type FoodProperties, type FoodPropertiesInput, foodProperties } from './foodProperties';
export { type FreezeEnergyInput, type FreezingProperties, freezeEnergy } from './freezeEnergy';
export { type FreezerLoad, type FreezerLoadInput, freezerLoad } from './freezerLoad';
export { type FreezerPack, type FreezerPackInput, freezerPack, type PackIngredients } from './freezerPack';
export { type FreezingHeadspace, type FreezingHeadspaceInput, freezingHeadspace } from './freezingHeadspace';
export { type FreezingTime, type FreezingTimeInput, freezingTime } from './freezingTime';
export { type FrozenStorage, type FrozenStorageInput, frozenStorage } from './frozenStorage';
export type {
  FreezingFigures,
  PrintedProperties,
  PrintedPropertiesInput,
} from './printedProperties';
