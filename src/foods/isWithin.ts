import { formOf } from './tables';

/** Whether a form is the wanted one, or a case of it: halves are within pieces. Both are ids. */
export function isWithin(form: string, wanted: string): boolean {
  return form === wanted || (formOf(form).within ?? []).some((wider) => isWithin(wider, wanted));
}
