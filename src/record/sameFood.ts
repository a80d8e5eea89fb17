/** Whether the process of a record is printed for the food that the record says is in the jars. */
import mixedJson from '../../data/record/mixed-foods.json';
import { type FormChoice, type KnownFood, matchForm, readFood, readForm, refusedForm } from '../process/food';
import type { BatchRecord } from './batchRecord';
import { kindByName, orNothing } from './foodKinds';

/** A process food whose printed recipe holds several foods. */
interface MixedRow {
  readonly food: string;
  /** Its forms that are mixtures; every form where left out. */
  readonly forms?: readonly string[];
}
const mixed = mixedJson as readonly MixedRow[];
const isMixed = ({ food, form }: FormChoice): boolean =>
  mixed.some((row) => row.food === food && (row.forms?.includes(form) ?? true));

/** `same`; `other`: the tables know it as something else; `open`: they do not know, or the form is another one. */
type Match = 'same' | 'other' | 'open';

const isRow = (one: FormChoice, other: FormChoice): boolean => one.recipe === other.recipe;

/** How a food stands to the printed rows: its own, or those of its kind or of a product made of it. */
function matchOf(food: KnownFood, forms: readonly string[], used: FormChoice): Match {
  if (forms.some((form) => refusedForm(food, form).length > 0 && matchForm(food, form).length === 0)) return 'other';
  if (!food.choices.some((choice) => isRow(choice, used))) return 'other';
  // a product such as jam or pickles prepares its food in its own way, whatever the food was cut to
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

/** What the record shows of it: the process is for this food, for another one, or nobody can tell. */
export function sameFood({ product, produce, added = [], process }: BatchRecord): Match {
  if (process === undefined) return 'open';
  const { food, form, recipeFollowed } = process;
  const read = orNothing(() => readForm(readFood(food), form));
  if (read === undefined || 'unknown' in read) return 'open';
  const used = read.choice;
  const whole = matchText(product, undefined, used);
  const parts = produce.map((row) => matchText(row.produce, row.form, used));
  const all = whole === undefined ? parts : [...parts, whole];
  const recipe = isMixed(used);
  // another food as the only one, or beside a single-food process, is a stranger whatever the record claims
  if (!recipe && all.includes('other')) return 'other';
  if (recipe && !all.includes('same')) return all.every((match) => match === 'other') ? 'other' : 'open';
  const strangers = added.some(({ what }) => {
    const kind = kindByName(what);
    return kind !== undefined && kind !== 'fruit' && matchText(what, undefined, used) !== 'same';
  });
  if (recipe) return recipeFollowed === true ? 'same' : 'open';
  return strangers || all.some((match) => match !== 'same') ? 'open' : 'same';
}
