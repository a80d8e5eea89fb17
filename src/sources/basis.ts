/** What a figure rests on. */
export type BasisKind =
  | 'published' // printed in the named source
  | 'equation' // computed by the formula of the named source
  | 'common-practice' // what the trade does; no source
  | 'from-memory' // recalled, not seen in a copy
  | 'derived' // follows from what these tables hold, or from the answer's own figures
  | 'measured'; // the user's own

/** What was really looked at: the work itself, a copy or page that reproduces it, or another work that cites it. */
export type Seen = 'original' | 'reproduction' | 'citation';

/** One line of an answer's basis: which figure, of what kind, from where. */
export interface Basis {
  /** Which figure of the answer. */
  readonly what: string;
  readonly kind: BasisKind;
  /** Id in the register of sources (see `source`); none for common practice and the user's own. */
  readonly source?: string;
  /** Where in the source. */
  readonly locator?: string;
  /** What was really looked at, where the figure is published. */
  readonly seen?: Seen;
}

/** Something that can hurt: said with the answer, as data. */
export interface Caution {
  /** A short fixed name to recognise it by. */
  readonly id: string;
  readonly text: string;
  /** Id in the register of sources, where it is published. */
  readonly source?: string;
}

/** The answer where no tested process, or no published figure, exists. */
export interface Refusal {
  readonly tested: false;
  readonly reason: string;
  /** What can be done instead. */
  readonly instead: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The basis of an answer that rests on what these tables hold, or do not hold, and on no single row. */
export const derived = (what: string): Basis => ({ what, kind: 'derived' });

/** Joins basis lists without repeating a line. */
export function joinBasis(...lists: readonly (readonly Basis[])[]): Basis[] {
  const seen = new Map<string, Basis>();
  for (const line of lists.flat()) {
    const key = [line.what, line.kind, line.source, line.locator, line.seen].join('|');
    if (!seen.has(key)) seen.set(key, line);
  }
  return [...seen.values()];
}

/** Joins caution lists, each caution once. */
export function joinCautions(...lists: readonly (readonly Caution[])[]): Caution[] {
  return [...new Map(lists.flat().map((caution) => [caution.id, caution])).values()];
}
