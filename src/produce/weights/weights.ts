import kitchen from '../../../data/produce/kitchen-weights.json';
import preserved from '../../../data/produce/weights-preserved.json';
import raw from '../../../data/produce/weights-raw.json';
import { findNamed, lookUp, type Named, nameKey } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { toDecimalIn } from '../../quantity/scale';
import { asTable, type Sourced } from '../../sources/table';
import { type CatalogueRow, catalogue, numbersOf } from '../catalogue';
import { FORMS, type Form, findForm } from '../yields/forms';
import { median, type Span, spanOf } from '../yields/span';

export interface WeightRow extends Sourced {
  readonly ndb: string;
  readonly amount: number;
  readonly measure: string;
  readonly grams: number;
  /** The volume unit; none for the weight of a piece. */
  readonly unit?: 'cup' | 'tbsp' | 'tsp' | 'fl oz';
  /** The form or state the measure was filled with. */
  readonly forms?: readonly string[];
}
export interface RawWeightRow extends WeightRow {
  readonly produce: string;
}
export interface PreservedWeightRow extends WeightRow {
  readonly food: string;
  readonly synonyms?: readonly string[];
  /** The raw food it is a form of, and which. */
  readonly produce?: string;
  readonly form?: string;
}
export interface KitchenWeightRow extends Sourced {
  readonly item: string;
  readonly foods: readonly string[];
  readonly g_per_cup?: number;
  readonly g_per_tbsp?: number;
  readonly g_per_tsp?: number;
}

export const rawWeights = asTable<RawWeightRow>(raw).rows;
export const preservedWeights = asTable<PreservedWeightRow>(preserved).rows;
export const kitchenWeights = asTable<KitchenWeightRow>(kitchen).rows;

/** Grams in a millilitre, with the rows it rests on; `estimated` where another food's figure stands in. */
export interface BulkDensity {
  readonly gramsPerMl: Span;
  readonly rows: readonly Sourced[];
  readonly estimated: boolean;
}

const millilitres = ({ amount, unit }: WeightRow): number =>
  toDecimalIn({ value: amount, unit: unit as string }, 'mL').toNumber();
const densityOf = (row: WeightRow): number => row.grams / millilitres(row);

/** The row of the largest measure first: a cup is weighed more closely than a spoon. */
const bySize = (a: WeightRow, b: WeightRow): number => millilitres(b) - millilitres(a);

/** Foods other than raw produce: one entry a name, with its rows and, for a few, kitchen weights. */
interface Stored extends Named {
  readonly rows: readonly WeightRow[];
  readonly kitchen: readonly KitchenWeightRow[];
}
const stored: readonly Stored[] = [
  ...new Set([
    ...preservedWeights.map(({ food }) => food),
    ...kitchenWeights.flatMap(({ foods }) => foods.slice(0, 1)),
  ]),
].map((name) => {
  const rows = preservedWeights.filter(({ food, unit }) => food === name && unit !== undefined).sort(bySize);
  return {
    name,
    synonyms: [...new Set(rows.flatMap(({ synonyms }) => synonyms ?? []))],
    rows,
    kitchen: kitchenWeights.filter(({ foods }) => foods.includes(name)),
  };
});

/** Cuts that fill a measure alike, so that one may stand in for another. */
const ALIKE: readonly (readonly string[])[] = [
  ['diced', 'cubes', 'chopped', 'chunks', 'pieces', 'quarters', 'balls', 'crushed', 'stewed', 'wedges'],
  ['slices', 'strips', 'halves', 'pie filling', 'spears'],
  ['shredded', 'grated'],
  ['puree', 'mashed', 'pulp', 'sauce', 'thick sauce'],
  ['whole', 'trimmed', 'cored', 'pitted', 'peeled', 'kernels', 'arils', 'sections', 'florets', 'cherry tomatoes'],
];

const printsForm = (row: WeightRow, form: string): boolean => row.forms?.includes(form) ?? false;

/** Volume rows of one food that fit a form: that form, else a cut that fills alike, else the measure printed without a form. */
function rowsFor(volumes: readonly WeightRow[], form: string | undefined): readonly WeightRow[] {
  const plain = volumes.filter(({ forms }) => forms?.length === 0);
  if (form === undefined) return plain.length > 0 ? plain : volumes;
  const exact = volumes.filter((row) => printsForm(row, form));
  if (exact.length > 0) return exact;
  const alike = ALIKE.find((group) => group.includes(form)) ?? [];
  const near = volumes.filter((row) => alike.some((other) => printsForm(row, other)));
  return near.length > 0 ? near : plain;
}

/** Purees and juices of one density or another: what the raw food's own table does not print. */
const liquids = (forms: readonly string[]): WeightRow[] => [
  ...rawWeights.filter((row) => row.unit === 'cup' && forms.some((form) => printsForm(row, form))),
  ...preservedWeights.filter((row) => row.unit === 'cup' && row.form !== undefined && forms.includes(row.form)),
];

const asDensity = (rows: readonly WeightRow[]): BulkDensity => {
  const [first] = rows as [WeightRow];
  // a smaller measure of the same food is rounded more coarsely: only rows of the first one's measure count
  const same = rows.filter(({ unit }) => unit === first.unit);
  return { gramsPerMl: spanOf(densityOf(first), same.map(densityOf)), rows: same, estimated: false };
};

