import { describe, expect, test } from 'vitest';
import { fail } from '../../src/errors/StillroomError';
import { choice, count, fields, list, mass, optional, readInput } from '../../src/quantity/fields';
import { problemsIn, problemsOf } from '../../src/quantity/problems';
import { thrownBy } from '../helpers/errors';

const schema = fields({
  raw: mass(),
  jars: list('jars', fields({ size: choice('a size', ['pint', 'quart']), count: count('jars', 0, 50) })),
  burners: optional(count('burners', 1, 9)),
});

describe('all problems of an argument', () => {
  const wrong = {
    raw: '3 cups',
    jars: [
      { size: 'pint', count: 7 },
      { size: 'qart', count: 70, shape: 'square' },
    ],
    burner: 2,
    brners: 3,
  };
  test('are told at once, each with its path and the nearest right word', () => {
    const found = problemsOf(schema, wrong);
    expect(found.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'WRONG_DIMENSION raw',
      'UNKNOWN_NAME jars[1].size',
      'OUT_OF_RANGE jars[1].count',
      'UNKNOWN_FIELD jars[1].shape',
      'UNKNOWN_FIELD burner',
      'UNKNOWN_FIELD brners',
    ]);
    expect(found[1]).toMatchObject({ given: 'qart', nearest: ['quart'], options: ['pint', 'quart'] });
    expect(found[4]).toMatchObject({ given: 'burner', nearest: ['burners'] });
    expect(found[5]?.message).toContain('did you mean "burners"?');
  });
  test('begin with the error that is thrown', () => {
    const error = thrownBy(() => readInput(schema, wrong));
    const [first] = problemsOf(schema, wrong);
    expect(first).toMatchObject({ code: error.code, path: error.path, given: error.given, message: error.message });
  });
  test('are none where it is right, and plain data', () => {
    expect(problemsOf(schema, { raw: '3 lb', jars: [{ size: 'pint', count: 7 }] })).toEqual([]);
    const found = problemsOf(schema, wrong);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });
  test.each([
    [undefined, 'MISSING'],
    [7, 'WRONG_TYPE'],
    [[], 'WRONG_TYPE'],
    [JSON.parse('{"__proto__": 1}'), 'UNKNOWN_FIELD'],
  ])('of what is no argument at all: %s', (input, code) => {
    expect(problemsOf(schema, input).map((each) => each.code)).toEqual([code]);
  });
});

test('checks are each run by themselves', () => {
  const found = problemsIn(
    () => fail('MISSING', 'a', undefined, 'one'),
    () => undefined,
    () => fail('CONTRADICTION', 'b', 2, 'three'),
  );
  expect(found.map(({ path }) => path)).toEqual(['a', 'b']);
  expect(() =>
    problemsIn(() => {
      throw new TypeError('a mistake in the code');
    }),
  ).toThrow(TypeError);
});
