import type * as z from 'zod/mini';
import pretreatmentTable from '../../../data/drying/pretreatments.json';
import { answer } from '../../common/answer';
import { lookUp, type Named } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { fields, name, optional, readInput, volume } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Unit } from '../../quantity/units';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { caution } from '../cautions';

interface DipRow extends Sourced, Named {
  readonly ingredients: readonly { name: string; amount: readonly [number, number]; unit: Unit<'volume'> }[];
  readonly water: Quantity<'volume'> | null;
  readonly soak_minutes: readonly [number, number] | null;
  readonly simmer_minutes?: number;
  readonly sulfite: boolean;
}

const rows = asTable<DipRow>(pretreatmentTable).rows;
/** The first reading of each dip: the read one, and the stronger. */
const dips = rows.filter((row) => rows.find(({ name: other }) => other === row.name) === row);

const schema = fields({
  treatment: name('a dip: ascorbic acid dip, honey dip, syrup blanch ...'),
  water: optional(volume()),
});
export type PretreatmentDipInput = z.input<typeof schema>;

/** One reading of a dip. */
export interface DipRecipe {
  readonly ingredients: readonly {
    readonly name: string;
    readonly low: Quantity<'volume'>;
    readonly high: Quantity<'volume'>;
  }[];
  readonly water?: Quantity<'volume'>;
  readonly simmer?: Quantity<'time'>;
  readonly soak?: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  readonly note?: string;
}

export interface PretreatmentDip extends DipRecipe {
  readonly treatment: string;
  /** Other readings of the same dip, for the same water: weaker, or only recalled. */
  readonly others: readonly DipRecipe[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** One row for an amount of water. */
function recipe(row: DipRow, water: Quantity<'volume'> | undefined): DipRecipe {
  const used = water ?? row.water ?? undefined;
  const times = used === undefined || row.water === null ? 1 : valueIn(used, row.water.unit) / row.water.value;
  const minutes = (value: number): Quantity<'time'> => ({ value, unit: 'min' });
  return {
    ingredients: row.ingredients.map(({ name: what, amount: [low, high], unit }) => ({
      name: what,
      low: { value: low * times, unit },
      high: { value: high * times, unit },
    })),
    ...(used === undefined ? {} : { water: used }),
    ...(row.simmer_minutes === undefined ? {} : { simmer: minutes(row.simmer_minutes) }),
    ...(row.soak_minutes === null
      ? {}
      : { soak: { low: minutes(row.soak_minutes[0]), high: minutes(row.soak_minutes[1]) } }),
    ...(row.notes === undefined ? {} : { note: row.notes }),
  };
}

/**
 * The printed recipe of a dip that keeps cut fruit from darkening before it dries, for an amount of water.
 *
 * Where publications differ, the one that was read and is stronger comes first, and the others are in `others`: an
 * acid dip also helps the dryer kill bacteria.
 *
 * @param input.treatment - `ascorbic acid dip`, `citric acid dip`, `lemon juice dip`, `ascorbic acid hold`,
 *   `citric acid in blanch water`, `honey dip`, `syrup blanch`, `skin check`, `sodium bisulfite dip`,
 *   `sodium sulfite dip`, `sodium metabisulfite dip` ...
 * @param input.water - how much water to make it with; the printed amount if not given
 * @returns `ingredients` in the printed spoons and cups, and how long the fruit soaks
 * @throws StillroomError UNKNOWN_NAME with the nearest names; CONTRADICTION for water where no recipe is known
 *
 * @example
 * ```ts
 * import { pretreatmentDip } from 'stillroom/drying';
 *
 * const dip = pretreatmentDip({ treatment: 'ascorbic acid dip', water: '1 quart' });
 * dip.ingredients[0]?.low; // => { value: 7.5, unit: 'tsp' }
 * dip.soak?.low; // => { value: 10, unit: 'min' }
 * ```
 */
export function pretreatmentDip(input: PretreatmentDipInput): PretreatmentDip {
  const { treatment, water } = readInput(schema, input);
  const row = lookUp(treatment, dips, 'treatment', 'pretreatment dip');
  if (water !== undefined && row.water === null) {
    fail('CONTRADICTION', 'water', input.water, `no amount of water, as none is printed for the ${row.name}`);
  }
  const others = rows.filter((other) => other.name === row.name && other !== row);
  const first = recipe(row, water);
  return answer({
    treatment: row.name,
    ...first,
    others: others.map((other) => recipe(other, first.water)),
    basis: joinBasis(
      [basisOf(row, `recipe of the ${row.name}`)],
      others.map((other) => basisOf(other, `another reading of the ${row.name}`)),
    ),
    cautions: [
      ...(row.sulfite ? [caution('sulfite-sensitive')] : []),
      ...(row.obtained === 'memory' ? [caution('recalled')] : []),
    ],
  });
}
