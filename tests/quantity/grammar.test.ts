/** Texts are read as the grammar says that reads every number as a decimal: the same values, and the same errors. */
import { describe, expect, test } from 'vitest';
import { seeded } from '../../src/common/seeded';
import { StillroomError } from '../../src/errors/StillroomError';
import { parseAmount } from '../../src/quantity/amount';
import { parseQuantity } from '../../src/quantity/parseQuantity';
import { parseShare } from '../../src/quantity/share';
import { DIMENSIONS, findUnit, UNITS } from '../../src/quantity/units';
import { parseAmount as amountByDecimals } from '../helpers/oracle/amount';
import { findUnit as findByPatterns } from '../helpers/oracle/findUnit';
import { parseQuantity as quantityByDecimals } from '../helpers/oracle/parseQuantity';
import { parseShare as shareByDecimals } from '../helpers/oracle/share';

const random = seeded(7);
const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
const digits = (most: number): string =>
  Array.from({ length: 1 + Math.floor(random() * most) }, () => Math.floor(random() * 10)).join('');

const SPELLINGS = Object.values(UNITS).flatMap((units) =>
  Object.entries(units).flatMap(([name, { spellings }]) => [name, ...spellings]),
);
const NUMBERS: readonly (() => string)[] = [
  () => digits(3),
  () => digits(6),
  () => `${digits(2)}.${digits(4)}`,
  () => `.${digits(3)}`,
  () => `${digits(3)}.`,
  () => `0${pick(['.', ','])}${digits(3)}`,
  () => `${digits(3)}${pick(['.', ','])}${pick(['500', '250', '036', '000', '5', '50', '1234'])}`,
  () => `${digits(3)},${digits(3)},${digits(3)}`,
  () => `${pick(['1', '12', '999'])},234,567${pick(['', '.5', '.', ',5'])}`,
  () => `${pick(['1', '12', '999'])}.234.567${pick(['', ',5', ',', '.5'])}`,
  () => `${digits(25)}${pick(['', '.', ','])}${pick(['', digits(25)])}`,
  () => `${digits(2)}/${digits(2)}`,
  () => `${digits(20)} ⁄ ${digits(20)}`,
  () => `${digits(2)}${pick([' ', '-', ' - ', '−', '  '])}${digits(1)}/${digits(2)}`,
  () => `${digits(1)},250${pick([' ', '-'])}${digits(1)}/${digits(1)}`,
  () => `${digits(1)}${pick(['', ' ', '-'])}${pick([...'½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅐'])}`,
  () => pick([...'½⅓¼', '', 'one', '1e3', '--1', '٣', '½½', '1/2/3']),
];
const SPACES = ['', ' ', '  ', '\t', '\u00a0', '\u2009', '\n'];
const amount = () => `${random() < 0.1 ? pick(['-', '−', '+']) : ''}${pick(NUMBERS)()}`;
const cased = (text: string): string =>
  pick([text, text, text, text.toUpperCase(), text.toLowerCase(), `${text}.`, text.replace(' ', '  '), `${text}x`]);
const part = () => `${amount()}${pick(SPACES)}${cased(pick(SPELLINGS))}`;
const text = (): string => {
  const parts = Array.from({ length: pick([1, 1, 1, 1, 2, 3]) }, part).join(
    pick([' ', ' and ', ' + ', ', ', '  ', '']),
  );
  return `${pick(['', '', ' '])}${parts}${pick(['', '', ' ', '\u00a0', ',', '.'])}`;
};

/** What reading gives: the value, or all that the error says. */
function outcome(read: () => unknown): unknown {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    const { code, path, given, expected, options, nearest, message } = error;
    return { code, path, given, expected, options, nearest, message };
  }
}
/** The texts that two readers read differently. */
function differing(texts: readonly string[], one: (text: string) => unknown, other: (text: string) => unknown) {
  return texts
    .map((each) => ({ text: each, ours: outcome(() => one(each)), right: outcome(() => other(each)) }))
    .filter(({ ours, right }) => JSON.stringify(ours) !== JSON.stringify(right));
}
const texts = (count: number, make: () => string): string[] => Array.from({ length: count }, make);

describe('the same values and the same errors', () => {
  test('of quantities, of any kind and of one', () => {
    const some = texts(20_000, text);
    expect(
      differing(
        some,
        (each) => parseQuantity(each),
        (each) => quantityByDecimals(each),
      ),
    ).toEqual([]);
    for (const dimension of DIMENSIONS) {
      const few = texts(3000, text);
      expect(
        differing(
          few,
          (each) => parseQuantity(each, dimension, 'raw'),
          (each) => quantityByDecimals(each, dimension, 'raw'),
        ),
      ).toEqual([]);
    }
  });

  test('of amounts', () => {
    const plain = (read: (each: string) => { toNumber(): number } | undefined) => (each: string) =>
      read(each)?.toNumber();
    expect(differing(texts(20_000, amount), plain(parseAmount), plain(amountByDecimals))).toEqual([]);
  });

  test('of shares', () => {
    const percent = () => `${amount()}${pick(SPACES)}${pick(['%', '%', '%', ''])}`;
    expect(
      differing(
        texts(20_000, percent),
        (each) => parseShare(each),
        (each) => shareByDecimals(each),
      ),
    ).toEqual([]);
    expect(
      differing(
        texts(2000, percent),
        (each) => parseShare(each, 'm', 9),
        (each) => shareByDecimals(each, 'm', 9),
      ),
    ).toEqual([]);
  });

  test('of units, however they are spelled', () => {
    const plain = (found: { dimension: string; unit: string } | undefined) => found && [found.dimension, found.unit];
    for (const wanted of [undefined, 'temperatureDifference', 'mass'] as const) {
      const spelled = SPELLINGS.flatMap((each) => texts(12, () => pick([each, ` ${each}`, cased(cased(each))])));
      expect(
        differing(
          spelled,
          (each) => plain(findUnit(each, wanted)),
          (each) => plain(findByPatterns(each, wanted)),
        ),
      ).toEqual([]);
    }
  });
});
