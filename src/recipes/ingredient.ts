/** One ingredient of a printed recipe, for one pot. */
import { foodsNamed } from '../foods/lookUpFood';
import { saidOf } from '../foods/phrases';
import { formName, nameOf } from '../foods/tables';
import { kitchenMeasure } from '../produce/weights/kitchenMeasure';
import { parseQuantity } from '../quantity/parseQuantity';
import type { Quantity } from '../quantity/types';
import { isVolume, measured, type Side } from './measure';
import { pectinIn } from './pectin';
import type { IngredientRow, RecipeRow, Role } from './rows/tables';

/** One line of the list of ingredients, for one pot. */
export interface RecipeIngredient {
  /** What it is, in its form: `apple juice`, `chopped onions`. */
  readonly what: string;
  /** Trade name of the food, where the pantry of names has it. */
  readonly food?: string;
  /** Its form. */
  readonly form?: string;
  /** What it is for: `fruit`, `acid`, `sugar` ... */
  readonly role: Role;
  /** How much goes into one pot. */
  readonly amount?: Quantity<'mass'> | Quantity<'volume'>;
  /** The same by weight, where these tables weigh a measure of it; of liquid pectin, by volume. */
  readonly or?: Quantity<'mass'> | Quantity<'volume'>;
  /** The most of it, where the page prints a range. */
  readonly amountMost?: Quantity<'mass'> | Quantity<'volume'>;
  /** How many pieces go into one pot, at least. */
  readonly pieces?: number;
  /** How many pieces, at most. */
  readonly piecesMost?: number;
  /** What is counted: `cloves`. */
  readonly counted?: string;
  /** What goes into each jar, by its size. */
  readonly eachJar?: Readonly<Record<string, Quantity<'mass'> | Quantity<'volume'>>>;
  /** What the amount is for, where it is not the batch. */
  readonly amountFor?: {
    /** So much. */
    readonly amount: Quantity<'mass'> | Quantity<'volume'>;
    /** Of this. */
    readonly of: string;
  };
  /** Least share of acetic acid that a vinegar must have. */
  readonly acetic?: number;
  /** Never use less of it. */
  readonly neverLess: boolean;
  /** You may leave it out. */
  readonly optional: boolean;
  /** It draws water out of the food, or soaks it, and is poured off before the jars are filled. */
  readonly drained: boolean;
  /** Lines with the same word are choices: take one of them. */
  readonly oneOf?: string;
  /** Only for this pack. */
  readonly pack?: 'hot' | 'raw';
  /** What the page says besides. */
  readonly note?: string;
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
  const found = kitchenMeasure({
    food: nameOf(line.food),
    ...(line.form === undefined ? {} : { form: formName(line.form) }),
    volume: amount,
  });
  return found.known ? { value: Math.round(found.mass.value), unit: 'g' } : undefined;
}

/** A food in its form, as people say it: `apple juice`; the form by itself where the food has no name in the pantry. */
function called({ form, item }: IngredientRow, food: string | undefined): string | undefined {
  if (form === undefined) return food ?? item;
  const [named] = food === undefined ? [] : foodsNamed(food);
  // `the fruit` of a page for several is no food of the pantry
  if (food === undefined || named === undefined || nameOf(named.id) !== food)
    return `${food ?? item}, ${formName(form)}`;
  return saidOf(food, formName(form)).phrase;
}

/** A line as an answer holds it: `name` is what the food of the recipe is called. */
export function ingredientOf(row: RecipeRow, line: IngredientRow, name: string, times: number): RecipeIngredient {
  const side = sideOf(line, row);
  const known = line.food === undefined ? undefined : line.food === '@scope' ? name : nameOf(line.food);
  const amount =
    line.amount === undefined ? undefined : measured(line.amount, line.per === undefined ? times : 1, side);
  const or =
    line.weighs !== undefined
      ? (measured(line.weighs, times, 'nearest') as Quantity<'mass'>)
      : amount === undefined
        ? pectinIn(line)
        : weightOf(line, amount);
  const counted = (count: number): number => Math.ceil(count * times * 2 - 1e-9) / 2;
  return {
    what: [called(line, known), line.printed].filter((words) => words !== undefined).join(', '),
    ...(known === undefined ? {} : { food: known }),
    ...(line.form === undefined ? {} : { form: formName(line.form) }),
    role: line.role,
    ...(amount === undefined ? {} : { amount }),
    ...(or === undefined ? {} : { or }),
    ...(line.most === undefined
      ? {}
      : { amountMost: measured(line.most, line.per === undefined ? times : 1, 'nearest') }),
    ...(line.count === undefined ? {} : { pieces: counted(line.count), counted: line.counted as string }),
    ...(line.countMost === undefined ? {} : { piecesMost: counted(line.countMost) }),
    ...(line.perJar === undefined ? {} : { eachJar: eachJarOf(line.perJar) }),
    ...(line.per === undefined
      ? {}
      : { amountFor: { amount: parseQuantity(line.per.amount) as Quantity<'mass'>, of: line.per.of } }),
    ...(line.acetic === undefined ? {} : { acetic: line.acetic }),
    neverLess: line.keep === true,
    optional: line.optional === true,
    drained: line.drained === true,
    ...(line.choose === undefined ? {} : { oneOf: line.choose }),
    ...(line.pack === undefined ? {} : { pack: line.pack }),
    ...(line.notes === undefined ? {} : { note: line.notes }),
  };
}

const eachJarOf = (perJar: Readonly<Record<string, string>>): NonNullable<RecipeIngredient['eachJar']> =>
  Object.fromEntries(
    Object.entries(perJar).map(([size, amount]) => [size, parseQuantity(amount) as Quantity<'volume'>]),
  );
