import type * as z from 'zod/mini';
import pointsJson from '../../data/water-activity/isotherm-points.json';
import monolayersJson from '../../data/water-activity/monolayers.json';
import sugarsJson from '../../data/water-activity/sugar-moisture.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food, form } from '../foods/fields';
import { formName } from '../foods/tables';
import { fields, optional, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { asTable } from '../sources/table';
import { activityCaution } from './cautions';
import { type FoodRow, rowBasis, rowsFor } from './foodRows';
import type { IsothermModel } from './isothermModels';
import { activitiesOf, type IsothermRow, isotherms, temperaturesOf } from './isothermTables';
import type { Limits } from './isothermTypes';
import type { TableRow } from './schemas';
import { type ShiftWaterActivity, type ShiftWaterActivityInput, shiftWaterActivity } from './shiftWaterActivity';
import { type TypicalFigures, typicalFigures } from './typicalFigures';

const points = asTable<TableRow<'isotherm-points'>>(pointsJson).rows;
const monolayers = asTable<TableRow<'monolayers'>>(monolayersJson).rows;
const sugars = asTable<TableRow<'sugar-moisture'>>(sugarsJson).rows;

const schema = fields({
  /** The food, or a pure sugar, salt or starch, by any name: `honey`, `raisins`, `dried apples`. */
  food: food(),
  /** Its form, where the name does not say it: `dried`, `leather`, `powder`, `flakes`. */
  form: optional(form()),
});
export type WaterActivityOfInput = z.input<typeof schema>;

/** A lowest and a highest temperature. */
export interface TemperatureSpan {
  /** The lowest. */
  readonly low: Quantity<'temperature'>;
  /** The highest. */
  readonly high: Quantity<'temperature'>;
}
/** One published set of constants, for `isothermMoisture` and `isothermActivity`. */
export interface SorptionSet {
  /** Its id, to ask for it by. */
  readonly set: string;
  /** Name of the equation. */
  readonly model: IsothermModel;
  /** How the food was prepared, or whose data. */
  readonly state: string;
  /** Lowest and highest temperature that it may be asked at. */
  readonly temperature: TemperatureSpan;
  /** The water activities it may be asked about. */
  readonly waterActivityLimits: Limits;
}
/** One published monolayer moisture. */
export interface Monolayer {
  /** Name of the equation it was found by. */
  readonly model: 'BET' | 'GAB';
  /** How the food was prepared, or whose data. */
  readonly state: string;
  /** The form of the food, where the tables tell several apart. */
  readonly form?: string;
  /** Lowest and highest temperature it was found at, where printed. */
  readonly temperature?: TemperatureSpan;
  /** The moisture, dry basis: g water per g dry matter. */
  readonly moisture: Limits;
}
/** One printed point. */
export interface SorptionPoint {
  /** Water activity, 0 to 1. */
  readonly waterActivity: number;
  /** Moisture, dry basis: g water per g dry matter. */
  readonly moisture: number;
}
/** Printed moistures of a food in one state; nothing is read between them. */
export interface SorptionSeries {
  /** The state: crystals or amorphous, adsorption or desorption, or the temperature. */
  readonly state: string;
  /** Water activity, with the moisture on the dry basis: g water per g dry matter. */
  readonly points: readonly SorptionPoint[];
}
export interface WaterActivityOf {
  /** Tells the answer from one that these tables have no figure for. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** Its form, where one was asked for. */
  readonly form?: string;
  /** What it is usually found at, where printed: a description, not a promise for your batch. */
  readonly typical?: TypicalFigures;
  /** Sets of constants of isotherm equations. */
  readonly isotherms: readonly SorptionSet[];
  /** Lowest and highest monolayer moisture, dry basis, where published: about where dried food keeps longest. */
  readonly monolayer?: Limits;
  /** Each published monolayer moisture. */
  readonly monolayers: readonly Monolayer[];
  /** Printed moistures at single water activities. */
  readonly series: readonly SorptionSeries[];
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const span = (pair: readonly [number, number]): Limits => ({ low: pair[0], high: pair[1] });

const degrees = ({ low, high }: Limits): TemperatureSpan => ({
  low: { value: low, unit: 'degC' },
  high: { value: high, unit: 'degC' },
});

const shownSet = (row: IsothermRow): SorptionSet => ({
  set: row.id,
  model: row.model,
  state: row.state,
  temperature: degrees(temperaturesOf(row)),
  waterActivityLimits: activitiesOf(row),
});
const shownMonolayer = (row: TableRow<'monolayers'>): Monolayer => ({
  model: row.model,
  state: row.state,
  ...(row.form === undefined ? {} : { form: formName(row.form) }),
  ...(row.temperature_degC === null ? {} : { temperature: degrees(span(row.temperature_degC)) }),
  moisture: span(row.M0_g_per_g_dry),
});

function nothingOf(asked: FoundFood, wanted: string | undefined): NotKnown {
  const what = wanted === undefined ? asked.name : `${asked.name}, ${formName(wanted)}`;
  return notKnown({
    code: 'no-water-activity',
    text: `These tables have nothing on the water activity of ${what}.`,
    instead: 'Measure it, or work it out from what is in it: fruitWaterActivity, solutionWaterActivity.',
    basis: [derived('known', 'the tables of water activity and sorption')],
    cautions: [activityCaution('measure-before-shelf')],
  });
}

/**
 * All that these tables hold on the water of a food: the water activity it is usually found at, the isotherms that can be
 * asked for, the monolayer moisture, and printed moistures at single water activities.
 *
 * The monolayer moisture is about where dried food keeps its quality longest: drier than this, fats go stale sooner;
 * wetter, browning and then growth set in. Nothing is read between printed points, since a crystal takes up almost no
 * water until it suddenly melts into its own. Most fruits have no complete isotherm here, and none is invented.
 *
 * With a measured `waterActivity`, its `startTemperature` and a `targetTemperature`: what it is in the sealed bag at the
 * other temperature. It rises as the bag warms: a batch measured in a cool kitchen has a higher one in a warm pantry.
 * Clausius-Clapeyron with the net isosteric heat q, `ln(aw2/aw1) = -(q/R)(1/T2 - 1/T1)`, moisture unchanged. These
 * tables hold no heat of sorption of a food: give one for the moisture it has, since it falls as the food takes up water.
 * Without one, measure the water activity at the warmest temperature that the food will be kept at.
 *
 * @param input - `food`: a food, or a pure sugar, salt or starch; `form`: where the name does not say it; or
 * `waterActivity`, `startTemperature` and `targetTemperature`, both -40 to 100 degC, with `heatOfSorption`, kJ/mol over
 * that of pure water
 * @returns what is published, or `{ known: false }` where these tables have none of it; or `waterActivity` at the other
 * temperature
 * @throws StillroomError UNKNOWN_NAME for a text that is no food; CONTRADICTION for a form other than the one that the
 * food names; with `to` also MISSING, and OUT_OF_RANGE where the result would not be below 1
 *
 * @example
 * ```ts
 * import { waterActivityOf } from 'stillroom/water-activity';
 *
 * const apple = waterActivityOf({ food: 'dried apples' });
 * apple.known && apple.typical?.waterActivity; // => { low: 0.7, high: 0.75 }
 * apple.known && apple.typical?.moisture; // => { low: 0.2, high: 0.24 }
 * const raisins = waterActivityOf({ food: 'raisins' });
 * raisins.known && raisins.monolayer; // => { low: 0.0789, high: 0.082 }
 * const kiwi = waterActivityOf({ food: 'kiwifruit' });
 * kiwi.known && kiwi.isotherms[0].set; // => 'kiwifruit-gab-30'
 * const starch = waterActivityOf({ food: 'potato starch' });
 * starch.known && starch.series[0].points; // => [{ waterActivity: 0.3, moisture: 0.1 }]
 * const bag = { waterActivity: 0.5, startTemperature: '20 degC', targetTemperature: '30 degC', heatOfSorption: 5 };
 * waterActivityOf(bag).waterActivity; // ≈ 0.535
 * ```
 */
export function waterActivityOf(input: ShiftWaterActivityInput): ShiftWaterActivity;
export function waterActivityOf(input: WaterActivityOfInput): WaterActivityOf | NotKnown;
export function waterActivityOf(
  input: WaterActivityOfInput | ShiftWaterActivityInput,
): WaterActivityOf | ShiftWaterActivity | NotKnown {
  return typeof input === 'object' && input !== null && 'waterActivity' in input
    ? shiftWaterActivity(input)
    : published(input);
}

function published(input: WaterActivityOfInput): WaterActivityOf | NotKnown {
  const { food: asked, form: given } = readInput(schema, input);
  if (given !== undefined && asked.form !== undefined && given !== asked.form) {
    fail('CONTRADICTION', 'form', formName(given), `the form that the food names: ${formName(asked.form)}`);
  }
  const wanted = given ?? asked.form;
  const sets = rowsFor(isotherms, asked, wanted);
  const layers = rowsFor(monolayers, asked, wanted);
  const single = rowsFor(points, asked, wanted);
  const several = rowsFor(sugars, asked, wanted);
  const usual = typicalFigures(asked, wanted);
  const rows: readonly FoodRow[] = [...sets, ...layers, ...single, ...several];
  if (rows.length === 0 && usual === undefined) return answer(nothingOf(asked, wanted));
  const ends = layers.flatMap(({ M0_g_per_g_dry }) => M0_g_per_g_dry);
  const recalled = usual?.recalled === true || rows.some(({ obtained }) => obtained === 'memory');
  return answer({
    known: true,
    food: asked.name,
    ...(wanted === undefined ? {} : { form: formName(wanted) }),
    ...(usual === undefined ? {} : { typical: usual.typical }),
    isotherms: sets.map(shownSet),
    ...(ends.length === 0 ? {} : { monolayer: { low: Math.min(...ends), high: Math.max(...ends) } }),
    monolayers: layers.map(shownMonolayer),
    series: [
      ...single.map((row) => ({
        state: `${row.temperature_degC} degC`,
        points: [{ waterActivity: row.aw, moisture: row.X_g_per_g_dry }],
      })),
      ...several.map((row) => ({
        state: row.state,
        points: row.points.map(([waterActivity, per100]) => ({ waterActivity, moisture: per100 / 100 })),
      })),
    ],
    basis: [
      ...(usual?.basis ?? []),
      ...sets.map((row) => rowBasis(row, asked, 'isotherms', 'isotherm constants')),
      ...layers.map((row) => rowBasis(row, asked, 'monolayers', 'monolayer moisture')),
      ...[...single, ...several].map((row) => rowBasis(row, asked, 'series', 'printed moistures')),
    ],
    cautions: [
      ...(rows.length === 0 ? [] : [activityCaution('isotherm-state')]),
      ...(usual === undefined ? [] : [caution('estimate')]),
      ...[...sets, ...several].flatMap((row) => (row.caution === undefined ? [] : [activityCaution(row.caution)])),
      ...(recalled ? [caution('recalled')] : []),
    ],
  });
}
