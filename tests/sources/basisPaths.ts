/** Whether the lines of `basis` name fields that their answer has, and whether a no says what it must. */

type Plain = Record<string, unknown>;
const isObject = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether a path such as `minutes`, `ready.low` or `ways[].jar` leads to something in the value. */
export function resolves(value: unknown, path: string): boolean {
  const steps = path.match(/[^.[\]]+|\[\]/g) ?? [];
  if (steps.length === 0 || steps.join('.').replaceAll('.[]', '[]') !== path) return false;
  let reached: unknown[] = [value];
  for (const step of steps) {
    reached = reached.flatMap((each) => {
      if (step === '[]') return Array.isArray(each) ? each : [];
      return isObject(each) && Object.hasOwn(each, step) ? [each[step]] : [];
    });
  }
  return reached.length > 0;
}

/** Every object inside a value, itself first. */
function* objectsIn(value: unknown): Generator<Plain> {
  if (Array.isArray(value)) for (const each of value) yield* objectsIn(each);
  if (!isObject(value)) return;
  yield value;
  for (const [key, each] of Object.entries(value)) if (key !== OF_THE_WHOLE) yield* objectsIn(each);
}

/** Where a chart keeps its basis, for its standard leaves no other place: the paths are those of the chart. */
const OF_THE_WHOLE = 'usermeta';
const basisOf = (holder: Plain): unknown => {
  const { [OF_THE_WHOLE]: about } = holder;
  return isObject(about) ? about.basis : holder.basis;
};

const textOf = (line: unknown): string => (isObject(line) && typeof line.of === 'string' ? line.of : '');

/** The `of` of each basis line that names no field of the object that holds the basis. */
export function strayPaths(answer: unknown): string[] {
  const stray: string[] = [];
  for (const holder of objectsIn(answer)) {
    const basis = basisOf(holder);
    // lines stand in a list; one line alone is an object that has `of` and `kind`
    const lines = Array.isArray(basis) ? basis : isObject(basis) && 'kind' in basis ? [basis] : [];
    stray.push(...lines.map(textOf).filter((path) => !resolves(holder, path)));
  }
  return stray;
}

const isText = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';

/** What is wrong with the noes of an answer: a reason without code or text, nothing to do instead. */
export function poorNoes(answer: unknown): string[] {
  const wrong: string[] = [];
  for (const holder of objectsIn(answer)) {
    const saysNo = holder.tested === false || holder.known === false;
    if (!saysNo && !('instead' in holder)) continue;
    const { reason, instead } = holder;
    if (saysNo && !(isObject(reason) && isText(reason.code) && isText(reason.text)))
      wrong.push('`reason` is not { code, text }');
    const isList = Array.isArray(instead) && instead.length > 0;
    if (!isList || !instead.every((each) => isObject(each) && isText(each.text)))
      wrong.push('`instead` is no list of things to do, each with its `text`');
  }
  return [...new Set(wrong)];
}

/** What is wrong with many answers, by the name of the function. */
export function wrongByFunction(
  answers: Iterable<readonly [name: string, answer: unknown]>,
  wrongWith: (answer: unknown) => readonly string[],
): Map<string, string> {
  const found = new Map<string, Set<string>>();
  for (const [name, answer] of answers) {
    const wrong = wrongWith(answer);
    if (wrong.length > 0) found.set(name, new Set([...(found.get(name) ?? []), ...wrong]));
  }
  return new Map([...found].map(([name, lines]) => [name, [...lines].slice(0, 8).join(' | ')]));
}