/**
 * What a millilitre of raw produce in this form weighs; nothing where no table says. With `anyCut`, a measure of
 * another cut does where none fits.
 */
export function produceDensity(produce: CatalogueRow, form: Form | undefined, anyCut = false): BulkDensity | undefined {
  const numbers = numbersOf(produce);
  const own = rawWeights
    .filter(({ ndb }) => numbers.includes(ndb))
    .filter(({ unit }) => unit !== undefined)
    .sort((a, b) => numbers.indexOf(a.ndb) - numbers.indexOf(b.ndb) || bySize(a, b));
  const fluid = form !== undefined && form.class !== 'whole' && form.class !== 'cut';
  if (!fluid) {
    const fitting = rowsFor(own, form?.name);
    const rows = fitting.length === 0 && anyCut ? own : fitting;
    return rows.length === 0 ? undefined : asDensity(rows);
  }
  const forms = form.class === 'juice' ? ['juice'] : ['puree', 'mashed', 'sauce'];
  const made = preservedWeights
    .filter((row) => row.produce === produce.name && row.form !== undefined && row.unit !== undefined)
    .filter(({ form: kind }) => forms.includes(kind as string))
    .sort((a, b) => Number(b.form === form.name) - Number(a.form === form.name) || bySize(a, b));
  const [best] = made;
  if (best !== undefined) return asDensity(made.filter((row) => row.form === best.form));
  const mashed = own.filter((row) => [form.name, ...forms].some((name) => printsForm(row, name)));
  if (mashed.length > 0) return asDensity(mashed);
  const others = liquids(forms);
  const densities = others.map(densityOf);
  return { gramsPerMl: spanOf(median(densities), densities), rows: others, estimated: true };
}

function kitchenDensity(row: KitchenWeightRow): number {
  const [grams, unit] =
    row.g_per_cup !== undefined
      ? [row.g_per_cup, 'cup']
      : row.g_per_tbsp !== undefined
        ? [row.g_per_tbsp, 'tbsp']
        : [row.g_per_tsp as number, 'tsp'];
  return grams / toDecimalIn({ value: 1, unit }, 'mL').toNumber();
}

function storedDensity(entry: Stored, form: string | undefined): BulkDensity | undefined {
  const states = new Set(entry.rows.flatMap(({ forms }) => forms ?? []));
  const wanted = form === undefined ? undefined : nameKey(form.replace(/\bnot\s+/, 'un'));
  const known = [...states, ...FORMS.flatMap(({ name, synonyms = [] }) => [name, ...synonyms])].find(
    (name) => nameKey(name) === wanted,
  );
  if (wanted !== undefined && known === undefined) return undefined;
  const rows = rowsFor(entry.rows, known === undefined || states.has(known) ? known : findForm(known).name);
  const cups = entry.kitchen.filter(({ g_per_cup }) => g_per_cup !== undefined);
  const weighed = cups.length > 0 ? cups : entry.kitchen;
  if (rows.length === 0) {
    const [only] = weighed;
    return entry.rows.length > 0 || only === undefined
      ? undefined
      : { gramsPerMl: spanOf(kitchenDensity(only), weighed.map(kitchenDensity)), rows: weighed, estimated: false };
  }
  const { gramsPerMl, rows: used, estimated } = asDensity(rows);
  return {
    gramsPerMl: spanOf(gramsPerMl.likely, [gramsPerMl.low, gramsPerMl.high, ...weighed.map(kitchenDensity)]),
    rows: [...used, ...weighed],
    estimated,
  };
}

const formsPrinted = (rows: readonly WeightRow[]): string[] => [...new Set(rows.flatMap(({ forms }) => forms ?? []))];

/**
 * What a millilitre of any food here weighs, raw produce or stored food, in this form.
 *
 * @throws StillroomError UNKNOWN_NAME for a food in no table, or a form no table weighs, naming those printed
 */
export function densityFor(food: string, form: string | undefined): { name: string; density: BulkDensity } {
  const produce = findNamed(food, catalogue);
  const store = findNamed(food, stored);
  const [entry] = store;
  if (produce.length === 0 && entry !== undefined) {
    const density = storedDensity(entry, form);
    if (density !== undefined) return { name: entry.name, density };
    const printed = formsPrinted(entry.rows);
    fail(
      'UNKNOWN_NAME',
      'form',
      form,
      `a form weighed for ${entry.name}: ${printed.join(', ') || 'none, leave it out'}`,
    );
  }
  const row =
    produce.length === 1 ? (produce[0] as CatalogueRow) : lookUp(food, [...catalogue, ...stored], 'food', 'food');
  const found = findNamed(row.name, catalogue)[0] as CatalogueRow;
  const density = produceDensity(found, form === undefined ? undefined : findForm(form));
  if (density !== undefined) return { name: found.name, density };
  const numbers = numbersOf(found);
  const printed = formsPrinted(rawWeights.filter(({ ndb }) => numbers.includes(ndb)));
  fail(
    'UNKNOWN_NAME',
    form === undefined ? 'food' : 'form',
    form ?? food,
    printed.length > 0
      ? `a form weighed for ${found.name}: ${printed.join(', ')}`
      : `a food with a weight per measure; ${found.name} has none`,
  );
}
