import type { ExactText } from '../common/exact';
import type { Scale } from './doubles';

/**
 * Every unit of the library: its dimension, the system it belongs to, its exact size in the anchor unit of
 * its dimension, and the spellings people use. Factors are texts or fractions, so that they are kept exactly.
 *
 * Sources: exact definitions of NIST Special Publication 811 appendix B and NIST Handbook 44 appendix C
 * (231 in3, 2150.42 in3, 0.45359237 kg, 25.4 mm), checked row by row in tests against the reference table.
 * A US unit carries the plain name, as in US print; an imperial unit says so, and no spelling means both.
 */
export interface UnitDefinition {
  /** Size in the anchor unit. */
  readonly size: ExactText;
  /** What is subtracted after scaling to reach the anchor's zero (temperatures only). */
  readonly shift?: ExactText;
  readonly plural?: string;
  /** Of the countries that write a decimal point: `3,400 ft` has one reading. Metric units are written in both ways. */
  readonly pointOnly?: true;
  readonly spellings: readonly string[];
}

const GALLON = '3785.411784'; // mL: 231 in3 of (2.54 cm)^3
const BUSHEL = '35239.07016688'; // mL: 2150.42 in3
const IMPERIAL_GALLON = '4546.09'; // mL
const POUND = '453.59237'; // g

