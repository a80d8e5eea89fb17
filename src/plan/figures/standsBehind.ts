import type { Basis } from '../../sources/basis';

/**
 * The basis of another function as it stands in a plan: `of` is the path of the plan's field, and what the line said
 * it was for goes into `note`.
 */
export const standsBehind = (of: string, ...lists: readonly (readonly Basis[])[]): Basis[] =>
  lists.flat().map((line) => ({ ...line, of, note: line.note ?? line.of }));
