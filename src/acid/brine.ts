import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, isMass, mass, massOrVolume, name, optional, readInput, share } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution, Refusal } from '../sources/index';
import { basisOf } from '../sources/table';
import { type Crock, checkFerment, type FermentCheck, type ShareOf } from './leastSalt';
import { fineSaltGrams, fineSaltSpoons } from './saltMeasure';
import { acidCaution } from './tables';
import { WATER_WEIGHT, waterGrams } from './water';

/** Salt is dissolved up to here, share of the brine: the last row of the handbook's table of salt solutions. */
const STRONGEST_BRINE = 0.26;
const SALT_SOLUTIONS: Basis = {
  of: 'strongest brine, 26 % by weight',
  kind: 'published',
  source: 'crc-concentrative',
  locator: 'sodium chloride',
  seen: 'reproduction',
};

const purposeField = () => optional(choice('what the brine is for', ['ferment', 'other']));
const foodField = () => optional(name('what ferments: "sauerkraut" or "dill pickles"'));

const BASES = ['water', 'brine', 'water + produce', 'produce'] as const;
const brineSchema = fields({
  percent: share({ above: 0, max: 0.35 }),
  basis: choice('what the percentage is of', BASES),
  water: optional(massOrVolume()),
  produce: optional(mass()),
  purpose: purposeField(),
  food: foodField(),
});
export type BrineInput = z.input<typeof brineSchema>;

/** How strong a brine is, each way people say it; ratios from 0 to 1. */
export interface BrineRatios {
  /** Salt to water, by weight. */
  readonly toWater?: number;
  /** Salt in the brine (salt + water), by weight. */
  readonly ofBrine?: number;
  /** Salt to water and produce together: what the ferment comes to. */
  readonly toWaterAndProduce?: number;
  /** Salt to produce. */
  readonly toProduce?: number;
}

