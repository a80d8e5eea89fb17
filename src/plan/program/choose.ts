/** What a plan makes of the lots where the cook names no products: the ways that these foods can be kept in this kitchen. */
import { foodOf } from '../../foods/tables';
import { valueIn } from '../../quantity/scale';
import { keepingOf } from '../../recipes/keeping';
import { isFor, RECIPES } from '../../recipes/rows/rows';
import type { Makes, RecipeRow } from '../../recipes/rows/tables';
import { placeInOrder } from '../../recipes/ways/order';
import { customary } from '../customary';
import { makeProduct } from '../makes/make';
import { type Day, isMaking, type Making } from '../makes/making';
import { isPulp, othersOf, pantryLacking } from '../makes/product';
import type { Wanted } from '../request/planInput';

/** What the plan chose, ready for the program. */
export interface Chosen {
  readonly wanted: Wanted;
  readonly making: Making;
}

/** A recipe for a food, and its place among the usual ones. */
interface Candidate {
  readonly row: RecipeRow;
  readonly foods: readonly string[];
  readonly rank: number;
}

/** Products looked at for one food: more would only take time. */
const MOST_OF_A_FOOD = 6;

/** Whether the cook never wants a recipe, by its name or by what it makes. */
const isNever = (row: RecipeRow, never: readonly Wanted[]): boolean =>
  never.some(({ recipe, make }) => (recipe === undefined ? make?.makes.includes(row.makes) : recipe.id === row.id));

/** The recipes for the foods of a day that need no other main food, the usual ones first; pulps of several mix. */
function candidatesOf(day: Day, never: readonly Wanted[]): Candidate[] {
  const foods = [...new Set(day.lots.map(({ food }) => food))];
  const bought = new Set(foods);
  return foods.flatMap((food) => {
    const rows = RECIPES.filter((row) => isFor(row, food) && !isNever(row, never)).flatMap((row): Candidate[] => {
      const rank = placeInOrder(foodOf(food).kind, row.makes);
      if (rank === undefined) return [];
      if (othersOf(row, [food]).some((line) => line.food === undefined || !bought.has(line.food))) return [];
      const mixed = row.mix === 'may mix' && isPulp(row) ? foods.filter((each) => isFor(row, each)) : [food];
      // a mixture is looked at once, for the first of its foods
      return mixed[0] === food ? [{ row, foods: mixed, rank }] : [];
    });
    return rows
      .map((each) => ({ ...each, lacking: pantryLacking(day, each.row) }))
      .sort((one, other) => one.lacking - other.lacking || one.rank - other.rank || one.row.foods.length - other.row.foods.length);
  });
}

/** Months that a recipe keeps here, at most a year: what keeps longer is eaten by then. */
function monthsKept(day: Day, row: RecipeRow): number {
  const { freezer } = day.request.kitchen;
  const months = row.keeps.map((keep) => {
    const { place, high } = keepingOf(keep);
    if (place === 'freezer' && freezer === undefined) return 0;
    if ('process' in keep) return YEAR;
    return high === undefined ? customary('months-not-printed') : valueIn(high, 'day') / DAYS_IN_MONTH;
  });
  return Math.min(YEAR, Math.max(0, ...months));
}
const YEAR = 12;
const DAYS_IN_MONTH = 30.4;

/**
 * What one unit is worth to a plan that chooses: the kilograms it keeps, by the share of a year that they keep, a little
 * less for what is further down the usual order, less what its work weighs.
 */
function worthOf(day: Day, { activity, row }: Making, rank: number): number {
  const { supplies, handsPerKg, handsPerUnit } = activity;
  const kg = 1 / Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.likely));
  const kept = (kg * monthsKept(day, row)) / YEAR;
  const hours = (handsPerKg * kg + handsPerUnit) / 60;
  const usual = Math.max(0.5, 1 - rank * customary('less-usual'));
  return Math.max(0.001 * kg, kept * usual - hours * customary('hour-of-work'));
}

/** The products that a plan is to choose among, with what one unit of each is worth. */
export function choose(day: Day, never: readonly Wanted[], from: number): Chosen[] {
  const chosen: Chosen[] = [];
  const made = new Map<string, Set<Makes>>();
  for (const { row, foods, rank } of candidatesOf(day, never)) {
    const [first] = foods as readonly [string, ...string[]];
    const kinds = made.get(first) ?? new Set<Makes>();
    if (kinds.has(row.makes) || kinds.size >= MOST_OF_A_FOOD) continue;
    const wanted: Wanted = { recipe: row, from: foods.map((id) => ({ id, name: foodOf(id).name })) };
    const making = makeProduct(day, wanted, from + chosen.length);
    if (!isMaking(making)) continue;
    made.set(first, kinds.add(row.makes));
    const worth = worthOf(day, making, rank);
    chosen.push({ wanted: { ...wanted, worth: { value: worth } }, making: { ...making, activity: { ...making.activity, worth } } });
  }
  return chosen;
}
