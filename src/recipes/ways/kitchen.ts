/** What a question of ways says of the kitchen. */
import type * as z from 'zod/mini';
import { count, fields, given, list, optional } from '../../quantity/fields';
import { cannerFields, holds, jarStockFields, kitchenFields } from '../kitchen';
import { kitchenOf } from '../kitchenOf';

/**
 * The kitchen, as a plan takes it; what a canner holds and how many jars there are may be left out here. Pots, canners and
 * jars that are not named are taken as there, but where a pot has a rack it is the only canner; a dryer, a freeze-dryer or a
 * freezer that is not named is not there.
 */
export const kitchenSchema = () =>
  kitchenOf({
    ...kitchenFields(false),
    /** Canners, up to 10 kinds; an empty list says that there is none. */
    canners: optional(
      list(
        'canners',
        fields({
          ...cannerFields(),
          /** How many jars of each size one load holds. */
          holds: optional(holds()),
        }),
        0,
        10,
      ),
    ),
    /** Jars in stock; an empty list says that there is none. */
    jars: optional(
      list(
        'jars',
        fields({
          ...jarStockFields(),
          /** How many, 0 to 5,000. */
          count: optional(count('jars in stock', 0, 5000)),
        }),
        0,
        20,
      ),
    ),
    /** Hours of work, as a plan takes them; a list of ways does not need them. */
    hours: optional(given('hours of work')),
  });
export type WaysKitchen = z.output<ReturnType<typeof kitchenSchema>>;
