import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DRIED_FOODS as foods } from '../../src/drying/guide/foodNames';
import {
  conditioning,
  driedStorage,
  jerky,
  moistureAfterStorage,
  oxygenAbsorbers,
  pasteurizing,
  pretreatmentDip,
  rehydrate,
} from '../../src/drying/index';
import { errorOf } from './helpers';

describe('driedStorage', () => {
  it('never keeps longer where it is warmer', () => {
    const names = foods.map(({ name }) => name);
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.integer({ min: 0, max: 80 }),
        fc.integer({ min: 0, max: 80 }),
        (food, a, b) => {
          const at = (degF: number) => {
            const answer = driedStorage({ food, temperature: { value: degF, unit: 'degF' } });
            if (!answer.known) throw new Error(answer.reason);
            return answer.months;
          };
          const [cool, warm] = [at(Math.min(a, b)), at(Math.max(a, b))];
          expect(warm.high).toBeLessThanOrEqual(cool.high);
          expect(warm.low).toBeLessThanOrEqual(cool.low);
          expect(warm.low).toBeLessThanOrEqual(warm.high);
        },
      ),
      { numRuns: 300 },
    );
  });
  it('takes the warmer column between two, also in degC', () => {
    expect(driedStorage({ food: 'carrot', temperature: '61 degF' })).toMatchObject({ months: { low: 4, high: 6 } });
    expect(driedStorage({ food: 'carrot', temperature: { value: (60 - 32) / 1.8, unit: 'degC' } })).toMatchObject({
      months: { low: 6, high: 8 },
    });
    expect(driedStorage({ food: 'carrot', temperature: '81 degF' })).toMatchObject({ known: false });
    expect(driedStorage({ food: 'carrot', temperature: '75 degF' })).toMatchObject({ months: { low: 3, high: 3 } });
  });
});

describe('moistureAfterStorage', () => {
  it('adds what passes the bag and what the air held', () => {
    const bag = moistureAfterStorage({
      dried: '100 g',
      moisture: 0.02,
      bag: { area: '1 m2', transmission: 1, time: '10 days' },
    });
    expect(bag.gained.value).toBeCloseTo(10, 12);
    expect(bag.moisture).toBeCloseTo(12 / 110, 12);
    // saturated air at 20 degC holds 17.29 g a cubic metre (from 2.33932 kPa, IAPWS-95)
    const air = moistureAfterStorage({
      dried: '100 g',
      moisture: 0.02,
      headspace: { volume: '1 L', humidity: 0.5, temperature: '20 degC' },
    });
    expect(air.gained.value).toBeCloseTo(0.008645, 6);
    expect(moistureAfterStorage({ dried: '100 g', moisture: 0.02 }).moisture).toBeCloseTo(0.02, 15);
  });
});

describe('oxygenAbsorbers', () => {
  it('leaves out the room of the food, and rounds up', () => {
    const answer = oxygenAbsorbers({
      container: '1 quart',
      moisture: 0.05,
      dried: '140 g',
      density: '1.4 g/mL',
      absorber: '50 mL',
    });
    if (!answer.tested) throw new Error(answer.reason);
    expect(answer.oxygen.value).toBeCloseTo(0.20946 * 846.352946, 6);
    expect(answer.absorbers).toBe(4);
  });
  it('refuses moist food, with what to do instead', () => {
    expect(oxygenAbsorbers({ container: '1 quart', moisture: 0.1001 })).toMatchObject({ tested: false });
    expect(oxygenAbsorbers({ container: '1 quart', moisture: 0.1 })).toMatchObject({ tested: true });
  });
  it('refuses on what extension sheets print, and says that the share of oxygen is recalled', () => {
    const moist = oxygenAbsorbers({ container: '1 quart', moisture: 0.11 });
    expect(moist.basis.map(({ kind, source, seen }) => [kind, source, seen])).toEqual([
      ['published', 'nchfp-dry', 'reproduction'],
      ['published', 'psu-safety-issues', 'original'],
    ]);
    const dry = oxygenAbsorbers({ container: '1 quart', moisture: 0.05 });
    expect(dry.basis[0]).toMatchObject({ kind: 'recalled', source: 'recalled' });
  });
  it('throws for half a pair and for food that does not fit', () => {
    expect(errorOf(() => oxygenAbsorbers({ container: '1 L', moisture: 0.05, dried: '1 g' })).path).toBe('density');
    expect(errorOf(() => oxygenAbsorbers({ container: '1 L', moisture: 0.05, density: '1 g/mL' })).path).toBe('dried');
    const full = () => oxygenAbsorbers({ container: '1 L', moisture: 0.05, dried: '2 kg', density: '1 g/mL' });
    expect(errorOf(full)).toMatchObject({ code: 'CONTRADICTION', path: 'dried' });
  });
});

