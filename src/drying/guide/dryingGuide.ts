import type * as z from 'zod/mini';
import guideTable from '../../../data/drying/guide.json';
import yieldTable from '../../../data/drying/yields.json';
import { answer } from '../../common/answer';
import { nameKey } from '../../common/names';
import { GUIDE_DRYING_TEMPERATURE } from '../../heat/dryingHeat';
import { fields, name, optional, readInput } from '../../quantity/fields';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Obtained } from '../../sources/table';
import { caution } from '../cautions';
import { type FoodRow, rowsOf } from './foods';
import { endsOf, numberOf, setting } from './settings';

type Ends = readonly [number, number];

/** One publication's line for one food. */
export interface GuideRow extends FoodRow {
  readonly printed: string;
  readonly kind: 'fruit' | 'vegetable';
  readonly forms?: readonly string[];
  readonly thickness_in?: Ends;
  readonly preparation: string | null;
  readonly steamBlanch_minutes: Ends | null;
  readonly waterBlanch_minutes: Ends | null;
  readonly syrupBlanch_minutes: number | null;
  readonly checkSkins_seconds?: { readonly sweet: number; readonly sour: number };
  readonly sulfur_minutes?: number;
  readonly hours: Ends | null;
  readonly drynessTest: string | null;
}

interface YieldRow extends FoodRow {
  readonly printed: string;
  readonly fresh_lb?: number;
  readonly dried_lb?: Ends;
  readonly dried_pints?: Ends;
  readonly ratio?: Ends;
  readonly overallRatio?: Ends;
}

const guide = asTable<GuideRow>(guideTable).rows;
const yields = asTable<YieldRow>(yieldTable).rows;

const schema = fields({
  food: name('a fruit or a vegetable'),
  form: optional(name('how it is cut: whole, halves, slices, rings, strips')),
});
export type DryingGuideInput = z.input<typeof schema>;

/** How thick pieces are cut; both ends the same where one figure is printed. */
export interface Thickness {
  readonly low: Quantity<'length'>;
  readonly high: Quantity<'length'>;
}

/** What one publication prints. */
export interface PrintedDrying {
  readonly preparation?: string;
  /** The cuts its hours are for. */
  readonly forms?: readonly string[];
  readonly thickness?: Thickness;
  readonly steamBlanch?: Range<Quantity<'time'>>;
  readonly waterBlanch?: Range<Quantity<'time'>>;
  readonly syrupBlanch?: Quantity<'time'>;
  readonly sulfur?: Quantity<'time'>;
  readonly hours?: Range<Quantity<'time'>>;
  readonly drynessTest?: string;
  readonly note?: string;
  readonly obtained: Obtained;
  readonly source: string;
}

/** What fresh produce gives dried, as printed. */
export interface PrintedYield {
  /** Fresh weight per dried weight. */
  readonly ratio: { readonly low: number; readonly high: number };
  readonly fresh?: Quantity<'mass'>;
  readonly dried?: { readonly low: Quantity<'mass'>; readonly high: Quantity<'mass'> };
  readonly driedVolume?: { readonly low: Quantity<'volume'>; readonly high: Quantity<'volume'> };
  readonly obtained: Obtained;
  readonly source: string;
}

