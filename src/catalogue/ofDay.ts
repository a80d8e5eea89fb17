/** What can stand in a field of a day: the foods that recipes name, and the ways that these lots have in this kitchen. */
import { StillroomError } from '../errors/StillroomError';
import { foods } from '../foods/foods';
import { isFor, RECIPES } from '../recipes/rows/rows';
import type { Way } from '../recipes/ways/way';
import { type WaysToKeepInput, waysToKeep } from '../recipes/waysToKeep';
import { entryOf, type JsonSchema } from './entries';
import { alternatives, isTree, valueAt } from './fieldPath';

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

/** What the fields of a day could hold; nothing for a field that is read as in any other function. */
export function candidatesOfDay(field: string, day: unknown): readonly string[] | undefined {
  switch (field.replaceAll(/\[\d+\]/g, '[]')) {
    case 'lots[].food':
      return foods().flatMap(({ id, food }) => (RECIPES.some((row) => isFor(row, id)) ? [food] : []));
    case 'products[].recipe':
      return texts(waysOf(day).map(({ recipe }) => recipe));
    case 'products[].make':
      return texts(waysOf(day).map(({ makes }) => makes));
    case 'products[].from':
      return texts(listOf(valueAt(day, ['lots'])).map((lot) => valueAt(lot, ['name']) ?? valueAt(lot, ['food'])));
    case 'products[].jar':
      return texts(listOf(valueAt(day, ['kitchen', 'jars'])).map((jars) => valueAt(jars, ['jar'])));
    default:
      return undefined;
  }
}
