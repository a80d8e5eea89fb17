import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figure } from '../../../src/produce/figures';
import * as produce from '../../../src/produce/index';
import { median } from '../../../src/produce/span';
import { guideQuart } from '../../../src/produce/yields/printed';
import { canningRows } from '../../../src/produce/yields/tables';
import { codeOf } from '../../helpers/errors';
import { known, offered } from '../../helpers/known';

const rawForJars = (input: produce.RawForJarsInput) => known(produce.rawForJars(input));
const jarsFromRaw = (input: produce.JarsFromRawInput) => known(produce.rawForJars(input));

const FOODS = [
  { food: 'apples', form: 'slices' },
  { food: 'apples', form: 'sauce' },
  { food: 'peaches', form: 'halves' },
  { food: 'figs', form: 'whole' },
  { food: 'berries', form: 'whole' },
  { food: 'tomatoes', form: 'crushed' },
  { food: 'tomatoes', form: 'thick sauce' },
  { food: 'mushrooms', form: 'whole' },
  { food: 'sweet corn', form: 'cream style' },
  { food: 'strawberries', form: 'whole' },
  { food: 'mango', form: 'puree' },
] as const;
const JARS = ['half-pint', 'pint', 'quart', 'half-gallon', '12 oz', '24 oz'] as const;
const batch = fc.record({
  what: fc.constantFrom(...FOODS),
  jar: fc.constantFrom(...JARS),
  jars: fc.integer({ min: 1, max: 500 }),
});

