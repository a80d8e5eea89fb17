import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { choice, fields, optional, readInput } from '../quantity/fields';
import { type FoodKind, foodRows, KINDS } from './tables';

const schema = fields({
  /** Only foods of one kind, such as `fruit`; all when left out. */
  kind: optional(choice('a kind of food', KINDS)),
});
/** What foods are asked for. */
export type FoodsInput = Given<z.input<typeof schema>>;

/** A food of the pantry. */
export interface Food {
  /** Its trade name. */
  food: string;
  /** Its id, as tables link to it. */
  id: string;
  /** What kind of food it is. */
  kind: FoodKind;
  /** Other names it goes by. */
  names: string[];
}

/**
 * The foods that these tables name, by trade name, with the other names they go by.
 *
 * @param input - `kind`: only foods of one kind, such as `"fruit"`; without it, all of them
 * @throws StillroomError UNKNOWN_NAME for a kind that is none
 *
 * @example
 * ```ts
 * import { foods } from 'stillroom/foods';
 *
 * foods({ kind: 'egg' }).map(({ food }) => food); // => ['egg']
 * ```
 */
export function foods(input: FoodsInput = {}): Food[] {
  const { kind } = readInput(schema, input);
  return answer(
    foodRows
      .filter((row) => kind === undefined || row.kind === kind)
      .map((row) => ({ food: row.name, id: row.id, kind: row.kind, names: [...row.names] })),
  );
}
