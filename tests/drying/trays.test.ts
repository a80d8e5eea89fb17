import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryingGuide, freezeDryLoad, leather, powder, trayLoad } from '../../src/drying/index';
import { errorOf } from './helpers';

describe('dryingGuide', () => {
  it('is found by plurals, word order, synonyms and the printed name', () => {
    for (const food of ['peach', 'Peaches', 'PEACH']) expect(dryingGuide({ food }).food).toBe('peach');
    expect(dryingGuide({ food: 'zucchini' }).food).toBe('summer squash');
    expect(dryingGuide({ food: 'beans, green' }).food).toBe('green bean');
    expect(dryingGuide({ food: 'kale' }).food).toBe('greens');
    expect(dryingGuide({ food: 'tomatoes, stewing' }).food).toBe('tomato');
  });
  it('labels what is from memory, and what was read', () => {
    const peach = dryingGuide({ food: 'peach' });
    expect(peach.cautions.map(({ id }) => id)).toContain('recalled');
    expect(peach.printed[0]?.obtained).toBe('memory');
    expect(dryingGuide({ food: 'apple' }).printed[0]?.obtained).toBe('read');
    expect(peach.basis.some(({ kind }) => kind === 'recalled')).toBe(true);
  });
  it('gives general hours for another cut, without the blanching of the first', () => {
    const slices = dryingGuide({ food: 'peaches', form: 'slices' });
    expect(slices).toMatchObject({ hoursAreGeneral: true, preparation: 'even pieces in a single layer' });
    expect(slices.steamBlanch).toBeUndefined();
    expect(dryingGuide({ food: 'pear', form: 'slices' })).toMatchObject({
      hoursAreGeneral: false,
      hours: { low: { value: 24 } },
    });
  });
  it('keeps printed blanching where only the hours are general', () => {
    expect(dryingGuide({ food: 'rhubarb' })).toMatchObject({
      hoursAreGeneral: true,
      steamBlanch: { high: { value: 2, unit: 'min' } },
    });
    expect(dryingGuide({ food: 'artichoke hearts' }).waterBlanch?.high.value).toBe(8);
  });
  it('prints the yield with its ratio, or the ratio alone', () => {
    expect(dryingGuide({ food: 'peach' }).yield[0]).toMatchObject({ ratio: { low: 8, high: 12 } });
    expect(dryingGuide({ food: 'apricot' }).yield[0]).toMatchObject({
      ratio: { low: 5, high: 6.5 },
      obtained: 'memory',
    });
    expect(dryingGuide({ food: 'plum' }).yield).toHaveLength(2);
    expect(dryingGuide({ food: 'garlic' }).yield).toEqual([]);
  });
  it('offers the nearest names', () => {
    const error = errorOf(() => dryingGuide({ food: 'appel' }));
    expect(error).toMatchObject({ code: 'UNKNOWN_NAME', path: 'food' });
    expect(error.expected).toContain('apple');
    expect(errorOf(() => dryingGuide({ food: 'mango' })).expected).toContain('"fruit"');
    expect(errorOf(() => dryingGuide({ food: 'x'.repeat(10_000) })).code).toBe('UNKNOWN_NAME');
    expect(errorOf(() => dryingGuide({ food: '' })).code).toBe('UNKNOWN_NAME');
  });
});

