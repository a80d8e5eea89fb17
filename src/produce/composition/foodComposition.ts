import type * as z from 'zod/mini';
import preserved from '../../../data/produce/composition-preserved.json';
import { answer } from '../../common/answer';
import { findNamed, lookUp } from '../../common/names';
import { fields, name, readInput } from '../../quantity/fields';
import type { Basis } from '../../sources/basis';
import { asTable, basisOf } from '../../sources/table';
import { type CatalogueRow, catalogue, numbersOf } from '../catalogue';
import { compositionRows, type ProximateRow } from './composition';
import type { Proximates } from './describeProduce';

const schema = fields({ food: name('a food, such as "dried apple", "raisin" or "peach"') });
export type FoodCompositionInput = z.input<typeof schema>;

export interface PreservedCompositionRow extends ProximateRow {
  readonly food: string;
  readonly synonyms?: readonly string[];
}
export const preservedCompositions = asTable<PreservedCompositionRow>(preserved).rows;
const foods = preservedCompositions.map((row) => ({ name: row.food, synonyms: row.synonyms ?? [], row }));

export interface FoodComposition extends Proximates {
  readonly food: string;
  /** Food number in the release. */
  readonly ndb: string;
  readonly basis: readonly Basis[];
}

/**
 * The published composition of a food as it is kept: dried, canned, frozen, jam, syrup, sugar; or of raw produce.
 *
 * @param input.food - `dried apple`, `raisin`, `canned peach heavy syrup`, `honey`, `peach` ...
 * @returns g (energy: kcal) in 100 g; null where the release has no figure
 * @throws StillroomError UNKNOWN_NAME for a food in no table, offering the nearest names
 *
 * Source: USDA SR28, NUT_DATA.txt.
 *
 * @example
 * ```ts
 * import { foodComposition } from 'stillroom/produce';
 *
 * foodComposition({ food: 'dried apple' }).water; // ≈ 31.76
 * foodComposition({ food: 'raisins' }).sugars; // ≈ 59.19
 * ```
 */
export function foodComposition(input: FoodCompositionInput): FoodComposition {
  const given = readInput(schema, input);
  const raw = catalogue.filter((row) => numbersOf(row).length > 0);
  const kept = findNamed(given.food, foods);
  const found =
    kept.length === 1 ? (kept[0] as (typeof foods)[number]) : lookUp(given.food, [...raw, ...foods], 'food', 'food');
  const row = 'row' in found ? (found.row as PreservedCompositionRow) : rawRow(found);
  return answer({
    food: found.name,
    ndb: row.ndb,
    description: row.description,
    water: row.water_g,
    energy: row.energy_kcal,
    protein: row.protein_g,
    fat: row.fat_g,
    carbohydrate: row.carbohydrate_g,
    fibre: row.fibre_g,
    sugars: row.sugars_g,
    ash: row.ash_g,
    basis: [basisOf(row, 'composition')],
  });
}

/** The row that is quoted first for raw produce. */
function rawRow(found: { readonly name: string }): ProximateRow {
  const [first] = numbersOf(found as CatalogueRow);
  return compositionRows.find(({ ndb }) => ndb === first) as ProximateRow;
}