describe('conditioning and pasteurizing', () => {
  it('counts containers only where both volumes are given', () => {
    expect(conditioning({}).containers).toBeUndefined();
    expect(conditioning({ dried: '2 cups', container: '1 quart' }).containers).toBe(1);
    expect(conditioning({ dried: '0.6667 quarts', container: '1 quart' }).containers).toBe(1);
  });
  it('serves the hotter and the longer of the printed treatments', () => {
    const both = pasteurizing({ kind: 'vegetable' });
    expect(both.treatments.map(({ by }) => by)).toEqual(['freezer', 'oven', 'oven']);
    expect(both.treatments.every(({ atLeast }) => atLeast.value >= 15)).toBe(true);
    expect(both.treatments.some(({ temperature }) => temperature.value === 150)).toBe(false);
    expect(pasteurizing({ kind: 'fruit', by: 'freezer' }).treatments).toHaveLength(1);
    expect(pasteurizing({ kind: 'fruit', by: 'oven' }).treatments).toHaveLength(2);
    expect(errorOf(() => pasteurizing({ kind: 'meat' as never })).code).toBe('UNKNOWN_NAME');
  });
});

describe('jerky', () => {
  const after = {
    meat: 'beef',
    heating: 'after',
    dryerTemperature: '150 degF',
    dryingTime: '8 h',
    oven: { temperature: '275 degF', time: '12 min' },
    thickness: '1/8 in',
  } as const;
  it('is refused without its heating step, at any temperature and time', () => {
    fc.assert(
      fc.property(fc.integer({ min: 70, max: 300 }), fc.integer({ min: 1, max: 96 }), (degF, hours) => {
        const answer = jerky({
          meat: 'beef',
          dryerTemperature: { value: degF, unit: 'degF' },
          dryingTime: { value: hours, unit: 'h' },
        });
        expect(answer.tested).toBe(false);
      }),
    );
  });
  it('never names 120 degF', () => {
    for (const answer of [jerky(after), jerky({ meat: 'beef', dryerTemperature: '120 degF' })]) {
      expect(JSON.stringify(answer)).not.toContain('120');
    }
  });
  it('takes both printed ways', () => {
    expect(jerky(after).tested).toBe(true);
    expect(
      jerky({ meat: 'pork', heating: 'before', internalTemperature: '71.2 degC', dryerTemperature: '60 degC' }).tested,
    ).toBe(true);
  });
  it('is refused at a dryer or an oven hotter than printed, as at a cooler one', () => {
    const before = { meat: 'beef', heating: 'before', internalTemperature: '160 degF' } as const;
    const at = (degF: number) => jerky({ ...before, dryerTemperature: { value: degF, unit: 'degF' } });
    for (const degF of [100, 120, 129, 141, 145, 180, 212, 300]) {
      const answer = at(degF);
      expect(answer.tested, `${degF}`).toBe(false);
      if (!answer.tested) expect(answer.instead).toBe('dry at 130 to 140 degF');
    }
    for (const degF of [130, 135, 140]) expect(at(degF).tested, `${degF}`).toBe(true);
    const dried = (degF: number) => jerky({ ...after, dryerTemperature: { value: degF, unit: 'degF' } }).tested;
    expect([144, 145, 155, 156, 200, 275].map(dried)).toEqual([false, true, true, false, false, false]);
    const oven = (degF: number) =>
      jerky({ ...after, oven: { temperature: { value: degF, unit: 'degF' }, time: '10 min' } }).tested;
    expect([274, 275, 276, 350, 500].map(oven)).toEqual([false, true, false, false, false]);
  });
  it.each<[string, object]>([
    ['no thickness', { thickness: undefined }],
    ['thick strips', { thickness: '3/8 in' }],
    ['no drying time', { dryingTime: undefined }],
    ['a short drying time', { dryingTime: '5 h' }],
    ['no oven', { oven: undefined }],
    ['a cool oven', { oven: { temperature: '270 degF', time: '10 min' } }],
    ['poultry', { meat: 'chicken' }],
  ])('refuses the oven step with %s', (_, change) => {
    expect(jerky({ ...after, ...change } as never).tested).toBe(false);
  });
  it('refuses a heating before drying that was not measured', () => {
    const answer = jerky({ meat: 'duck', heating: 'before', dryerTemperature: '140 degF' });
    expect(answer).toMatchObject({ tested: false });
    expect(answer.cautions.map(({ id }) => id)).toContain('jerky-heat-first');
    if (!answer.tested) expect(answer.instead).toContain('165');
  });
});

