import type { Basis, BasisKind, Seen } from './basis';

/** How a figure came into the table. */
export type Obtained = 'read' | 'read-secondary' | 'memory' | 'computed' | 'derived';

/** What every row of every table carries besides its figures. */
export interface Sourced {
  /** Id in the register of sources. */
  readonly source: string;
  /** Where in the source. */
  readonly locator: string;
  readonly obtained: Obtained;
  /** What was really looked at, of a figure that was read; `read-secondary` means a citation. */
  readonly seen?: Seen;
}

/** A row of what the trade does and nobody published: it has no source; the table says why. */
export interface Practice {
  readonly obtained: 'common-practice';
}

/** A published table, as far as code reads it: its title and what its columns mean are for the reader of `data/`. */
export interface Table<Row extends Sourced | Practice = Sourced> {
  readonly rows: readonly Row[];
}

const KINDS: Readonly<Record<Obtained, BasisKind>> = {
  read: 'published',
  'read-secondary': 'published',
  memory: 'recalled',
  computed: 'equation',
  derived: 'equation',
};

/** Gives an imported JSON table its row type; the tests prove it against the table's schema. */
export const asTable = <Row extends Sourced | Practice>(json: unknown): Table<Row> => json as Table<Row>;

/** The basis line of a figure taken from a table row: `of` is the path of the answer's field. */
export function basisOf(row: Sourced, of: string, note?: string): Basis {
  const seen = row.obtained === 'read-secondary' ? 'citation' : row.seen;
  return {
    of,
    kind: KINDS[row.obtained],
    source: row.source,
    locator: row.locator,
    ...(seen === undefined ? {} : { seen }),
    ...(note === undefined ? {} : { note }),
  };
}

/** The basis line of a figure of common practice: `of` is the path of the answer's field. */
export const practiceBasis = (of: string, note?: string): Basis => ({
  of,
  kind: 'common-practice',
  ...(note === undefined ? {} : { note }),
});
