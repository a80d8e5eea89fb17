import { findNamed, lookUp, nameKey } from '../common/names';
import { fail } from '../errors/StillroomError';
import { namedFoods } from './foodNames';
import { BEFORE_FREEZING, type BeforeFreezingRow, BLANCHING, type BlanchingRow, PACKS, type PackRow } from './tables';

/** What the tables print to do with a food before it is frozen. */
export type BeforeFreezing =
  /** Blanch it; more than one row where the size of the pieces decides. */
  | { readonly does: 'blanch'; readonly food: string; readonly rows: readonly BlanchingRow[] }
  | { readonly does: 'cook' | 'raw'; readonly food: string; readonly rows: readonly BeforeFreezingRow[] }
  /** A fruit: its packs say what it takes. */
  | { readonly does: 'pack'; readonly food: string; readonly rows: readonly PackRow[] }
  /** A vegetable of the list in a cut that it does not print. */
  | { readonly does: 'not printed for this cut'; readonly food: string; readonly printed: readonly string[] }
  | { readonly does: 'not in these tables' };

const NAMES = [...BLANCHING, ...BEFORE_FREEZING].map(({ food }) => food);
const GROUPS = BLANCHING.flatMap(({ group }) => (group === undefined ? [] : [group]));
/** The vegetables of the blanching list, the wider names of their rows, and those that are cooked or frozen raw. */
export const VEGETABLES = namedFoods([...NAMES, ...GROUPS]);
const FRUITS = namedFoods(PACKS.flatMap(({ foods }) => foods));

/** The cut of a row in full: with its food where the name asked for is a wider one. */
export const cutOf = (row: BlanchingRow, food: string): string =>
  row.food === food ? row.form : `${row.food}, ${row.form}`;

const words = (text: string): readonly string[] => nameKey(text).split(' ');

/** The rows whose cut goes by this name; where none does in full, those that have all its words. */
export function rowsOfCut(rows: readonly BlanchingRow[], food: string, form: string): readonly BlanchingRow[] {
  const key = nameKey(form);
  const named = rows.filter((row) =>
    [row.form, cutOf(row, food), ...(row.cuts ?? [])].some((cut) => cut !== '' && nameKey(cut) === key),
  );
  if (named.length > 0) return named;
  const asked = words(form);
  return rows.filter((row) =>
    [cutOf(row, food), ...(row.cuts ?? [])].some((cut) => {
      const own = words(cut);
      return asked.every((word) => own.includes(word));
    }),
  );
}

/** The rows of one vegetable, or of all that go by a wider name. */
export const rowsOfFood = (food: string): readonly BlanchingRow[] =>
  BLANCHING.filter((row) => row.food === food || row.group === food);

const unblanched = (food: string, form: string | undefined): readonly BeforeFreezingRow[] =>
  BEFORE_FREEZING.filter(
    (row) =>
      row.food === food &&
      (row.forms === undefined || (form !== undefined && row.forms.some((cut) => nameKey(cut) === nameKey(form)))),
  );

/** What to do with a vegetable of the tables, by its name there. */
export function beforeFreezingOf(food: string, form: string | undefined): BeforeFreezing {
  const rows = rowsOfFood(food);
  const usual = rows.filter((row) => row.whenNamed !== true);
  const fitting = form === undefined ? usual : rowsOfCut(rows, food, form);
  // a cut of the blanching list comes before a general word that none is needed
  if (fitting.length > 0 && (form !== undefined || usual.length === 1)) return { does: 'blanch', food, rows: fitting };
  const [first, ...rest] = unblanched(food, form);
  if (first !== undefined) return { does: first.treatment, food, rows: [first, ...rest] };
  if (fitting.length > 0) return { does: 'blanch', food, rows: fitting };
  return { does: 'not printed for this cut', food, printed: rows.map((row) => cutOf(row, food)) };
}

/** What to do with any food in a cut before it is frozen. */
export function beforeFreezing(asked: string, form: string | undefined): BeforeFreezing {
  const [vegetable, other] = findNamed(asked, VEGETABLES);
  const [fruit] = findNamed(asked, FRUITS);
  // rhubarb is in both: a fruit pack prints its heating as a choice
  if (fruit !== undefined) {
    return { does: 'pack', food: fruit.name, rows: PACKS.filter(({ foods }) => foods.includes(fruit.name)) };
  }
  if (vegetable === undefined || other !== undefined) return { does: 'not in these tables' };
  return beforeFreezingOf(vegetable.name, form);
}

/** The vegetable of the tables by a caller's name. */
export const vegetableNamed = (asked: string): string =>
  lookUp(asked, VEGETABLES, 'food', 'vegetable of the blanching list').name;

/** Refuses a cut that the list does not print, or that does not say which of several rows is meant. */
export function refuseForm(food: string, form: string | undefined, printed: readonly string[]): never {
  const named = printed.filter((cut) => cut !== '');
  if (named.length === 0) {
    return fail('UNKNOWN_NAME', 'form', form, `no form: none is printed for ${food}`);
  }
  const forms = `one of the printed forms: ${named.join('; ')}`;
  return fail(form === undefined ? 'MISSING' : 'UNKNOWN_NAME', 'form', form, forms);
}