describe('rehydrate and pretreatmentDip', () => {
  it('asks boiling water for vegetables only', () => {
    expect(rehydrate({ food: 'carrots', dried: '1 cup' })).toMatchObject({ waterIs: 'boiling' });
    expect(rehydrate({ food: 'carrots', dried: '1 cup' }).quickFruit).toBeUndefined();
    expect(rehydrate({ food: 'pears', dried: '250 mL' })).toMatchObject({
      waterIs: 'warm or cold',
      water: { value: 437.5, unit: 'mL' },
      quickFruit: { boilingWater: { value: 5, unit: 'min' } },
    });
    expect(errorOf(() => rehydrate({ food: 'ham', dried: '1 cup' })).code).toBe('UNKNOWN_NAME');
  });
  it('serves the read and stronger acid dip, with the weaker ones beside it', () => {
    const dip = pretreatmentDip({ treatment: 'vitamin C dip', water: '2 quarts' });
    expect(dip.ingredients[0]?.low).toEqual({ value: 15, unit: 'tsp' });
    expect(dip.soak?.low).toEqual({ value: 10, unit: 'min' });
    expect(dip.basis[0]).toMatchObject({ kind: 'published', source: 'ndsu-fn1587' });
    for (const { ingredients } of dip.others) expect(ingredients[0]?.high.value).toBeLessThan(15);
    expect(dip.others.length).toBe(2);
    expect(pretreatmentDip({ treatment: 'lemon juice dip', water: '1 quart' }).ingredients[0]?.low.value).toBeCloseTo(
      4,
    );
  });
  it('scales a dip to the water, and warns of sulfites', () => {
    const dip = pretreatmentDip({ treatment: 'sodium bisulfite', water: '1 gallon' });
    expect(dip.ingredients[0]).toMatchObject({ low: { value: 3, unit: 'tsp' }, high: { value: 6, unit: 'tsp' } });
    expect(dip.cautions.map(({ id }) => id)).toContain('sulfite-sensitive');
    expect(pretreatmentDip({ treatment: 'skin check' }).water).toBeUndefined();
    expect(pretreatmentDip({ treatment: 'honey dip' }).water).toEqual({ value: 1.5, unit: 'cup' });
    expect(errorOf(() => pretreatmentDip({ treatment: 'skin check', water: '1 cup' })).code).toBe('CONTRADICTION');
    expect(errorOf(() => pretreatmentDip({ treatment: 'bleach' })).code).toBe('UNKNOWN_NAME');
  });
});
