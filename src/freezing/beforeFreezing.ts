import { fail } from '../errors/StillroomError';
import { figuresFor } from '../foods/figuresFor';
import { isWithin } from '../foods/isWithin';
import { formName, nameOf } from '../foods/tables';
import { BEFORE_FREEZING, type BeforeFreezingRow, BLANCHING, type BlanchingRow, PACKS, type PackRow } from './tables';

/** What the tables print to do with a food before it is frozen. */
export type BeforeFreezing =
  /** Blanch it; more than one row where the size of the pieces decides. */
  | { readonly does: 'blanch'; readonly rows: readonly BlanchingRow[] }
  | { readonly does: 'cook' | 'raw'; readonly rows: readonly BeforeFreezingRow[] }
  /** A fruit: its packs say what it takes. */
  | { readonly does: 'pack'; readonly rows: readonly PackRow[] }
  /** A vegetable of the list in a cut that it does not print. */
  | { readonly does: 'not printed for this cut'; readonly printed: readonly string[] }
  | { readonly does: 'not in these tables' };

/** The name of a row's cut; empty where the row is for the food in general. */
export const cutOf = ({ forms }: BlanchingRow): string => (forms?.[0] === undefined ? '' : formName(forms[0]));

/** The rows of the food itself, or of the first wider food that has some and may lend them. */
function rowsFor<Row extends { readonly food: string }>(rows: readonly Row[], id: string, craft: string): Row[] {
  for (const each of figuresFor(id, craft)) {
    const found = rows.filter(({ food }) => food === each);
    if (found.length > 0) return found;
  }
  return [];
}

/** The blanching rows that serve a food, by its id. */
export const blanchingRows = (id: string): readonly BlanchingRow[] => rowsFor(BLANCHING, id, 'blanching');

/** The rows of a form by its id; where none is for just that form, those whose forms are cases of it. */
function rowsOfForm(rows: readonly BlanchingRow[], form: string): readonly BlanchingRow[] {
  const named = rows.filter(({ forms = [] }) => forms.includes(form));
  return named.length > 0 ? named : rows.filter(({ forms = [] }) => forms.some((own) => isWithin(own, form)));
}

const unblanched = (id: string, form: string | undefined): readonly BeforeFreezingRow[] =>
  rowsFor(BEFORE_FREEZING, id, 'freezing').filter(
    ({ forms }) => forms === undefined || (form !== undefined && forms.includes(form)),
  );

/** What to do with a vegetable of the pantry in a form (both by id); undefined where no table has it. */
export function beforeFreezingOf(id: string, form: string | undefined): BeforeFreezing | undefined {
  const rows = blanchingRows(id);
  const usual = rows.filter((row) => row.whenNamed !== true);
  const fitting = form === undefined ? usual : rowsOfForm(rows, form);
  // a cut of the blanching list comes before a general word that none is needed
  if (fitting.length > 0 && (form !== undefined || usual.length === 1)) return { does: 'blanch', rows: fitting };
  const [first, ...rest] = unblanched(id, form);
  if (first !== undefined) return { does: first.treatment, rows: [first, ...rest] };
  if (fitting.length > 0) return { does: 'blanch', rows: fitting };
  // a time that is printed without a cut holds for the food as it is usually cut, and for no other
  return rows.length === 0 ? undefined : { does: 'not printed for this cut', printed: rows.map(cutOf) };
}

/** The rows of the fruit packs that serve a food, by its id. */
export const packsOf = (id: string): readonly PackRow[] => {
  for (const each of figuresFor(id, 'freezing')) {
    const found = PACKS.filter(({ foods }) => foods.includes(each));
    if (found.length > 0) return found;
  }
  return [];
};

/** What to do with any food in a form before it is frozen, both by id. */
export function beforeFreezing(id: string, form: string | undefined): BeforeFreezing {
  const packs = packsOf(id);
  // rhubarb is in both: a fruit pack prints its heating as a choice
  if (packs.length > 0) return { does: 'pack', rows: packs };
  return beforeFreezingOf(id, form) ?? { does: 'not in these tables' };
}

/** Refuses a cut that the list does not print, or that does not say which of several rows is meant. */
export function refuseForm(id: string, form: string | undefined, printed: readonly string[]): never {
  const options = printed.filter((cut) => cut !== '');
  if (options.length === 0) {
    return fail('UNKNOWN_NAME', 'form', form, `no form: none is printed for ${nameOf(id)}`);
  }
  const forms = `one of the printed forms: ${options.join('; ')}`;
  return fail(form === undefined ? 'MISSING' : 'UNKNOWN_NAME', 'form', form, forms, { options });
}
