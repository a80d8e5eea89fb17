import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, mass, number, optional, readInput } from '../quantity/fields';
import type { MassInput, Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { massBalance } from './inputs';

const percent = (what: string) => number(`${what}: percent by mass from 0 to 100`, { min: 0, max: 100 });
const schema = fields({
  high: percent('the stronger part'),
  low: percent('the weaker part'),
  target: percent('the blend'),
  total: optional(mass()),
  lowMass: optional(mass()),
  highMass: optional(mass()),
});
export interface PearsonSquareInput {
  /** Percent by mass (or Brix) of the stronger part, the weaker part, and the blend wanted. */
  readonly high: number;
  readonly low: number;
  readonly target: number;
  /** One of these, for masses: of the blend, of the weaker part at hand, or of the stronger. */
  readonly total?: MassInput;
  readonly lowMass?: MassInput;
  readonly highMass?: MassInput;
}
export interface PearsonSquare {
  readonly highParts: number;
  readonly lowParts: number;
  /** The stronger part's share of the blend. */
  readonly highFraction: number;
  /** Only where a mass is given. */
  readonly masses?: {
    readonly high: Quantity<'mass'>;
    readonly low: Quantity<'mass'>;
    readonly total: Quantity<'mass'>;
  };
  readonly basis: readonly Basis[];
}

/**
 * Pearson square: the parts by mass of a strong and a weak juice, syrup or brine that blend to a strength between.
 *
 * Formula: parts of the strong = target - low; parts of the weak = high - target. Holds for anything counted in
 * percent by mass: Brix, salt, fat.
 *
 * @param input - `high`, `low`, `target`: 0 to 100, the target between the two; one mass (`total`, `lowMass` or
 * `highMass`) where masses are wanted
 * @throws StillroomError CONTRADICTION where the target is not between, or two masses are given
 *
 * @example
 * ```ts
 * import { pearsonSquare } from 'stillroom/sugar';
 *
 * pearsonSquare({ high: 60, low: 10, target: 15 }).lowParts; // => 45
 * pearsonSquare({ high: 35, low: 4, target: 10, lowMass: '500 kg' }).masses?.high; // => { value: 120, unit: 'kg' }
 * ```
 */
export function pearsonSquare(input: PearsonSquareInput): PearsonSquare {
  const { high, low, target, total, lowMass, highMass } = readInput(schema, input);
  if (high <= low) fail('CONTRADICTION', 'high', high, `above ${low}, the weaker part`);
  if (target < low || target > high) fail('CONTRADICTION', 'target', target, `from ${low} to ${high}`);
  const highParts = target - low;
  const lowParts = high - target;
  const parts = high - low;
  const given = [
    { field: 'total', mass: total, parts },
    { field: 'lowMass', mass: lowMass, parts: lowParts },
    { field: 'highMass', mass: highMass, parts: highParts },
  ].filter(({ mass: value }) => value !== undefined);
  const [one, two] = given;
  if (two !== undefined) fail('CONTRADICTION', two.field, two.mass, 'one mass only: total, lowMass or highMass');
  if (one !== undefined && one.parts === 0) {
    fail('CONTRADICTION', one.field, one.mass, 'a mass of the part that the blend takes');
  }
  return answer({
    highParts,
    lowParts,
    highFraction: highParts / parts,
    ...(one === undefined ? {} : { masses: massesOf(one.mass as Quantity<'mass'>, one.parts, highParts, lowParts) }),
    basis: [massBalance('parts')],
  });
}

function massesOf(known: Quantity<'mass'>, knownParts: number, highParts: number, lowParts: number) {
  const of = (parts: number) => ({ value: (known.value * parts) / knownParts, unit: known.unit });
  return { high: of(highParts), low: of(lowParts), total: of(highParts + lowParts) };
}
