/** Which readings of the printed pages bear witness to each cell of the process tables: row, jar and elevation band. */
import { readdirSync, readFileSync } from 'node:fs';
import { StillroomError } from '../../src/errors/index';
import { bandIndex, bandsOf } from '../../src/process/bands';
import { type TestedProcessInput, testedProcess } from '../../src/process/index';
import { foodsOf } from '../../src/process/scope';
import { formNameRows, type ProcessRecipeRow, type ProcessRow } from '../../src/process/tables';
import { parseQuantity } from '../../src/quantity/index';
import { checksOf, type PrintedCheck } from './printed';

/** The vectors of the first reading, and of the second. */
export const FIRST = ['fruit', 'tomato-lowacid', 'pickle-jam', 'guide-2015', 'scope'];
export const SECOND = readdirSync(new URL('../../shared/', import.meta.url).pathname)
  .filter((file) => file.startsWith('process-second-reading-'))
  .map((file) => file.replace(/^process-|\.json$/g, ''));

/** What one reading prints for one cell. */
export interface Witness {
  /** The row that answers. */
  row: string;
  jar: string;
  band: number;
  minutes: number;
  psi?: number;
}

/** A cell of the second reading that is served with a longer time or higher pressure. */
export interface Differing {
  cell: { id: string; input: TestedProcessInput; row: string };
  reading: { minutes: number; psi?: number; headspace: number; source: string; locator: string };
  served: { minutes: number; psi?: number; headspace: number };
  why: string;
}
export const differing: Differing[] = JSON.parse(
  readFileSync(new URL('readingsDiffer.json', import.meta.url), 'utf8'),
) as Differing[];

/** A check of the second reading: it names its row and the document. */
export type SecondCheck = PrintedCheck & { row: string; source: string; input: { recipe: string } };
export const secondChecks = SECOND.flatMap(checksOf) as SecondCheck[];

/** The answer; nothing where the question has become doubtful, as by a second pack. */
function answerTo(input: TestedProcessInput): ReturnType<typeof testedProcess> | undefined {
  try {
    return testedProcess(input);
  } catch (error) {
    if (error instanceof StillroomError) return undefined;
    throw error;
  }
}

/** What the checks print, each under the row that answers its question; refusals and bad input say nothing of a cell. */
export function witnessesOf(checks: readonly PrintedCheck[], rows: readonly ProcessRow[]): Witness[] {
  const byId = new Map(rows.map((row) => [row.id, row]));
  return checks.flatMap(({ call, input, expect }) => {
    if (call !== 'testedProcess' || expect.tested !== true || expect.minutes === undefined) return [];
    const answer = answerTo(input);
    const row = answer?.tested === true ? byId.get(answer.row) : undefined;
    if (answer?.tested !== true || row === undefined) return [];
    const band = bandIndex(parseQuantity(input.elevation, 'length'), bandsOf(row).upToFt);
    if (band === undefined) return [];
    const { minutes, pressure } = expect;
    return [
      { row: row.id, jar: answer.jar, band, minutes, ...(pressure === undefined ? {} : { psi: pressure.value }) },
    ];
  });
}

const nameOfCell = ({ row, jar, band, minutes, psi }: Witness): string =>
  [row, jar, band, minutes, psi ?? ''].join(' ');

/** Every cell that is served: one for each row, listed jar and band. */
export function cellsOf(rows: readonly ProcessRow[]): Witness[] {
  return rows.flatMap((row) =>
    bandsOf(row).upToFt.flatMap((_, band) => {
      const refused = row.obtained === 'memory' || row.refused?.[String(band)] !== undefined;
      const minutes = typeof row.minutes === 'number' ? row.minutes : (row.minutes[band] as number);
      const psi = row.psi?.[band];
      if (refused || psi === null) return [];
      return row.jars.map((jar) => ({ row: row.id, jar, band, minutes, ...(psi === undefined ? {} : { psi }) }));
    }),
  );
}

/** The served cells for which no reading prints these figures: row, jar, band, minutes, pressure. */
export function unwitnessed(rows: readonly ProcessRow[], witnesses: readonly Witness[]): string[] {
  const seen = new Set(witnesses.map(nameOfCell));
  return cellsOf(rows)
    .map(nameOfCell)
    .filter((cell) => !seen.has(cell));
}

/** The foods that a process is served for, and that neither its rows, a recipe ending in it nor a name of its product has. */
export function unnamed(
  rows: readonly ProcessRow[],
  recipes: readonly Pick<ProcessRecipeRow, 'process' | 'foods'>[],
  foods: (row: ProcessRow) => readonly string[] = foodsOf,
): string[] {
  const named = (row: ProcessRow) =>
    new Set([
      row.food,
      ...recipes.filter(({ process }) => process === row.recipe).flatMap((recipe) => recipe.foods),
      ...formNameRows.filter(({ recipe }) => recipe === row.recipe).flatMap(({ products = [] }) => products),
    ]);
  return [
    ...new Set(
      rows.flatMap((row) =>
        foods(row)
          .filter((food) => !named(row).has(food))
          .map((food) => `${row.recipe}: ${food}`),
      ),
    ),
  ];
}

/** The documents of a recipe in both readings. */
export const documentsOf = (
  { id, seenIn }: { id: string; seenIn: readonly { document: string }[] },
  checks: readonly { source: string; input: { recipe: string } }[],
): ReadonlySet<string> =>
  new Set([
    ...seenIn.map(({ document }) => document),
    ...checks.filter(({ input }) => input.recipe === id).map(({ source }) => source),
  ]);
