/** The usual end moistures, wet basis, and where they are from. */
import type { Basis } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { setting } from '../guide/tables';
import { storageItem } from '../keep/tables';
import { endsOf, numberOf } from '../rows';

/** A moisture of the tables as a share, and the lines behind it. */
export interface UsualMoisture {
  readonly moisture: number;
  readonly basis: readonly Basis[];
}

const ANY = setting('moisture-any-food');
const OF_KIND = { fruit: setting('moisture-fruit'), vegetable: setting('moisture-vegetable') };

/** The usual end moisture of dried fruit or vegetables; `of` is the answer's field. */
export function usualMoisture(kind: 'fruit' | 'vegetable', of: string): UsualMoisture {
  const [low, high] = endsOf(ANY);
  return {
    moisture: numberOf(OF_KIND[kind]) / 100,
    basis: [
      basisOf(OF_KIND[kind], of, `usual moisture of dried ${kind}`),
      basisOf(ANY, of, `properly dried food holds ${low} to ${high} %`),
    ],
  };
}

/** The dry end of what properly dried food holds. */
export const driestMoisture = (of: string): UsualMoisture => ({
  moisture: endsOf(ANY)[0] / 100,
  basis: [basisOf(ANY, of, 'moisture of properly dried food, the dry end')],
});

/** The moisture of freeze-dried fruit. */
export function freezeDriedMoisture(of: string): UsualMoisture {
  const row = storageItem('freeze-dried-moisture');
  return { moisture: numberOf(row) / 100, basis: [basisOf(row, of, 'moisture of freeze-dried fruit')] };
}
