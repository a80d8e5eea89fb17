import fatTable from '../../../data/drying/fat.json';
import { findNamed, type Named } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { name, optional, share } from '../../quantity/fields';
import type { Basis, Caution } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { caution } from '../cautions';
import { DRIED_FOODS } from './foodNames';
import { numberOf, setting } from './settings';

interface FatRow extends Sourced {
  readonly food: string;
  readonly synonyms: readonly string[];
  readonly fat_percent: number;
}

const fatty: readonly (Named & { readonly row: FatRow })[] = asTable<FatRow>(fatTable).rows.map((row) => ({
  name: row.food,
  synonyms: row.synonyms,
  row,
}));
const LEAN: readonly Named[] = DRIED_FOODS;
const MOST = setting('fat_most');

/** The fields of an argument that say what is dried. */
export const fatFields = {
  food: optional(name('what is dried: strawberry, avocado, cheese ...')),
  fat: optional(share({ below: 1 })),
};

/** What the fat of a food means for drying it. */
export interface Fat {
  /** Share of the food as it goes in, where it is known. */
  readonly share?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The same where a food need not be named, as in plain arithmetic: without one nothing is said of fat. */
export const fatIfNamed = (food: string | undefined, fat: number | undefined, moisture: number): Fat =>
  food === undefined && fat === undefined ? { basis: [], cautions: [] } : fatOf(food, fat, moisture);

/**
 * How much of a food is fat, by the caller or by the tables, and what to say of it: fat does not dry, and a food that
 * neither knows is never passed over.
 *
 * @throws StillroomError CONTRADICTION for fat and water that are more than the whole food
 */
export function fatOf(food: string | undefined, fat: number | undefined, moisture: number): Fat {
  const [row] = food === undefined ? [] : findNamed(food, fatty).map((entry) => entry.row);
  const share = fat ?? (row === undefined ? undefined : row.fat_percent / 100);
  if (share === undefined) {
    const lean = food !== undefined && findNamed(food, LEAN).length > 0;
    return { basis: [], cautions: lean ? [] : [caution('fat-not-known')] };
  }
  if (fat !== undefined && fat + moisture > 1 + 1e-9) {
    fail('CONTRADICTION', 'fat', fat, `at most what the moisture leaves, ${1 - moisture}`);
  }
  return {
    share,
    basis: [
      fat === undefined && row !== undefined
        ? basisOf(row, `fat of ${row.food}`)
        : { of: 'fat of the food', kind: 'measured' },
      basisOf(MOST, 'most fat of food to be dried'),
    ],
    cautions: [
      ...(share > numberOf(MOST) / 100 + 1e-9 ? [caution('fat-does-not-dry')] : []),
      ...(fat === undefined && row?.obtained === 'memory' ? [caution('recalled')] : []),
    ],
  };
}
