import type * as z from 'zod/mini';
import pretreatmentTable from '../../data/drying/pretreatments.json';
import { handOut } from '../common/handOut';
import { lookUp, type Named } from '../common/names';
import { fail } from '../errors/StillroomError';
import { fields, name, optional, readInput, volume } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Unit } from '../quantity/units';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { caution } from './cautions';

interface DipRow extends Sourced, Named {
  readonly ingredients: readonly { name: string; amount: readonly [number, number]; unit: Unit<'volume'> }[];
  readonly water: Quantity<'volume'> | null;
  readonly soak_minutes: readonly [number, number] | null;
  readonly simmer_minutes?: number;
  readonly sulfite: boolean;
}

const dips = asTable<DipRow>(pretreatmentTable).rows;

const schema = fields({
  treatment: name('a dip: ascorbic acid dip, honey dip, syrup blanch ...'),
  water: optional(volume()),
});
export type PretreatmentDipInput = z.input<typeof schema>;

export interface PretreatmentDip {
  readonly treatment: string;
  readonly ingredients: readonly {
    readonly name: string;
    readonly low: Quantity<'volume'>;
    readonly high: Quantity<'volume'>;
  }[];
  readonly water?: Quantity<'volume'>;
  readonly simmer?: Quantity<'time'>;
  readonly soak?: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  readonly note?: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The printed recipe of a dip that keeps cut fruit from darkening before it dries, for an amount of water.
 *
 * @param input.treatment - `ascorbic acid dip`, `ascorbic acid hold`, `citric acid in blanch water`, `honey dip`,
 *   `syrup blanch`, `skin check`, `sodium bisulfite dip`, `sodium sulfite dip`, `sodium metabisulfite dip` ...
 * @param input.water - how much water to make it with; the printed amount if not given
 * @returns `ingredients` in the printed spoons and cups, and how long the fruit soaks
 * @throws StillroomError UNKNOWN_NAME with the nearest names; CONTRADICTION for water where no recipe is known
 *
 * @example
 * ```ts
 * import { pretreatmentDip } from 'stillroom/drying';
 *
 * pretreatmentDip({ treatment: 'ascorbic acid dip', water: '1 quart' }).ingredients[0]?.low; // => { value: 2, unit: 'tsp' }
 * ```
 */
export function pretreatmentDip(input: PretreatmentDipInput): PretreatmentDip {
  const { treatment, water } = readInput(schema, input);
  const row = lookUp(treatment, dips, 'treatment', 'pretreatment dip');
  if (water !== undefined && row.water === null) {
    fail('CONTRADICTION', 'water', input.water, `no amount of water, as none is printed for the ${row.name}`);
  }
  const used = water ?? row.water ?? undefined;
  const times = used === undefined || row.water === null ? 1 : valueIn(used, row.water.unit) / row.water.value;
  const minutes = (value: number): Quantity<'time'> => ({ value, unit: 'min' });
  return handOut({
    treatment: row.name,
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
    basis: [basisOf(row, `recipe of the ${row.name}`)],
    cautions: [
      ...(row.sulfite ? [caution('sulfite-sensitive')] : []),
      ...(row.obtained === 'memory' ? [caution('from-memory')] : []),
    ],
  });
}