describe('trayLoad', () => {
  it('is in proportion to area, thickness and cover', () => {
    const one = trayLoad({ area: '0.1 m2', thickness: '6 mm', cover: 0.5, density: '1 g/mL' }).perTray.likely;
    expect(one.value).toBeCloseTo(0.3, 12);
    expect(one.unit).toBe('kg');
    expect(trayLoad({ area: '0.2 m2', thickness: '6 mm', cover: 1 }).perTray.low.value).toBeCloseTo(1.2, 12);
    expect(trayLoad({ area: '100 in2' }).perTray.low.unit).toBe('lb');
  });
  it('holds all of the ready produce on the trays it asks for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 100, max: 3000 }), (lb, in2) => {
        const answer = trayLoad({ area: { value: in2, unit: 'in2' }, ready: { value: lb, unit: 'lb' } });
        const { perTray, traysNeeded } = answer;
        expect((traysNeeded?.high ?? 0) * perTray.low.value).toBeGreaterThanOrEqual(lb * (1 - 1e-9));
        expect(((traysNeeded?.high ?? 0) - 1) * perTray.low.value).toBeLessThan(lb);
        expect(traysNeeded?.low).toBeLessThanOrEqual(traysNeeded?.high ?? 0);
      }),
    );
  });
  it('counts loads, and keeps an oven to its printed 4 lb', () => {
    const dryer = trayLoad({ area: '1 ft2', ready: '12 lb', trays: 8, cover: 0.75 });
    expect(dryer.loads).toEqual({ low: 2, likely: 2, high: 2 });
    const oven = trayLoad({ area: '2 ft2', ready: '12 lb', trays: 4, dryer: 'oven' });
    expect(oven.ovenLoad).toMatchObject({ low: { value: 4, unit: 'lb' }, high: { value: 6, unit: 'lb' } });
    expect(oven.loads?.likely).toBe(3);
  });
  it('refuses trays without produce, and a cover of nothing', () => {
    expect(errorOf(() => trayLoad({ area: '1 ft2', trays: 3 }))).toMatchObject({ code: 'MISSING', path: 'ready' });
    expect(errorOf(() => trayLoad({ area: '1 ft2', cover: 0 })).code).toBe('OUT_OF_RANGE');
    expect(errorOf(() => trayLoad({ area: '1 ft2', ready: '1 lb', trays: 0 })).path).toBe('trays');
  });
});

describe('leather', () => {
  it('has hours for the thicknesses that are printed, and none above', () => {
    const at = (thickness: '1/16 in' | '1/8 in' | '3/16 in' | '1/4 in' | '5/16 in' | '1/2 in') =>
      leather({ area: '195 in2', thickness });
    const ends = (answer: ReturnType<typeof leather>) => [answer.hours?.low.value, answer.hours?.high.value];
    expect(ends(leather({ area: '195 in2' }))).toEqual([6, 8]);
    expect(ends(at('1/8 in'))).toEqual([6, 8]);
    expect(ends(at('1/16 in'))).toEqual([6, 8]);
    for (const thickness of ['3/16 in', '1/4 in'] as const) {
      expect(ends(at(thickness))).toEqual([10, 10]);
      expect(at(thickness).hoursFor).toEqual({ thickness: { value: 0.25, unit: 'in' }, food: 'mango' });
      expect(at(thickness).cautions.map(({ id }) => id)).toContain('leather-hours-of-one-fruit');
    }
    for (const thickness of ['5/16 in', '1/2 in'] as const) {
      expect(ends(at(thickness))).toEqual([undefined, undefined]);
      expect(at(thickness).ovenHours).toBeUndefined();
      expect(at(thickness).cautions[0]?.id).toBe('leather-too-thick');
    }
  });
  it('fills sheets by volume, weight or count alike', () => {
    const byVolume = leather({ area: '195 in2', puree: '6 cups' });
    const byWeight = leather({ area: '195 in2', pureeWeight: byVolume.pureeWeight });
    const bySheets = leather({ area: '195 in2', sheets: 3 });
    expect(byVolume.sheets).toBe(3);
    expect(byWeight.sheets).toBe(3);
    expect(bySheets.puree.value).toBeCloseTo(6, 9);
    expect(leather({ area: '195 in2' }).sheets).toBe(1);
    expect(leather({ area: '0.1 m2', thickness: '4 mm' }).weightPerSheet).toMatchObject({ unit: 'kg' });
    expect(leather({ area: '0.1 m2' }).thickness.unit).toBe('mm');
  });
  it('keeps the solids', () => {
    const answer = leather({
      area: '0.1 m2',
      thickness: '4 mm',
      density: '1.04 g/mL',
      moisture: { low: 0.8, likely: 0.85, high: 0.9 },
      targetMoisture: 0.15,
    });
    expect(answer.endWeightPerSheet?.low.value).toBeCloseTo((0.416 * 0.1) / 0.85, 9);
    expect(answer.endWeightPerSheet?.high.value).toBeCloseTo((0.416 * 0.2) / 0.85, 9);
    expect(answer.leather).toEqual(answer.endWeightPerSheet);
  });
  it('refuses two amounts, and a target wetter than the puree', () => {
    expect(errorOf(() => leather({ area: '1 ft2', puree: '1 cup', sheets: 2 })).code).toBe('CONTRADICTION');
    expect(errorOf(() => leather({ area: '1 ft2', moisture: 0.1 }))).toMatchObject({
      code: 'CONTRADICTION',
      path: 'moisture',
    });
  });
});

