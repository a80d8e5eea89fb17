import type * as z from 'zod/mini';
import json from '../../data/steam/moist-air.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, number, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable } from '../sources/table';
import { elevation } from '../words/elevation';
import { pressure } from '../words/pressure';
import { relativeHumidity } from '../words/shares';
import { temperature } from '../words/temperature';
import { atmosphereBasis, standardPressure } from './atmosphere';
import { airConstant, type moistAirRow } from './tables';

const table = asTable<RowOf<typeof moistAirRow>>(json);
const source = table.rows[0]?.source as string;

// The range of the two saturation equations
const COLDEST = { value: -100, unit: 'degC' } as const;
const HOTTEST = { value: 200, unit: 'degC' } as const;

const schema = /* @__PURE__ */ fields({
  /** Of the air, -100 to 200 degC. */
  temperature: temperature({ min: COLDEST, max: HOTTEST }),
  /** Where the air is, -500 to 5,000 m; or `pressure`. */
  elevation: optional(elevation()),
  /** Absolute air pressure, 1 kPa to 5 MPa; or `elevation`. */
  pressure: optional(pressure({ min: { value: 1, unit: 'kPa' }, max: { value: 5, unit: 'MPa' } })),
  /** Share of the most vapor that the air holds, 0 to 1 or percent; or one of the four below. */
  relativeHumidity: optional(relativeHumidity()),
  /** Temperature of a wetted thermometer in the air, -100 to 200 degC. */
  wetBulb: optional(temperature({ min: COLDEST, max: HOTTEST })),
  /** Temperature at which its vapor condenses, -100 to 200 degC. */
  dewPoint: optional(temperature({ min: COLDEST, max: HOTTEST })),
  /** kg of water per kg of dry air, 0 to 10. */
  humidityRatio: optional(number('kg of water per kg of dry air: a number from 0 to 10', { min: 0, max: 10 })),
  /** Of the water vapor alone, 0 to 5 MPa. */
  vaporPressure: optional(pressure({ min: { value: 0, unit: 'Pa' }, max: { value: 5, unit: 'MPa' } })),
});

