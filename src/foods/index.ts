/**
 * The pantry: one list of foods and forms for all tables, and what is known of each food.
 * @module
 */
export { type FindFoodAnswer, findFood } from './findFood';
export { type Food, type FoodsInput, foods } from './foods';
export { type Form, type FormsInput, forms } from './forms';
export type { FoodKind } from './tables';
export { type KnownCraft, type WhatIsKnownAnswer, type WhatIsKnownInput, whatIsKnown } from './whatIsKnown';
