/** Finds the food and form a caller means among the names of the tables. */
import { findNamed, lookUp, nameKey } from '../common/names';
import { fail } from '../errors/StillroomError';
import { foodsOf, isItself } from './scope';
import { type FoodEntry, foods, type NotRecommendedRow, notRecommendedRows, type ProcessRow, rowsOf } from './tables';

/** A form that is tested for a food: the food and form of its rows. */
export interface FormChoice {
  readonly food: string;
  readonly form: string;
  /** The food it is tested for, which the page of its rows names. */
  readonly asked: string;
  /** Whether the page is for the food as such (a blueberry is a berry), and not for a product made of it. */
  readonly own: boolean;
  /** The form's name, and all its names, as they are compared. */
  readonly key: string;
  readonly keys: ReadonlySet<string>;
}

/** A food, what is tested for it, and what is not canned of it. */
export interface KnownFood {
  readonly entry: FoodEntry;
  readonly choices: readonly FormChoice[];
  readonly notCanned: readonly NotRecommendedRow[];
}

/**
 * The form in which forms are compared. Food packed in syrup is not a syrup, though small words drop out of names:
 * `cherries in syrup` are cherries.
 */
const formKey = (text: string): string => nameKey(text.replace(/\bin\s(?:[a-z]{1,12}\s){0,2}syrup\b/i, 'syrup-packed'));
const keysOf = (names: readonly string[]): Set<string> => new Set(names.map(formKey));

const rowsNaming = (food: string, form: string, asked: string) =>
  rowsOf(food, form).filter((row) => foodsOf(row).includes(asked));
const rowsByChoice = new WeakMap<FormChoice, readonly ProcessRow[]>();
/** The rows that a choice stands for: of its food and form, those whose page names the food asked for. */
export function rowsOfChoice(choice: FormChoice): readonly ProcessRow[] {
  let rows = rowsByChoice.get(choice);
  if (rows === undefined) {
    rows = rowsNaming(choice.food, choice.form, choice.asked);
    rowsByChoice.set(choice, rows);
  }
  return rows;
}

/** Every form of every food as a choice for the food asked for, whether or not its page names that food. */
const allForms = (asked: string): (FormChoice & { readonly head: FoodEntry })[] =>
  foods.flatMap((head) =>
    Object.entries(head.forms ?? {}).map(([form, names]) => ({
      head,
      food: head.name,
      form,
      asked,
      own: head.name === asked || rowsOf(head.name, form).some((row) => isItself(row, asked)),
      key: formKey(form),
      keys: keysOf(
        head.name === asked
          ? [form, ...names, ...(head.alone?.[form] ?? [])]
          : // `pickled beets` and `ketchup` name the form of a beet and a tomato
            [form, ...names, head.name, ...(head.synonyms ?? [])],
      ),
    })),
  );

const choicesOf = (entry: FoodEntry): FormChoice[] =>
  allForms(entry.name)
    .filter((choice) => rowsOfChoice(choice).length > 0)
    .map(({ head, ...choice }) => choice);

const wideForms = new Map<string, readonly FormChoice[]>();
/** Forms of a wide name (a syrup of berries, a puree of fruit) that go by this text, and do not name the food. */
export function unnamedForms(entry: FoodEntry, text: string): readonly FormChoice[] {
  let forms = wideForms.get(entry.name);
  if (forms === undefined) {
    forms = allForms(entry.name).filter((choice) => choice.head.wide === true && rowsOfChoice(choice).length === 0);
    wideForms.set(entry.name, forms);
  }
  return forms.filter((choice) => choice.keys.has(formKey(text)));
}

const entryOf = (name: string): FoodEntry | undefined => foods.find((entry) => entry.name === name);

