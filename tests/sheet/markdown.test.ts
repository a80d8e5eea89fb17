import { expect, test } from 'vitest';
import { bullet, bullets, table } from '../../src/sheet/markdown';

test('a table reads aligned as plain text, and no cell breaks it', () => {
  expect(table(['a', 'what'], [['1', 'x|y'], ['22']])).toBe(
    '| a   | what |\n|-----|------|\n| 1   | x/y  |\n| 22  |      |',
  );
});
test('bullets are wrapped with their text aligned', () => {
  expect(bullet('one two three four', 12)).toBe('- one two\n  three four');
  expect(bullet('unbreakablylong word', 8)).toBe('- unbreakablylong\n  word');
  expect(bullets(['a', 'b'])).toBe('- a\n- b');
});
