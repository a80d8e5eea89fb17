/** What kind of food a record's names mean, by the pantry, and whether a word of them says oil. */
import { nameKey } from '../common/names';
import { StillroomError } from '../errors/StillroomError';
import { foodsNamed } from '../foods/lookUpFood';
import { type FoodKind, foodOf } from '../foods/tables';
import type { BatchRecord } from './batchRecord';

/** The answer of other modules, or nothing where their tables do not know the name or need to hear more. */
export function orNothing<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (error) {
    if (error instanceof StillroomError) return undefined;
    throw error;
  }
}

/** The kinds of food that a name may mean; none where the pantry does not know it. */
export const kindsNamed = (text: string): ReadonlySet<FoodKind> =>
  new Set(foodsNamed(text).map(({ id }) => foodOf(id).kind));

/** The kind of a food by one of its names; nothing where the pantry does not know it, or it could be several. */
export function kindOf(text: string): FoodKind | undefined {
  const [kind, ...others] = kindsNamed(text);
  return others.length === 0 ? kind : undefined;
}

/** The words that say the food is in oil; common practice. */
const OIL = new Set(['oil', 'oils']);
const saysOil = (text: string): boolean =>
  nameKey(text)
    .split(' ')
    .some((word) => OIL.has(word));

/** Whether any name in the record says oil: what was made, a food or its form, what went in or came out. */
export function inOil({ name, lots, additions = [], output = [], process }: BatchRecord): boolean {
  const names = [
    name,
    ...lots.flatMap(({ food, form = '' }) => [food, form]),
    ...[...additions, ...output].map(({ what }) => what),
    process?.food ?? '',
  ];
  return names.some(saysOil);
}
