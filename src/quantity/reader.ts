/**
 * What a schema does to a value, as a plain function made once for each schema. Zod holds the schemas: their types, what
 * they mean, and all problems of an argument at once (`errorsOf`). A call whose argument is right does not go through it.
 */
import * as z from 'zod/mini';
import { atPath, joinPath, StillroomError } from '../errors/StillroomError';
import { toErrors } from './inputErrors';

/** Reads a value, or throws the first error of it with the path inside the value. */
type Reader = (given: unknown) => unknown;
type Schema = z.core.$ZodType;

const readers = new WeakMap<Schema, Reader>();

/** What zod hands to a transform; enough of it to report an error. */
interface Context {
  issues: unknown[];
}

/** An end of a range: a plain number, or a quantity. */
type End = number | { readonly value: number; readonly unit: string };
/** What a reader takes, as data: the catalogue says it, and no reader looks at it. */
export interface Takes {
  /** The kind of value; a dimension for a quantity. */
  readonly kind: string;
  /** The lowest value, itself allowed; of a list, the fewest items. */
  readonly min?: End;
  /** The highest value, itself allowed; of a list, the most items. */
  readonly max?: End;
  /** The value must be above this. */
  readonly above?: End;
  /** The value must be below this. */
  readonly below?: End;
  /** Whether a number must be whole. */
  readonly integer?: boolean;
  /** Every value of a choice. */
  readonly choices?: readonly string[];
  /** Whether other spellings of the choices are read too. */
  readonly spelled?: true;
}
const taken = new WeakMap<Schema, Takes>();
/** What a schema takes, where it says so. */
export const takesOf = (schema: Schema): Takes | undefined => taken.get(schema);

/** A schema that is one reader; for zod its StillroomError becomes an issue that keeps the error whole. */
export function reading<In, Out>(read: (given: unknown) => Out, takes?: Takes) {
  const schema = z.pipe(
    z.custom<In>(() => true),
    z.transform((given: In, context: Context): Out => {
      try {
        return read(given);
      } catch (error) {
        if (!(error instanceof StillroomError)) throw error;
        context.issues.push({ code: 'custom', input: given, message: error.message, params: { error } });
        return z.NEVER as never;
      }
    }),
  );
  readers.set(schema, read);
  if (takes !== undefined) taken.set(schema, takes);
  return schema;
}

/** The reader of a schema. */
export function readerOf<S extends Schema>(schema: S): (given: unknown) => z.output<S> {
  const known = readers.get(schema);
  if (known !== undefined) return known as (given: unknown) => z.output<S>;
  const made = makeReader(schema);
  readers.set(schema, made);
  return made as (given: unknown) => z.output<S>;
}

/** The parts of the schemas that functions are built from. */
interface Definition {
  readonly type: string;
  readonly checks?: readonly unknown[];
  readonly innerType: Schema;
  readonly element: Schema;
  readonly in: Schema;
  readonly out: Schema;
  readonly shape: Readonly<Record<string, Schema>>;
  readonly catchall?: Schema;
}

function makeReader(schema: Schema): Reader {
  const def = schema._zod.def as unknown as Definition;
  const traits = schema._zod.traits;
  if (def.checks === undefined || def.checks.length === 0) {
    if (def.type === 'optional' && !traits.has('$ZodExactOptional')) return optionalReader(def.innerType);
    if (def.type === 'array') return listReader(schema, def.element);
    if (def.type === 'object' && def.catchall?._zod.def.type === 'never') return fieldsReader(schema, def.shape);
    if (def.type === 'pipe' && !traits.has('$ZodCodec')) {
      const [first, then] = [readerOf(def.in), readerOf(def.out)];
      return (given) => then(first(given));
    }
  }
  return (given) => readByZod(schema, given);
}

/** Any other schema, and whatever one of these readers does not take. */
function readByZod(schema: Schema, given: unknown): unknown {
  const { success, data, error } = z.safeParse(schema, given);
  if (success) return data;
  throw error.issues.flatMap((issue) => toErrors(issue, given))[0];
}

/** The error of a part, as an error of the whole. */
function inside(key: string, error: unknown): unknown {
  return error instanceof StillroomError ? atPath(error, joinPath(key, error.path)) : error;
}

function optionalReader(inner: Schema): Reader {
  const read = readerOf(inner);
  return (given) => (given === undefined ? undefined : read(given));
}

function listReader(schema: Schema, element: Schema): Reader {
  const read = readerOf(element);
  return (given) => {
    if (!Array.isArray(given)) return readByZod(schema, given);
    const found: unknown[] = [];
    for (let index = 0; index < given.length; index++) {
      try {
        found.push(read(given[index]));
      } catch (error) {
        throw inside(`[${index}]`, error);
      }
    }
    return found;
  };
}

function fieldsReader(schema: Schema, shape: Readonly<Record<string, Schema>>): Reader {
  const parts = Object.entries(shape).map(([key, part]) => ({
    key,
    read: readerOf(part),
    optional: part._zod.optin === 'optional',
  }));
  return (given) => {
    if (typeof given !== 'object' || given === null || Array.isArray(given)) return readByZod(schema, given);
    const found: Record<string, unknown> = {};
    let unknown = 0;
    for (const { key, read, optional } of parts) {
      const value = (given as Record<string, unknown>)[key];
      if (value === undefined && !(key in given)) {
        if (!optional) return readByZod(schema, given);
        continue;
      }
      unknown -= 1;
      try {
        found[key] = read(value);
      } catch (error) {
        throw inside(key, error);
      }
    }
    for (const _ in given) unknown += 1;
    return unknown === 0 ? found : readByZod(schema, given);
  };
}
