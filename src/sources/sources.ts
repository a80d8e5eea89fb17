import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, list, name, optional, readInput } from '../quantity/fields';
import { entries, type Source, source } from './source';

const schema = /* @__PURE__ */ fields({
  /** Ids as `basis[].source` gives them, 1 to 1,000; the whole register when left out. */
  ids: optional(list('ids of sources', name('the id of a source'))),
});
export type SourcesInput = z.input<typeof schema>;

/**
 * The citations behind an answer: each source that its `basis` names, or the whole register.
 *
 * @returns the entries, each once, in the order of the ids given; the register in the order of its ids
 * @throws StillroomError UNKNOWN_NAME, with the nearest ids
 *
 * @example
 * ```ts
 * import { sources } from 'stillroom/sources';
 *
 * sources({ ids: ['usda-cghc-2015'] })[0]?.publisher; // => 'USDA National Institute of Food and Agriculture'
 * sources({ ids: ['usda-cghc-2051'] }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function sources(input: SourcesInput = {}): readonly Source[] {
  const { ids } = readInput(schema, input);
  if (ids === undefined) return answer(entries);
  return answer([...new Set(ids)].map((id) => source(id, `ids[${ids.indexOf(id)}]`)));
}
