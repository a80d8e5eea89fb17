/** The fields `food` and `form` of an argument, for the schemas of every module that takes a food. */
import { fail } from '../errors/StillroomError';
import { reading } from '../quantity/fields';
import { isWithin } from './isWithin';
import { foodsNamed, formNamed, nearestFoods, nearestForms } from './lookUpFood';
import { formName, nameOf } from './tables';

/** A food that a caller named. */
export interface FoundFood {
  /** Its id in the pantry: what tables are looked up by. */
  readonly id: string;
  /** Its trade name: what answers and messages say. */
  readonly name: string;
  /** Id of the form that the name says: `sauce` of applesauce. */
  readonly form?: string;
}

const or = (names: readonly string[]): string => names.join(' or ');

/** Reads the name of a food; `path` is its field in the argument. */
export function readFood(given: unknown, path = ''): FoundFood {
  const what = 'the name of a food';
  if (given === undefined) fail('MISSING', path, given, what);
  if (typeof given !== 'string') fail('WRONG_TYPE', path, given, what);
  const found = foodsNamed(given);
  const [first] = found;
  if (first !== undefined && found.length === 1) {
    const { id, form } = first;
    return { id, name: nameOf(id), ...(form === undefined ? {} : { form }) };
  }
  if (first !== undefined) {
    const options = found.map(({ id }) => nameOf(id));
    return fail('UNKNOWN_NAME', path, given, `one food; that name could be ${or(options)}`, { options });
  }
  return fail('UNKNOWN_NAME', path, given, 'the name of a food', {
    nearest: nearestFoods(given).map(({ name }) => name),
  });
}

/** Reads the name of a form, and gives its id; `path` is its field in the argument. */
export function readForm(given: unknown, path = ''): string {
  const what = 'the name of a form such as "halves"';
  if (given === undefined) fail('MISSING', path, given, what);
  if (typeof given !== 'string') fail('WRONG_TYPE', path, given, what);
  const id = formNamed(given);
  if (id !== undefined) return id;
  return fail('UNKNOWN_NAME', path, given, what, { nearest: nearestForms(given) });
}

/** A food, by any name it goes by. */
export const food = () => reading<string, FoundFood>((given) => readFood(given));
/** A form, by any name it goes by; it yields the id. */
export const form = () => reading<string, string>((given) => readForm(given));

/** The form that the name of the food and the field beside it say together, by id; both may say the same. */
export function formOfBoth(
  asked: Pick<FoundFood, 'form'>,
  given: string | undefined,
  path = 'form',
): string | undefined {
  if (asked.form === undefined || given === undefined || asked.form === given) return given ?? asked.form;
  // "corn on the cob" with "small ears": the narrower of the two
  if (isWithin(given, asked.form)) return given;
  if (isWithin(asked.form, given)) return asked.form;
  return fail(
    'CONTRADICTION',
    path,
    formName(given),
    `the form that the name of the food says, ${formName(asked.form)}`,
  );
}
