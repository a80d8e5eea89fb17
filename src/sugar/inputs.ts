/** Small checks that several functions of this module share. */
import { fail } from '../errors/StillroomError';
import type { Basis } from '../sources/basis';

/** Exactly one of the named fields must be given; says which one is. */
export function oneOf<Name extends string>(
  given: Readonly<Partial<Record<Name, unknown>>>,
  names: readonly [Name, Name, ...Name[]],
): Name {
  const present = names.filter((name) => given[name] !== undefined);
  const [first, second] = present;
  if (first === undefined) fail('MISSING', names[0], undefined, `one of ${names.join(', ')}`);
  if (second !== undefined) fail('CONTRADICTION', second, given[second], `only one of ${names.join(', ')}`);
  return first;
}

/** Basis lines of another module under the path of this answer's field. */
export const under = (of: string, note: string, lines: readonly Basis[]): Basis[] =>
  lines.map((line) => ({ ...line, of, note }));

/** Whether masses are answered in US measures. */
export const isCustomary = (unit: string): boolean => unit === 'lb' || unit === 'oz';
