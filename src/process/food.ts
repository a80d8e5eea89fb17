/** What the tables hold on a food, and which of its tested forms a caller means. */
import { nameKey } from '../common/names';
import { fail } from '../errors/StillroomError';
import { readForm as readFormName, readFood as readName } from '../foods/fields';
import { formsIn, isWithin } from '../foods/isWithin';
import { foodsNamed, formNamed } from '../foods/lookUpFood';
import { foodOf, formName, nameOf } from '../foods/tables';
import { foodsOf, isItself, madeOf, recipesOfProcess } from './scope';
import { formNameRows, type NotRecommendedRow, notRecommendedRows, type ProcessRow, recipes, rowsOf } from './tables';

/** A recipe that is tested for a food, in the form that it is asked for by. */
export interface FormChoice {
  readonly recipe: string;
  /** Id of the food and the form that its page is for. */
  readonly food: string;
  readonly form: string;
  /** Id of the food it is tested for, which the page of its rows names. */
  readonly asked: string;
  /** Whether the page is for the food as such (a blueberry is a berry), and not for a product made of it. */
  readonly own: boolean;
}

/** A food, what is tested for it, and what is not canned of it. */
export interface KnownFood {
  readonly id: string;
  /** Its trade name. */
  readonly name: string;
  readonly choices: readonly FormChoice[];
  readonly notCanned: readonly NotRecommendedRow[];
}

const rowsByChoice = new WeakMap<FormChoice, readonly ProcessRow[]>();
/** The rows that a choice means: of its recipe, those whose page names the food asked for. */
export function rowsOfChoice(choice: FormChoice): readonly ProcessRow[] {
  let rows = rowsByChoice.get(choice);
  if (rows === undefined) {
    rows = rowsOf(choice.recipe).filter((row) => foodsOf(row).includes(choice.asked));
    rowsByChoice.set(choice, rows);
  }
  return rows;
}

const choicesOf = (asked: string): FormChoice[] =>
  [...recipes()].flatMap(([recipe, rows]) => {
    const naming = rows.filter((row) => foodsOf(row).includes(asked));
    const [first] = naming;
    if (first === undefined) return [];
    const own = naming.some((row) => isItself(row, asked));
    return [{ recipe, food: first.food, form: first.form, asked, own }];
  });

const known = new Map<string, KnownFood>();
/** What the tables hold on the food of this id. */
export function knowledgeOf(id: string): KnownFood {
  let found = known.get(id);
  if (found === undefined) {
    const notCanned = notRecommendedRows.filter((row) => row.foods.includes(id));
    found = { id, name: nameOf(id), choices: choicesOf(id), notCanned };
    known.set(id, found);
  }
  return found;
}

/** Whether a printed recipe that ends in a process names a food. */
const recipeNames = (process: string, food: string): boolean =>
  recipesOfProcess(process).some(({ foods }) => foods.includes(food));

/**
 * The choice of a process for a food that its page, or a recipe that ends in it, names; none for any other food. Where no
 * food alone makes it (spaghetti sauce), it is the choice of what the recipe makes.
 */
export function choiceOfProcess(
  food: KnownFood,
  process: string,
): { readonly food: KnownFood; readonly choice: FormChoice } | undefined {
  const makes = recipeNames(process, food.id) ? rowsOf(process).map((row) => knowledgeOf(row.food)) : [];
  for (const each of [food, ...makes]) {
    const choice = each.choices.find(({ recipe }) => recipe === process);
    if (choice !== undefined) return { food: each, choice };
  }
  return undefined;
}

const otherNames = new Map(formNameRows.map((row) => [row.recipe, row]));
const wordKeys = new Map(formNameRows.map((row) => [row.recipe, (row.words ?? []).map(nameKey)]));
type Page = Pick<FormChoice, 'recipe' | 'form' | 'own'>;
/** Whether the form of a recipe goes by a text: a form of its page, or another word that the table of names has. */
function goesBy({ recipe, form, own }: Page, id: string | undefined, key: string): boolean {
  if (id !== undefined && (formsIn(form).includes(id) || otherNames.get(recipe)?.forms?.includes(id))) return true;
  // beef as beef is no stock: such words are for the product itself, never for what it is made of
  return own && wordKeys.get(recipe)?.includes(key) === true;
}

/** The products of a food that a text names (ketchup of tomatoes, sauerkraut of cabbage). */
function productsNamed(choices: readonly FormChoice[], text: string): readonly FormChoice[] {
  const [product, ...more] = foodsNamed(text);
  if (product === undefined || more.length > 0) return [];
  const { id, form } = product;
  return choices.filter((choice) => choice.food === id && (form === undefined || goesBy(choice, form, '')));
}

/** Of several products, the one whose name the form and the food make together: `pickled` beets are pickled beets. */
function namedTogether(food: KnownFood, text: string, choices: readonly FormChoice[]): readonly FormChoice[] {
  const named = choices.length > 1 ? productsNamed(choices, `${text} ${food.name}`) : [];
  return named.length === 1 ? named : choices;
}

/** The tested forms of a food that a text names; its own rows beat those of a product, a form's own name the others. */
export function matchForm(food: KnownFood, text: string): readonly FormChoice[] {
  const id = formNamed(text);
  const key = nameKey(text);
  const fits = food.choices.filter((choice) => goesBy(choice, id, key));
  const found = fits.length > 0 ? fits : productsNamed(food.choices, text);
  const own = found.filter((choice) => choice.own);
  const best = own.length > 0 ? own : found;
  const exact = best.filter((choice) => choice.form === id);
  return namedTogether(food, text, exact.length > 0 ? exact : best);
}

