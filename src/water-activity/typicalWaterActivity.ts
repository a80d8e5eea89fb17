import type * as z from 'zod/mini';
import foodsJson from '../../data/water-activity/food-water-activity.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food, form } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { isWithin } from '../foods/isWithin';
import { formName, nameOf } from '../foods/tables';
import { fields, optional, readInput } from '../quantity/fields';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { asTable, basisOf } from '../sources/table';
import { activityCaution } from './cautions';
import type { Limits } from './isothermTypes';
import type { TableRow } from './schemas';

export type FoodActivityRow = TableRow<'food-water-activity'>;
export const foodActivityRows = asTable<FoodActivityRow>(foodsJson).rows;

const schema = fields({
  /** The food, by any name: `honey`, `raisins`, `dried apples`. */
  food: food(),
  /** Its form, where the name does not say it: `dried`, `leather`. */
  form: optional(form()),
});
export type TypicalWaterActivityInput = z.input<typeof schema>;

/** One printed figure. */
export interface TypicalFigure {
  /** The food in the words of the page. */
  readonly printed: string;
  /** Lowest and highest water activity as printed; an open end is 0 or 1. */
  readonly waterActivity: Limits;
  /** Lowest and highest moisture it goes with, wet basis, 0 to 1, where printed. */
  readonly moisture?: Limits;
}
export interface TypicalWaterActivity {
  /** Tells the answer from one that these tables have no figure for. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** The form asked for. */
  readonly form?: string;
  /** Lowest and highest water activity of the printed figures; an open end is 0 or 1. */
  readonly waterActivity: Limits;
  /** Lowest and highest moisture they go with, wet basis, 0 to 1, where every figure has one. */
  readonly moisture?: Limits;
  /** Each printed figure. */
  readonly figures: readonly TypicalFigure[];
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const isOf = (row: FoodActivityRow, id: string): boolean => row.food === id || (row.foods ?? []).includes(id);

/**
 * The rows of a food in a form, or of the first wider food that has any. A form must be the row's own; where none is
 * asked for, rows that name no form go before all others. Figures that were read go before recalled ones.
 */
function rowsFor({ id }: FoundFood, wanted: string | undefined) {
  for (const each of figuresFor(id, 'water-activity')) {
    const own = foodActivityRows.filter((row) => isOf(row, each));
    const plain = own.filter(({ form: has }) => has === undefined);
    const found =
      wanted === undefined
        ? plain.length > 0
          ? plain
          : own
        : own.filter(({ form: has }) => has !== undefined && isWithin(has, wanted));
    const read = found.filter(({ obtained }) => obtained !== 'memory');
    if (found.length > 0) return { served: each, rows: read.length > 0 ? read : found };
  }
  return undefined;
}

const span = (pairs: readonly Limits[]): Limits => ({
  low: Math.min(...pairs.map(({ low }) => low)),
  high: Math.max(...pairs.map(({ high }) => high)),
});

const shown = ({ printed, low, high, moisture_pct }: FoodActivityRow): TypicalFigure => ({
  printed,
  waterActivity: { low, high },
  ...(moisture_pct === undefined ? {} : { moisture: { low: moisture_pct[0] / 100, high: moisture_pct[1] / 100 } }),
});

/**
 * The water activity a food is usually found at, as printed; a description, not a promise for your batch.
 *
 * @param input - `food`: its name, such as `honey`, `raisins`, `jam`, `dried apples`; `form`: where the name does not say it
 * @returns the lowest and highest of the printed figures, and each figure; or `{ known: false }` where these tables
 * have none
 * @throws StillroomError UNKNOWN_NAME for a text that is no food; CONTRADICTION for a form other than the one that the
 * food names
 *
 * @example
 * ```ts
 * import { typicalWaterActivity } from 'stillroom/water-activity';
 *
 * const apple = typicalWaterActivity({ food: 'dried apples' });
 * apple.known && apple.waterActivity; // => { low: 0.7, high: 0.75 }
 * apple.known && apple.moisture; // => { low: 0.2, high: 0.24 }
 * ```
 */
export function typicalWaterActivity(input: TypicalWaterActivityInput): TypicalWaterActivity | NotKnown {
  const { food: asked, form: given } = readInput(schema, input);
  if (given !== undefined && asked.form !== undefined && given !== asked.form) {
    fail('CONTRADICTION', 'form', formName(given), `the form that the food names: ${formName(asked.form)}`);
  }
  const wanted = given ?? asked.form;
  const found = rowsFor(asked, wanted);
  if (found === undefined) {
    const what = wanted === undefined ? asked.name : `${asked.name}, ${formName(wanted)}`;
    return answer(
      notKnown({
        code: 'no-water-activity',
        text: `These tables have no water activity of ${what}.`,
        instead: 'Measure it, or work it out from what is in it: fruitWaterActivity, solutionWaterActivity.',
        basis: [derived('known', 'the water activities of these tables')],
        cautions: [activityCaution('measure-before-shelf')],
      }),
    );
  }
  const { served, rows } = found;
  const figures = rows.map(shown);
  const moistures = figures.flatMap(({ moisture }) => moisture ?? []);
  const lent = served === asked.id ? {} : { food: nameOf(served) };
  return answer({
    known: true,
    food: asked.name,
    ...(wanted === undefined ? {} : { form: formName(wanted) }),
    waterActivity: span(figures.map(({ waterActivity }) => waterActivity)),
    ...(moistures.length < figures.length ? {} : { moisture: span(moistures) }),
    figures,
    basis: rows.map((row) => ({ ...basisOf(row, 'waterActivity', `water activity of ${row.printed}`), ...lent })),
    cautions: [
      caution('estimate'),
      ...(rows.some(({ obtained }) => obtained === 'memory') ? [caution('recalled')] : []),
    ],
  });
}
