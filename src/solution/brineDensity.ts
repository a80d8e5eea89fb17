import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, number, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import { basisOf } from '../sources/table';
import { density } from '../words/density';
import { salt } from '../words/shares';
import { REFERENCE_TEMPERATURE } from './fields';
import { soluteRows, toPercent } from './soluteProperties';
import { densityAt, densityBasis } from './sucroseDensity';
import { between, type Point } from './table';

const schema = /* @__PURE__ */ fields({
  /** Mass of salt in the mass of the brine, 0 to 26 %; or one of the others. */
  salt: optional(salt()),
  /** Of the brine at 20 degC, 0.9982 g/mL (water) to 1.1972 g/mL (26 % salt). */
  density: optional(density()),
  /** What a hydrometer shows in the brine at 20 degC: density over that of water, 1 to 1.199. */
  specificGravity: optional(number('a specific gravity from 1 to 1.2', { min: 1, max: 1.2 })),
});
export type BrineDensityInput = z.input<typeof schema>;
export interface BrineDensity {
  /** Mass of salt in the mass of the brine, 0 to 0.26. */
  readonly salt: number;
  /** Of the brine at 20 degC, g/mL. */
  readonly density: Quantity<'density'>;
  /** Density over that of water, both at 20 degC. */
  readonly specificGravity: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const WAYS = ['salt', 'density', 'specificGravity'] as const;

/**
 * Density of a salt brine at 20 degC by its salt, or the salt by its density: for a brine mixed by mass, and for one
 * that a hydrometer floats in.
 *
 * Source: CRC Handbook of Chemistry and Physics, NaCl, on straight lines between the printed rows and water.
 *
 * @param input - one of `salt` (mass of salt in the mass of brine, 0 to 26 %), `density` (0.9982 to 1.1972 g/mL) and
 * `specificGravity` (1 to 1.199)
 * @throws StillroomError MISSING with none, CONTRADICTION with two; OUT_OF_RANGE above 26 %, where brine is all but
 * saturated
 *
 * @example
 * ```ts
 * import { brineDensity } from 'stillroom/solution';
 *
 * brineDensity({ salt: '5 %' }).density; // => { value: 1.034, unit: 'g/mL' }
 * brineDensity({ density: '1.0707 g/mL' }).salt; // ≈ 0.1
 * brineDensity({ specificGravity: 1.0726 }).salt; // ≈ 0.1
 * ```
 */
export function brineDensity(input: BrineDensityInput): BrineDensity {
  const given = readInput(schema, input);
  const [way, second] = WAYS.filter((each) => given[each] !== undefined);
  if (way === undefined) fail('MISSING', 'salt', undefined, `one of ${WAYS.join(', ')}`);
  if (second !== undefined) fail('CONTRADICTION', second, input[second], `only one of ${WAYS.join(', ')}`);
  const rows = soluteRows('NaCl');
  const water = densityAt(0, REFERENCE_TEMPERATURE) / 1000;
  const points: readonly Point[] = [[0, water], ...rows.map((row): Point => [row.percent, row.density])];
  const grams =
    given.density === undefined ? (given.specificGravity ?? Number.NaN) * water : valueIn(given.density, 'g/mL');
  const percent =
    given.salt === undefined
      ? between(
          points.map(([x, y]): Point => [y, x]),
          grams,
        )
      : toPercent(given.salt);
  const value = percent === undefined ? undefined : between(points, percent);
  if (percent === undefined || value === undefined) {
    const [strongest, heaviest] = points.at(-1) as Point;
    const expected = {
      salt: `at most ${strongest} % salt in the mass of the brine`,
      density: `${water.toFixed(4)} to ${heaviest.toFixed(4)} g/mL, at 20 degC`,
      specificGravity: `1 to ${(heaviest / water).toFixed(4)}, at 20 degC`,
    };
    fail('OUT_OF_RANGE', way, input[way], expected[way]);
  }
  const found = { salt: given.salt ?? percent / 100, density: value, specificGravity: value / water };
  return answer({
    ...found,
    density: { value: found.density, unit: 'g/mL' },
    basis: [
      measured(way),
      ...WAYS.filter((each) => each !== way).flatMap((of) => [
        ...rows.slice(0, 1).map((row) => basisOf(row, of, 'density of brine')),
        ...(of === 'density' ? [] : densityBasis(of)),
      ]),
    ],
    cautions: [],
  });
}
