import { craftGroupRows, craftRows, foodOf } from './tables';

/** The crafts whose figures a wider food may lend. */
const lends: ReadonlySet<string> = new Set(craftRows.filter((row) => row.lends).map(({ id }) => id));

/** The crafts of each group that is lent as one. */
const groups: ReadonlyMap<string, readonly string[]> = new Map(craftGroupRows.map(({ id, crafts }) => [id, crafts]));

/**
 * The ids of the foods whose figures may serve for a food in a craft: the food itself first, then the wider foods that
 * the pantry names for this craft, in its order. A heat process, an acidification or a growth limit is never lent.
 */
export function figuresFor(id: string, craft: string): readonly string[] {
  if (!lends.has(craft)) return [id];
  const { wider = [] } = foodOf(id);
  const lent = (each: string): boolean => each === craft || groups.get(each)?.includes(craft) === true;
  return [id, ...wider.filter(({ crafts }) => crafts.some(lent)).map(({ food }) => food)];
}
