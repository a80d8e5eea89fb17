import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { fields, name, optional, readInput } from '../../src/quantity/fields';
import { acidity } from '../../src/words/acidity';
import { amount } from '../../src/words/amount';
import { area } from '../../src/words/area';
import { brix, targetBrix } from '../../src/words/brix';
import { count } from '../../src/words/count';
import { density } from '../../src/words/density';
import { dried } from '../../src/words/dried';
import { elevation, kitchenElevation } from '../../src/words/elevation';
import { energy } from '../../src/words/energy';
import { gauge } from '../../src/words/gauge';
import { headspace } from '../../src/words/headspace';
import { jar, jarName } from '../../src/words/jar';
import { length } from '../../src/words/length';
import { mass } from '../../src/words/mass';
import { method } from '../../src/words/method';
import { minutes } from '../../src/words/minutes';
import { mouth } from '../../src/words/mouth';
import { pack } from '../../src/words/pack';
import { pH } from '../../src/words/pH';
import { power } from '../../src/words/power';
import { pressure } from '../../src/words/pressure';
import { price } from '../../src/words/price';
import { raw } from '../../src/words/raw';
import { ready } from '../../src/words/ready';
import * as shares from '../../src/words/shares';
import { temperature } from '../../src/words/temperature';
import { temperatureDifference } from '../../src/words/temperatureDifference';
import { time } from '../../src/words/time';
import { timeOfDay } from '../../src/words/timeOfDay';
import { trimmings } from '../../src/words/trimmings';
import { volume } from '../../src/words/volume';
import { waterActivity } from '../../src/words/waterActivity';
import { describe as meaningOf, word } from '../../src/words/word';
import { thrownBy } from '../helpers/errors';

const { otherShare, ...named } = shares;
const SHARES = Object.entries(named) as [string, typeof shares.moisture][];

/** Each word: its schema, a value it takes, and one that it refuses with a code. */
const WORDS: readonly [string, z.ZodMiniType, unknown, unknown, string][] = [
  ['mass', mass(), '2 lb', '2 cups', 'WRONG_DIMENSION'],
  ['raw', raw(), '62 lb', '0 lb', 'OUT_OF_RANGE'],
  ['ready', ready(), '3 kg', '-1 kg', 'OUT_OF_RANGE'],
  ['trimmings', trimmings({ min: { value: 0, unit: 'g' } }), '0 g', '2 cups', 'WRONG_DIMENSION'],
  ['dried', dried(), '400 g', 400, 'WRONG_TYPE'],
  ['volume', volume(), '1 1/2 cups', '2 lb', 'WRONG_DIMENSION'],
  ['amount', amount(), '3 quarts', '3 h', 'WRONG_DIMENSION'],
  ['length', length(), '1/4 in', '0 in', 'OUT_OF_RANGE'],
  ['area', area(), '140 in2', '140 in', 'WRONG_DIMENSION'],
  ['density', density(), '1.05 g/mL', '50 g/mL', 'OUT_OF_RANGE'],
  ['energy', energy(), '2 kWh', '2 kW', 'WRONG_DIMENSION'],
  ['power', power(), '1500 W', '0 W', 'OUT_OF_RANGE'],
  ['time', time(), '20 min', '0 min', 'OUT_OF_RANGE'],
  ['timeOfDay', timeOfDay(), '8:30 pm', '25:00', 'OUT_OF_RANGE'],
  ['pressure', pressure(), '101 kPa', '0 kPa', 'OUT_OF_RANGE'],
  ['gauge', gauge(), '0 psi', '-1 psi', 'OUT_OF_RANGE'],
  ['temperature', temperature(), '-40 degF', '-500 degC', 'OUT_OF_RANGE'],
  ['temperatureDifference', temperatureDifference(), '10 degC', '10 kg', 'WRONG_DIMENSION'],
  ['elevation', elevation(), '-500 m', '-501 m', 'OUT_OF_RANGE'],
  ['elevation', kitchenElevation(), '3,400 ft', '-500 m', 'OUT_OF_RANGE'],
  ['headspace', headspace(), '1/2 in', '2 m', 'OUT_OF_RANGE'],
  ['minutes', minutes(), 20, '20 min', 'WRONG_TYPE'],
  ['pH', pH(), 4.6, 14.1, 'OUT_OF_RANGE'],
  ['waterActivity', waterActivity(), 0.6, 60, 'OUT_OF_RANGE'],
  ['waterActivity', waterActivity({ above: 0 }), 0.6, 0, 'OUT_OF_RANGE'],
  ['brix', brix(), 65, 0.65, 'OUT_OF_RANGE'],
  ['targetBrix', targetBrix(), 65, 0.65, 'OUT_OF_RANGE'],
  ['count', count('jars'), 7, 7.5, 'OUT_OF_RANGE'],
  ['price', price(), '24.50 USD', '24.50', 'NOT_A_QUANTITY'],
  ['jar', jar(), 'pint', 'firkin', 'UNKNOWN_NAME'],
  ['jar', jarName(), 'pints', 'firkin', 'UNKNOWN_NAME'],
  ['mouth', mouth(), 'wide', 'tiny', 'UNKNOWN_NAME'],
  ['method', method(), 'water bath', 'oven', 'UNKNOWN_NAME'],
  ['pack', pack(), 'cold', 'lukewarm', 'UNKNOWN_NAME'],
  ['acidity', acidity(), 'high-acid', 'neutral', 'UNKNOWN_NAME'],
  ...SHARES.map(([name, share]): [string, z.ZodMiniType, unknown, unknown, string] => [
    name === 'yieldShare' ? 'yield' : name,
    share(),
    '85 %',
    85,
    'OUT_OF_RANGE',
  ]),
];

