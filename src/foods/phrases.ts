/** How people say a food in a form: `peach halves`, `whole plums`; the words are in the pantry. */
import { foodsNamed, formNamed } from './lookUpFood';
import { type FormRow, foodOf, formOf } from './tables';

/** The words for a food in a form. */
interface Said {
  /** In a sentence: `whole plums`. */
  readonly phrase: string;
  /** In a heading: `plums, whole`. */
  readonly title: string;
  /** Whether the heading ends in words set apart by a comma. */
  readonly apart: boolean;
}

/** How people say a food in a form, by their names; a name that the pantry does not know stands as it is. */
export function saidOf(food: string, form?: string): Said {
  const [found] = foodsNamed(food);
  const { name, plural = name, asForm = [] } = found === undefined ? { name: food } : foodOf(found.id);
  if (form === undefined) return { phrase: plural, title: plural, apart: false };
  const id = formNamed(form);
  const own = asForm.find((each) => each.form === id && each.said === true);
  if (own !== undefined) return { phrase: own.name, title: own.name, apart: false };
  const row: Pick<FormRow, 'name' | 'phrase' | 'title'> = id === undefined ? { name: form } : formOf(id);
  const fill = (words: string): string => words.replaceAll('{foods}', plural).replaceAll('{food}', name);
  const phrase = fill(row.phrase ?? `{food} ${row.name}`);
  return { phrase, title: row.title === undefined ? phrase : fill(row.title), apart: row.title !== undefined };
}
