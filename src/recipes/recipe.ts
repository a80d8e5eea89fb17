import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food } from '../foods/fields';
import { formName, nameOf } from '../foods/tables';
import { bought } from '../produce/weights/asBought';
import { massFromVolume } from '../produce/weights/massFromVolume';
import { fields, massOrVolume, number, optional, readInput, reading } from '../quantity/fields';
import { parseQuantity } from '../quantity/parseQuantity';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { NotKnown } from '../sources/no';
import { batchesOf } from './batchesOf';
import { recipeCaution } from './cautions';
import { isVolume, measured, type Side } from './measure';
import { isFor, pageOf, readRecipe } from './rows/rows';
import type { IngredientRow, KeepingRow, Makes, RecipeRow, Role, StepRow } from './rows/tables';
import { sizeOf, wholeOnly } from './scale';
import { ends, operationOf, stepText } from './stepText';

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
});
export type RecipeInput = Given<z.input<typeof schema>>;
type Asked = z.output<typeof schema>;

/** One line of the list of ingredients, for one pot. */
export interface RecipeIngredient {
  /** What it is. */
  readonly what: string;
  /** Trade name of the food, where the pantry of names has it. */
  readonly food?: string;
  /** Its form. */
  readonly form?: string;
  /** What it is for: `fruit`, `acid`, `sugar` ... */
  readonly role: Role;
  /** How much goes into one pot. */
  readonly amount?: Quantity<'mass'> | Quantity<'volume'>;
  /** The same by weight, where these tables weigh a measure of it. */
  readonly or?: Quantity<'mass'>;
  /** The most of it, where the page prints a range. */
  readonly most?: Quantity<'mass'> | Quantity<'volume'>;
  /** How many pieces go into one pot, at least. */
  readonly count?: number;
  /** How many pieces, at most. */
  readonly countMost?: number;
  /** What is counted: `cloves`. */
  readonly counted?: string;
  /** What goes into each jar, by its size. */
  readonly perJar?: Readonly<Record<string, Quantity<'volume'>>>;
  /** What the amount is for, where it is not the batch. */
  readonly per?: {
    /** So much. */
    readonly amount: Quantity<'mass'> | Quantity<'volume'>;
    /** Of this. */
    readonly of: string;
  };
  /** Least share of acetic acid that a vinegar must have. */
  readonly acetic?: number;
  /** Never use less of it. */
  readonly keep: boolean;
  /** You may leave it out. */
  readonly optional: boolean;
  /** Lines with the same word are choices: take one of them. */
  readonly choose?: string;
  /** Only for this pack. */
  readonly pack?: 'hot' | 'raw';
}

/** One step. */
export interface RecipeStep {
  /** Fixed name of the operation: `simmer`. */
  readonly do: string;
  /** The step in words. */
  readonly text: string;
  /** What it keeps busy: `hands`, `burner`, `canner` ... */
  readonly takes: string;
  /** Whether someone stays with it the whole time. */
  readonly attended: boolean;
  /** How long, as printed. */
  readonly time?: {
    /** At least. */
    readonly low: Quantity<'time'>;
    /** At most. */
    readonly high: Quantity<'time'>;
  };
  /** How hot, as printed. */
  readonly temperature?: {
    /** At least. */
    readonly low: Quantity<'temperature'>;
    /** At most. */
    readonly high: Quantity<'temperature'>;
  };
  /** Only for this pack. */
  readonly pack?: 'hot' | 'raw';
  /** You may leave it out. */
  readonly optional: boolean;
}

/** What a recipe ends in. */
export interface RecipeKeeping {
  /** Where it keeps: `shelf`, `refrigerator`, `freezer`, `crock`; jars that were processed keep on the shelf. */
  readonly place: string;
  /** Name of the recipe in the process tables: ask `testedProcess` for its minutes at your elevation. */
  readonly process?: string;
  /** How long it keeps, at least as printed. */
  readonly low?: Quantity<'time'>;
  /** How long it keeps, at most as printed. */
  readonly high?: Quantity<'time'>;
}

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
  /** Food that does not make a whole batch, as a share of one batch. */
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

/** To which side a line is rounded: the acid never falls below the printed proportion, its water never above. */
function sideOf({ role, keep }: IngredientRow, { ingredients }: RecipeRow): Side {
  if (keep === true || role === 'acid') return 'up';
  const thins = role === 'liquid' && ingredients.some((line) => line.role === 'acid' && line.keep === true);
  return thins ? 'down' : 'nearest';
}

/** The weight of a measure, where these tables weigh it. */
function weightOf(line: IngredientRow, amount: Quantity<'mass'> | Quantity<'volume'>): Quantity<'mass'> | undefined {
  if (line.food === undefined || line.food === '@scope' || !isVolume(amount)) return undefined;
  const found = massFromVolume({
    food: nameOf(line.food),
    ...(line.form === undefined ? {} : { form: formName(line.form) }),
    volume: amount,
  });
  return found.known ? { value: Math.round(found.mass.value), unit: 'g' } : undefined;
}

