import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driedMass } from '../../../src/drying/index';

const moisture = fc.double({ min: 0.05, max: 0.98, noNaN: true });
const kilograms = fc.double({ min: 0.01, max: 1000, noNaN: true });
const kg = (value: number) => ({ value, unit: 'kg' as const });

describe('driedMass', () => {
  it('keeps the mass and the solids', () => {
    fc.assert(
      fc.property(kilograms, moisture, fc.double({ min: 0, max: 1, noNaN: true }), (fresh, start, part) => {
        const target = start * part * 0.999;
        const { mass, waterRemoved, driedShare } = driedMass({
          fresh: kg(fresh),
          moisture: start,
          targetMoisture: target,
        });
        expect(mass.value + waterRemoved.value).toBeCloseTo(fresh, 8);
        expect(mass.value * (1 - target)).toBeCloseTo(fresh * (1 - start), 8);
        expect(driedShare * fresh).toBeCloseTo(mass.value, 8);
        expect(driedShare).toBeLessThanOrEqual(1);
      }),
    );
  });
  it('takes nothing out where the target is the start', () => {
    expect(driedMass({ fresh: '2 lb', moisture: '50 %', targetMoisture: '50 %' })).toMatchObject({
      mass: { value: 2, unit: 'lb' },
      waterRemoved: { value: 0, unit: 'lb' },
      driedShare: 1,
    });
  });
});
