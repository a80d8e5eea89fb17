import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fields, optional, readInput } from '../quantity/fields';
import { food } from './fields';
import { formName, formRows, knownOf } from './tables';

const schema = fields({
  /** Only forms that some table has for this food; all when left out. */
  food: optional(food()),
});
/** Whose forms are asked for. */
export type FormsInput = Given<z.input<typeof schema>>;

/** A form that food is put up in. */
export interface Form {
  /** Its name. */
  form: string;
  /** Its id, as tables link to it. */
  id: string;
  /** Other names it goes by. */
  names: string[];
  /** The forms it is a case of: halves are pieces. */
  within?: string[];
  /** The forms that a page prints together as this one: halves and slices. */
  either?: string[];
}

/**
 * The forms that foods are put up in, with the other names they go by; or those that some table has for one food.
 *
 * @param input - `food`: the name of a food; without it, all forms
 * @throws StillroomError UNKNOWN_NAME for a food that is not in the pantry
 *
 * @example
 * ```ts
 * import { forms } from 'stillroom/foods';
 *
 * forms().find(({ form }) => form === 'halves')?.within; // => ['pieces']
 * ```
 */
export function forms(input: FormsInput = {}): Form[] {
  const { food: asked } = readInput(schema, input);
  const known = asked === undefined ? undefined : new Set(knownOf(asked.id).flatMap((craft) => craft.forms));
  return answer(
    formRows
      .filter(({ id }) => known === undefined || known.has(id))
      .map(({ id, name, names, alone = [], within = [], either = [] }) => ({
        form: name,
        id,
        names: [...names, ...alone],
        ...(within.length === 0 ? {} : { within: within.map(formName) }),
        ...(either.length === 0 ? {} : { either: either.map(formName) }),
      })),
  );
}
