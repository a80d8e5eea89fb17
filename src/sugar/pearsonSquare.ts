import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { balanceBasis, partsOf } from '../solution/massBalance';
import type { Basis } from '../sources/basis';
import { mass } from '../words/mass';
import { otherShare } from '../words/shares';

const strength = (name: string, says: string) => otherShare(name, says);
const schema = fields({
  /** Strength of the stronger part, as a share of its mass: 0 to 1, or percent (Brix over 100). */
  strong: strength('strong', 'Strength of the stronger part, as a share of its mass.'),
  /** Strength of the weaker part. */
  weak: strength('weak', 'Strength of the weaker part, as a share of its mass.'),
  /** Strength of the blend, between the two. */
  target: strength('target', 'Strength of the blend, as a share of its mass.'),
  /** For masses, one of three: of the blend, */
  mass: optional(mass()),
  /** of the weaker part at hand, */
  weakMass: optional(mass()),
  /** or of the stronger part at hand. */
  strongMass: optional(mass()),
});
export type PearsonSquareInput = z.input<typeof schema>;
export interface PearsonSquare {
  /** Parts of the stronger, by mass: percent of the target less percent of the weaker. */
  readonly strongParts: number;
  /** Parts of the weaker, by mass: percent of the stronger less percent of the target. */
  readonly weakParts: number;
  /** The stronger part's share of the blend, 0 to 1. */
  readonly strongShare: number;
  /** Mass of the stronger part, where a mass is given. */
  readonly strongMass?: Quantity<'mass'>;
  /** Mass of the weaker part. */
  readonly weakMass?: Quantity<'mass'>;
  /** Mass of the blend. */
  readonly mass?: Quantity<'mass'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Pearson square: the parts by mass of a strong and a weak juice, syrup or brine that blend to a strength in
 * between.
 *
 * Formula: parts of the strong = target - weak; parts of the weak = strong - target, in percent. Holds for anything
 * counted as a share of the mass: Brix, salt, fat. Water is a weak part of 0: it thins a syrup too strong, or a batch
 * boiled down too far.
 *
 * @param input - `strong`, `weak`, `target`: 0 to 1 or percent, the target between the two; one mass (`mass`,
 * `weakMass` or `strongMass`) where you want masses
 * @throws StillroomError CONTRADICTION where the target is not between, or two masses are given
 *
 * @example
 * ```ts
 * import { pearsonSquare } from 'stillroom/sugar';
 *
 * pearsonSquare({ strong: '60 %', weak: '10 %', target: '15 %' }).weakParts; // => 45
 * pearsonSquare({ strong: 0.35, weak: 0.04, target: 0.1, weakMass: '500 kg' }).strongMass; // => { value: 120, unit: 'kg' }
 * pearsonSquare({ strong: '65 %', weak: 0, target: '30 %', strongMass: '1 kg' }).weakMass?.value; // ≈ 1.1667
 * ```
 */
export function pearsonSquare(input: PearsonSquareInput): PearsonSquare {
  const { strong, weak, target, mass: blend, weakMass, strongMass } = readInput(schema, input);
  if (strong <= weak) fail('CONTRADICTION', 'strong', input.strong, `above ${weak}, the weaker part`);
  if (target < weak || target > strong) fail('CONTRADICTION', 'target', input.target, `from ${weak} to ${strong}`);
  const { strong: strongParts, weak: weakParts } = partsOf(strong, weak, target);
  const all = strongParts + weakParts;
  const given = [
    { field: 'mass', mass: blend, parts: all },
    { field: 'weakMass', mass: weakMass, parts: weakParts },
    { field: 'strongMass', mass: strongMass, parts: strongParts },
  ].filter(({ mass: value }) => value !== undefined);
  const [one, two] = given;
  if (two !== undefined) fail('CONTRADICTION', two.field, two.mass, 'one mass only: mass, weakMass or strongMass');
  if (one !== undefined && one.parts === 0) {
    fail('CONTRADICTION', one.field, one.mass, 'a mass of the part that the blend takes');
  }
  const known = one?.mass;
  const of = (share: number, from: Quantity<'mass'>) => ({
    value: (from.value * share) / (one?.parts ?? 1),
    unit: from.unit,
  });
  return answer({
    strongParts,
    weakParts,
    strongShare: strongParts / all,
    ...(known === undefined
      ? {}
      : { strongMass: of(strongParts, known), weakMass: of(weakParts, known), mass: of(all, known) }),
    basis: [balanceBasis('strongParts')],
  });
}
