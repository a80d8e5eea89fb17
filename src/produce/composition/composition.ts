import type * as z from 'zod/mini';
import blueberry from '../../../data/produce/brix-blueberry.json';
import minimumEU from '../../../data/produce/brix-eu-minimum.json';
import averageUS from '../../../data/produce/brix-us-average.json';
import minimumUS from '../../../data/produce/brix-us-minimum.json';
import citrus from '../../../data/produce/citrus-juice-acid.json';
import compositionJson from '../../../data/produce/composition-raw.json';
import belitz from '../../../data/produce/sugar-acid-belitz.json';
import mcgee from '../../../data/produce/sugar-acid-mcgee.json';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { fields, readInput } from '../../quantity/fields';
import type { Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { type CatalogueRow, findProduce, namesAbove, namesBelow, numbersOf } from '../catalogue';
import { caution } from '../cautions';
import { produceField } from '../yields/readyFromRaw';
import { mapSpan, median, type Span, spanOf, workedOut } from '../yields/span';

const schema = fields({ produce: produceField });
export type CompositionInput = z.input<typeof schema>;

/** Proximate parts of 100 g; null where the release has no figure. */
export interface ProximateRow extends Sourced {
  readonly ndb: string;
  readonly description: string;
  readonly water_g: number;
  readonly energy_kcal: number;
  readonly protein_g: number;
  readonly fat_g: number;
  readonly carbohydrate_g: number;
  readonly fibre_g: number | null;
  readonly sugars_g: number | null;
  readonly ash_g: number;
}
export interface RawCompositionRow extends ProximateRow {
  readonly produce: string;
}
export interface BrixRow extends Sourced {
  /** As printed. */
  readonly food: string;
  readonly produce: string | null;
  readonly degBrix: number;
  readonly puree?: boolean;
}
interface BlueberryRow extends Sourced {
  readonly produce: string;
  readonly cultivar: string;
  readonly degBrix: number;
  readonly titratableAcidity_pct: number;
}
interface AcidRow extends Sourced {
  readonly produce: string;
  readonly anhydrousCitricAcid_pct: number;
}
export interface BelitzRow extends Sourced {
  readonly produce: string;
  readonly dryMatter_pct: number;
  readonly totalSugar_pct: number;
  readonly titratableAcidity_pct: number;
}
export interface McGeeRow extends Sourced {
  readonly produce: string;
  readonly sugar_pct: number;
  readonly acid_pct: number;
}

export const compositionRows = asTable<RawCompositionRow>(compositionJson).rows;
export const brixTables = {
  averageUS: asTable<BrixRow>(averageUS).rows,
  minimumUS: asTable<BrixRow>(minimumUS).rows,
  minimumEU: asTable<BrixRow>(minimumEU).rows,
};
const blueberryRows = asTable<BlueberryRow>(blueberry).rows;
const citrusRows = asTable<AcidRow>(citrus).rows;
export const belitzRows = asTable<BelitzRow>(belitz).rows;
export const mcgeeRows = asTable<McGeeRow>(mcgee).rows;

/**
 * How far apart two sources usually are on one fruit, as a share of the figure: the medians over the fruits that
 * two or more tables here print (checked in the tests). The least distance of the ends from the likely figure.
 */
export const USUAL_COMPOSITION_SPREAD = { solids: 0.09, sugars: 0.17, solubleSolids: 0.1, acid: 0.33 } as const;

export interface Composition {
  readonly produce: string;
  /** Water over weight of the raw edible part, 0 to 1. */
  readonly water: Range<number>;
  /** Total sugars over weight, 0 to 1; none where no table has them. */
  readonly sugars?: Range<number>;
  /** Soluble solids over weight, 0 to 1: degrees Brix of the juice / 100. */
  readonly solubleSolids?: Range<number>;
  /** Titratable acid over weight, 0 to 1, as the fruit's main acid. */
  readonly acid?: Range<number>;
  /** Dietary fibre over weight, 0 to 1: what is insoluble for the most part. */
  readonly fibre?: Range<number>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

interface Figure {
  readonly row: Sourced;
  readonly value: number;
}

/** Lowest and highest figure, at least the usual spread from the likely one, between 0 and 1. */
function range(likely: number, figures: readonly Figure[], spread: number): Span {
  const reach = Math.abs(likely) * spread;
  const { low, high } = spanOf(likely, [...figures.map(({ value }) => value), likely - reach, likely + reach]);
  return { low: Math.max(low, 0), likely, high: Math.min(high, 1) };
}

/** Everything the tables print on what is in one produce. */
function figuresOf(produce: CatalogueRow) {
  const numbers = numbersOf(produce);
  const own = new Set(namesBelow(produce));
  const names = new Set([...namesAbove(produce), ...own]);
  const sr = compositionRows
    .filter(({ ndb }) => numbers.includes(ndb))
    .sort((a, b) => numbers.indexOf(a.ndb) - numbers.indexOf(b.ndb));
  const named = <Row extends { readonly produce: string | null }>(rows: readonly Row[], among = names): Row[] =>
    rows.filter((row) => row.produce !== null && among.has(row.produce));
  // a wider name's Brix (cherry) says little of one kind (sweet cherry) that has a figure of its own
  const printed = [...brixTables.averageUS, ...brixTables.minimumUS, ...brixTables.minimumEU];
  const brix = [
    ...named(brixTables.averageUS, own),
    ...named(blueberryRows, own),
    ...named(printed.slice(brixTables.averageUS.length), own),
  ];
  return {
    sr,
    belitz: named(belitzRows),
    mcgee: named(mcgeeRows),
    brix: brix.length > 0 ? brix : named(printed),
    cultivars: named(blueberryRows, own),
    citrus: named(citrusRows, own),
  };
}

const asFigure =
  <Row extends Sourced>(value: (row: Row) => number) =>
  (row: Row): Figure => ({ row, value: value(row) / 100 });

const present = (rows: readonly RawCompositionRow[], key: 'sugars_g' | 'fibre_g'): Figure[] =>
  rows.filter((row) => row[key] !== null).map(asFigure((row) => row[key] as number));

/**
 * Brix over (solids less fibre and fat) for the fruits that print both: the middle, and the ends of the middle
 * four fifths (checked in the tests). The juice is richer than the whole fruit, and some of the rest is insoluble.
 */
export const BRIX_OVER_SOLIDS: Span = { low: 0.9, likely: 1.14, high: 1.28 };

/** Sugars make up most of what dissolves in a ripe fruit; where they do not (plantain, avocado) no Brix is worked out. */
const SUGARY = 0.6;

/** Soluble solids: printed Brix where there is one, else from the solids of a sweet fruit. */
function solubleSolids(
  produce: CatalogueRow,
  printed: readonly (Sourced & { degBrix: number })[],
  sr: readonly RawCompositionRow[],
): { span: Span; basis: Basis[] } | undefined {
  const figures = printed.map((row) => ({ row, value: row.degBrix / 100 }));
  if (figures.length > 0) {
    const likely = likelyOf(figures, produce.ndb.length === 0);
    const basis = printed.map((row) => basisOf(row, 'soluble solids of the juice'));
    return { span: range(likely, figures, USUAL_COMPOSITION_SPREAD.solubleSolids), basis };
  }
  const solids = sr.flatMap(({ water_g, fat_g, fibre_g, sugars_g }) => {
    const dissolved = 100 - water_g - fat_g - (fibre_g ?? 0);
    return fibre_g !== null && sugars_g !== null && sugars_g >= SUGARY * dissolved ? [dissolved / 100] : [];
  });
  if (produce.kind === 'vegetable' || solids.length === 0) return undefined;
  const basis = [
    ...sr.map((row) => basisOf(row, 'solids, fibre and fat')),
    workedOut('soluble solids', '(solids - fibre - fat) x Brix over it of the fruits that print both'),
  ];
  return { span: mapSpan(BRIX_OVER_SOLIDS, (ratio) => Math.min(ratio * median(solids), 1)), basis };
}

/** The first food's figure; of a group without one of its own, the middle of its members'. */
const likelyOf = (figures: readonly Figure[], group: boolean): number =>
  group ? median(figures.map(({ value }) => value)) : (figures[0] as Figure).value;

/**
 * What is in raw produce: water, sugars, soluble solids and acid as shares of the weight of the edible part.
 *
 * Water is that of the food tables, its range over the varieties listed and the other tables' dry matter. Soluble
 * solids are the average Brix of the natural juice (customs tables), else the legal least, which is a low figure;
 * a sweet fruit without either takes its solids less fibre and fat, and other produce gives none, for starch is no
 * soluble solid. Brix is of the juice: the whole fruit, with its fibre, has a few hundredths less.
 * Ripeness and season move all of it: a refractometer and a scale beat any table.
 *
 * @param input.produce - any name of a fruit or vegetable
 * @returns ranges from 0 to 1; a part that no table has is left out
 * @throws StillroomError UNKNOWN_NAME for produce in no table
 *
 * Sources: USDA SR28 (NUT_DATA); 19 CFR 151.91; 21 CFR 101.30; Directive 2001/112/EC Annex V; food chemistry tables.
 *
 * @example
 * ```ts
 * import { composition } from 'stillroom/produce';
 *
 * const { water, sugars, solubleSolids } = composition({ produce: 'peach' });
 * water.likely; // ≈ 0.8887
 * sugars?.likely; // ≈ 0.0839
 * solubleSolids?.likely; // ≈ 0.118
 * ```
 */
export function composition(input: CompositionInput): Composition {
  return answer(compositionOf(findProduce(readInput(schema, input).produce)));
}

/** `composition` of a catalogue row. */
export function compositionOf(produce: CatalogueRow): Composition {
  const group = produce.ndb.length === 0;
  const { sr, belitz: tables, mcgee: others, brix, cultivars, citrus: juices } = figuresOf(produce);
  const spread = USUAL_COMPOSITION_SPREAD;
  if (sr.length === 0) fail('UNKNOWN_NAME', 'produce', produce.name, 'produce with a composition in the food tables');
  const solids: Figure[] = [
    ...sr.map(asFigure((row) => 100 - row.water_g)),
    ...tables.map(asFigure((row) => row.dryMatter_pct)),
  ];
  const dry = range(likelyOf(solids.slice(0, sr.length), group), solids, spread.solids);
  const printed = present(sr, 'sugars_g');
  const sweet: Figure[] = [
    ...printed,
    ...tables.map(asFigure((row) => row.totalSugar_pct)),
    ...others.map(asFigure((row) => row.sugar_pct)),
  ];
  const sour: Figure[] = [
    ...tables.map(asFigure((row) => row.titratableAcidity_pct)),
    ...cultivars.map(asFigure((row) => row.titratableAcidity_pct)),
    ...others.map(asFigure((row) => row.acid_pct)),
    ...juices.map(asFigure((row) => row.anhydrousCitricAcid_pct)),
  ];
  const fibre = present(sr, 'fibre_g');
  // whole-percent sugars of other tables can exceed what the carbohydrate beside them leaves (gooseberry)
  const [main] = sr as [RawCompositionRow];
  const room = printed.length > 0 ? 1 : (main.carbohydrate_g - (main.fibre_g ?? 0)) / 100;
  const soluble = solubleSolids(produce, brix, sr);
  const said = (figures: readonly Figure[], what: string): Basis[] => figures.map(({ row }) => basisOf(row, what));
  return {
    produce: produce.name,
    water: { low: 1 - dry.high, likely: 1 - dry.likely, high: 1 - dry.low },
    ...(sweet.length === 0 ? {} : { sugars: range(Math.min(likelyOf(sweet, group), room), sweet, spread.sugars) }),
    ...(soluble === undefined ? {} : { solubleSolids: soluble.span }),
    ...(sour.length === 0 ? {} : { acid: range(likelyOf(sour, group), sour, spread.acid) }),
    ...(fibre.length === 0
      ? {}
      : {
          fibre: spanOf(
            likelyOf(fibre, group),
            fibre.map(({ value }) => value),
          ),
        }),
    basis: joinBasis(
      said(solids, 'water'),
      said(sweet, 'sugars'),
      soluble?.basis ?? [],
      said(sour, 'acid'),
      said(fibre, 'fibre'),
    ),
    cautions: [caution('estimate')],
  };
}
