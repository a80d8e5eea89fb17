/** What a figure rests on. */
export type BasisKind =
  | 'published' // printed in the named source
  | 'equation' // computed by the formula of the named source
  | 'common-practice' // what the trade does; no source
  | 'recalled' // recalled, not seen in a copy
  | 'derived' // follows from what these tables hold, or from the answer's own figures
  | 'measured'; // the user's own

/** What was really looked at: the work itself, a copy or page that reproduces it, or another work that cites it. */
export type Seen = 'original' | 'reproduction' | 'citation';

/** One line of an answer's basis: which figure, of what kind, from where. */
export interface Basis {
  /** Path of the answer's field that the line supports: `minutes`, `ready.low`, `ways[].jar`. */
  readonly of: string;
  /** What the figure rests on. */
  readonly kind: BasisKind;
  /** Id in the register of sources (see `source`); absent for common practice and the user's own. */
  readonly source?: string;
  /** Where in the source. */
  readonly locator?: string;
  /** What was really looked at, where the figure is published. */
  readonly seen?: Seen;
  /** Trade name of the food whose printed figure this is, where it is a wider food than the one asked for. */
  readonly food?: string;
  /** What the figure is, in words for people; no code reads it. */
  readonly note?: string;
}

/** How much a caution matters: it can hurt someone, it can spoil the food, or it is good to know. */
export type Severity = 'danger' | 'quality' | 'note';

/** Something to mind, said with the answer, as data. Answers list the dangers first. */
export interface Caution {
  /** A short fixed name to recognize it by. */
  readonly id: string;
  /** How much it matters: `danger`, `quality` or `note`. */
  readonly severity: Severity;
  /** What to do, and why. */
  readonly text: string;
  /** Id in the register of sources, where it is published. */
  readonly source?: string;
}

/** The basis of an answer that rests on what these tables hold, or do not hold, and on no single row. */
export const derived = (of: string, note?: string): Basis => ({
  of,
  kind: 'derived',
  ...(note === undefined ? {} : { note }),
});

/** The basis of a figure that the user gave or measured. */
export const measured = (of: string, note?: string): Basis => ({
  of,
  kind: 'measured',
  ...(note === undefined ? {} : { note }),
});

/** The lines of one answer, as they stand behind a field of another. */
export const behind = (of: string, lines: readonly Basis[]): readonly Basis[] => lines.map((line) => ({ ...line, of }));

/** Joins basis lists without repeating a line. */
export function joinBasis(...lists: readonly (readonly Basis[])[]): Basis[] {
  const seen = new Map<string, Basis>();
  for (const line of lists.flat()) {
    const key = [line.of, line.kind, line.source, line.locator, line.seen, line.food, line.note].join('|');
    if (!seen.has(key)) seen.set(key, line);
  }
  return [...seen.values()];
}

/** Joins caution lists, each caution once. */
export function joinCautions(...lists: readonly (readonly Caution[])[]): Caution[] {
  return [...new Map(lists.flat().map((caution) => [caution.id, caution])).values()];
}
