import { describe, expect, test } from 'vitest';
import { catalogue } from '../../../src/produce/catalogue';
import {
  BRIX_OVER_SOLIDS,
  belitzRows,
  brixTables,
  compositionRows,
  mcgeeRows,
  USUAL_COMPOSITION_SPREAD,
} from '../../../src/produce/composition/composition';
import { composition, describeProduce, foodComposition, juiceBrix, produceNames } from '../../../src/produce/index';
import { median } from '../../../src/produce/yields/span';
import { codeOf, thrownBy as errorOf } from '../../helpers/errors';

const first = (produce: string | null) => {
  const number = catalogue.find(({ name }) => name === produce)?.ndb[0];
  return compositionRows.find(({ ndb }) => ndb === number);
};
const known = produceNames().filter((name) => name !== 'dried bean');

describe('composition', () => {
  test('every part is in order and a share, and water and fibre leave room for the rest', () => {
    for (const produce of known) {
      const { water, sugars, solubleSolids, acid, fibre } = composition({ produce });
      for (const part of [water, sugars, solubleSolids, acid, fibre]) {
        if (part === undefined) continue;
        const { low, likely, high } = part;
        expect([0 <= low, low <= likely, likely <= high, high <= 1], produce).not.toContain(false);
      }
      expect(water.likely + (sugars?.likely ?? 0) + (fibre?.likely ?? 0), produce).toBeLessThan(1);
    }
  });

  test('the range holds every table: water and sugars of peach, acid of strawberry', () => {
    const peach = composition({ produce: 'peach' });
    expect(peach.water.low).toBeLessThanOrEqual(0.871); // 12.9% dry matter, Belitz
    expect(peach.water.likely).toBeCloseTo(0.8887, 9); // SR28
    const strawberry = composition({ produce: 'strawberry' });
    expect(strawberry.acid?.low).toBeLessThanOrEqual(0.011);
    expect(strawberry.acid?.high).toBeGreaterThanOrEqual(0.016); // McGee
    expect(strawberry.sugars?.high).toBeGreaterThanOrEqual(0.07); // McGee
  });

  test('Brix is the average where customs print one, else the legal least of that very fruit', () => {
    expect(composition({ produce: 'apple' }).solubleSolids?.likely).toBe(0.133);
    expect(composition({ produce: 'tomato' }).solubleSolids?.likely).toBe(0.05);
    // 14.3 is printed for cherries of any kind, 20.0 as the least of sweet ones
    expect(composition({ produce: 'sweet cherry' }).solubleSolids?.likely).toBe(0.2);
    expect(composition({ produce: 'cherry' }).solubleSolids?.low).toBeLessThan(0.143);
    expect(composition({ produce: 'blueberry' }).solubleSolids?.low).toBeLessThanOrEqual(0.1027); // Duke, ripe
  });

  test('a sweet fruit without a Brix takes it from its solids; starch and vegetables give none', () => {
    const persimmon = composition({ produce: 'japanese persimmon' });
    // 100 - 80.32 water - 3.6 fibre - 0.19 fat = 15.89
    expect(persimmon.solubleSolids?.likely).toBeCloseTo(0.1589 * 1.14, 9);
    expect(persimmon.basis.some(({ kind }) => kind === 'equation')).toBe(true);
    for (const produce of ['plantain', 'avocado', 'potato', 'groundcherry']) {
      expect(composition({ produce }).solubleSolids, produce).toBeUndefined();
    }
  });

  test('the fruits that print both give that ratio: middle and four fifths', () => {
    const ratios = brixTables.averageUS
      .flatMap(({ produce, degBrix }) => {
        const row = first(produce);
        return row?.fibre_g == null ? [] : [degBrix / (100 - row.water_g - row.fibre_g - row.fat_g)];
      })
      .sort((a, b) => a - b);
    expect(ratios.length).toBeGreaterThanOrEqual(24);
    const at = (share: number) => ratios[Math.round((ratios.length - 1) * share)];
    expect(at(0.1)).toBeCloseTo(BRIX_OVER_SOLIDS.low, 1);
    expect(median(ratios)).toBeCloseTo(BRIX_OVER_SOLIDS.likely, 2);
    expect(at(0.9)).toBeCloseTo(BRIX_OVER_SOLIDS.high, 1);
  });

  test('the usual spreads are the medians between the tables', () => {
    const off = (one: number, other: number) => Math.abs(one - other) / other;
    const each = belitzRows.flatMap((row) => {
      const sr = first(row.produce);
      return sr === undefined ? [] : [{ row, sr, other: mcgeeRows.find(({ produce }) => produce === row.produce) }];
    });
    const solids = each.map(({ row, sr }) => off(row.dryMatter_pct, 100 - sr.water_g));
    const sugars = [
      ...each.flatMap(({ row, sr }) => (sr.sugars_g === null ? [] : [off(row.totalSugar_pct, sr.sugars_g)])),
      ...mcgeeRows.flatMap((row) => {
        const sugar = first(row.produce)?.sugars_g;
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
    const { solids: a, sugars: b, solubleSolids: c, acid: d } = USUAL_COMPOSITION_SPREAD;
    expect(medians).toEqual([a, b, c, d]);
  });

  test('sugars of another table never exceed the carbohydrate that the food tables leave for them', () => {
    // McGee prints 11% for gooseberries; SR28 has 10.18 g of carbohydrate with 4.3 g of fibre
    const { sugars } = composition({ produce: 'gooseberry' });
    expect(sugars?.likely).toBeCloseTo(0.0588, 9);
    expect(sugars?.high).toBeCloseTo(0.11, 9);
  });

  test('dried beans have none', () => {
    expect(codeOf(() => composition({ produce: 'dried beans' }))).toBe('UNKNOWN_NAME');
  });
});

describe('juice Brix', () => {
  test('gives what each table prints, and nothing else', () => {
    expect(juiceBrix({ juice: 'prune' })).toMatchObject({ averageUS: 18.5, minimumUS: 18.5 });
    expect(juiceBrix({ juice: 'Mandarins' })).toMatchObject({ minimumEU: 11.2 });
    expect(juiceBrix({ juice: 'acerola' }).averageUS).toBeUndefined();
    expect(juiceBrix({ juice: 'acerola' }).basis).toHaveLength(1);
    expect(errorOf(() => juiceBrix({ juice: 'appel' })).nearest).toContain('apple');
  });
});

describe('composition of foods as kept', () => {
  test('dried and raw by any name', () => {
    expect(foodComposition({ food: 'dried peaches' }).water).toBe(31.8);
    expect(foodComposition({ food: 'peaches' }).water).toBe(88.87);
    expect(foodComposition({ food: 'cherry' }).ndb).toBe('09063');
    expect(foodComposition({ food: 'sugar' }).sugars).toBe(99.8);
  });

  test('solids balance from raw to dried is that of the worked examples', () => {
    // kg dried from 1 kg prepared raw, tolerance 0.001
    const dried = (raw: string, kept: string) =>
      (100 - foodComposition({ food: raw }).water) / (100 - foodComposition({ food: kept }).water);
    expect(dried('apricot', 'dried apricot')).toBeCloseTo(0.1975, 3);
    expect(dried('plum', 'prune')).toBeCloseTo(0.1849, 3);
    expect(dried('european grape', 'raisin')).toBeCloseTo(0.2301, 3);
    expect(dried('pear', 'dried pear')).toBeCloseTo(0.2188, 3);
    expect(dried('tomato', 'tomato powder')).toBeCloseTo(0.0565, 3);
    expect(dried('onion', 'onion flakes')).toBeCloseTo(0.1134, 3);
    expect(dried('banana', 'banana powder')).toBeCloseTo(0.2587, 3);
    expect(dried('fig', 'dried fig')).toBeCloseTo(0.2986, 3);
  });

  test('an unknown food is refused', () => {
    expect(codeOf(() => foodComposition({ food: 'moon cheese' }))).toBe('UNKNOWN_NAME');
    expect(codeOf(() => foodComposition({ food: 'dried bean' }))).toBe('UNKNOWN_NAME');
  });
});

describe('describe produce', () => {
  test('holds the rows of every variety', () => {
    const apple = describeProduce({ produce: 'apples' });
    expect(apple.refuse).toHaveLength(7);
    expect(apple.per100g).toHaveLength(7);
    expect(apple.cut).toBe('peeled');
    expect(apple.measures[0]).toEqual({ measure: '1 cup, quartered or chopped', mass: { value: 125, unit: 'g' } });
    expect(apple.customary.map(({ of }) => of)).toContain('bushel, 126 medium');
    expect(apple.customary[0]?.gives).toEqual({ cups: [2, 2] });
    expect(apple.keptAfter).toContainEqual({ as: 'Applesauce, canned', ratio: 1, cup: { value: 0.5401, unit: 'lb' } });
  });

  test('answers for everything in the catalogue', () => {
    for (const produce of produceNames()) {
      const { composition: parts, basis, per100g } = describeProduce({ produce });
      expect(parts === undefined, produce).toBe(per100g.length === 0);
      expect(basis.length > 0, produce).toBe(true);
    }
    expect(describeProduce({ produce: 'dried beans' }).keptAfter.map(({ ratio }) => ratio)).toEqual([2.4692, 2.4692]);
    expect(describeProduce({ produce: 'gooseberries' }).refuse[0]?.what).toBeNull();
  });

  test('an unknown name offers the nearest', () => {
    expect(errorOf(() => describeProduce({ produce: 'aple' })).nearest).toContain('apple');
  });
});
