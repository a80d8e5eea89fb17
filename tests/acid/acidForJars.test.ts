import fc from 'fast-check';
import { expect, test } from 'vitest';
import { acidForJars } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

// USDA Guide 3, p. 3-5
test('each agent alone, for the batch', () => {
  const answer = acidForJars({ food: 'tomato sauce', jar: 'pint', jars: 9 });
  expect(answer).toMatchObject({
    food: 'tomato',
    perJar: { where: 'each jar', choose: 'one' },
    bottledLemonJuice: { value: 9, unit: 'tbsp' },
    citricAcid: { value: 2.25, unit: 'tsp' },
    vinegar: { value: 18, unit: 'tbsp' },
  });
});

test('an agent that is not printed is not offered', () => {
  const answer = acidForJars({ food: 'Asian pears', jar: 'quart', jars: 7 });
  expect(answer).toMatchObject({ bottledLemonJuice: { value: 14, unit: 'tbsp' } });
  expect(answer).not.toHaveProperty('citricAcid');
  expect(acidForJars({ food: 'figs', jar: 'pint', jars: 9 })).not.toHaveProperty('vinegar');
});

test('crab still needs pressure', () => {
  const answer = acidForJars({ food: 'crab meat', jar: 'half-pint', jars: 4 });
  expect(answer).toMatchObject({ citricAcid: { value: 2, unit: 'tsp' } });
  expect(answer.cautions.map(({ id }) => id)).toContain('low-acid-in-jars');
});

test('no printed amount, no answer', () => {
  expect(acidForJars({ food: 'green beans', jar: 'pint', jars: 7 })).toMatchObject({ tested: false });
  expect(acidForJars({ food: 'okra', jar: 'pint', jars: 7 })).toMatchObject({ tested: false });
  expect(acidForJars({ food: 'figs', jar: 'half-pint', jars: 7 })).toMatchObject({ tested: false });
});

test('a refusal speaks of these tables, and what it offers is answered', () => {
  const figs = acidForJars({ food: 'figs', jar: 'half-pint', jars: 7 });
  expect('instead' in figs && figs.instead.map(({ jar }) => jar)).toEqual(['pint', 'quart']);
  const crab = acidForJars({ food: 'crab meat', jar: 'quart', jars: 7 });
  for (const [food, offered, answer] of [
    ['figs', ['pint', 'quart'], figs],
    ['crab meat', ['half-pint', 'pint'], crab],
  ] as const) {
    if (!('instead' in answer)) throw new Error('not refused');
    expect(answer.reason.text).toMatch(/^These tables hold/);
    for (const jar of ['half-pint', 'pint', 'quart'] as const) {
      const named = answer.instead.some((one) => one.jar === jar);
      expect(named).toBe((offered as readonly string[]).includes(jar));
      if (named) expect(acidForJars({ food, jar, jars: 1 })).toHaveProperty('perJar');
    }
  }
});

// the pages of tomatoes ask for it in every pack; a paste or a ketchup has no page of its own
test('a form without a page takes no acid by guess', () => {
  for (const food of ['green tomatoes', 'tomatillos', 'tomato juice', 'crushed tomatoes']) {
    expect(acidForJars({ food, jar: 'quart', jars: 1 }), food).toHaveProperty('bottledLemonJuice.value', 2);
  }
  for (const food of ['tomato paste', 'yellow tomatoes', 'pear']) {
    expect(acidForJars({ food, jar: 'quart', jars: 1 }), food).toMatchObject({ tested: false });
  }
});

test('acid grows with the jars, and a quart takes as much as two pints', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 5000 }), (jars) => {
      const quarts = acidForJars({ food: 'tomatoes', jar: 'quart', jars });
      const pints = acidForJars({ food: 'tomatoes', jar: 'pint', jars: 2 * jars });
      expect('vinegar' in quarts && quarts.vinegar).toEqual('vinegar' in pints && pints.vinegar);
    }),
  );
});

test('bad input', () => {
  expectError(() => acidForJars({ food: 'tomatoes', jar: 'gallon' as never, jars: 1 }), 'UNKNOWN_NAME', 'jar');
  expectError(() => acidForJars({ food: 'tomatoes', jar: 'pint', jars: 0 }), 'OUT_OF_RANGE', 'jars');
  expectError(() => acidForJars({ food: 'tomatoes', jar: 'pint', jars: 1.5 }), 'OUT_OF_RANGE', 'jars');
});
