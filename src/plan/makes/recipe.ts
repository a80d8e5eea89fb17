/** The printed recipe that a canned product is made by, as parts of what a day makes. */
import { foodsNamed } from '../../foods/lookUpFood';
import { nameOf } from '../../foods/tables';
import type { TestedProcess } from '../../process/testedProcess';
import { isMass } from '../../quantity/fields';
import { parseQuantity } from '../../quantity/parseQuantity';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Unit } from '../../quantity/units';
import { mainLine } from '../../recipes/batchesOf';
import { PANTRY, type PantryItem } from '../../recipes/pantryItems';
import { isFor, pageOf, recipeOfId } from '../../recipes/rows/rows';
import type { IngredientRow as RecipeLine, RecipeRow } from '../../recipes/rows/tables';
import { stepText } from '../../recipes/step';
import type { Basis } from '../../sources/basis';
import { readJar } from '../../words/jar';
import type { Activity } from '../request/activity';
import type { Ingredient, IngredientRole } from '../request/plannedProduct';
import { type Day, type Decided, massOf, volumeOf } from './making';
import { kgOfMeasure } from './pantry';

/** What a recipe takes besides the food itself, for so much of it. */
interface Part {
  readonly what: string;
  readonly item?: PantryItem;
  readonly role: IngredientRole;
  readonly amount: number;
  readonly unit: Unit<'volume'>;
  /** The amount is for this much: raw or prepared food, or filled jars. */
  readonly per: number;
  readonly perUnit: Unit<'mass'> | Unit<'volume'>;
  readonly perOf: 'raw' | 'ready' | 'jar';
  readonly neverLess: boolean;
}

/** A printed recipe as a product is made by it. */
export interface PrintedRecipe {
  /** What the filled jars are covered with, where they are. */
  readonly cover?: string;
  readonly parts: readonly Part[];
  readonly steps: readonly string[];
  /** What must not be changed, and what the page says of other sizes. */
  readonly mustKeep: readonly string[];
  readonly basis: readonly Basis[];
}

const MAIN = new Set(['fruit', 'vegetable', 'meat', 'fish']);
/** What else is cut up and goes in: such a recipe takes more than one lot. */
const othersOf = ({ ingredients }: RecipeRow, food: string): readonly RecipeLine[] =>
  ingredients.filter(
    (line) => MAIN.has(line.role) && line.optional !== true && line.food !== '@scope' && line.food !== food,
  );

/** The recipe of a process for the food of this id; none where it takes more than that food. */
export function recipeFor({ recipes, pack }: TestedProcess, food: string): PrintedRecipe | undefined {
  const rows = recipes.flatMap(({ recipe }) => recipeOfId(recipe) ?? []);
  const row = rows.find((each) => isFor(each, food) && othersOf(each, food).length === 0);
  return row && printed(row, food, pack);
}

/** A recipe by its id, for a hot pack of this food. */
export function recipeNamed(id: string, food: string): PrintedRecipe {
  const row = recipeOfId(id);
  // ids come from our own tables, never from a caller: a missing one is a mistake that the tests meet
  if (row === undefined) throw new Error(`no recipe ${id}`);
  return printed(row, food, 'hot');
}

/** What the amounts of a batch are for: the raw food, the jars it fills, or the prepared food. */
function batchOf(row: RecipeRow, food: string): Pick<Part, 'per' | 'perUnit' | 'perOf'> | undefined {
  const line = mainLine(row, food);
  const main =
    line?.amount === undefined ? undefined : (parseQuantity(line.amount) as Quantity<'mass'> | Quantity<'volume'>);
  if (main !== undefined && isMass(main)) return { per: main.value, perUnit: main.unit, perOf: 'raw' };
  const [filled] = row.yields ?? [];
  if (filled !== undefined && filled.low === filled.high) {
    const liters = valueIn(readJar(filled.jar).volume, 'L') * filled.low;
    return { per: liters, perUnit: 'L', perOf: 'jar' };
  }
  return main === undefined ? undefined : { per: main.value, perUnit: main.unit as Unit<'volume'>, perOf: 'ready' };
}

const itemOf = ({ food, form, role }: RecipeLine): PantryItem | undefined =>
  role === 'starch'
    ? 'starch for canning'
    : PANTRY.find((item) => {
        const [named] = foodsNamed(item);
        return named !== undefined && named.id === food && (named.form === undefined || named.form === form);
      });

/** What a line is called on a sheet: by its name in the pantry, or as the page has it. */
function whatOf({ food, item, printed: words }: RecipeLine, held: PantryItem | undefined): string {
  const name = held ?? (food === undefined ? (item as string) : nameOf(food));
  if (words === undefined || held !== undefined) return name;
  return words.includes(' ') ? `${name}, ${words}` : `${words} ${name}`;
}

const PER_OF = { raw: 'raw', ready: 'ready', juice: 'ready', liquid: 'ready' } as const;

/** A line of the page as a part of what a day makes; none for the food itself, and for what has no measure. */
function partOf(row: RecipeRow, food: string, line: RecipeLine): Part[] {
  const { amount, per, role, optional, drained, perJar, keep } = line;
  if (MAIN.has(role) || optional === true || drained === true || perJar !== undefined || amount === undefined)
    return [];
  const given = parseQuantity(amount) as Quantity<'mass'> | Quantity<'volume'>;
  if (isMass(given)) return [];
  const own = per === undefined || per.of === 'water' ? undefined : perUnitOf(per.amount, PER_OF[per.of]);
  const batch = own ?? batchOf(row, food);
  if (batch === undefined || per?.of === 'water') return [];
  const item = itemOf(line);
  return [
    {
      what: whatOf(line, item),
      ...(item === undefined ? {} : { item }),
      role: role as IngredientRole,
      amount: given.value,
      unit: given.unit as Unit<'volume'>,
      ...batch,
      neverLess: keep === true,
    },
  ];
}

