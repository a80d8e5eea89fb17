import { expect, test } from 'vitest';
import { withAllAlike, withRounds } from '../../src/sheet/repeats';
import type { Row } from '../../src/sheet/sheet';

let place = 0;
const row = (key: string): Row => {
  const at = place++;
  const cell = { times: [`${at}`], text: `pot ${key}` };
  return {
    at,
    letters: 'A',
    times: [`${at}:00`],
    kind: 'work',
    hands: key,
    stove: [cell],
    canner: [],
    trays: [],
    loads: [],
    tasks: [at],
    key,
  };
};
const rows = (keys: string) => {
  place = 0;
  return [...keys].map(row);
};
const short = (found: readonly Row[]) => found.map(({ key, times }) => `${key}${times.length}`).join(' ');

test.each([
  ['abc', 'a1 b1 c1'],
  ['aaa', 'a3'],
  ['abab', 'a2 b2'],
  ['xabcabcabcy', 'x1 a3 b3 c3 y1'],
  ['abcab', 'a1 b1 c1 a1 b1'],
])('%s: rounds done again at once share their rows', (keys, found) =>
  expect(short(withRounds(rows(keys)))).toBe(found),
);

test('all rows alike of a day, where a page has no room', () => {
  expect(short(withAllAlike(rows('abcab'), () => 0))).toBe('a2 b2 c1');
  expect(short(withAllAlike(rows('abcab'), ({ at }) => (at < 3 ? 0 : 1)))).toBe('a1 b1 c1 a1 b1');
});
test('nothing is lost: every time, task and cell', () => {
  const [found] = withRounds(rows('aaa'));
  expect(found).toMatchObject({
    times: ['0:00', '1:00', '2:00'],
    tasks: [0, 1, 2],
    stove: [{ times: ['0', '1', '2'], text: 'pot a' }],
  });
});
