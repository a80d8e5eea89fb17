import { answer } from '../common/answer';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { basisOf } from '../sources/table';
import { sizeRows } from '../words/jar';

/** One published jar size. */
export interface JarSize {
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly nominal: Quantity<'volume'>;
  /** No brimful capacity is published; see `brimfulCapacity` to measure one. */
  readonly brimful: null;
  readonly basis: readonly Basis[];
}

/**
 * Every home-canning jar size that has a published nominal capacity, from the smallest up.
 *
 * Source: USDA Complete Guide to Home Canning (AIB 539), Guide 1; sizes of 4 and 28 oz from Kansas State Extension.
 *
 * @example
 * ```ts
 * import { jarSizes } from 'stillroom/jars';
 *
 * jarSizes().map(({ name }) => name); // => ['4 oz', 'half-pint', '12 oz', 'pint', '24 oz', '28 oz', 'quart', 'half-gallon']
 * jarSizes()[3].nominal; // => { value: 16, unit: 'fl oz' }
 * ```
 */
export function jarSizes(): JarSize[] {
  return answer(
    sizeRows.map((row) => ({
      name: row.name,
      otherNames: row.synonyms ?? [],
      nominal: { value: row.nominal_floz, unit: 'fl oz' },
      brimful: null,
      basis: [basisOf(row, `nominal capacity of the ${row.name} jar`)],
    })),
  );
}
