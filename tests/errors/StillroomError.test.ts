import { describe, expect, test, vi } from 'vitest';
import { fail, joinPath, StillroomError, show, within } from '../../src/errors/StillroomError';

test('the error says the field, what was given, and what would be right', () => {
  const error = new StillroomError({
    code: 'OUT_OF_RANGE',
    path: 'lots[0].raw',
    given: '-1 lb',
    expected: 'a mass above zero',
  });
  expect(error).toBeInstanceOf(Error);
  expect(error.message).toBe('lots[0].raw: expected a mass above zero, was given "-1 lb"');
  expect({ ...error, name: error.name }).toEqual({
    name: 'StillroomError',
    code: 'OUT_OF_RANGE',
    path: 'lots[0].raw',
    given: '-1 lb',
    expected: 'a mass above zero',
  });
});

test('it repeats a primitive unchanged and an object in a few words', () => {
  const long = 'x'.repeat(1000);
  const given = (value: unknown) =>
    new StillroomError({ code: 'WRONG_TYPE', path: '', given: value, expected: 'a mass' });
  expect(given(long).given).toBe(long);
  expect(given(long).message.length).toBeLessThan(150);
  expect(given(3).given).toBe(3);
  expect(given([1, 2]).given).toBe('a list of 2');
  expect(given([1, 2]).message).toBe('expected a mass, was given a list of 2');
  expect(() => within('lots[0]', () => fail('WRONG_TYPE', 'raw', [1, 2], 'a mass'))).toThrow(
    'lots[0].raw: expected a mass, was given a list of 2',
  );
});

test('the right choices are data, and the nearest stand in the message', () => {
  const nearest = ['pint', 'quart'];
  const error = new StillroomError({ code: 'UNKNOWN_NAME', path: 'jar', given: 'pnt', expected: 'a jar', nearest });
  expect(error.nearest).toEqual(nearest);
  expect(error.nearest).not.toBe(nearest);
  expect(error.options).toBeUndefined();
  expect(error.message).toBe('jar: expected a jar; nearest: pint, quart, was given "pnt"');
});

describe('show never throws and stays short', () => {
  test.each<[unknown, string]>([
    ['pint', '"pint"'],
    ['x'.repeat(10_000), `"${'x'.repeat(60)}"... (10000 characters)`],
    [3, '3'],
    [Number.NaN, 'NaN'],
    [10n, '10'],
    [true, 'true'],
    [undefined, 'nothing'],
    [null, 'null'],
    [() => 1, 'a function'],
    [Symbol('x'), 'a symbol'],
    [[], 'an empty list'],
    [[1, 2], 'a list of 2'],
    [{}, 'an empty object'],
    [{ a: 1, b: 2 }, 'an object with "a", "b"'],
  ])('%s', (value, text) => expect(show(value)).toBe(text));
});

test('paths join', () => {
  expect(joinPath('', 'raw')).toBe('raw');
  expect(joinPath('lots', '[0]')).toBe('lots[0]');
  expect(joinPath('lots[0]', 'raw')).toBe('lots[0].raw');
});

test('within puts the outer field before the inner one', () => {
  const work = () => fail('MISSING', 'raw', undefined, 'a mass');
  expect(() => within('lots[2]', work)).toThrow(expect.objectContaining({ path: 'lots[2].raw', code: 'MISSING' }));
  expect(() => within('', work)).toThrow(expect.objectContaining({ path: 'raw' }));
  expect(() =>
    within('x', () => {
      throw new TypeError('ours');
    }),
  ).toThrow(TypeError);
  expect(within('x', () => 3)).toBe(3);
});

test('an error of another copy of the package is one too', async () => {
  vi.resetModules();
  const other = await import('../../src/errors/StillroomError');
  expect(other.StillroomError).not.toBe(StillroomError);
  const thrown = new other.StillroomError({ code: 'MISSING', path: 'raw', given: 'nothing', expected: 'a mass' });
  expect(thrown).toBeInstanceOf(StillroomError);
  const fields = { code: 'MISSING', path: 'raw', given: 'nothing', expected: 'a mass' };
  for (const plain of [new Error('no'), fields, null, undefined, 'StillroomError', Object.create(null)]) {
    expect(plain instanceof StillroomError).toBe(false);
  }
});
