import { formOf } from './tables';

/** A form and, where a page prints several together (`halved or sliced`), each of them; all are ids. */
export const formsIn = (form: string): readonly string[] => [form, ...(formOf(form).either ?? [])];

/**
 * Whether a form is the wanted one, one of those that the wanted one holds, or a case of it: halves are within
 * pieces, and within `halves or slices`. Both are ids. A heat process asks `formsIn`: it is for the forms of its page.
 */
export function isWithin(form: string, wanted: string): boolean {
  return formsIn(wanted).includes(form) || (formOf(form).within ?? []).some((wider) => isWithin(wider, wanted));
}
