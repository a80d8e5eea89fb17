import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodRows } from '../../../src/foods/tables';
import { figure } from '../../../src/produce/figures';
import { cutRows } from '../../../src/produce/forms';
import * as produce from '../../../src/produce/index';
import { median } from '../../../src/produce/span';
import { edibleFigures, preparedFigures } from '../../../src/produce/yields/edible';
import { refuseRows, trimTables } from '../../../src/produce/yields/tables';
import { codeOf, thrownBy as errorOf, pathOf } from '../../helpers/errors';
import { known, offered } from '../../helpers/known';

const readyFromRaw = (input: produce.ReadyFromRawInput) => known(produce.readyFromRaw(input));
const rawForReady = (input: produce.RawForReadyInput) => known(produce.readyFromRaw(input));
const named = new Map(foodRows.map((row) => [row.id, row.name]));
/** The foods that the tables of yields name. */
const FOODS = cutRows.map(({ food }) => named.get(food) as string).filter((name) => name !== 'dry bean');

const FORMS_FOR_ALL = ['whole', 'slices', 'puree'] as const;
const raw = fc.record({
  food: fc.constantFrom(...FOODS),
  form: fc.constantFrom(...FORMS_FOR_ALL),
  raw: fc.record({
    value: fc.double({ min: 0.001, max: 1e5, noNaN: true }),
    unit: fc.constantFrom('lb', 'kg', 'oz', 'g'),
  }),
});

describe('mass is conserved', () => {
  test('ready and trimmings make the raw weight at each end, whatever the food and the amount', () => {
    fc.assert(
      fc.property(raw, (input) => {
        const { ready, trimmings, parts } = readyFromRaw(input as never);
        const near = (sum: number) => Math.abs(sum / input.raw.value - 1) < 1e-12;
        expect(near(ready.low.value + trimmings.high.value)).toBe(true);
        expect(near(ready.likely.value + trimmings.likely.value)).toBe(true);
        expect(near(ready.high.value + trimmings.low.value)).toBe(true);
        const lost = parts.reduce((sum, part) => sum + part.mass.value, 0);
        expect(Math.abs(lost - trimmings.likely.value)).toBeLessThan(1e-9 * input.raw.value);
        expect(ready.low.unit).toBe(input.raw.unit);
      }),
    );
  });

  test('the ends are in order and between nothing and all of it, for every food and form', () => {
    for (const food of FOODS) {
      for (const form of FORMS_FOR_ALL) {
        const { low, likely, high } = readyFromRaw({ food, form, raw: '1 kg' }).yield;
        expect([0 < low, low <= likely, likely <= high, high <= 1], `${food}, ${form}`).not.toContain(false);
        expect(high - low, `${food}, ${form}`).toBeGreaterThan(0.02);
      }
    }
  });

  test('raw for ready is ready from raw turned round, end to opposite end', () => {
    fc.assert(
      fc.property(raw, (input) => {
        const { ready } = readyFromRaw(input as never);
        const back = rawForReady({ food: input.food, form: input.form, ready: ready.likely });
        expect(back.raw.likely.value).toBeCloseTo(input.raw.value, 9 - Math.ceil(Math.log10(input.raw.value)));
        expect(back.raw.low.value).toBeLessThanOrEqual(back.raw.high.value);
        expect(back.trimmings.likely.value).toBeCloseTo(back.raw.likely.value - ready.likely.value, 6);
      }),
    );
  });
});

