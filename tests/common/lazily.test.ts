import { expect, test } from 'vitest';
import { lazily } from '../../src/common/lazily';

test('the value is made when it is first asked for, once', () => {
  let made = 0;
  const value = lazily(() => ({ made: ++made }));
  expect(made).toBe(0);
  expect(value()).toBe(value());
  expect(made).toBe(1);
});

test('nothing is a value too, and is made once', () => {
  let made = 0;
  const value = lazily(() => {
    made += 1;
    return undefined;
  });
  expect([value(), value(), made]).toEqual([undefined, undefined, 1]);
});

test('what fails is tried again', () => {
  let tries = 0;
  const value = lazily(() => {
    tries += 1;
    if (tries === 1) throw new Error('not yet');
    return tries;
  });
  expect(value).toThrow('not yet');
  expect(value()).toBe(2);
});
