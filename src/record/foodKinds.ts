/** What kind of food a record's names stand for, and whether a word of them says oil. */
import kindsJson from '../../data/record/kinds-of-foods.json';
import { findNamed, type Named, nameKey } from '../common/names';
import { StillroomError } from '../errors/StillroomError';
import { foodsNamed } from '../foods/lookUpFood';
import { foodOf } from '../foods/tables';
import { readFood } from '../process/food';
import type { BatchRecord } from './batchRecord';

export type FoodKind = 'fruit' | 'vegetable' | 'meat' | 'poultry' | 'fish' | 'egg' | 'dairy';
interface KindRow extends Named {
  readonly kind: FoodKind;
}
/** Foods that are no fruit or vegetable, sorted by trade use: common practice. */
const kinds = kindsJson as readonly KindRow[];

/** The answer of other modules, or nothing where their tables do not know the name or need to hear more. */
export function orNothing<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (error) {
    if (error instanceof StillroomError) return undefined;
    throw error;
  }
}

/** The kind of a food by one of its own names; nothing where no list holds it, or where it could be several. */
export function kindByName(text: string): FoodKind | undefined {
  const found: readonly (Named & { readonly kind: FoodKind })[] = [
    ...foodsNamed(text).flatMap(({ id }): (Named & { readonly kind: FoodKind })[] => {
      const { name, kind } = foodOf(id);
      return kind === 'fruit' || kind === 'vegetable' ? [{ name, kind }] : [];
    }),
    ...findNamed(text, kinds),
  ];
  const [kind, ...others] = new Set(found.map((row) => row.kind));
  return others.length === 0 ? kind : undefined;
}

/** The kind of what a record names, where the text may hold a form too: `peach halves`. */
export const kindOf = (text: string): FoodKind | undefined =>
  kindByName(text) ?? kindByName(orNothing(() => readFood(text))?.food.name ?? '');

/** The words that say the food stands in oil; common practice. */
const OIL = new Set(['oil', 'oils']);
const saysOil = (text: string): boolean =>
  nameKey(text)
    .split(' ')
    .some((word) => OIL.has(word));

/** Whether any name in the record says oil: the product, a food or its form, what was added or came out. */
export function inOil({ product, produce, added = [], made = [], process }: BatchRecord): boolean {
  const names = [
    product,
    ...produce.flatMap(({ produce: food, form = '' }) => [food, form]),
    ...[...added, ...made].map(({ what }) => what),
    process?.food ?? '',
  ];
  return names.some(saysOil);
}
