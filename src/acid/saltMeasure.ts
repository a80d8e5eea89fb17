import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fields, isMass, massOrVolume, name, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { acidCaution, rowWhere, SALT_MEASURES, type SaltMeasureRow } from './tables';

const schema = fields({
  salt: massOrVolume(),
  crystal: optional(name('the salt: fine canning salt, coarse salt or flake salt')),
});
export type SaltMeasureInput = z.input<typeof schema>;

export interface SaltMeasure {
  readonly crystal: string;
  readonly mass: { readonly low: Quantity<'mass'>; readonly high: Quantity<'mass'> };
  readonly volume: { readonly low: Quantity<'volume'>; readonly high: Quantity<'volume'> };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const SYNONYMS: Readonly<Record<string, readonly string[]>> = {
  'fine canning or table salt': [
    'canning salt',
    'pickling salt',
    'canning and pickling salt',
    'table salt',
    'fine salt',
    'fine',
  ],
  'coarse salt': ['coarse', 'coarse kosher salt', 'coarse sea salt'],
  'flake salt': ['flake', 'flakes', 'flake kosher salt', 'flaky salt'],
};
const FINE = 'fine canning or table salt';
const CRYSTALS: readonly Named[] = [...new Set(SALT_MEASURES.map(({ crystal }) => crystal))].map((crystal) => ({
  name: crystal,
  synonyms: SYNONYMS[crystal] ?? [],
}));

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
 * @param input.salt - spoons or cups to weigh, or a weight to measure
 * @param input.crystal - `fine canning salt` (default, also table salt), `coarse salt`, `flake salt`
 * @returns `mass` and `volume`, each `low` and `high` (equal for fine salt)
 *
 * @example
 * ```ts
 * import { saltMeasure } from 'stillroom/acid';
 *
 * saltMeasure({ salt: '3 tbsp' }).mass.high; // => { value: 54, unit: 'g' }
 * saltMeasure({ salt: '50 g', crystal: 'flake salt' }).volume.high.value; // ≈ 6.25
 * ```
 */
export function saltMeasure(input: SaltMeasureInput): SaltMeasure {
  const { salt, crystal: asked } = readInput(schema, input);
  const crystal = asked === undefined ? FINE : lookUp(asked, CRYSTALS, 'crystal', 'kind of salt').name;
  const row = rowFor(crystal, salt);
  const recalled = row.obtained === 'memory';
  const basis = [basisOf(row, `weight of a ${row.measure} of salt`)];
  const cautions = recalled ? [acidCaution('weigh-the-salt'), caution('recalled')] : [];
  if (isMass(salt)) {
    const grams = valueIn(salt, 'g');
    return answer({
      crystal,
      mass: { low: salt, high: salt },
      volume: {
        low: { value: grams / row.gramsHigh, unit: row.measure },
        high: { value: grams / row.gramsLow, unit: row.measure },
      },
      basis,
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
    basis,
    cautions,
  });
}
