/**
 * The one door out. A caller gets a copy that shares no memory with the library's tables, so nothing done to one
 * answer changes the next; and a value that no answer may hold stops here.
 */

/** Thrown where a copy stops; `refuse` then says where and why, so that a copy that goes well writes no path. */
const STOP = new Error('an answer may not hold this');

/** Whether a value is one that an answer may hold and that nobody can change. */
const isFixed = (value: unknown): boolean =>
  typeof value === 'string' || typeof value === 'boolean' || value === null || Number.isFinite(value);

function copy(value: unknown): unknown {
  if (isFixed(value)) return value;
  if (typeof value !== 'object' || value === null) throw STOP;
  if (Array.isArray(value)) return CHECKED.has(value) ? value.map((line) => ({ ...line })) : value.map(copy);
  const prototype = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) throw STOP;
  const copied: Record<string, unknown> = { ...value };
  for (const key in copied) {
    const part = copied[key];
    if (!isFixed(part)) copied[key] = copy(part);
  }
  return copied;
}

/** Says what stopped the copy: no input can ask for it, so it is a mistake of the library, met by its first test. */
function refuse(value: unknown, where: string): void {
  const no = (what: string): never => {
    throw new Error(`an answer may not hold ${what} (at ${where === '' ? 'the top' : where})`);
  };
  if (typeof value === 'number' && !Number.isFinite(value)) no(`the number ${value}`);
  if (value === undefined) no('an undefined value');
  if (typeof value === 'function' || typeof value === 'symbol' || typeof value === 'bigint') no(`a ${typeof value}`);
  if (typeof value !== 'object' || value === null) return;
  if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) refuse(item, `${where}[${index}]`);
    return;
  }
  const prototype = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) no('an object that is not plain data');
  for (const [key, part] of Object.entries(value)) refuse(part, where === '' ? key : `${where}.${key}`);
}

/**
 * A copy of plain data.
 *
 * @throws Error for a number that is not finite, or anything that is not plain data
 */
export function plainCopy<T>(value: T): T {
  try {
    return copy(value) as T;
  } catch (error) {
    if (error === STOP) refuse(value, '');
    throw error;
  }
}

type Line = Readonly<Record<string, unknown>>;
/** Whether two lines say the same, in the same order. */
function isSame(one: Line, other: Line): boolean {
  if (one.of !== other.of || one.source !== other.source || one.locator !== other.locator || one.note !== other.note)
    return false;
  const [keys, others] = [Object.keys(one), Object.keys(other)];
  return keys.length === others.length && keys.every((key, at) => key === others[at] && one[key] === other[key]);
}
/** Above this number of lines it is quicker to write each out than to compare each with each. */
const MANY = 40;

/** Each line once, where it stands last. */
function distinctLines(lines: readonly Line[]): readonly Line[] {
  if (lines.length > MANY) {
    const texts = lines.map((line) => JSON.stringify(line));
    const last = new Map(texts.map((text, index) => [text, index]));
    return lines.filter((_, index) => last.get(texts[index] as string) === index);
  }
  return lines.filter((line, index) => {
    for (let at = index + 1; at < lines.length; at++) if (isSame(line, lines[at] as Line)) return false;
    return true;
  });
}

/** Lists of lines that were made once, of text only and each line once: an answer copies them and checks nothing. */
const CHECKED = new WeakSet<readonly unknown[]>();
/** The lines of a basis that never changes, made and checked at the first use. */
export function fixedLines<T extends object>(make: () => readonly T[]): () => readonly T[] {
  let lines: readonly T[] | undefined;
  return () => {
    if (lines === undefined) {
      lines = distinctLines(plainCopy(make()) as readonly Line[]) as readonly T[];
      const parts = lines.flatMap((line) => Object.values(line));
      if (parts.some((part) => typeof part !== 'string')) throw new Error('a fixed line of a basis is of text only');
      CHECKED.add(lines);
    }
    return lines;
  };
}

const SEVERITIES = ['danger', 'quality', 'note'];
const rank = (caution: Line): number => SEVERITIES.indexOf(String(caution.severity));

/** Each caution once, as it is said first and where it stands last; then danger, quality, note. */
function inOrder(cautions: readonly Line[]): readonly Line[] {
  if (cautions.length < 2) return cautions;
  return cautions
    .filter(({ id }, index) => cautions.findLastIndex((other) => other.id === id) === index)
    .map(({ id }) => cautions.find((other) => other.id === id) as Line)
    .sort((one, other) => rank(one) - rank(other));
}

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
    if (said.basis.length === 0) throw new Error('an answer may not hold an empty list (at basis)');
    if (!CHECKED.has((value as { basis: readonly unknown[] }).basis)) said.basis = distinctLines(said.basis);
  }
  if (Array.isArray(said?.cautions)) said.cautions = inOrder(said.cautions);
  return copied;
}
