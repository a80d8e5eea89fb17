import type { Sourced } from '../../sources/table';
import { figure } from '../figures';
import { type Form, kindsOf, servesFor } from '../forms';
import { median, type Span, spanOf } from '../span';
import { type CanningRow, canningRows, containerFruitRows, customaryRows, poundsRows, type QuartsRow } from './tables';

/** What the tables print on the raw food that jars of one form take. */
export interface PrintedNeed {
  /** The row of the canning guide, where it has one. */
  readonly guide?: CanningRow;
  /** Pounds per quart over all tables. */
  readonly lbPerQuart: Span;
  readonly rows: readonly Sourced[];
}

/** Whether a row is for a form: it names it, or one that behaves as it does, or any cut of the food. */
const holdsFor = (row: Pick<QuartsRow, 'forms' | 'anyCut'>, form: Form): boolean =>
  [form.id, form.as, form.behaves].some((each) => row.forms?.includes(each)) ||
  (row.anyCut === true && form.behaves === 'cut');

type PrintedQuarts = Pick<QuartsRow, 'food' | 'forms' | 'anyCut' | 'lb' | 'quarts' | 'lbPerQuart'> & Sourced;

/** Pounds a quart that one row of low and high figures gives. */
function poundsPerQuart(row: PrintedQuarts): number[] {
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

/** Rows of a table that print low and high figures for these foods and this form. */
function quartsRows(foods: readonly string[], form: Form): PrintedQuarts[] {
  const juice = containerFruitRows.flatMap((row): PrintedQuarts[] =>
    row.juice_qt === undefined ? [] : [{ ...row, forms: ['juice'], quarts: row.juice_qt }],
  );
  return [...customaryRows, ...juice].filter(
    (row) => foods.includes(row.food) && holdsFor(row, form) && poundsPerQuart(row).length > 0,
  );
}

/** What the tables print for this food in jars in this form; nothing where none does. */
export function printedNeed(food: string, form: Form): PrintedNeed | undefined {
  const serves = servesFor(food, 'yields');
  const own = kindsOf(food);
  // a row in the food's own name comes first, then a wider food's, then that of a kind
  const foods = [food, ...serves.filter((each) => !own.includes(each)), ...own.slice(1)];
  const guides = canningRows.filter((row) => row.foods.some((each) => foods.includes(each)) && holdsFor(row, form));
  const rank = (row: CanningRow): number =>
    Math.min(...row.foods.map((each) => foods.indexOf(each)).filter((at) => at >= 0)) +
    (row.forms.includes(form.as) ? 0 : 0.5);
  const [guide] = [...guides].sort((a, b) => rank(a) - rank(b));
  const others = quartsRows(foods, form);
  const perUnit = poundsRows.filter(
    (row) =>
      foods.includes(row.food) &&
      row.lbPerQtCanned !== undefined &&
      (form.behaves === 'cut' || form.behaves === 'whole'),
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
  const { likely: usual } = figure('jar-spread');
  const ends = printsRange ? figures : [...figures, likely * (1 - usual), likely * (1 + usual)];
  return { ...(guide === undefined ? {} : { guide }), lbPerQuart: spanOf(likely, ends), rows };
}
