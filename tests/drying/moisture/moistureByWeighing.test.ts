import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driedMass, moistureByWeighing } from '../../../src/drying/index';
import { errorOf } from '../helpers';

const moisture = fc.double({ min: 0.05, max: 0.98, noNaN: true });

describe('moistureByWeighing', () => {
  it('undoes driedMass, from either end', () => {
    fc.assert(
      fc.property(moisture, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (start, part) => {
        const target = start * part;
        const dried = driedMass({ fresh: '1 kg', moisture: start, targetMoisture: target }).mass;
        const now = moistureByWeighing({ fresh: '1 kg', moisture: start, dried });
        expect(now.driedMoisture).toBeCloseTo(target, 9);
        expect(now.moisture).toBe(start);
        const before = moistureByWeighing({ fresh: '1 kg', dried, driedMoisture: target });
        expect(before.moisture).toBeCloseTo(start, 9);
        expect(before.waterRemoved).toEqual(now.waterRemoved);
      }),
    );
  });
  it('is bone dry at the mass of the solids, and no drier', () => {
    expect(moistureByWeighing({ fresh: '1 kg', moisture: 0.8, dried: '0.2 kg' }).driedMoisture).toBeCloseTo(0, 12);
  });
  it('names the mass of the solids without the noise of doubles', () => {
    const least = errorOf(() => moistureByWeighing({ fresh: '1000 g', moisture: '84 %', dried: '154 g' }));
    expect(least).toMatchObject({ expected: expect.stringMatching(/, 160 g$/) });
  });
  it.each<[string, object, string, string]>([
    ['more than the fresh', { moisture: 0.8, dried: '1.1 kg' }, 'CONTRADICTION', 'dried'],
    ['less than the solids', { moisture: 0.8, dried: '199 g' }, 'CONTRADICTION', 'dried'],
    ['more than the fresh, from the end', { dried: '3 lb', driedMoisture: 0.1 }, 'CONTRADICTION', 'dried'],
    ['both moistures', { moisture: 0.8, driedMoisture: 0.1, dried: '300 g' }, 'CONTRADICTION', 'driedMoisture'],
    ['neither moisture', { dried: '300 g' }, 'MISSING', 'moisture'],
  ])('refuses %s', (_, change, code, path) => {
    expect(errorOf(() => moistureByWeighing({ fresh: '1 kg', ...change } as never))).toMatchObject({ code, path });
  });
});
