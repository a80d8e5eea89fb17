/** The one reader of the trade's choices: a caller's spelling in, the word of the tables out. */
import * as z from 'zod/mini';
import { findNamed, type Named, nearestNames } from '../common/names';
import { fail } from '../errors/StillroomError';
import { reading } from '../quantity/fields';
import { text } from '../sources/columns';

/** The columns of a choice: its word and its spellings. */
export const spelledColumns = <const T extends readonly [string, ...string[]]>(words: T) => ({
  name: z.enum(words),
  synonyms: z.array(text()).check(z.minLength(1)),
});

/** A choice with its spellings; a spelling that could be several choices lists them in `asks`. */
export interface Spelled extends Named {
  readonly asks?: readonly string[];
  /** What to ask where a spelling could mean several. */
  readonly question?: string;
}

const LONGEST = 120;

/** What a reader of choices needs to know. */
export interface Choices<T extends string> {
  /** What is chosen, with its article: `a canner`. */
  readonly what: string;
  readonly rows: readonly Spelled[];
  /** Those that this field takes. */
  readonly allowed: readonly T[];
}

/** The choices nearest to a text, by any of their spellings. */
function nearest(text: string, { rows, allowed }: Choices<string>): string[] {
  const spelled = rows.flatMap(({ name, synonyms = [] }) =>
    [name, ...synonyms].map((spelling) => ({ spelling, name })),
  );
  const found = nearestNames(
    text,
    spelled.map(({ spelling }) => spelling),
  ).map((near) => spelled.find(({ spelling }) => spelling === near)?.name);
  return allowed.filter((word) => found.includes(word));
}

/** Reads a choice; the error repeats what was given and lists what can be chosen. */
export function readChoice<T extends string>(choices: Choices<T>, given: unknown, path = ''): T {
  const { what, rows, allowed } = choices;
  const refuse = (code: 'MISSING' | 'WRONG_TYPE' | 'UNKNOWN_NAME', near: readonly string[] = []): never =>
    fail(code, path, given, `${what}: ${allowed.join(', ')}`, { options: allowed, nearest: near });
  if (given === undefined) return refuse('MISSING');
  if (typeof given !== 'string') return refuse('WRONG_TYPE');
  const [found] = given.length > LONGEST ? [] : findNamed(given, rows);
  if (found?.asks !== undefined) {
    const options = allowed.filter((word) => found.asks?.includes(word));
    if (options.length > 0)
      fail('UNKNOWN_NAME', path, given, `${found.question} (${options.join(' or ')})`, { options });
  }
  const word = allowed.find((each) => each === found?.name);
  return word ?? refuse('UNKNOWN_NAME', nearest(given, choices));
}

/** The schema of a choice; `In` is what the type checker lets a caller write. */
export const choiceField = <T extends string, In extends string = T>(choices: Choices<T>) =>
  reading<In, T>((given) => readChoice(choices, given), { kind: 'choice', choices: choices.allowed, spelled: true });