/** What an amount is for: raw food by weight, prepared food by volume, a liter of it being about a kilogram. */
function perUnitOf(amount: string, perOf: Part['perOf']): Pick<Part, 'per' | 'perUnit' | 'perOf'> {
  const given = parseQuantity(amount) as Quantity<'mass'> | Quantity<'volume'>;
  if (!isMass(given)) return { per: given.value, perUnit: given.unit, perOf: 'ready' };
  if (perOf === 'raw') return { per: given.value, perUnit: given.unit, perOf };
  return { per: valueIn(given, 'kg'), perUnit: 'L', perOf };
}

/** One line of each choice: the first that the page names. */
function chosen(lines: readonly RecipeLine[]): readonly RecipeLine[] {
  return lines.filter(
    ({ choose }, index) => choose === undefined || lines.findIndex((each) => each.choose === choose) === index,
  );
}

/** The acid before all else: it is what a list must not lose. */
const acidFirst = (parts: readonly Part[]): readonly Part[] => [
  ...parts.filter(({ role }) => role === 'acid'),
  ...parts.filter(({ role }) => role !== 'acid'),
];

/** The steps that fill the jars and what comes after them, which the plan says itself. */
const FILLS = new Set(['fill-hot', 'fill-raw', 'acid-in-jars', 'salt-in-jars', 'cover']);

function printed(row: RecipeRow, food: string, pack: string): PrintedRecipe {
  const steps = row.steps.filter((step) => (step.pack ?? pack) === pack);
  const filling = steps.findIndex((step) => FILLS.has(step.do));
  const cover = steps.find((step) => step.do === 'cover')?.of;
  return {
    ...(cover === undefined ? {} : { cover }),
    parts: acidFirst(chosen(row.ingredients).flatMap((line) => partOf(row, food, line))),
    steps: steps.slice(0, filling === -1 ? steps.length : filling).map(stepText),
    mustKeep: row.mustKeep ?? [],
    basis: [pageOf(row, 'ingredients', 'the printed recipe')],
  };
}

/** Of an ingredient for one of what it is for: a raw kg, a litre ready, or a jar. */
function cupsOf({ amount, unit, per, perUnit, perOf }: Part, jar: string): number {
  const cups = valueIn<'volume'>({ value: amount, unit }, 'cup');
  if (perOf === 'raw') return cups / (per * valueIn<'mass'>({ value: 1, unit: perUnit as Unit<'mass'> }, 'kg'));
  const litres = per * valueIn<'volume'>({ value: 1, unit: perUnit as Unit<'volume'> }, 'L');
  return perOf === 'ready' ? cups / litres : (cups / litres) * valueIn(readJar(jar).volume, 'L');
}

/** What the pantry gives for each unit and each kg, of everything the recipe takes from it. */
export function pantryOf({ parts }: PrintedRecipe, jar: string): NonNullable<Activity['pantry']> {
  return Object.fromEntries(
    parts.flatMap((row) => {
      const { item } = row;
      if (item === undefined) return [];
      const { kg } = kgOfMeasure(item, { value: cupsOf(row, jar), unit: 'cup' });
      return [
        [
          item,
          {
            perUnit: row.perOf === 'jar' ? kg : 0,
            perReadyKg: row.perOf === 'ready' ? kg : 0,
            perRawKg: row.perOf === 'raw' ? kg : 0,
          },
        ],
      ];
    }),
  );
}

/** The recipe's own lines for what a day makes of it. */
export function ingredientLines(
  day: Day,
  { parts }: PrintedRecipe,
  jar: string,
  { rawKg, readyKg, ready }: Decided,
): Ingredient[] {
  return parts.map((row): Ingredient => {
    const many = { raw: rawKg, ready: readyKg.high, jar: ready }[row.perOf];
    const amount: Quantity<'volume'> = spooned(cupsOf(row, jar) * many);
    const { item } = row;
    const kg = item === undefined ? undefined : kgOfMeasure(item, amount).kg;
    const weighed = row.role === 'sugar' && kg !== undefined;
    return {
      what: row.what,
      role: row.role,
      ...(weighed && day.metric ? { amount: massOf(day, kg) } : { amount: volumeOf(day, amount) }),
      ...(weighed && !day.metric ? { or: massOf(day, kg) } : {}),
      ...(item === undefined && row.role !== 'liquid' ? { toBuy: true as const } : {}),
      note: `${measure(row)}${row.neverLess ? ', never less' : ''}`,
    };
  });
}

/** Cups, or spoons where it is less than a quarter of a cup. */
export const spooned = (cups: number): Quantity<'volume'> =>
  cups >= 0.25 ? { value: cups, unit: 'cup' } : quantityIn<'volume'>(cups, 'cup', cups >= 1 / 16 ? 'tbsp' : 'tsp');

const OF = { raw: 'as bought', ready: 'prepared', jar: 'in jars' } as const;
const measure = ({ amount, unit, per, perUnit, perOf }: Part): string =>
  `${Number(amount.toFixed(3))} ${unit} to ${per} ${perUnit} ${OF[perOf]}`;
