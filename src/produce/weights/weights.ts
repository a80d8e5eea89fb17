/** What a milliliter of a food weighs in a measure, voids included. */
import { figuresFor } from '../../foods/figuresFor';
import { inUnit } from '../../quantity/scale';
import type { Sourced } from '../../sources/table';
import { byNumber, type Form, formOfId, numbersOf } from '../forms';
import { median, type Span, spanOf } from '../span';
import {
  type KitchenWeightRow,
  kitchenWeights,
  type PreservedWeightRow,
  preservedWeights,
  type RawWeightRow,
  rawWeights,
} from './tables';

/** Grams in a milliliter, with the rows it rests on; `estimated` where another food's figure stands in. */
export interface BulkDensity {
  readonly gramsPerMl: Span;
  readonly rows: readonly Sourced[];
  readonly estimated: boolean;
}

type MeasureRow = RawWeightRow | PreservedWeightRow;
/** How the measure was filled: ids of forms, or packed, sifted, thawed and the like. */
const filledOf = (row: MeasureRow): readonly string[] | undefined =>
  'filled' in row ? row.filled : (row as RawWeightRow).forms;

const milliliters = ({ amount, unit }: MeasureRow): number => inUnit(amount, unit as string, 'mL');
const densityOf = (row: MeasureRow): number => row.grams / milliliters(row);

/** The row of the largest measure first: a cup is weighed more closely than a spoon. */
const bySize = (a: MeasureRow, b: MeasureRow): number => milliliters(b) - milliliters(a);
const hasVolume = ({ unit }: MeasureRow): boolean => unit !== undefined;

const fillsLike = (row: MeasureRow, fills: string): boolean =>
  filledOf(row)?.some((id) => formOfId(id)?.fills === fills) ?? false;

/** Volume rows that fit a form: that form, else one of the same kind of pieces, else the measure printed without a form. */
function rowsFor<Row extends MeasureRow>(
  volumes: readonly Row[],
  filled: string | undefined,
  form?: Form,
): readonly Row[] {
  const plain = volumes.filter((row) => filledOf(row)?.length === 0);
  if (filled === undefined) return plain.length > 0 ? plain : volumes;
  const exact = volumes.filter((row) => filledOf(row)?.includes(filled));
  if (exact.length > 0) return exact;
  const { fills } = form ?? {};
  const near = fills === undefined ? [] : volumes.filter((row) => fillsLike(row, fills));
  return near.length > 0 ? near : plain;
}

const asDensity = (rows: readonly MeasureRow[]): BulkDensity => {
  const [first] = rows as [MeasureRow];
  // a smaller measure of the same food is rounded more coarsely: only rows of the first one's measure count
  const same = rows.filter(({ unit }) => unit === first.unit);
  return { gramsPerMl: spanOf(densityOf(first), same.map(densityOf)), rows: same, estimated: false };
};

/** Purees and juices of one density or another: what the raw food's own table does not print. */
const liquids = (forms: readonly string[]): MeasureRow[] => [
  ...rawWeights.filter((row) => row.unit === 'cup' && row.forms?.some((form) => forms.includes(form))),
  ...preservedWeights.filter((row) => row.typical && row.form !== undefined && forms.includes(row.form)),
];

/** The forms that one liquid form may be weighed as. */
const liquidForms = (form: Form): readonly string[] =>
  form.behaves === 'juice' ? ['juice'] : ['puree', 'mashed', 'sauce'];

/**
 * What a milliliter of a food in this form weighs as it goes into jars; nothing where no table says. A liquid that is
 * not weighed itself takes the middle of those that are. With `anyCut`, a measure of another cut does where none fits.
 */
export function foodDensity(food: string, form: Form | undefined, anyCut = false): BulkDensity | undefined {
  const numbers = numbersOf(food, 'weights');
  const own = ordered(rawWeights.filter(hasVolume), numbers);
  // what runs together in its juice is weighed as a puree, whatever it yields: a cup of whole berries is half air
  if (form === undefined || (form.fills !== 'mash' && (form.behaves === 'whole' || form.behaves === 'cut'))) {
    const fitting = rowsFor(own, form?.as, form);
    const rows = fitting.length === 0 && anyCut ? own : fitting;
    return rows.length === 0 ? undefined : asDensity(rows);
  }
  if (form.behaves === 'dry') return undefined;
  const forms = [...new Set([form.as, ...liquidForms(form)])];
  const made = keptRows(food)
    .filter((row) => row.typical && row.form !== undefined && forms.includes(row.form))
    .sort((a, b) => Number(b.form === form.as) - Number(a.form === form.as) || bySize(a, b));
  const [best] = made;
  if (best !== undefined) return asDensity(made.filter((row) => row.form === best.form));
  const mashed = own.filter((row) => forms.some((each) => row.forms?.includes(each)));
  if (mashed.length > 0) return asDensity(mashed);
  const others = liquids(forms);
  const densities = others.map(densityOf);
  return { gramsPerMl: spanOf(median(densities), densities), rows: others, estimated: true };
}

