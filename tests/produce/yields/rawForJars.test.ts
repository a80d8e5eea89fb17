import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jarsFromRaw, rawForJars, readyFromRaw, readyPerQuart } from '../../../src/produce/index';
import { canningRows, guideQuart, USUAL_JAR_SPREAD } from '../../../src/produce/yields/printed';
import { median } from '../../../src/produce/yields/span';
import { codeOf } from '../../helpers/errors';

const FOODS = [
  { produce: 'apples', form: 'slices' },
  { produce: 'apples', form: 'sauce' },
  { produce: 'peaches', form: 'halves' },
  { produce: 'figs', form: 'whole' },
  { produce: 'berries', form: 'whole' },
  { produce: 'tomatoes', form: 'crushed' },
  { produce: 'tomatoes', form: 'thick sauce' },
  { produce: 'mushrooms', form: 'whole' },
  { produce: 'sweet corn', form: 'cream style' },
  { produce: 'strawberries', form: 'whole' },
  { produce: 'mango', form: 'puree' },
] as const;
const JARS = ['half-pint', 'pint', 'quart', 'half-gallon', '12 oz', '24 oz'] as const;
const batch = fc.record({
  food: fc.constantFrom(...FOODS),
  jar: fc.constantFrom(...JARS),
  jars: fc.integer({ min: 1, max: 500 }),
});

