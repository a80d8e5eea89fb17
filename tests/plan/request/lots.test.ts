import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lotFields, readLots } from '../../../src/plan/request/lots';
import { massBought, readBought } from '../../../src/produce/weights/asBought';
import { fields, list, readInput } from '../../../src/quantity/fields';
import { quantityIn, valueIn } from '../../../src/quantity/scale';
import type { Quantity } from '../../../src/quantity/types';
import { codeText, thrownBy } from '../../helpers/errors';

const M: Quantity<'length'> = { value: 100, unit: 'm' };
const FT: Quantity<'length'> = { value: 900, unit: 'ft' };
const schema = fields({ lots: list('the lots', fields(lotFields()), 1, 60) });
const read = (lots: readonly object[], elevation = M) => {
  const input = { lots } as never;
  return readLots(readInput(schema, input).lots, lots as never, { elevation });
};
const one = (lot: object) => {
  const [first] = read([{ food: 'peach', ...lot }]).lots;
  if (first === undefined) throw new Error('a lot');
  return first;
};
const kg = (pounds: number) => quantityIn<'mass'>(pounds, 'lb', 'kg').value;
/** What an amount of peaches weighs by the tables, kg. */
const weigh = (amount: string) => {
  const found = massBought('peach', readBought(amount, 'pieces'));
  if (!found.known) throw new Error(amount);
  const { low, likely, high } = found.raw;
  return { low: valueIn(low, 'kg'), likely: valueIn(likely, 'kg'), high: valueIn(high, 'kg') };
};

describe('what a lot weighs', () => {
  test('a mass is sure, all of it is usable, and no table is asked', () => {
    const lot = one({ raw: '40 lb' });
    expect(lot.rawKg).toEqual({ low: kg(40), likely: kg(40), high: kg(40) });
    expect(lot).toMatchObject({ usableKg: kg(40), keepFreshKg: 0, notSoundKg: 0, spread: { low: 1, high: 1 } });
    expect(lot).toMatchObject({ index: 0, label: 'peach', food: 'peach', trade: 'peach', basis: [], cautions: [] });
  });
  test('a bushel of apples weighs 40 to 50 lb, 48 as a rule', () => {
    const lot = one({ food: 'apple', raw: '1 bushel' });
    expect([lot.rawKg.low, lot.rawKg.likely, lot.rawKg.high].map((each) => each / kg(1))).toEqual([
      expect.closeTo(40, 9),
      expect.closeTo(48, 9),
      expect.closeTo(50, 9),
    ]);
    expect(lot.spread.low).toBeCloseTo(40 / 48, 9);
    expect(lot.spread.high).toBeCloseTo(50 / 48, 9);
    expect(lot.basis.map(({ of }) => of)).toContain('products[].raw');
    expect(lot.cautions.map(({ id }) => id)).toContain('bought-by-measure');
  });
  test.each(['16 quarts', '2 lugs', '40 peaches', '3 pecks'])('%s as the tables weigh it', (raw) => {
    expect(one({ raw }).rawKg).toEqual(weigh(raw));
  });
  test('a number alone counts pieces', () => {
    expect(one({ raw: '40' }).rawKg).toEqual(one({ raw: '40 peaches' }).rawKg);
    // a number that is no string may be pounds or pieces
    expect(codeText(() => one({ raw: 40 }))).toBe('WRONG_TYPE lots[0].raw');
  });
});

