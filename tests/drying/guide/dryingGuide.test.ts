import { describe, expect, it } from 'vitest';
import { type DryingGuideInput, dryingGuide, type KnownDryingGuide } from '../../../src/drying/index';
import { foodRows, formName, nameOf } from '../../../src/foods/tables';
import { readTable } from '../../helpers/tables';
import { errorOf } from '../helpers';

const guideOf = (input: DryingGuideInput): KnownDryingGuide => {
  const answer = dryingGuide(input);
  if (!answer.known) throw new Error(answer.reason.text);
  return answer;
};

describe('dryingGuide', () => {
  it('is found by plurals, word order and other names', () => {
    for (const food of ['peach', 'Peaches', 'PEACH']) expect(guideOf({ food }).food).toBe('peach');
    expect(guideOf({ food: 'zucchini squash' }).food).toBe('zucchini');
    expect(guideOf({ food: 'beans, green' }).food).toBe('green bean');
    expect(guideOf({ food: 'corn' }).food).toBe('sweet corn');
    expect(guideOf({ food: 'stewing tomatoes' }).food).toBe('tomato');
  });
  it('labels what is from memory, and what was read', () => {
    const peach = guideOf({ food: 'peach' });
    expect(peach.cautions.map(({ id }) => id)).toContain('recalled');
    expect(peach.publications[0]?.obtained).toBe('memory');
    expect(guideOf({ food: 'apple' }).publications[0]?.obtained).toBe('read');
    expect(peach.basis.some(({ kind }) => kind === 'recalled')).toBe(true);
  });
  it('gives general hours for another cut, without the blanching of the first', () => {
    const slices = guideOf({ food: 'peaches', form: 'slices' });
    expect(slices).toMatchObject({ hoursAreGeneral: true, preparation: 'even pieces in a single layer' });
    expect(slices.steamBlanch).toBeUndefined();
    expect(guideOf({ food: 'pear', form: 'slices' })).toMatchObject({
      hoursAreGeneral: false,
      hours: { low: { value: 24 } },
    });
  });
  it('keeps printed blanching where only the hours are general', () => {
    expect(guideOf({ food: 'rhubarb' })).toMatchObject({
      hoursAreGeneral: true,
      steamBlanch: { high: { value: 2, unit: 'min' } },
    });
    expect(guideOf({ food: 'artichoke hearts' }).waterBlanch?.high.value).toBe(8);
  });
  it('prints the yield with its masses, or its share alone', () => {
    expect(guideOf({ food: 'peach' }).printedYields[0]).toMatchObject({ driedShare: { low: 1 / 12, high: 1 / 8 } });
    expect(guideOf({ food: 'apricot' }).printedYields[0]).toMatchObject({
      driedShare: { low: 1 / 6.5, high: 1 / 5 },
      obtained: 'memory',
    });
    expect(guideOf({ food: 'plum' }).printedYields).toHaveLength(2);
    expect(guideOf({ food: 'garlic' }).printedYields).toEqual([]);
  });
  it('offers the nearest names', () => {
    const error = errorOf(() => dryingGuide({ food: 'appel' }));
    expect(error).toMatchObject({ code: 'UNKNOWN_NAME', path: 'food' });
    expect(error.nearest).toContain('apple');
    expect(errorOf(() => dryingGuide({ food: 'x'.repeat(10_000) })).code).toBe('UNKNOWN_NAME');
    expect(errorOf(() => dryingGuide({ food: '' })).code).toBe('UNKNOWN_NAME');
  });
  it('lends the figures of a wider food, and says whose they are', () => {
    const kale = guideOf({ food: 'kale' });
    expect(kale).toMatchObject({ food: 'kale', hours: { low: { value: 8 }, high: { value: 10 } } });
    expect(kale.basis.find(({ of }) => of === 'hours')?.food).toBe('greens');
    expect(guideOf({ food: 'greens' }).basis.find(({ of }) => of === 'hours')?.food).toBeUndefined();
    expect(guideOf({ food: 'prune' }).hours).toEqual(guideOf({ food: 'plum' }).hours);
  });
  it('has the general figures for a fruit or vegetable without its own, and says whose they are', () => {
    const mango = guideOf({ food: 'mango', form: 'slices' });
    expect(mango).toMatchObject({ kind: 'fruit', hoursAreGeneral: true, targetMoisture: 0.2 });
    expect(mango.hours).toEqual(guideOf({ food: 'fruit' }).hours);
    expect(mango.basis.filter(({ of }) => of === 'hours').every(({ food }) => food === 'fruit')).toBe(true);
    expect(guideOf({ food: 'turnip' })).toMatchObject({ kind: 'vegetable', hoursAreGeneral: true });
  });
  it('knows nothing of meat, dairy and fatty food, and says what to do instead', () => {
    for (const [food, code] of [
      ['beef', 'no-fruit-or-vegetable'],
      ['salmon', 'too-fatty'],
      ['avocado', 'too-fatty'],
      ['cheddar cheese', 'too-fatty'],
      ['coconut', 'too-fatty'],
    ] as const) {
      expect(dryingGuide({ food }), food).toMatchObject({ known: false, reason: { code } });
    }
    expect(dryingGuide({ food: 'chicken' })).toMatchObject({ instead: [{ food: 'chicken', form: 'jerky' }] });
  });
  it('answers every name of the pantry, with a figure or a reason', () => {
    for (const { name } of foodRows) {
      const guide = dryingGuide({ food: name });
      if (guide.known) expect(guide.hours.high.value, name).toBeGreaterThan(0);
      else expect(guide.reason.text, name).toContain('these tables');
    }
  });
  it('refuses two forms', () => {
    expect(errorOf(() => dryingGuide({ food: 'peach halves', form: 'slices' }))).toMatchObject({
      code: 'CONTRADICTION',
      path: 'form',
    });
  });
});