describe('the range is that of the sources', () => {
  test('peaches lose more than the pit once peeled: 85% by extension, 76% by the buying guide, never the 96% with skin', () => {
    const peeled = readyFromRaw({ food: 'peach', form: 'slices', raw: '100 lb' });
    expect(peeled.yield).toEqual({ low: 0.76, likely: 0.85, high: 0.88 });
    expect(peeled.preparation).toBe('peeled');
    expect(peeled.parts.map(({ what }) => what)).toEqual(['skins and pits']);
    expect(peeled.cautions.map(({ id }) => id)).toContain('recalled');
    expect(readyFromRaw({ food: 'peach', form: 'pitted', raw: '100 lb' }).yield.likely).toBe(0.96);
  });

  test('apples peeled and cored by three sources, each loss named', () => {
    const { yield: share, parts, basis } = readyFromRaw({ food: 'apples', form: 'rings', raw: '10 lb' });
    expect(share.low).toBeCloseTo(0.74, 12);
    expect(share.likely).toBe(0.77);
    expect(share.high).toBeCloseTo(0.8, 12);
    expect(parts).toEqual([
      { what: 'core and stem', mass: { value: 1, unit: 'lb' }, boiledOff: false },
      { what: 'skin', mass: { value: 1.3, unit: 'lb' }, boiledOff: false },
    ]);
    expect(basis.map(({ source }) => source)).toEqual(['usda-sr28', 'openwa-bakery-math', 'usda-fbg']);
  });

  test('cherries: stems alone, then pits by three sources', () => {
    const whole = readyFromRaw({ food: 'cherry', form: 'whole', raw: '100 lb' });
    expect(whole.yield.likely).toBe(0.97); // 16% with stems less 13% without, extension sheet
    const pitted = readyFromRaw({ food: 'sour cherries', form: 'pitted', raw: '100 lb' });
    expect(pitted.yield.low).toBe(0.84); // extension
    expect(pitted.yield.likely).toBe(0.9); // SR28
  });

  test('the usual spread is the median distance of two sources on one food and preparation', () => {
    const ranges: number[] = [];
    for (const { food } of cutRows) {
      for (const preparation of ['trimmed', 'cored', 'pitted', 'peeled'] as const) {
        const own = [
          refuseRows.filter((row) => row.food === food && row.preparation === preparation),
          ...trimTables.map((rows) => rows.filter((row) => row.food === food && row.preparation === preparation)),
        ];
        if (own.filter((rows) => rows.length > 0).length < 2) continue;
        const shares = own.flat().map((row) => row.ediblePct / 100);
        ranges.push(Math.max(...shares) - Math.min(...shares));
      }
    }
    expect(ranges.length).toBeGreaterThanOrEqual(28);
    expect(median(ranges)).toBeCloseTo(figure('yield-spread').likely, 2);
  });

  test('cooked factors of the price survey are no measure of trimming', () => {
    // Brussels sprouts 1.06, collards 1.16, corn 0.54 on the cob: water taken up, not peeled
    for (const food of ['brussels-sprout', 'collard-greens', 'sweet-corn', 'okra']) {
      const sources = edibleFigures(food, 'trimmed').map((figure) => figure.row.source);
      expect(sources).not.toContain('usda-ers-fvprices-2022');
    }
  });

  test('fruit put up whole without its own row takes that of fruit eaten whole, and says so', () => {
    const plum = readyFromRaw({ food: 'plums', form: 'whole', raw: '10 lb' });
    expect(plum.yield).toEqual({ low: 0.95, likely: 0.98, high: 1 });
    expect(plum.cautions.map(({ id }) => id)).toContain('estimate');
    expect(preparedFigures('fig', 'whole').borrowed).toBe(false);
  });

  test('a form can say what is taken off: beets bought with their tops', () => {
    expect(readyFromRaw({ food: 'beets', form: 'with tops', raw: '1 lb' }).yield.likely).toBe(0.49);
    expect(readyFromRaw({ food: 'beets', form: 'peeled', raw: '1 lb' }).yield.likely).toBe(0.67);
  });

  test('a group of foods takes the middle of its members and the ends of all of them', () => {
    const { yield: share } = readyFromRaw({ food: 'winter squash', form: 'cubes', raw: '1 lb' });
    expect(share.likely).toBe(0.71);
    expect(share.low).toBe(0.64); // Hubbard
    expect(share.high).toBe(0.84); // butternut
    expect(readyFromRaw({ food: 'cherry', form: 'pitted', raw: '1 lb' }).yield.likely).toBeCloseTo(0.91, 12);
  });
});

describe('sauce and juice', () => {
  test('tomato sauce counts the water boiled off apart from the skins', () => {
    // 3 1/4 lb a quart of juice (243 g a cup), 5 lb a quart of thin sauce (245 g a cup)
    const { parts, ready, cautions } = readyFromRaw({ food: 'tomatoes', form: 'sauce', raw: '100 lb' });
    expect(ready.likely.value).toBeCloseTo(((245 * 4) / 453.59237 / 5) * 100, 9);
    expect(parts.map(({ what }) => what)).toEqual(['skins, seeds and cores', 'water boiled off']);
    expect(parts[0]?.mass.value).toBeCloseTo((1 - (243 * 4) / 453.59237 / 3.25) * 100, 9);
    expect(cautions.map(({ id }) => id)).toContain('loss-includes-water');
    const thick = readyFromRaw({ food: 'tomatoes', form: 'thick sauce', raw: '100 lb' });
    expect(thick.ready.likely.value).toBeLessThan(ready.likely.value);
    expect(thick.parts[0]?.mass.value).toBeCloseTo(parts[0]?.mass.value ?? 0, 9);
  });

  test('applesauce by the printed quarts, and never more than the cored fruit', () => {
    const { yield: share, preparation } = readyFromRaw({ food: 'apples', form: 'sauce', raw: '3 lb' });
    expect(share.likely).toBeCloseTo((244 * 4) / 453.59237 / 3, 9);
    expect(share.high).toBeLessThanOrEqual(0.91);
    expect(preparation).toBe('milled');
  });

  test('a puree is the cut fruit, down to what a sieve leaves: 3 1/4 of 5 lb for mango', () => {
    const cut = readyFromRaw({ food: 'mango', form: 'chunks', raw: '5 lb' });
    const puree = readyFromRaw({ food: 'mango', form: 'puree', raw: '5 lb' });
    expect(puree.ready.likely).toEqual(cut.ready.likely);
    expect(puree.ready.low.value / cut.ready.low.value).toBeCloseTo(3.25 / 5 / 0.71, 9);
    expect(readyFromRaw({ food: 'peach', form: 'sauce', raw: '1 lb' }).preparation).toBe('peeled');
  });

  test('juice is only where a quart of it is printed', () => {
    expect(readyFromRaw({ food: 'grapes', form: 'juice', raw: '1 lb' }).preparation).toBe('juiced');
    const none = produce.readyFromRaw({ food: 'cherry', form: 'juice', raw: '1 lb' });
    expect(none).toMatchObject({ known: false, reason: { code: 'no yield' } });
    expect(offered(none).join('; ')).toMatch(/ownYield.*cherry, pitted/);
  });
});

