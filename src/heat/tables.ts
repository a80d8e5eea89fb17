/** The tables of heat: figures by their id, and the ranges of common practice. */
import * as z from 'zod/mini';
import figuresJson from '../../data/heat/figures.json';
import practiceJson from '../../data/heat/practice.json';
import type { Quantity, Range } from '../quantity/types';
import type { Unit } from '../quantity/units';
import { type Basis, measured } from '../sources/basis';
import { forReaders, id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf, practiceBasis } from '../sources/table';

export const figureRow = () =>
  z.strictObject({
    id: id(),
    what: text(),
    value: positive(),
    unit: z.enum(['kJ/(kg K)', 'kJ/kg', 'kWh', 'MJ', 'BTU/gallon', 'degC', 'degF', 'share']),
    ...sourcedColumns(),
  });
export const practiceRow = () =>
  z.strictObject({
    id: id(),
    what: text(),
    low: z.number(),
    likely: z.number(),
    high: z.number(),
    unit: z.enum(['kJ/(kg K)', 'kg/L', 'degC', 'share']),
    ...practiceColumns(),
  });
const pair = () => z.tuple([z.number(), z.number()]);
export const iceFormulaRow = () =>
  z.strictObject({
    id: id(),
    what: forReaders(text()),
    formula: text(),
    Tt_K: z.exactOptional(positive()),
    pt_Pa: z.exactOptional(positive()),
    a: z.exactOptional(z.array(z.number())),
    b: z.exactOptional(z.array(z.number())),
    scale_K: z.exactOptional(positive()),
    molarMass: z.exactOptional(positive()),
    range_K: z.exactOptional(pair()),
    check: z.exactOptional(z.strictObject({ T_K: z.number(), p_Pa: z.number() })),
    ...sourcedColumns(),
  });

/** The row of this id; ids come from our own code, so a missing one is a mistake that every test meets. */
export function byId<Row extends { readonly id: string }>(rows: readonly Row[], id: string): Row {
  const row = rows.find((each) => each.id === id);
  if (row === undefined) throw new Error(`no row of data/heat has the id ${id}`);
  return row;
}

const figures = asTable<RowOf<typeof figureRow>>(figuresJson).rows;
const practices = asTable<RowOf<typeof practiceRow>>(practiceJson).rows;

/** A figure of `data/heat/figures.json`. */
export const figure = (id: string): RowOf<typeof figureRow> => byId(figures, id);
/** A figure that is a temperature, as a quantity. */
export const temperatureFigure = (id: string): Quantity<'temperature'> => {
  const { value, unit } = figure(id);
  return { value, unit: unit as Unit<'temperature'> };
};
/** The basis of a figure: `of` is the path of the answer's field. */
export const figureBasis = (id: string, of: string): Basis => basisOf(figure(id), of, figure(id).what);

/** What people commonly find, of `data/heat/practice.json`. */
export function usual(id: string): Range<number> {
  const { low, likely, high } = byId(practices, id);
  return { low, likely, high };
}
/** The share given, or the one that people commonly find. */
export const shareOr = (given: number | undefined, id: string): Range<number> =>
  given === undefined ? usual(id) : { low: given, likely: given, high: given };
/** The basis of such a share. */
export const shareBasis = (given: number | undefined, id: string, of: string): Basis => {
  const { what } = byId(practices, id);
  return given === undefined ? practiceBasis(of, what) : measured(of, what);
};
