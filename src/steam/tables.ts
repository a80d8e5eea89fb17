/** The schemas of the tables of this module, and the constants of air by their id. */
import * as z from 'zod/mini';
import json from '../../data/steam/air-constants.json';
import { forReaders, id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

const natural = (low: number, high: number) => z.int().check(z.gte(low), z.lte(high));

export const atmosphereRow = () =>
  z.strictObject({
    id: forReaders(id()),
    symbol: text(),
    value: z.number(),
    unit: z.string(),
    meaning: forReaders(text()),
    ...sourcedColumns(),
  });
export const saturationRow = () =>
  z.strictObject({ id: forReaders(id()), i: natural(1, 10), n: z.number(), ...sourcedColumns() });
export const liquidRow = () =>
  z.strictObject({
    id: forReaders(id()),
    i: natural(5, 10),
    a: z.number(),
    /** None in the first row, whose `a` has no power. */
    n: z.nullable(natural(1, 100)),
    b: z.number(),
    m: natural(1, 100),
    ...sourcedColumns(),
  });
export const saturatedRow = () =>
  z.strictObject({
    id: forReaders(id()),
    equation: z.enum(['vapor pressure', 'liquid density', 'vapor density']),
    coefficient: z.number(),
    sixths: natural(1, 1000),
    ...sourcedColumns(),
  });
export const moistAirRow = () =>
  z.strictObject({
    id: forReaders(id()),
    term: z.enum(['1/T', '1', 'T', 'T^2', 'T^3', 'T^4', 'ln(T)']),
    overIce: z.number(),
    overLiquid: z.number(),
    ...sourcedColumns(),
  });
export const airConstantRow = () =>
  z.strictObject({ id: id(), what: forReaders(text()), value: positive(), unit: text(), ...sourcedColumns() });

const constants = asTable<RowOf<typeof airConstantRow>>(json).rows;
/** A figure of `data/steam/air-constants.json`. */
export function airConstant(name: string): number {
  const row = constants.find((each) => each.id === name);
  if (row === undefined) throw new Error(`no row of data/steam/air-constants.json has the id ${name}`);
  return row.value;
}
