import register from '../../data/sources.json';
import { answer } from '../common/answer';
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

const entries = register as readonly Source[];
let byId: Map<string, Source> | undefined;

/**
 * The citation behind a source id in an answer's `basis`.
 *
 * @param id - as in `basis[].source`
 * @throws StillroomError UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { source } from 'stillroom/sources';
 *
 * source('usda-cghc-2015').publisher; // => 'USDA National Institute of Food and Agriculture'
 * ```
 */
export function source(id: string): Source {
  byId ??= new Map(entries.map((entry) => [entry.id, entry]));
  const found = byId.get(id);
  if (found !== undefined) return answer(found);
  const nearest = typeof id === 'string' ? nearestNames(id, [...byId.keys()]) : [];
  fail('UNKNOWN_NAME', 'id', id, 'the id of a source', { nearest });
}

/** Every source of the register, in the order of their ids. */
export function sources(): readonly Source[] {
  return answer(entries);
}