const known = new Map<FoodEntry, KnownFood>();
/** What the tables hold on a food. */
export function knowledgeOf(entry: FoodEntry): KnownFood {
  let found = known.get(entry);
  if (found === undefined) {
    const kinds = [entry.name, ...(entry.of ?? [])];
    const notCanned = notRecommendedRows.filter((row) => row.foods.some((name) => kinds.includes(name)));
    found = { entry, choices: choicesOf(entry), notCanned };
    known.set(entry, found);
  }
  return found;
}

/** The tested forms of a food that a text names; a form's own name beats another's synonym, own rows beat a family's. */
export function matchForm(food: KnownFood, text: string): readonly FormChoice[] {
  const key = formKey(text);
  const found = food.choices.filter((choice) => choice.keys.has(key));
  const own = found.filter((choice) => choice.own);
  const best = own.length > 0 ? own : found;
  const exact = best.filter((choice) => choice.key === key);
  return exact.length > 0 ? exact : best;
}

const refusedKeys = new Map(notRecommendedRows.map((row) => [row, keysOf(row.forms)]));
/** The not-recommended rows that speak of this form by name, or of the whole food. */
export const refusedForm = (food: KnownFood, text: string | undefined): readonly NotRecommendedRow[] =>
  food.notCanned.length === 0 ? [] : refusedKey(food, text === undefined ? undefined : formKey(text));
const refusedKey = (food: KnownFood, key: string | undefined): readonly NotRecommendedRow[] =>
  food.notCanned.filter(
    (row) => row.forms.includes('any') || (key !== undefined && refusedKeys.get(row)?.has(key) === true),
  );
/** The same for a form that is tested. */
export const refusedChoice = (food: KnownFood, choice: FormChoice): readonly NotRecommendedRow[] =>
  refusedKey(food, choice.key);

/** Every name of every food as a list of words, for texts that hold food and form together. */
let phrases: { entry: FoodEntry; words: readonly string[] }[] | undefined;
let standAlone: { entry: FoodEntry; form: string; key: string }[] | undefined;

interface Reading {
  readonly food: KnownFood;
  /** The form that the food's name held: `halves` of `peach halves`. */
  readonly form?: string;
}

/** How well the words beside a food's name are known as its form: its own, a family's, or one that is refused. */
function formScore(food: KnownFood, rest: string): number {
  const matches = matchForm(food, rest);
  if (matches.length > 0) return matches[0]?.own === true ? 3 : 2;
  if (food.notCanned.some((row) => keysOf(row.forms).has(rest))) return 2;
  return food.notCanned.some((row) => row.forms.includes('any')) ? 1 : 0;
}

/** Ways of preparing food that no process of the tables is for. */
const OTHER_FORMS = ['leather', 'powder', 'pulp', 'filling', 'paste', 'wine', 'vinegar', 'candied', 'dried', 'frozen'];
let formWords: Set<string> | undefined;
/** Whether a word names a form of any food, so that `peach butter` is a known food in a form that is not tested. */
function isFormWord(word: string): boolean {
  formWords ??= new Set([
    ...OTHER_FORMS,
    ...foods.flatMap((entry) =>
      Object.entries(entry.forms ?? {}).flatMap(([form, names]) =>
        [form, ...names].flatMap((name) => formKey(name).split(' ')),
      ),
    ),
  ]);
  return formWords.has(word);
}

/** Reads `peach halves`, `grape jelly`, `white peach jam`: the best food whose name is part of the text. */
function readPhrase(text: string): Reading | undefined {
  const words = formKey(text).split(' ');
  phrases ??= foods.flatMap((entry) =>
    [entry.name, ...(entry.synonyms ?? [])].map((name) => ({ entry, words: nameKey(name).split(' ') })),
  );
  const scored = phrases
    .filter((phrase) => phrase.words.length < words.length && phrase.words.every((word) => words.includes(word)))
    .map((phrase) => {
      const rest = [...words];
      for (const word of phrase.words) rest.splice(rest.indexOf(word), 1);
      const food = knowledgeOf(phrase.entry);
      const form = rest.join(' ');
      return { food, form, length: phrase.words.length, score: formScore(food, form) };
    })
    .filter(({ score, form }) => score > 0 || form.split(' ').every((word) => isFormWord(word)))
    .sort((a, b) => b.score - a.score || b.length - a.length);
  return scored[0];
}