describe('hours belong to a cut', () => {
  const hours = (food: string, form?: string) => {
    const guide = guideOf({ food, ...(form === undefined ? {} : { form }) });
    return [guide.hours.low.value, guide.hours.high.value, guide.hoursAreGeneral];
  };
  it('strawberry slices have their own, not those of whole berries', () => {
    expect(hours('strawberry', 'slices')).toEqual([7, 15, false]);
    expect(hours('strawberry', 'whole')).toEqual([24, 36, false]);
    // without a cut: of the first one, never two together
    expect(hours('strawberry')).toEqual([24, 36, false]);
    expect(guideOf({ food: 'strawberry' }).forms).toEqual(['whole']);
  });
  it('every row of a food names its cuts, so that no other cut gets its hours', () => {
    for (const { food, kind, forms } of readTable('drying/guide', 'guide').rows) {
      if (food !== kind) expect(forms, food).toBeDefined();
    }
    for (const [food, form] of [
      ['blueberry', 'halves'],
      ['boysenberry', 'slices'],
      ['broccoli', 'slices'],
      ['garlic', 'slices'],
    ] as const) {
      expect(hours(food, form)[2], food).toBe(true);
    }
  });
});

describe('every row', () => {
  it('of the guide is printed by its food and cut, with its figures', () => {
    for (const row of readTable('drying/guide', 'guide').rows) {
      const { publications: printed, hours } = guideOf({
        food: nameOf(row.food),
        ...(row.forms ? { form: formName(row.forms[0]) } : {}),
      });
      const mine = printed.filter(
        (line) =>
          line.source === row.source && line.obtained === row.obtained && line.hours?.low.value === row.hours?.[0],
      );
      expect(mine.length, row.food).toBeGreaterThan(0);
      if (row.hours) {
        expect(hours.low.value).toBeLessThanOrEqual(row.hours[0] as number);
        expect(hours.high.value).toBeGreaterThanOrEqual(row.hours[1] as number);
      }
    }
  });
  it('of the yields loses what water can lose', () => {
    // a dried pound keeps the solids of the fresh: more than 1.5 lb and less than 40 lb fresh in every table
    for (const { fresh_lb, dried_lb, freshPerDried } of readTable('drying/guide', 'yields').rows) {
      const [low, high] = freshPerDried ?? [fresh_lb / dried_lb[1], fresh_lb / dried_lb[0]];
      expect(low).toBeGreaterThan(1.5);
      expect(high).toBeLessThan(40);
    }
  });
});