export const UNITS = {
  mass: {
    g: { size: '1', spellings: ['gram', 'grams', 'gm', 'gms'] },
    mg: { size: '0.001', spellings: ['milligram', 'milligrams'] },
    kg: { size: '1000', spellings: ['kilogram', 'kilograms', 'kilo', 'kilos', 'kgs'] },
    tonne: { size: '1000000', plural: 'tonnes', spellings: ['metric ton', 'metric tons'] },
    lb: { pointOnly: true, size: POUND, spellings: ['lbs', 'pound', 'pounds'] },
    oz: { pointOnly: true, size: [POUND, '16'], spellings: ['ounce', 'ounces'] },
    grain: { pointOnly: true, size: [POUND, '7000'], plural: 'grains', spellings: ['gr'] },
    cwt: { pointOnly: true, size: '45359.237', spellings: ['hundredweight', 'US hundredweight'] },
    'short ton': { pointOnly: true, size: '907184.74', plural: 'short tons', spellings: ['US ton', 'US tons'] },
  },
  volume: {
    mL: { size: '1', spellings: ['milliliter', 'milliliters', 'millilitre', 'millilitres', 'cc', 'cm3', 'cm³'] },
    dL: { size: '100', spellings: ['deciliter', 'deciliters', 'decilitre', 'decilitres'] },
    L: { size: '1000', spellings: ['liter', 'liters', 'litre', 'litres'] },
    m3: { size: '1000000', spellings: ['m³', 'cubic meter', 'cubic meters', 'cubic metre', 'cubic metres'] },
    tsp: { pointOnly: true, size: [GALLON, '768'], spellings: ['teaspoon', 'teaspoons', 'tsps'] },
    tbsp: { pointOnly: true, size: [GALLON, '256'], spellings: ['tablespoon', 'tablespoons', 'tbs', 'tbsps', 'tbl'] },
    'fl oz': {
      pointOnly: true,
      size: [GALLON, '128'],
      spellings: ['floz', 'fl. oz.', 'fluid ounce', 'fluid ounces', 'US fl oz', 'US fluid ounce', 'US fluid ounces'],
    },
    gill: { pointOnly: true, size: [GALLON, '32'], plural: 'gills', spellings: ['US gill', 'US gills'] },
    cup: { pointOnly: true, size: [GALLON, '16'], plural: 'cups', spellings: ['US cup', 'US cups'] },
    pint: {
      pointOnly: true,
      size: [GALLON, '8'],
      plural: 'pints',
      spellings: ['pt', 'pts', 'US pint', 'US pints', 'liquid pint'],
    },
    quart: {
      pointOnly: true,
      size: [GALLON, '4'],
      plural: 'quarts',
      spellings: ['qt', 'qts', 'US quart', 'US quarts', 'liquid quart'],
    },
    gallon: { pointOnly: true, size: GALLON, plural: 'gallons', spellings: ['gal', 'gals', 'US gallon', 'US gallons'] },
    'fluid dram': { pointOnly: true, size: [GALLON, '1024'], plural: 'fluid drams', spellings: ['US fluid dram'] },
    minim: { pointOnly: true, size: [GALLON, '61440'], plural: 'minims', spellings: ['US minim'] },
    'dry pint': {
      pointOnly: true,
      size: [BUSHEL, '64'],
      plural: 'dry pints',
      spellings: ['US dry pint', 'US dry pints'],
    },
    'dry quart': {
      pointOnly: true,
      size: [BUSHEL, '32'],
      plural: 'dry quarts',
      spellings: ['dry qt', 'US dry quart', 'US dry quarts'],
    },
    'dry gallon': { pointOnly: true, size: [BUSHEL, '8'], plural: 'dry gallons', spellings: ['US dry gallon'] },
    peck: { pointOnly: true, size: [BUSHEL, '4'], plural: 'pecks', spellings: ['pk', 'US peck'] },
    bushel: { pointOnly: true, size: BUSHEL, plural: 'bushels', spellings: ['bu', 'US bushel', 'US bushels'] },
    'heaped bushel': {
      pointOnly: true,
      size: '45026.98155876',
      plural: 'heaped bushels',
      spellings: ['US heaped bushel'],
    },
    'dry barrel': { pointOnly: true, size: '115627.123584', plural: 'dry barrels', spellings: ['US dry barrel'] },
    'cranberry barrel': { pointOnly: true, size: '95471.034864', plural: 'cranberry barrels', spellings: [] },
    in3: { pointOnly: true, size: '16.387064', spellings: ['in³', 'cu in', 'cubic inch', 'cubic inches'] },
    ft3: { pointOnly: true, size: '28316.846592', spellings: ['ft³', 'cu ft', 'cubic foot', 'cubic feet'] },
    'imperial fl oz': {
      pointOnly: true,
      size: [IMPERIAL_GALLON, '160'],
      spellings: ['imperial fluid ounce', 'imperial fluid ounces', 'imp fl oz', 'UK fl oz'],
    },
    'imperial gill': {
      pointOnly: true,
      size: [IMPERIAL_GALLON, '32'],
      plural: 'imperial gills',
      spellings: ['imp gill', 'UK gill'],
    },
    'imperial cup': { pointOnly: true, size: [IMPERIAL_GALLON, '16'], plural: 'imperial cups', spellings: ['imp cup'] },
    'imperial pint': {
      pointOnly: true,
      size: [IMPERIAL_GALLON, '8'],
      plural: 'imperial pints',
      spellings: ['imp pint', 'imp pt', 'UK pint', 'UK pints'],
    },
    'imperial quart': {
      pointOnly: true,
      size: [IMPERIAL_GALLON, '4'],
      plural: 'imperial quarts',
      spellings: ['imp quart', 'imp qt', 'UK quart'],
    },
    'imperial gallon': {
      pointOnly: true,
      size: IMPERIAL_GALLON,
      plural: 'imperial gallons',
      spellings: ['imp gallon', 'imp gal', 'UK gallon', 'UK gallons'],
    },
    'imperial bushel': {
      pointOnly: true,
      size: '36368.72',
      plural: 'imperial bushels',
      spellings: ['imp bushel', 'UK bushel'],
    },
    'metric cup': { pointOnly: true, size: '250', plural: 'metric cups', spellings: [] },
    'metric tbsp': { pointOnly: true, size: '15', spellings: ['metric tablespoon', 'metric tablespoons'] },
    'metric tsp': { pointOnly: true, size: '5', spellings: ['metric teaspoon', 'metric teaspoons'] },
    'Australian tbsp': { pointOnly: true, size: '20', spellings: ['Australian tablespoon', 'Australian tablespoons'] },
    'labeling cup': { pointOnly: true, size: '240', plural: 'labeling cups', spellings: ['US nutrition-labeling cup'] },
    'labeling tbsp': { pointOnly: true, size: '15', spellings: ['US nutrition-labeling tablespoon'] },
    'labeling tsp': { pointOnly: true, size: '5', spellings: ['US nutrition-labeling teaspoon'] },
    'labeling fl oz': { pointOnly: true, size: '30', spellings: ['US nutrition-labeling fluid ounce'] },
  },
  length: {
    m: { size: '1', spellings: ['meter', 'meters', 'metre', 'metres'] },
    mm: { size: '0.001', spellings: ['millimeter', 'millimeters', 'millimetre', 'millimetres'] },
    cm: { size: '0.01', spellings: ['centimeter', 'centimeters', 'centimetre', 'centimetres'] },
    km: { size: '1000', spellings: ['kilometer', 'kilometers', 'kilometre', 'kilometres'] },
    in: { pointOnly: true, size: '0.0254', spellings: ['inch', 'inches', '"', '″'] },
    ft: { pointOnly: true, size: '0.3048', spellings: ['foot', 'feet', "'", '′'] },
  },
  area: {
    m2: { size: '1', spellings: ['m²', 'square meter', 'square meters', 'square metre', 'square metres'] },
    cm2: { size: '0.0001', spellings: ['cm²', 'square centimeter', 'square centimeters'] },
    in2: { pointOnly: true, size: '0.00064516', spellings: ['in²', 'sq in', 'square inch', 'square inches'] },
    ft2: { pointOnly: true, size: '0.09290304', spellings: ['ft²', 'sq ft', 'square foot', 'square feet'] },
  },
  temperature: {
    K: { size: '1', spellings: ['kelvin', 'kelvins'] },
    degC: { size: '1', shift: '-273.15', spellings: ['°C', 'ºC', 'deg C', 'celsius', 'degrees C', 'degrees celsius'] },
    degF: {
      pointOnly: true,
      size: ['5', '9'],
      // (F + 459.67) 5/9 = K, so the shift in kelvin is 459.67 x 5/9
      shift: ['-2298.35', '9'],
      spellings: ['°F', 'ºF', 'deg F', 'fahrenheit', 'degrees F', 'degrees fahrenheit', 'F'],
    },
  },
  temperatureDifference: {
    'delta degC': { size: '1', spellings: ['degC', '°C', 'ºC', 'deg C', 'K', 'kelvin', 'celsius'] },
    'delta degF': { pointOnly: true, size: ['5', '9'], spellings: ['degF', '°F', 'ºF', 'deg F', 'fahrenheit', 'F'] },
  },
  pressure: {
    Pa: { size: '1', spellings: ['pascal', 'pascals'] },
    hPa: { size: '100', spellings: ['hectopascal', 'hectopascals', 'mbar', 'millibar', 'millibars'] },
    kPa: { size: '1000', spellings: ['kilopascal', 'kilopascals'] },
    MPa: { size: '1000000', spellings: ['megapascal', 'megapascals'] },
    bar: { size: '100000', spellings: ['bars'] },
    // lb x 9.80665 m/s2 / (25.4 mm)2
    psi: {
      pointOnly: true,
      size: ['4.4482216152605', '0.00064516'],
      spellings: ['lb/in2', 'psig', 'psia', 'pounds per square inch'],
    },
    // 13595.1 kg/m3 x 9.80665 m/s2 x 25.4 mm (conventional mercury)
    inHg: { pointOnly: true, size: '3386.388640341', spellings: ['in Hg', 'inches of mercury'] },
    mmHg: { size: '133.322387415', spellings: ['mm Hg', 'millimeters of mercury'] },
    torr: { size: ['101325', '760'], spellings: [] },
    atm: { size: '101325', spellings: ['atmosphere', 'atmospheres', 'standard atmosphere'] },
    'kgf/cm2': { size: '98066.5', spellings: ['technical atmosphere', 'at'] },
  },
  time: {
    s: { size: '1', spellings: ['sec', 'secs', 'second', 'seconds'] },
    min: { size: '60', spellings: ['mins', 'minute', 'minutes'] },
    h: { size: '3600', spellings: ['hr', 'hrs', 'hour', 'hours'] },
    day: { size: '86400', plural: 'days', spellings: ['d'] },
    week: { size: '604800', plural: 'weeks', spellings: ['wk', 'wks'] },
  },
  energy: {
    J: { size: '1', spellings: ['joule', 'joules'] },
    kJ: { size: '1000', spellings: ['kilojoule', 'kilojoules'] },
    MJ: { size: '1000000', spellings: ['megajoule', 'megajoules'] },
    Wh: { size: '3600', spellings: ['watt hour', 'watt hours'] },
    kWh: { size: '3600000', spellings: ['kilowatt hour', 'kilowatt hours'] },
    BTU: { pointOnly: true, size: '1055.05585262', spellings: ['Btu', 'Btus', 'BTUs', 'Btu (IT)'] },
    'BTU (thermochemical)': { pointOnly: true, size: ['9489.1523804', '9'], spellings: [] },
    therm: { pointOnly: true, size: '105505585.262', plural: 'therms', spellings: [] },
    cal: { size: '4.184', spellings: ['calorie', 'calories'] },
    'cal (IT)': { size: '4.1868', spellings: ['calorie (IT)'] },
    kcal: { size: '4184', spellings: ['kilocalorie', 'kilocalories', 'Cal'] },
  },
  power: {
    W: { size: '1', spellings: ['watt', 'watts'] },
    kW: { size: '1000', spellings: ['kilowatt', 'kilowatts'] },
    'BTU/h': { pointOnly: true, size: ['1055.05585262', '3600'], spellings: ['Btu/h', 'BTU/hr', 'BTUH'] },
  },
  density: {
    'g/mL': { size: '1', spellings: ['g/cm3', 'g/cm³', 'kg/L'] },
    'kg/m3': { size: '0.001', spellings: ['kg/m³', 'g/L'] },
    'lb/gal': { pointOnly: true, size: [POUND, GALLON], spellings: ['lb/gallon'] },
    'lb/ft3': { pointOnly: true, size: [POUND, '28316.846592'], spellings: ['lb/ft³'] },
    'g/cup': { pointOnly: true, size: ['16', GALLON], spellings: [] },
    'lb/quart': { pointOnly: true, size: ['1814.36948', GALLON], spellings: ['lb/qt'] },
  },
} as const satisfies Record<string, Record<string, UnitDefinition>>;