describe('powder', () => {
  it('keeps the solids less the loss', () => {
    const answer = powder({ trimmings: '10 lb', moisture: '88 %', loss: '10 %' });
    expect(answer.dried.likely.value * 0.95).toBeCloseTo(1.2, 12);
    expect(answer.powder.likely.value).toBeCloseTo(answer.dried.likely.value * 0.9, 12);
    expect(answer.waterRemoved.likely.value + answer.dried.likely.value).toBeCloseTo(10, 12);
    expect(answer.targetMoisture).toBe(0.05);
    expect(answer.cautions.map(({ id }) => id)).toContain('no-pits-in-powder');
  });
  it('gives ranges in order, and refuses a wetter target', () => {
    const { powder: made, waterRemoved } = powder({
      trimmings: '1 kg',
      moisture: { low: 0.8, likely: 0.85, high: 0.9 },
    });
    expect(made.low.value).toBeLessThan(made.high.value);
    expect(waterRemoved.low.value).toBeLessThan(waterRemoved.high.value);
    expect(errorOf(() => powder({ trimmings: '1 kg', moisture: 0.5, targetMoisture: 0.6 })).path).toBe(
      'targetMoisture',
    );
    expect(errorOf(() => powder({ trimmings: '1 kg', moisture: 0.01 })).path).toBe('moisture');
  });
});

describe('freezeDryLoad', () => {
  const machine = { iceCapacity: '10 lb', trayArea: '10 ft2' } as const;
  it('never asks more of a batch than the machine has', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.double({ min: 0.3, max: 0.95, noNaN: true }), (lb, high) => {
        const load = freezeDryLoad({
          fresh: { value: lb, unit: 'lb' },
          moisture: { low: high - 0.1, likely: high - 0.05, high },
          machine,
        });
        // the moist end is what the condenser must hold
        expect(load.ice.high.value / load.batches).toBeLessThanOrEqual(10 * (1 + 1e-9));
        expect(load.icePerBatch.value).toBeCloseTo(load.ice.high.value / load.batches, 9);
        expect(load.perBatch.value).toBeLessThanOrEqual(load.mostPerBatch.value * (1 + 1e-9));
        expect(load.perBatch.value * load.batches).toBeCloseTo(lb, 9);
        expect(load.ice.low.value).toBeLessThan(load.ice.high.value);
        expect(load.dried.low.value + load.ice.high.value).toBeCloseTo(lb, 9);
      }),
    );
  });
  it('says what limits it', () => {
    const limit = (change: object) =>
      freezeDryLoad({ fresh: '30 lb', moisture: 0.9, machine: { ...machine, ...change } } as never).limitedBy;
    expect(limit({})).toBe('ice capacity');
    expect(limit({ trayArea: '2 ft2' })).toBe('tray area');
    expect(limit({ maxLoad: '5 lb' })).toBe('machine load');
  });
  it('takes a whole layer for a puree, and nothing for what is dry already', () => {
    const puree = freezeDryLoad({
      fresh: '30 lb',
      moisture: 0.9,
      machine: { ...machine, iceCapacity: '100 lb' },
      cover: 1,
      density: '1.05 g/mL',
      thickness: '10 mm',
    });
    expect(puree.mostPerBatch.value).toBeCloseTo((0.9290304 * 10.5) / 0.45359237, 6);
    const dry = freezeDryLoad({ fresh: '1 lb', moisture: 0.02, machine });
    expect(dry).toMatchObject({ batches: 1, ice: { likely: { value: 0 } } });
  });
  it('refuses a wetter target and a machine without ice', () => {
    expect(errorOf(() => freezeDryLoad({ fresh: '1 lb', moisture: 0.01, machine })).path).toBe('moisture');
    expect(
      errorOf(() => freezeDryLoad({ fresh: '1 lb', moisture: 0.8, machine: { ...machine, iceCapacity: '0 lb' } })).path,
    ).toBe('machine.iceCapacity');
  });
});