describe('raw for jars', () => {
  test('more jars never take less, and the ends are in order', () => {
    fc.assert(
      fc.property(batch, ({ what: { food, form }, jar, jars }) => {
        const one = rawForJars({ food, form, jar, jars }).raw;
        const more = rawForJars({ food, form, jar, jars: jars + 1 }).raw;
        for (const end of ['low', 'likely', 'high'] as const) {
          expect(more[end].value).toBeGreaterThanOrEqual(one[end].value);
        }
        expect(one.low.value).toBeLessThanOrEqual(one.likely.value);
        expect(one.likely.value).toBeLessThanOrEqual(one.high.value);
      }),
    );
  });

  test('the jars that a raw weight fills are the most whose need it meets', () => {
    fc.assert(
      fc.property(
        batch,
        fc.double({ min: 0, max: 0.999, noNaN: true }),
        ({ what: { food, form }, jar, jars }, more) => {
          const need = rawForJars({ food, form, jar, jars }).raw.likely.value;
          const next = rawForJars({ food, form, jar, jars: jars + 1 }).raw.likely.value;
          const pounds = need + (next - need) * more;
          const found = jarsFromRaw({ food, form, jar, raw: { value: pounds, unit: 'lb' } }).jars;
          expect(rawForJars({ food, form, jar, jars: found.likely }).raw.likely.value).toBeLessThanOrEqual(
            pounds + 1e-9,
          );
          expect(rawForJars({ food, form, jar, jars: found.likely + 1 }).raw.likely.value).toBeGreaterThan(
            pounds - 1e-9,
          );
          expect(found.low).toBeLessThanOrEqual(found.likely);
          expect(found.likely).toBeLessThanOrEqual(found.high);
          expect(Number.isInteger(found.low) && Number.isInteger(found.high)).toBe(true);
        },
      ),
    );
  });

  test('the load and the average are both as printed where they disagree: crushed tomatoes, 22 lb and 2 3/4 lb', () => {
    const pounds = (jars: number) =>
      rawForJars({ food: 'tomatoes', form: 'crushed', jar: 'quart', jars }).raw.likely.value;
    expect([1, 7, 8, 14].map(pounds)).toEqual([2.75, 22, 22, 44]);
    // figs: 16 lb a load, 2 1/2 lb a quart; the average never passes the next load
    const figs = (jars: number) => rawForJars({ food: 'figs', form: 'whole', jar: 'quart', jars }).raw.likely.value;
    expect([6, 7, 13, 14].map(figs)).toEqual([15, 16, 32, 32]);
  });

  test('a load that is not full yet gives one jar less than a load: 21 lb of crushed tomatoes', () => {
    const quarts = (raw: '21 lb' | '22 lb' | '44 lb') =>
      jarsFromRaw({ food: 'tomatoes', form: 'crushed', jar: 'quart', raw }).jars.likely;
    expect([quarts('21 lb'), quarts('22 lb'), quarts('44 lb')]).toEqual([6, 8, 16]);
  });

  test('one row of two ends alone is widened by the usual spread: 10 to 12 quarts of apple juice from 42 to 48 lb', () => {
    const { raw, basis } = rawForJars({ food: 'apples', form: 'juice', jar: 'quart', jars: 1 });
    expect(raw.low.value).toBeLessThanOrEqual(45 / 12);
    expect(raw.high.value).toBeGreaterThanOrEqual(45 / 10);
    expect(basis.map(({ source }) => source)).toEqual(['uga-c780']);
  });

  test('the range holds what every table prints: peaches 2 to 3 lb a quart', () => {
    // 48 lb gives 16 to 24 quarts (canning guide); 2 to 2 1/2 lb (Georgia)
    const { raw, road } = rawForJars({ food: 'peaches', form: 'halves', jar: 'quart', jars: 1 });
    expect([raw.low.value, raw.likely.value, raw.high.value]).toEqual([2, 2.5, 3]);
    expect(road).toBe('printed');
  });

  test('other jars by volume: half-pints from the pint, a half-gallon from the quart', () => {
    const pounds = (jar: string, jars: number) =>
      rawForJars({ food: 'peaches', form: 'halves', jar, jars }).raw.likely.value;
    expect(pounds('half-pint', 18)).toBeCloseTo(11, 12);
    expect(pounds('half-gallon', 1)).toBeCloseTo(5, 12);
    expect(pounds('24 oz', 1)).toBeCloseTo(2.5 * 0.75, 12);
    expect(pounds('12 oz', 4)).toBeCloseTo((11 / 9) * 3, 12);
    // printed by the pint only, so a quart is two
    expect(rawForJars({ food: 'peppers', form: 'whole', jar: 'quart', jars: 1 }).raw.likely.value).toBe(2);
    // printed by the quart only
    expect(rawForJars({ food: 'cranberries', form: 'whole', jar: 'pint', jars: 2 }).raw.likely.value).toBe(1);
  });

  test('loads printed as a range give their middle', () => {
    const { raw } = rawForJars({ food: 'asian pears', form: 'slices', jar: 'pint', jars: 9 });
    expect(raw.likely.value).toBe(12);
  });

  test('without printed pounds it goes by weights and says that it is an estimate', () => {
    const answer = rawForJars({ food: 'strawberries', form: 'whole', jar: 'quart', jars: 1 });
    expect(answer.road).toBe('weights');
    expect(answer.cautions.map(({ id }) => id)).toContain('estimate');
    // 144 g a cup, 94% left, packed 1.56 times
    expect(answer.raw.likely.value).toBeCloseTo(((144 * 4) / 453.59237 / 0.94) * 1.56, 6);
    expect(answer.raw.high.value / answer.raw.low.value).toBeGreaterThan(1.6);
  });

  test('a yield is no permission: every answer says so', () => {
    const { cautions } = rawForJars({ food: 'spinach', form: 'leaves', jar: 'pint', jars: 9 });
    expect(cautions.map(({ id }) => id)).toContain('yield-is-no-process');
  });

  test('the usual spread of pounds a jar is the median of the rows that print a range', () => {
    const halves = canningRows.flatMap(({ containerLb, containerJars, containerJar, ...row }) => {
      if (containerLb === undefined || containerJars === undefined) return [];
      const quart = guideQuart({ ...row } as never) / (containerJar === 'pint' ? 2 : 1);
      const [least, most] = containerJars;
      return [(containerLb / least - containerLb / most) / 2 / quart];
    });
    expect(halves.length).toBeGreaterThanOrEqual(30);
    expect(median(halves)).toBeCloseTo(figure('jar-spread').likely, 2);
  });

  test('one printed figure is not taken for certain', () => {
    const { raw } = rawForJars({ food: 'dried beans', form: 'rehydrated', jar: 'quart', jars: 7 });
    expect(raw.likely.value).toBe(5);
    expect(raw.low.value).toBeLessThan(raw.likely.value);
    expect(raw.high.value).toBeGreaterThan(raw.likely.value);
  });

  test('unknown forms and foods without either road are refused', () => {
    for (const [food, form] of [
      ['lemon', 'juice'],
      ['plantain', 'juice'],
      ['artichoke', 'whole'],
    ] as const) {
      const none = produce.rawForJars({ food, form, jar: 'pint', jars: 1 });
      expect(none, food).toMatchObject({ known: false, reason: { code: 'no raw weight' } });
      expect(offered(none).length, food).toBeGreaterThan(0);
    }
    expect(codeOf(() => jarsFromRaw({ food: 'peach', form: 'halves', jar: 'bucket', raw: '1 lb' }))).toBe(
      'UNKNOWN_NAME',
    );
  });
});
