import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { choice, fields, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { freezingCaution, HEADSPACE } from './tables';

const PACK_WORDS = ['liquid', 'dry', 'juice', 'syrup', 'sugar', 'puree', 'water', 'sauce', 'unsweetened'] as const;
const schema = fields({
  pack: choice('the pack', PACK_WORDS),
  opening: choice('the top of the container', ['wide', 'narrow']),
  size: choice('the size of the container', ['pint', 'quart']),
});
export type FreezingHeadspaceInput = z.input<typeof schema>;

export interface FreezingHeadspace {
  /** Between the packed food and the closure. */
  readonly headspace: Quantity<'length'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** How the table sorts a pack: whatever has sugar, syrup, juice or water, or is pureed, is liquid. */
const tablePack = (pack: (typeof PACK_WORDS)[number]): string =>
  pack === 'dry' || pack === 'unsweetened' ? 'dry' : pack === 'juice' ? 'juice' : 'liquid';

/**
 * How much room to leave between packed food and the closure of a freezer container.
 *
 * @param input.pack - `liquid` (fruit in juice, sugar, syrup or water, crushed or pureed), `dry` (nothing added) or
 * `juice`; the names of fruit packs (`syrup`, `sugar`, `puree`, `water`, `sauce`, `unsweetened`) are understood
 * @param input.opening - `wide` or `narrow` top
 * @param input.size - `pint` or `quart`
 * @returns `headspace` in inches, as printed
 *
 * @example
 * ```ts
 * import { freezingHeadspace } from 'stillroom/freezing';
 *
 * freezingHeadspace({ pack: 'liquid', opening: 'narrow', size: 'quart' }).headspace; // => { value: 1.5, unit: 'in' }
 * ```
 */
export function freezingHeadspace(input: FreezingHeadspaceInput): FreezingHeadspace {
  const { pack, opening, size } = readInput(schema, input);
  const wanted = tablePack(pack);
  const row = HEADSPACE.find((entry) => entry.pack === wanted && entry.opening === opening && entry.size === size);
  if (row === undefined) throw new Error(`no headspace for ${wanted}, ${opening}, ${size}`);
  return answer({
    headspace: { value: row.inches, unit: 'in' },
    basis: [basisOf(row, 'headspace')],
    cautions: [freezingCaution('glass-needs-headspace')],
  });
}
