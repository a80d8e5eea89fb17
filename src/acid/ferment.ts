import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { food as foodField } from '../foods/fields';
import { nameOf } from '../foods/tables';
import { fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { ready as readyWord } from '../words/ready';
import { temperature } from '../words/temperature';
import { type FermentWeeks, weeksAt } from './fermentWeeks';
import { drySaltRow, fermentOf } from './leastSalt';
import { fineSaltGrams } from './saltMeasure';
import { acidCaution, FERMENT_SALT, FERMENT_TIME, printed, rowOf } from './tables';
import { GRAMS_PER_ML, waterBasis } from './water';

const schema = fields({
  /** What ferments: `sauerkraut` (or `cabbage`), `dill pickles` (or `cucumbers`). */
  food: foodField(),
  /** The weight of the shredded cabbage or of the cucumbers: the salt is for it. */
  ready: optional(readyWord()),
  /** The temperature of the crock, 0 to 60 degC: the weeks are for it. */
  temperature: optional(temperature({ min: { value: 0, unit: 'degC' }, max: { value: 60, unit: 'degC' } })),
});
export type FermentInput = z.input<typeof schema>;

/** The printed salt for a weight of food. */
export interface FermentSalt {
  /** What the salt weighs, of fine canning salt. */
  readonly mass: Quantity<'mass'>;
  /** Canning or pickling salt, by the spoon or cup as printed. */
  readonly volume: Quantity<'volume'>;
  /** Salt to food by weight (dry salting), or to water (brine): 0 to 1. */
  readonly share: number;
  /** What the share is of. */
  readonly shareOf: 'food' | 'water';
  /** Sauerkraut: the share of the cabbage that the standard names. */
  readonly standard?: { readonly low: number; readonly high: number };
  /** Dill pickles: water of the brine. */
  readonly waterVolume?: Quantity<'volume'>;
  /** Dill pickles: vinegar of 5 % acetic acid in the brine. */
  readonly vinegar?: Quantity<'volume'>;
}

/** The room that food needs in a crock. */
export interface Crock {
  /** Room in the crock above the food. */
  readonly headroom: { readonly low: Quantity<'length'>; readonly high: Quantity<'length'> };
  /** Brine over the food. */
  readonly brineOver: { readonly low: Quantity<'length'>; readonly high: Quantity<'length'> };
  /** Brine to top up, or in the bag that weighs the food down: salt to boiled, cooled water. */
  readonly topUp: {
    /** Salt in it. */
    readonly saltVolume: Quantity<'volume'>;
    /** Water it goes into. */
    readonly waterVolume: Quantity<'volume'>;
  };
}

export interface Ferment {
  /** What is made: `sauerkraut`, `fermented dill pickles`. */
  readonly food: string;
  /** The salt, where `ready` is given. */
  readonly salting?: FermentSalt;
  /** The weeks, where `temperature` is given. */
  readonly weeks?: FermentWeeks;
  /** The room it needs, and the brine to top up. */
  readonly crock: Crock;
  /** Dill pickles: months in the refrigerator once fermented. */
  readonly refrigeratedMonths?: { readonly low: number; readonly high: number };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const fermentCautions = (): Caution[] => [
  acidCaution('salt-guards-the-ferment'),
  acidCaution('weigh-the-salt'),
  caution('follow-local-guidance'),
];

/** No salt or time is printed for other ferments here, and none is made up. */
const refuse = (asked: string): NotKnown =>
  notKnown({
    code: 'no-ferment',
    text: `These tables hold salt and time for sauerkraut and fermented dill pickles, not for ${asked}.`,
    instead: 'Follow a tested recipe of an extension service for it; brine does its arithmetic.',
    basis: [derived('reason', 'what the ferment tables hold')],
    cautions: [acidCaution('salt-guards-the-ferment'), caution('follow-local-guidance')],
  });

interface Part<T> {
  readonly value: T;
  readonly basis: readonly Basis[];
}

/** Cabbage is salted dry, by the pound. */
function krautSalt(ready: Quantity<'mass'>): Part<FermentSalt> {
  const row = drySaltRow();
  const standard = rowOf(FERMENT_SALT, 'sauerkraut-standard', 'salt');
  const spoons = (printed(row, 'saltTbsp') * valueIn(ready, 'lb')) / printed(row, 'produceLb');
  const volume = { value: spoons, unit: 'tbsp' as const };
  const weighed = fineSaltGrams(volume);
  return {
    value: {
      mass: { value: weighed.grams, unit: 'g' },
      volume,
      share: weighed.grams / valueIn(ready, 'g'),
      shareOf: 'food',
      standard: { low: printed(standard, 'percentLow') / 100, high: printed(standard, 'percentHigh') / 100 },
    },
    basis: [
      basisOf(row, 'salting.volume'),
      basisOf(weighed.row, 'salting.mass', 'weight of a measure of salt'),
      basisOf(standard, 'salting.standard'),
    ],
  };
}

/** Cucumbers ferment in a brine. */
function pickleSalt(ready: Quantity<'mass'>): Part<FermentSalt> {
  const row = rowOf(FERMENT_SALT, 'dill-pickle-brine', 'salt');
  const batches = valueIn(ready, 'lb') / printed(row, 'produceLb');
  const volume = { value: printed(row, 'saltCups') * batches, unit: 'cup' as const };
  const water = { value: printed(row, 'waterCups') * batches, unit: 'cup' as const };
  const weighed = fineSaltGrams(volume);
  return {
    value: {
      mass: { value: weighed.grams, unit: 'g' },
      volume,
      share: weighed.grams / (valueIn(water, 'mL') * GRAMS_PER_ML),
      shareOf: 'water',
      waterVolume: water,
      vinegar: { value: printed(row, 'vinegarCups') * batches, unit: 'cup' },
    },
    basis: [
      basisOf(row, 'salting.volume', 'brine for the cucumbers'),
      basisOf(weighed.row, 'salting.mass', 'weight of a measure of salt'),
      waterBasis('salting.share'),
    ],
  };
}

const inches = (line: string) => {
  const row = rowOf(FERMENT_TIME, line, 'room in the crock');
  return {
    row,
    value: {
      low: { value: printed(row, 'inchesLow'), unit: 'in' as const },
      high: { value: printed(row, 'inchesHigh'), unit: 'in' as const },
    },
  };
};

/** The room that food needs in a crock, and the brine to top it up. */
function crockFor(brined: boolean): Part<Crock> {
  const top = rowOf(FERMENT_SALT, brined ? 'bag-brine' : 'sauerkraut-top-up', 'salt');
  const headroom = inches('headroom');
  const over = inches('brine-over');
  return {
    value: {
      headroom: headroom.value,
      brineOver: over.value,
      topUp: {
        saltVolume: { value: printed(top, 'saltTbspPerQuartWater'), unit: 'tbsp' },
        waterVolume: { value: 1, unit: 'quart' },
      },
    },
    basis: [basisOf(headroom.row, 'crock.headroom'), basisOf(over.row, 'crock.brineOver'), basisOf(top, 'crock.topUp')],
  };
}

/**
 * The printed salt and weeks of sauerkraut or fermented dill pickles.
 *
 * Salt, for a weight of food. Sauerkraut: 3 tablespoons to 5 lb of cabbage (about 2.4 %). Dill pickles: 1/2 cup to 8
 * cups of water and 1/4 cup of vinegar for 4 lb of cucumbers.
 *
 * Weeks, at a temperature. Only the printed bands are served: 3 to 4 weeks at 70 to 75 degF, 5 to 6 weeks at 60 to 65
 * degF (dill pickles 55 to 65). Between two bands the answer reaches from one to the other; beyond them no time is
 * given. It is done when the bubbles stop and it tastes right, not by the calendar.
 *
 * Other ferments are not known: their salt and time are not in these tables.
 *
 * Source: Complete Guide to Home Canning, Guide 6.
 *
 * @returns `salting` where `ready` is given, `weeks` where `temperature` is, and the room in the crock; or
 * `known: false`
 * @throws StillroomError UNKNOWN_NAME for a food that is in no table
 *
 * @example
 * ```ts
 * import { ferment } from 'stillroom/acid';
 *
 * const kraut = ferment({ food: 'cabbage', ready: '25 lb', temperature: '72 degF' });
 * 'crock' in kraut && kraut.salting?.volume; // => { value: 15, unit: 'tbsp' }
 * 'crock' in kraut && kraut.weeks?.time?.low; // => { value: 3, unit: 'week' }
 * 'crock' in ferment({ food: 'carrots', ready: '5 lb' }); // => false
 * ```
 */
export function ferment(input: FermentInput): Ferment | NotKnown {
  const { food, ready, temperature: crockAt } = readInput(schema, input);
  const found = fermentOf(food);
  if (found === undefined) return answer(refuse(food.name));
  const brined = found.brine === true;
  const salt = ready === undefined ? undefined : brined ? pickleSalt(ready) : krautSalt(ready);
  const weeks = crockAt === undefined ? undefined : weeksAt(found.id, crockAt);
  const crock = crockFor(brined);
  const cold = FERMENT_TIME.find((row) => row.food === found.id && row.what === 'refrigerated');
  return answer({
    food: nameOf(found.id),
    ...(salt === undefined ? {} : { salting: salt.value }),
    ...(weeks === undefined ? {} : { weeks: weeks.value }),
    crock: crock.value,
    ...(cold === undefined
      ? {}
      : { refrigeratedMonths: { low: printed(cold, 'monthsLow'), high: printed(cold, 'monthsHigh') } }),
    basis: [
      ...(salt?.basis ?? []),
      ...(weeks?.basis ?? []),
      ...crock.basis,
      ...(cold === undefined ? [] : [basisOf(cold, 'refrigeratedMonths')]),
    ],
    cautions: fermentCautions(),
  });
}
