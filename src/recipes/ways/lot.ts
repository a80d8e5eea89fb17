/** Food that was bought or picked, as a question of ways names it. */
import type * as z from 'zod/mini';
import { food } from '../../foods/fields';
import { bought } from '../../produce/weights/asBought';
import { fields, name, optional } from '../../quantity/fields';

/** What was bought or picked. */
export const lot = () =>
  fields({
    /** What you call it. */
    name: optional(name('a name for the lot')),
    /** The food. */
    food: food(),
    /** How much of it, as bought: a mass, a volume, or pieces or containers. */
    raw: optional(bought()),
  });
export type Lot = z.output<ReturnType<typeof lot>>;
