/** The library's own errors for what a schema finds wrong. */
import type * as z from 'zod/mini';
import { nearestNames } from '../common/names';
import { atPath, fail, joinPath, StillroomError } from '../errors/StillroomError';

/** No name or short text is longer. */
export const LONGEST_NAME = 120;

type Issue = z.core.$ZodIssue;

const pathText = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (text, key) => joinPath(text, typeof key === 'number' ? `[${key}]` : String(key).slice(0, LONGEST_NAME)),
    '',
  );

/** What an issue of a schema says of the input: one error, or one for each unknown field. */
export function toErrors(issue: Issue, input: unknown): StillroomError[] {
  const path = pathText(issue.path);
  let given: unknown = input;
  for (const key of issue.path) given = (given as Record<PropertyKey, unknown> | null | undefined)?.[key];
  if (issue.code === 'custom') {
    const error = issue.params?.error;
    if (error instanceof StillroomError) return [atPath(error, joinPath(path, error.path))];
  }
  if (issue.code === 'unrecognized_keys') {
    const options = issue.message.split(' ');
    return issue.keys.map(
      (key) =>
        new StillroomError({
          code: 'UNKNOWN_FIELD',
          path: joinPath(path, key.slice(0, LONGEST_NAME)),
          given: key,
          expected: `one of the fields ${options.join(', ')}`,
          options,
          nearest: nearestNames(key, options),
        }),
    );
  }
  const expected =
    issue.message === 'Invalid input' || issue.message === '' ? 'an object of named fields' : issue.message;
  return [new StillroomError({ code: given === undefined ? 'MISSING' : 'WRONG_TYPE', path, given, expected })];
}

const DEEPEST = 6;
const isTree = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** Whether there may be a key `__proto__` anywhere near the top. */
function holdsPrototype(value: object, depth: number): boolean {
  if (Array.isArray(value)) {
    return depth < DEEPEST && value.some((item) => isTree(item) && holdsPrototype(item, depth + 1));
  }
  for (const key in value) {
    if (key === '__proto__') return true;
    const inner = (value as Record<string, unknown>)[key];
    if (isTree(inner) && depth < DEEPEST && holdsPrototype(inner, depth + 1)) return true;
  }
  return false;
}

/** `__proto__` as an own key, anywhere near the top, is never data. */
export function refusePrototypeKeys(value: object, path = '', depth = 0): void {
  if (depth === 0 && !holdsPrototype(value, 0)) return;
  for (const key of Object.keys(value)) {
    const inner = joinPath(path, Array.isArray(value) ? `[${key}]` : key.slice(0, LONGEST_NAME));
    if (key === '__proto__') fail('UNKNOWN_FIELD', inner, key, 'a known field');
    const part = (value as Record<string, unknown>)[key];
    if (isTree(part) && depth < DEEPEST) refusePrototypeKeys(part, inner, depth + 1);
  }
}
