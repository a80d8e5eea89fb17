/** The schemas of the tables of this module, and the constants by their id. */
import * as z from 'zod/mini';
import constantsJson from '../../data/solution/constants.json';
import type { Basis } from '../sources/basis';
import { forReaders, id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf, practiceBasis } from '../sources/table';

const points = () => z.array(z.tuple([z.number(), z.number()])).check(z.minLength(2));
const numbers = (least: number) => z.array(z.number()).check(z.minLength(least));
const within = (low: number, high: number) => z.number().check(z.gte(low), z.lte(high));

export const polynomialRow = () =>
  z.strictObject({ id: forReaders(id()), power: z.int(), coefficients: numbers(2), ...sourcedColumns() });
export const waterDensityRow = () =>
  z.strictObject({ id: forReaders(id()), numerator: numbers(6), denominator: numbers(2), ...sourcedColumns() });
export const indexRow = () =>
  z.strictObject({ id: forReaders(id()), brix: z.number(), nD20: within(1.33, 1.54), ...sourcedColumns() });
export const correctionRow = () =>
  z.strictObject({ id: forReaders(id()), temperature: z.number(), corrections: points(), ...sourcedColumns() });
export const solubilityRow = () =>
  z.strictObject({
    id: forReaders(id()),
    temperature: z.number(),
    perSolution: z.number(),
    perWater: z.number(),
    ...sourcedColumns(),
  });
export const solubilityEquationRow = () => z.strictObject({ id: id(), coefficients: numbers(5), ...sourcedColumns() });
export const browneRow = () =>
  z.strictObject({ id: forReaders(id()), brix: z.number(), rise: positive(), ...sourcedColumns() });
export const riseEquationRow = () =>
  z.strictObject({ id: id(), constants: z.record(z.string(), z.number()), range: text(), ...sourcedColumns() });
export const soluteRow = () =>
  z.strictObject({
    id: forReaders(id()),
    solute: text(),
    percent: within(0, 100),
    molality: forReaders(z.exactOptional(z.nullable(z.number()))),
    molarity: forReaders(z.exactOptional(z.nullable(z.number()))),
    density: within(0.78, 1.5),
    nD20: within(1.32, 1.54),
    freezingDepression: z.exactOptional(z.nullable(z.number())),
    viscosity: z.exactOptional(z.nullable(z.number())),
    ...sourcedColumns(),
  });
export const soluteNameRow = () =>
  z.strictObject({ id: id(), name: text(), names: z.array(text()), ...practiceColumns() });
export const constantRow = () => {
  const figure = { id: id(), what: text(), value: positive(), unit: text() };
  return z.union([
    z.strictObject({ ...figure, ...sourcedColumns() }),
    z.strictObject({ ...figure, ...practiceColumns() }),
  ]);
};

const constants: ReadonlyMap<string, RowOf<typeof constantRow>> = new Map(
  asTable<RowOf<typeof constantRow>>(constantsJson).rows.map((row) => [row.id, row]),
);
const constantOf = (name: string): RowOf<typeof constantRow> => {
  const row = constants.get(name);
  if (row === undefined) throw new Error(`no row of data/solution/constants.json has the id ${name}`);
  return row;
};
/** A figure of `data/solution/constants.json`. */
export const constant = (name: string): number => constantOf(name).value;
/** Its basis: `of` is the path of the answer's field. */
export function constantBasis(name: string, of: string): Basis {
  const row = constantOf(name);
  return row.obtained === 'common-practice' ? practiceBasis(of, row.what) : basisOf(row, of, row.what);
}
