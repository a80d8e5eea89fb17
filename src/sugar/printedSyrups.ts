/** The printed syrups, for canning and for the freezer. */
import * as z from 'zod/mini';
import canningJson from '../../data/sugar/canning-syrups.json';
import freezingJson from '../../data/sugar/freezing-syrups.json';
import { fail } from '../errors/StillroomError';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { REFERENCE_TEMPERATURE } from '../solution/fields';
import { densityAt } from '../solution/sucroseDensity';
import { id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';
import { cupOf } from './sweeteners';

export const STRENGTHS = ['very light', 'light', 'medium', 'heavy', 'very heavy'] as const;
/** The names of the printed syrups. */
export type SyrupStrength = (typeof STRENGTHS)[number];

export const canningSyrupRow = () =>
  z.strictObject({
    id: id(),
    strength: z.enum(STRENGTHS),
    percent: positive(),
    water9Pints: positive(),
    sugar9Pints: positive(),
    water7Quarts: positive(),
    sugar7Quarts: positive(),
    packedIn: text(),
    ...sourcedColumns(),
  });
export const freezingSyrupRow = () =>
  z.strictObject({
    id: id(),
    strength: z.enum(STRENGTHS),
    percent: positive(),
    sugarCups: positive(),
    waterCups: positive(),
    yieldCups: positive(),
    ...sourcedColumns(),
  });
export type CanningSyrupRow = RowOf<typeof canningSyrupRow>;
export type FreezingSyrupRow = RowOf<typeof freezingSyrupRow>;
const canning = asTable<CanningSyrupRow>(canningJson).rows;
const freezing = asTable<FreezingSyrupRow>(freezingJson).rows;

/** The canning syrup of a strength. */
export const canningSyrup = (strength: SyrupStrength): CanningSyrupRow =>
  canning.find((row) => row.strength === strength) as CanningSyrupRow;
/** The freezing syrup of a strength. */
export const freezingSyrup = (strength: SyrupStrength): FreezingSyrupRow =>
  freezing.find((row) => row.strength === strength) as FreezingSyrupRow;

/** The freezing syrup of a printed percentage. */
export function syrupOfPercent(percent: number): FreezingSyrupRow {
  const row = freezing.find((entry) => entry.percent === percent);
  const known = freezing.map((entry) => entry.percent).join(', ');
  return row ?? fail('UNKNOWN_NAME', 'percent', percent, `a printed percentage: ${known}`);
}

/** A printed freezing syrup scaled to a volume, in cups. */
export const scaleSyrup = (row: FreezingSyrupRow, made: Quantity<'volume'>) => {
  const batches = valueIn(made, 'cup') / row.yieldCups;
  return {
    sugar: quantityIn<'volume'>(row.sugarCups * batches, 'cup', 'cup'),
    water: quantityIn<'volume'>(row.waterCups * batches, 'cup', 'cup'),
  };
};

/** mL in a US cup: exact, 231 in3 / 16. */
export const ML_PER_CUP = 236.5882365;
/** Grams of water in a US cup at 20 degC. */
export const CUP_OF_WATER = (densityAt(0, REFERENCE_TEMPERATURE) / 1000) * ML_PER_CUP;

/** Degrees Brix of cups of sugar stirred into cups of water. */
export function brixOfCups(sugar: number, water: number): number {
  const grams = sugar * cupOf('sugar');
  return (100 * grams) / (grams + water * CUP_OF_WATER);
}
