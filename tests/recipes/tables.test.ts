import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/StillroomError';
import { formName, nameOf } from '../../src/foods/tables';
import { foodsOf } from '../../src/process/scope';
import { rowsOf } from '../../src/process/tables';
import { parseQuantity } from '../../src/quantity/parseQuantity';
import { packageRow } from '../../src/recipes/pectin';
import { operationRow, type RecipeRow, recipeRow } from '../../src/recipes/rows/tables';
import { atHandRow, lackRow } from '../../src/recipes/ways/lacking';
import { orderRow } from '../../src/recipes/ways/order';
import { seenByRecipe } from '../helpers/seenIn';
import { checkTables, dataFolder, knownSources, readTable } from '../helpers/tables';

const FILES = readdirSync(dataFolder('recipes'))
  .filter(
    (file) =>
      file.endsWith('.json') &&
      ![
        'at-hand.json',
        'cautions.json',
        'lacks.json',
        'operations.json',
        'pectin-packages.json',
        'usual-order.json',
      ].includes(file),
  )
  .map((file) => file.replace(/\.json$/, ''));

checkTables('recipes', {
  operations: operationRow(),
  'at-hand': atHandRow(),
  lacks: lackRow(),
  'usual-order': orderRow(),
  'pectin-packages': packageRow(),
  ...Object.fromEntries(FILES.map((file) => [file, recipeRow()])),
});

const all: RecipeRow[] = FILES.flatMap((file) => readTable('recipes', file).rows);
const operations = new Set<string>(readTable('recipes', 'operations').rows.map(({ id }: { id: string }) => id));
const cautions = new Set<string>(readTable('recipes', 'cautions').map(({ id }: { id: string }) => id));

test('an id is there once in all files', () => {
  const ids = all.map(({ id }) => id);
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
});

/** What a check finds wrong, by recipe. */
const wrong = (find: (recipe: RecipeRow) => readonly string[]): string[] =>
  all.flatMap((recipe) => find(recipe).map((what) => `${recipe.id}: ${what}`));
const fails = (action: () => unknown): boolean => {
  try {
    action();
    return false;
  } catch (error) {
    if (error instanceof StillroomError || error instanceof Error) return true;
    throw error;
  }
};

describe('every recipe', () => {
  test('names foods and forms of the pantry', () => {
    expect(
      wrong(({ foods, excludes = [], packFoods = {}, ingredients, form }) => [
        ...[...foods, ...excludes, ...Object.values(packFoods).flat()].filter((id) => fails(() => nameOf(id))),
        ...ingredients
          .flatMap(({ food }) => (food === undefined || food === '@scope' ? [] : [food]))
          .filter((id) => fails(() => nameOf(id))),
        ...[form, ...ingredients.map((line) => line.form)]
          .flatMap((id) => (id === undefined ? [] : [id]))
          .filter((id) => fails(() => formName(id))),
      ]),
    ).toEqual([]);
  });

  test('has amounts, times and temperatures that are read', () => {
    const ends = (span: unknown): string[] =>
      typeof span === 'string' ? [span] : span === undefined ? [] : Object.values(span as object);
    expect(
      wrong(({ ingredients, steps, keeps, rawNeed = [] }) => [
        ...[
          ...ingredients.flatMap(({ amount, most, perJar = {}, per }) => [
            amount,
            most,
            per?.amount,
            ...Object.values(perJar),
          ]),
          ...rawNeed.map(({ raw }) => raw),
        ]
          .flatMap((text) => (text === undefined ? [] : [text]))
          .filter((text) => fails(() => parseQuantity(text))),
        ...[
          ...steps.flatMap(({ time }) => ends(time)),
          ...keeps.flatMap((keep) => ('place' in keep ? ends(keep.time) : [])),
        ].filter((text) => fails(() => parseQuantity(text, 'time'))),
        ...steps
          .flatMap(({ temperature }) => ends(temperature))
          .filter((text) => fails(() => parseQuantity(text, 'temperature'))),
        ...steps.flatMap(({ size }) => ends(size)).filter((text) => fails(() => parseQuantity(text, 'length'))),
      ]),
    ).toEqual([]);
  });

  test('has an amount of one kind in each line, and says what is counted', () => {
    expect(
      wrong(({ ingredients }) =>
        ingredients.flatMap((line) => [
          ...((line.food === undefined) === (line.item === undefined)
            ? [`food or item: ${line.food} ${line.item}`]
            : []),
          ...([line.amount, line.count, line.perJar].filter((given) => given !== undefined).length > 1
            ? [`two amounts: ${line.food}`]
            : []),
          ...((line.count === undefined) === (line.counted === undefined)
            ? []
            : [`counted: ${line.food ?? line.item}`]),
        ]),
      ),
    ).toEqual([]);
  });

  test('is made of operations that the table has', () => {
    expect(wrong(({ steps }) => steps.map((step) => step.do).filter((id) => !operations.has(id)))).toEqual([]);
    const ids = new Set(all.map(({ id }) => id));
    expect(
      wrong(({ steps }) => steps.flatMap(({ recipe }) => (recipe === undefined || ids.has(recipe) ? [] : [recipe]))),
    ).toEqual([]);
  });

  test('names cautions and documents that are there', () => {
    expect(wrong(({ cautions: named = [] }) => named.filter((id) => !cautions.has(id)))).toEqual([]);
    expect(
      wrong(({ readings = [], ...row }) =>
        [...(seenByRecipe.get(row.id) ?? []), ...readings]
          .map(({ document }) => document)
          .filter((id) => !knownSources.has(id)),
      ),
    ).toEqual([]);
  });

  test('ends in a process that names its foods, and is processed where it has one', () => {
    expect(
      wrong(({ keeps, foods, steps, mix }) => {
        const processes = keeps.flatMap((keep) => ('process' in keep ? [keep.process] : []));
        const named = (process: string) => new Set(rowsOf(process).flatMap((row) => [row.food, ...foodsOf(row)]));
        return [
          ...processes.filter((process) => rowsOf(process).length === 0).map((process) => `no process ${process}`),
          ...processes.flatMap((process) =>
            (mix === 'as printed' ? [] : foods)
              .filter((food) => !named(process).has(food))
              .map((food) => `${process} does not name ${food}`),
          ),
          ...(processes.length > 0 && !steps.some((step) => step.do === 'process') ? ['no step of processing'] : []),
        ];
      }),
    ).toEqual([]);
  });
});
