import { describe, expect, it } from 'vitest';
import { rehydrate } from '../../../src/drying/index';
import { errorOf } from '../helpers';

describe('rehydrate', () => {
  it('asks boiling water for vegetables only', () => {
    const carrots = rehydrate({ food: 'carrots', driedVolume: '1 cup' });
    expect(carrots).toMatchObject({ waterIs: 'boiling' });
    expect(carrots).not.toHaveProperty('quickFruit');
    expect(rehydrate({ food: 'pears', driedVolume: '250 mL' })).toMatchObject({
      waterIs: 'warm or cold',
      waterVolume: { value: 437.5, unit: 'mL' },
      quickFruit: { boilingWater: { value: 5, unit: 'min' } },
    });
  });
  it('takes the figures of a wider food, and says so', () => {
    const kale = rehydrate({ food: 'kale', driedVolume: '1 cup' });
    expect(kale).toMatchObject({ known: true, food: 'kale', waterVolume: { value: 1 } });
    expect(kale.basis[0]).toMatchObject({ of: 'waterVolume', food: 'greens' });
  });
  it('knows nothing of foods that the table does not hold, and says how to go on', () => {
    const eggplant = rehydrate({ food: 'eggplant', driedVolume: '1 cup' });
    expect(eggplant).toMatchObject({ known: false, reason: { code: 'not-in-these-tables' } });
    expect(eggplant.cautions.map(({ id }) => id)).toEqual(['soaking-food-spoils']);
    expect(rehydrate({ food: 'ham', driedVolume: '1 cup' }).known).toBe(false);
    expect(errorOf(() => rehydrate({ food: 'hamm', driedVolume: '1 cup' })).code).toBe('UNKNOWN_NAME');
  });
});
