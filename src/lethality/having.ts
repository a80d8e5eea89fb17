import { nameKey, nearestNames } from '../common/names';
import { fail } from '../errors/StillroomError';

/**
 * The rows whose name holds every word that was asked for.
 *
 * @throws StillroomError UNKNOWN_NAME when none does, offering the nearest
 */
export function having<Row>(
  text: string,
  rows: readonly Row[],
  nameOf: (row: Row) => string,
  path: string,
  what: string,
): Row[] {
  const words = nameKey(text).split(' ');
  const found = rows.filter((row) => {
    const known = new Set(nameKey(nameOf(row)).split(' '));
    return words.every((word) => known.has(word));
  });
  if (found.length > 0) return found;
  fail('UNKNOWN_NAME', path, text, `a known ${what}`, { nearest: nearestNames(text, [...new Set(rows.map(nameOf))]) });
}