/** A kind of quantity: `mass`, `volume`, `temperature` ... */
export type Dimension = keyof typeof UNITS;
/** The canonical names of the units of one dimension. */
export type Unit<D extends Dimension = Dimension> = D extends Dimension ? keyof (typeof UNITS)[D] & string : never;

type Definition<D extends Dimension, U> = U extends keyof (typeof UNITS)[D] ? (typeof UNITS)[D][U] : never;
type Plural<T> = T extends { readonly plural: infer P extends string } ? P : never;
type Spelled<T> = T extends { readonly spellings: readonly (infer S extends string)[] } ? S : never;
/** Every spelling the type checker accepts for a dimension: names, plurals and common spellings. */
export type UnitSpelling<D extends Dimension> =
  | Unit<D>
  | Plural<Definition<D, Unit<D>>>
  | Spelled<Definition<D, Unit<D>>>;

export const DIMENSIONS = Object.keys(UNITS) as Dimension[];

const definitions = UNITS as unknown as Record<Dimension, Record<string, UnitDefinition>>;

export interface FoundUnit {
  readonly dimension: Dimension;
  readonly unit: string;
  /** To the other units of its dimension; `scale.ts` fills it, each at its first use. */
  readonly scales: Map<string, Scale>;
}

function readNames() {
  const byName = new Map<string, FoundUnit>(); // canonical names and spellings, as written
  const byLowerName = new Map<string, FoundUnit | null>(); // lower case; null where two units share it
  const differenceNames = new Map<string, FoundUnit>(); // as written and in lower case
  for (const dimension of DIMENSIONS) {
    for (const [unit, { plural, spellings }] of Object.entries(definitions[dimension])) {
      const found: FoundUnit = { dimension, unit, scales: new Map() };
      for (const name of [unit, plural ?? unit, ...spellings]) {
        if (dimension === 'temperatureDifference') {
          differenceNames.set(name, found);
          differenceNames.set(name.toLowerCase(), found);
          if (name !== unit) continue; // `degC` alone is a temperature, never an interval
        }
        byName.set(name, found);
        const lower = name.toLowerCase();
        const known = byLowerName.get(lower);
        byLowerName.set(lower, known === undefined || (known !== null && known.unit === unit) ? found : null);
      }
    }
  }
  return { byName, byLowerName, differenceNames };
}
const names = readNames();

