import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Exact, exact } from '../../src/common/exact';
import { Decimal } from '../helpers/oracle/decimal';

const double = fc.double({ noNaN: true, noDefaultInfinity: true });
const written = fc.oneof(double, fc.integer(), fc.double({ min: -1e6, max: 1e6, noNaN: true }));
const whole = fc.bigInt({ min: -(10n ** 60n), max: 10n ** 60n });
const fraction = fc
  .tuple(
    whole,
    whole.filter((each) => each !== 0n),
  )
  .map(([above, below]) => new Exact(above, below));
/** A decimal that holds every digit of what doubles give here. */
const Long = Decimal.clone({ precision: 2000 });

describe('the nearest double', () => {
  test('of a number that was written is the number, at any size', () => {
    fc.assert(
      fc.property(double, (value) => {
        expect(exact(value).toNumber()).toBe(value + 0);
      }),
    );
  });

  test.each([
    ['5e-324', 5e-324],
    ['2.4703282292062327e-324', 0],
    ['2.4703282292062329e-324', 5e-324],
    ['2.2250738585072011e-308', 2.225073858507201e-308],
    ['1.7976931348623157e308', Number.MAX_VALUE],
    ['1.8e308', Number.POSITIVE_INFINITY],
    ['-1e400', Number.NEGATIVE_INFINITY],
    ['1e-400', 0],
    ['-0', 0],
    // halfway between two doubles: to the one whose last bit is zero
    ['9007199254740993', 9007199254740992],
    ['9007199254740995', 9007199254740996],
    ['9007199254740993.0000000000000000000000000000000000000000000000000001', 9007199254740994],
  ])('of %s is %s', (text, value) => expect(exact(text).toNumber()).toBe(value));

  test('of a long text is the one that the language reads', () => {
    const text = fc.tuple(whole, fc.integer({ min: -330, max: 300 })).map(([digits, power]) => `${digits}e${power}`);
    fc.assert(
      fc.property(text, (each) => {
        expect(exact(each).toNumber()).toBe(Number(each) + 0);
      }),
    );
  });

  test('of a quotient has no double nearer to it', () => {
    fc.assert(
      fc.property(fraction, (value) => {
        const found = value.toNumber();
        const far = (double: number) => new Long(double.toPrecision(100)).minus(long(value)).abs();
        const next = Math.abs(found) * 2 ** -52 || 5e-324;
        for (const other of [found - next, found + next]) expect(far(found).lte(far(other))).toBe(true);
      }),
    );
  });
});
const long = ({ above, below }: Exact) => new Long(String(above)).div(String(below));

test('sums, products and quotients are those of decimals', () => {
  const small = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((value) => value / 1000);
  fc.assert(
    fc.property(small, small, (one, other) => {
      const [ours, theirs] = [exact(one), new Decimal(one)];
      expect(ours.plus(other).toString()).toBe(theirs.plus(other).toFixed());
      expect(ours.minus(other).toString()).toBe(theirs.minus(other).toFixed());
      expect(ours.times(other).toNumber()).toBe(theirs.times(other).toNumber() + 0);
      expect(ours.cmp(other)).toBe(theirs.cmp(other));
      expect(ours.abs().gte(0) && ours.lte(ours.abs())).toBe(true);
      if (other !== 0) expect(ours.div(other).toDigits(30).toString()).toBe(plain(theirs.div(other), 30));
    }),
  );
});
const plain = (value: Decimal, digits: number) =>
  value.toSignificantDigits(digits).plus(0).toFixed().replace(/^-0$/, '0');

test('nothing is lost on the way there and back', () => {
  fc.assert(
    fc.property(fraction, fraction, (one, other) => {
      expect(one.plus(other).minus(other)).toEqual(one);
      if (!other.isZero()) expect(one.times(other).div(other)).toEqual(one);
    }),
  );
  expect(exact(1).div(3).times(3)).toEqual(exact(1));
});

describe('rounding', () => {
  test('to places and to digits is that of decimals, half away from zero', () => {
    fc.assert(
      fc.property(
        written,
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 1, max: 17 }),
        (value, places, digits) => {
          const [ours, theirs] = [exact(value), new Long(value)];
          expect(ours.toPlaces(places).toString()).toBe(
            theirs
              .toDecimalPlaces(places)
              .plus(0)
              .abs()
              .toFixed()
              .replace(/^(?!0$)/, value < 0 ? '-' : ''),
          );
          expect(ours.toDigits(digits).toNumber()).toBe(theirs.toSignificantDigits(digits).toNumber() + 0);
        },
      ),
    );
  });

  test.each([
    [2.5, 0, 3, 3, 2],
    [-2.5, 0, -3, -2, -3],
    [2.4, 0, 2, 3, 2],
    [-0.2, 0, 0, 0, -1],
    [7, 0, 7, 7, 7],
    [0.125, 2, 0.13, 0.13, 0.12],
    [1250, -2, 1300, 1300, 1200],
    [-1249, -2, -1200, -1200, -1300],
  ])('%s to %s places: nearest %s, up %s, down %s', (value, places, nearest, up, down) => {
    expect(exact(value).toPlaces(places).toNumber()).toBe(nearest);
    expect(exact(value).toPlaces(places, 'up').toNumber()).toBe(up);
    expect(exact(value).toPlaces(places, 'down').toNumber()).toBe(down);
  });

  test('up is never below, down never above, and neither by a whole step', () => {
    fc.assert(
      fc.property(fraction, fc.integer({ min: -5, max: 20 }), (value, places) => {
        const [up, down] = [value.toPlaces(places, 'up'), value.toPlaces(places, 'down')];
        expect(up.gte(value) && down.lte(value)).toBe(true);
        expect(up.minus(down).lte(exact(`1e${-places}`))).toBe(true);
      }),
    );
  });
});

describe('text', () => {
  test.each([
    ['1.50', '1.5'],
    ['.5', '0.5'],
    ['-0.001', '-0.001'],
    ['1e21', '1000000000000000000000'],
    ['-1.5e-7', '-0.00000015'],
    [
      '123456789012345678901234567890.123456789012345678901234567890',
      '123456789012345678901234567890.12345678901234567890123456789',
    ],
  ])('%s is written %s', (given, text) => expect(String(exact(given))).toBe(text));

  test('digits that never end stop after forty', () => {
    expect(String(exact(2).div(3))).toBe(`0.${'6'.repeat(39)}7`);
    expect(String(exact(-100).div(3))).toBe(`-33.${'3'.repeat(38)}`);
  });

  test('what is written reads back', () => {
    fc.assert(
      fc.property(written, (value) => {
        expect(exact(String(exact(value)))).toEqual(exact(value));
      }),
    );
  });
});

test('what is no number is none, and nothing is divided by zero', () => {
  for (const value of ['x', '1,5', Number.NaN, Number.POSITIVE_INFINITY]) expect(() => exact(value)).toThrow();
  expect(() => exact(1).div(0)).toThrow(RangeError);
});
