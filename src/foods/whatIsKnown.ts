import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fields, readInput } from '../quantity/fields';
import { food } from './fields';
import { figuresFor } from './figuresFor';
import { craftRows, formName, knownOf, nameOf } from './tables';

const schema = fields({
  /** A food, by any of its names. */
  food: food(),
});
/** The food that is asked about. */
export type WhatIsKnownInput = Given<z.input<typeof schema>>;

/** What one craft knows of a food. */
export interface KnownCraft {
  /** The craft: `drying`, `blanching`, `process`. */
  craft: string;
  /** What it knows, in a few words. */
  what: string;
  /** The forms that its tables name; empty where they name none. */
  forms: string[];
  /** The wider food whose figures serve, where the tables have none for this food itself. */
  widerFood?: string;
}
/** What these tables know of a food. */
export interface WhatIsKnownAnswer {
  /** Its trade name. */
  food: string;
  /** Its id, as tables link to it. */
  id: string;
  /** The crafts that have figures for it. */
  crafts: KnownCraft[];
}

/**
 * Which crafts have figures for a food, in which forms, and from which wider food they come. A wider food never
 * lends a heat process.
 *
 * @param input - `food`: the name of a food
 * @throws StillroomError UNKNOWN_NAME for a food that is not in the pantry
 *
 * @example
 * ```ts
 * import { whatIsKnown } from 'stillroom/foods';
 *
 * whatIsKnown({ food: 'string beans' }).food; // => 'green bean'
 * ```
 */
export function whatIsKnown(input: WhatIsKnownInput): WhatIsKnownAnswer {
  const { id, name } = readInput(schema, input).food;
  const crafts = craftRows.flatMap(({ id: craft, what }): KnownCraft[] => {
    for (const each of figuresFor(id, craft)) {
      const found = knownOf(each).find((entry) => entry.craft === craft);
      if (found === undefined) continue;
      const wider = each === id ? {} : { widerFood: nameOf(each) };
      return [{ craft, what, forms: found.forms.map(formName), ...wider }];
    }
    return [];
  });
  return answer({ food: name, id, crafts });
}