/**
 * Finds a unit by any of its spellings, or says nothing when there is none or when the lower-case spelling
 * could be two units (`mpa`). Where an interval of temperature is asked for, `18 degF` means the interval.
 */
export function findUnit(text: string, wanted?: Dimension): FoundUnit | undefined {
  const asWritten = (wanted === 'temperatureDifference' ? names.differenceNames : names.byName).get(text);
  if (asWritten !== undefined) return asWritten;
  const name = text.trim().replace(/\s+/g, ' ');
  if (wanted === 'temperatureDifference') {
    const interval = names.differenceNames.get(name.toLowerCase());
    if (interval !== undefined) return interval;
  }
  const bare = name.replace(/\.$/, ''); // "tbsp."
  return names.byName.get(name) ?? names.byName.get(bare) ?? names.byLowerName.get(bare.toLowerCase()) ?? undefined;
}

/** The unit's plural where it has one: `2 cups`, but `2 lb`. */
export function pluralOf(unit: string): string {
  const found = names.byName.get(unit);
  return (found && definitions[found.dimension][found.unit]?.plural) ?? unit;
}

/** Whether only people with a decimal point write it. */
export const isPointOnly = ({ dimension, unit }: Pick<FoundUnit, 'dimension' | 'unit'>): boolean =>
  definitions[dimension][unit]?.pointOnly === true;

/** The units of a dimension in the order of the table, for messages. */
export const unitsOf = (dimension: Dimension): string[] => Object.keys(definitions[dimension]);

export { definitions as unitDefinitions };
