/** The food and the form that an argument names, and the no where these tables hold nothing for them. */
import { fail } from '../errors/StillroomError';
import type { FoundFood } from '../foods/fields';
import { formName, nameOf } from '../foods/tables';
import { type Caution, derived } from '../sources/basis';
import { type Instead, type NotKnown, notKnown } from '../sources/no';

/** The id of the form that an argument names, in the name of the food or in a separate field. */
export function formNamedBy(food: FoundFood, form: string | undefined): string | undefined {
  if (food.form !== undefined && form !== undefined && food.form !== form) {
    fail('CONTRADICTION', 'form', formName(form), `the form that the name of the food says, ${formName(food.form)}`);
  }
  return form ?? food.form;
}

/** The id of the form that an argument must name. */
export function formNeeded(food: FoundFood, form: string | undefined): string {
  return formNamedBy(food, form) ?? fail('MISSING', 'form', undefined, 'the name of a form such as "halves"');
}

/** A food in a form, in words. */
export const inWords = (food: string, form?: string): string =>
  form === undefined ? nameOf(food) : `${nameOf(food)}, ${formName(form)}`;

/** A food in each of these forms, to offer. */
export const inForms = (food: string, forms: readonly string[]): Instead[] =>
  forms.map((form) => ({ text: inWords(food, form), food: nameOf(food), form: formName(form) }));

/** The no of this module: what is missing, and what to do instead. */
export const missing = (
  code: string,
  text: string,
  instead: readonly Instead[],
  cautions: readonly Caution[] = [],
): NotKnown =>
  notKnown({ code, text, instead, cautions, basis: [derived('known', 'nothing of this kind is in these tables')] });

/** A known answer, or the error of an argument that these tables have no figure for: for callers that need a figure. */
export function knownOr<T extends { readonly known: true }>(answer: T | NotKnown, path: string, given: unknown): T {
  if (answer.known) return answer;
  const options = answer.instead.flatMap(({ form }) => (form === undefined ? [] : [form]));
  return fail('UNKNOWN_NAME', path, given, `what these tables have a figure for: ${answer.reason.text}`, { options });
}
