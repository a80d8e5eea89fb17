/** What can stand in a field of a day: the foods that recipes name, and the ways that these lots have in this kitchen. */
import { StillroomError } from '../errors/StillroomError';
import { foods } from '../foods/foods';
import { forms } from '../foods/forms';
import { isFor, RECIPES } from '../recipes/rows/rows';
import type { Way } from '../recipes/ways/way';
import { type WaysToKeepInput, waysToKeep } from '../recipes/waysToKeep';
import { entryOf, type JsonSchema } from './entries';
import { alternatives, isTree, type Steps, stepsOf, valueAt } from './fieldPath';

/** Of a day, what `waysToKeep` takes as well. */
function partOf(value: unknown, schema: JsonSchema | undefined): unknown {
  if (schema === undefined) return undefined;
  const [first] = alternatives(schema);
  if (Array.isArray(value)) return value.map((item) => partOf(item, first?.items as JsonSchema | undefined));
  const properties = first?.properties;
  if (!isTree(value) || !isTree(properties)) return value;
  const kept = Object.entries(value).filter(([name]) => Object.hasOwn(properties, name));
  return Object.fromEntries(kept.map(([name, part]) => [name, partOf(part, properties[name] as JsonSchema)]));
}

/** The ways that the lots of a day have; none while something in it is wrong. */
function waysOf(day: unknown): readonly Way[] {
  try {
    const found = waysToKeep(partOf(day, entryOf('waysToKeep').input) as WaysToKeepInput);
    return 'ways' in found ? found.ways : [];
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return [];
  }
}

const texts = (values: readonly unknown[]): string[] => [...new Set(values.filter((each) => typeof each === 'string'))];
const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** The steps to what a field is in. */
const stepsBefore = (path: string): Steps => (stepsOf(path) ?? []).slice(0, -1);

/** The forms of the food that a product is made from; all of them where it names none. */
function formsFrom(food: unknown): readonly string[] {
  try {
    return forms(typeof food === 'string' ? { food } : {}).map(({ form }) => form);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return [];
  }
}

/** What of a day a field is tried with: the food of a lot by that lot alone, whatever is made of the others. */
export function trialOfDay(path: string, day: unknown): { readonly path: string; readonly day: unknown } {
  const steps = stepsOf(path) ?? [];
  if (steps[0] !== 'lots' || steps[2] !== 'food') return { path, day };
  return { path: 'lots[0].food', day: { lots: [valueAt(day, steps.slice(0, 2))], kitchen: valueAt(day, ['kitchen']) } };
}

/** What the fields of a day could hold; nothing for a field that is read as in any other function. */
export function candidatesOfDay(path: string, day: unknown): readonly string[] | undefined {
  switch (path.replaceAll(/\[\d+\]/g, '[]')) {
    case 'lots[].food':
      return foods().flatMap(({ id, food }) => (RECIPES.some((row) => isFor(row, id)) ? [food] : []));
    case 'products[].recipe':
      return texts(waysOf(day).map(({ recipe }) => recipe));
    case 'products[].make':
      return texts(waysOf(day).map(({ makes }) => makes));
    case 'products[].from':
      return texts(listOf(valueAt(day, ['lots'])).map((lot) => valueAt(lot, ['food'])));
    case 'products[].form':
      return formsFrom(valueAt(day, [...stepsBefore(path), 'from']));
    case 'products[].jar':
      return texts(listOf(valueAt(day, ['kitchen', 'jars'])).map((jars) => valueAt(jars, ['jar'])));
    default:
      return undefined;
  }
}
