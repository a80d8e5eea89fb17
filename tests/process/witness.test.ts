/** Every process row, jar and band stands on what two readings of the printed pages found, and no food is inherited. */
import { describe, expect, test } from 'vitest';
import { testedProcess } from '../../src/process/index';
import { type ProcessRow, processRecipeRows, processRows } from '../../src/process/tables';
import { RECIPES } from '../../src/recipes/rows/rows';
import { seenByRecipe } from '../helpers/seenIn';
import { expectListed } from '../helpers/shrinking';
import { checksOf } from './printed';
import {
  cellsOf,
  differing,
  documentsOf,
  FIRST,
  SECOND,
  secondChecks,
  unnamed,
  unwitnessed,
  type Witness,
  witnessesOf,
} from './witnessing';

const first = witnessesOf(FIRST.flatMap(checksOf), processRows);
const second = witnessesOf(secondChecks, processRows);
/** The second reading saw these cells too; it found less, and the longer figure is served. */
const seenWithLess = differing.map(({ cell: { input, row }, reading, served }) => {
  const [witness] = witnessesOf(
    [{ id: '', call: 'testedProcess', input, expect: { tested: true, minutes: served.minutes } }],
    processRows,
  ) as [Witness];
  return { ...witness, row, ...(reading.psi === undefined ? {} : { psi: served.psi as number }) };
});
describe('every served cell (row, listed jar, band)', () => {
  test('is printed with these figures in at least one reading', () => {
    expect(unwitnessed(processRows, [...first, ...second])).toEqual([]);
  });

  test('is printed in both readings, counted apart', () => {
    const cells = cellsOf(processRows).length;
    const withoutFirst = unwitnessed(processRows, first);
    const withoutSecond = unwitnessed(processRows, [...second, ...seenWithLess]);
    expect(SECOND).toHaveLength(3);
    expect(cells).toBeGreaterThan(1500);
    expect({ withoutFirst, withoutSecond }).toEqual({ withoutFirst: [], withoutSecond: [] });
  });

  test('each check of the second reading is answered by the row that it names', () => {
    const other = secondChecks.flatMap(({ id, input, row }) => {
      const answer = testedProcess(input);
      return answer.tested && answer.row === row ? [] : [id];
    });
    expect(other).toEqual([]);
  });

  test('where the second reading found another figure, a longer time or higher pressure is served', () => {
    for (const { cell, reading, served, why } of differing) {
      const answer = testedProcess(cell.input);
      if (!answer.tested) expect.fail(cell.id);
      const { minutes, pressure, headspace, row } = answer;
      expect({
        minutes,
        ...(pressure === undefined ? {} : { psi: pressure.value }),
        headspace: headspace.value,
      }).toEqual(served);
      expect(row).toBe(cell.row);
      expect(served.minutes, cell.id).toBeGreaterThanOrEqual(reading.minutes);
      expect(served.psi ?? 0, cell.id).toBeGreaterThanOrEqual(reading.psi ?? 0);
      expect(served.headspace, cell.id).toBeGreaterThanOrEqual(reading.headspace);
      expect(served, cell.id).not.toMatchObject({ minutes: reading.minutes, headspace: reading.headspace });
      expect(why.trim(), cell.id).not.toBe('');
    }
  });
});

describe('every recipe that ends in a process', () => {
  const ending = RECIPES.flatMap((row) =>
    seenByRecipe.has(row.id) && row.keeps.some((keep) => 'process' in keep)
      ? [{ id: row.id, seenIn: seenByRecipe.get(row.id) ?? [] }]
      : [],
  );

  test('there is one for each process', () => {
    const without = processRows.filter((row) => !processRecipeRows.some(({ process }) => process === row.recipe));
    expect(without.map(({ recipe }) => recipe)).toEqual([]);
    expect(ending.length).toBe(processRecipeRows.length);
  });

  test('names a document in which it was seen; both readings together name two', () => {
    expect(ending.filter(({ seenIn }) => seenIn.length === 0).map(({ id }) => id)).toEqual([]);
    const few = ending.flatMap((row): [string, string][] => {
      const documents = [...documentsOf(row, secondChecks)];
      return documents.length < 2 ? [[row.id, `only in ${documents.join()}`]] : [];
    });
    expectListed(
      {
        file: 'tests/process/oneDocument.json',
        found: new Map(few),
        mend: 'Look the recipe up in a second document and name it in `seenIn`.',
      },
      'seen in one document',
    );
  });

  test('names each food that its process is served for, unless the product is the food', () => {
    expect(unnamed(processRows, processRecipeRows)).toEqual([]);
  });
});

describe('the checks can fail', () => {
  const [row] = processRows.filter(({ id }) => id === 'apple-butter-hot-quart-boiling-water') as [ProcessRow];
  const all = [...first, ...second];

  test('on an invented row', () => {
    const invented = { ...row, id: 'banana-butter-hot-pint-boiling-water', recipe: 'banana-butter', food: 'banana' };
    expect(unwitnessed([row, invented], all)).toEqual([
      `${invented.id} quart 0 10 `,
      `${invented.id} quart 1 15 `,
      `${invented.id} quart 2 20 `,
    ]);
    expect(unnamed([invented], [], () => ['banana', 'apple'])).toEqual(['banana-butter: apple']);
  });

  test('on a jar that is added to a row, and on a figure that is changed', () => {
    expect(unwitnessed([row], all)).toEqual([]);
    expect(unwitnessed([{ ...row, jars: ['quart', 'half-gallon'] }], all)).toHaveLength(3);
    expect(unwitnessed([{ ...row, minutes: [10, 15, 15] }], all)).toEqual([`${row.id} quart 2 15 `]);
    expect(unwitnessed([{ ...row, minutes: [10, 15, 25] }], all)).toHaveLength(1);
    const [gauge] = processRows.filter(({ psi }) => psi?.length === 4) as [ProcessRow];
    expect(unwitnessed([gauge], all)).toEqual([]);
    expect(unwitnessed([{ ...gauge, psi: [5, 7, 8, 9] }], all)).toHaveLength(gauge.jars.length);
  });

  test('on a cell that was refused and is served', () => {
    const [refused] = processRows
      .filter(({ id, psi }) => id.startsWith('jam-or-jelly') && psi === undefined)
      .filter((one) => one.refused !== undefined) as [ProcessRow];
    const { refused: _, ...open } = refused;
    expect(unwitnessed([refused], all)).toEqual([]);
    expect(unwitnessed([open as ProcessRow], all)).toHaveLength(4);
  });

  test('on a wider scope, and on a witness that is taken away', () => {
    expect(unnamed([row], processRecipeRows)).toEqual([]);
    expect(unnamed([row], processRecipeRows, () => ['apple', 'quince'])).toEqual(['apple-butter: quince']);
    expect(
      unwitnessed(
        [row],
        all.filter((witness) => witness.row !== row.id),
      ),
    ).toHaveLength(3);
  });

  test('on a recipe of one document', () => {
    const recipe = { id: 'apple-butter', seenIn: [{ document: 'nchfp' }] };
    expect(documentsOf(recipe, []).size).toBe(1);
    expect(documentsOf(recipe, secondChecks).size).toBe(2);
  });
});
