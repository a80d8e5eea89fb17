import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import type { Reason } from '../sources/no';
import { foodsNamed, narrowerOf, nearestFoods } from './lookUpFood';
import { type FoodKind, foodOf, formName, nameOf } from './tables';

/** What a name means. */
export type FindFoodAnswer =
  | {
      /** The pantry has one food of this name. */
      known: true;
      /** Its trade name. */
      food: string;
      /** Its id, as tables link to it. */
      id: string;
      /** What kind of food it is. */
      kind: FoodKind;
      /** The form that the name says, where it says one: `sauce` of applesauce. */
      form?: string;
      /** Other names it goes by. */
      names: string[];
      /** The foods that this one covers, where it is a wide one: berries, beans. */
      narrower?: string[];
      /** What is taken for this food and is another one. */
      not?: {
        /** The name. */
        name: string;
        /** Trade name of the other food. */
        food: string;
      }[];
    }
  | {
      /** The pantry has no food of this name, or several. */
      known: false;
      /** Why: its code is `not in the pantry` or `several foods`. */
      reason: Reason;
      /** What may have been meant; empty where nothing is near. */
      instead: {
        /** The name that is near to what was asked. */
        text: string;
        /** The trade name of its food. */
        food: string;
      }[];
    };

/**
 * The food that a name means: any name that people use or that a table prints, in any case, number and word order. A
 * name may hold a form too. A name that two foods share gives both; a name that no food has gives the nearest.
 *
 * @param text - the name, such as `"string beans"` or `"applesauce"`
 * @throws StillroomError WRONG_TYPE or MISSING where the name is not text
 *
 * @example
 * ```ts
 * import { findFood } from 'stillroom/foods';
 *
 * const beans = findFood('string beans');
 * beans.known && beans.food; // => 'green bean'
 * const sauce = findFood('applesauce');
 * sauce.known && [sauce.food, sauce.form]; // => ['apple', 'sauce']
 * const chili = findFood('chili');
 * !chili.known && chili.instead.map(({ food }) => food); // => ['chile pepper', 'chile con carne']
 * ```
 */
export function findFood(text: string): FindFoodAnswer {
  if (typeof text !== 'string') fail(text === undefined ? 'MISSING' : 'WRONG_TYPE', '', text, 'the name of a food');
  const found = foodsNamed(text);
  const [first] = found;
  if (first !== undefined && found.length === 1) {
    const { id, name, kind, names, not = [] } = foodOf(first.id);
    const narrower = narrowerOf(id).map(nameOf);
    return answer<FindFoodAnswer>({
      known: true,
      food: name,
      id,
      kind,
      ...(first.form === undefined ? {} : { form: formName(first.form) }),
      names: [...names],
      ...(narrower.length === 0 ? {} : { narrower }),
      ...(not.length === 0 ? {} : { not: not.map((other) => ({ name: other.name, food: nameOf(other.food) })) }),
    });
  }
  if (first !== undefined) {
    const instead = found.map(({ id }) => ({ text: nameOf(id), food: nameOf(id) }));
    const text = `This name could be ${instead.map(({ food }) => food).join(' or ')}. Say which.`;
    return answer<FindFoodAnswer>({ known: false, reason: { code: 'several foods', text }, instead });
  }
  const instead = nearestFoods(text).map(({ id, name }) => ({ text: name, food: nameOf(id) }));
  const sentence = 'These tables have no food of this name. Check the spelling, or ask for one of the foods offered.';
  return answer<FindFoodAnswer>({ known: false, reason: { code: 'not in the pantry', text: sentence }, instead });
}