describe('your own measure', () => {
  test('a ready weight from this lot', () => {
    const answer = readyFromRaw({ food: 'peach', form: 'halves', raw: '20 lb', ownYield: { ready: '16 lb' } });
    expect(answer.ready.low).toEqual(answer.ready.high);
    expect(answer.ready.likely.value).toBe(16);
    expect(answer.trimmings.likely.value).toBe(4);
    expect(answer.basis).toMatchObject([{ of: 'yield', kind: 'measured' }]);
    expect(answer.preparation).toBe('measured');
  });

  test('a ratio, or an earlier lot, for the way back', () => {
    const byRatio = rawForReady({ food: 'pear', form: 'halves', ready: '8 lb', ownYield: { yield: '80 %' } });
    const byLot = rawForReady({
      food: 'pear',
      form: 'halves',
      ready: '8 lb',
      ownYield: { ready: '4 kg', raw: '5 kg' },
    });
    expect(byRatio.raw.likely.value).toBe(10);
    expect(byLot.raw.likely.value).toBeCloseTo(10, 12);
    const none = readyFromRaw({ food: 'pear', form: 'whole', raw: '8 lb', ownYield: { yield: 1 } });
    expect(none.parts).toEqual([]);
  });

  test('serves a form that no table has: peeled tomatoes', () => {
    expect(produce.readyFromRaw({ food: 'tomato', form: 'peeled', raw: '1 lb' }).known).toBe(false);
    const own = readyFromRaw({ food: 'tomato', form: 'peeled', raw: '10 lb', ownYield: { ready: '8 lb' } });
    expect(own.yield.likely).toBe(0.8);
  });

  test('refuses what cannot be', () => {
    const call = (ownYield: object) => () =>
      readyFromRaw({ food: 'peach', form: 'halves', raw: '10 lb', ownYield } as never);
    expect(codeOf(call({ ready: '11 lb' }))).toBe('CONTRADICTION');
    expect(pathOf(call({ ready: '11 lb' }))).toBe('ownYield.ready');
    expect(codeOf(call({ ready: '8 lb', yield: 0.8 }))).toBe('CONTRADICTION');
    expect(codeOf(call({}))).toBe('MISSING');
    expect(codeOf(call({ yield: 0 }))).toBe('OUT_OF_RANGE');
    const back = () => rawForReady({ food: 'peach', form: 'halves', ready: '10 lb', ownYield: { ready: '8 lb' } });
    expect(pathOf(back)).toBe('ownYield.raw');
    const both = () => rawForReady({ food: 'peach', form: 'halves', ready: '10 lb', raw: '12 lb' } as never);
    expect([codeOf(both), pathOf(both)]).toEqual(['CONTRADICTION', 'ready']);
  });
});

describe('names', () => {
  test.each([
    ['Peaches', 'peach'],
    ['Cherries, sour', 'sour cherry'],
    ['courgettes', 'zucchini'],
    ['snap beans', 'green bean'],
    ['Peas, green or English', 'green pea'],
    ['Brussels sprouts', 'Brussels sprout'],
    ['Granny Smith apples', 'apple'],
    ['TOMATOES', 'tomato'],
  ])('%s is %s', (given, name) => {
    expect(readyFromRaw({ food: given, form: 'whole', raw: '1 lb' }).food).toBe(name);
  });

  test.each([
    ['halved or sliced', 'halves or slices'],
    ['thin sauce', 'thin sauce'],
    ['sliced', 'slices'],
    ['1-inch cubes', 'cubes'],
    ['crushed', 'crushed'],
  ])('form "%s" is %s', (given, form) => {
    expect(readyFromRaw({ food: 'tomato', form: given, raw: '1 lb' }).form).toBe(form);
  });

  test('an unknown name offers the nearest', () => {
    expect(errorOf(() => readyFromRaw({ food: 'peechs', form: 'whole', raw: '1 lb' })).nearest).toContain('peach');
    expect(errorOf(() => readyFromRaw({ food: 'peach', form: 'slised', raw: '1 lb' })).nearest).toContain('slices');
  });
});

