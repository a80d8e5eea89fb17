import type * as z from 'zod/mini';
import { acidCaution } from '../acid/tables';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food } from '../foods/fields';
import { foodOf, nameOf } from '../foods/tables';
import { bought } from '../produce/weights/asBought';
import { fields, list, massOrVolume, number, optional, readInput, reading } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { count } from '../words/count';
import { otherShare } from '../words/shares';
import { batchesOf } from './batchesOf';
import { jamCautions, recipeCaution } from './cautions';
import { changed, isLeftOut, isStrong } from './changed';
import { ingredientOf, type RecipeIngredient } from './ingredient';
import { keepingOf, type RecipeKeeping } from './keeping';
import { isFor, mustKeepOf, pageOf, readRecipe } from './rows/rows';
import type { Makes, RecipeRow } from './rows/tables';
import { batchesHere, sizeOf } from './scale';
import { type RecipeStep, stepOf } from './step';
import { packsFor } from './ways/canned';

const MOST_BATCHES = 1000;

/** A recipe by its id or a name. */
export const recipeField = () => reading<string, RecipeRow>((given) => readRecipe(given));

const schema = /* @__PURE__ */ fields({
  /** The recipe: its id (`apple-butter`) or a name (`apple butter`). */
  recipe: recipeField(),
  /** Which of its foods, where the page names several. */
  food: optional(food()),
  /** How many times the printed recipe, above 0 to 1,000; 1 where no amount is given. */
  batches: optional(number('batches, above 0', { above: 0, max: MOST_BATCHES })),
  /** Or the food as bought: a mass, a volume, or pieces or containers. */
  raw: optional(bought()),
  /** Or the food prepared as the recipe measures it: a mass or a volume. */
  ready: optional(massOrVolume()),
  /** Or the jars that you want, 1 to 10,000, of the first size in `yields`: in as many whole batches as they take. */
  jars: optional(count('jars wanted', 1, 10_000)),
  /** Strength of your vinegar from its label: above 0 and at most 0.3, or text in percent. */
  acetic: optional(
    otherShare('acetic', 'Acetic acid of a vinegar as on its label: grams in 100 mL.', { above: 0, max: 0.3 }),
  ),
  /** Foods of the list of ingredients that you mean to leave out, up to 10: sugar that the page leaves free, a spice. */
  without: optional(list('what you leave out', food(), 1, 10)),
});
export type RecipeInput = Given<z.input<typeof schema>>;
type Asked = z.output<typeof schema>;