describe('what is thrown away and what is put aside', () => {
  test('by hand: 20 lb, 0.9 of it sound, 3 lb kept fresh', () => {
    const lot = one({ raw: '20 lb', sound: '90 %', keepFresh: '3 lb' });
    expect(lot.notSoundKg).toBeCloseTo(kg(2), 9);
    expect(lot.keepFreshKg).toBeCloseTo(kg(3), 9);
    expect(lot.usableKg).toBeCloseTo(kg(15), 9);
    expect(lot.spread).toEqual({ low: 1, high: 1 });
  });
  test('in the measure of the lot it is that share of it, whatever that weighs', () => {
    const whole = one({ raw: '2 lugs' });
    const half = one({ raw: '2 lugs', keepFresh: '1 lug' });
    expect(half.usableKg).toBeCloseTo(whole.usableKg / 2, 9);
    expect(half.spread.low).toBeCloseTo(whole.spread.low, 9);
    expect(half.spread.high).toBeCloseTo(whole.spread.high, 9);
  });
  test('in another measure the most of it goes with the least of the lot', () => {
    const lot = one({ raw: '1 bushel', keepFresh: '10' });
    const [bushel, ten] = [weigh('1 bushel'), weigh('10')];
    expect(lot.spread.low * lot.usableKg).toBeCloseTo(bushel.low - ten.high, 9);
    expect(lot.spread.high * lot.usableKg).toBeCloseTo(bushel.high - ten.low, 9);
    expect(lot.basis.map(({ of }) => of)).toContain('keptFresh[].raw');
  });
  test('all that is sound may be kept, and nothing is left to make anything of', () => {
    expect(one({ raw: '20 lb', sound: 0.5, keepFresh: '10 lb' })).toMatchObject({
      usableKg: 0,
      spread: { low: 1, high: 1 },
    });
    expect(one({ raw: '2 lugs', keepFresh: '2 lugs' }).usableKg).toBe(0);
  });
  test('raw = usable + kept + not sound, and the spread is about 1', () =>
    fc.assert(
      fc.property(
        fc.constantFrom('12 lb', '2 lugs', '1 bushel', '60', '16 quarts'),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        fc.constantFrom(undefined, '2 lb', '10', '1 quart'),
        (raw, sound, keepFresh) => {
          const lot = one({ raw, sound, ...(keepFresh === undefined ? {} : { keepFresh }) });
          expect(lot.usableKg + lot.keepFreshKg + lot.notSoundKg).toBeCloseTo(lot.rawKg.likely, 9);
          expect(lot.spread.low).toBeLessThanOrEqual(1);
          expect(lot.spread.low).toBeGreaterThanOrEqual(0);
          expect(lot.spread.high).toBeGreaterThanOrEqual(1);
        },
      ),
      { numRuns: 60 },
    ));
});

describe('weighed when prepared', () => {
  test('its share is of what is usable; there is no spread, whatever the lot weighed', () => {
    const lot = one({ raw: '1 bushel', sound: 0.9, keepFresh: '2 lb', ready: '30 lb' });
    expect(lot.readyShare).toBeCloseTo(30 / (48 * 0.9 - 2), 9);
    expect(lot.spread).toEqual({ low: 1, high: 1 });
    expect(one({ raw: '10 lb', ready: '10 lb' }).readyShare).toBe(1);
  });
});

describe('the price of the whole lot', () => {
  const price = (lot: object) => one({ price: '1.25 USD', ...lot }).price;
  test('as given, or by the mass, the count or the container, to the cent', () => {
    expect(price({ raw: '40 lb' })).toEqual({ value: 1.25, unit: 'USD' });
    expect(price({ raw: '40 lb', per: '1 lb' })).toEqual({ value: 50, unit: 'USD' });
    expect(price({ raw: '10 kg', per: '1 lb' })).toEqual({ value: 27.56, unit: 'USD' });
    expect(price({ raw: '40', per: '2' })).toEqual({ value: 25, unit: 'USD' });
    expect(price({ raw: '16 quarts', per: '1 quart' })).toEqual({ value: 20, unit: 'USD' });
    expect(price({ raw: '2 lugs', per: '1 lug' })).toEqual({ value: 2.5, unit: 'USD' });
    expect(one({ raw: '2 lugs' }).price).toBeUndefined();
  });
  test('of another kind by the likely weight of both', () => {
    expect(price({ raw: '1 bushel', per: '1 lb' })).toEqual({ value: 60, unit: 'USD' });
    expect(price({ raw: '24 lb', per: '1 bushel' })).toEqual({ value: 0.63, unit: 'USD' });
    expect(one({ raw: '24 lb', price: '9 USD', per: '1 bushel' }).basis.map(({ of }) => of)).toContain(
      'products[].costs',
    );
    // a bushel has its own weight and a quart too: it is not 37 times as much
    expect(price({ raw: '1 bushel', per: '1 quart' })?.value).toBeCloseTo(
      (1.25 * weigh('1 bushel').likely) / weigh('1 quart').likely,
      2,
    );
  });
});