const ANY_FORM = 'every form';
/** Whether a row of what is not canned speaks of the form of this id, or of every form. */
const speaksOf = ({ covers, forms = [] }: NotRecommendedRow, id: string | undefined): boolean =>
  covers === ANY_FORM || (id !== undefined && forms.some((form) => formsIn(form).includes(id) || isWithin(id, form)));

/** The rows of what is not canned that speak of this form by name, or of the whole food. */
export const refusedForm = (food: KnownFood, text: string | undefined): readonly NotRecommendedRow[] => {
  const id = text === undefined ? undefined : formNamed(text);
  return food.notCanned.filter((row) => speaksOf(row, id));
};
/** The same for a form that is tested. */
export const refusedChoice = (food: KnownFood, choice: FormChoice): readonly NotRecommendedRow[] =>
  food.notCanned.filter((row) => row.covers === ANY_FORM || row.forms?.includes(choice.form) === true);
/** The row that bars all of a food for which no process is named. */
export const refusedElse = (food: KnownFood): NotRecommendedRow | undefined =>
  food.notCanned.find((row) => row.covers === 'every form without a process');

/** A page for several foods that goes by a text. */
export interface OtherPage {
  readonly food: string;
  readonly form: string;
  /** Ids of the foods that it names. */
  readonly names: readonly string[];
}
/** Pages in this form that are for a wider food or for many foods of this kind, and do not name the food. */
export function pagesWithout(food: KnownFood, text: string): readonly OtherPage[] {
  const { kind, wider = [] } = foodOf(food.id);
  const id = formNamed(text);
  const key = nameKey(text);
  return [...recipes()].flatMap(([recipe, rows]) => {
    const [row] = rows as readonly [ProcessRow];
    if (!goesBy({ recipe, form: row.form, own: true }, id, key) || rows.some((each) => foodsOf(each).includes(food.id)))
      return [];
    const [first, second] = madeOf(row);
    const forMany = first !== undefined && second !== undefined && foodOf(first).kind === kind;
    const isKind = row.food === food.id || wider.some((each) => each.food === row.food);
    if (!forMany && !isKind) return [];
    return [{ food: row.food, form: row.form, names: [...new Set(rows.flatMap(foodsOf))] }];
  });
}

/** A food that a caller named, and the id of the form that its name held: `halves` of `peach halves`. */
export interface Reading {
  readonly food: KnownFood;
  readonly form?: string;
}

/**
 * The food a text names, with the form where the text holds one.
 *
 * @throws StillroomError UNKNOWN_NAME offering the nearest names, or listing the foods it could be
 */
export function readFood(text: string, path = 'food'): Reading {
  const { id, form } = readName(text, path);
  return { food: knowledgeOf(id), ...(form === undefined ? {} : { form }) };
}

/** What was resolved of the form: a tested one, or the text that no tested form goes by. */
export type FormReading = { readonly choice: FormChoice; readonly only: boolean } | { readonly unknown: string };

/** A choice in words. */
export const choiceText = ({ own, food, form }: FormChoice): string =>
  own || food === form ? formName(form) : `${formName(form)} (${nameOf(food)})`;

/**
 * The form asked for, from the field and from what the food's name held.
 *
 * @throws StillroomError MISSING when there are several and none is named, UNKNOWN_NAME when a text names several or is
 * the name of no form, CONTRADICTION when food and form name different ones
 */
export function readForm(reading: Reading, given: string | undefined): FormReading {
  const { food } = reading;
  const listed = (choices: readonly FormChoice[]) => choices.map(choiceText);
  const held = reading.form === undefined ? undefined : formName(reading.form);
  const texts = [held, given].filter((text) => text !== undefined);
  if (texts.length === 0) return onlyForm(food);
  const matches = texts.map((text) => matchForm(food, text));
  const lost = texts.find((_, index) => matches[index]?.length === 0);
  if (lost !== undefined) {
    // a word that is no form at all is a mistake of the question, not a gap of the tables
    if (lost === given && foodsNamed(lost).length === 0) readFormName(given, 'form');
    return { unknown: lost };
  }
  const shared = (matches[0] ?? []).filter((choice) => matches.every((match) => match.includes(choice)));
  const [choice] = shared;
  if (choice === undefined) {
    const options = listed(matches[0] ?? []);
    fail('CONTRADICTION', 'form', given, `a form that agrees with the food's name, ${options.join('; ')}`, { options });
  }
  if (shared.length > 1) {
    const options = listed(shared);
    fail('UNKNOWN_NAME', 'form', given ?? held, `one of: ${options.join('; ')}`, { options });
  }
  return { choice, only: false };
}

/** The form of a food that is tested in one alone. */
function onlyForm(food: KnownFood): FormReading {
  if (food.choices.length === 0) return { unknown: '' };
  const own = food.choices.filter((choice) => choice.own);
  const [one] = own;
  // another product made of the food (beans pickled, turkey as stock) is only served by its name
  if (one !== undefined && own.length === 1) return { choice: one, only: true };
  const options = food.choices.map(choiceText);
  return fail('MISSING', 'form', undefined, `one of the tested forms of ${food.name}: ${options.join('; ')}`, {
    options,
  });
}
