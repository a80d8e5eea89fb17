import table from '../../data/process/cautions.json';
import { compareIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Caution } from '../sources/basis';
import { caution } from '../sources/cautions';

/** A caution of the table: some are for one band of elevation only. */
interface Row extends Caution {
  readonly aboveFt?: number;
  readonly toFt?: number;
}
const own = new Map((table as readonly Row[]).map((entry) => [entry.id, entry]));

/** The caution of this id in `data/process/cautions.json`. */
export function processCaution(id: string): Caution {
  const found = own.get(id);
  // ids come from our own code and tables, never from a caller: a missing one is a mistake that the tests meet
  if (found === undefined) throw new Error(`no caution ${id}`);
  const { aboveFt, toFt, ...said } = found;
  return said;
}

/** Whether the caution of this id is for this elevation: most are for every one. */
export function isForElevation(id: string, elevation: Quantity<'length'>): boolean {
  const { aboveFt, toFt } = own.get(id) ?? {};
  return (
    (aboveFt === undefined || compareIn(elevation, 'ft', aboveFt) > 0) &&
    (toFt === undefined || compareIn(elevation, 'ft', toFt) <= 0)
  );
}

/** What every process and every refusal says. */
export const usualCautions = (): Caution[] => [caution('tested-only'), caution('follow-local-guidance')];
