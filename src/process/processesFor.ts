import { answer } from '../common/answer';
import { fields, name, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { basisOf } from '../sources/table';
import type { AnyPack } from '../words/pack';
import { acidOf, acidRowOf, type ProcessAcid } from './acid';
import { bandsOf, bandText } from './bands';
import { processCaution, usualCautions } from './cautions';
import { type KnownFood, matchForm, readFood, rowsOfChoice } from './food';
import type { AcidRow, ListedJar, PrintedMethod, ProcessRow } from './tables';

const schema = /* @__PURE__ */ fields({ food: name('the name of a food, such as "peach"') });

export interface ProcessesForInput {
  readonly food: string;
}
/** What one elevation band prints; no minutes where the figure is not served. */
export interface ProcessBand {
  readonly elevation: string;
  readonly minutes?: number;
  readonly pressure?: Quantity<'pressure'>;
  readonly refused?: 'recalled' | 'not-recommended';
}
/** One printed line of the tables. */
export interface PrintedProcess {
  readonly form: string;
  readonly pack: AnyPack;
  readonly jars: readonly ListedJar[];
  readonly method: PrintedMethod;
  readonly alternative?: string;
  readonly headspace: Quantity<'length'>;
  /** The acid that belongs to the process, for each jar size. */
  readonly acid?: readonly { readonly jar: ListedJar; readonly acid: ProcessAcid }[];
  readonly bands: readonly ProcessBand[];
}
/** A form that is not canned, and why. */
export interface NotCanned {
  readonly foods: readonly string[];
  /** `any`; `plain` is every form but the tested ones. */
  readonly forms: readonly string[];
  readonly reason: string;
  readonly instead: string;
}
export interface ProcessesFor {
  readonly food: string;
  readonly processes: readonly PrintedProcess[];
  readonly notCanned: readonly NotCanned[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

function bandsText(row: ProcessRow): ProcessBand[] {
  const { upToFt } = bandsOf(row);
  return upToFt.map((_, index) => {
    const refused = row.obtained === 'memory' ? 'recalled' : row.refused?.[String(index)];
    const elevation = bandText(upToFt, index);
    if (refused !== undefined) return { elevation, refused: refused as 'recalled' };
    const psi = row.psi?.[index];
    return {
      elevation,
      minutes: typeof row.minutes === 'number' ? row.minutes : (row.minutes[index] as number),
      ...(typeof psi === 'number' ? { pressure: { value: psi, unit: 'psi' } } : {}),
    };
  });
}

function printed(row: ProcessRow): PrintedProcess {
  const acids = row.jars.flatMap((jar) => {
    const acid = row.acid === undefined ? undefined : acidRowOf(row.acid, jar);
    return acid === undefined ? [] : [{ jar, acid: acidOf(acid as AcidRow) }];
  });
  return {
    form: row.form,
    pack: row.pack ?? 'not stated',
    jars: row.jars,
    method: row.method,
    ...(row.alternative === undefined ? {} : { alternative: row.alternative }),
    headspace: { value: row.headspace, unit: 'in' },
    ...(acids.length === 0 ? {} : { acid: acids }),
    bands: bandsText(row),
  };
}

const notCannedOf = (food: KnownFood): NotCanned[] =>
  food.notCanned.map(({ foods, forms, reason, instead }) => ({ foods, forms, reason, instead }));

/**
 * Every printed process of a food, with all elevation bands, and the forms of it that are not canned. Where the
 * text holds a form (`applesauce`), only that form's.
 *
 * @param input.food - trade name or synonym
 * @throws StillroomError UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { processesFor } from 'stillroom/process';
 *
 * const { processes } = processesFor({ food: 'rhubarb' });
 * processes[0]?.bands[1]; // => { elevation: '1,001 to 6,000 ft', minutes: 20 }
 * ```
 */
export function processesFor(input: ProcessesForInput): ProcessesFor {
  const reading = readFood(readInput(schema, input).food);
  const { food, form } = reading;
  const choices = form === undefined ? food.choices : matchForm(food, form);
  const rows = choices.flatMap(rowsOfChoice);
  return answer({
    food: food.entry.name,
    processes: rows.map(printed),
    notCanned: notCannedOf(food),
    basis: joinBasis(
      rows.map((row) => basisOf(row, `${row.form}, ${row.method}`)),
      food.notCanned.map((row) => basisOf(row, 'not recommended')),
    ),
    cautions: [
      ...(rows.some((row) => row.acid !== undefined) ? [processCaution('acid-required')] : []),
      ...usualCautions(),
    ],
  });
}
