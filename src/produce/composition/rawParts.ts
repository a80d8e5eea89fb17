/** What the tables print on what is in raw food, as ranges of shares. */
import { figuresFor } from '../../foods/figuresFor';
import type { Basis } from '../../sources/basis';
import type { Sourced } from '../../sources/table';
import { figure } from '../figures';
import { byNumber, isVegetable, isWide, kindsOf, numbersOf } from '../forms';
import { basisOfRows, mapSpan, median, type Span, spanOf, workedOut } from '../span';
import {
  belitzRows,
  blueberryRows,
  brixTables,
  citrusRows,
  mcgeeRows,
  type RawCompositionRow,
  rawCompositions,
} from './tables';

interface Figure {
  readonly row: Sourced;
  readonly value: number;
}

/** Parts of a food, each as a share of its weight; a part that no table has is left out. */
export interface Parts {
  readonly moisture: Span;
  readonly sugars?: Span;
  readonly solubleSolids?: Span;
  readonly acidShare?: Span;
  readonly fiber?: Span;
  readonly rows: readonly RawCompositionRow[];
  readonly basis: readonly Basis[];
}

/** Lowest and highest figure, at least the usual spread from the likely one, between 0 and 1. */
function range(likely: number, figures: readonly Figure[], spread: string): Span {
  const reach = Math.abs(likely) * figure(spread).likely;
  const { low, high } = spanOf(likely, [...figures.map(({ value }) => value), likely - reach, likely + reach]);
  return { low: Math.max(low, 0), likely, high: Math.min(high, 1) };
}

const asFigure =
  <Row extends Sourced>(value: (row: Row) => number) =>
  (row: Row): Figure => ({ row, value: value(row) / 100 });

const present = (rows: readonly RawCompositionRow[], key: 'sugars_g' | 'fiber_g'): Figure[] =>
  rows.filter((row) => row[key] !== null).map(asFigure((row) => row[key] as number));

/** The first food's figure; for a wide food that has none, the median of its kinds. */
const likelyOf = (figures: readonly Figure[], wide: boolean): number =>
  wide ? median(figures.map(({ value }) => value)) : (figures[0] as Figure).value;

/** Everything the tables print on what is in one food. */
function printedOn(food: string) {
  const own = new Set(kindsOf(food));
  const among = (craft: string) => new Set([...own, ...figuresFor(food, craft)]);
  const of = <Row extends { readonly food?: string }>(rows: readonly Row[], foods: ReadonlySet<string>): Row[] =>
    rows.filter((row) => row.food !== undefined && foods.has(row.food));
  // where one kind (sweet cherry) has a printed Brix, the Brix of the wider food (cherry) adds little
  const legal = [...brixTables.minimumUS, ...brixTables.minimumEU].filter(({ form }) => form === undefined);
  const average = brixTables.averageUS.filter(({ form }) => form === undefined);
  const brix = [...of(average, own), ...of(blueberryRows, own), ...of(legal, own)];
  return {
    sr: byNumber(rawCompositions, numbersOf(food, 'composition')),
    belitz: of(belitzRows, among('sugar-and-acid')),
    mcgee: of(mcgeeRows, among('sugar-and-acid')),
    brix: brix.length > 0 ? brix : of([...average, ...legal], among('brix')),
    cultivars: of(blueberryRows, own),
    citrus: of(citrusRows, own),
  };
}

/** Sugars make up most of what dissolves in a ripe fruit; where they do not (plantain, avocado) no Brix is worked out. */
const SUGARY = 0.6;

/** Soluble solids: printed Brix where there is one, else from the solids of a sweet fruit. */
function solubleSolids(
  food: string,
  printed: readonly (Sourced & { readonly degBrix: number })[],
  sr: readonly RawCompositionRow[],
): { readonly span: Span; readonly basis: Basis[] } | undefined {
  const figures = printed.map((row) => ({ row, value: row.degBrix / 100 }));
  if (figures.length > 0) {
    return {
      span: range(likelyOf(figures, isWide(food)), figures, 'soluble-solids-spread'),
      basis: basisOfRows(food, printed, 'solubleSolids', 'degrees Brix of the juice'),
    };
  }
  const solids = sr.flatMap(({ water_g, fat_g, fiber_g, sugars_g }) => {
    const dissolved = 100 - water_g - fat_g - (fiber_g ?? 0);
    return fiber_g !== null && sugars_g !== null && sugars_g >= SUGARY * dissolved ? [dissolved / 100] : [];
  });
  if (isVegetable(food) || solids.length === 0) return undefined;
  const over = figure('brix-over-solids');
  return {
    span: mapSpan(over, (each) => Math.min(each * median(solids), 1)),
    basis: [
      ...basisOfRows(food, sr, 'solubleSolids', 'solids, fiber and fat'),
      workedOut('solubleSolids', '(solids - fiber - fat) x Brix over it of the fruits that print both'),
    ],
  };
}

/** What is in raw food; nothing where the food tables have no row of it. */
export function rawParts(food: string): Parts | undefined {
  const wide = isWide(food);
  const { sr, belitz: tables, mcgee: others, brix, cultivars, citrus: juices } = printedOn(food);
  const [main] = sr;
  if (main === undefined) return undefined;
  const solids: Figure[] = [
    ...sr.map(asFigure((row) => 100 - row.water_g)),
    ...tables.map(asFigure((row) => row.dryMatter_pct)),
  ];
  const dry = range(likelyOf(solids.slice(0, sr.length), wide), solids, 'solids-spread');
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
  const fiber = present(sr, 'fiber_g');
  // whole-percent sugars of other tables can exceed what the carbohydrate beside them leaves (gooseberry)
  const room = printed.length > 0 ? 1 : (main.carbohydrate_g - (main.fiber_g ?? 0)) / 100;
  const soluble = solubleSolids(food, brix, sr);
  const said = (figures: readonly Figure[], of: string): Basis[] =>
    basisOfRows(
      food,
      figures.map(({ row }) => row),
      of,
    );
  const values = (figures: readonly Figure[]) => figures.map(({ value }) => value);
  return {
    moisture: { low: 1 - dry.high, likely: 1 - dry.likely, high: 1 - dry.low },
    ...(sweet.length === 0 ? {} : { sugars: range(Math.min(likelyOf(sweet, wide), room), sweet, 'sugars-spread') }),
    ...(soluble === undefined ? {} : { solubleSolids: soluble.span }),
    ...(sour.length === 0 ? {} : { acidShare: range(likelyOf(sour, wide), sour, 'acid-spread') }),
    ...(fiber.length === 0 ? {} : { fiber: spanOf(likelyOf(fiber, wide), values(fiber)) }),
    rows: sr,
    basis: [
      ...said(solids, 'moisture'),
      ...said(sweet, 'sugars'),
      ...(soluble?.basis ?? []),
      ...said(sour, 'acidShare'),
      ...said(fiber, 'fiber'),
      ...basisOfRows(food, sr, 'per100g'),
    ],
  };
}
