import { describe, expect, test } from 'vitest';
import { foodRows, nameOf } from '../../../src/foods/tables';
import { belitzRows, brixTables, mcgeeRows, rawCompositions } from '../../../src/produce/composition/tables';
import { figure } from '../../../src/produce/figures';
import { cutRows } from '../../../src/produce/forms';
import * as produce from '../../../src/produce/index';
import { median } from '../../../src/produce/span';
import { codeOf, thrownBy as errorOf } from '../../helpers/errors';
import { known } from '../../helpers/known';

const composition = (input: Parameters<typeof produce.composition>[0]) => known(produce.composition(input));
const juiceBrix = (input: Parameters<typeof produce.juiceBrix>[0]) => known(produce.juiceBrix(input));

const first = (food: string | undefined) => {
  const number = cutRows.find((row) => row.food === food)?.ndb[0];
  return rawCompositions.find(({ ndb }) => ndb === number);
};
const FOODS = cutRows.map(({ food }) => nameOf(food)).filter((name) => name !== 'dry bean');

describe('composition', () => {
  test('every part is in order and a share, and water and fiber leave room for the rest', () => {
    for (const food of FOODS) {
      const { moisture: water, sugars, solubleSolids, acidShare: acid, fiber } = composition({ food });
      for (const part of [water, sugars, solubleSolids, acid, fiber]) {
        if (part === undefined) continue;
        const { low, likely, high } = part;
        expect([0 <= low, low <= likely, likely <= high, high <= 1], food).not.toContain(false);
      }
      expect(water.likely + (sugars?.likely ?? 0) + (fiber?.likely ?? 0), food).toBeLessThan(1);
    }
  });

  test('the range holds every table: water and sugars of peach, acid of strawberry', () => {
    const peach = composition({ food: 'peach' });
    expect(peach.moisture.low).toBeLessThanOrEqual(0.871); // 12.9% dry matter, Belitz
    expect(peach.moisture.likely).toBeCloseTo(0.8887, 9); // SR28
    const strawberry = composition({ food: 'strawberry' });
    expect(strawberry.acidShare?.low).toBeLessThanOrEqual(0.011);
    expect(strawberry.acidShare?.high).toBeGreaterThanOrEqual(0.016); // McGee
    expect(strawberry.sugars?.high).toBeGreaterThanOrEqual(0.07); // McGee
  });

  test('Brix is the average where customs print one, else the legal least of that very fruit', () => {
    expect(composition({ food: 'apple' }).solubleSolids?.likely).toBe(0.133);
    expect(composition({ food: 'tomato' }).solubleSolids?.likely).toBe(0.05);
    // 14.3 is printed for cherries of any kind, 20.0 as the least of sweet ones
    expect(composition({ food: 'sweet cherry' }).solubleSolids?.likely).toBe(0.2);
    expect(composition({ food: 'cherry' }).solubleSolids?.low).toBeLessThan(0.143);
    expect(composition({ food: 'blueberry' }).solubleSolids?.low).toBeLessThanOrEqual(0.1027); // Duke, ripe
  });

  test('a sweet fruit without a Brix takes it from its solids; starch and vegetables give none', () => {
    const persimmon = composition({ food: 'japanese persimmon' });
    // 100 - 80.32 water - 3.6 fiber - 0.19 fat = 15.89
    expect(persimmon.solubleSolids?.likely).toBeCloseTo(0.1589 * 1.14, 9);
    expect(persimmon.basis.some(({ kind }) => kind === 'derived')).toBe(true);
    for (const food of ['plantain', 'avocado', 'potato', 'ground cherry']) {
      expect(composition({ food }).solubleSolids, food).toBeUndefined();
    }
  });

  test('the fruits that print both give that ratio: middle and four fifths', () => {
    const ratios = brixTables.averageUS
      .flatMap(({ food, degBrix }) => {
        const row = first(food);
        return row?.fiber_g == null ? [] : [degBrix / (100 - row.water_g - row.fiber_g - row.fat_g)];
      })
      .sort((a, b) => a - b);
    expect(ratios.length).toBeGreaterThanOrEqual(24);
    const at = (share: number) => ratios[Math.round((ratios.length - 1) * share)];
    expect(at(0.1)).toBeCloseTo(figure('brix-over-solids').low, 1);
    expect(median(ratios)).toBeCloseTo(figure('brix-over-solids').likely, 2);
    expect(at(0.9)).toBeCloseTo(figure('brix-over-solids').high, 1);
  });

  test('the usual spreads are the medians between the tables', () => {
    const off = (one: number, other: number) => Math.abs(one - other) / other;
    const each = belitzRows.flatMap((row) => {
      const sr = first(row.food);
      return sr === undefined ? [] : [{ row, sr, other: mcgeeRows.find(({ food }) => food === row.food) }];
    });
    const solids = each.map(({ row, sr }) => off(row.dryMatter_pct, 100 - sr.water_g));
    const sugars = [
      ...each.flatMap(({ row, sr }) => (sr.sugars_g === null ? [] : [off(row.totalSugar_pct, sr.sugars_g)])),
      ...mcgeeRows.flatMap((row) => {
        const sugar = first(row.food)?.sugars_g;
        return sugar == null ? [] : [off(row.sugar_pct, sugar)];
      }),
    ];
    const acids = each.flatMap(({ row, other }) => (other ? [off(other.acid_pct, row.titratableAcidity_pct)] : []));
    const brix = brixTables.averageUS.flatMap(({ food, degBrix }) =>
      [...brixTables.minimumUS, ...brixTables.minimumEU].flatMap((row) =>
        row.food === food ? [off(row.degBrix, degBrix)] : [],
      ),
    );
    const medians = [solids, sugars, brix, acids].map((list) => Math.round(median(list) * 100) / 100);
    const usual = ['solids', 'sugars', 'soluble-solids', 'acid'].map((part) => figure(`${part}-spread`).likely);
    expect(medians).toEqual(usual);
  });

  test('sugars of another table never exceed the carbohydrate that the food tables leave for them', () => {
    // McGee prints 11% for gooseberries; SR28 has 10.18 g of carbohydrate with 4.3 g of fiber
    const { sugars } = composition({ food: 'gooseberry' });
    expect(sugars?.likely).toBeCloseTo(0.0588, 9);
    expect(sugars?.high).toBeCloseTo(0.11, 9);
  });

  test('dried beans have none', () => {
    expect(produce.composition({ food: 'dried beans' }).known).toBe(false);
  });
});

