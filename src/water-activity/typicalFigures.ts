/** The water activities that tables print for a food as it is usually found. Internal: `waterActivityOf` answers them. */
import foodsJson from '../../data/water-activity/food-water-activity.json';
import type { FoundFood } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { isWithin } from '../foods/isWithin';
import { nameOf } from '../foods/tables';
import type { Basis } from '../sources/basis';
import { asTable, basisOf } from '../sources/table';
import type { Limits } from './isothermTypes';
import type { TableRow } from './schemas';

export type FoodActivityRow = TableRow<'food-water-activity'>;
export const foodActivityRows = asTable<FoodActivityRow>(foodsJson).rows;

/** One printed figure. */
export interface TypicalFigure {
  /** The food in the words of the page. */
  readonly printed: string;
  /** Lowest and highest water activity as printed; an open end is 0 or 1. */
  readonly waterActivity: Limits;
  /** Lowest and highest moisture it goes with, wet basis, 0 to 1, where printed. */
  readonly moisture?: Limits;
}
/** What a food is usually found at. */
export interface TypicalFigures {
  /** Lowest and highest water activity of the printed figures; an open end is 0 or 1. */
  readonly waterActivity: Limits;
  /** Lowest and highest moisture they go with, wet basis, 0 to 1, where every figure has one. */
  readonly moisture?: Limits;
  /** Each printed figure. */
  readonly figures: readonly TypicalFigure[];
}

const isOf = (row: FoodActivityRow, id: string): boolean => row.food === id || (row.foods ?? []).includes(id);

/**
 * The rows of a food in a form, or of the first wider food that has any. A form must be the row's own; where none is
 * asked for, rows that name no form go before all others. Figures that were read go before recalled ones.
 */
function rowsFor({ id }: FoundFood, wanted: string | undefined) {
  for (const each of figuresFor(id, 'water-activity')) {
    const own = foodActivityRows.filter((row) => isOf(row, each));
    const plain = own.filter(({ form: has }) => has === undefined);
    const found =
      wanted === undefined
        ? plain.length > 0
          ? plain
          : own
        : own.filter(({ form: has }) => has !== undefined && isWithin(has, wanted));
    const read = found.filter(({ obtained }) => obtained !== 'memory');
    if (found.length > 0) return { served: each, rows: read.length > 0 ? read : found };
  }
  return undefined;
}

const span = (pairs: readonly Limits[]): Limits => ({
  low: Math.min(...pairs.map(({ low }) => low)),
  high: Math.max(...pairs.map(({ high }) => high)),
});

const shown = ({ printed, low, high, moisture_pct }: FoodActivityRow): TypicalFigure => ({
  printed,
  waterActivity: { low, high },
  ...(moisture_pct === undefined ? {} : { moisture: { low: moisture_pct[0] / 100, high: moisture_pct[1] / 100 } }),
});

/** What a food in a form is usually found at, with the lines behind it; nothing where no table prints it. */
export function typicalFigures(asked: FoundFood, wanted: string | undefined) {
  const found = rowsFor(asked, wanted);
  if (found === undefined) return undefined;
  const { served, rows } = found;
  const figures = rows.map(shown);
  const moistures = figures.flatMap(({ moisture }) => moisture ?? []);
  const lent = served === asked.id ? {} : { food: nameOf(served) };
  const typical: TypicalFigures = {
    waterActivity: span(figures.map(({ waterActivity }) => waterActivity)),
    ...(moistures.length < figures.length ? {} : { moisture: span(moistures) }),
    figures,
  };
  const basis: Basis[] = rows.map((row) => ({
    ...basisOf(row, 'typical.waterActivity', `water activity of ${row.printed}`),
    ...lent,
  }));
  return { typical, basis, recalled: rows.some(({ obtained }) => obtained === 'memory') };
}
