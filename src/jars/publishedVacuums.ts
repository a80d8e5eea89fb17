import { answer } from '../common/answer';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { basisOf } from '../sources/table';
import { containerVacuumRows } from './tables';

/** A published vacuum of one kind of sealed container. */
export interface PublishedVacuum {
  readonly container: string;
  readonly least: Quantity<'pressure'>;
  readonly most: Quantity<'pressure'>;
  readonly basis: readonly Basis[];
}

/**
 * The vacuum that publications give for sealed commercial containers, to compare a reading or `sealVacuum` with.
 * All are metal cans; none is published for home jars.
 *
 * Source: IASRI course on unit operations in canning, lesson 3.2.3.3.
 *
 * @example
 * ```ts
 * import { publishedVacuums } from 'stillroom/jars';
 *
 * publishedVacuums()[1].container; // => 'small cans'
 * publishedVacuums()[1].least; // => { value: 12, unit: 'inHg' }
 * ```
 */
export function publishedVacuums(): PublishedVacuum[] {
  return answer(
    containerVacuumRows.map((row) => ({
      container: row.container,
      least: { value: row.least, unit: row.unit },
      most: { value: row.most, unit: row.unit },
      basis: [basisOf(row, `vacuum of ${row.container}`)],
    })),
  );
}
