import type * as z from 'zod/mini';
import leatherTable from '../../../data/drying/leather.json';
import hoursTable from '../../../data/drying/leather-hours.json';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { area, count, density, fields, length, mass, optional, readInput, share, volume } from '../../quantity/fields';
import { mapRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { refuseWetter, shareLeft } from '../../solution/massBalance';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { caution } from '../cautions';
import { MOISTURE_BASES } from '../moisture/moistureBasis';
import { moistureRange } from '../moisture/moistureRange';
import { targetMoistureOf } from './dryingGuide';
import { type ItemRow, itemOf, numberOf } from './settings';
import { lotsFor, massUnitFor } from './trayLoad';

const rows = asTable<ItemRow>(leatherTable).rows;
const item = (id: string): ItemRow => itemOf(rows, id);

interface HoursRow extends Sourced {
  readonly where: 'dryer' | 'oven';
  readonly thickness_in: number;
  readonly mean_in?: number;
  readonly food?: string;
  readonly hours: readonly [least: number | null, most: number];
}
/** From the thinnest sheet to the thickest. */
const hourRows = [...asTable<HoursRow>(hoursTable).rows].sort((one, other) => one.thickness_in - other.thickness_in);

/** The row of the thinnest printed sheet that is no thinner than this one; none above the thickest. */
const dryerRow = (inches: number): HoursRow | undefined =>
  hourRows.find(
    ({ where, thickness_in: printed, mean_in: mean = printed }) => where === 'dryer' && inches <= mean + 1e-3,
  );

/** Hours in an oven: from the least that is printed to the most, up to the thickest sheet printed. */
function ovenHours(inches: number): { low: number; high: number; rows: readonly HoursRow[] } | undefined {
  const oven = hourRows.filter(({ where }) => where === 'oven');
  if (inches > Math.max(...oven.map(({ thickness_in: printed }) => printed)) + 1e-3) return undefined;
  return {
    low: Math.min(...oven.flatMap(({ hours: [least] }) => (least === null ? [] : [least]))),
    high: Math.max(...oven.map(({ hours: [, most] }) => most)),
    rows: oven,
  };
}

const SHEET_CUPS = item('fruit_cups_per_13x15in_sheet');
const SHEET_AREA = 13 * 15; // in2, the sheet the row is for
/** Ripe fruit puree of 10 to 15 Brix weighs a little more than water. */
const PUREE_DENSITY = 1.05; // g/mL

const schema = fields({
  area: area(),
  puree: optional(volume()),
  pureeWeight: optional(mass()),
  sheets: optional(count('sheets', 1, 1000)),
  thickness: optional(length({ max: { value: 2, unit: 'cm' } })),
  density: optional(density({ max: { value: 2, unit: 'g/mL' } })),
  moisture: optional(moistureRange()),
  targetMoisture: optional(share({ below: 1 })),
});
export type LeatherInput = z.input<typeof schema>;

export interface Leather {
  /** Puree on one sheet. */
  readonly perSheet: Quantity<'volume'>;
  readonly weightPerSheet: Quantity<'mass'>;
  readonly thickness: Quantity<'length'>;
  /** Sheets to spread; the last may be part filled. */
  readonly sheets: number;
  readonly puree: Quantity<'volume'>;
  readonly pureeWeight: Quantity<'mass'>;
  /** Weight of a full sheet when it is done, without the tray; given the puree's moisture. */
  readonly endWeightPerSheet?: Range<Quantity<'mass'>>;
  /** All the leather there is at the end. */
  readonly leather?: Range<Quantity<'mass'>>;
  readonly temperature: Quantity<'temperature'>;
  /** In a dryer, for a sheet of this thickness; none above the thickest sheet that is printed, 1/4 in. */
  readonly hours?: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  /** The sheet that `hours` are printed for, and the fruit where it is one recipe's. */
  readonly hoursFor?: { readonly thickness: Quantity<'length'>; readonly food?: string };
  readonly ovenHours?: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  /** Against browning, for light fruit; or `ascorbicAcid` instead. */
  readonly lemonJuice: Quantity<'volume'>;
  readonly ascorbicAcid: Quantity<'mass'>;
  readonly drynessTest: string;
  readonly keepsMonths: { readonly room: number; readonly freezer: number };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const hoursOf = (low: number, high: number) =>
  ({ low: { value: low, unit: 'h' }, high: { value: high, unit: 'h' } }) as const;

const dryerHours = ({ hours: [least, most], thickness_in: printed, food }: HoursRow) => ({
  hours: hoursOf(least ?? most, most),
  hoursFor: { thickness: { value: printed, unit: 'in' } as const, ...(food === undefined ? {} : { food }) },
});

/**
 * Fruit leather: how much puree a sheet takes, how many sheets a batch fills, what a sheet weighs when done, and the
 * printed temperature, hours, additions, dryness test and keeping time.
 *
 * puree on a sheet = area x thickness; without a thickness the printed 2 cups on a 13 x 15 in sheet are scaled (about
 * 1/8 in with thicker edges). End weight = puree (1 - moisture) / (1 - target). Hours belong to a thickness: 6 to 8 h
 * for that sheet, 10 h for one of 1/4 in (printed for mango); none are printed for thicker sheets, and none are given.
 *
 * @param input.area - of one sheet
 * @param input.puree - volume of puree at hand, or
 * @param input.pureeWeight - its weight, or
 * @param input.sheets - how many sheets to fill, 1 to 1,000; one if none of the three is given
 * @param input.thickness - of the wet puree, up to 2 cm
 * @param input.density - of the puree; 1.05 g/mL if not given
 * @param input.moisture - of the puree: one ratio or `{ low, likely, high }`, for the end weight
 * @param input.targetMoisture - of the leather, wet basis; 20 % if not given
 * @returns volumes in the unit of `puree` (else cups), weights in the unit of `pureeWeight` (else by the sheet's)
 * @throws StillroomError CONTRADICTION for two of `puree`, `pureeWeight`, `sheets`, or a target wetter than the puree
 *
 * @example
 * ```ts
 * import { leather } from 'stillroom/drying';
 *
 * const answer = leather({ area: '195 in2', puree: '5 cups', moisture: '86 %' });
 * answer.perSheet; // => { value: 2, unit: 'cup' }
 * answer.sheets; // => 3
 * answer.hours?.high; // => { value: 8, unit: 'h' }
 * leather({ area: '195 in2', thickness: '1/2 in' }).hours; // => undefined
 * ```
 */
export function leather(input: LeatherInput): Leather {
  const given = readInput(schema, input);
  const { puree, pureeWeight, sheets, moisture } = given;
  const amounts = [puree, pureeWeight, sheets].filter((amount) => amount !== undefined).length;
  if (amounts > 1) fail('CONTRADICTION', 'puree', input.puree, 'only one of puree, pureeWeight and sheets');
  const perMillilitre = given.density === undefined ? PUREE_DENSITY : valueIn(given.density, 'g/mL');
  const sheetArea = valueIn(given.area, 'cm2');
  const printedDepth = // cm
    valueIn({ value: numberOf(SHEET_CUPS), unit: 'cup' }, 'mL') / valueIn({ value: SHEET_AREA, unit: 'in2' }, 'cm2');
  const depth = given.thickness === undefined ? printedDepth : valueIn(given.thickness, 'cm');
  const sheetMillilitres = sheetArea * depth;
  const total =
    puree !== undefined
      ? valueIn(puree, 'mL')
      : pureeWeight !== undefined
        ? valueIn(pureeWeight, 'g') / perMillilitre
        : sheetMillilitres * (sheets ?? 1);
  const volumeUnit = puree?.unit ?? 'cup';
  const massUnit = pureeWeight?.unit ?? massUnitFor(given.area.unit);
  const lengthUnit = given.thickness?.unit ?? (massUnit === 'lb' ? 'in' : 'mm');
  const weigh = (millilitres: number): Quantity<'mass'> => quantityIn(millilitres * perMillilitre, 'g', massUnit);
  const target = targetMoistureOf('fruit');
  const targetMoisture = given.targetMoisture ?? target.targetMoisture;
  if (moisture !== undefined) refuseWetter(moisture.low, targetMoisture, input.targetMoisture);
  const share = moisture && turnRange(mapRange(moisture, (start) => shareLeft(start, targetMoisture)));
  const inches = quantityIn(depth, 'cm', 'in').value;
  const dryer = dryerRow(inches);
  const oven = ovenHours(inches);
  const cups = quantityIn(total, 'mL', 'cup').value;
  const acid = item('ascorbicAcid_per_2cups_lightFruit').value as { mg: number };
  const figure = (id: string, what: string): Basis => basisOf(item(id), what);
  return answer({
    perSheet: quantityIn(sheetMillilitres, 'mL', volumeUnit),
    weightPerSheet: weigh(sheetMillilitres),
    thickness: quantityIn(depth, 'cm', lengthUnit),
    sheets: lotsFor(total, sheetMillilitres),
    puree: quantityIn(total, 'mL', volumeUnit),
    pureeWeight: weigh(total),
    ...(share === undefined
      ? {}
      : {
          endWeightPerSheet: mapRange(share, (left) => weigh(sheetMillilitres * left)),
          leather: mapRange(share, (left) => weigh(total * left)),
        }),
    temperature: { value: numberOf(item('temperature')), unit: 'degF' },
    ...(dryer === undefined ? {} : dryerHours(dryer)),
    ...(oven === undefined ? {} : { ovenHours: hoursOf(oven.low, oven.high) }),
    lemonJuice: quantityIn((numberOf(item('lemonJuice_tsp_per_2cups_lightFruit')) * cups) / 2, 'tsp', 'tsp'),
    ascorbicAcid: { value: (acid.mg * cups) / 2, unit: 'mg' },
    drynessTest: item('drynessTest').value as string,
    keepsMonths: { room: numberOf(item('storage_roomTemperature')), freezer: numberOf(item('storage_freezer')) },
    basis: joinBasis(
      given.thickness === undefined ? [basisOf(SHEET_CUPS, 'puree on a sheet of 13 by 15 in')] : [],
      given.density === undefined ? [{ of: 'puree of 1.05 g/mL', kind: 'common-practice' }] : [],
      moisture === undefined ? [] : [MOISTURE_BASES],
      moisture !== undefined && given.targetMoisture === undefined ? target.basis : [],
      [
        figure('temperature', 'temperature of the dryer'),
        ...(dryer === undefined ? [] : [basisOf(dryer, 'hours in a dryer, by thickness')]),
        ...(oven?.rows ?? []).map((row) => basisOf(row, 'hours in an oven')),
        figure('lemonJuice_tsp_per_2cups_lightFruit', 'lemon juice for light fruit'),
        figure('ascorbicAcid_per_2cups_lightFruit', 'ascorbic acid for light fruit'),
        figure('drynessTest', 'dryness test'),
        figure('storage_roomTemperature', 'keeping'),
      ],
    ),
    cautions: [
      ...(dryer === undefined ? [caution('leather-too-thick')] : []),
      ...(dryer?.food === undefined ? [] : [caution('leather-hours-of-one-fruit')]),
      caution('dryness-test-decides'),
      caution('mould-means-discard'),
      // the usual end moisture of fruit is recalled
      ...(moisture !== undefined && given.targetMoisture === undefined ? [caution('recalled')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
