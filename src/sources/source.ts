import register from '../../data/sources.json';
import { type Named, nearestNames } from '../common/names';
import { fail } from '../errors/StillroomError';
import type { Seen } from './basis';

/** One entry of the register of sources. */
export interface Source extends Omit<Named, 'name'> {
  /** Short name of the entry, as `basis[].source` gives it. */
  readonly id: string;
  /** Title as a catalog names it, with the authors where there are any. */
  readonly title: string;
  /** Who published it. */
  readonly publisher: string;
  /** Year of the edition. */
  readonly year?: number | string;
  /** Which part of the work the tables rest on. */
  readonly locator?: string;
  /** Where the publisher has it. */
  readonly url?: string;
  /** What was looked at: the work itself, a copy of it, or a work that cites it; left out where nothing was seen. */
  readonly seen?: Seen;
  /** Which edition, or which part of the work is meant. */
  readonly note?: string;
}

/** The register, in the order of the ids. */
export const entries = register as readonly Source[];
let byId: Map<string, Source> | undefined;

/** The entry of an id that our own code or a basis line names. */
export function source(id: string, path = 'id'): Source {
  byId ??= new Map(entries.map((entry) => [entry.id, entry]));
  const found = byId.get(id);
  if (found !== undefined) return found;
  const nearest = typeof id === 'string' ? nearestNames(id, [...byId.keys()]) : [];
  return fail('UNKNOWN_NAME', path, id, 'the id of a source', { nearest });
}
