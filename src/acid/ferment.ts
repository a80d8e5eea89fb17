import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { findNamed } from '../common/names';
import { fields, mass, name, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived, type Refusal } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { drySaltRow, FERMENTS } from './leastSalt';
import { fineSaltGrams } from './saltMeasure';
import {
  acidCaution,
  FERMENT_SALT,
  FERMENT_TIME,
  type FermentSaltRow,
  type FermentTimeRow,
  printed,
  rowWhere,
} from './tables';
import { GRAMS_PER_ML, WATER_WEIGHT } from './water';

/** The row with this food and use. */
function saltRow(food: string, use: string, has: keyof FermentSaltRow): FermentSaltRow {
  const wanted = (row: FermentSaltRow) => row.food === food && row.use === use && row[has] !== undefined;
  return rowWhere(FERMENT_SALT, wanted, `ferment salt for ${food}, ${use}`);
}

/** No salt or time is printed for other ferments here, and none is made up. */
const refusal = (asked: string): Refusal => ({
  tested: false,
  reason: `These tables hold salt and time for sauerkraut and fermented dill pickles, not for ${asked}.`,
  instead: 'Follow a tested recipe of an extension service for it; brine and brineStrength do its arithmetic.',
  basis: [derived('what the ferment tables hold')],
  cautions: [acidCaution('salt-guards-the-ferment'), caution('follow-local-guidance')],
});

const fermentCautions = (): Caution[] => [
  acidCaution('salt-guards-the-ferment'),
  acidCaution('weigh-the-salt'),
  caution('follow-local-guidance'),
];

const saltSchema = fields({ food: name('what ferments: "sauerkraut" or "dill pickles"'), produce: mass() });
export type FermentSaltInput = z.input<typeof saltSchema>;