describe('amounts as people buy them', () => {
  const raw = (food: string, amount: string) => {
    const { raw: range } = known(produce.readyFromRaw({ food, form: 'whole', raw: amount as '1 lb' }));
    return [range.low, range.likely, range.high].map(({ value }) => Math.round(value * 100) / 100);
  };

  test('a container by its printed weight, by its own name or a shorter one', () => {
    expect(raw('apples', '1 bushel')).toEqual([40, 48, 50]);
    expect(raw('strawberries', '2 flats')).toEqual([24, 24, 24]);
    expect(raw('apples', '1/2 peck')).toEqual([5, 6, 7]);
    expect(raw('cherries', '2 lugs')).toEqual([30, 50, 50]);
  });

  test('a volume by the container of that name, else by the bushel', () => {
    expect(raw('strawberries', '16 quarts')).toEqual([20, 22, 24]);
    // 16 liquid quarts are 15.14 L of the 35.24 L of a bushel, which holds 48 to 52 lb
    expect(raw('peaches', '16 quarts')).toEqual([20.62, 20.62, 22.34]);
  });

  test('pieces with the refuse that the tables leave out of their weight', () => {
    // 182 g without the core, which is 10% of what is bought
    expect(raw('apples', '40 apples')[1]).toBeCloseTo((40 * 182) / 0.9 / 453.59237, 2);
    expect(raw('peach', '10 pieces')[1]).toBeCloseTo((10 * 150) / 0.96 / 453.59237, 2);
  });

  test('the range of the amount goes into the ends of the answer', () => {
    const halves = readyFromRaw({ food: 'peaches', form: 'halves', raw: '1 bushel' });
    expect(halves.ready.low.value).toBeCloseTo(48 * 0.76, 9);
    expect(halves.ready.high.value).toBeCloseTo(52 * 0.88, 9);
    expect(halves.cautions.map(({ id }) => id)).toContain('bought-by-measure');
  });

  test('where no table weighs it the answer is no, with what to do', () => {
    const none = produce.readyFromRaw({ food: 'peaches', form: 'halves', raw: '3 wagons' as '1 lb' });
    expect(none).toMatchObject({ known: false, reason: { code: 'no weight' } });
    expect(offered(none)[0]).toBe('Weigh it, and give the mass.');
    expect(codeOf(() => produce.readyFromRaw({ food: 'peach', form: 'halves', raw: '1,250 flats' as '1 lb' }))).toBe(
      'NOT_A_QUANTITY',
    );
    expect(codeOf(() => produce.readyFromRaw({ food: 'peach', form: 'halves', raw: '2 m' as '1 lb' }))).toBe(
      'WRONG_DIMENSION',
    );
  });
});

describe('one name, one food', () => {
  test('pawpaw is not papaya, and a huckleberry lends from the blueberry and says so', () => {
    for (const form of ['puree', 'peeled', 'slices', 'whole']) {
      expect(produce.readyFromRaw({ food: 'pawpaw', form, raw: '1 lb' }).known, form).toBe(false);
    }
    const { food, basis } = readyFromRaw({ food: 'huckleberries', form: 'whole', raw: '1 lb' });
    expect(food).toBe('huckleberry');
    expect(basis.every((line) => line.food !== undefined)).toBe(true);
  });

  test('every food of the pantry gets an answer or a no, never an error', () => {
    for (const { name } of foodRows) {
      for (const form of ['whole', 'slices', 'sauce']) {
        expect([true, false]).toContain(produce.readyFromRaw({ food: name, form, raw: '1 lb' }).known);
      }
    }
  });

  test('a form in the name and another beside it contradict each other', () => {
    expect(codeOf(() => produce.readyFromRaw({ food: 'peach halves', form: 'slices', raw: '1 lb' }))).toBe(
      'CONTRADICTION',
    );
    expect(readyFromRaw({ food: 'peach halves', raw: '1 lb' }).form).toBe('halves');
    expect(codeOf(() => produce.readyFromRaw({ food: 'peach', raw: '1 lb' }))).toBe('MISSING');
  });
});
