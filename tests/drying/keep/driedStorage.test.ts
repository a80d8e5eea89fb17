import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driedStorage } from '../../../src/drying/index';
import { foodRows } from '../../../src/foods/tables';

const known = (food: string) => driedStorage({ food, temperature: '60 degF' }).known;

describe('driedStorage', () => {
  it('never keeps longer where it is warmer', () => {
    const names = foodRows.map(({ name }) => name).filter((name) => known(name));
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.integer({ min: 0, max: 80 }),
        fc.integer({ min: 0, max: 80 }),
        (food, a, b) => {
          const at = (degF: number) => {
            const answer = driedStorage({ food, temperature: { value: degF, unit: 'degF' } });
            if (!answer.known) throw new Error(answer.reason.text);
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
  it('takes the figures of a wider food, and says so', () => {
    const kale = driedStorage({ food: 'zucchini', temperature: '70 degF' });
    expect(kale).toMatchObject({ known: true, food: 'zucchini', months: { low: 0, high: 1 } });
    expect(kale.basis).toEqual([expect.objectContaining({ of: 'months', food: 'summer squash' })]);
    const mango = driedStorage({ food: 'mango', temperature: '60 degF' });
    expect(mango).toMatchObject({ known: true, months: { high: 12 } });
    expect(mango.basis.every(({ food }) => food === 'fruit')).toBe(true);
  });
  it('knows nothing of food that is no fruit and no vegetable, or too fatty', () => {
    expect(driedStorage({ food: 'beef', temperature: '60 degF' })).toMatchObject({
      known: false,
      reason: { code: 'no-fruit-or-vegetable' },
      instead: [{ keep: 'freezer' }],
    });
    for (const food of ['avocado', 'walnut', 'cheddar cheese']) {
      expect(driedStorage({ food, temperature: '60 degF' }), food).toMatchObject({ reason: { code: 'too-fatty' } });
    }
  });
});
