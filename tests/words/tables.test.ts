import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { describeJar } from '../../src/jars/index';
import { parseAmount } from '../../src/quantity/amount';
import { acidityColumns, acidityRows } from '../../src/words/acidity';
import type { Spelled } from '../../src/words/choices';
import { jarSizeColumns, readJar, sizeRows } from '../../src/words/jar';
import { methodColumns, methodRows } from '../../src/words/method';
import { mouthColumns, mouthRows } from '../../src/words/mouth';
import { packColumns, packRows } from '../../src/words/pack';
import { checkTables, dataFolder } from '../helpers/tables';

const schemas = {
  'jar-sizes': jarSizeColumns(),
  mouths: mouthColumns(),
  methods: methodColumns(),
  packs: packColumns(),
  acidities: acidityColumns(),
};
checkTables('words', schemas);

test('there is no table without a schema', () => {
  expect(readdirSync(dataFolder('words')).sort()).toEqual(
    Object.keys(schemas)
      .map((name) => `${name}.json`)
      .sort(),
  );
});

// AIB 539, Guide 1, jars; Kansas State list for 4 and 28 oz; 1 US fl oz = 29.5735295625 mL
test('the figures are those of the pages', () => {
  expect(sizeRows.map((row) => `${row.nominal_floz} | ${row.nominal_mL}`)).toEqual([
    '4 | 118.29411825',
    '8 | 236.5882365',
    '12 | 354.88235475',
    '16 | 473.176473',
    '24 | 709.7647095',
    '28 | 828.05882775',
    '32 | 946.352946',
    '64 | 1892.705892',
  ]);
  expect(mouthRows.map((row) => row.opening_in)).toEqual(['2 3/8', '3']);
});

test.each(sizeRows)('the $name jar: its fluid ounces are its milliliters, by every name', (row) => {
  // units.factors: 1 US fl oz = 29.5735295625 mL exactly (NIST Handbook 44)
  expect(row.nominal_floz * 29.5735295625).toBeCloseTo(Number(row.nominal_mL), 9);
  for (const name of [row.name, ...(row.synonyms ?? [])]) expect(readJar(name).size).toBe(row);
  expect(describeJar({ jar: row.name }).capacity).toEqual({ value: row.nominal_floz, unit: 'fl oz' });
});

test('sizes stand from the smallest up, which the next larger size relies on', () => {
  const sizes = sizeRows.map(({ nominal_floz }) => nominal_floz);
  expect(sizes).toEqual([...sizes].sort((one, other) => one - other));
});

test.each(mouthRows)('the $name mouth', (row) => {
  for (const mouth of [row.name, ...(row.synonyms ?? [])]) {
    expect(describeJar({ jar: 'pint', mouth }).opening.value).toBe(parseAmount(row.opening_in)?.toNumber());
  }
});

describe.each<[string, readonly Spelled[]]>([
  ['sizes', sizeRows],
  ['mouths', mouthRows],
  ['methods', methodRows],
  ['packs', packRows],
  ['acidities', acidityRows],
])('%s', (_, rows) => {
  test('no spelling stands twice', () => {
    const all = rows.flatMap(({ name, synonyms = [] }) => [name, ...synonyms]).map((each) => each.toLowerCase());
    expect(all.filter((each, index) => all.indexOf(each) !== index)).toEqual([]);
  });
});
