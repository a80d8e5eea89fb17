/** What each word of the grammar means, kept with its schema so that a catalog can say it. */
import type * as z from 'zod/mini';
import type { Dimension } from '../quantity/units';

/** The kinds of value that a word can be: a dimension of a quantity, or one of the others. */
export type WordKind =
  | Dimension
  | 'mass or volume'
  | 'share'
  | 'number'
  | 'count'
  | 'money'
  | 'choice'
  | 'jar'
  | 'time of day';

/** An end of a range: a plain number, or a quantity. */
export type WordLimit = number | { readonly value: number; readonly unit: string };

/** What a word means everywhere. */
export interface WordMeaning {
  /** The word itself: `elevation`. */
  readonly name: string;
  /** What kind of value it is. */
  readonly kind: WordKind;
  /** What it says, in one line. */
  readonly says: string;
  /** The unit of a plain number, such as `degrees Brix`; a quantity brings its own. */
  readonly unit?: string;
  /** The lowest value it takes. */
  readonly low?: WordLimit;
  /** The highest value it takes. */
  readonly high?: WordLimit;
  /** Whether the lowest value itself is left out: above it only. */
  readonly above?: true;
  /** Every value of a choice. */
  readonly choices?: readonly string[];
}

const meanings = new WeakMap<object, WordMeaning>();

/** A schema with its meaning. */
export function word<S extends z.ZodMiniType>(schema: S, meaning: WordMeaning): S {
  meanings.set(schema, meaning);
  return schema;
}

/** What the schema of a field means, optional or not; nothing for a schema that is no word. */
export function describe(schema: z.core.$ZodType): WordMeaning | undefined {
  const known = meanings.get(schema);
  if (known !== undefined) return known;
  const { innerType } = schema._zod.def as { readonly innerType?: z.core.$ZodType };
  return innerType === undefined ? undefined : describe(innerType);
}
