import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freezeDryLoad } from '../../../src/drying/index';
import { errorOf } from '../helpers';

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
