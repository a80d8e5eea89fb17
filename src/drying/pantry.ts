/** How the drying tables are asked by foods and forms of the pantry. */
import { fail } from '../errors/StillroomError';
import type { FoundFood } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { formsIn, isWithin } from '../foods/isWithin';
import { foodOf, formName, nameOf } from '../foods/tables';
import { type FatRow, fatRows, guideRows, mostFat } from './guide/tables';

/** A row that names its food or its foods by their ids. */
export interface FoodRow {
  readonly food?: string;
  readonly foods?: readonly string[];
  readonly form?: string;
}

/** The form asked for: in the name of the food or beside it. Two that do not fit contradict one another. */
export function formAsked(food: FoundFood | undefined, form: string | undefined, given: unknown): string | undefined {
  const named = food?.form;
  if (named === undefined || form === undefined || isWithin(form, named)) return form ?? named;
  if (isWithin(named, form)) return named;
  fail('CONTRADICTION', 'form', given, `the form that the food names, ${formName(named)}, or none`);
}

const isOf = (row: FoodRow, id: string): boolean => row.food === id || (row.foods ?? []).includes(id);

/** Rows of a food, or of the wider food that lends its figures: `lender` is that food's name. */
export interface Found<Row> {
  readonly rows: readonly Row[];
  readonly lender?: string;
}

/** The rows of a food in a craft: its own, else those of the first wider food that has some. */
export function rowsFor<Row extends FoodRow>(rows: readonly Row[], id: string, craft: string): Found<Row> {
  for (const from of figuresFor(id, craft)) {
    const found = rows.filter((row) => isOf(row, from));
    if (found.length > 0) return from === id ? { rows: found } : { rows: found, lender: nameOf(from) };
  }
  return { rows: [] };
}

/** Of several rows of a food, the one of this form; without one the row of no form, or of one of the usual forms. */
export function ofForm<Row extends FoodRow>(
  rows: readonly Row[],
  form: string | undefined,
  usual: readonly string[] = [],
): Row | undefined {
  const plain = rows.find((row) => row.form === undefined);
  if (form === undefined) return plain ?? rows.find((row) => row.form !== undefined && usual.includes(row.form));
  return (
    rows.find((row) => row.form !== undefined && (formsIn(form).includes(row.form) || isWithin(row.form, form))) ??
    plain
  );
}

/** Whether two lists of forms have one in common; a form that a page prints with others holds each of them. */
export const sharesForm = (one: readonly string[], other: readonly string[]): boolean =>
  one.some((form) => other.some((wanted) => formsIn(wanted).includes(form) || formsIn(form).includes(wanted)));

/** The row of the fat of a food; a row of one form says nothing of another. */
export function fatRowOf(id: string, form?: string): Found<FatRow> {
  const { rows, ...from } = rowsFor(fatRows, id, 'fat');
  const row = ofForm(rows, form);
  return row === undefined ? { rows: [] } : { rows: [row], ...from };
}

/** Whether the table of fat prints more for a food than dries. */
export const isFatty = (id: string): boolean => fatRowOf(id).rows.some(({ fat_percent }) => fat_percent > mostFat());

/** What is dried as fruit or as a vegetable; nothing for meat, dairy and other food that no general figure is for. */
export function dryingKind(id: string): 'fruit' | 'vegetable' | undefined {
  const [row] = rowsFor(guideRows, id, 'drying').rows;
  if (row !== undefined) return row.kind;
  const { kind } = foodOf(id);
  if (isFatty(id)) return undefined;
  if (kind === 'fruit') return 'fruit';
  return kind === 'vegetable' || kind === 'mushroom' ? 'vegetable' : undefined;
}
