import canning from '../../../data/produce/canning-yields.json';
import customary from '../../../data/produce/containers-customary.json';
import fruit from '../../../data/produce/containers-fruit.json';
import pounds from '../../../data/produce/pounds-per-unit.json';
import { asTable, type Sourced } from '../../sources/table';
import { type CatalogueRow, namesAbove, namesBelow } from '../catalogue';
import type { Form } from './forms';
import { median, type Span, spanOf } from './span';

export interface CanningRow extends Sourced {
  readonly food: string;
  /** Trade names the row holds for; none for a mixture. */
  readonly produce: readonly string[];
  readonly forms: readonly string[];
  readonly lbPer7Quarts?: number;
  readonly lbPer7QuartsRange?: readonly [number, number];
  readonly lbPer9Pints?: number;
  readonly lbPer9PintsRange?: readonly [number, number];
  readonly lbPer9HalfPints?: number;
  readonly lbPerQuart?: number;
  readonly lbPerQuartMax?: number;
  readonly lbPerPint?: number;
  readonly container?: string;
  readonly containerLb?: number;
  readonly containerJars?: readonly [number, number];
  readonly containerJar?: 'quart' | 'pint';
}
/** A row that prints quarts from a container, or pounds a quart, as low and high. */
export interface QuartsRow extends Sourced {
  readonly produce: string;
  readonly forms?: readonly string[];
  readonly container: string;
  readonly lb: readonly [number, number];
  readonly quarts?: readonly [number, number];
  readonly lbPerQuart?: readonly [number, number];
}
export interface ContainerFruitRow extends Sourced {
  readonly produce: string;
  readonly container: string;
  readonly lb: readonly [number, number];
  readonly qt_canned?: readonly [number, number];
  readonly sauce_qt_canned?: readonly [number, number];
  readonly sauce_qt_frozen?: readonly [number, number];
  readonly pt_frozen?: readonly [number, number];
  readonly juice_qt?: readonly [number, number];
}
export interface PoundsRow extends Sourced {
  readonly produce: string;
  readonly lbPerQtCanned?: readonly [number, number];
  readonly lbPerPtFrozen?: readonly [number, number];
  readonly lbPerCup?: number;
  readonly cupForm?: string;
}

export const canningRows = asTable<CanningRow>(canning).rows;
export const customaryRows = asTable<QuartsRow>(customary).rows;
export const containerFruitRows = asTable<ContainerFruitRow>(fruit).rows;
export const poundsRows = asTable<PoundsRow>(pounds).rows;

/** What the tables print on the raw produce that jars of one form take. */
export interface PrintedNeed {
  /** The row of the canning guide, where it has one. */
  readonly guide?: CanningRow;
  /** Pounds per quart over all tables. */
  readonly lbPerQuart: Span;
  readonly rows: readonly Sourced[];
}

/**
 * How far the printed low and high are from the average, as a share of it: 0.19, the median over the guide's
 * rows that print a range of jars for a container (checked in the tests). Used where no low and high are printed.
 */
export const USUAL_JAR_SPREAD = 0.19;

const holdsFor = (forms: readonly string[] | undefined, form: Form): boolean =>
  forms !== undefined && (forms.includes(form.name) || forms.includes(form.class));

/** Pounds a quart that one row of low and high figures gives. */
function poundsPerQuart(row: QuartsRow): number[] {
  const { lb, quarts, lbPerQuart = [] } = row;
  if (quarts === undefined) return [...lbPerQuart];
  // a light container gives the fewer quarts: its middle weight over either end
  const middle = (lb[0] + lb[1]) / 2;
  return [...lbPerQuart, middle / quarts[1], middle / quarts[0]];
}

