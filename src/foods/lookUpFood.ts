/** Finds foods and forms by name. Names are compared by their key, and looked up in maps that are made once. */
import { keyOfWords, wordsOf } from '../common/nameKey';
import { nearestNames } from '../common/nearestNames';
import { foodOf, foodRows, formRows, sharedNames } from './tables';

/** A food by its id, in the form that the name says: applesauce is apple, `sauce`. */
export interface FoodAndForm {
  readonly id: string;
  readonly form?: string;
}

/**
 * Small words drop out of names, but fruit in syrup is not syrup, and beans in sauce are not sauce: what a food is
 * packed in has a separate word.
 */
const packed = (text: string): string =>
  text.replace(/\b(?:in|with)[\s-]((?:[a-z]{1,12}[\s-]){0,2})(syrup|juice|sauce)\b/gi, '$1$2-packed');
const wordsIn = (text: string): string[] => wordsOf(packed(text));
/** The form in which names of foods and forms are compared. */
export const keyOf = (text: string): string => keyOfWords(wordsIn(text));

/** No name is longer; what a caller types beyond it is not read. */
const LONGEST = 120;
/** No name has more words; splitting a longer text would be work for nothing. */
const MOST_WORDS = 12;

interface JoiningForm {
  readonly id: string;
  readonly words: readonly string[];
}
interface Index {
  /** By the words in their order: tomato paste is no paste tomato. */
  readonly inOrder: ReadonlyMap<string, FoodAndForm>;
  readonly foods: ReadonlyMap<string, readonly FoodAndForm[]>;
  readonly forms: ReadonlyMap<string, string>;
  readonly joining: readonly JoiningForm[];
  /** The id of the food by each of its names as written, for the nearest. */
  readonly printed: ReadonlyMap<string, string>;
  readonly names: readonly string[];
}

function makeIndex(): Index {
  const foods = new Map<string, readonly FoodAndForm[]>();
  const inOrder = new Map<string, FoodAndForm>();
  const printed = new Map<string, string>();
  const put = (name: string, found: FoodAndForm): void => {
    inOrder.set(wordsIn(name).join(' '), found);
    foods.set(keyOf(name), [found]);
  };
  for (const { id, name, names, asForm = [] } of foodRows) {
    for (const { name: each, form } of asForm) put(each, { id, form });
    for (const each of [name, ...names]) {
      put(each, { id });
      printed.set(each, id);
    }
  }
  for (const { name, foods: ids } of sharedNames) {
    foods.set(
      keyOf(name),
      ids.map((id) => ({ id })),
    );
  }
  const forms = new Map<string, string>();
  const joining: JoiningForm[] = [];
  for (const { id, name, names, alone = [], joins } of formRows) {
    for (const each of alone) forms.set(keyOf(each), id);
    for (const key of [name, ...names].map(keyOf)) {
      forms.set(key, id);
      if (joins) joining.push({ id, words: key.split(' ') });
    }
  }
  // the form with most words first: "heavy syrup" before "syrup"
  joining.sort((one, other) => other.words.length - one.words.length);
  return { inOrder, foods, forms, joining, printed, names: [...printed.keys()] };
}
let made: Index | undefined;
const index = (): Index => {
  made ??= makeIndex();
  return made;
};

/** The words left when those of a form are taken out; nothing where the form has a word that is not there. */
function without(words: readonly string[], taken: readonly string[]): readonly string[] | undefined {
  const left = [...words];
  for (const word of taken) {
    const at = left.indexOf(word);
    if (at < 0) return undefined;
    left.splice(at, 1);
  }
  return left;
}

/** Reads a name that holds a food and a form: `peach halves`, `sliced apples`. */
function split(key: string): readonly FoodAndForm[] {
  const words = key.split(' ');
  if (words.length < 2 || words.length > MOST_WORDS) return [];
  const { foods, joining } = index();
  for (const { id: form, words: taken } of joining) {
    const left = without(words, taken);
    if (left === undefined || left.length === 0) continue;
    const found = foods.get(left.join(' '));
    // a food that is in a form already cannot be in another
    if (found?.every((each) => each.form === undefined)) {
      return found.map(({ id }) => ({ id, form }));
    }
  }
  return [];
}

/** Names are compared without this word, which a few of them turn on. */
const isFresh = (text: string): boolean => /\bfresh\b/i.test(text);

function exactly(words: string): readonly FoodAndForm[] | undefined {
  const found = index().inOrder.get(words);
  return found && [found];
}
const inAnyOrder = (key: string): readonly FoodAndForm[] => index().foods.get(key) ?? split(key);

/** The foods that a text may name: none, one, or the several that share the name. */
export function foodsNamed(text: string): readonly FoodAndForm[] {
  const short = text.slice(0, LONGEST);
  const words = wordsIn(short);
  const found = exactly(words.join(' ')) ?? inAnyOrder(keyOfWords(words));
  return isFresh(short) ? found.map((each) => ({ ...each, id: foodOf(each.id).whenFresh ?? each.id })) : found;
}

/** The id of the form that a text names. */
export const formNamed = (text: string): string | undefined => index().forms.get(keyOf(text.slice(0, LONGEST)));

/** The foods whose names are nearest to a text, each with the name that is near; at most five. */
export function nearestFoods(text: string): readonly { readonly name: string; readonly id: string }[] {
  const { printed, names } = index();
  const found = new Map<string, string>();
  for (const name of nearestNames(text.slice(0, LONGEST), names)) {
    const id = printed.get(name) as string;
    if (!found.has(id)) found.set(id, name);
  }
  return [...found].map(([id, name]) => ({ id, name }));
}

/** The names of forms nearest to a text; at most five. */
export const nearestForms = (text: string): readonly string[] => nearestNames(text.slice(0, LONGEST), formNames);
const formNames = formRows.map(({ name }) => name);

/** The foods that a wide food covers: those that may use its figures. */
export const narrowerOf = (id: string): readonly string[] =>
  foodRows.filter(({ wider = [] }) => wider.some(({ food }) => food === id)).map((row) => row.id);
