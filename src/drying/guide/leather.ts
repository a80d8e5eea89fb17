import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { type FoundFood, food } from '../../foods/fields';
import { fields, isMass, optional, readInput } from '../../quantity/fields';
import { mapRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { balanceBasis, refuseWetter, shareLeft } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { basisOf, practiceBasis } from '../../sources/table';
import { amount } from '../../words/amount';
import { area } from '../../words/area';
import { count } from '../../words/count';
import { density } from '../../words/density';
import { length } from '../../words/length';
import { targetMoisture as targetMoistureWord } from '../../words/shares';
import { caution } from '../cautions';
import { moistureRange } from '../moisture/moistureRange';
import { usualMoisture } from '../moisture/targetMoisture';
import { dryingKind } from '../pantry';
import { figure, numberOf, practice, textOf } from '../rows';
import { dryerHours, dryerRow, type HoursSpan, ovenHours } from './leatherByThickness';
import { leatherItem } from './tables';
import { lotsFor, massUnitFor } from './trayLoad';

const SHEET = leatherItem('puree-per-sheet');
const LEMON = leatherItem('lemon-juice-per-two-cups');
const ASCORBIC = leatherItem('ascorbic-acid-per-two-cups');
/** The cups of puree that the two additions are printed for. */
const ADDED_TO_CUPS = 2;

const schema = /* @__PURE__ */ fields({
  /** What the puree is of; the figures are printed for fruit. */
  food: optional(food()),
  /** Of one sheet: above zero. */
  area: area(),
  /** Puree at hand: a volume or a mass above zero; or give `sheets`. */
  puree: optional(amount()),
  /** How many sheets to fill: 1 to 1,000; one if neither this nor `puree` is given. */
  sheets: optional(count('sheets', 1, 1000)),
  /** Of the wet puree: up to 2 cm; by the printed cups on a sheet if not given. */
  thickness: optional(length({ max: { value: 2, unit: 'cm' } })),
  /** Of the puree: up to 2 g/mL; 1.05 g/mL if not given. */
  density: optional(density({ max: { value: 2, unit: 'g/mL' } })),
  /** Of the puree, wet basis: 0 to below 1 or percent, one or `{ low, likely, high }`; for what is left when dry. */
  moisture: optional(moistureRange()),
  /** Of the leather, wet basis: 0 to below 1 or percent; 20 % if not given. */
  targetMoisture: optional(targetMoistureWord({ below: 1 })),
});
export type LeatherInput = z.input<typeof schema>;

/** How fruit leather is spread and dried. */
export interface LeatherSheets {
  /** These tables hold leather of it. */
  readonly known: true;
  /** Puree on one sheet, in the unit of a puree given by volume, else cups. */
  readonly volumePerSheet: Quantity<'volume'>;
  /** The same by mass, in the unit of a puree given by mass, else lb or kg. */
  readonly massPerSheet: Quantity<'mass'>;
  /** Of the wet puree. */
  readonly thickness: Quantity<'length'>;
  /** Sheets to spread; the last may be part filled. */
  readonly sheets: number;
  /** All the puree, by volume. */
  readonly puree: Quantity<'volume'>;
  /** All the puree, by mass. */
  readonly pureeMass: Quantity<'mass'>;
  /** Mass of a full sheet when it is done, without the tray; given the moisture of the puree. */
  readonly driedPerSheet?: Range<Quantity<'mass'>>;
  /** All the leather there is in the end; given the moisture of the puree. */
  readonly dried?: Range<Quantity<'mass'>>;
  /** Of the dryer. */
  readonly temperature: Quantity<'temperature'>;
  /** In a dryer, for a sheet of this thickness; none above the thickest sheet that is printed, 1/4 in. */
  readonly hours?: HoursSpan;
  /** The sheet that `hours` are printed for. */
  readonly hoursFor?: {
    /** Of the sheet. */
    readonly thickness: Quantity<'length'>;
    /** The one fruit whose page prints them, where it is one. */
    readonly food?: string;
  };
  /** In an oven; none above the thickest sheet that is printed. */
  readonly ovenHours?: HoursSpan;
  /** Against browning, for light fruit; or `ascorbicAcid` instead. */
  readonly lemonJuice: Quantity<'volume'>;
  /** Against browning, for light fruit; or `lemonJuice` instead. */
  readonly ascorbicAcid: Quantity<'mass'>;
  /** How it feels when dry. */
  readonly drynessTest: string;
  /** How long it keeps. */
  readonly keepsFor: readonly {
    /** Where: `shelf` (at room temperature) or `freezer`. */
    readonly place: string;
    /** How many months. */
    readonly months: number;
  }[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** How leather is spread and dried, or that these tables hold none of this food. */
export type Leather = LeatherSheets | NotKnown;

type Given = z.output<typeof schema>;

/** mL on one sheet, the depth in cm, and mL in all. */
function amounts({ area: sheet, puree, sheets = 1, thickness }: Given, gramsPerMilliliter: number) {
  const squareCentimeters = valueIn(sheet, 'cm2');
  const [width, depth] = figure(SHEET.sheet_in);
  const printed = valueIn({ value: width * depth, unit: 'in2' }, 'cm2');
  const deep =
    thickness === undefined
      ? valueIn({ value: numberOf(SHEET), unit: 'cup' }, 'mL') / printed
      : valueIn(thickness, 'cm');
  const perSheet = squareCentimeters * deep;
  if (puree === undefined) return { perSheet, deep, total: perSheet * sheets };
  const total = isMass(puree) ? valueIn(puree, 'g') / gramsPerMilliliter : valueIn(puree as Quantity<'volume'>, 'mL');
  return { perSheet, deep, total };
}

function notFruit({ name }: FoundFood): NotKnown {
  return notKnown({
    code: 'not-a-fruit',
    text: `these tables hold leather of fruit only, and none of ${name}`,
    instead: 'dry it in pieces, or mix it into a fruit puree by a recipe that names both',
    basis: [basisOf(SHEET, 'reason', 'directions for fruit leather')],
    cautions: [],
  });
}

/**
 * Fruit leather: how much puree a sheet takes, how many sheets a batch fills, what a sheet weighs when done, and the
 * printed temperature, hours, additions, dryness test and keeping time.
 *
 * puree on a sheet = area x thickness; without a thickness the printed 2 cups on a 13 x 15 in sheet are scaled (about
 * 1/8 in with thicker edges). Dried = puree (1 - moisture) / (1 - target). Hours belong to a thickness: 6 to 8 h for
 * that sheet, 10 h for one of 1/4 in (printed for mango); these tables hold none for thicker sheets, and give none.
 *
 * Sources: University of Missouri and Michigan State University Extension; National Center for Home Food Preservation.
 *
 * @returns volumes in the unit of a `puree` given by volume (else cups), masses in that of one given by mass (else by
 *   the sheet's); or `known: false` for a food that is no fruit
 * @throws StillroomError CONTRADICTION for both `puree` and `sheets`, or a target wetter than the puree
 *
 * @example
 * ```ts
 * import { leather } from 'stillroom/drying';
 *
 * const answer = leather({ area: '195 in2', puree: '5 cups', moisture: '86 %' });
 * answer.known && answer.volumePerSheet; // => { value: 2, unit: 'cup' }
 * answer.known && answer.sheets; // => 3
 * answer.known && answer.hours?.high; // => { value: 8, unit: 'h' }
 * ```
 */
export function leather(input: LeatherInput): Leather {
  const given = readInput(schema, input);
  const { puree, sheets, moisture } = given;
  if (puree !== undefined && sheets !== undefined) {
    fail('CONTRADICTION', 'sheets', input.sheets, 'only one of puree and sheets');
  }
  if (given.food !== undefined && dryingKind(given.food.id) !== 'fruit') return answer(notFruit(given.food));
  const gramsPerMilliliter =
    given.density === undefined ? numberOf(practice('puree-density')) : valueIn(given.density, 'g/mL');
  const { perSheet, deep, total } = amounts(given, gramsPerMilliliter);
  const byMass = puree !== undefined && isMass(puree) ? puree.unit : undefined;
  const massUnit = byMass ?? massUnitFor(given.area.unit);
  const volumeUnit = puree === undefined || isMass(puree) ? 'cup' : (puree as Quantity<'volume'>).unit;
  const lengthUnit = given.thickness?.unit ?? (massUnit === 'lb' ? 'in' : 'mm');
  const weigh = (milliliters: number): Quantity<'mass'> => quantityIn(milliliters * gramsPerMilliliter, 'g', massUnit);
  const usual = usualMoisture('fruit', 'dried');
  const targetMoisture = given.targetMoisture ?? usual.moisture;
  if (moisture !== undefined) refuseWetter(moisture.low, targetMoisture, input.targetMoisture);
  const left = moisture && turnRange(mapRange(moisture, (start) => shareLeft(start, targetMoisture)));
  const inches = quantityIn(deep, 'cm', 'in').value;
  const dryer = dryerRow(inches);
  const oven = ovenHours(inches);
  const times = quantityIn(total, 'mL', 'cup').value / ADDED_TO_CUPS;
  return answer({
    known: true,
    volumePerSheet: quantityIn(perSheet, 'mL', volumeUnit),
    massPerSheet: weigh(perSheet),
    thickness: quantityIn(deep, 'cm', lengthUnit),
    sheets: lotsFor(total, perSheet),
    puree: quantityIn(total, 'mL', volumeUnit),
    pureeMass: weigh(total),
    ...(left === undefined
      ? {}
      : {
          driedPerSheet: mapRange(left, (part) => weigh(perSheet * part)),
          dried: mapRange(left, (part) => weigh(total * part)),
        }),
    temperature: { value: numberOf(leatherItem('temperature')), unit: 'degF' },
    ...(dryer === undefined ? {} : dryerHours(dryer)),
    ...(oven === undefined ? {} : { ovenHours: oven.hours }),
    lemonJuice: quantityIn(numberOf(LEMON) * times, 'tsp', 'tsp'),
    ascorbicAcid: { value: numberOf(ASCORBIC) * times, unit: 'mg' },
    drynessTest: textOf(leatherItem('dryness-test')),
    keepsFor: [
      { place: 'shelf', months: numberOf(leatherItem('months-room')) },
      { place: 'freezer', months: numberOf(leatherItem('months-freezer')) },
    ],
    basis: [...basisFor(given), ...(moisture && given.targetMoisture === undefined ? usual.basis : [])],
    cautions: cautionsFor(given, dryer),
  });
}

type HoursRow = ReturnType<typeof dryerRow>;

function basisFor(given: Given): Basis[] {
  const { thickness, density: gramsPerMilliliter, moisture } = given;
  const { deep } = amounts(given, 1);
  const inches = quantityIn(deep, 'cm', 'in').value;
  const dryer = dryerRow(inches);
  return [
    ...(thickness === undefined
      ? [basisOf(SHEET, 'volumePerSheet', 'puree on a sheet of 13 by 15 in'), basisOf(SHEET, 'thickness')]
      : []),
    ...(gramsPerMilliliter === undefined ? [practiceBasis('massPerSheet', 'puree of 1.05 g/mL')] : []),
    ...(moisture === undefined ? [] : [balanceBasis('driedPerSheet'), balanceBasis('dried')]),
    basisOf(leatherItem('temperature'), 'temperature'),
    ...(dryer === undefined ? [] : [basisOf(dryer, 'hours', 'by the thickness of the sheet')]),
    ...(ovenHours(inches)?.rows ?? []).map((row) => basisOf(row, 'ovenHours')),
    basisOf(LEMON, 'lemonJuice', 'for light fruit'),
    basisOf(ASCORBIC, 'ascorbicAcid', 'for light fruit'),
    basisOf(leatherItem('dryness-test'), 'drynessTest'),
    basisOf(leatherItem('months-room'), 'keepsFor[].months', 'shelf'),
    basisOf(leatherItem('months-freezer'), 'keepsFor[].months', 'freezer'),
  ];
}

const cautionsFor = ({ food: fruit, moisture, targetMoisture }: Given, dryer: HoursRow): Caution[] => [
  ...(dryer === undefined ? [caution('leather-too-thick')] : []),
  ...(dryer?.food === undefined || dryer.food === fruit?.id ? [] : [caution('leather-hours-of-one-fruit')]),
  caution('dryness-test-decides'),
  caution('mold-means-discard'),
  // one of the figures behind the usual end moisture is recalled
  ...(moisture !== undefined && targetMoisture === undefined ? [caution('recalled')] : []),
  caution('follow-local-guidance'),
];
