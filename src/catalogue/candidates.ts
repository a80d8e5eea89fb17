/** What could stand in a field, before anything is tried: the words of its schema, or the names of the tables. */
import { StillroomError } from '../errors/StillroomError';
import { readFood } from '../foods/fields';
import { foods } from '../foods/foods';
import { forms } from '../foods/forms';
import { processesFor } from '../process/processesFor';
import { isFor, RECIPES } from '../recipes/rows/rows';
import { JAR_SIZES } from '../words/jar';
import type { JsonSchema } from './entries';
import { alternatives, type Steps } from './fieldPath';

/** A value that a field may hold. */
export type Choosable = string | number | boolean;

/** The words that schemas list; of a choice of the trade also where other spellings are read. */
function listed(schemas: readonly JsonSchema[]): readonly Choosable[] {
  const found = schemas.flatMap(alternatives).flatMap((each): readonly Choosable[] => {
    if (Array.isArray(each.enum)) return each.enum as Choosable[];
    if (each.type === 'boolean') return [true, false];
    return each.const === undefined ? [] : [each.const as Choosable];
  });
  return [...new Set(found)];
}

const foodNames = (): string[] => foods().map(({ food }) => food);

/** What works, or nothing where the food is no food yet. */
function ofFood<T>(food: unknown, work: (food: string) => readonly T[]): readonly T[] | undefined {
  if (typeof food !== 'string') return undefined;
  try {
    return work(food);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return undefined;
  }
}

/** The recipes of a food: of the recipe tables, and of printed process lines; all of the tables without a food. */
const recipeNames = (food: unknown): readonly string[] =>
  ofFood(food, (one) => [
    ...new Set([
      ...processesFor({ food: one }).processes.map(({ recipe }) => recipe),
      ...RECIPES.filter((row) => isFor(row, readFood(one).id)).map(({ id }) => id),
    ]),
  ]) ?? RECIPES.map(({ id }) => id);

/** Whether a function asks for a heat process: of food, in a jar, in a canner. */
export const asksForProcess = (schema: JsonSchema): boolean =>
  alternatives(schema).some(({ required }) =>
    ['food', 'jar', 'method'].every((name) => (required as string[] | undefined)?.includes(name)),
  );

/**
 * What the printed processes of a food hold of one field, as far as they fit what is given; nothing for another field. Of
 * the jars the smallest is enough: it takes the process of the next larger one that is printed.
 */
export function processWords(name: unknown, given: Readonly<Record<string, unknown>>): readonly string[] {
  if (name === 'jar') return JAR_SIZES.slice(0, 1);
  const rows = ofFood(given.food, (food) => processesFor({ food }).processes) ?? [];
  const fit = rows.filter(({ method, pack }) => (given.method ?? method) === method && (given.pack ?? pack) === pack);
  const words = fit.flatMap(({ method, pack, form }): readonly string[] =>
    name === 'method' ? [method] : name === 'pack' ? [pack] : name === 'form' ? [form] : [],
  );
  return [...new Set(words)];
}

/** What the words of the grammar stand for, by the name of the field. */
function named(name: string, input: JsonSchema, beside: Readonly<Record<string, unknown>>): readonly string[] {
  switch (name) {
    case 'food':
    case 'foods':
      return asksForProcess(input)
        ? foodNames().filter((food) => processesFor({ food }).processes.length > 0)
        : foodNames();
    case 'form':
      return ofFood(beside.food, (food) => forms({ food }))?.map(({ form }) => form) ?? forms().map(({ form }) => form);
    case 'recipe':
      return recipeNames(beside.food);
    case 'jar':
      return JAR_SIZES;
    default:
      return [];
  }
}

/** What a field could hold by its schema and its name; empty for a quantity, a number or a free text. */
export function candidates(
  steps: Steps,
  schemas: readonly JsonSchema[],
  input: JsonSchema,
  beside: Readonly<Record<string, unknown>>,
): readonly Choosable[] {
  const words = listed(schemas);
  if (words.length > 0) return words;
  const name = [...steps].reverse().find((step) => typeof step === 'string');
  const takesText = schemas.flatMap(alternatives).some(({ type }) => type === 'string');
  return typeof name === 'string' && takesText ? named(name, input, beside) : [];
}