describe('raw for jars', () => {
  test('more jars never take less, and the ends are in order', () => {
    fc.assert(
      fc.property(batch, ({ food: { produce, form }, jar, jars }) => {
        const one = rawForJars({ produce, form, jar, jars }).raw;
        const more = rawForJars({ produce, form, jar, jars: jars + 1 }).raw;
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
        ({ food: { produce, form }, jar, jars }, more) => {
          const need = rawForJars({ produce, form, jar, jars }).raw.likely.value;
          const next = rawForJars({ produce, form, jar, jars: jars + 1 }).raw.likely.value;
          const pounds = need + (next - need) * more;
          const found = jarsFromRaw({ produce, form, jar, raw: { value: pounds, unit: 'lb' } }).jars;
          expect(rawForJars({ produce, form, jar, jars: found.likely }).raw.likely.value).toBeLessThanOrEqual(
            pounds + 1e-9,
          );
          expect(rawForJars({ produce, form, jar, jars: found.likely + 1 }).raw.likely.value).toBeGreaterThan(
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
      rawForJars({ produce: 'tomatoes', form: 'crushed', jar: 'quart', jars }).raw.likely.value;
    expect([1, 7, 8, 14].map(pounds)).toEqual([2.75, 22, 22, 44]);
    // figs: 16 lb a load, 2 1/2 lb a quart; the average never passes the next load
    const figs = (jars: number) => rawForJars({ produce: 'figs', form: 'whole', jar: 'quart', jars }).raw.likely.value;
    expect([6, 7, 13, 14].map(figs)).toEqual([15, 16, 32, 32]);
  });

  test('a load that is not full yet gives one jar less than a load: 21 lb of crushed tomatoes', () => {
    const quarts = (raw: '21 lb' | '22 lb' | '44 lb') =>
      jarsFromRaw({ produce: 'tomatoes', form: 'crushed', jar: 'quart', raw }).jars.likely;
    expect([quarts('21 lb'), quarts('22 lb'), quarts('44 lb')]).toEqual([6, 8, 16]);
  });

  test('one row of two ends alone is widened by the usual spread: 10 to 12 quarts of apple juice from 42 to 48 lb', () => {
    const { raw, basis } = rawForJars({ produce: 'apples', form: 'juice', jar: 'quart', jars: 1 });
    expect(raw.low.value).toBeLessThanOrEqual(45 / 12);
    expect(raw.high.value).toBeGreaterThanOrEqual(45 / 10);
    expect(basis.map(({ source }) => source)).toEqual(['uga-c780']);
  });

  test('the range holds what every table prints: peaches 2 to 3 lb a quart', () => {
    // 48 lb gives 16 to 24 quarts (canning guide); 2 to 2 1/2 lb (Georgia)
    const { raw, road } = rawForJars({ produce: 'peaches', form: 'halves', jar: 'quart', jars: 1 });
    expect([raw.low.value, raw.likely.value, raw.high.value]).toEqual([2, 2.5, 3]);
    expect(road).toBe('printed');
  });

  test('other jars by volume: half-pints from the pint, a half-gallon from the quart', () => {
    const pounds = (jar: string, jars: number) =>
      rawForJars({ produce: 'peaches', form: 'halves', jar, jars }).raw.likely.value;
    expect(pounds('half-pint', 18)).toBeCloseTo(11, 12);
    expect(pounds('half-gallon', 1)).toBeCloseTo(5, 12);
    expect(pounds('24 oz', 1)).toBeCloseTo(2.5 * 0.75, 12);
    expect(pounds('12 oz', 4)).toBeCloseTo((11 / 9) * 3, 12);
    // printed by the pint only, so a quart is two
    expect(rawForJars({ produce: 'peppers', form: 'whole', jar: 'quart', jars: 1 }).raw.likely.value).toBe(2);
    // printed by the quart only
    expect(rawForJars({ produce: 'cranberries', form: 'whole', jar: 'pint', jars: 2 }).raw.likely.value).toBe(1);
  });

  test('loads printed as a range give their middle', () => {
    const { raw } = rawForJars({ produce: 'asian pears', form: 'slices', jar: 'pint', jars: 9 });
    expect(raw.likely.value).toBe(12);
  });

  test('without printed pounds it goes by weights and says that it is an estimate', () => {
    const answer = rawForJars({ produce: 'strawberries', form: 'whole', jar: 'quart', jars: 1 });
    expect(answer.road).toBe('weights');
    expect(answer.cautions.map(({ id }) => id)).toContain('estimate');
    // 144 g a cup, 94% left, packed 1.56 times
    expect(answer.raw.likely.value).toBeCloseTo(((144 * 4) / 453.59237 / 0.94) * 1.56, 6);
    expect(answer.raw.high.value / answer.raw.low.value).toBeGreaterThan(1.6);
  });

  test('a yield is no permission: every answer says so', () => {
    const { cautions } = rawForJars({ produce: 'spinach', form: 'leaves', jar: 'pint', jars: 9 });
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
    expect(median(halves)).toBeCloseTo(USUAL_JAR_SPREAD, 2);
  });

  test('one printed figure is not taken for certain', () => {
    const { raw } = rawForJars({ produce: 'dried beans', form: 'rehydrated', jar: 'quart', jars: 7 });
    expect(raw.likely.value).toBe(5);
    expect(raw.low.value).toBeLessThan(raw.likely.value);
    expect(raw.high.value).toBeGreaterThan(raw.likely.value);
  });

  test('unknown forms and foods without either road are refused', () => {
    expect(codeOf(() => rawForJars({ produce: 'lemon', form: 'juice', jar: 'pint', jars: 1 }))).toBe('UNKNOWN_NAME');
    expect(codeOf(() => rawForJars({ produce: 'plantain', form: 'juice', jar: 'pint', jars: 1 }))).toBe('UNKNOWN_NAME');
    expect(codeOf(() => rawForJars({ produce: 'artichoke', form: 'whole', jar: 'pint', jars: 1 }))).toBe(
      'UNKNOWN_NAME',
    );
    expect(codeOf(() => jarsFromRaw({ produce: 'peach', form: 'halves', jar: 'bucket', raw: '1 lb' }))).toBe(
      'UNKNOWN_NAME',
    );
  });
});

describe('ready in a quart', () => {
  test('is printed pounds times the share left', () => {
    const { ready, raw } = readyPerQuart({ produce: 'pears', form: 'halves' });
    const { yield: share } = readyFromRaw({ produce: 'pears', form: 'halves', raw: '1 lb' });
    expect(ready.likely.value).toBeCloseTo(2.5 * share.likely, 12);
    expect(raw.likely.value).toBe(2.5);
    expect(ready.low.value).toBeLessThan(ready.likely.value);
  });

  test('of sauce is the weight of the quart itself', () => {
    const { ready } = readyPerQuart({ produce: 'apples', form: 'sauce' });
    expect(ready.likely.value).toBeCloseTo((244 * 4) / 453.59237, 9); // 244 g a cup, SR28
  });

  test('leaves a loose quart of leaves out of it: they sink', () => {
    const { ready } = readyPerQuart({ produce: 'spinach', form: 'leaves' });
    expect(ready.low.value).toBeGreaterThan(1); // a loose quart is 0.26 lb
    expect(readyPerQuart({ produce: 'figs', form: 'whole' }).ready.low.value).toBeGreaterThan(1.5);
  });

  test('goes with the jars: raw for n quarts gives n quarts of ready produce', () => {
    for (const { produce, form } of FOODS.filter(({ produce: name }) => name !== 'tomatoes')) {
      const quart = readyPerQuart({ produce, form });
      const { yield: share } = readyFromRaw({ produce, form, raw: '1 lb' });
      expect(quart.ready.likely.value / share.likely).toBeCloseTo(quart.raw.likely.value, 9);
      expect(quart.ready.low.value).toBeLessThanOrEqual(quart.ready.likely.value);
      expect(quart.ready.high.value).toBeGreaterThanOrEqual(quart.ready.likely.value);
    }
  });
});