function ingredientOf(row: RecipeRow, line: IngredientRow, name: string, times: number): RecipeIngredient {
  const side = sideOf(line, row);
  const known = line.food === undefined ? undefined : line.food === '@scope' ? name : nameOf(line.food);
  const amount =
    line.amount === undefined ? undefined : measured(line.amount, line.per === undefined ? times : 1, side);
  const or = amount === undefined ? undefined : weightOf(line, amount);
  const counted = (count: number): number => Math.ceil(count * times * 2 - 1e-9) / 2;
  return {
    what: [known ?? line.item, line.printed].filter((words) => words !== undefined).join(', '),
    ...(known === undefined ? {} : { food: known }),
    ...(line.form === undefined ? {} : { form: formName(line.form) }),
    role: line.role,
    ...(amount === undefined ? {} : { amount }),
    ...(or === undefined ? {} : { or }),
    ...(line.most === undefined ? {} : { most: measured(line.most, line.per === undefined ? times : 1, 'nearest') }),
    ...(line.count === undefined ? {} : { count: counted(line.count), counted: line.counted as string }),
    ...(line.countMost === undefined ? {} : { countMost: counted(line.countMost) }),
    ...(line.perJar === undefined ? {} : { perJar: perJarOf(line.perJar) }),
    ...(line.per === undefined
      ? {}
      : { per: { amount: parseQuantity(line.per.amount) as Quantity<'mass'>, of: line.per.of } }),
    ...(line.acetic === undefined ? {} : { acetic: line.acetic }),
    keep: line.keep === true,
    optional: line.optional === true,
    ...(line.choose === undefined ? {} : { choose: line.choose }),
    ...(line.pack === undefined ? {} : { pack: line.pack }),
  };
}

const perJarOf = (perJar: Readonly<Record<string, string>>): Record<string, Quantity<'volume'>> =>
  Object.fromEntries(Object.entries(perJar).map(([size, amount]) => [size, parseQuantity(amount, 'volume')]));

function stepOf(step: StepRow): RecipeStep {
  const { takes, attended } = operationOf(step);
  const span = <D extends 'time' | 'temperature'>(given: NonNullable<StepRow['time']>, dimension: D) => {
    const [low, high] = ends(given);
    return { low: parseQuantity(low, dimension), high: parseQuantity(high, dimension) };
  };
  return {
    do: step.do,
    text: stepText(step),
    takes,
    attended,
    ...(step.time === undefined ? {} : { time: span(step.time, 'time') }),
    ...(step.temperature === undefined ? {} : { temperature: span(step.temperature, 'temperature') }),
    ...(step.pack === undefined ? {} : { pack: step.pack }),
    optional: step.optional === true,
  };
}

/** What a row says of keeping, as an answer holds it. */
export function keepingOf(keep: KeepingRow): RecipeKeeping {
  if ('process' in keep) return { place: 'shelf', process: keep.process };
  if (keep.time === undefined) return { place: keep.place };
  const [low, high] = ends(keep.time);
  return { place: keep.place, low: parseQuantity(low, 'time'), high: parseQuantity(high, 'time') };
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
  return { id: only, name: row.foods.length === 1 ? nameOf(only) : row.mix === 'as printed' ? row.name : 'the fruit' };
}

interface Sized {
  readonly known: true;
  readonly batches: number;
  readonly leftOver?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** How many batches the question asks for, in words of its own or by an amount of food. */
function sized(row: RecipeRow, asked: Asked, of: { readonly id: string; readonly name: string }): Sized | NotKnown {
  const { batches, raw, ready } = asked;
  const given = [batches, raw, ready].filter((each) => each !== undefined);
  if (given.length > 1) fail('CONTRADICTION', 'batches', batches, 'one of `batches`, `raw` and `ready`');
  if (raw === undefined && ready === undefined) return { known: true, batches: batches ?? 1, basis: [], cautions: [] };
  if (asked.food === undefined && row.foods.length > 1)
    fail('MISSING', 'food', undefined, `one of the foods of ${row.name}`, { options: row.foods.map(nameOf) });
  const found = batchesOf(row, of, raw === undefined ? { ready: ready as Quantity<'mass'> } : { raw });
  if (!found.known) return found;
  if (!wholeOnly(row.batch.scale)) return found;
  const whole = Math.floor(found.batches + 1e-9);
  if (whole === 0)
    fail('OUT_OF_RANGE', raw === undefined ? 'ready' : 'raw', undefined, `enough for one whole batch of ${row.name}`);
  return { ...found, batches: whole, leftOver: found.batches - whole };
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
 *   amount that yours can be compared with
 * @throws StillroomError UNKNOWN_NAME for a recipe that these tables do not hold, CONTRADICTION for a food that its
 *   page does not name, OUT_OF_RANGE for a part of a batch where only whole ones are made
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
  const { batches, times } = sizeOf(row, found.batches, 'batches');
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
    ingredients: row.ingredients.map((line) => ingredientOf(row, line, of.name, times)),
    steps: row.steps.map(stepOf),
    mustKeep: row.mustKeep ?? [],
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
      pageOf(row, 'ingredients'),
      pageOf(row, 'steps'),
      ...(row.yields === undefined ? [] : [pageOf(row, 'yields')]),
      ...(batches === 1 ? [] : [derived('ingredients[].amount', 'the printed amount times the batches')]),
      ...found.basis,
    ],
    cautions: [
      ...(row.cautions ?? []).map(recipeCaution),
      ...(row.mustKeep === undefined ? [] : [recipeCaution('keep-the-proportions')]),
      ...found.cautions,
      caution('follow-local-guidance'),
    ],
  });
}
