import type * as z from 'zod/mini';
import generalTable from '../../../data/drying/storage-general.json';
import monthsTable from '../../../data/drying/storage-months.json';
import { answer } from '../../common/answer';
import { findNamed } from '../../common/names';
import {
  area,
  fields,
  mass,
  name,
  number,
  optional,
  readInput,
  share,
  temperature,
  time,
  volume,
} from '../../quantity/fields';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf } from '../../sources/table';
import { saturationPascals } from '../../steam/saturation';
import { caution } from '../cautions';
import { type FoodRow, findFood, foodsIn } from '../guide/foods';
import { type ItemRow, itemOf, numberOf } from '../guide/settings';

type Ends = readonly [number, number];

interface MonthsRow extends FoodRow {
  readonly months_70degF: Ends;
  readonly months_60degF: Ends | null;
}

const months = asTable<MonthsRow>(monthsTable).rows;
const general = asTable<ItemRow>(generalTable).rows;
const item = (id: string): ItemRow => itemOf(general, id);

/** The moisture of freeze-dried fruit as read, for answers that are not told another. */
export function freezeDriedMoisture(): { moisture: number; basis: Basis[] } {
  const row = item('freezeDried_fruit_moisture');
  return { moisture: numberOf(row) / 100, basis: [basisOf(row, 'moisture of freeze-dried fruit')] };
}

const schema = fields({
  food: name('a fruit or a vegetable'),
  temperature: temperature({ min: { value: -40, unit: 'degC' }, max: { value: 60, unit: 'degC' } }),
});
export type DriedStorageInput = z.input<typeof schema>;

