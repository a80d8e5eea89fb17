import type * as z from 'zod/mini';
import json from '../../data/solution/solute-properties.json';
import namesJson from '../../data/solution/solutes.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fail } from '../errors/StillroomError';
import { fields, name, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { otherShare } from '../words/shares';
import { between, type Point } from './table';
import type { soluteNameRow, soluteRow } from './tables';

type SoluteRow = RowOf<typeof soluteRow>;
const rows = asTable<SoluteRow>(json).rows;
interface Solute extends Named {
  readonly rows: readonly SoluteRow[];
}
const solutes: readonly Solute[] = asTable<RowOf<typeof soluteNameRow>>(namesJson).rows.map((solute) => ({
  name: solute.name,
  synonyms: solute.names,
  rows: rows.filter((row) => row.solute === solute.name),
}));
/** The printed rows of one solute, by its name in the tables. */
export const soluteRows = (solute: string): readonly SoluteRow[] =>
  (solutes.find((each) => each.name === solute) as Solute).rows;

const schema = /* @__PURE__ */ fields({
  /** Name of the solute: `sucrose`, `glucose`, `salt`, `citric acid` ... */
  solute: name('a solute such as sucrose, glucose, NaCl or citric acid'),
  /** Mass of the solute in the mass of the solution, 0 to 1 or percent, within the solute's rows. */
  soluteShare: otherShare('soluteShare', 'Mass of the solute, as a share of the mass of the solution.'),
});
export type SolutePropertiesInput = z.input<typeof schema>;
export interface SoluteProperties {
  /** Name of the solute in the table. */
  readonly solute: string;
  /** Of the solution at 20 degC, g/mL. */
  readonly density: Quantity<'density'>;
  /** At 589 nm and 20 degC. */
  readonly refractiveIndex: number;
  /** Where ice begins to form, in degC; only where the table prints it. */
  readonly freezingPoint?: Quantity<'temperature'>;
  /** In mPa s at 20 degC; only where the table prints it. */
  readonly viscosity?: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * Density, refractive index, freezing point and viscosity of a solution at 20 degC, between the printed rows on
 * straight lines.
 *
 * Source: CRC Handbook of Chemistry and Physics, concentrative properties of aqueous solutions. Sugars, salts,
 * acids and alcohols: acetic acid, ethanol, glucose, maltose, glycerol, fructose, NaCl, CaCl2, lactic acid,
 * sucrose, lactose, mannitol, KCl, citric acid.
 *
 * @param input - `solute`: a name; `soluteShare`: mass of solute in the mass of solution, 0 to 1 or percent, within the
 * solute's rows
 * @throws StillroomError UNKNOWN_NAME; OUT_OF_RANGE outside the rows
 *
 * @example
 * ```ts
 * import { soluteProperties } from 'stillroom/solution';
 *
 * soluteProperties({ solute: 'salt', soluteShare: '10 %' }).density; // => { value: 1.0707, unit: 'g/mL' }
 * ```
 */
export function soluteProperties(input: SolutePropertiesInput): SoluteProperties {
  const given = readInput(schema, input);
  const solute = lookUp(given.solute, solutes, 'solute', 'solute');
  const percent = toPercent(given.soluteShare);
  const read = (column: 'density' | 'nD20' | 'freezingDepression' | 'viscosity') =>
    between(
      solute.rows.flatMap((row): Point[] => {
        const value = row[column];
        return value === null || value === undefined ? [] : [[row.percent, value]];
      }),
      percent,
    );
  const density = read('density');
  const refractiveIndex = read('nD20');
  if (density === undefined || refractiveIndex === undefined) {
    const [first, last] = [solute.rows[0]?.percent, solute.rows.at(-1)?.percent];
    fail('OUT_OF_RANGE', 'soluteShare', input.soluteShare, `${first} to ${last} % of ${solute.name} by mass`);
  }
  const depression = read('freezingDepression');
  const viscosity = read('viscosity');
  const figures = {
    density: { value: density, unit: 'g/mL' as const },
    refractiveIndex,
    ...(depression === undefined ? {} : { freezingPoint: { value: -depression, unit: 'degC' as const } }),
    ...(viscosity === undefined ? {} : { viscosity }),
  };
  return answer({
    solute: solute.name,
    ...figures,
    basis: Object.keys(figures).map((of) => basisOf(solute.rows[0] as SoluteRow, of)),
    cautions: [],
  });
}

/** Percent without the noise of doubles, so that 0.07 is 7 % and meets its row. */
export const toPercent = (part: number): number => Number((100 * part).toPrecision(12));
