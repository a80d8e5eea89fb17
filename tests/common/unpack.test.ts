import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unpack } from '../../src/common/unpack';
import { packList } from '../build/pack';

const back = (rows: readonly unknown[]): readonly unknown[] => unpack(JSON.stringify(packList(rows)));

describe('rows come back as they were packed', () => {
  test.each<[string, readonly unknown[]]>([
    ['none', []],
    ['one', [{ id: 'a', n: 1 }]],
    ['a column of one value', [{ s: 'x' }, { s: 'x' }, { s: 'x' }]],
    ['a column that some rows lack', [{ a: 1 }, { a: 1, b: 2 }, {}]],
    ['null is a value, and another than none', [{ a: null }, {}, { a: 0 }]],
    ['rows inside of rows', [{ steps: [{ do: 'wash' }, { do: 'peel', of: 'peach' }] }, { steps: [] }, { id: 'z' }]],
    ['a list of one row or of plain words', [{ steps: [{ do: 'wash' }] }, { steps: ['wash', 'peel'] }]],
    ['an object as a value', [{ at: { low: 1, high: 2 } }, { at: { low: 1 } }, { at: { low: 1, high: 2 } }]],
    [
      'columns in another order',
      [
        { a: 1, b: 2 },
        { b: 3, a: 4 },
      ],
    ],
    ['words with commas and quotes', [{ t: 'a, "b"' }, { t: "c'd\\e" }, { t: '' }]],
    ['plain words', ['a', 'b', 'a']],
  ])('%s', (_, rows) => {
    expect(back(rows)).toEqual(rows);
  });

  test('whatever they hold', () => {
    const name = fc.constantFrom('id', 'food', 'low', 'steps', 'at');
    const value = fc.jsonValue({ maxDepth: 3 }).filter((each) => !JSON.stringify(each).includes('__proto__'));
    fc.assert(
      fc.property(fc.array(fc.dictionary(name, value), { maxLength: 12 }), (rows) => {
        const plain = JSON.parse(JSON.stringify(rows));
        expect(back(plain)).toEqual(plain);
      }),
    );
  });
});

test('a value that many rows share is written once', () => {
  const rows = Array.from({ length: 50 }, (_, n) => ({ n, source: n % 2 === 0 ? 'a long name' : 'another long name' }));
  expect(JSON.stringify(packList(rows)).split('a long name')).toHaveLength(2);
});
