import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formName, nameOf } from '../../../src/foods/tables';
import * as produce from '../../../src/produce/index';
import { kitchenWeights, preservedWeights, rawWeights } from '../../../src/produce/weights/tables';
import { thrownBy as errorOf } from '../../helpers/errors';
import { known, offered } from '../../helpers/known';

const massOf = (input: produce.MassOfVolumeInput) => known(produce.kitchenMeasure(input));
const volumeOf = (input: produce.VolumeOfMassInput) => known(produce.kitchenMeasure(input));

const grams = (food: string, volume: `${number} cup`, form?: string) =>
  massOf({ food, volume, ...(form === undefined ? {} : { form }) }).mass.value;

describe('mass from volume', () => {
  test('volume from mass turns it round, whatever the food', () => {
    const foods = [
      ...new Set([...rawWeights.filter(({ unit }) => unit).map(({ food }) => nameOf(food)), 'sugar', 'honey']),
    ];
    fc.assert(
      fc.property(fc.constantFrom(...foods), fc.double({ min: 0.01, max: 1e4, noNaN: true }), (food, cups) => {
        const { mass, massRange: range } = massOf({ food, volume: { value: cups, unit: 'cup' } });
        const back = volumeOf({ food, mass });
        expect(Math.abs(back.volume.value / cups - 1)).toBeLessThan(1e-12);
        expect(range.low.value <= mass.value && mass.value <= range.high.value).toBe(true);
        expect(
          back.volumeRange.low.value <= back.volume.value && back.volume.value <= back.volumeRange.high.value,
        ).toBe(true);
      }),
    );
  });

  test('every printed volume weighs within what the answers give as range, or is a spoon of a food weighed by the cup', () => {
    for (const { food, unit, amount, grams: printed, forms } of rawWeights) {
      if (unit === undefined) continue;
      for (const form of forms?.length ? forms : [undefined]) {
        const answer = massOf({
          food: nameOf(food),
          volume: { value: amount, unit },
          ...(form === undefined ? {} : { form: formName(form) }),
        });
        const off = Math.min(
          ...[answer.massRange.low, answer.mass, answer.massRange.high].map(({ value }) =>
            Math.abs(value / printed - 1),
          ),
        );
        // a spoon's weight is printed to the nearest half gram or so
        expect(off, `${food} ${form}`).toBeLessThan(unit === 'cup' ? 0.2 : 0.45);
      }
    }
  });

  test('a cut that is not printed takes the figure of one that fills alike', () => {
    expect(grams('tomato', '1 cup', 'diced')).toBe(180); // chopped or sliced
    expect(grams('winter squash', '1 cup', 'diced')).toBe(116); // cubes
    expect(grams('peach', '1 cup', 'halves')).toBe(154); // slices
    expect(grams('carrot', '1 cup', 'shredded')).toBe(110); // grated
  });

  test('the peel changes a cup of apple slices by a gram, which the range holds', () => {
    const { massRange: range, mass } = massOf({ food: 'apples', form: 'slices', volume: '1 cup' });
    expect(mass.value).toBeCloseTo(109, 9);
    expect(range.high.value).toBeCloseTo(110, 9);
  });

  test('sauce, puree and juice of a raw food are its stored food', () => {
    expect(grams('apple', '1 cup', 'sauce')).toBeCloseTo(244, 9);
    expect(grams('tomato', '1 cup', 'juice')).toBeCloseTo(243, 9);
    expect(grams('tomato', '1 cup', 'puree')).toBeCloseTo(250, 9);
    expect(grams('strawberry', '1 cup', 'puree')).toBeCloseTo(232, 9);
    expect(grams('pumpkin', '1 cup', 'puree')).toBeCloseTo(245, 9);
  });

  test('a puree that no table weighs is that of other fruit, and says so', () => {
    const { mass, massRange: range, cautions, basis } = massOf({ food: 'peach', form: 'puree', volume: '1 cup' });
    expect(mass.value).toBeGreaterThan(225);
    expect(mass.value).toBeLessThan(250);
    expect(range.low.value).toBeLessThan(range.high.value);
    expect(cautions.map(({ id }) => id)).toContain('estimate');
    expect(basis.map(({ kind }) => kind)).toEqual(['derived']);
  });

  test('stored foods by their state, and without one', () => {
    expect(grams('brown sugar', '1 cup', 'packed')).toBeCloseTo(220, 9);
    expect(grams('brown sugar', '1 cup', 'unpacked')).toBeCloseTo(145, 9);
    expect(grams('raisins', '1 cup', 'not packed')).toBeCloseTo(145, 9);
    expect(grams('powdered sugar', '1 cup', 'sifted')).toBeCloseTo(100, 9);
    expect(grams('strawberries, frozen, unsweetened', '1 cup', 'thawed')).toBeCloseTo(221, 9);
    expect(grams('carrots, canned, drained', '1 cup', 'sliced')).toBeCloseTo(146, 9);
    expect(grams('prunes', '1 cup')).toBeCloseTo(174, 9);
  });

  test('weights of one table that differ widen the range: maple syrup 315 g a cup, 20 g a spoon, 83 g a quarter cup', () => {
    const { mass, massRange: range } = massOf({ food: 'maple syrup', volume: '1 cup' });
    expect(mass.value).toBeCloseTo(315, 9);
    expect(range.high.value).toBeCloseTo(4 * 83, 9);
  });

  test('citric acid has only a recalled weight, which it says', () => {
    const { mass, cautions } = massOf({ food: 'citric acid', volume: '1 tsp' });
    expect(mass.value).toBeCloseTo(4.6, 9);
    expect(cautions.map(({ id }) => id)).toContain('recalled');
    expect(kitchenWeights.filter(({ g_per_tsp }) => g_per_tsp !== undefined)).toHaveLength(2);
  });

  test('a form or food that no table weighs is refused, with those it does', () => {
    expect(offered(produce.kitchenMeasure({ food: 'snap bean', form: 'shredded', volume: '1 cup' }))[0]).toBe(
      'green bean, pieces',
    );
    expect(produce.kitchenMeasure({ food: 'sugar', form: 'slices', volume: '1 cup' }).known).toBe(false);
    expect(produce.kitchenMeasure({ food: 'fig', volume: '1 cup' })).toMatchObject({
      known: false,
      reason: { code: 'no weight' },
    });
    expect(errorOf(() => massOf({ food: 'shugar', volume: '1 cup' })).nearest).toContain('sugar');
  });

  test('every stored row is reached by its name', () => {
    for (const { food, form, unit } of preservedWeights) {
      if (unit === undefined) continue;
      const asked = { food: nameOf(food), ...(form === undefined ? {} : { form: formName(form) }) };
      expect(massOf({ ...asked, volume: '1 cup' }).food).toBe(nameOf(food));
    }
  });
});

test('a volume or a mass, and just one of them', () => {
  const ask = produce.kitchenMeasure as (input: unknown) => unknown;
  expect(errorOf(() => ask({ food: 'sugar' }))).toMatchObject({ code: 'MISSING', path: 'volume' });
  expect(errorOf(() => ask({ food: 'sugar', volume: '1 cup', mass: '1 lb' }))).toMatchObject({
    code: 'CONTRADICTION',
    path: 'mass',
  });
});

// SR28, WEIGHT.txt: a cup of whole raspberries 123 g, of pureed strawberries 232 g. Crushed fruit has no air between.
test('a cup of crushed berries is no cup of whole ones', () => {
  const cup = (food: string, form?: string) => grams(food, '1 cup', form);
  expect(cup('raspberry')).toBe(123);
  expect(cup('strawberry', 'crushed')).toBe(232);
  for (const berry of ['raspberry', 'blackberry', 'blueberry']) expect(cup(berry, 'crushed')).toBeGreaterThan(230);
});