/**
 * Which of several foods of one name has the form: `dry beans` with tomato sauce. Not where one of them is never
 * canned as such: `squash` in cubes could still be the summer squash that has no process.
 */
function tellApart(candidates: readonly KnownFood[], form: string): KnownFood | undefined {
  if (candidates.some((food) => !food.choices.some((choice) => choice.own))) return undefined;
  const having = candidates.filter((food) => matchForm(food, form).length > 0);
  return having.length === 1 ? having[0] : undefined;
}

/**
 * The food a text names, with the form where the text holds one.
 *
 * @throws StillroomError UNKNOWN_NAME offering the nearest names, or listing the foods it could be
 */
export function readFood(text: string, form?: string): Reading {
  const exact = findNamed(text, foods);
  const [first] = exact;
  if (first !== undefined && exact.length === 1) return { food: knowledgeOf(first) };
  const byForm = form === undefined ? undefined : tellApart(exact.map(knowledgeOf), form);
  if (byForm !== undefined) return { food: byForm };
  standAlone ??= foods.flatMap((entry) =>
    Object.entries(entry.alone ?? {}).flatMap(([form, names]) =>
      names.map((name) => ({ entry, form, key: nameKey(name) })),
    ),
  );
  const key = nameKey(text);
  const alone = standAlone.find((candidate) => candidate.key === key);
  if (alone !== undefined) return { food: knowledgeOf(alone.entry), form: alone.form };
  const phrase = exact.length === 0 ? readPhrase(text) : undefined;
  return phrase ?? { food: knowledgeOf(lookUp(text, foods, 'food', 'food')) };
}

/** What was resolved of the form: the rows' food and form, or the text that no tested form goes by. */
export type FormReading = { readonly choice: FormChoice; readonly only: boolean } | { readonly unknown: string };

/** A choice in words. */
export const choiceText = (choice: FormChoice): string =>
  choice.own || choice.food === choice.form || entryOf(choice.food)?.wide === true
    ? choice.form
    : `${choice.form} (${choice.food})`;

/**
 * The form asked for, from the field and from what the food's name held.
 *
 * @throws StillroomError MISSING when there are several and none is named, UNKNOWN_NAME when a text names several,
 * CONTRADICTION when food and form name different ones
 */
export function readForm(reading: Reading, given: string | undefined): FormReading {
  const { food } = reading;
  const listed = (choices: readonly FormChoice[]) => choices.map((choice) => choiceText(choice)).join('; ');
  const texts = [reading.form, given].filter((text) => text !== undefined);
  if (texts.length === 0) {
    if (food.choices.length === 0) return { unknown: '' };
    const own = food.choices.filter((choice) => choice.own);
    const [one] = own;
    // another product made of the food (beans pickled, turkey as stock) is only served by its name
    if (one !== undefined && own.length === 1) return { choice: one, only: true };
    fail('MISSING', 'form', given, `one of the tested forms of ${food.entry.name}: ${listed(food.choices)}`);
  }
  const matches = texts.map((text) => matchForm(food, text));
  const lost = texts.find((_, index) => matches[index]?.length === 0);
  if (lost !== undefined) return { unknown: lost };
  const shared = (matches[0] ?? []).filter((choice) => matches.every((match) => match.includes(choice)));
  const [choice] = shared;
  if (choice === undefined) {
    fail('CONTRADICTION', 'form', given, `a form that agrees with the food's name, ${listed(matches[0] ?? [])}`);
  }
  if (shared.length > 1) fail('UNKNOWN_NAME', 'form', given ?? reading.form, `one of: ${listed(shared)}`);
  return { choice, only: false };
}
