import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { jar as jarWord, listedSize } from '../words/jar';
import { mouth as mouthWord } from '../words/mouth';
import { freezingCaution, HEADSPACE } from './tables';

/** The sizes that the table prints. */
const SIZES = ['pint', 'quart'] as const;
const PACK_WORDS = ['liquid', 'dry', 'juice', 'syrup', 'sugar', 'puree', 'water', 'sauce', 'unsweetened'] as const;
const schema = fields({
  /**
   * `liquid` (fruit in juice, sugar, syrup or water, crushed or pureed), `dry` (nothing added) or `juice`; the names of
   * fruit packs (`syrup`, `sugar`, `puree`, `water`, `sauce`, `unsweetened`) are understood.
   */
  style: choice('the style of pack', PACK_WORDS),
  /** `wide` for a wide top, `regular` for a narrow one (`narrow` is understood). */
  mouth: mouthWord(),
  /** Up to a quart, by name, volume or measured; it takes the headspace of a pint or, if larger, a quart. */
  jar: jarWord(),
});
export type FreezingHeadspaceInput = z.input<typeof schema>;

export interface FreezingHeadspace {
  /** Between the packed food and the closure. */
  readonly headspace: Quantity<'length'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** How the table sorts a pack: whatever has sugar, syrup, juice or water, or is pureed, is liquid. */
const tablePack = (style: (typeof PACK_WORDS)[number]): string =>
  style === 'dry' || style === 'unsweetened' ? 'dry' : style === 'juice' ? 'juice' : 'liquid';

/**
 * How much room to leave between packed food and the closure of a freezer container.
 *
 * @returns `headspace` in inches, as printed
 * @throws StillroomError OUT_OF_RANGE for a container larger than a quart
 *
 * @example
 * ```ts
 * import { freezingHeadspace } from 'stillroom/freezing';
 *
 * freezingHeadspace({ style: 'liquid', mouth: 'regular', jar: 'quart' }).headspace; // => { value: 1.5, unit: 'in' }
 * ```
 */
export function freezingHeadspace(input: FreezingHeadspaceInput): FreezingHeadspace {
  const { style, mouth, jar } = readInput(schema, input);
  const size = listedSize(jar, SIZES);
  if (size === undefined) fail('OUT_OF_RANGE', 'jar', input.jar, 'a container no larger than a quart');
  const wanted = tablePack(style);
  const row = HEADSPACE.find((entry) => entry.pack === wanted && entry.mouth === mouth && entry.size === size);
  if (row === undefined) throw new Error(`no headspace for ${wanted}, ${mouth}, ${size}`);
  return answer({
    headspace: { value: row.inches, unit: 'in' },
    basis: [basisOf(row, 'headspace')],
    cautions: [freezingCaution('glass-needs-headspace')],
  });
}
