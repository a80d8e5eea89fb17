import { fail } from '../errors/StillroomError';
import { nameKey } from './nameKey';
import { nearestNames } from './nearestNames';

export { nameKey, wordsOf } from './nameKey';
export { nearestNames } from './nearestNames';

/** Anything with a trade name and other names it goes by. */
export interface Named {
  /** The trade name. */
  readonly name: string;
  /** Other names. */
  readonly synonyms?: readonly string[];
}

const indexes = new WeakMap<readonly Named[], Map<string, Named[]>>();

function indexOf<T extends Named>(entries: readonly T[]): Map<string, T[]> {
  const known = indexes.get(entries);
  if (known !== undefined) return known as Map<string, T[]>;
  const index = new Map<string, T[]>();
  for (const entry of entries) {
    for (const name of new Set([entry.name, ...(entry.synonyms ?? [])].map(nameKey))) {
      index.set(name, [...(index.get(name) ?? []), entry]);
    }
  }
  indexes.set(entries, index);
  return index;
}

/** The entries that go by this name, whatever its number, case and word order; none, one or several. */
export function findNamed<T extends Named>(text: string, entries: readonly T[]): readonly T[] {
  const key = nameKey(text);
  const found = indexOf(entries).get(key) ?? [];
  if (found.length < 2) return found;
  // a food's own name beats another's synonym
  const own = found.filter((entry) => nameKey(entry.name) === key);
  return own.length === 1 ? own : found;
}

/**
 * The one entry of a table that goes by this name.
 *
 * @throws StillroomError UNKNOWN_NAME when none does, offering the nearest, or when several do, listing them
 */
export function lookUp<T extends Named>(text: string, entries: readonly T[], path: string, what: string): T {
  const found = findNamed(text, entries);
  const [first] = found;
  if (first !== undefined && found.length === 1) return first;
  if (first !== undefined) {
    fail('UNKNOWN_NAME', path, text, `one ${what}; that name could be ${found.map(({ name }) => name).join(' or ')}`);
  }
  const names = nearestNames(
    text,
    entries.map(({ name }) => name),
  );
  const nearest =
    names.length > 0
      ? names
      : nearestNames(
          text,
          entries.flatMap(({ synonyms = [] }) => synonyms),
        );
  fail('UNKNOWN_NAME', path, text, `a known ${what}`, { nearest });
}
