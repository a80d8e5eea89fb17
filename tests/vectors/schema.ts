import * as z from 'zod';

/** What an expected figure is. */
export const KINDS = [
  'published table', // printed in a table or rule of the named source; a refusal of what it does not print too
  'worked example', // a question with its answer, printed in the source
  'verification value', // printed by a standard so that programs can be checked
  'second implementation', // computed apart from the library, from what the source prints
  'common practice', // what the trade does
  'bad input', // an error that must be thrown
] as const;
export type Kind = (typeof KINDS)[number];

const text = z.string().trim().min(1);
const size = z.number().positive();
export const tolerance = z.union([
  z.literal('exact'),
  z.strictObject({ absolute: size }),
  z.strictObject({ relative: size }),
]);

const throws = (expect: unknown): boolean => typeof expect === 'object' && expect !== null && 'error' in expect;

export const check = z
  .strictObject({
    id: text,
    /** Name of an exported function. */
    call: text,
    /** The one argument, or an array of arguments. */
    input: z.unknown(),
    /** The part of the answer that is published; `{ error: CODE }` where it must throw. */
    expect: z.unknown(),
    tolerance: tolerance.optional(),
    /** Where in the source. */
    locator: z.string().optional(),
    kind: z.enum(KINDS),
    /** The expected figure, or what it was computed from, was recalled and not read. */
    recalled: z.literal(true).optional(),
    /** Written from the transcription that our own table was made from: it shows that the table is served as it is. */
    transcription: z.literal(true).optional(),
    /** The check's own source where it differs from the file's. */
    source: text.optional(),
    /** The table row that the check reads. */
    row: z.unknown().optional(),
  })
  .refine(({ kind, expect }) => throws(expect) === (kind === 'bad input'), 'an error is bad input, and only an error')
  .refine(({ kind, recalled, transcription }) => kind !== 'bad input' || !(recalled || transcription));

export const vectorFile = z.strictObject({
  title: text,
  source: z.union([text, z.array(text).min(1)]),
  checks: z.array(check).min(1),
});

export type Tolerance = z.infer<typeof tolerance>;
export type Check = z.infer<typeof check>;
export type VectorFile = z.infer<typeof vectorFile>;

/** The names that the report counts under: the kinds, with recalled figures and transcriptions apart. */
export const GROUPS = [...KINDS, 'recalled with recalled', 'table with its own transcription'] as const;
export type Group = (typeof GROUPS)[number];
export const groupOf = ({
  kind,
  recalled,
  transcription,
}: Pick<Check, 'kind' | 'recalled' | 'transcription'>): Group =>
  recalled ? 'recalled with recalled' : transcription ? 'table with its own transcription' : kind;
