import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { nameKey, nearestNames } from '../common/names';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food as foodField, form as formField } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { isWithin } from '../foods/isWithin';
import { narrowerOf } from '../foods/lookUpFood';
import { formName, nameOf } from '../foods/tables';
import { fields, name, optional, readInput } from '../quantity/fields';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import type { Acidity } from '../words/acidity';
import { limitRow, pHLimit } from './phLimits';
import { acidCaution, FOOD_PH, type FoodPhRow, RECALLED_PH } from './tables';

const schema = fields({
  /** The food, by any name; a name may say its form: `apple juice`. */
  food: foodField(),
  /** Its form, such as `canned` or `juice`; fresh when left out. */
  form: optional(formField()),
  /** One line of the lists, in their own words, for a variety of the food: `Figs, Calimyrna`. */
  listed: optional(name('a line of the lists in their own words, such as "Figs, Calimyrna"')),
});
export type PhOfInput = z.input<typeof schema>;

/** A line of a published list. */
export interface ListedPh {
  /** The words of the list. */
  readonly printed: string;
  /** The lowest pH it prints. */
  readonly low: number;
  /** The highest pH it prints. */
  readonly high: number;
  /** Id of the list in the register of sources. */
  readonly source: string;
  /** Whether the line was recalled and not seen in a copy. */
  readonly recalled: boolean;
}

export interface PhOf {
  /** Trade name of the food. */
  readonly food: string;
  /** Name of the form, where one was asked for. */
  readonly form?: string;
  /** From the lowest to the highest pH of the published lines; of the recalled ones where none is published. */
  readonly pH: { readonly low: number; readonly high: number };
  /** What to treat the food as, by the highest figure of any line: one lot above the limit is enough. */
  readonly acidity: Acidity;
  /** Whether the figures lie on both sides of the limit. */
  readonly crosses: boolean;
  /** Every line behind the answer. */
  readonly figures: readonly ListedPh[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const ROWS: readonly FoodPhRow[] = [...FOOD_PH, ...RECALLED_PH];
const foodsOf = ({ food, foods }: FoodPhRow): readonly string[] => foods ?? (food === undefined ? [] : [food]);

/** Whether a form is the fresh food, only cut: its pH is that of the food. */
const isCut = (form: string): boolean => isWithin(form, 'pieces') || isWithin(form, 'whole');

/** The lines of a food in a form; fresh ones where no form is asked for, prepared ones where there are no others. */
function rowsOf(id: string, form: string | undefined): readonly FoodPhRow[] {
  const own = ROWS.filter((row) => foodsOf(row).includes(id));
  if (form !== undefined) {
    const inForm = own.filter((row) => row.form !== undefined && isWithin(row.form, form));
    if (inForm.length > 0 || !isCut(form)) return inForm;
  }
  const fresh = own.filter(({ prepared }) => prepared !== true);
  return fresh.length > 0 || form !== undefined ? fresh : own;
}

/** The one line that is named, of all lines of the food. */
function rowsListed(id: string, food: string, listed: string): readonly FoodPhRow[] {
  const own = ROWS.filter((row) => foodsOf(row).includes(id));
  const found = own.filter(({ printed }) => nameKey(printed) === nameKey(listed));
  const options = [...new Set(own.map(({ printed }) => printed))];
  if (found.length > 0) return found;
  return fail('UNKNOWN_NAME', 'listed', listed, `a line of the lists for ${food}: ${options.join('; ')}`, {
    options,
    nearest: nearestNames(listed, options),
  });
}

function noFigure({ id, name: food }: FoundFood, form: string | undefined): NotKnown {
  const narrower = narrowerOf(id).filter((kind) => rowsOf(kind, form).length > 0);
  const what = form === undefined ? food : `${food} (${formName(form)})`;
  return notKnown({
    code: 'no-listed-ph',
    text: `These tables hold no pH of ${what}.`,
    instead: [
      ...narrower.map((kind) => ({ text: `Ask for ${nameOf(kind)}.`, food: nameOf(kind) })),
      ...(form !== undefined && rowsOf(id, undefined).length > 0
        ? [{ text: `Ask for ${food} without a form: the lists print it fresh.`, food }]
        : []),
      { text: 'Treat it as low-acid until a meter, set in two buffers, has shown the pH of the finished mixture.' },
    ],
    basis: [derived('reason', 'no line of the lists is for it')],
    cautions: [acidCaution('low-acid-in-jars'), acidCaution('typical-ph-no-proof'), caution('follow-local-guidance')],
  });
}

/**
 * Internal: `acidClass` answers it. The typical pH of a food, from the published lists, and whether to treat it as acid or low-acid.
 *
 * The highest figure of any list decides, recalled ones included, and so does the guides' own list of foods that are
 * sometimes above the limit (tomatoes, figs). A typical pH never shows that a food needs no acid.
 *
 * @returns `pH` with `low` and `high`, and `acidity`; or `known: false` for a food that is in no list
 * @throws StillroomError UNKNOWN_NAME, with the nearest names; CONTRADICTION for two different forms
 */
export function phOf(input: PhOfInput): PhOf | NotKnown {
  const { food, form: asked, listed } = readInput(schema, input);
  if (asked !== undefined && food.form !== undefined && asked !== food.form) {
    fail('CONTRADICTION', 'form', input.form, `one form: ${input.food} is ${formName(food.form)}`);
  }
  const form = asked ?? food.form;
  const id = listed === undefined ? figuresFor(food.id, 'ph').find((one) => rowsOf(one, form).length > 0) : food.id;
  if (id === undefined) return answer(noFigure(food, form));
  const rows = listed === undefined ? rowsOf(id, form) : rowsListed(id, food.name, listed);
  const limit = pHLimit('home-acid');
  const named = limitRow('named-above');
  const published = rows.filter((row) => row.obtained !== 'memory');
  const served = published.length > 0 ? published : rows;
  const low = Math.min(...served.map((row) => row.pHLow));
  const high = Math.max(...served.map((row) => row.pHHigh));
  const above = [food.id, id].some((one) => named.foods?.includes(one) === true);
  const isAcid = Math.max(...rows.map((row) => row.pHHigh)) <= limit.pH && !above;
  const crosses = low <= limit.pH && !isAcid;
  const lent = id === food.id ? {} : { food: nameOf(id) };
  return answer({
    food: food.name,
    ...(form === undefined ? {} : { form: formName(form) }),
    pH: { low, high },
    acidity: isAcid ? 'acid' : 'low-acid',
    crosses,
    figures: rows.map((row) => ({
      printed: row.printed,
      low: row.pHLow,
      high: row.pHHigh,
      source: row.source,
      recalled: row.obtained === 'memory',
    })),
    basis: [
      ...rows.map((row) => ({ ...basisOf(row, served.includes(row) ? 'pH' : 'acidity', row.printed), ...lent })),
      basisOf(limit, 'acidity', 'the line between acid and low-acid'),
      ...(above ? [basisOf(named, 'acidity', 'foods that can be above the line unless acidified')] : []),
    ],
    cautions: [
      acidCaution('typical-ph-no-proof'),
      ...(isAcid ? [] : [acidCaution('low-acid-in-jars')]),
      ...(above ? [acidCaution('acidify-every-jar')] : crosses ? [acidCaution('both-sides-of-limit')] : []),
      ...(rows.some((row) => row.obtained === 'memory') ? [caution('recalled')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
