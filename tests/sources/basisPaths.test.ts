/** The checks of basis paths and noes can fail; tests/vectors/vectors.test.ts runs them over every answer. */
import { expect, test } from 'vitest';
import { poorNoes, resolves, strayPaths } from './basisPaths';

test('a path leads to a field, or it does not', () => {
  const answer = { minutes: 5, ready: { low: 1 }, ways: [{ jar: 'pint' }, {}], none: [] };
  expect(['minutes', 'ready.low', 'ways[].jar', 'ways[]', 'none'].filter((path) => !resolves(answer, path))).toEqual(
    [],
  );
  const wrong = ['', 'the time', 'ready.high', 'ways.jar', 'ways[].pack', 'none[].jar', 'minutes.', 'ways[0].jar'];
  expect(wrong.filter((path) => resolves(answer, path))).toEqual([]);
  expect(strayPaths({ a: 1, basis: [{ of: 'a' }, { of: 'b' }], inner: [{ basis: [{ of: 'a' }] }] })).toEqual([
    'b',
    'a',
  ]);
  const chart = {
    data: { values: [{ minutes: 5 }] },
    usermeta: { basis: [{ of: 'data.values[].minutes' }, { of: 'basis' }] },
  };
  expect(strayPaths(chart)).toEqual(['basis']);
});

test('a poor no is seen', () => {
  const instead = [{ text: 'freeze it' }];
  expect(poorNoes({ known: false, reason: { code: 'none', text: 'none is in these tables' }, instead })).toEqual([]);
  expect(poorNoes({ tested: false, reason: 'none', instead })).toHaveLength(1);
  expect(poorNoes({ tested: false, reason: 'none', instead: [] })).toHaveLength(2);
  expect(poorNoes({ left: [{ instead: 'freeze it' }] })).toHaveLength(1);
  expect(poorNoes({ tested: true })).toEqual([]);
});