function ordered(rows: readonly RawWeightRow[], numbers: readonly string[]): RawWeightRow[] {
  return byNumber(rows, numbers).sort((a, b) => numbers.indexOf(a.ndb) - numbers.indexOf(b.ndb) || bySize(a, b));
}

/** Rows of the food as it is kept, in its own name. */
const keptRows = (food: string): PreservedWeightRow[] => preservedWeights.filter((row) => row.food === food);

function kitchenDensity(row: KitchenWeightRow): number {
  const [grams, unit] =
    row.g_per_cup !== undefined
      ? [row.g_per_cup, 'cup']
      : row.g_per_tbsp !== undefined
        ? [row.g_per_tbsp, 'tbsp']
        : [row.g_per_tsp as number, 'tsp'];
  return grams / inUnit(1, unit, 'mL');
}

/** What a milliliter of a kept food weighs: dried, canned, frozen, jam, sugar. */
function keptDensity(food: string, form: string | undefined, filled: string | undefined): BulkDensity | undefined {
  const volumes = keptRows(food)
    .filter((row) => row.form === form && hasVolume(row))
    .sort(bySize);
  const kitchen = form === undefined ? kitchenWeights.filter((row) => row.food === food) : [];
  const cups = kitchen.filter(({ g_per_cup }) => g_per_cup !== undefined);
  const weighed = cups.length > 0 ? cups : kitchen;
  const how = filled === undefined ? undefined : formOfId(filled);
  // what is kept is weighed as it lies: a measure of sugar is no measure of sliced sugar
  const printed = filled === undefined ? volumes : volumes.filter((row) => filledOf(row)?.length !== 0);
  const rows = rowsFor(printed, how?.as ?? filled, how);
  if (rows.length === 0) {
    const [only] = weighed;
    if (volumes.length > 0 || only === undefined || filled !== undefined) return undefined;
    return { gramsPerMl: spanOf(kitchenDensity(only), weighed.map(kitchenDensity)), rows: weighed, estimated: false };
  }
  const { gramsPerMl, rows: used, estimated } = asDensity(rows);
  return {
    gramsPerMl: spanOf(gramsPerMl.likely, [gramsPerMl.low, gramsPerMl.high, ...weighed.map(kitchenDensity)]),
    rows: [...used, ...weighed],
    estimated,
  };
}

/** What fills a measure: a food, in a form of the pantry, and how it lies in the measure. */
export interface Measured {
  readonly food: string;
  readonly form?: string | undefined;
  /** How it lies in the measure: id of a form, or packed, sifted, thawed and the like. */
  readonly filled?: string | undefined;
}

/** What a milliliter of any food weighs, raw or kept; nothing where no table says. */
export function densityOfFood({ food, form, filled }: Measured): BulkDensity | undefined {
  for (const each of figuresFor(food, 'weights')) {
    const kept =
      keptDensity(each, form, filled) ?? (filled === undefined ? keptDensity(each, undefined, form) : undefined);
    if (kept !== undefined) return kept;
  }
  if (filled !== undefined && form !== undefined) return undefined;
  const shape = form ?? filled;
  const how = shape === undefined ? undefined : formOfId(shape);
  return shape !== undefined && how === undefined ? undefined : foodDensity(food, how);
}

/** The ids of the forms that some table weighs a measure of this food in. */
export function formsWeighed(food: string): string[] {
  const numbers = numbersOf(food, 'weights');
  const raw = byNumber(rawWeights, numbers).flatMap(({ forms = [] }) => forms);
  const kept = keptRows(food).flatMap((row) => (hasVolume(row) && row.form !== undefined ? [row.form] : []));
  return [...new Set([...raw, ...kept])];
}
