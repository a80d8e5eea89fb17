/** What a plan makes of the lots where the cook names no products: the ways that these foods can be kept in this kitchen. */
import { foodOf } from '../../foods/tables';
import { valueIn } from '../../quantity/scale';
import { keepingOf } from '../../recipes/keeping';
import { isFor, RECIPES } from '../../recipes/rows/rows';
import type { Makes, RecipeRow } from '../../recipes/rows/tables';
import { amongTheSame, placeInOrder } from '../../recipes/ways/order';
import { customary } from '../figures/customary';
import { makeProduct } from '../makes/make';
import { type Day, isMaking, type LeftOutProduct, type Making } from '../makes/making';
import { isPulp, othersOf, pantryLacking } from '../makes/product';
import { makesOf } from '../request/planFields';
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

/** Products looked at for one food, and for a whole day: more would only take time. */
const MOST_OF_A_FOOD = 7;
const MOST_OF_A_DAY = 28;
/** Closed ways that are named for one food. */
const MOST_CLOSED = 3;

/** Whether the cook never wants a recipe, by its name or by what it makes. */
const isNever = (row: RecipeRow, never: readonly Wanted[]): boolean =>
  never.some(({ recipe, make }) => (recipe === undefined ? make?.makes.includes(row.makes) : recipe.id === row.id));

/** The recipes for the foods of a day that need no other main food, the usual ones first; pulps of several mix. */
function candidatesOf(day: Day, never: readonly Wanted[]): Candidate[] {
  const foods = [...new Set(day.lots.map(({ food }) => food))];
  const bought = new Set(foods);
  return foods.flatMap((food) => {
    const rows = RECIPES.filter((row) => isFor(row, food) && !isNever(row, never)).flatMap((row): Candidate[] => {
      const rank = placeInOrder(food, row.makes);
      if (rank === undefined) return [];
      if (othersOf(row, [food]).some((line) => line.food === undefined || !bought.has(line.food))) return [];
      const mixed = row.mix === 'may mix' && isPulp(row) ? foods.filter((each) => isFor(row, each)) : [food];
      // a mixture is looked at once, for the first of its foods
      return mixed[0] === food ? [{ row, foods: mixed, rank }] : [];
    });
    return rows
      .map((each) => ({ ...each, lacking: pantryLacking(day, each.row) }))
      .sort(
        (one, other) =>
          one.lacking - other.lacking ||
          placeOf(day, one) - placeOf(day, other) ||
          amongTheSame(food, one.row.id) - amongTheSame(food, other.row.id) ||
          one.row.foods.length - other.row.foods.length,
      );
  });
}

/** A machine that the cook owns is meant to be used: what goes into it is looked at among the first. */
const placeOf = ({ request: { kitchen } }: Day, { row, rank }: Candidate): number =>
  kitchen.freezeDryer !== undefined && row.makes === 'freeze-dried' ? Math.min(rank, OWN_MACHINE) : rank;
const OWN_MACHINE = 3;

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

/** What a plan may choose among, and the usual ways that this kitchen closes. */
export interface Choice {
  readonly open: readonly Chosen[];
  readonly closed: readonly { readonly wanted: Wanted; readonly why: LeftOutProduct }[];
}

/** The smallest batch that is worth the trouble: half a canner load, unless there is less of the food than that. */
function smallestOf({ activity: { canning, supplies } }: Making, day: Day): number | undefined {
  const least = Math.min(...(canning?.canners ?? []).map(({ jars }) => jars));
  if (!Number.isFinite(least)) return undefined;
  const all = supplies.reduce((sum, { lot, unitsPerKg }) => sum + unitsPerKg.low * (day.lots[lot]?.usableKg ?? 0), 0);
  return Math.max(1, Math.min(Math.ceil(least * customary('least-load')), Math.floor(all)));
}

/** The products that a plan is to choose among, with what one unit of each is worth. */
export function choose(day: Day, never: readonly Wanted[], from: number): Choice {
  const open: Chosen[] = [];
  const closed: Choice['closed'][number][] = [];
  const made = new Map<string, Set<string>>();
  const count = new Map<string, number>();
  for (const { row, foods, rank } of candidatesOf(day, never)) {
    const [first] = foods as readonly [string, ...string[]];
    const kinds = made.get(first) ?? new Set<string>();
    const family = familyOf(row.makes);
    if (kinds.has(family) || kinds.size >= MOST_OF_A_FOOD || open.length >= MOST_OF_A_DAY) continue;
    const wanted: Wanted = { recipe: row, from: foods.map((id) => ({ id, name: foodOf(id).name })) };
    const making = makeProduct(day, wanted, from + open.length);
    if (!isMaking(making)) {
      const shut = count.get(`${first} ${making.code}`) ?? 0;
      count.set(`${first} ${making.code}`, shut + 1);
      if (shut === 0 && closed.filter(({ wanted: { from: of } }) => of?.[0]?.id === first).length < MOST_CLOSED)
        closed.push({ wanted, why: making });
      continue;
    }
    made.set(first, kinds.add(family));
    const worth = worthOf(day, making, rank);
    const smallest = smallestOf(making, day);
    const own = { worth, ...(smallest === undefined ? {} : { smallest }) };
    open.push({
      wanted: { ...wanted, worth: { value: worth } },
      making: { ...making, activity: { ...making.activity, ...own } },
    });
  }
  return { open, closed: open.length === 0 ? closed : closed.filter(({ why }) => why.code !== 'no-amounts') };
}

/** Spreads are one kind to a cook who has named nothing, whatever their pages call them. */
const familyOf = (makes: Makes): string => (makesOf('jam').includes(makes) ? 'jam' : makes);