/** A printed recipe for an amount of food. */
export interface Recipe {
  /** Fixed name. */
  readonly recipe: string;
  /** What the page calls it. */
  readonly name: string;
  /** What it makes. */
  readonly makes: Makes;
  /** Trade names of the foods that the page names; no other food takes their place. */
  readonly scope: readonly string[];
  /** Trade names of foods that the page, or later guidance, leaves out. */
  readonly excludes: readonly string[];
  /** Whether the foods may go into one batch together. */
  readonly mix: string;
  /** How many times the printed recipe. */
  readonly batches: number;
  /** How many pots, one after the other: the amounts are for one of them. */
  readonly pots: number;
  /** What goes into one pot. */
  readonly ingredients: readonly RecipeIngredient[];
  /** What to do, in order. */
  readonly steps: readonly RecipeStep[];
  /** What must not be changed: the recipe is safe, or sets, by it. */
  readonly mustKeep: readonly string[];
  /** What the page prints the batch for, and says of other sizes. */
  readonly batch: {
    /** What one batch gives or fills. */
    readonly printedFor?: string;
    /** `one batch at a time`, `may be doubled`, `any size`, `not printed` ... */
    readonly scale: string;
    /** The most batches that are made in a day, one after the other: common practice. */
    readonly most?: number;
    /** Whether only whole batches are made: common practice. */
    readonly whole?: boolean;
  };
  /** Jars or packs of all batches. */
  readonly yields: readonly {
    /** Size of the jar or pack. */
    readonly jar: string;
    /** The least. */
    readonly low: number;
    /** The most. */
    readonly high: number;
  }[];
  /** How it keeps. */
  readonly keeps: readonly RecipeKeeping[];
  /** Food that is left over, in batches: no whole batch, or more than the most of a day. */
  readonly leftOver?: number;
  /** What two readings of the page print differently. */
  readonly readings: readonly {
    /** Which figure. */
    readonly of: string;
    /** What is served. */
    readonly served: string;
    /** What the other has. */
    readonly other: string;
    /** Id of its document. */
    readonly document: string;
    /** Why this one is served. */
    readonly why: string;
  }[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The food that a question is about: the one it names, or the only one of the page. */
function foodAsked(row: RecipeRow, asked: FoundFood | undefined): { readonly id: string; readonly name: string } {
  const options = row.foods.map(nameOf);
  if (asked !== undefined) {
    if (!isFor(row, asked.id))
      fail('CONTRADICTION', 'food', asked.name, `a food that the page of ${row.name} names`, { options });
    return asked;
  }
  const [only] = row.foods as readonly [string, ...string[]];
  const kinds = new Set(row.foods.map((id) => foodOf(id).kind));
  const several = row.mix === 'as printed' ? row.name : `the ${kinds.size === 1 ? foodOf(only).kind : 'food'}`;
  return { id: only, name: row.foods.length === 1 ? nameOf(only) : several };
}

interface Sized {
  readonly known: true;
  readonly batches: number;
  readonly leftOver?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The whole batches that surely fill a number of jars. */
function forJars({ name, yields: [first] = [] }: RecipeRow, jars: number): Sized | NotKnown {
  if (first !== undefined) return { known: true, batches: Math.ceil(jars / first.low), basis: [], cautions: [] };
  return notKnown({
    code: 'no printed yield',
    text: `These tables hold no yield of ${name}.`,
    instead: 'Give the number of batches.',
    basis: [derived('reason', 'the printed recipe')],
  });
}

/** How many batches the question asks for: by their number, or by an amount of food. */
function sized(row: RecipeRow, asked: Asked, of: { readonly id: string; readonly name: string }): Sized | NotKnown {
  const { batches, raw, ready, jars } = asked;
  const given = [batches, raw, ready, jars].filter((each) => each !== undefined);
  if (given.length > 1) fail('CONTRADICTION', 'batches', batches, 'one of `batches`, `raw`, `ready` and `jars`');
  if (jars !== undefined) return forJars(row, jars);
  if (raw === undefined && ready === undefined) return { known: true, batches: batches ?? 1, basis: [], cautions: [] };
  if (asked.food === undefined && row.foods.length > 1)
    fail('MISSING', 'food', undefined, `one of the foods of ${row.name}`, { options: row.foods.map(nameOf) });
  const found = batchesOf(row, of, raw === undefined ? { ready: ready as Quantity<'mass'> } : { raw });
  if (!found.known) return found;
  const here = batchesHere(row.batch, found.batches);
  if (here === 0)
    fail('OUT_OF_RANGE', raw === undefined ? 'ready' : 'raw', undefined, `enough for one whole batch of ${row.name}`);
  return here === found.batches ? found : { ...found, batches: here, leftOver: found.batches - here };
}

/**
 * A printed recipe, for a number of batches or an amount of food: what goes in, what to do, what must not be changed,
 * how many jars it gives and how it keeps.
 *
 * Amounts are the printed ones times the batches, rounded to what spoons, cups and scales hold: acid and whatever must
 * be kept are rounded up, water beside them down, so that no proportion that makes it safe is ever weakened. Recipes
 * that set by their proportions (jam, jelly) are made in whole batches, one pot after the other.
 *
 * batches = amount given / printed amount, an amount as bought being prepared first (see `readyFromRaw`).
 *
 * @returns the recipe with `batches`, `pots` and the amounts for one pot; `known: false` where the page prints no
 *   amount that yours can be compared with, where your vinegar is weaker than the page asks, or where you leave out
 *   what makes the recipe safe or makes it set
 * @throws StillroomError UNKNOWN_NAME for a recipe that these tables do not hold, CONTRADICTION for a food that its
 *   page does not name or an ingredient that it does not have, OUT_OF_RANGE for a part of a batch where only whole ones
 *   are made, and for more batches than a day's
 *
 * Source: the page named in `basis`; USDA Complete Guide to Home Canning, Guide 7, for whole batches.
 *
 * @example
 * ```ts
 * import { recipe } from 'stillroom/recipes';
 *
 * const butter = recipe({ recipe: 'apple butter', batches: 2 });
 * 'ingredients' in butter && butter.ingredients[0]?.amount; // => { value: 16, unit: 'lb' }
 * ```
 */
export function recipe(input: RecipeInput): Recipe | NotKnown {
  const asked = readInput(schema, input);
  const row = asked.recipe;
  const of = foodAsked(row, asked.food);
  const found = sized(row, asked, of);
  if (!('batches' in found)) return answer(found);
  const refused = changed(row, asked);
  if (refused !== undefined) return answer(refused);
  const { batches, times } = sizeOf(row, found.batches, 'batches');
  // a food that the page names for one pack only gets that pack's lines and steps
  const inPack = ({ pack }: { readonly pack?: 'hot' | 'raw' }): boolean =>
    pack === undefined || asked.food === undefined || packsFor(row, of.id).includes(pack);
  const lines = row.ingredients.filter((line) => inPack(line) && !isLeftOut(line, asked.without));
  const rounded = (value: number, by: 'floor' | 'ceil') => Math[by](value * batches + (by === 'floor' ? 1e-9 : -1e-9));
  return answer({
    recipe: row.id,
    name: row.name,
    makes: row.makes,
    scope: row.foods.map(nameOf),
    excludes: (row.excludes ?? []).map(nameOf),
    mix: row.mix,
    batches,
    pots: Math.round(batches / times),
    ingredients: lines.map((line) => ingredientOf(row, line, of.name, times)),
    steps: row.steps.filter(inPack).map(stepOf),
    mustKeep: mustKeepOf(row),
    batch: row.batch,
    yields: (row.yields ?? []).map(({ jar, low, high }) => ({
      jar,
      low: rounded(low, 'floor'),
      high: rounded(high, 'ceil'),
    })),
    keeps: row.keeps.map(keepingOf),
    ...(found.leftOver === undefined || found.leftOver === 0 ? {} : { leftOver: found.leftOver }),
    readings: row.readings ?? [],
    basis: [
      pageOf(row, 'ingredients', undefined, of.id),
      pageOf(row, 'steps', undefined, of.id),
      ...(row.yields === undefined ? [] : [pageOf(row, 'yields', undefined, of.id)]),
      ...(batches === 1 ? [] : [derived('ingredients[].amount', 'the printed amount times the batches')]),
      ...found.basis,
    ],
    cautions: [
      ...(row.cautions ?? []).map(recipeCaution),
      ...(row.mustKeep === undefined ? [] : [recipeCaution('recipe-proportions')]),
      ...jamCautions(row),
      ...found.cautions,
      ...(batches > 1 && row.batch.whole === true ? [acidCaution('batch-by-batch')] : []),
      ...(isStrong(asked.acetic) ? [acidCaution('stronger-vinegar')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
