import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food } from '../foods/fields';
import { formName } from '../foods/tables';
import { notCannedRow } from '../process/decide';
import { knowledgeOf } from '../process/food';
import { fields, list, optional, readInput } from '../quantity/fields';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { practiceBasis } from '../sources/table';
import { recipeCaution } from './cautions';
import { isFor, RECIPES } from './rows/rows';
import type { RecipeRow } from './rows/tables';
import { kitchenSchema } from './ways/kitchen';
import { type Lot, lot } from './ways/lot';
import { usualOrder } from './ways/order';
import { type ClosedWay, type Found, type Way, wayOf } from './ways/way';

const MOST_LOTS = 60;
const schema = /* @__PURE__ */ fields({
  /** One food, in place of lots. */
  food: optional(food()),
  /** Or what you have bought or picked: 1 to 60 lots. */
  lots: optional(list('the lots', lot(), 1, MOST_LOTS)),
  /** What you have to work with; left out, every way is listed and no minutes are given. */
  kitchen: optional(kitchenSchema()),
});
export type WaysToKeepInput = Given<z.input<typeof schema>>;

/** What foods can become. */
export interface WaysToKeep {
  /** Every recipe that fits, what an experienced cook would name first in front. */
  readonly ways: readonly Way[];
  /** What does not fit, and why. */
  readonly left: readonly ClosedWay[];
  /** Where the recipes come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The lots whose foods go into a recipe. */
const lotsOf = (row: RecipeRow, lots: readonly Lot[]): readonly Lot[] =>
  lots.filter(({ food: { id } }) => isFor(row, id));

/** The lots that go into one batch: all of them where the page mixes its foods, else those of one food. */
function together({ mix }: RecipeRow, lots: readonly Lot[]): readonly (readonly Lot[])[] {
  if (lots.length === 0) return [];
  if (mix === 'may mix' || mix === 'as printed') return [lots];
  const foods = [...new Set(lots.map(({ food: { id } }) => id))];
  return foods.map((food) => lots.filter(({ food: { id } }) => id === food));
}

/** What pages, or later guidance, leave out of their recipes. */
const excluded = (lots: readonly Lot[]): ClosedWay[] =>
  RECIPES.flatMap((row) =>
    lots
      .filter(({ food: { id } }) => row.excludes?.includes(id) === true)
      .map(({ food: { name: what } }) => ({
        recipe: row.id,
        name: row.name,
        reason: { code: 'left out', text: `the page of ${row.name}, or later guidance, leaves out ${what}` },
      })),
  );

/** What the tables say is not canned of these foods. */
const notCanned = (lots: readonly Lot[]): ClosedWay[] =>
  lots.flatMap(({ food: { id, name: what } }) =>
    knowledgeOf(id).notCanned.map((row) => {
      const { code, text } = notCannedRow(row);
      const forms = (row.forms ?? []).map(formName).join(' or ');
      return { name: forms === '' ? `${what} in jars` : `${what} as ${forms}`, reason: { code, text } };
    }),
  );

const noRecipe = (foods: readonly FoundFood[]): NotKnown =>
  notKnown({
    code: 'no recipe',
    text: `These tables hold no recipe whose page names ${foods.map((each) => each.name).join(' or ')}.`,
    instead: [{ text: 'Use it fresh, or keep it refrigerated and use it soon.', keep: 'eat fresh' }],
    basis: [derived('reason', 'what the tables of recipes hold')],
  });

/**
 * Every printed recipe that a food can go into: what it needs and lacks in your kitchen, the tested process at your
 * elevation, jars, hands and hours, how long it keeps and where; and what is closed, with the reason.
 *
 * A recipe is a way for the foods that its page names and for no other; for freezing and drying alone a kind goes by the
 * page of the wider food, where it has none itself (a white peach by that of peaches). Ways that lack nothing come first,
 * then those that lack what the pantry holds, then those that need another fruit or vegetable than yours, then those that
 * need jars or equipment. Among them, those that cooks usually choose for this food come first, and a page for the one
 * food before a page for many.
 *
 * hands and hours = printed times of the steps + customary minutes of each operation by mass and by jar.
 *
 * @returns `{ ways, left }`; `known: false` where no page names the food
 * @throws StillroomError UNKNOWN_NAME for a name that is no food, MISSING for neither food nor lots
 *
 * Source: the pages named in `basis`; work times and the order of the ways are common practice.
 *
 * @example
 * ```ts
 * import { waysToKeep } from 'stillroom/recipes';
 *
 * const kitchen = { elevation: '4200 ft', canners: [{ method: 'boiling-water' }], jars: [{ jar: 'pint' }] } as const;
 * const found = waysToKeep({ food: 'peach', kitchen });
 * 'ways' in found && found.ways[0]?.recipe; // => 'peach-halves-or-slices'
 * ```
 */
export function waysToKeep(input: WaysToKeepInput): WaysToKeep | NotKnown {
  const asked = readInput(schema, input);
  if ((asked.food === undefined) === (asked.lots === undefined))
    fail(asked.food === undefined ? 'MISSING' : 'CONTRADICTION', 'food', asked.food?.name, 'a food, or lots');
  const lots: readonly Lot[] = asked.lots ?? [{ food: asked.food as FoundFood }];
  const found = RECIPES.flatMap((row): Found[] => {
    return together(row, lotsOf(row, lots)).map((own) => wayOf(row, own, asked.kitchen));
  });
  const open = found.flatMap((each) => ('way' in each ? [each] : []));
  const left = [...found.flatMap((each) => ('way' in each ? [] : [each])), ...excluded(lots), ...notCanned(lots)];
  if (open.length === 0 && left.length === 0) return answer(noRecipe(lots.map((each) => each.food)));
  const ranked = usualOrder(open);
  return answer({
    ways: ranked.map(({ way }) => way),
    left,
    basis: [
      ...ranked.flatMap(({ basis }) => basis),
      practiceBasis('ways', 'the order that cooks usually choose in'),
      ...(ranked.some(({ way }) => way.handsOn !== undefined)
        ? [practiceBasis('ways[].handsOn', 'customary minutes of each operation')]
        : []),
      ...(left.length === 0 ? [] : [derived('left', 'what pages and tables say')]),
    ],
    cautions: [
      recipeCaution('recipe-proportions'),
      caution('tested-only'),
      ...(ranked.some(({ basis }) => basis.some(({ kind }) => kind === 'recalled')) ? [caution('recalled')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