describe('juice Brix', () => {
  test('gives what each table prints, and nothing else', () => {
    expect(juiceBrix({ food: 'prune' })).toMatchObject({ averageUS: 18.5, minimumUS: 18.5 });
    expect(juiceBrix({ food: 'Mandarins' })).toMatchObject({ minimumEU: 11.2 });
    expect(juiceBrix({ food: 'acerola' }).averageUS).toBeUndefined();
    expect(juiceBrix({ food: 'acerola' }).basis).toHaveLength(1);
    expect(errorOf(() => juiceBrix({ food: 'appel' })).nearest).toContain('apple');
  });
});

describe('composition of foods as kept', () => {
  const water = (food: string) => composition({ food }).per100g[0]?.waterGrams as number;

  test('dried and raw by any name', () => {
    expect(water('dried peaches')).toBe(31.8);
    expect(water('peaches')).toBe(88.87);
    expect(composition({ food: 'cherry' }).per100g[0]?.ndb).toBe('09063');
    expect(composition({ food: 'sugar' }).sugars?.likely).toBeCloseTo(0.998, 12);
    expect(composition({ food: 'peach', form: 'halves' }).moisture).toEqual(composition({ food: 'peach' }).moisture);
  });

  test('solids balance from raw to dried is that of the worked examples', () => {
    // kg dried from 1 kg prepared raw, tolerance 0.001
    const dried = (raw: string, kept: string) => (100 - water(raw)) / (100 - water(kept));
    expect(dried('apricot', 'dried apricot')).toBeCloseTo(0.1975, 3);
    expect(dried('plum', 'prune')).toBeCloseTo(0.1849, 3);
    expect(dried('european grape', 'raisin')).toBeCloseTo(0.2301, 3);
    expect(dried('pear', 'dried pear')).toBeCloseTo(0.2188, 3);
    expect(dried('tomato', 'tomato powder')).toBeCloseTo(0.0565, 3);
    expect(dried('onion', 'onion flakes')).toBeCloseTo(0.1134, 3);
    expect(dried('banana', 'banana powder')).toBeCloseTo(0.2587, 3);
    expect(dried('fig', 'dried fig')).toBeCloseTo(0.2986, 3);
  });

  test('a food that is not in the pantry is an error; one that no table has is a no', () => {
    expect(codeOf(() => composition({ food: 'moon cheese' }))).toBe('UNKNOWN_NAME');
    expect(produce.composition({ food: 'pawpaw' }).known).toBe(false);
    expect(produce.composition({ food: 'peach', form: 'smoked' }).known).toBe(false);
    for (const { name } of foodRows) expect([true, false]).toContain(produce.composition({ food: name }).known);
  });
});