describe.each(WORDS)('%s', (wordName, schema, good, bad, code) => {
  test('takes what it means and refuses the rest', () => {
    expect(() => readInput(fields({ it: schema }), { it: good })).not.toThrow();
    expect(thrownBy(() => readInput(fields({ it: schema }), { it: bad })).code).toBe(code);
    expect(thrownBy(() => readInput(fields({ it: schema }), {}))).toMatchObject({ code: 'MISSING', path: 'it' });
    for (const hostile of ['constructor', '__proto__']) {
      expect(() => readInput(fields({ it: schema }), { it: hostile })).toThrow();
    }
  });

  test('says what it is, optional or not', () => {
    const meaning = meaningOf(schema);
    expect(meaning?.name).toBe(wordName);
    expect(meaning?.says).toMatch(/^[A-Z].*\.$/);
    expect(meaningOf(optional(schema))).toBe(meaning);
  });
});

test('every file of words stands here', () => {
  const helpers = ['choices', 'jarText', 'limits', 'word', 'shares'];
  const known = new Set([...WORDS.map(([each]) => each), ...helpers]);
  const files = readdirSync(new URL('../../src/words/', import.meta.url)).map((file) => file.replace(/\.ts$/, ''));
  expect(files.filter((file) => !known.has(file))).toEqual([]);
});

test('a word has one kind and one sense wherever it stands', () => {
  const seen = new Map<string, string>();
  for (const [each, schema] of WORDS) {
    const { kind, says } = meaningOf(schema) ?? {};
    const sense = `${kind}: ${each === 'count' ? '' : says}`;
    expect(seen.get(each) ?? sense).toBe(sense);
    seen.set(each, sense);
  }
});

test('the range follows the bounds of the field', () => {
  expect(meaningOf(mass())).toMatchObject({ kind: 'mass', low: { value: 0, unit: 'kg' }, above: true });
  expect(meaningOf(volume({ max: { value: 200, unit: 'L' } }))).toMatchObject({ high: { value: 200, unit: 'L' } });
  expect(meaningOf(trimmings({ min: { value: 0, unit: 'g' } }))).not.toHaveProperty('above');
  expect(meaningOf(shares.moisture({ above: 0, max: 0.5 }))).toMatchObject({ low: 0, above: true, high: 0.5 });
  expect(meaningOf(otherShare('holding', 'Share of the power that holds the boil.'))).toMatchObject({ kind: 'share' });
  expect(meaningOf(method())?.choices).toHaveLength(4);
});

test('a schema that is no word means nothing here', () => {
  expect(meaningOf(name('a name'))).toBeUndefined();
  expect(meaningOf(word(z.string(), { name: 'x', kind: 'choice', says: 'X.' }))).toMatchObject({ name: 'x' });
});
