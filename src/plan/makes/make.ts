/** One reader for all products: the recipe says where it ends, and that decides how it is planned. */
import { fail } from '../../errors/StillroomError';
import type { FoundFood } from '../../foods/fields';
import { saidOf } from '../../foods/phrases';
import { formName } from '../../foods/tables';
import { formatQuantity } from '../../quantity/formatQuantity';
import { isFor } from '../../recipes/rows/rows';
import { windowsOf } from '../kitchen/hours';
import type { Window } from '../request/daySchedule';
import { DAY, MOST_DAYS } from '../request/planFields';
import type { Wanted } from '../request/planInput';
import { makeCanned } from './canned';
import { makeInFreezer } from './inFreezer';
import { makeKeptCold } from './keptCold';
import { type Day, isMaking, type LeftOutProduct, leftOut, type Made, type Product } from './making';
import { makeOnTrays } from './onTrays';
import { ownRow, packOf } from './ownBook';
import { lotsOf, productOf, recipesFor, scopeLine } from './product';
import { tasteOf } from './taste';
import { type End, stepsOf, workOf } from './work';

type Maker = (day: Day, product: Product) => Made;
const MAKERS: Readonly<Record<End, Maker>> = {
  can: makeCanned,
  dry: makeOnTrays,
  'freeze-dry': makeOnTrays,
  freeze: makeInFreezer,
  ferment: makeKeptCold,
  'keep cold': makeKeptCold,
};

/** The foods that a product is made of: those named, or every food of the lots that the recipe is for. */
function foodsOf(day: Day, { from, recipe, make, own }: Wanted): readonly FoundFood[] {
  if (from !== undefined) return from;
  const bought = day.lots.map(({ food, trade }): FoundFood => ({ id: food, name: trade }));
  const each = bought.filter(({ id }, place) => bought.findIndex((other) => other.id === id) === place);
  if (recipe !== undefined) {
    const fit = each.filter(({ id }) => isFor(recipe, id));
    return recipe.mix === 'may mix' || recipe.mix === 'as printed' ? fit : fit.slice(0, 1);
  }
  if (each.length === 1) return each;
  if (own !== undefined) return fail('MISSING', 'from', undefined, 'all foods that go into the jars');
  const options = each.map(({ name }) => name);
  if (make === undefined) fail('MISSING', 'recipe', undefined, 'a recipe, or what to make');
  return fail('MISSING', 'from', undefined, 'the food it is made from', { options });
}

/** A product by one recipe; what must stand longer than there are hours is for another day. */
function makeBy(day: Day, product: Product): Made {
  const { wanted, row, food } = product;
  const line = scopeLine(row, food.id);
  if (line?.bought === true && line.form !== undefined) {
    const { phrase } = saidOf(food.name, formName(line.form));
    const text = `${row.name} is made of ${phrase} that is bought, and its page does not say how to make that`;
    return leftOut(wanted, { code: 'bought-form', text, instead: 'make it by its page, outside the plan' });
  }
  const { end, soak } = workOf(row, packOf(wanted) === 'raw' || stepsOf(row, 'hot').length === 0 ? 'raw' : 'hot');
  const windows = windowsOf(day.request.kitchen);
  const span = (windows[windows.length - 1] as Window).endMinute - (windows[0] as Window).startMinute;
  if (soak < span) return MAKERS[end](day, product);
  const hours = formatQuantity({ value: Math.ceil(soak / 6) / 10, unit: 'h' });
  const text = `${row.name} stands for ${hours} before it is cooked or filled, longer than these hours of work`;
  const days = Math.ceil(soak / DAY) + 1;
  const apart = `follow its recipe apart from the plan, which is of ${MOST_DAYS} days at most`;
  const instead = days > MOST_DAYS ? apart : `plan it over ${days} days`;
  return leftOut(wanted, { code: 'stands-too-long', text, instead });
}

/** Makes one wanted product ready for the program; or says why it is left out. */
export function makeProduct(day: Day, wanted: Wanted, index: number): Made {
  const { own } = wanted;
  const foods = foodsOf(day, wanted);
  const lots = lotsOf(
    day,
    foods.map(({ id }) => id),
  );
  const missing = foods.filter(({ id }) => !lots.some((lot) => lot.food === id));
  if (missing.length > 0 || foods.length === 0) {
    const what = missing.map(({ name }) => name).join(' or ') || (wanted.recipe?.name ?? 'such food');
    const text = `you have no ${what} in your lots`;
    return leftOut(wanted, { code: 'no-lot', text, instead: 'add the lot, or leave the product out' });
  }
  const rows = own === undefined ? recipesFor(day, wanted, foods) : [ownRow(own, foods[0] as FoundFood)];
  if (!('length' in rows)) return rows;
  let refused: LeftOutProduct | undefined;
  for (const row of rows) {
    const plain = productOf(wanted, index, row, foods, lots);
    const taste = tasteOf(day, plain);
    const made = 'length' in taste ? makeBy(day, { ...plain, taste }) : taste;
    if (isMaking(made)) return made;
    refused ??= made;
  }
  return refused as LeftOutProduct;
}
