import { answer } from '../common/answer';
import { formName, nameOf } from '../foods/tables';
import { fields, name, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import type { Instead, Reason } from '../sources/no';
import type { ProcessRecipe } from '../sources/processRecipe';
import { basisOf } from '../sources/table';
import type { AnyPack } from '../words/pack';
import { acidOf, acidRowOf, type ProcessAcid } from './acid';
import { bandsOf, bandText } from './bands';
import { processCaution, usualCautions } from './cautions';
import { matchForm, readFood, rowsOfChoice } from './food';
import { processRecipeOf, recipesEndingIn } from './recipesOf';
import { keepings } from './refusal';
import type { Alternative, ListedJar, NotRecommendedRow, PrintedMethod, ProcessRow } from './tables';

const schema = /* @__PURE__ */ fields({
  /** Any name of the food; where it holds a form (`applesauce`), only that form is listed. */
  food: name('the name of a food, such as "peach"'),
});

export interface ProcessesForInput {
  /** Any name of the food; where it holds a form (`applesauce`), only that form is listed. */
  readonly food: string;
}
/** What one elevation band prints; no minutes where the figure is not served. */
export interface ProcessBand {
  /** The band in words, feet. */
  readonly elevationBand: string;
  /** Process time, minutes. */
  readonly minutes?: number;
  /** Gauge pressure, of the pressure methods. */
  readonly pressure?: Quantity<'pressure'>;
  /** Why the figure is not served. */
  readonly refused?: 'recalled' | 'not-recommended';
}
/** One printed line of the tables. */
export interface PrintedProcess {
  /** Fixed name of the printed recipe: `apple-sauce`. */
  readonly recipe: string;
  /** The printed recipes that end in it, each with its acid, its batch and what must not be changed. */
  readonly recipes: readonly ProcessRecipe[];
  /** Fixed name of the line. */
  readonly row: string;
  /** The form that the page is for. */
  readonly form: string;
  /** `hot`, `raw`, or `not stated` where the page names none. */
  readonly pack: AnyPack;
  /** Jar sizes that the line covers. */
  readonly jarSizes: readonly ListedJar[];
  /** The canner. */
  readonly method: PrintedMethod;
  /** Which of several lines it is. */
  readonly alternative?: Alternative;
  /** Empty space to leave below the lid. */
  readonly headspace: Quantity<'length'>;
  /** The acid that belongs to the process, for each jar size. */
  readonly acidByJar?: readonly {
    /** The jar size. */
    readonly jar: ListedJar;
    /** The acid for it. */
    readonly acid: ProcessAcid;
  }[];
  /** What each elevation band prints, from the lowest up. */
  readonly bands: readonly ProcessBand[];
}
/** A form that is not canned, and why. */
export interface NotCanned {
  /** Trade names of the foods. */
  readonly foods: readonly string[];
  /** Whether every form is meant, every form without a process, or those in `forms`. */
  readonly covers: NotRecommendedRow['covers'];
  /** The forms meant, where not all are. */
  readonly forms?: readonly string[];
  /** Why they are not canned. */
  readonly reason: Reason;
  /** What to do instead, best first. */
  readonly instead: readonly Instead[];
}
export interface ProcessesFor {
  /** Trade name of the food. */
  readonly food: string;
  /** Its printed lines. */
  readonly processes: readonly PrintedProcess[];
  /** What is not canned of it. */
  readonly notCanned: readonly NotCanned[];
  /** Where each line comes from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** A row of what is not canned, as an answer holds it. */
export const notCannedOf = ({ foods, covers, forms, reason, instead, keeps }: NotRecommendedRow): NotCanned => ({
  foods: foods.map(nameOf),
  covers,
  ...(forms === undefined ? {} : { forms: forms.map(formName) }),
  reason: { code: 'not canned', text: reason },
  instead: [{ text: instead }, ...keepings(keeps)],
});

function bandsText(row: ProcessRow): ProcessBand[] {
  const { upToFt } = bandsOf(row);
  return upToFt.map((_, index) => {
    const refused = row.obtained === 'memory' ? 'recalled' : row.refused?.[String(index)];
    const elevationBand = bandText(upToFt, index);
    if (refused !== undefined) return { elevationBand, refused };
    const psi = row.psi?.[index];
    return {
      elevationBand,
      minutes: typeof row.minutes === 'number' ? row.minutes : (row.minutes[index] as number),
      ...(typeof psi === 'number' ? { pressure: { value: psi, unit: 'psi' } } : {}),
    };
  });
}

function printed(row: ProcessRow, food: string): PrintedProcess {
  const acids = row.jars.flatMap((jar) => {
    const acid = row.acid === undefined ? undefined : acidRowOf(row.acid, jar);
    return acid === undefined ? [] : [{ jar, acid: acidOf(acid) }];
  });
  return {
    recipe: row.recipe,
    recipes: recipesEndingIn(row.recipe, food).map(processRecipeOf),
    row: row.id,
    form: formName(row.form),
    pack: row.pack ?? 'not stated',
    jarSizes: row.jars,
    method: row.method,
    ...(row.alternative === undefined ? {} : { alternative: row.alternative }),
    headspace: { value: row.headspace, unit: 'in' },
    ...(acids.length === 0 ? {} : { acidByJar: acids }),
    bands: bandsText(row),
  };
}

/**
 * Every printed process of a food, with all elevation bands, and the forms of it that nobody should can at home. If
 * the name includes a form (`applesauce`), only the processes of that form.
 *
 * @throws StillroomError UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { processesFor } from 'stillroom/process';
 *
 * const { processes } = processesFor({ food: 'rhubarb' });
 * processes[0]?.bands[1]; // => { elevationBand: '1,001 to 6,000 ft', minutes: 20 }
 * ```
 */
export function processesFor(input: ProcessesForInput): ProcessesFor {
  const reading = readFood(readInput(schema, input).food);
  const { food, form } = reading;
  const choices = form === undefined ? food.choices : matchForm(food, formName(form));
  const rows = choices.flatMap(rowsOfChoice);
  return answer({
    food: food.name,
    processes: rows.map((row) => printed(row, food.id)),
    notCanned: food.notCanned.map(notCannedOf),
    basis: [
      ...rows.map((row) => basisOf(row, 'processes[].bands', row.id)),
      ...food.notCanned.map((row) => basisOf(row, 'notCanned[].reason', row.id)),
      ...(rows.length + food.notCanned.length > 0
        ? []
        : [derived('processes', 'these tables have none for this food')]),
    ],
    cautions: [
      ...(rows.some((row) => row.acid !== undefined) ? [processCaution('acid-required')] : []),
      ...usualCautions(),
    ],
  });
}
