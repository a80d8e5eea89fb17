import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  balanceBasis,
  leftAtSolids,
  mixOf,
  moistureAtShare,
  moistureBefore,
  refuseThinner,
  refuseWetter,
  shareLeft,
  sharesLeft,
  toAdd,
} from '../../src/solution/massBalance';
import { expectError } from '../helpers/errors';

const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe('the mass balance', () => {
  test('boils 100 kg at 20 % down to 68 %', () => {
    expect(leftAtSolids(0.2, 0.68)).toBeCloseTo(0.29412, 5);
    expect(-toAdd(0.2, 0.68, 0)).toBeCloseTo(0.70588, 5);
  });
  test('brings 10 kg from 12 to 65 Brix with sugar, and a syrup from 65 % to 30 % with water', () => {
    expect(10 * toAdd(0.12, 0.65, 1)).toBeCloseTo(15.1429, 4);
    expect(toAdd(0.65, 0.3, 0)).toBeCloseTo(1.16667, 5);
    expect(toAdd(0.3, 0.3, 0.3)).toBe(0);
  });
  test('mixes what it says to add to just the share that was asked for', () => {
    fc.assert(
      fc.property(share, share, share, (from, to, added) => {
        fc.pre(Math.abs(added - to) > 0.01 && to > from === added > to);
        const amount = toAdd(from, to, added);
        const mixed = mixOf([
          { mass: 1, solids: from },
          { mass: amount, solids: added },
        ]);
        expect(mixed.solids).toBeCloseTo(to, 9);
        expect(mixed.mass).toBeCloseTo(1 + amount, 9);
      }),
    );
    expect(mixOf([])).toEqual({ mass: 0, solids: 0 });
  });
  test('dries and reckons back to the same moisture, from either end', () => {
    fc.assert(
      fc.property(share, share, (one, other) => {
        const [dry, wet] = one < other ? [one, other] : [other, one];
        const left = shareLeft(wet, dry);
        expect(left).toBeLessThanOrEqual(1 + 1e-12);
        expect(moistureAtShare(wet, left)).toBeCloseTo(dry, 9);
        expect(moistureBefore(dry, left)).toBeCloseTo(wet, 9);
      }),
    );
    expect(shareLeft(0.9, 0.06)).toBeCloseTo(0.10638, 5);
  });
  test('leaves the least of the moistest food', () => {
    const left = sharesLeft({ low: 0.84, likely: 0.86, high: 0.88 }, 0.2);
    expect([left.low, left.likely, left.high].map((each) => Math.round(each * 1000))).toEqual([150, 175, 200]);
  });
  test('refuses a target on the wrong side, naming the field', () => {
    expectError(() => refuseWetter(0.5, 0.6, 0.6), 'CONTRADICTION', 'targetMoisture');
    expectError(() => refuseWetter(0.5, 0.6, undefined), 'CONTRADICTION', 'moisture');
    expectError(() => refuseThinner(0.5, 0.4, 'targetSolids'), 'CONTRADICTION', 'targetSolids');
    expect(() => refuseWetter(0.5, 0.5, 0.5)).not.toThrow();
    expect(() => refuseThinner(0.5, 0.5, 'targetSolids')).not.toThrow();
  });
  test('rests on no source', () => {
    expect(balanceBasis('mass')).toMatchObject({ of: 'mass', kind: 'derived' });
    expect(balanceBasis('mass')).not.toHaveProperty('source');
  });
});
