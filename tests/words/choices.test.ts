import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gaugePressure, testedProcess } from '../../src/process/index';
import { fields, readInput } from '../../src/quantity/fields';
import { acidity, acidityRows, readAcidity } from '../../src/words/acidity';
import type { Spelled } from '../../src/words/choices';
import { METHODS, method, methodRows, readMethod } from '../../src/words/method';
import { mouthRows, readMouth } from '../../src/words/mouth';
import { packRows, readPack } from '../../src/words/pack';
import { thrownBy } from '../helpers/errors';

const READERS: readonly [string, readonly Spelled[], (given: unknown) => string, readonly string[]][] = [
  ['method', methodRows, readMethod, METHODS],
  ['pack', packRows, readPack, ['hot', 'raw', 'not stated']],
  ['acidity', acidityRows, readAcidity, ['acid', 'low-acid']],
  ['mouth', mouthRows, readMouth, ['regular', 'wide']],
];

describe.each(READERS)('%s', (path, rows, read, choices) => {
  const plain = rows.filter(({ asks }) => asks === undefined);

  test('every choice has its spellings', () => {
    expect(plain.map(({ name }) => name).sort()).toEqual([...choices].sort());
  });

  test('every spelling gives one choice, in any case, with spaces or hyphens', () => {
    for (const { name, synonyms = [] } of plain) {
      for (const spelling of [name, ...synonyms]) {
        for (const given of [
          spelling,
          spelling.toUpperCase(),
          ` ${spelling} `,
          spelling.replaceAll(' ', '-'),
          spelling.replaceAll('-', ' '),
        ]) {
          expect(read(given)).toBe(name);
        }
      }
    }
  });

  test('what is read is read again', () => {
    for (const choice of choices) expect(read(read(choice))).toBe(choice);
  });

  test.each(['constructor', '__proto__', 'toString', '', ' ', 'oven', 'x'.repeat(10_000)])(
    '%j is an error that lists the choices',
    (given) => {
      const error = thrownBy(() => read(given));
      expect(error).toMatchObject({ code: 'UNKNOWN_NAME', path, given, options: choices });
    },
  );

  test('the error repeats any text unchanged', () => {
    const known = new Set(rows.flatMap(({ name, synonyms = [] }) => [name, ...synonyms]));
    fc.assert(
      fc.property(fc.string(), (given) => {
        fc.pre(!known.has(given.trim().toLowerCase()));
        let answer: string | undefined;
        try {
          answer = read(given);
        } catch {
          expect(thrownBy(() => read(given)).given).toBe(given);
        }
        if (answer !== undefined) expect(choices).toContain(answer);
      }),
    );
  });

  test.each([
    [undefined, 'MISSING'],
    [null, 'WRONG_TYPE'],
    [7, 'WRONG_TYPE'],
    [['hot'], 'WRONG_TYPE'],
  ])('%j', (given, code) => {
    expect(thrownBy(() => read(given))).toMatchObject({ code, options: choices });
  });
});

describe('the canner', () => {
  test.each([
    ['water bath', 'boiling-water'],
    ['Boiling Water Canner', 'boiling-water'],
    ['BWB', 'boiling-water'],
    ['steam canner', 'atmospheric-steam'],
    ['Dial gauge', 'dial-gauge'],
    ['weighted gauge canner', 'weighted-gauge'],
  ])('%s is %s', (given, name) => {
    expect(readMethod(given)).toBe(name);
  });

  test.each(['pressure canner', 'Pressure', 'steam pressure canner', 'PC'])('%s is asked for its gauge', (given) => {
    const error = thrownBy(() => readMethod(given));
    expect(error).toMatchObject({ code: 'UNKNOWN_NAME', given, options: ['dial-gauge', 'weighted-gauge'] });
    expect(error.message).toContain('a dial, or a weight?');
  });

  test('a misspelled canner is offered the nearest', () => {
    expect(thrownBy(() => readMethod('boling water')).nearest?.[0]).toBe('boiling-water');
  });

  test('a field may take fewer canners, and says which', () => {
    const schema = fields({ method: method(['dial-gauge', 'weighted-gauge']) });
    expect(readInput(schema, { method: 'dial' })).toEqual({ method: 'dial-gauge' });
    expect(thrownBy(() => readInput(schema, { method: 'water bath' }))).toMatchObject({
      code: 'UNKNOWN_NAME',
      path: 'method',
      given: 'water bath',
      options: ['dial-gauge', 'weighted-gauge'],
    });
  });

  test('functions take the spellings', () => {
    const ask = (canner: string, pack: string) =>
      testedProcess({
        food: 'peach',
        form: 'halves',
        pack: pack as 'hot',
        jar: 'quart',
        method: canner as 'dial-gauge',
        elevation: '0 ft',
      });
    expect(ask('water bath', 'hot pack')).toEqual(ask('boiling-water', 'hot'));
    expect(ask('BWB', 'cold pack')).toEqual(ask('boiling-water', 'raw'));
    expect(
      gaugePressure({ method: 'dial' as 'dial-gauge', acidity: 'high-acid' as 'acid', elevation: '0 ft' }),
    ).toEqual(gaugePressure({ method: 'dial-gauge', acidity: 'acid', elevation: '0 ft' }));
  });
});

test('high-acid is acid, and never low-acid', () => {
  expect(readAcidity('high acid')).toBe('acid');
  expect(readAcidity('Low-Acid')).toBe('low-acid');
  expect(readInput(fields({ acidity: acidity() }), { acidity: 'non-acid' })).toEqual({ acidity: 'low-acid' });
});