export interface FermentSalt {
  readonly food: string;
  /** Canning or pickling salt, as printed by the spoon or cup. */
  readonly salt: Quantity<'volume'>;
  /** What that weighs, of fine canning salt. */
  readonly saltMass: Quantity<'mass'>;
  /** Salt to produce by weight (dry salting), or to water (brine). */
  readonly ratio: number;
  /** What the ratio is of. */
  readonly ratioOf: 'produce' | 'water';
  /** Sauerkraut: the share of the cabbage that the standard names. */
  readonly standard?: { readonly low: number; readonly high: number };
  /** Dill pickles: water and 5 % vinegar of the brine. */
  readonly water?: Quantity<'volume'>;
  readonly vinegar?: Quantity<'volume'>;
  /** Brine to top up the crock, or in the bag that weighs it down: salt to a quart of boiled, cooled water. */
  readonly topUp: { readonly salt: Quantity<'volume'>; readonly water: Quantity<'volume'> };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The printed salt for sauerkraut or fermented dill pickles, for a weight of produce.
 *
 * Sauerkraut: 3 tablespoons to 5 lb of cabbage (about 2.4 %). Dill pickles: 1/2 cup to 8 cups of water and 1/4 cup of
 * vinegar for 4 lb of cucumbers. Other ferments are refused: their salt is not in the tables.
 *
 * @param input.food - `sauerkraut` (also `cabbage`) or `dill pickles` (also `cucumbers`)
 * @param input.produce - weight of shredded cabbage or cucumbers
 * @returns `salt` in tablespoons (cups for pickles), `saltMass` in grams, `ratio`
 *
 * @example
 * ```ts
 * import { fermentSalt } from 'stillroom/acid';
 *
 * const kraut = fermentSalt({ food: 'cabbage', produce: '25 lb' });
 * 'salt' in kraut && kraut.salt; // => { value: 15, unit: 'tbsp' }
 * ```
 */
export function fermentSalt(input: FermentSaltInput): FermentSalt | Refusal {
  const { food: asked, produce } = readInput(saltSchema, input);
  const [found] = findNamed(asked, FERMENTS);
  if (found === undefined) return answer(refusal(asked));
  const pounds = valueIn(produce, 'lb');
  const top = rowWhere(
    FERMENT_SALT,
    (row) => row.saltTbspPerQuartWater !== undefined && (row.food === found.name || row.food === 'any crock'),
    'brine to top up',
  );
  const topUp = {
    salt: { value: printed(top, 'saltTbspPerQuartWater'), unit: 'tbsp' as const },
    water: { value: 1, unit: 'quart' as const },
  };
  const topBasis = basisOf(top, 'brine to top up');
  if (found.name === 'sauerkraut') {
    const row = drySaltRow();
    const standard = saltRow('sauerkraut', 'share of the cabbage', 'lacticPercentAtLeast');
    const salt = { value: (printed(row, 'saltTbsp') * pounds) / printed(row, 'produceLb'), unit: 'tbsp' as const };
    const weighed = fineSaltGrams(salt);
    return answer({
      food: found.name,
      salt,
      saltMass: { value: weighed.grams, unit: 'g' },
      ratio: weighed.grams / valueIn(produce, 'g'),
      ratioOf: 'produce',
      standard: { low: printed(standard, 'percentLow') / 100, high: printed(standard, 'percentHigh') / 100 },
      topUp,
      basis: [
        basisOf(row, 'salt for the cabbage'),
        basisOf(weighed.row, 'weight of the salt'),
        basisOf(standard, 'share of salt in the standard'),
        topBasis,
      ],
      cautions: fermentCautions(),
    });
  }
  const row = saltRow('dill pickles', 'brine', 'saltCups');
  const batches = pounds / printed(row, 'produceLb');
  const salt = { value: printed(row, 'saltCups') * batches, unit: 'cup' as const };
  const water = { value: printed(row, 'waterCups') * batches, unit: 'cup' as const };
  const weighed = fineSaltGrams(salt);
  return answer({
    food: found.name,
    salt,
    saltMass: { value: weighed.grams, unit: 'g' },
    ratio: weighed.grams / (valueIn(water, 'mL') * GRAMS_PER_ML),
    ratioOf: 'water',
    water,
    vinegar: { value: printed(row, 'vinegarCups') * batches, unit: 'cup' },
    topUp,
    basis: [
      basisOf(row, 'brine for the cucumbers'),
      basisOf(weighed.row, 'weight of the salt'),
      WATER_WEIGHT,
      topBasis,
    ],
    cautions: fermentCautions(),
  });
}

const timeSchema = fields({
  food: name('what ferments: "sauerkraut" or "dill pickles"'),
  temperature: temperature({ min: { value: 0, unit: 'degC' }, max: { value: 60, unit: 'degC' } }),
});
export type FermentTimeInput = z.input<typeof timeSchema>;

export interface FermentTime {
  readonly food: string;
  /** `good`: a printed band; `between`: between two printed bands or beside one; or outside what ferments well. */
  readonly fit: 'good' | 'between' | 'too cold' | 'too warm';
  /** Weeks of the printed band; between two bands, from the shorter of one to the longer of the other. */
  readonly time?: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  readonly note: string;
  /** Room in the crock above the food, and brine over it. */
  readonly crock: {
    readonly headroom: { readonly low: Quantity<'length'>; readonly high: Quantity<'length'> };
    readonly brineOver: { readonly low: Quantity<'length'>; readonly high: Quantity<'length'> };
  };
  /** Dill pickles: months in the refrigerator once fermented. */
  readonly refrigeratedMonths?: { readonly low: number; readonly high: number };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const crockInches = (what: string) => {
  const row = rowWhere(FERMENT_TIME, (entry) => entry.what === what, what);
  return {
    row,
    inches: {
      low: { value: printed(row, 'inchesLow'), unit: 'in' as const },
      high: { value: printed(row, 'inchesHigh'), unit: 'in' as const },
    },
  };
};

/**
 * How long sauerkraut or dill pickles ferment at a temperature.
 *
 * Only the printed bands are served: 3 to 4 weeks at 70 to 75 degF, 5 to 6 weeks at 60 to 65 degF (dill pickles 55 to
 * 65). Between two bands the answer reaches from one to the other; beyond them no time is given. It is done when the
 * bubbles stop and it tastes right, not by the calendar.
 *
 * @param input.food - `sauerkraut` or `dill pickles`
 * @param input.temperature - of the crock, 0 to 60 degC
 * @returns `time` in weeks and `fit`; or a refusal for other ferments
 *
 * @example
 * ```ts
 * import { fermentTime } from 'stillroom/acid';
 *
 * const kraut = fermentTime({ food: 'sauerkraut', temperature: '72 degF' });
 * 'fit' in kraut && kraut.time.low; // => { value: 3, unit: 'week' }
 * ```
 */
export function fermentTime(input: FermentTimeInput): FermentTime | Refusal {
  const { food: asked, temperature: crock } = readInput(timeSchema, input);
  const [found] = findNamed(asked, FERMENTS);
  if (found === undefined) return answer(refusal(asked));
  const rows = FERMENT_TIME.filter((row) => row.food === found.name);
  const bands = rows.filter((row) => row.what === 'time');
  const cold = rows.find((row) => row.what === 'too cold below');
  const warm = rowWhere(rows, (row) => row.what === 'too warm above', 'line above which it is too warm');
  const degF = Number(valueIn(crock, 'degF').toFixed(6)); // the last digits of a conversion from degC
  const fit = fitOf(degF, bands, cold, warm);
  const headroom = crockInches('headroom above the food');
  const over = crockInches('brine over the food');
  const refrigerated = rows.find((row) => row.monthsLow !== undefined);
  const served = fit.rows;
  const week = (value: number) => ({ value, unit: 'week' as const });
  return answer({
    food: found.name,
    fit: fit.fit,
    ...(served.length === 0
      ? {}
      : {
          time: {
            low: week(Math.min(...served.map((row) => printed(row, 'weeksLow')))),
            high: week(Math.max(...served.map((row) => printed(row, 'weeksHigh')))),
          },
        }),
    note: fit.note,
    crock: { headroom: headroom.inches, brineOver: over.inches },
    ...(refrigerated === undefined
      ? {}
      : { refrigeratedMonths: { low: printed(refrigerated, 'monthsLow'), high: printed(refrigerated, 'monthsHigh') } }),
    basis: [
      ...(served.length === 0 ? bands : served).map((row) => basisOf(row, 'weeks at a temperature')),
      ...(cold === undefined ? [] : [basisOf(cold, cold.what)]),
      basisOf(warm, warm.what),
      basisOf(headroom.row, 'room above the food'),
      basisOf(over.row, 'brine over the food'),
      ...(refrigerated === undefined ? [] : [basisOf(refrigerated, 'months in the refrigerator')]),
    ],
    cautions: [acidCaution('salt-guards-the-ferment'), caution('follow-local-guidance')],
  });
}

/** Which printed bands answer a temperature, in degF. */
function fitOf(
  degF: number,
  bands: readonly FermentTimeRow[],
  cold: FermentTimeRow | undefined,
  warm: FermentTimeRow,
): { fit: FermentTime['fit']; rows: readonly FermentTimeRow[]; note: string } {
  const lowest = Math.min(...bands.map((row) => printed(row, 'degFLow')));
  const inside = bands.filter((row) => degF >= printed(row, 'degFLow') && degF <= printed(row, 'degFHigh'));
  if (inside.length > 0) return { fit: 'good', rows: inside, note: 'A printed band of temperature.' };
  if (degF < lowest) {
    return {
      fit: 'too cold',
      rows: [],
      note:
        cold === undefined ? 'Colder than any printed band.' : `It ${printed(cold, 'outcome')} at this temperature.`,
    };
  }
  if (degF > printed(warm, 'degF')) {
    return { fit: 'too warm', rows: [], note: `It ${printed(warm, 'outcome')} at this temperature.` };
  }
  const above = bands.filter((row) => printed(row, 'degFLow') > degF);
  return above.length > 0
    ? { fit: 'between', rows: bands, note: 'Between two printed bands: somewhere from the one to the other.' }
    : { fit: 'between', rows: [], note: 'Warmer than the printed bands; no time is printed.' };
}