interface Common {
  readonly food: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** How long dried food keeps, or why no figure can be given. */
export type DriedStorage =
  | (Common & { readonly known: true; readonly months: { readonly low: number; readonly high: number } })
  | (Common & { readonly known: false; readonly reason: string; readonly instead: string });

const COOL = 60; // degF: the columns of the chart
const ROOM = 70;
const WARM = 80;

/**
 * How many months home-dried fruit or vegetables keep their quality, sealed, dark and dry.
 *
 * The chart has columns for 60 and 70 degF and general figures reach to 80 degF: a temperature between two columns
 * takes the warmer one. A food that is not in the chart takes the general figures: fruit 12 months at 60 degF and 6 at
 * 80 degF, vegetables half of that. Above 80 degF nothing is printed but that food soon deteriorates.
 *
 * @param input.food - the dried fruit or vegetable; `fruit` or `vegetable` for the general figures
 * @param input.temperature - of the store, -40 to 60 degC
 * @returns `months` as a low and a high figure, or `known: false` with the reason
 * @throws StillroomError UNKNOWN_NAME with the nearest names
 *
 * @example
 * ```ts
 * import { driedStorage } from 'stillroom/drying';
 *
 * const answer = driedStorage({ food: 'carrots', temperature: '70 degF' });
 * answer.known && answer.months; // => { low: 4, high: 6 }
 * ```
 */
export function driedStorage(input: DriedStorageInput): DriedStorage {
  const { food: asked, temperature: store } = readInput(schema, input);
  const food = findFood(asked);
  const row = findNamed(food.name, foodsIn(months)).length === 0 ? undefined : months.find((r) => r.food === food.name);
  const degF = valueIn(store, 'degF');
  // half a part in a billion: 60 degF asked for in degC is still 60 degF
  const upTo = (limit: number) => degF <= limit + 1e-6;
  const cautions = [caution('mould-means-discard'), caution('follow-local-guidance')];
  const share = food.kind === 'fruit' ? 1 : numberOf(item('vegetable_fraction_of_fruit'));
  const cool = numberOf(item('fruit_months_at_60degF')) * share;
  const warm = numberOf(item('fruit_months_at_80degF')) * share;
  const least = (item('recommended_range_months').value as unknown as Ends)[0] * share;
  const generalBasis = [
    'fruit_months_at_60degF',
    'fruit_months_at_80degF',
    'vegetable_fraction_of_fruit',
    'recommended_range_months',
  ].map((id) => basisOf(item(id), 'months that dried fruit keeps, and vegetables half of it'));
  const known = (low: number, high: number, basis: readonly Basis[]): DriedStorage => ({
    known: true,
    food: food.name,
    months: { low: Math.min(low, high), high },
    basis: joinBasis(basis),
    cautions,
  });
  const rowBasis = row === undefined ? [] : [basisOf(row, `months that dried ${row.food} keeps`)];
  if (!upTo(WARM)) {
    return answer({
      known: false,
      food: food.name,
      reason: 'nothing is printed for a store above 80 degF; dried food deteriorates within months there',
      instead: 'keep it at 60 degF or below, or freeze it',
      basis: [basisOf(item('at_80_to_90degF'), 'keeping above 80 degF')],
      cautions,
    });
  }
  if (upTo(COOL)) {
    if (row?.months_60degF) return answer(known(row.months_60degF[0], row.months_60degF[1], rowBasis));
    return answer(known(row?.months_70degF[0] ?? least, cool, [...rowBasis, ...generalBasis]));
  }
  if (upTo(ROOM) && row !== undefined) return answer(known(row.months_70degF[0], row.months_70degF[1], rowBasis));
  const [low, high] = row?.months_70degF ?? [least, warm];
  return answer(known(Math.min(low, warm), Math.min(high, warm), [...rowBasis, ...generalBasis]));
}

const residualSchema = fields({
  dried: mass(),
  moisture: share({ below: 1 }),
  bag: optional(
    fields({
      area: area(),
      transmission: number('grams of water that pass a square metre in a day: 0 to 1,000', { min: 0, max: 1000 }),
      time: time(),
    }),
  ),
  headspace: optional(
    fields({
      volume: volume(),
      humidity: share(),
      temperature: temperature({ min: { value: 0, unit: 'degC' }, max: { value: 60, unit: 'degC' } }),
    }),
  ),
});
export type MoistureAfterStorageInput = z.input<typeof residualSchema>;

export interface MoistureAfterStorage {
  /** Wet basis, when all the water has gone into the food. */
  readonly moisture: number;
  readonly gained: Quantity<'mass'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const GAS_CONSTANT = 8.314462618; // J/(mol K)
const WATER_MOLE = 18.015268; // g/mol

/**
 * The moisture of dried food after storage: what passes through the bag, and what the air sealed in with it held.
 *
 * gained = transmission x bag area x days + headspace volume x humidity x saturation pressure / (R T). It is an upper
 * bound: a bag lets less through as the food inside gets moister. Glass lets nothing through: leave out `bag`.
 *
 * @param input.dried - the dried food
 * @param input.moisture - its moisture when packed, wet basis, 0 to below 1 or percent
 * @param input.bag - `area` (both faces), `transmission` in g of water per m2 and day, and `time` in store
 * @param input.headspace - the air sealed in: `volume`, `humidity` 0 to 1, `temperature` 0 to 60 degC
 * @returns `moisture` wet basis, `gained` in g
 * @throws StillroomError OUT_OF_RANGE, WRONG_DIMENSION
 *
 * @example
 * ```ts
 * import { moistureAfterStorage } from 'stillroom/drying';
 *
 * moistureAfterStorage({
 *   dried: '500 g',
 *   moisture: '2 %',
 *   bag: { area: '0.12 m2', transmission: 0.5, time: '365 days' },
 * }).moisture; // ≈ 0.061
 * ```
 */
export function moistureAfterStorage(input: MoistureAfterStorageInput): MoistureAfterStorage {
  const { dried, moisture, bag, headspace } = readInput(residualSchema, input);
  const grams = valueIn(dried, 'g');
  const through = bag === undefined ? 0 : bag.transmission * valueIn(bag.area, 'm2') * valueIn(bag.time, 'day');
  let sealed = 0;
  if (headspace !== undefined) {
    const kelvin = valueIn(headspace.temperature, 'K');
    const pascals = saturationPascals(kelvin) * headspace.humidity;
    sealed = ((pascals * valueIn(headspace.volume, 'm3')) / (GAS_CONSTANT * kelvin)) * WATER_MOLE;
  }
  const gained = through + sealed;
  return answer({
    moisture: (moisture * grams + gained) / (grams + gained),
    gained: quantityIn(gained, 'g', 'g'),
    basis: [{ of: 'water gained = through the bag + in the sealed air', kind: 'equation' }],
    cautions: [caution('estimate')],
  });
}