describe('several lots', () => {
  test('of one food are told apart, and those with names keep them', () => {
    const labels = (lots: readonly object[]) => read(lots).lots.map(({ label }) => label);
    const called = (names: readonly string[]) =>
      labels(names.map((own) => ({ name: own, food: 'peach', raw: '9 lb' })));
    expect(called(['peach 1', 'peach', 'peach'])).toEqual(['peach 1', 'peach 2', 'peach 3']);
    expect(
      labels([
        { food: 'peaches', raw: '9 lb' },
        { food: 'peach', raw: '1 lug' },
      ]),
    ).toEqual(['peach 1', 'peach 2']);
    expect(
      labels([
        { name: 'the soft ones', food: 'peach', raw: '9 lb' },
        { food: 'peach', raw: '8 lb' },
      ]),
    ).toEqual(['the soft ones', 'peach']);
  });
  test.each([
    ['lb', ['40 lb', '3 kg'], M],
    ['kg', ['3 kg', '40 lb'], FT],
    ['g', ['900 g'], FT],
    ['lb', ['16 quarts', '3 kg'], M],
    ['kg', ['20 L'], FT],
    ['lb', ['2 lugs'], M],
    // pieces say nothing: the next lot does, or the kitchen
    ['lb', ['40', '2 lugs'], M],
    ['kg', ['40'], M],
    ['lb', ['40'], FT],
  ] as const)('masses are answered in %s for %j', (unit, amounts, elevation) => {
    const lots = amounts.map((raw) => ({ food: 'peach', raw }));
    expect(read(lots, elevation)).toMatchObject({ massUnit: unit, metric: unit !== 'lb' });
  });
});

describe('what is wrong names its field', () => {
  test.each([
    ['UNKNOWN_NAME lots[0].food', { food: 'peech', raw: '9 lb' }],
    ['UNKNOWN_NAME lots[0].raw', { raw: '3 wagons' }],
    ['UNKNOWN_NAME lots[0].raw', { food: 'mayhaw', raw: '3' }],
    ['UNKNOWN_NAME lots[0].per', { raw: '9 lb', price: '1 USD', per: '1 wagon' }],
    ['UNKNOWN_NAME lots[0].keepFresh', { raw: '9 lb', keepFresh: '1 wagon' }],
    ['CONTRADICTION lots[0].per', { raw: '9 lb', per: '1 lb' }],
    ['CONTRADICTION lots[0].keepFresh', { raw: '9 lb', keepFresh: '10 lb' }],
    ['CONTRADICTION lots[0].ready', { raw: '9 lb', keepFresh: '2 lb', ready: '8 lb' }],
    ['OUT_OF_RANGE lots[0].sound', { raw: '9 lb', sound: 0 }],
    ['OUT_OF_RANGE lots[0].sound', { raw: '9 lb', sound: '101 %' }],
    ['OUT_OF_RANGE lots[0].raw', { raw: '0' }],
    ['OUT_OF_RANGE lots[0].raw', { raw: '0 lb' }],
    ['WRONG_DIMENSION lots[0].raw', { raw: '9 min' }],
    ['MISSING lots[0].raw', {}],
    ['OUT_OF_RANGE lots[0].brix', { raw: '9 lb', brix: 100 }],
  ])('%s', (text, lot) => expect(codeText(() => one(lot))).toBe(text));
  test('more kept fresh than is sound: both are shown', () => {
    const error = thrownBy(() => one({ raw: '20 lb', sound: 0.9, keepFresh: '19 lb' }));
    expect(error.given).toBe('19 lb');
    expect(error.expected).toContain('18 lb (20 lb x 0.9)');
    expect(error.expected).toContain('19 lb');
  });
  test('a container that no table weighs: those that one does', () => {
    const error = thrownBy(() => one({ raw: '2 lugz' }));
    expect(error.options).toContain('lug');
    expect(error.nearest).toContain('lug');
  });
});