/** The air's temperature, where it is (`elevation` or `pressure`), and one measure of its moisture. */
export type MoistAirInput = z.input<typeof schema>;
export interface MoistAir {
  /** Share of the most vapor that the air holds, 0 to 1. */
  readonly relativeHumidity: number;
  /** kg of water per kg of dry air. */
  readonly humidityRatio: number;
  /** Of the water vapor alone, kPa. */
  readonly vaporPressure: Quantity<'pressure'>;
  /** Where vapor starts to condense, or to freeze out; left out for air drier than at -100 degC. */
  readonly dewPoint?: Quantity<'temperature'>;
  /** What wet food in this air cools to, while its surface is wet. */
  readonly wetBulb: Quantity<'temperature'>;
  /** kg of water that a kg of dry air takes up while it cools over wet food until it can take no more. */
  readonly dryingCapacity: number;
  /** Of the air and vapor for each kg of dry air. */
  readonly volumePerKg: Quantity<'volume'>;
  /** Above dry air and liquid water at 0 degC, for each kg of dry air. */
  readonly enthalpyPerKg: Quantity<'energy'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const MASS_RATIO = /* @__PURE__ */ airConstant('mass-ratio');
const GAS_CONSTANT = /* @__PURE__ */ airConstant('gas-constant'); // kJ/(kg K), of dry air
const AIR_HEAT = /* @__PURE__ */ airConstant('air-heat'); // kJ/(kg K)
const STEAM_HEAT = /* @__PURE__ */ airConstant('steam-heat'); // kJ/(kg K)
const VAPORIZATION = /* @__PURE__ */ airConstant('vaporization'); // kJ/kg at 0 degC
const TRIPLE_POINT = 273.16;

const POWERS: Readonly<Record<string, (kelvin: number) => number>> = {
  '1/T': (kelvin) => 1 / kelvin,
  '1': () => 1,
  T: (kelvin) => kelvin,
  'T^2': (kelvin) => kelvin ** 2,
  'T^3': (kelvin) => kelvin ** 3,
  'T^4': (kelvin) => kelvin ** 4,
  'ln(T)': Math.log,
};

/** Saturation pressure (Pa) over ice or water at a temperature (degC); equations 5 and 6. */
export function moistAirSaturation(degrees: number): number {
  const kelvin = degrees + 273.15;
  const frozen = kelvin < TRIPLE_POINT;
  let log = 0;
  for (const row of table.rows) {
    log += (frozen ? row.overIce : row.overLiquid) * (POWERS[row.term] as (kelvin: number) => number)(kelvin);
  }
  return Math.exp(log);
}

const ratioOf = (vapor: number, total: number): number =>
  vapor < total ? (MASS_RATIO * vapor) / (total - vapor) : Infinity;

/** Humidity ratio of air at a temperature whose wet bulb is known (degC); equation 33, over ice 35. */
function ratioFromWetBulb(degrees: number, wet: number, total: number): number {
  const saturated = ratioOf(moistAirSaturation(wet), total);
  if (saturated === Infinity) return Infinity;
  const cooling = AIR_HEAT * (degrees - wet);
  const [heat, slope, below] =
    wet >= 0
      ? [VAPORIZATION, airConstant('vaporization-slope'), airConstant('water-heat')]
      : [airConstant('sublimation'), airConstant('sublimation-slope'), airConstant('ice-heat')];
  return ((heat - slope * wet) * saturated - cooling) / (heat + STEAM_HEAT * degrees - below * wet);
}

/** Where a rising function of a temperature reaches a value, by halving, to the last digit of a double. */
function solve(rising: (degrees: number) => number, value: number, high: number): number {
  let [below, above] = [COLDEST.value as number, high];
  for (let i = 0; i < 60; i++) {
    const middle = (below + above) / 2;
    if (rising(middle) < value) below = middle;
    else above = middle;
  }
  return above;
}

const MEASURES = ['relativeHumidity', 'wetBulb', 'dewPoint', 'humidityRatio', 'vaporPressure'] as const;
type Given = z.output<typeof schema>;

/** Pressure (Pa) of the vapor, from whichever measure of moisture was given. */
function vaporPascals(given: Given, measure: (typeof MEASURES)[number], degrees: number, total: number): number {
  const fromRatio = (humidity: number): number => (total * humidity) / (MASS_RATIO + humidity);
  switch (measure) {
    case 'relativeHumidity':
      return (given.relativeHumidity as number) * moistAirSaturation(degrees);
    case 'wetBulb':
      return fromRatio(ratioFromWetBulb(degrees, valueIn(given.wetBulb as Quantity<'temperature'>, 'degC'), total));
    case 'dewPoint':
      return moistAirSaturation(valueIn(given.dewPoint as Quantity<'temperature'>, 'degC'));
    case 'humidityRatio':
      return fromRatio(given.humidityRatio as number);
    default:
      return valueIn(given.vaporPressure as Quantity<'pressure'>, 'Pa');
  }
}

/** What the relations give. */
const FIGURES = [
  'relativeHumidity',
  'humidityRatio',
  'vaporPressure',
  'dewPoint',
  'wetBulb',
  'dryingCapacity',
  'volumePerKg',
  'enthalpyPerKg',
] as const;

/** Rounding that a state exactly at saturation may bring. */
const SLACK = 1 + 1e-9;

/**
 * The state of moist air: in a drying room, a dryer, a cellar.
 *
 * From the temperature, the air pressure (or the elevation) and any one measure of moisture, all the others, and what
 * the air can still take up. Humidity ratio W = 0.621945 pv/(p - pv); the wet bulb by its energy balance; enthalpy
 * 1.006 t + W (2501 + 1.86 t) kJ; volume 0.287042 T (1 + 1.607858 W)/p m3.
 *
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1, ideal-gas relations.
 *
 * @returns temperatures in the unit of the air temperature, the vapor pressure in kPa
 * @throws StillroomError MISSING or CONTRADICTION where not exactly one measure or place is given, OUT_OF_RANGE where
 *   the air cannot hold that much
 *
 * @example
 * ```ts
 * import { moistAir } from 'stillroom/steam';
 *
 * const air = moistAir({ temperature: '60 degC', relativeHumidity: '10 %', elevation: '0 m' });
 * air.humidityRatio; // ≈ 0.0125
 * air.wetBulb.value; // ≈ 29.0
 * air.dryingCapacity; // ≈ 0.013
 * moistAir({ temperature: '20 degC', wetBulb: '25 degC', elevation: '0 m' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function moistAir(input: MoistAirInput): MoistAir {
  const given = readInput(schema, input);
  const [measure, second] = MEASURES.filter((name) => given[name] !== undefined);
  if (measure === undefined) fail('MISSING', 'relativeHumidity', undefined, `one of ${MEASURES.join(', ')}`);
  if (second !== undefined) fail('CONTRADICTION', second, input[second], `only one of ${MEASURES.join(', ')}`);
  if (given.pressure === undefined && given.elevation === undefined) {
    fail('MISSING', 'elevation', undefined, 'the elevation, such as "300 m", or the air pressure');
  }
  if (given.pressure !== undefined && given.elevation !== undefined) {
    fail('CONTRADICTION', 'pressure', input.pressure, 'an elevation or a pressure, not both');
  }
  const total =
    given.pressure === undefined
      ? standardPressure(valueIn(given.elevation as Quantity<'length'>, 'm'))
      : valueIn(given.pressure, 'Pa');
  const degrees = valueIn(given.temperature, 'degC');
  const most = moistAirSaturation(degrees);
  const vapor = vaporPascals(given, measure, degrees, total);
  if (!(vapor >= 0 && vapor <= most * SLACK && vapor < total)) {
    fail(
      'OUT_OF_RANGE',
      measure,
      input[measure],
      'no more moisture than air at that temperature and pressure can hold',
    );
  }
  const humidity = ratioOf(vapor, total);
  const wet = solve((at) => ratioFromWetBulb(degrees, at, total), humidity, degrees);
  const dewy = vapor >= moistAirSaturation(COLDEST.value);
  const temperatureOf = (value: number) => quantityIn(value, 'degC', given.temperature.unit);
  return answer({
    relativeHumidity: Math.min(1, vapor / most),
    humidityRatio: humidity,
    vaporPressure: quantityIn(vapor, 'Pa', 'kPa'),
    ...(dewy ? { dewPoint: temperatureOf(solve(moistAirSaturation, vapor, degrees)) } : {}),
    wetBulb: temperatureOf(wet),
    dryingCapacity: Math.max(0, ratioOf(moistAirSaturation(wet), total) - humidity),
    volumePerKg: {
      value: (GAS_CONSTANT * (degrees + 273.15) * (1 + humidity / MASS_RATIO)) / (total / 1000),
      unit: 'm3',
    },
    enthalpyPerKg: { value: AIR_HEAT * degrees + humidity * (VAPORIZATION + STEAM_HEAT * degrees), unit: 'kJ' },
    basis: [
      ...(given.pressure === undefined ? [atmosphereBasis('humidityRatio')] : []),
      measured(measure),
      ...FIGURES.filter((of) => of !== measure && (of !== 'dewPoint' || dewy)).map(
        (of): Basis => ({ of, kind: 'equation', source, locator: 'chapter 1, ideal-gas relations' }),
      ),
    ],
    cautions: [],
  });
}
