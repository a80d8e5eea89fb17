import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput, share, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { correlation } from './tables';

const schema = fields({
  /** Share of the weight. */
  water: share({ above: 0 }),
  /** Share of the weight; 0 when left out. */
  protein: optional(share()),
  /** Where it begins to freeze, 0 degC or below (see `initialFreezingPoint`). */
  initialFreezing: temperature({ max: { value: 0, unit: 'degC' } }),
  /** -40 degC or above. */
  temperature: temperature({ min: { value: -40, unit: 'degC' } }),
});
export type IceFractionInput = z.input<typeof schema>;

export interface IceFraction {
  /** Ice, share of the food's weight, by Miles. */
  readonly ice: number;
  /** The same by Tchigeov, whose constants are recalled. */
  readonly tchigeov: number;
  /** Ice, share of the food's water. */
  readonly ofWater: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Water that protein binds and that never freezes: 0.4 of the protein (Chen; also ASHRAE). */
export const boundWater = (water: number, protein: number): number => Math.min(water, 0.4 * protein);

/** Ice by Miles: (water - bound water) (1 - tf / t), temperatures in degC; none down to the freezing point. */
export const milesIce = (freezable: number, freezing: number, degC: number): number =>
  degC >= freezing ? 0 : freezable * (1 - freezing / degC);

/**
 * How much of a food is ice at a temperature below its freezing point.
 *
 * Miles: ice = (water - bound water) (1 - tf / t), t in degC, bound water 0.4 x protein. Tchigeov, for comparison:
 * ice = 1.105 water / (1 + 0.7138 / ln(tf - t + 1)).
 *
 * @returns `ice` and `tchigeov` as shares of the food, `ofWater` as share of its water
 *
 * @example
 * ```ts
 * import { iceFraction } from 'stillroom/freezing';
 *
 * iceFraction({ water: '89 %', initialFreezing: '-0.9 degC', temperature: '-18 degC' }).ice; // ≈ 0.8455
 * ```
 */
export function iceFraction(input: IceFractionInput): IceFraction {
  const given = readInput(schema, input);
  const { water, protein = 0 } = given;
  if (water + protein > 1 + 1e-9) {
    fail('CONTRADICTION', 'protein', input.protein, `at most ${Number((1 - water).toPrecision(6))}, what is not water`);
  }
  const freezing = valueIn(given.initialFreezing, 'degC');
  const degC = valueIn(given.temperature, 'degC');
  const ice = milesIce(water - boundWater(water, protein), freezing, degC);
  const below = freezing - degC;
  // the fit overshoots a little: no more ice than water
  const tchigeov = below <= 0 ? 0 : Math.min(water, (1.105 * water) / (1 + 0.7138 / Math.log(below + 1)));
  return answer({
    ice,
    tchigeov,
    ofWater: ice / water,
    basis: [basisOf(correlation('miles-ice'), 'ice'), basisOf(correlation('tchigeov-ice'), 'ice, for comparison')],
    cautions: [caution('estimate')],
  });
}