export interface Brine {
  readonly salt: Quantity<'mass'>;
  /** The same in tablespoons of fine canning salt. */
  readonly fineSalt: Quantity<'volume'>;
  readonly ratios: BrineRatios;
  /** For a ferment: the least share of salt that these tables hold for it, and what the share is of. */
  readonly least?: { readonly share: number; readonly of: ShareOf };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const EQUATION: Basis = { of: 'salt by weight of what the percentage is of', kind: 'equation' };

function ratiosOf(salt: number, water: number | undefined, produce: number | undefined): BrineRatios {
  return {
    ...(water === undefined ? {} : { toWater: salt / water, ofBrine: salt / (salt + water) }),
    ...(water === undefined || produce === undefined ? {} : { toWaterAndProduce: salt / (water + produce) }),
    ...(produce === undefined ? {} : { toProduce: salt / produce }),
  };
}

/** More salt than water dissolves is a mistake in the percentage. */
function refuseUndissolved(salt: number, water: number | undefined, path: string, given: unknown): void {
  if (water !== undefined && salt / (salt + water) > STRONGEST_BRINE + 1e-12) {
    fail('OUT_OF_RANGE', path, given, 'salt that the water dissolves: a brine of at most 26 % salt by weight');
  }
}

/** A brine is a ferment unless it is said to be something else. */
const checkPurpose = (
  purpose: 'ferment' | 'other' = 'ferment',
  food: string | undefined,
  crock: Crock,
): FermentCheck | { refused: Refusal } =>
  purpose === 'other' ? { basis: [], cautions: [acidCaution('not-a-ferment')] } : checkFerment(food, crock);

/**
 * How much salt a brine takes, whatever its percentage is of.
 *
 * Salt is, for a share p: of `water` p x water; of `brine` p / (1 - p) x water; of `water + produce` p x (water +
 * produce), which is what a ferment comes to; of `produce` p x produce, for dry salting. A 5 % brine by weight is
 * 52.6 g in a kilogram of water, not 50 g.
 *
 * A brine is taken for a ferment unless `purpose` says otherwise, and a ferment with less salt than these tables hold
 * is refused: 2 % of water and produce together, 1 1/2 tablespoons a quart (2.9 %) of a brine by itself, and for
 * cucumbers 1/2 cup in 8 cups of water (7.7 %).
 *
 * @param input.percent - `"3 %"` or 0.03, up to 35 %
 * @param input.basis - `water`, `brine` (salt + water), `water + produce` or `produce`
 * @param input.water - by measure or by weight
 * @param input.produce - weight of the produce
 * @param input.purpose - `ferment` (default); `other` for a soak, or a brine for fish or meat
 * @param input.food - what ferments, `sauerkraut` or `dill pickles`: its own least salt is then asked for
 * @returns `salt` in the unit of the water or produce weighed (grams where the water was measured), `fineSalt` in
 * tablespoons of fine canning salt, and `ratios` the other ways round; or a refusal
 * @throws StillroomError MISSING for the water or produce that the basis needs, OUT_OF_RANGE beyond what dissolves
 *
 * @example
 * ```ts
 * import { brine } from 'stillroom/acid';
 *
 * const strong = brine({ percent: '5 %', basis: 'brine', water: '1 kg' });
 * 'salt' in strong && strong.salt.value; // ≈ 0.052632
 * const crock = brine({ percent: '3 %', basis: 'water + produce', water: '1 kg', produce: '2 kg' });
 * 'salt' in crock && crock.salt.value; // ≈ 0.09
 * 'salt' in brine({ percent: '1 %', basis: 'produce', produce: '5 lb' }); // => false
 * 'salt' in brine({ percent: '1 %', basis: 'water', water: '1 kg', purpose: 'other' }); // => true
 * ```
 */
export function brine(input: BrineInput): Brine | Refusal {
  const { percent, basis, water, produce, purpose, food } = readInput(brineSchema, input);
  if (basis !== 'produce' && water === undefined) fail('MISSING', 'water', undefined, 'the water of the brine');
  if (basis.endsWith('produce') && produce === undefined)
    fail('MISSING', 'produce', undefined, 'the weight of the produce');
  const waterWeight = water === undefined ? undefined : waterGrams(water);
  const produceWeight = produce === undefined ? undefined : valueIn(produce, 'g');
  const of = {
    water: waterWeight ?? 0,
    brine: (waterWeight ?? 0) / (1 - percent),
    'water + produce': (waterWeight ?? 0) + (produceWeight ?? 0),
    produce: produceWeight ?? 0,
  }[basis];
  const salt = percent * of;
  refuseUndissolved(salt, waterWeight, 'percent', input.percent);
  const check = checkPurpose(purpose, food, { salt, water: waterWeight, produce: produceWeight });
  if ('refused' in check) return answer(check.refused);
  const spoons = fineSaltSpoons(salt);
  const unit =
    water !== undefined && isMass(water) ? water.unit : ((water === undefined ? produce?.unit : undefined) ?? 'g');
  return answer({
    salt: quantityIn(salt, 'g', unit),
    fineSalt: spoons.volume,
    ratios: ratiosOf(salt, waterWeight, produceWeight),
    ...(check.least === undefined ? {} : { least: check.least }),
    basis: [
      EQUATION,
      ...check.basis,
      ...(water === undefined || isMass(water) ? [] : [WATER_WEIGHT]),
      basisOf(spoons.row, 'tablespoons of fine canning salt'),
      SALT_SOLUTIONS,
    ],
    cautions: [...check.cautions, acidCaution('weigh-the-salt')],
  });
}

const strengthSchema = fields({
  salt: massOrVolume(),
  water: optional(massOrVolume()),
  produce: optional(mass()),
  purpose: purposeField(),
  food: foodField(),
});
export type BrineStrengthInput = z.input<typeof strengthSchema>;

export interface BrineStrength {
  readonly ratios: BrineRatios;
  readonly saltMass: Quantity<'mass'>;
  /** For a ferment: the least share of salt that these tables hold for it, and what the share is of. */
  readonly least?: { readonly share: number; readonly of: ShareOf };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How strong a brine or a salted crock is, from the salt, water and produce that went in.
 *
 * Taken for a ferment unless `purpose` says otherwise: one with less salt than these tables hold is refused, as by
 * `brine`.
 *
 * @param input.salt - by weight, or in spoons of fine canning salt
 * @param input.water - by measure or by weight
 * @param input.produce - weight of the produce; `water` or `produce` or both
 * @param input.purpose - `ferment` (default); `other` for a soak, or a brine for fish or meat
 * @param input.food - what ferments, `sauerkraut` or `dill pickles`: its own least salt is then asked for
 * @returns `ratios`: salt to water, of brine, to water and produce, to produce; or a refusal
 * @throws StillroomError MISSING without water and produce, OUT_OF_RANGE beyond what dissolves
 *
 * @example
 * ```ts
 * import { brineStrength } from 'stillroom/acid';
 *
 * const kraut = brineStrength({ salt: '3 tbsp', produce: '5 lb', food: 'sauerkraut' });
 * 'ratios' in kraut && kraut.ratios.toProduce; // ≈ 0.0238
 * 'ratios' in brineStrength({ salt: '10 g', produce: '1 kg' }); // => false
 * ```
 */
export function brineStrength(input: BrineStrengthInput): BrineStrength | Refusal {
  const { salt, water, produce, purpose, food } = readInput(strengthSchema, input);
  if (water === undefined && produce === undefined) fail('MISSING', 'water', undefined, 'water, or produce, or both');
  const { grams, row } = isMass(salt) ? { grams: valueIn(salt, 'g'), row: undefined } : fineSaltGrams(salt);
  const waterWeight = water === undefined ? undefined : waterGrams(water);
  refuseUndissolved(grams, waterWeight, 'salt', input.salt);
  const produceWeight = produce === undefined ? undefined : valueIn(produce, 'g');
  const check = checkPurpose(purpose, food, { salt: grams, water: waterWeight, produce: produceWeight });
  if ('refused' in check) return answer(check.refused);
  return answer({
    ratios: ratiosOf(grams, waterWeight, produceWeight),
    saltMass: isMass(salt) ? salt : { value: grams, unit: 'g' },
    ...(check.least === undefined ? {} : { least: check.least }),
    basis: [
      EQUATION,
      ...check.basis,
      ...(row === undefined ? [] : [basisOf(row, 'weight of a spoon of fine canning salt')]),
      ...(water === undefined || isMass(water) ? [] : [WATER_WEIGHT]),
    ],
    cautions: [...check.cautions, ...(row === undefined ? [] : [acidCaution('weigh-the-salt')])],
  });
}
