import type { Basis } from '../sources/basis';

/** The basis of another function as it stands behind a field of this answer; its own path goes into the note. */
export const behind = (of: string, ...lists: readonly (readonly Basis[])[]): Basis[] =>
  lists.flat().map((line) => ({ ...line, of, note: line.note ?? line.of }));

/** The basis of the parts of a list, by the path from the top: `findings[].wanted`. */
export const ofEach = (list: string, parts: readonly { readonly basis: readonly Basis[] }[]): Basis[] =>
  parts.flatMap(({ basis }) => basis.map((line) => ({ ...line, of: `${list}[].${line.of}` })));
