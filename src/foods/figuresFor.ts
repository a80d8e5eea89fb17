import { craftRows, foodOf } from './tables';

/** The crafts whose figures a wider food may lend. */
const lends: ReadonlySet<string> = new Set(craftRows.filter((row) => row.lends).map(({ id }) => id));

/**
 * The ids of the foods whose figures may serve for a food in a craft: the food itself first, then the wider foods that
 * the pantry names for this craft, in its order. A heat process, an acidification or a growth limit is never lent.
 */
export function figuresFor(id: string, craft: string): readonly string[] {
  if (!lends.has(craft)) return [id];
  const { wider = [] } = foodOf(id);
  return [id, ...wider.filter(({ crafts }) => crafts.includes(craft)).map(({ food }) => food)];
}
