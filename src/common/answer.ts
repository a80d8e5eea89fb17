/**
 * The one door out. A caller gets a copy that shares no memory with the library's tables, so nothing done to one
 * answer changes the next; and a value that no answer may hold stops here.
 */

const refuse = (where: string, what: string): never => {
  // no input can ask for this: it is a mistake of the library, met by the first test that walks the branch
  throw new Error(`an answer may not hold ${what} (at ${where === '' ? 'the top' : where})`);
};

function copy(value: unknown, where: string): unknown {
  if (typeof value === 'number') return Number.isFinite(value) ? value : refuse(where, `the number ${value}`);
  if (value === undefined) return refuse(where, 'an undefined value');
  if (typeof value === 'string' || typeof value === 'boolean' || value === null) return value;
  if (typeof value !== 'object') return refuse(where, `a ${typeof value}`);
  if (Array.isArray(value)) return value.map((item, index) => copy(item, `${where}[${index}]`));
  const prototype = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) return refuse(where, 'an object that is not plain data');
  const copied: Record<string, unknown> = {};
  for (const key of Object.keys(value)) {
    copied[key] = copy((value as Record<string, unknown>)[key], where === '' ? key : `${where}.${key}`);
  }
  return copied;
}

/**
 * A copy of plain data.
 *
 * @throws Error for a number that is not finite, or anything that is not plain data
 */
export const plainCopy = <T>(value: T): T => copy(value, '') as T;

const SEVERITIES = ['danger', 'quality', 'note'];
const rank = (caution: { severity?: unknown }): number => SEVERITIES.indexOf(String(caution.severity));

/** Each line once, in the order of the first. */
const distinct = <T>(lines: readonly T[], keyOf: (line: T) => string): T[] =>
  [...new Map(lines.map((line) => [keyOf(line), line] as const).reverse()).values()].reverse();

/**
 * Copies an answer on its way out. Every public function returns through here. Lines of `basis` and `cautions` come
 * out once each, and the cautions in the order of danger, quality, note.
 *
 * @throws Error for a number that is not finite, an undefined value, or a `basis` without a line
 */
export function answer<T>(value: T): T {
  const copied = plainCopy(value);
  const said = copied as { basis?: unknown; cautions?: unknown } | null;
  if (Array.isArray(said?.basis)) {
    if (said.basis.length === 0) refuse('basis', 'an empty list');
    said.basis = distinct(said.basis, (line) => JSON.stringify(line));
  }
  if (Array.isArray(said?.cautions)) {
    said.cautions = distinct<{ id?: unknown; severity?: unknown }>(said.cautions, ({ id }) => String(id)).sort(
      (one, other) => rank(one) - rank(other),
    );
  }
  return copied;
}
