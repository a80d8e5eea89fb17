/** Compares what two runtimes answered: the same words, and numbers the same or apart by no more than doubles allow. */

/** How far apart two numbers may be, of the larger: the last digits of `Math.exp` and its like are the engine's own. */
const APART = 1e-12;

export interface Difference {
  /** Where in the answer: `.jars.low`. */
  readonly path: string;
  readonly here: unknown;
  readonly there: unknown;
}
export interface Compared {
  readonly differences: readonly Difference[];
  /** The largest relative difference of two numbers. */
  readonly apart: number;
}

const NUMBER = /-?\d+(?:\.\d+)?(?:e[-+]?\d+)?/g;

/** Compares two answers, whose numbers may be `most` apart. */
export function compare(here: unknown, there: unknown, most = APART): Compared {
  const differences: Difference[] = [];
  let apart = 0;
  const near = (one: number, other: number): boolean => {
    if (one === other) return true;
    const relative = Math.abs(one - other) / Math.max(Math.abs(one), Math.abs(other));
    apart = Math.max(apart, relative);
    return relative <= most;
  };
  // a chart or an error holds numbers inside of its text
  const alike = (one: string, other: string): boolean => {
    if (one === other) return true;
    const theirs = other.match(NUMBER) ?? [];
    const ours = one.match(NUMBER) ?? [];
    if (one.replace(NUMBER, '#') !== other.replace(NUMBER, '#')) return false;
    return ours.every((text, place) => near(Number(text), Number(theirs[place])));
  };
  const visit = (one: unknown, other: unknown, path: string): void => {
    const isObject = typeof one === 'object' && one !== null && typeof other === 'object' && other !== null;
    if (isObject && Array.isArray(one) === Array.isArray(other)) {
      // in the order of the first: a runtime that orders fields otherwise differs too
      const [ours, theirs] = [Object.entries(one), Object.entries(other)];
      if (ours.map(([key]) => key).join() !== theirs.map(([key]) => key).join())
        differences.push({ path, here: ours.map(([key]) => key), there: theirs.map(([key]) => key) });
      else for (const [place, [key, value]] of ours.entries()) visit(value, theirs[place]?.[1], `${path}.${key}`);
      return;
    }
    const same =
      typeof one === 'number' && typeof other === 'number'
        ? near(one, other)
        : typeof one === 'string' && typeof other === 'string'
          ? alike(one, other)
          : Object.is(one, other);
    if (!same) differences.push({ path, here: one, there: other });
  };
  visit(here, there, '');
  return { differences, apart };
}
