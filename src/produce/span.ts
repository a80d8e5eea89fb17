import { nameOf } from '../foods/tables';
import { quantityIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Dimension, Unit } from '../quantity/units';
import type { Basis, Caution } from '../sources/basis';
import { basisOf, type Sourced } from '../sources/table';
import { caution } from './cautions';

/** A range of plain numbers: shares, or figures in one unit that the field's name says. */
export type Span = Range<number>;

/** The lowest and highest of some figures around the likely one. */
export const spanOf = (likely: number, figures: readonly number[]): Span => ({
  low: Math.min(likely, ...figures),
  likely,
  high: Math.max(likely, ...figures),
});

/** Takes the noise of doubles off a share: 0.9099999999999999 is 0.91. */
export const tidy = (share: number): number => Math.round(share * 1e12) / 1e12;

/** Applies a rising function to all three ends. */
export const mapSpan = ({ low, likely, high }: Span, change: (value: number) => number): Span => ({
  low: change(low),
  likely: change(likely),
  high: change(high),
});

/** Gives three figures of one unit back as quantities of another. */
export const spanIn = <D extends Dimension>(span: Span, from: Unit<D>, to: Unit<D>): Range<Quantity<D>> => ({
  low: quantityIn(span.low, from, to),
  likely: quantityIn(span.likely, from, to),
  high: quantityIn(span.high, from, to),
});

/** The middle of a list of numbers, the mean of the two middle ones where it is even; the list is not empty. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(middle)] as number) + (sorted[Math.ceil(middle)] as number)) / 2;
}

/** The caution that belongs to figures from memory, where any is. */
export const memoryCaution = (rows: readonly Sourced[]): Caution[] =>
  rows.some(({ obtained }) => obtained === 'memory') ? [caution('recalled')] : [];

/** A line of basis for what is ours: arithmetic over published rows. */
export const workedOut = (of: string, note: string): Basis => ({ of, kind: 'derived', note });

/** A row of a table that names one food. */
export type FoodRow = Sourced & { readonly food?: string };

/** The basis lines of the rows that one field rests on; each names the food that its figure is for, where it is another. */
export const basisOfRows = (food: string, rows: readonly Sourced[], of: string, note?: string): Basis[] =>
  rows.map((row) => {
    const line = basisOf(row, of, note);
    const { food: other, foods } = row as { readonly food?: string; readonly foods?: readonly string[] };
    const printed = other ?? (foods === undefined || foods.includes(food) ? undefined : foods[0]);
    return printed === undefined || printed === food ? line : { ...line, food: nameOf(printed) };
  });
