/** Whether the process of a record is printed for the food that the record says is in the jars. */
import { type FormChoice, type KnownFood, matchForm, readFood, readForm, refusedForm } from '../process/food';
import type { BatchRecord } from './batchRecord';
import { kindsNamed, orNothing } from './foodKinds';
import { MIXED, STRANGE_KINDS } from './tables';

/** Whether the printed recipe holds several foods. */
const isMixed = ({ food, form }: FormChoice): boolean =>
  MIXED.some((row) => row.food === food && (row.forms?.includes(form) ?? true));

/** `same`; `other`: the tables know it as something else; `open`: they do not know, or the form is another one. */
type Match = 'same' | 'other' | 'open';

const isRow = (one: FormChoice, other: FormChoice): boolean => one.recipe === other.recipe;

/** How a food compares with the printed rows: its own, those of its kind, or those of a product made of it. */
function matchOf(food: KnownFood, forms: readonly string[], used: FormChoice): Match {
  if (forms.some((form) => refusedForm(food, form).length > 0 && matchForm(food, form).length === 0)) return 'other';
  if (!food.choices.some((choice) => isRow(choice, used))) return 'other';
  // a product such as jam or pickles prepares its food in its own way, however the food was cut
  const product = !food.choices.some((choice) => choice.own && isRow(choice, used));
  const fits = forms.every((form) => matchForm(food, form).some((choice) => isRow(choice, used)));
  return fits || (product && forms.every((form) => matchForm(food, form).length === 0)) ? 'same' : 'open';
}

function matchText(text: string, form: string | undefined, used: FormChoice): Match | undefined {
  const read = orNothing(() => readFood(text));
  if (read === undefined) return undefined;
  return matchOf(
    read.food,
    [read.form, form].filter((each) => each !== undefined),
    used,
  );
}

/** Whether something that went in makes another recipe of a process for a single food. */
const isStranger = (what: string, used: FormChoice): boolean =>
  [...kindsNamed(what)].some((kind) => STRANGE_KINDS.has(kind)) && matchText(what, undefined, used) !== 'same';

/** What the record shows of it: the process is for this food, for another one, or it leaves that open. */
export function sameFood({ name, lots, additions = [], process }: BatchRecord): Match {
  if (process === undefined) return 'open';
  const { food, form, recipeFollowed } = process;
  const read = orNothing(() => readForm(readFood(food), form));
  if (read === undefined || 'unknown' in read) return 'open';
  const used = read.choice;
  const whole = matchText(name, undefined, used);
  const parts = lots.map((row) => matchText(row.food, row.form, used));
  const all = whole === undefined ? parts : [...parts, whole];
  const recipe = isMixed(used);
  // another food as the only one, or together with a single-food process, is a stranger, no matter what the record claims
  if (!recipe && all.includes('other')) return 'other';
  if (recipe && !all.includes('same')) return all.every((match) => match === 'other') ? 'other' : 'open';
  if (recipe) return recipeFollowed === true ? 'same' : 'open';
  const strangers = additions.some(({ what }) => isStranger(what, used));
  return strangers || all.some((match) => match !== 'same') ? 'open' : 'same';
}