const guideFigures = (row: CanningRow): number[] => {
  const perQuart = row.containerJar === 'pint' ? 2 : 1;
  const { containerLb, containerJars } = row;
  return [
    row.lbPerQuart,
    row.lbPerQuartMax,
    row.lbPer7Quarts && row.lbPer7Quarts / 7,
    ...(row.lbPer7QuartsRange ?? []).map((lb) => lb / 7),
    row.lbPerPint && row.lbPerPint * 2,
    ...(containerLb && containerJars ? containerJars.map((jars) => (containerLb / jars) * perQuart) : []),
  ].filter((lb) => lb !== undefined);
};

/** The guide's own figure for one quart: the printed average, else the load's, else twice the pint's. */
export function guideQuart(row: CanningRow): number {
  const { lbPerQuart, lbPerQuartMax, lbPer7Quarts, lbPer7QuartsRange, lbPerPint, lbPer9Pints } = row;
  if (lbPerQuart !== undefined) return (lbPerQuart + (lbPerQuartMax ?? lbPerQuart)) / 2;
  if (lbPer7Quarts !== undefined) return lbPer7Quarts / 7;
  if (lbPer7QuartsRange !== undefined) return (lbPer7QuartsRange[0] + lbPer7QuartsRange[1]) / 14;
  return 2 * (lbPerPint ?? (lbPer9Pints as number) / 9);
}

/** Rows of a table that print low and high figures for this produce and form, in its own name before its group's. */
function quartsRows(names: readonly string[], form: Form): QuartsRow[] {
  const juice = containerFruitRows.flatMap((row) =>
    row.juice_qt === undefined ? [] : [{ ...row, forms: ['juice'], quarts: row.juice_qt }],
  );
  return [...customaryRows, ...juice].filter(
    (row) => names.includes(row.produce) && holdsFor(row.forms, form) && poundsPerQuart(row).length > 0,
  );
}

const known = new WeakMap<CatalogueRow, Map<string, PrintedNeed | undefined>>();

/** What the tables print for this produce in jars in this form, gathered once; nothing where none does. */
export function printedNeed(produce: CatalogueRow, form: Form): PrintedNeed | undefined {
  const needs = known.get(produce) ?? new Map<string, PrintedNeed | undefined>();
  known.set(produce, needs);
  if (!needs.has(form.name)) needs.set(form.name, gatherNeed(produce, form));
  return needs.get(form.name);
}

function gatherNeed(produce: CatalogueRow, form: Form): PrintedNeed | undefined {
  const above = namesAbove(produce);
  const names = [...above, ...namesBelow(produce)];
  const guides = canningRows.filter(
    (row) => row.produce.some((name) => names.includes(name)) && holdsFor(row.forms, form),
  );
  const rank = (row: CanningRow): number =>
    Math.min(...row.produce.map((name) => names.indexOf(name)).filter((at) => at >= 0)) +
    (row.forms.includes(form.name) ? 0 : 0.5);
  const [guide] = [...guides].sort((a, b) => rank(a) - rank(b));
  const others = quartsRows(names, form);
  const perUnit = poundsRows.filter(
    (row) =>
      names.includes(row.produce) &&
      row.lbPerQtCanned !== undefined &&
      (form.class === 'cut' || form.class === 'whole'),
  );
  const figures = [
    ...(guide === undefined ? [] : guideFigures(guide)),
    ...others.flatMap(poundsPerQuart),
    ...(guide === undefined ? [] : perUnit.flatMap((row) => row.lbPerQtCanned ?? [])),
  ];
  const rows = [...(guide === undefined ? [] : [guide]), ...others, ...(guide === undefined ? [] : perUnit)];
  if (rows.length === 0) return undefined;
  const likely = guide === undefined ? median(figures) : guideQuart(guide);
  const printsRange = rows.length > 1 || guide?.containerJars !== undefined || guide?.lbPer7QuartsRange !== undefined;
  const usual = [likely * (1 - USUAL_JAR_SPREAD), likely * (1 + USUAL_JAR_SPREAD)];
  const ends = printsRange ? figures : [...figures, ...usual];
  return { ...(guide === undefined ? {} : { guide }), lbPerQuart: spanOf(likely, ends), rows };
}
