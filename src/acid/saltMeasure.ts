import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fields, isMass, name, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { amount } from '../words/amount';
import { acidCaution, rowOf, rowWhere, SALT_MEASURES, type SaltMeasureRow } from './tables';

const schema = fields({
  /** Spoons or cups to weigh, or a weight to measure. */
  amount: amount(),
  /** `fine canning or table salt` when left out; `coarse salt`, `flake salt`. */
  crystal: optional(name('the salt: fine canning salt, coarse salt or flake salt')),
});
export type SaltMeasureInput = z.input<typeof schema>;

export interface SaltMeasure {
  /** The kind of salt. */
  readonly crystal: string;
  /** What it weighs: the same at both ends for fine salt. */
  readonly mass: { readonly low: Quantity<'mass'>; readonly high: Quantity<'mass'> };
  /** What it measures. */
  readonly volume: { readonly low: Quantity<'volume'>; readonly high: Quantity<'volume'> };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** What is meant where no crystal is named. */
const FINE = rowOf(SALT_MEASURES, 'fine-tbsp', 'salt').crystal;
const CRYSTALS: readonly Named[] = SALT_MEASURES.filter(({ measure }) => measure === 'tbsp').map(
  ({ crystal, names }) => ({ name: crystal, synonyms: names }),
);

/** The row of the asker's own measure where it is printed, otherwise that of the tablespoon. */
function rowFor(crystal: string, measured: Quantity<'mass'> | Quantity<'volume'>): SaltMeasureRow {
  const rows = SALT_MEASURES.filter((row) => row.crystal === crystal);
  return (
    rows.find((row) => row.measure === measured.unit) ??
    rowWhere(rows, ({ measure }) => measure === 'tbsp', `weight of ${crystal}`)
  );
}

/** Grams of a measure of fine canning or table salt, with the row it rests on. */
export function fineSaltGrams(volume: Quantity<'volume'>): { grams: number; row: SaltMeasureRow } {
  const row = rowFor(FINE, volume);
  return { grams: valueIn(volume, row.measure) * row.gramsLow, row };
}

/** Tablespoons of fine canning or table salt for a weight. */
export function fineSaltSpoons(grams: number): { volume: Quantity<'volume'>; row: SaltMeasureRow } {
  const row = rowFor(FINE, { value: grams, unit: 'g' });
  return { volume: { value: grams / row.gramsLow, unit: 'tbsp' }, row };
}

/**
 * What a spoon of salt weighs, or how many spoons a weight is, by the kind of crystal.
 *
 * Fine canning salt packs like table salt (6 g a teaspoon, 18 g a tablespoon, 292 g a cup). Coarse and flake salts
 * vary so much that only a range is given, from memory: weigh them.
 *
 * @returns `mass` and `volume`, each `low` and `high` (equal for fine salt)
 * @throws StillroomError UNKNOWN_NAME for another salt
 *
 * @example
 * ```ts
 * import { saltMeasure } from 'stillroom/acid';
 *
 * saltMeasure({ amount: '3 tbsp' }).mass.high; // => { value: 54, unit: 'g' }
 * saltMeasure({ amount: '50 g', crystal: 'flake salt' }).volume.high.value; // ≈ 6.25
 * ```
 */
export function saltMeasure(input: SaltMeasureInput): SaltMeasure {
  const { amount: salt, crystal: asked } = readInput(schema, input);
  const crystal = asked === undefined ? FINE : lookUp(asked, CRYSTALS, 'crystal', 'kind of salt').name;
  const row = rowFor(crystal, salt);
  const cautions = row.obtained === 'memory' ? [acidCaution('weigh-the-salt'), caution('recalled')] : [];
  const note = `weight of a ${row.measure}`;
  if (isMass(salt)) {
    const grams = valueIn(salt, 'g');
    return answer({
      crystal,
      mass: { low: salt, high: salt },
      volume: {
        low: { value: grams / row.gramsHigh, unit: row.measure },
        high: { value: grams / row.gramsLow, unit: row.measure },
      },
      basis: [basisOf(row, 'volume', note)],
      cautions,
    });
  }
  const measures = valueIn(salt, row.measure);
  return answer({
    crystal,
    mass: {
      low: quantityIn(measures * row.gramsLow, 'g', 'g'),
      high: quantityIn(measures * row.gramsHigh, 'g', 'g'),
    },
    volume: { low: salt, high: salt },
    basis: [basisOf(row, 'mass', note)],
    cautions,
  });
}
