import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as models from '../../src/water-activity/models';
import { debyeHuckelOf, glycerol, norrishOf, pitzerOf, solubilityOf, sucrose } from '../../src/water-activity/solutes';

const molality = fc.double({ min: 0.01, max: 20, noNaN: true });

describe('limits and identities', () => {
  test('pure water has the activity 1 in every equation', () => {
    expect(models.raoult(0)).toBe(1);
    expect(models.norrish(0, 6.47)).toBe(1);
    expect(models.moneyBorn(0)).toBe(1);
    expect(models.fromFreezing(0)).toBe(1);
    expect(models.glycerolActivity(0, 25, glycerol)).toBe(1);
    expect(models.starzakPeacock(0, 25, sucrose.starzak)).toBe(1);
    expect(models.robinsonStokes(0, sucrose.robinsonStokes)).toBe(1);
  });

  test('one solute is the same in every mixture rule', () => {
    fc.assert(
      fc.property(molality, fc.double({ min: 0, max: 8, noNaN: true }), (m, K) => {
        const alone = models.norrish(m, K);
        for (const rule of [models.norrishMixture, models.norrishRoots, models.norrishMeanK]) {
          expect(rule([{ molality: m, K, molarMass: 180 }])).toBeCloseTo(alone, 12);
        }
      }),
    );
  });

  test('a mixture of like solutes is one solute in the mean rule', () => {
    const half = { molality: 2, K: 2.25, molarMass: 180 };
    expect(models.norrishMixture([half, half])).toBeCloseTo(models.norrish(4, 2.25), 12);
    expect(models.norrishRoots([half, half])).toBeCloseTo(models.norrish(4, 2.25), 12);
    expect(models.norrishMeanK([half, half])).toBeCloseTo(models.norrish(4, 2.25), 12);
  });

  test('more solute, less activity', () => {
    fc.assert(
      fc.property(molality, (m) => {
        for (const at of [
          models.raoult,
          models.moneyBorn,
          (x: number) => models.norrish(x, 2.25),
          (x: number) => models.glycerolActivity(x, 25, glycerol),
          (x: number) => models.starzakPeacock(x, 25, sucrose.starzak),
        ]) {
          expect(at(m * 1.05)).toBeLessThan(at(m));
          expect(at(m)).toBeGreaterThan(0);
          expect(at(m)).toBeLessThan(1);
        }
      }),
    );
  });
});

describe('equations made for one thing agree with each other', () => {
  // robinson-stokes-1959 and starzak-peacock-1997 for sucrose: the same measurements behind both
  test.each([0.5, 1, 2, 3, 4, 5, 6])('sucrose at %s mol/kg', (m) => {
    const one = models.robinsonStokes(m, sucrose.robinsonStokes);
    expect(Math.abs(one - models.starzakPeacock(m, 25, sucrose.starzak))).toBeLessThan(0.002);
    expect(Math.abs(one - models.norrish(m, norrishOf('sucrose')?.K ?? 0))).toBeLessThan(0.002);
  });

  // tang-1986 and pitzer-mayorga-1973 for salt
  test.each(['NaCl', 'KCl'])('%s to 4.8 mol/kg', (salt) => {
    const [one, other] = [pitzerOf(salt), debyeHuckelOf(salt)];
    if (one === undefined || other === undefined) throw new Error('both tables have it');
    for (const m of [0.5, 1, 2, 3, 4, 4.8]) {
      const difference = models.pitzerCoefficient(m, one) - models.debyeHuckelCoefficient(m, other);
      expect(Math.abs(difference)).toBeLessThan(0.01);
    }
  });

  // grover-1947 is for confectionery: within 0.05 of Norrish for plain sucrose, 1.5 to 2.2 g a gram of water
  test.each([1.5, 1.8, 2.1])('Grover at %s g of sucrose a gram of water', (E) => {
    expect(Math.abs(models.grover(E) - models.norrish((E * 1000) / 342.296, 6.47))).toBeLessThan(0.05);
  });
});

describe('solubility', () => {
  test('sucrose takes the highest of the published figures', () => {
    expect(solubilityOf('sucrose', 25)?.fraction).toBeCloseTo(0.6789, 4); // Mohos 2010, table A2.2
  });

  test('printed rows are exact, and the line between them lies between', () => {
    expect(solubilityOf('lactose', 25)?.fraction).toBeCloseTo(0.178, 12);
    expect(solubilityOf('lactose', 20)?.fraction).toBeCloseTo((0.145 + 0.178) / 2, 12);
    expect(solubilityOf('maltose', 0)?.fraction).toBeCloseTo(0.361, 12); // below the first row
    expect(solubilityOf('maltose', 100)?.fraction).toBeCloseTo(0.851, 12); // above the last
  });

  test('glycerol mixes in any proportion', () => {
    expect(solubilityOf('glycerol', 25)).toBeUndefined();
  });
});
