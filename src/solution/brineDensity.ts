import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { density, fields, readInput, share } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { basisOf } from '../sources/table';
import { REFERENCE_TEMPERATURE } from './fields';
import { soluteTable } from './soluteProperties';
import { densityAt } from './sucroseDensity';
import { between, type Point } from './table';

function brinePoints(): { points: readonly Point[]; basis: readonly Basis[] } {
  const { rows } = soluteTable({ solute: 'NaCl' });
  const water: Point = [0, densityAt(0, REFERENCE_TEMPERATURE) / 1000];
  return {
    points: [water, ...rows.map((row): Point => [row.percent, row.density])],
    basis: rows.slice(0, 1).map((row) => basisOf(row, 'density of brine')),
  };
}

const schema = fields({ salt: share() });
export type BrineDensityInput = z.input<typeof schema>;
export interface BrineDensity {
  readonly density: Quantity<'density'>;
  /** Density over that of water, both at 20 degC. */
  readonly specificGravity: number;
  readonly basis: readonly Basis[];
}

/**
 * Density of a salt brine at 20 degC by its salt, as a share of the brine's own mass.
 *
 * Source: CRC Handbook of Chemistry and Physics, NaCl, on straight lines between the printed rows and water.
 *
 * @param input - `salt`: mass of salt in the mass of brine, 0 to 26 %
 * @throws StillroomError OUT_OF_RANGE above 26 %, where brine is all but saturated
 *
 * @example
 * ```ts
 * import { brineDensity } from 'stillroom/solution';
 *
 * brineDensity({ salt: '5 %' }).density; // => { value: 1.034, unit: 'g/mL' }
 * ```
 */
export function brineDensity(input: BrineDensityInput): BrineDensity {
  const { salt } = readInput(schema, input);
  const { points, basis } = brinePoints();
  const value = between(points, Number((100 * salt).toPrecision(12)));
  if (value === undefined) fail('OUT_OF_RANGE', 'salt', input.salt, 'at most 26 % salt in the mass of the brine');
  return answer({
    density: { value, unit: 'g/mL' },
    specificGravity: value / (points[0] as Point)[1],
    basis,
  });
}

const inverseSchema = fields({ density: density() });
export type SaltFromDensityInput = z.input<typeof inverseSchema>;
export interface SaltFromDensity {
  /** Mass of salt in the mass of brine, 0 to 0.26. */
  readonly salt: number;
  readonly basis: readonly Basis[];
}

/**
 * Salt of a brine from its density at 20 degC: the inverse of `brineDensity`.
 *
 * @param input - `density`: that of water (0.9982 g/mL) to that of a 26 % brine (1.1972 g/mL)
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { saltFromDensity } from 'stillroom/solution';
 *
 * saltFromDensity({ density: '1.0707 g/mL' }).salt; // ≈ 0.1
 * ```
 */
export function saltFromDensity(input: SaltFromDensityInput): SaltFromDensity {
  const given = readInput(inverseSchema, input);
  const { points, basis } = brinePoints();
  const byDensity = points.map(([percent, value]): Point => [value, percent]);
  const percent = between(byDensity, valueIn(given.density, 'g/mL'));
  if (percent === undefined) {
    const [low] = byDensity[0] as Point;
    const [high] = byDensity.at(-1) as Point;
    fail('OUT_OF_RANGE', 'density', input.density, `${low.toFixed(4)} to ${high.toFixed(4)} g/mL, at 20 degC`);
  }
  return answer({ salt: percent / 100, basis });
}