export interface DryingGuide {
  readonly food: string;
  readonly kind: 'fruit' | 'vegetable';
  readonly preparation: string;
  /** The cuts that the hours are printed for; none where they are general. */
  readonly forms?: readonly string[];
  /** How thick those pieces are, where it is printed. */
  readonly thickness?: Thickness;
  readonly steamBlanch?: Range<Quantity<'time'>>;
  readonly waterBlanch?: Range<Quantity<'time'>>;
  readonly syrupBlanch?: Quantity<'time'>;
  readonly temperature: Quantity<'temperature'>;
  /** From the shortest to the longest that any of the publications prints for this cut. */
  readonly hours: Range<Quantity<'time'>>;
  /** True where no publication prints hours for this food and cut and the general figure is given. */
  readonly hoursAreGeneral: boolean;
  readonly drynessTest: string;
  /** Moisture to reach, wet basis. */
  readonly targetMoisture: number;
  readonly yield: readonly PrintedYield[];
  /** Each publication's own line, those that were read first. */
  readonly printed: readonly PrintedDrying[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const time = (value: number, unit: 'min' | 'h'): Quantity<'time'> => ({ value, unit });
const middle = ([low, high]: Ends): number => (low + high) / 2;
const range = (ends: Ends, unit: 'min' | 'h', likely = middle(ends)): Range<Quantity<'time'>> => ({
  low: time(ends[0], unit),
  likely: time(likely, unit),
  high: time(ends[1], unit),
});

/** The steps of a row, without those it has none of. */
function steps(row: GuideRow) {
  return {
    ...(row.steamBlanch_minutes === null ? {} : { steamBlanch: range(row.steamBlanch_minutes, 'min') }),
    ...(row.waterBlanch_minutes === null ? {} : { waterBlanch: range(row.waterBlanch_minutes, 'min') }),
    ...(row.syrupBlanch_minutes === null ? {} : { syrupBlanch: time(row.syrupBlanch_minutes, 'min') }),
  };
}

/** The cut that a row's hours are for. */
const cut = ({ forms, thickness_in: inches }: GuideRow) => ({
  ...(forms === undefined ? {} : { forms }),
  ...(inches === undefined
    ? {}
    : { thickness: { low: { value: inches[0], unit: 'in' }, high: { value: inches[1], unit: 'in' } } as const }),
});

function toPrinted(row: GuideRow): PrintedDrying {
  return {
    ...(row.preparation === null ? {} : { preparation: row.preparation }),
    ...cut(row),
    ...steps(row),
    ...(row.sulfur_minutes === undefined ? {} : { sulfur: time(row.sulfur_minutes, 'min') }),
    ...(row.hours === null ? {} : { hours: range(row.hours, 'h') }),
    ...(row.drynessTest === null ? {} : { drynessTest: row.drynessTest }),
    ...(row.notes === undefined ? {} : { note: row.notes }),
    obtained: row.obtained,
    source: row.source,
  };
}

function toYield(row: YieldRow): PrintedYield {
  const { fresh_lb, dried_lb, dried_pints, ratio } = row;
  const [low, high] = ratio ?? [
    (fresh_lb as number) / (dried_lb as Ends)[1],
    (fresh_lb as number) / (dried_lb as Ends)[0],
  ];
  return {
    ratio: { low, high },
    ...(fresh_lb === undefined ? {} : { fresh: { value: fresh_lb, unit: 'lb' } }),
    ...(dried_lb === undefined
      ? {}
      : { dried: { low: { value: dried_lb[0], unit: 'lb' }, high: { value: dried_lb[1], unit: 'lb' } } }),
    ...(dried_pints === undefined
      ? {}
      : {
          driedVolume: { low: { value: dried_pints[0], unit: 'pint' }, high: { value: dried_pints[1], unit: 'pint' } },
        }),
    obtained: row.obtained,
    source: row.source,
  };
}

const TARGET = { fruit: setting('residualMoisture_fruit'), vegetable: setting('residualMoisture_vegetable') };
const PROPERLY_DRIED = setting('residualMoisture_properlyDriedFood');

/** The usual end moisture of a kind, wet basis, and where it is from. */
export function targetMoistureOf(kind: 'fruit' | 'vegetable'): { targetMoisture: number; basis: Basis[] } {
  const [low, high] = endsOf(PROPERLY_DRIED);
  return {
    targetMoisture: numberOf(TARGET[kind]) / 100,
    basis: [
      basisOf(TARGET[kind], `usual moisture of dried ${kind}`),
      basisOf(PROPERLY_DRIED, `moisture of properly dried food, ${low} to ${high} %`),
    ],
  };
}

const fits = (row: GuideRow, forms: readonly string[] | undefined): boolean =>
  forms === undefined ||
  row.forms === undefined ||
  row.forms.some((printed) => forms.some((form) => nameKey(printed) === nameKey(form)));

/** The rows of the cut asked for; with none asked for, those of the first row with hours, never two cuts together. */
function ofOneCut(rows: readonly GuideRow[], form: string | undefined): GuideRow[] {
  const first = rows.find((row) => row.hours !== null) ?? rows[0];
  return rows.filter((row) => fits(row, form === undefined ? first?.forms : [form]));
}

/**
 * The printed drying guide for one food: how to ready it, how hot, how long, how it feels when dry, and to which
 * moisture.
 *
 * Publications disagree about hours; `hours` runs from the shortest to the longest printed for the cut (plan with the
 * high end), and `printed` has each line by itself. They are for quality, not for safety: the dryness test decides.
 * Hours belong to a cut and a thickness: without a form they are those of the first cut printed, named in `forms`.
 * Where nothing is printed for the food in this cut, the general hours for fruit or vegetables are given and
 * `hoursAreGeneral` says so. Ask for `"fruit"` or `"vegetable"` for a food that is in no table.
 *
 * @param input.food - the fruit or vegetable
 * @param input.form - the cut, where the hours for one cut are wanted: `halves`, `slices`, `whole` ...
 * @returns the guide; `targetMoisture` on wet basis (about 0.2 for fruit, 0.1 for vegetables), `yield` as printed
 * @throws StillroomError UNKNOWN_NAME with the nearest names
 *
 * @example
 * ```ts
 * import { dryingGuide } from 'stillroom/drying';
 *
 * const guide = dryingGuide({ food: 'apples', form: 'rings' });
 * guide.hours.high; // => { value: 12, unit: 'h' }
 * guide.temperature; // => { value: 140, unit: 'degF' }
 * guide.targetMoisture; // => 0.2
 * dryingGuide({ food: 'appel' }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function dryingGuide(input: DryingGuideInput): DryingGuide {
  const { food: asked, form } = readInput(schema, input);
  const { food, rows } = rowsOf(asked, guide);
  const fitting = ofOneCut(rows, form);
  const timed = fitting.filter((row) => row.hours !== null);
  const general = guide.filter((row) => row.food === food.kind);
  const hoursAreGeneral = timed.length === 0;
  const hourRows = hoursAreGeneral ? general : timed;
  const hours = hourRows.map((row) => row.hours as Ends);
  // the table is sorted with the rows that were read first
  const lead = (timed[0] ?? fitting[0] ?? rows[0]) as GuideRow;
  const moisture = targetMoistureOf(food.kind);
  const yieldRows = yields.filter((row) => row.food === food.name);
  const used = [...(fitting.length === 0 ? [lead] : fitting), ...(hoursAreGeneral ? general : [])];
  const basis = joinBasis(
    used.map((row) => basisOf(row, `drying of ${row.printed}`)),
    moisture.basis,
    [basisOf(setting('dryingTemperature_fruitVegetable'), 'temperature of the dryer')],
    yieldRows.map((row) => basisOf(row, 'yield of dried produce')),
  );
  return answer({
    food: food.name,
    kind: food.kind,
    // the preparation and blanching of another cut would mislead
    preparation: (fitting.length === 0 ? undefined : lead.preparation) ?? (general[0]?.preparation as string),
    ...(hoursAreGeneral ? {} : cut(lead)),
    ...(fitting.length === 0 ? {} : steps(lead)),
    temperature: GUIDE_DRYING_TEMPERATURE,
    hours: range(
      [Math.min(...hours.map(([low]) => low)), Math.max(...hours.map(([, high]) => high))],
      'h',
      middle(hours[0] as Ends),
    ),
    hoursAreGeneral,
    drynessTest: (used.find((row) => row.drynessTest !== null) as GuideRow).drynessTest as string,
    targetMoisture: moisture.targetMoisture,
    yield: yieldRows.map(toYield),
    printed: used.map(toPrinted),
    basis,
    cautions: [
      caution('dryness-test-decides'),
      caution('condition-dried-fruit'),
      ...(basis.some(({ kind }) => kind === 'recalled') ? [caution('recalled')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
