import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type OwnProcessInput, ownProcess } from '../../src/recipes/ownProcess';

/** A cooked fruit sauce in pints: 10 minutes in boiling water, half an inch of headspace. Common practice. */
const sauce: OwnProcessInput = {
  name: 'plum sauce',
  citation: 'A county cookbook, 1998, page 41',
  foods: ['plum'],
  form: 'sauce',
  jar: 'pint',
  method: 'boiling-water',
  minutes: 10,
  headspace: '1/2 in',
  elevation: '900 ft',
};

describe("a recipe of the cook's own book", () => {
  test('is served as theirs at the base elevation, and with the published addition above', () => {
    const low = ownProcess(sauce);
    expect(low).toMatchObject({ tested: true, ownBook: true, whoseMinutes: 'your book', minutes: 10, byYourBook: 10 });
    expect(low.cautions[0]?.id).toBe('your-books-figures');
    expect(low.basis.filter(({ kind }) => kind === 'measured').map(({ locator }) => locator)).toContain(sauce.citation);
    // bands: 5 minutes more above 1,000 ft, 10 above 3,000 ft
    expect(ownProcess({ ...sauce, elevation: '2,500 ft' })).toMatchObject({ minutes: 15 });
    expect(ownProcess({ ...sauce, elevation: '4200 ft' })).toMatchObject({ minutes: 20 });
  });

  test('gives way to a longer time of the tables, and shows both', () => {
    const found = ownProcess({
      ...sauce,
      name: 'peach halves',
      foods: ['peach'],
      form: 'halves',
      pack: 'hot',
      minutes: 10,
    });
    // USDA Complete Guide to Home Canning, Guide 2, peaches: pints, hot pack, 20 minutes up to 1,000 ft
    expect(found).toMatchObject({
      tested: true,
      whoseMinutes: 'these tables',
      minutes: 20,
      byYourBook: 10,
      byTables: { minutes: 20 },
    });
  });

  test('gives way to the longest that may be meant where the book leaves form or pack open', () => {
    // Guide 2, 6,001 to 8,000 ft, pints: peaches hot 35 minutes, raw 40; pie filling 45; sour cherries hot 25, raw 40
    const high = { ...sauce, minutes: 5, elevation: '7,200 ft' } as const;
    const peaches = { ...high, foods: ['peach'], form: 'halves' };
    const minutes = (own: OwnProcessInput) => {
      const found = ownProcess(own);
      return found.tested ? [found.minutes, found.byTables?.minutes] : found.reason;
    };
    expect(minutes({ ...peaches, pack: 'hot' })).toEqual([35, 35]);
    expect(minutes(peaches)).toEqual([40, 40]);
    expect(minutes({ ...peaches, form: undefined })).toEqual([45, 45]);
    expect(minutes({ ...high, foods: ['sour cherry'], form: 'whole' })).toEqual([40, 40]);
  });

  test('keeps a longer time of its own', () => {
    const found = ownProcess({ ...sauce, foods: ['peach'], form: 'halves', pack: 'hot', minutes: 45 });
    expect(found).toMatchObject({ whoseMinutes: 'your book', minutes: 45, byTables: { minutes: 20 } });
  });

  test.each([
    [['green bean'], 'low in acid'],
    [['plum', 'onion'], 'low in acid'],
    [['pumpkin'], 'not canned'],
    [['elderberry'], 'not canned'],
  ])('is refused for %j in boiling water', (foods, code) => {
    const found = ownProcess({ ...sauce, foods, form: undefined });
    expect(found).toMatchObject({ tested: false });
    expect(found.tested === false && ['low in acid', 'not canned'].includes(found.reason.code)).toBe(true);
    if (code === 'low in acid') expect(found).toMatchObject({ reason: { code } });
  });

  test('takes tomatoes only with the acid that the tables ask for', () => {
    const tomato = { ...sauce, name: 'tomato sauce', foods: ['tomato'], form: 'sauce', minutes: 35 };
    expect(ownProcess(tomato)).toMatchObject({ tested: false, reason: { code: 'low in acid' } });
    expect(ownProcess({ ...tomato, acid: { bottledLemonJuice: '1 tsp' } })).toMatchObject({ tested: false });
    expect(ownProcess({ ...tomato, acid: { bottledLemonJuice: '1 tbsp' } })).toMatchObject({ tested: true });
    expect(ownProcess({ ...tomato, acid: { citricAcid: '1/4 tsp' } })).toMatchObject({ tested: true });
  });

  test('names the process that was tested where the food may be low in acid', () => {
    // apricots: pH 3.3 to 4.8; Guide 2, apricots, pints, hot pack: 20 minutes up to 1,000 ft
    const apricots = ownProcess({ ...sauce, foods: ['apricot'], form: 'halves', pack: 'hot' });
    expect(apricots).toMatchObject({
      tested: false,
      reason: { code: 'low in acid', text: expect.stringContaining('may be low in acid') },
      instead: [{ minutes: 20, recipe: expect.stringContaining('apricot') }, {}],
    });
    const open = ownProcess({ ...sauce, foods: ['apricot'], form: 'halves' });
    expect(open.tested ? [] : open.instead.map(({ minutes }) => minutes)).toEqual([undefined]);
  });

  test('is refused for the food that is lowest in acid, wherever it stands', () => {
    const beans = ownProcess({ ...sauce, foods: ['green bean'], form: undefined });
    expect(beans.tested ? '' : beans.reason.text).toMatch(/^green bean is low in acid/);
    const salsa = ownProcess({ ...sauce, foods: ['tomato', 'sweet corn'], form: undefined });
    expect(salsa.tested ? '' : salsa.reason.text).toMatch(/^sweet corn is low in acid/);
  });

  test('is refused in a jar larger than a quart', () => {
    expect(ownProcess({ ...sauce, jar: 'half-gallon' })).toMatchObject({
      tested: false,
      reason: { code: 'jar too large' },
    });
  });

  test('takes its pressure by the place', () => {
    const beans = {
      ...sauce,
      name: 'bean soup',
      foods: ['green bean'],
      form: undefined,
      method: 'dial-gauge',
      minutes: 60,
    } as const;
    expect(ownProcess({ ...beans, elevation: '4,500 ft' })).toMatchObject({
      minutes: 60,
      pressure: { value: 13, unit: 'psi' },
    });
  });

  test('needs a citation that can be followed up, and a base the rules know', () => {
    expect(() => ownProcess({ ...sauce, citation: '' })).toThrow(/citation/);
    expect(() => ownProcess({ ...sauce, citation: 'my aunt' })).toThrow(/citation/);
    expect(() => ownProcess({ ...sauce, baseElevation: '5000 ft' })).toThrow(/baseElevation/);
  });

  test('more elevation is never less time', () => {
    const feet = fc.integer({ min: 0, max: 10_000 });
    fc.assert(
      fc.property(feet, feet, (one, other) => {
        const minutes = [Math.min(one, other), Math.max(one, other)].map((each) => {
          const found = ownProcess({ ...sauce, elevation: `${each} ft` });
          return found.tested ? found.minutes : Number.POSITIVE_INFINITY;
        });
        expect(minutes[1]).toBeGreaterThanOrEqual(minutes[0] as number);
      }),
      { numRuns: 60 },
    );
  });
});
