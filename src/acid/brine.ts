import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food as foodField } from '../foods/fields';
import { choice, fields, isMass, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { toAdd } from '../solution/massBalance';
import { type Basis, type Caution, derived } from '../sources/basis';
import type { NotKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { amount } from '../words/amount';
import { ready as readyWord } from '../words/ready';
import { otherShare } from '../words/shares';
import { checkFerment, type FermentCheck, type LeastSalt } from './leastSalt';
import { fineSaltGrams, fineSaltSpoons } from './saltMeasure';
import { acidCaution, BRINE_FIGURES, rowOf, type SaltMeasureRow } from './tables';
import { waterBasis, waterGrams } from './water';

const STRONGEST = rowOf(BRINE_FIGURES, 'strongest-brine', 'figure');
const WHOLES = ['water', 'brine', 'water and food', 'food'] as const;

const schema = fields({
  /** How much salt, as a share of what `shareOf` names: 0 to 0.35, or text in percent. */
  share: optional(otherShare('share', 'Salt, as a share of what `shareOf` names.', { above: 0, max: 0.35 })),
  /** What the share is of: `water`, `brine` (salt and water), `water and food`, or `food`. */
  shareOf: optional(choice('what the share is of', WHOLES)),
  /** Instead of a share: the salt that went in, by weight or in spoons of fine canning salt. */
  saltAdded: optional(amount()),
  /** The water, by weight or by measure. */
  water: optional(amount()),
  /** The weight of the vegetables, trimmed and cut. */
  ready: optional(readyWord()),
  /** `ferment` when left out; `other` for a soak, or a brine for fish or meat. */
  purpose: optional(choice('what the brine is for', ['ferment', 'other'])),
  /** What ferments, such as `sauerkraut` or `dill pickles`: its own least salt is then asked for. */
  food: optional(foodField()),
});
export type BrineInput = z.input<typeof schema>;

/** How strong a brine is, each way people say it: shares from 0 to 1, by weight. */
export interface BrineShares {
  /** Salt to water. */
  readonly ofWater?: number;
  /** Salt in the brine (salt and water). */
  readonly ofBrine?: number;
  /** Salt to water and food together: what the ferment comes to. */
  readonly ofWaterAndFood?: number;
  /** Salt to food. */
  readonly ofFood?: number;
}

export interface Brine {
  /** The salt by weight. */
  readonly saltMass: Quantity<'mass'>;
  /** The same in tablespoons of fine canning salt. */
  readonly saltVolume: Quantity<'volume'>;
  /** How strong the brine is, each way people say it. */
  readonly shares: BrineShares;
  /** For a ferment: the least share of salt that these tables hold for it, and what the share is of. */
  readonly leastSalt?: LeastSalt;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

function sharesOf(salt: number, water: number | undefined, ready: number | undefined): BrineShares {
  return {
    ...(water === undefined ? {} : { ofWater: salt / water, ofBrine: salt / (salt + water) }),
    ...(water === undefined || ready === undefined ? {} : { ofWaterAndFood: salt / (water + ready) }),
    ...(ready === undefined ? {} : { ofFood: salt / ready }),
  };
}

/** More salt than water dissolves is a mistake in the share. */
function refuseUndissolved(salt: number, water: number | undefined, path: string, given: unknown): void {
  if (water !== undefined && salt / (salt + water) > STRONGEST.value + 1e-12) {
    const most = `${STRONGEST.value * 100} %`;
    fail('OUT_OF_RANGE', path, given, `salt that the water dissolves: a brine of at most ${most} salt by weight`);
  }
}

interface Salt {
  readonly grams: number;
  readonly unit: Quantity<'mass'>['unit'];
  /** What a spoon weighs, where the salt was measured. */
  readonly row?: SaltMeasureRow;
}

/** What goes into the crock, as it was read. */
type Given = z.output<typeof schema>;

/** The salt of a share. */
function saltOfShare({ share, shareOf: of, water, ready }: Given): Salt {
  if (share === undefined) return fail('MISSING', 'share', undefined, 'a share of salt, or the salt that went in');
  if (of === undefined) return fail('MISSING', 'shareOf', undefined, `what the share is of: ${WHOLES.join(', ')}`);
  if (of !== 'food' && water === undefined) fail('MISSING', 'water', undefined, 'the water of the brine');
  if (of !== 'water' && of !== 'brine' && ready === undefined) {
    fail('MISSING', 'ready', undefined, 'the weight of the vegetables');
  }
  const waterWeight = water === undefined ? 0 : waterGrams(water);
  const readyWeight = ready === undefined ? 0 : valueIn(ready, 'g');
  const whole = {
    water: waterWeight,
    brine: waterWeight * (1 + toAdd(0, share, 1)),
    'water and food': waterWeight + readyWeight,
    food: readyWeight,
  }[of];
  const weighed = water !== undefined && isMass(water) ? water.unit : water === undefined ? ready?.unit : undefined;
  return { grams: share * whole, unit: weighed ?? 'g' };
}

/** The salt that went in. */
function saltGiven({ share, shareOf: of, saltAdded: salt, water, ready }: Given): Salt {
  if (salt === undefined) return fail('MISSING', 'saltAdded', undefined, 'the salt that went in');
  if (share !== undefined) fail('CONTRADICTION', 'share', share, 'a share of salt or the salt that went in, not both');
  if (of !== undefined) fail('CONTRADICTION', 'shareOf', of, '`shareOf` with a share only');
  if (water === undefined && ready === undefined) {
    fail('MISSING', 'water', undefined, 'water, or vegetables (ready), or both');
  }
  return isMass(salt) ? { grams: valueIn(salt, 'g'), unit: salt.unit } : { ...fineSaltGrams(salt), unit: 'g' };
}

/** A brine is a ferment unless it is said to be something else. */
const checkPurpose = (
  purpose: 'ferment' | 'other' = 'ferment',
  food: FoundFood | undefined,
  crock: Parameters<typeof checkFerment>[1],
): FermentCheck | { refused: NotKnown } =>
  purpose === 'other' ? { basis: [], cautions: [acidCaution('not-a-ferment')] } : checkFerment(food, crock);

/**
 * How much salt a brine needs, whatever its percentage refers to; or how strong a brine is, from what went in.
 *
 * Salt is, for a share p: of `water` p x water; of `brine` p / (1 - p) x water; of `water and food` p x (water +
 * food), which is what a ferment comes to; of `food` p x food, for dry salting. A 5 % brine by weight is
 * 52.6 g in a kilogram of water, not 50 g. With `saltAdded` in place of the share the same runs backwards.
 *
 * A brine is taken for a ferment unless `purpose` says otherwise, and a ferment with less salt than these tables hold
 * is refused: 2 % of water and food together, 1 1/2 tablespoons a quart (2.9 %) of a brine by itself, and for
 * cucumbers 1/2 cup in 8 cups of water (7.7 %).
 *
 * @returns `saltMass` in the unit of the water, food or salt weighed (grams where they were measured), `saltVolume` in
 * tablespoons of fine canning salt, and `shares` each way round; or `known: false` for too little salt
 * @throws StillroomError MISSING for the water or food that the share needs, CONTRADICTION for a share and salt,
 * OUT_OF_RANGE beyond what dissolves
 *
 * @example
 * ```ts
 * import { brine } from 'stillroom/acid';
 *
 * const strong = brine({ share: '5 %', shareOf: 'brine', water: '1 kg' });
 * 'shares' in strong && strong.saltMass.value; // ≈ 0.052632
 * const crock = brine({ share: '3 %', shareOf: 'water and food', water: '1 kg', ready: '2 kg' });
 * 'shares' in crock && crock.saltMass.value; // ≈ 0.09
 * const kraut = brine({ saltAdded: '3 tbsp', ready: '5 lb', food: 'sauerkraut' });
 * 'shares' in kraut && kraut.shares.ofFood; // ≈ 0.0238
 * 'shares' in brine({ share: '1 %', shareOf: 'food', ready: '5 lb' }); // => false
 * 'shares' in brine({ share: '1 %', shareOf: 'water', water: '1 kg', purpose: 'other' }); // => true
 * ```
 */
export function brine(input: BrineInput): Brine | NotKnown {
  const given = readInput(schema, input);
  const { water, ready, purpose, food } = given;
  const { grams, unit, row } = given.saltAdded === undefined ? saltOfShare(given) : saltGiven(given);
  const waterWeight = water === undefined ? undefined : waterGrams(water);
  const readyWeight = ready === undefined ? undefined : valueIn(ready, 'g');
  const path = given.saltAdded === undefined ? 'share' : 'saltAdded';
  refuseUndissolved(grams, waterWeight, path, input[path]);
  const check = checkPurpose(purpose, food, { salt: grams, water: waterWeight, ready: readyWeight });
  if ('refused' in check) return answer(check.refused);
  const spoons = fineSaltSpoons(grams);
  return answer({
    saltMass: quantityIn(grams, 'g', unit),
    saltVolume: given.saltAdded !== undefined && !isMass(given.saltAdded) ? given.saltAdded : spoons.volume,
    shares: sharesOf(grams, waterWeight, readyWeight),
    ...(check.leastSalt === undefined ? {} : { leastSalt: check.leastSalt }),
    basis: [
      derived('saltMass', 'salt by weight of what the share is of'),
      ...check.basis,
      ...(water === undefined || isMass(water) ? [] : [waterBasis('shares')]),
      row === undefined
        ? basisOf(spoons.row, 'saltVolume', 'weight of a tablespoon')
        : basisOf(row, 'saltMass', 'weight of a measure'),
      ...(water === undefined ? [] : [basisOf(STRONGEST, 'shares.ofBrine', STRONGEST.about)]),
    ],
    cautions: [...check.cautions, acidCaution('weigh-the-salt')],
  });
}
