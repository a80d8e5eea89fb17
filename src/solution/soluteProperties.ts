import type * as z from 'zod/mini';
import json from '../../data/solution/solute-properties.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fail } from '../errors/StillroomError';
import { fields, name, readInput, share } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { between, type Point } from './table';

/** One printed row: an aqueous solution at 20 degC. */
export interface SoluteRow extends Sourced {
  readonly solute: string;
  /** Percent by mass. */
  readonly percent: number;
  /** mol in a kg of water. */
  readonly molality: number | null;
  /** mol in a litre. */
  readonly molarity: number | null;
  /** g/mL at 20 degC. */
  readonly density: number;
  /** Refractive index at 589 nm, 20 degC. */
  readonly nD20: number;
  /** degC below 0 at which ice begins to form. */
  readonly freezingDepression: number | null;
  /** mPa s at 20 degC. */
  readonly viscosity: number | null;
}
const rows = asTable<SoluteRow>(json).rows;

interface Solute extends Named {
  readonly rows: readonly SoluteRow[];
}
const SYNONYMS: Readonly<Record<string, readonly string[]>> = {
  NaCl: ['salt', 'table salt', 'canning salt', 'sodium chloride'],
  KCl: ['potassium chloride'],
  CaCl2: ['calcium chloride'],
  sucrose: ['sugar', 'table sugar', 'granulated sugar'],
  glucose: ['dextrose'],
  fructose: ['fruit sugar'],
  lactose: ['milk sugar'],
  glycerol: ['glycerin', 'glycerine'],
  ethanol: ['alcohol'],
  'acetic acid': ['acetic'],
};
const solutes: readonly Solute[] = [...new Set(rows.map((row) => row.solute))].map((solute) => ({
  name: solute,
  synonyms: SYNONYMS[solute] ?? [],
  rows: rows.filter((row) => row.solute === solute),
}));

const tableSchema = fields({ solute: name('a solute such as sucrose, glucose, NaCl or citric acid') });
export type SoluteTableInput = z.input<typeof tableSchema>;
export interface SoluteTable {
  readonly solute: string;
  readonly rows: readonly SoluteRow[];
}

/**
 * The printed rows of one solute: density, refractive index, freezing point and viscosity of its solutions in water
 * at 20 degC, by percent by mass.
 *
 * Source: CRC Handbook of Chemistry and Physics, concentrative properties of aqueous solutions. Sugars, salts,
 * acids and alcohols: acetic acid, ethanol, glucose, maltose, glycerol, fructose, NaCl, CaCl2, lactic acid,
 * sucrose, lactose, mannitol, KCl, citric acid.
 *
 * @param input - `solute`: a name
 * @throws StillroomError UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { soluteTable } from 'stillroom/solution';
 *
 * soluteTable({ solute: 'salt' }).rows.length; // => 35
 * ```
 */
export function soluteTable(input: SoluteTableInput): SoluteTable {
  const solute = lookUp(readInput(tableSchema, input).solute, solutes, 'solute', 'solute');
  return answer({ solute: solute.name, rows: solute.rows });
}

const schema = fields({ solute: name('a solute such as sucrose, glucose, NaCl or citric acid'), fraction: share() });
export type SolutePropertiesInput = z.input<typeof schema>;
export interface SoluteProperties {
  readonly solute: string;
  readonly density: Quantity<'density'>;
  readonly refractiveIndex: number;
  /** Where ice begins to form, in degC; only where the table prints it. */
  readonly freezingPoint?: Quantity<'temperature'>;
  /** In mPa s; only where the table prints it. */
  readonly viscosity?: number;
  readonly basis: readonly Basis[];
}

/**
 * Density, refractive index, freezing point and viscosity of a solution at 20 degC, between the printed rows on
 * straight lines.
 *
 * Source: CRC Handbook of Chemistry and Physics, concentrative properties of aqueous solutions.
 *
 * @param input - `solute`: a name; `fraction`: mass of solute in the mass of solution, 0 to 1 or percent, within the
 * solute's rows
 * @throws StillroomError UNKNOWN_NAME; OUT_OF_RANGE outside the rows
 *
 * @example
 * ```ts
 * import { soluteProperties } from 'stillroom/solution';
 *
 * soluteProperties({ solute: 'salt', fraction: '10 %' }).density; // => { value: 1.0707, unit: 'g/mL' }
 * ```
 */
export function soluteProperties(input: SolutePropertiesInput): SoluteProperties {
  const given = readInput(schema, input);
  const solute = lookUp(given.solute, solutes, 'solute', 'solute');
  const percent = roundOff(100 * given.fraction);
  const read = (column: 'density' | 'nD20' | 'freezingDepression' | 'viscosity') =>
    between(
      solute.rows.flatMap((row): Point[] => {
        const value = row[column];
        return value === null ? [] : [[row.percent, value]];
      }),
      percent,
    );
  const density = read('density');
  const refractiveIndex = read('nD20');
  if (density === undefined || refractiveIndex === undefined) {
    const [first, last] = [solute.rows[0]?.percent, solute.rows.at(-1)?.percent];
    fail('OUT_OF_RANGE', 'fraction', input.fraction, `${first} to ${last} % of ${solute.name} by mass`);
  }
  const depression = read('freezingDepression');
  const viscosity = read('viscosity');
  return answer({
    solute: solute.name,
    density: { value: density, unit: 'g/mL' },
    refractiveIndex,
    ...(depression === undefined ? {} : { freezingPoint: { value: -depression, unit: 'degC' as const } }),
    ...(viscosity === undefined ? {} : { viscosity }),
    basis: solute.rows.slice(0, 1).map((row) => basisOf(row, `solution of ${solute.name}`)),
  });
}

/** Takes off the noise of doubles, so that 0.07 is 7 % and meets its row. */
const roundOff = (percent: number): number => Number(percent.toPrecision(12));
